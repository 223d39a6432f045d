package ingest

import (
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Titles of sections may rate the amplifier of each section without a name behind
// its word: "Amplifier: 240 W 100 V" above the palm house, "Amplifier: 60 W" above the
// orangery. Each is an amplifier of its own, called after its section, or as the title
// does in front of the colon.

// An unnamedAmp is such a title.
type unnamedAmp struct {
	name   string
	rating seen
}

// findUnnamedAmps finds the titles of amplifiers that only rate them, where a job
// has several titles of amplifiers. What the sentences in them say is then said of their sections.
func (b *builder) findUnnamedAmps() {
	found := make(map[schedule.Ref]unnamedAmp)
	titles := make(map[schedule.Ref]bool)
	keyed := false
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.Class != layout.Device {
				continue
			}
			for i := range r.Sections {
				f := &r.Sections[i]
				if f.Field != vocabulary.Amplifier || titles[f.At] {
					continue
				}
				titles[f.At] = true
				if rating, ok := onlyRating(f.Text); ok {
					s := factSeen(f)
					s.text, s.cell = rating, nil
					name := "amplifier (" + sectionPlace(r, f) + ")"
					if id := join.Parse(join.Amplifier, f.Key); id.Number != "" || countWords(f.Key) > 1 { // "Amp 1: 2 x 120 W"
						name = tidy(f.Key)
						keyed = true
					}
					found[f.At] = unnamedAmp{name, s}
				}
			}
		}
	}
	if len(titles) < 2 && !keyed || len(found) == 0 {
		return
	}
	b.unnamedAmps = found
	b.said = slices.DeleteFunc(b.said, func(s said) bool { return s.Name == "" && found[s.source.At].name != "" })
}

// onlyRating is the rating that a text states of an amplifier without naming it.
func onlyRating(text string) (string, bool) {
	if text == "" || text[0] < '0' || text[0] > '9' {
		return "", false
	}
	list, err := notation.ParseRatingSentence("Amplifier: "+text, notation.Auto)
	if err != nil || len(list) != 1 || list[0].Name != "" || list[0].W == 0 || len(list[0].Ways) > 0 {
		return "", false
	}
	if n := list[0].Outputs; n > 0 {
		return itoa(n) + " x " + plain(list[0].W) + " W", true
	}
	return plain(list[0].W) + " W", true
}

// sectionPlace is what the sections of a row call the place of an amplifier's title.
func sectionPlace(r *row, title *layout.Fact) string {
	for _, f := range []vocabulary.Field{vocabulary.Building, vocabulary.Zone, vocabulary.Room, vocabulary.Floor, vocabulary.Unknown} {
		for i := range r.Sections {
			if s := &r.Sections[i]; s.Field == f && s.Text != "" {
				return tidy(s.Text)
			}
		}
	}
	return "row " + strconv.Itoa(int(title.At.Row))
}

// ratesUnnamed reports whether a cell of a column of amplifiers beside loudspeakers or zones
// holds nothing but a power: an amplifier of that rating without a name, "120 W".
func (b *builder) ratesUnnamed(r *row, amp seen) bool {
	if amp.col == nil || amp.field != vocabulary.Amplifier || r.kind != loudspeakerRow && r.kind != zoneRow || !pureRating(tidy(amp.text)) {
		return false
	}
	amp.source.Written = amp.text
	b.take(amp, "amplifier", "one amplifier of "+tidy(amp.text), schedule.LikelierReading, "the column rates it, and names none")
	return true
}

// calledByWatts is the power in a cell of a column of amplifiers that calls an amplifier by it
// and a word: "120 W amp", and "ampli 120 W" where another cell of the column says "ampli 60 W".
// It holds nothing where the cell says more, or the word alone tells the amplifier.
func (b *builder) calledByWatts(r *row, amp seen) seen {
	if amp.col == nil || amp.field != vocabulary.Amplifier || r.kind != loudspeakerRow && r.kind != zoneRow {
		return seen{}
	}
	watts, ahead := wordAndWatts(amp)
	if !watts.had() || !ahead && !amp.t.differInWatts(amp.col) {
		return seen{}
	}
	b.take(amp, "amplifier", tidy(amp.text), schedule.LikelierReading, "the column tells amplifiers by their watts")
	return watts
}

// wordAndWatts is the only power in a text that is otherwise a word for an amplifier. ahead
// reports whether the power goes first.
func wordAndWatts(s seen) (watts seen, ahead bool) {
	if !mayStateWatts(s.text) {
		return seen{}, false
	}
	watts, rest := cutWatts(s, s.text)
	rest = strings.Trim(rest, " ()[],;:–-")
	named := slices.ContainsFunc(strings.Fields(rest), func(w string) bool { return !notation.SpeaksOfAmplifier(w) && !mixerWords.in(join.Fold(w)) })
	if !watts.had() || rest == "" || anyDigit(rest) || named {
		return seen{}, false
	}
	return watts, anyDigit(tidy(s.text)[:1])
}

// differInWatts reports whether cells of a column call amplifiers by one word and different powers.
func (t *table) differInWatts(c *column) bool {
	if c.wattsCalled == nil {
		c.wattsCalled = make(map[string]bool)
		for _, r := range t.rows {
			if watts, _ := wordAndWatts(r.at(c)); watts.had() {
				c.wattsCalled[watts.key()] = true
			}
		}
	}
	return len(c.wattsCalled) > 1
}
