package ingest

import (
	"maps"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// askUnheard asks about notes that say what a control may carry and of which
// nothing came: "A and B each have a control (VCM and VCH, both 10 W)". Whoever
// reads the audit must not take it that there is none.
func (b *builder) askUnheard() {
	told := b.toldRows()
	rated := make(map[schedule.Ref]int) // controls by the row that rates them
	for _, c := range b.job.Controls {
		rated[rowOf(c.Rated.At)]++
	}
	asked := b.askedRows()
	for _, s := range b.spoken {
		if n := rated[rowOf(s.at)]; n > 0 && !asked[rowOf(s.at)] && len(s.text) <= longestSpoken && listsControls(s.text) > n {
			b.ask(s.at, "control", "“"+short(s.text)+"” rates more controls than were understood: where do the others hang?", "the load of these controls")
		}
		if told[rowOf(s.at)] || len(s.text) > longestSpoken || len(notation.PowersIn(s.text, notation.Auto)) == 0 {
			continue
		}
		if vocabulary.DeviceIn(s.text) != vocabulary.ControlDevice && !b.namesControl(s.text) {
			continue
		}
		told[rowOf(s.at)] = true
		b.ask(s.at, "control", "“"+short(s.text)+"” speaks of a control: which loudspeakers hang behind it, and what may it carry?", "the load of this control")
	}
}

// listsControls is how many powers stand behind a word for controls at the head of a note, 0 where none is there:
// "Knobs: hall 24 W, yard 12 W".
func listsControls(text string) int {
	head, rest, ok := strings.Cut(text, ":")
	if !ok || anyDigit(head) || !notation.IsControlWord(head) {
		return 0
	}
	return len(notation.PowersIn(rest, notation.Auto))
}

// askUnheardOutputs asks about notes and titles that name outputs and of which nothing came, in a job where some
// loudspeakers hang on none: "Upper hall - output 2".
func (b *builder) askUnheardOutputs() {
	if !slices.ContainsFunc(b.job.Loudspeakers, func(l *schedule.Loudspeaker) bool { return l.Status == schedule.Installed && !hung(l) }) {
		return
	}
	told := b.askedRows()
	for _, c := range b.job.Channels {
		told[rowOf(c.At)], told[rowOf(c.Rated.At)] = true, true
	}
	for k, t := range b.taken {
		if feedingFields[k.field] {
			for at := range t.cells {
				told[rowOf(at)] = true
			}
		}
	}
	asked := 0
	ask := func(at schedule.Ref, text string) {
		if told[rowOf(at)] || asked >= mostUnheard || len(text) > longestSpoken || !namesOutput(text) {
			return
		}
		told[rowOf(at)] = true
		asked++
		b.ask(at, "channel", "“"+short(text)+"” speaks of an output: which loudspeakers hang on it?", "the load of this output")
	}
	for _, s := range b.spoken {
		ask(s.at, s.text)
	}
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out == schedule.TitleRow || r.out == schedule.EmptyRow || r.out == schedule.NotUnderstood {
				ask(r.At, r.wholeText())
			}
		}
	}
}

// feedingFields are the fields of assumptions that tell of a row what an output is, gives or feeds.
var feedingFields = map[string]bool{vocabulary.Channel.String(): true, vocabulary.ChannelWatts.String(): true, vocabulary.Amplifier.String(): true, vocabulary.FrameWatts.String(): true}

// mostUnheard is the most such notes of a job that are asked about: more say the same of each other.
const mostUnheard = 12

// namesOutput reports whether a word for an output stands in a text with a number or a letter behind it: "output 2".
func namesOutput(text string) bool {
	words := wordsAt(text)
	for i := range len(words) - 1 {
		name := text[words[i+1][0]:words[i+1][1]]
		if len(name) <= 2 && (anyDigit(name) || name == strings.ToUpper(name)) && saysOutput.Of(text[words[i][0]:words[i][1]], 0) {
			return true
		}
	}
	return false
}

// namesControl reports whether a text names a control that rows name, as a word of its own.
func (b *builder) namesControl(text string) bool {
	for _, w := range wordsAt(text) {
		if t := text[w[0]:w[1]]; b.dir.controls[join.Key(t)] && isTag(t) {
			return true
		}
	}
	return false
}

// askUnheardRemarks asks about remarks beside loudspeakers that speak of a control
// of which nothing came.
func (b *builder) askUnheardRemarks() {
	asked := b.askedRows()
	for _, l := range b.job.Loudspeakers {
		r := b.origin[l]
		if l.Control != nil || l.Zone != nil && l.Zone.Control != nil || l.Status != schedule.Installed || !r.t.has(vocabulary.Notes) {
			continue
		}
		for s := range r.every(vocabulary.Notes) {
			if remarksOfControls.Of(s.text, 0) && !asked[rowOf(s.source.At)] {
				s.field = vocabulary.Control
				b.askCell(s, "“"+short(s.text)+"” speaks of a control: do these loudspeakers hang behind it, and what may it carry?", "the load of this control")
			}
		}
	}
}

// remarksOfControls reports whether a remark speaks of a control and denies nothing.
var remarksOfControls = remember.New(8192, func(text string, _ int) bool {
	if len(text) > longestSpoken || notation.Denies(text) {
		return false
	}
	if vocabulary.DeviceIn(text) == vocabulary.ControlDevice {
		return true
	}
	list, err := notation.ParseControls(text, notation.Auto) // "VC on wall (100 W) for exhibits A & B"
	return err == nil && list[0].W > 0
})

func rowOf(at schedule.Ref) schedule.Ref { return at.On().Cell(int(at.Row), 0) }

// toldRows are the rows of which a control, an assumption or a question tells.
func (b *builder) toldRows() map[schedule.Ref]bool {
	told := make(map[schedule.Ref]bool)
	for _, c := range b.job.Controls {
		for _, at := range []schedule.Ref{c.At, c.Rated.At, c.Model.At, c.Room.At} {
			told[rowOf(at)] = true
		}
	}
	for _, t := range b.taken {
		for at := range t.cells {
			told[rowOf(at)] = true
		}
	}
	maps.Copy(told, b.askedRows())
	return told
}

// askedRows are the rows of which a question is asked.
func (b *builder) askedRows() map[schedule.Ref]bool {
	asked := make(map[schedule.Ref]bool)
	for q := range b.allQuestions {
		asked[rowOf(q.At)] = true
	}
	return asked
}

// wholeText is all that the cells of a row say, in their order.
func (r *row) wholeText() string {
	if r.Text != "" {
		return r.Text
	}
	var texts []string
	for i := range r.Values {
		if t := r.Values[i].Text; t != "" {
			texts = append(texts, t)
		}
	}
	return strings.Join(texts, " | ")
}
