package ingest

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// A directory is what a job calls its amplifiers, its lines and its devices,
// gathered before any cell that refers to one of them is read: what a
// reference means depends on what there is. "MA1" is output 1 where there is
// an amplifier MA, "L1" the output that a list of lines gives L1, "VC-1" the
// control of that tag.
type directory struct {
	circuits      map[string]bool       // keys and identities of the lines that loudspeakers name
	amps          map[string]bool       // identities of amplifiers
	lines         map[string]*lineEntry // by key of the name, and by its identity where that is one line
	byRow         map[*row]*lineEntry
	splits        map[string]channelText // what splitKnown made of a text
	wholeOutputs  map[*column]bool       // see wholeOutputsIn
	devices       map[string][]*row      // by key of the tag
	controlRows   map[string][]*row      // of controls without a tag, by key of the name
	groups        map[string]*row        // rows of loudspeakers by the keys of their tags, where they have several
	ampRefs       map[string]bool        // keys of what loudspeakers and zones name as their amplifier
	ampStems      map[string]bool        // those that end in figures, without these; nil until asked for
	besideOutputs map[string]bool        // keys of the amplifiers that stand beside an output of theirs
	feeders       map[string]bool        // identities of the amplifiers that rows of other things name
	feederKeys    map[string]bool        // keys of all that these rows name as what feeds them
	ownControls   map[string]bool        // keys of the controls that have rows of their own
	controls      map[string]bool        // keys of what rows of other things name as their control
}

// A lineEntry is a line that a list of lines leads to an output.
type lineEntry struct {
	name    seen
	row     *row
	outlet  *outlet
	rows    int                     // how many rows say something of it: its pieces, when several
	fed     []*schedule.Loudspeaker // what is said to hang on it
	several bool                    // other rows give lines of this name other outputs
}

// feedFields are the fields of cells that may say what a device hangs on, in
// the order in which they are asked.
var feedFields = []vocabulary.Field{vocabulary.Control, vocabulary.Channel, vocabulary.Amplifier, vocabulary.Circuit, vocabulary.From, vocabulary.To}

// gatherGroup enters the single tags of a row of loudspeakers that has several.
func (b *builder) gatherGroup(r *row) {
	if r.kind != loudspeakerRow || plainTag(r.own(vocabulary.Tag).text) {
		return
	}
	if list := r.tagList(); len(list) > 1 {
		for _, tag := range list {
			b.dir.groups[join.Key(tag)] = r
		}
	}
}

// gatherAmpRefs enters the amplifier that a row names, and that of an output: A1 of "A1/2", the
// rink amp of "rink amp ch 2".
func (b *builder) gatherAmpRefs(r *row) {
	if a := r.own(vocabulary.Amplifier); a.had() {
		b.dir.ampRefs[a.key()] = true
		if r.own(vocabulary.Channel).had() {
			b.dir.besideOutputs[a.key()] = true
		} else if c := b.channelRef(a.text); c.ok && len(c.ref.Channels) > 0 && strings.ContainsFunc(c.ref.Amplifier, isLetter) {
			b.dir.ampRefs[join.Key(c.ref.Amplifier)] = true
		}
	}
	if ch := r.own(vocabulary.Channel); ch.had() {
		c := b.channelRef(ch.text)
		coded := anyDigit(c.ref.Amplifier) && len(c.ref.Channels) > 0 && strings.ContainsFunc(c.ref.Amplifier, isLetter)
		if c.ok && (coded || speaksOfAmplifier.Of(c.ref.Amplifier, 0)) {
			b.dir.ampRefs[join.Key(c.ref.Amplifier)] = true
		}
	}
}

// gatherDirectory fills the directory. Rows whose tags other rows name as what
// they hang on become controls.
func (b *builder) gatherDirectory() {
	b.dir = directory{
		amps: make(map[string]bool), ampRefs: make(map[string]bool), besideOutputs: make(map[string]bool), feeders: make(map[string]bool), feederKeys: make(map[string]bool),
		circuits: make(map[string]bool), lines: make(map[string]*lineEntry), byRow: make(map[*row]*lineEntry), splits: make(map[string]channelText), wholeOutputs: make(map[*column]bool),
		devices: make(map[string][]*row), controlRows: make(map[string][]*row), groups: make(map[string]*row), controls: make(map[string]bool), ownControls: make(map[string]bool),
	}
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out != "" {
				continue
			}
			if c := r.own(vocabulary.Circuit); c.had() && r.kind == loudspeakerRow {
				b.dir.circuits[join.Key(c.text)] = true
				if id := lineIdentity(c.text); id != "" {
					b.dir.circuits[id] = true
				}
			}
			if r.kind == loudspeakerRow || r.kind == zoneRow {
				b.gatherAmpRefs(r)
			}
			if r.kind == loudspeakerRow || r.kind == zoneRow || r.kind == controlRow {
				b.gatherFeeders(r)
			}
			if c := r.own(vocabulary.Control); c.had() && r.kind != controlRow && (anyDigit(c.text) || tagOfLetters.MatchString(c.text)) {
				b.dir.controls[c.key()] = true
				if tag := b.tagOfControl(c.text); tag != c.text {
					b.dir.controls[join.Key(tag)] = true
				}
			}
			b.gatherRemarked(r)
			if r.kind == cableRow {
				b.gatherEnds(r)
			}
			tag := r.own(vocabulary.Tag)
			if name := r.own(vocabulary.Control); !tag.had() && r.kind == controlRow && strings.ContainsFunc(name.text, isLetter) {
				b.dir.controlRows[name.key()] = append(b.dir.controlRows[name.key()], r)
			}
			if tag.had() && t.kind != "types" {
				if t.has(vocabulary.Channel) && isWhole(tag.text) {
					continue // a bare number under "Ch" is an output, not the device of that number
				}
				k := tag.key()
				b.dir.devices[k] = append(b.dir.devices[k], r)
				b.gatherGroup(r)
			}
		}
	}
	for _, t := range b.tables {
		b.findNaming(t)
	}
	b.titledOutputs()
	b.each(controlRow, func(r *row) {
		if c := r.first(vocabulary.Control, vocabulary.Tag); c.had() {
			b.dir.ownControls[c.key()] = true
		}
	})
	b.gatherOnTheWay()
	b.each(amplifierRow, b.knowAmps)
	b.each(channelRow, b.knowAmps)
	b.said = without(b.said, func(s said) bool { // "AT1 = 60 W", of a control that remarks name
		k := join.Key(s.Name)
		return s.Name != "" && !s.Worded && b.dir.controls[k] && !b.dir.ampRefs[k] && !b.dir.amps[k]
	})
	for i := range b.said {
		if b.said[i].Name != "" {
			b.knowAmp(b.said[i].ampText())
		}
	}
	b.ampsLikeOthers()
	b.feedersAreControls()
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out == "" && r.kind != loudspeakerRow && r.kind != typeRow {
				b.knowLine(r)
			}
		}
	}
}

// ampsLikeOthers enters amplifiers that a column names alone where it names others,
// which differ from them in their figures, with an output: "rack 2" beside "rack 1
// out A".
func (b *builder) ampsLikeOthers() {
	const figures = "0123456789"
	for _, t := range b.tables {
		for _, f := range []vocabulary.Field{vocabulary.Channel, vocabulary.Amplifier, vocabulary.From} {
			for _, c := range t.byField[f] {
				stems := make(map[string]string) // of keys of amplifiers, with a name of each
				t.eachRow(c, func(text string) {
					ref := b.channelRef(text)
					if !ref.ok || ref.ref.Amplifier == "" || len(ref.ref.Channels) == 0 || ref.ref.Doubts.Has(notation.DateOrPair) {
						return
					}
					name := withKindWord(text, ref.ref.Amplifier)
					k := join.Key(name)
					if stem := strings.TrimRight(k, figures); len(stem) > 1 && stem != k {
						stems[stem] = name
					}
				})
				if len(stems) == 0 {
					continue
				}
				t.eachRow(c, func(text string) {
					k := join.Key(text)
					if first := stems[strings.TrimRight(k, figures)]; first != "" && stems[k] == "" {
						b.knowAmp(first)
						b.knowAmp(text)
					}
				})
			}
		}
	}
}

// knowAmps enters the amplifier that a row describes.
func (b *builder) knowAmps(r *row) {
	if r.kind != amplifierRow && r.kind != channelRow {
		return
	}
	s := r.say(vocabulary.Amplifier)
	if r.kind == amplifierRow && (!s.had() || b.feedsRows(r, vocabulary.Amplifier)) {
		if s = r.own(vocabulary.Tag); !s.had() || !b.dir.feederKeys[s.key()] {
			if name := b.equipmentName(r); name.had() {
				s = name
			} else if !s.had() {
				s = r.own(vocabulary.Describe)
			}
		}
	}
	if !s.had() {
		return
	}
	if c := b.channelRef(s.text); c.ok && c.ref.Amplifier != "" && len(c.ref.Channels) > 0 {
		b.knowAmp(withKindWord(s.text, c.ref.Amplifier))
		return
	}
	b.knowAmp(s.text)
}

func (b *builder) knowAmp(name string) {
	if id := ampIdentity(name); id != "" {
		b.dir.amps[id] = true
	}
}

// ampIdentity is an amplifier's name without the words for an amplifier.
func ampIdentity(name string) string { return ampIdentities.Of(name, 0) }

var ampIdentities = remember.New(8192, func(name string, _ int) string {
	n := join.Parse(join.Amplifier, name)
	if n.Number == "" && n.Title == "" {
		return ""
	}
	return n.Number + "\x00" + n.Title
})

// isWhole reports whether a text is a whole number.
func isWhole(text string) bool {
	if strings.Trim(text, "+-0123456789") != "" {
		return false
	}
	_, err := strconv.Atoi(text)
	return err == nil
}

// splitKnown takes apart a text that begins with the name of an amplifier of
// the job; the longest name counts. "AMP-01A" is output A where there is an
// amplifier AMP-01.
func (b *builder) splitKnown(text string) (notation.ChannelRef, bool) {
	if len(b.dir.amps) == 0 || text == "" {
		return notation.ChannelRef{}, false
	}
	c, known := b.dir.splits[text]
	if !known {
		c.ref, c.ok = b.splitAmp(text)
		b.dir.splits[text] = c
	}
	return c.ref, c.ok
}

func (b *builder) splitAmp(text string) (c notation.ChannelRef, ok bool) {
	if len(text) > 2*longestName || b.dir.amps[ampIdentity(text)] {
		return c, false
	}
	for i := len(text) - 1; i > 0; i-- {
		if !utf8.RuneStart(text[i]) {
			continue
		}
		before, _ := utf8.DecodeLastRuneInString(text[:i])
		after, _ := utf8.DecodeRuneInString(text[i:])
		if unicode.IsDigit(before) && unicode.IsDigit(after) || unicode.IsLetter(before) && unicode.IsLetter(after) || !isAlnum(before) {
			continue
		}
		rest := strings.Trim(text[i:], " .,:;/_#-–()")
		if rest == "" || len(rest) > longestOutput { // asked before what costs more: most places of a long text end here
			continue
		}
		ref := b.channelRef(rest)
		if !ref.ok || ref.ref.Amplifier != "" || len(ref.ref.Channels) == 0 || !b.dir.amps[ampIdentity(text[:i])] {
			continue
		}
		c = ref.ref
		c.Amplifier = strings.TrimSpace(text[:i])
		if m := outputLetter.FindStringSubmatch(rest); m != nil {
			c.Channels = []string{m[1]}
		}
		return c, true
	}
	return c, false
}

func isAlnum(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }

// namesAmp reports whether a text is the name of an amplifier of the job.
func (b *builder) namesAmp(text string) bool {
	return len(b.dir.amps) > 0 && b.dir.amps[ampIdentity(text)]
}
