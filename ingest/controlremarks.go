package ingest

import (
	"slices"
	"sort"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Remarks beside loudspeakers name the control that they hang behind: "local
// att. ATT-1, 6 W", "volume control VR1 (50W) at the desk, feeds foyer and
// shop", and further down "on VR1".

// fewestOfControl is the most words that say no more than that there is a control: "with local control".
const fewestOfControl = 4

// mostRemark is the most words of a remark that speaks of a control; mostTagged
// where it gives its tag behind a word for a control, and mostReference where it
// gives a tag alone that other remarks or rows explain.
const mostRemark, mostTagged, mostReference = 8, 20, 5

// controlRemark reads the control that a remark beside a loudspeaker names:
// "local att. ATT-1, 6 W", or only that there is one: "con attenuatore". The
// remark may stand in a column of states, or be a note that the row refers to.
func (b *builder) controlRemark(r *row) controlMention {
	for _, s := range b.remarksOf(r) {
		own := controlIn(r, s)
		if own.name == "" {
			if m, ok := b.controlShared(r, s); ok {
				return m
			}
			if m, ok := b.controlSame(r, s); ok {
				return m
			}
		}
		if own.any {
			return own
		}
		if m := b.controlReferred(r, s); m.any {
			return m
		}
	}
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Tap} {
		s := r.own(f)
		if _, tail := splitControl(s.text); tail != "" {
			s.text = tail
			if m := controlIn(r, s); m.any {
				return m
			}
		}
	}
	if s := r.own(vocabulary.Status); !r.own(vocabulary.Notes).had() && vocabulary.DeviceIn(s.text) == vocabulary.ControlDevice {
		return controlIn(r, s)
	}
	return controlMention{}
}

// longestDescribed is the longest text, in bytes, that is looked at for a control: what
// is longer is prose, which no parser of values looks at either.
const longestDescribed = 1600

// splitControl parts what a text describes from the control that it says it hangs behind:
// "4 cabinets at 10 W" and "via knob R1 (40 W)", "6 W" and "regulator 20 W" in brackets. The tail
// is blank where it says of none, and where the text is prose.
func splitControl(text string) (head, tail string) {
	if len(text) > longestDescribed {
		return text, ""
	}
	joined := 0 // where a word stands that may be "and" as well: "stands en kantine op regelaar R1"
	for at, mark := range text {
		if !strings.ContainsRune(",;( ", mark) || at == 0 {
			continue
		}
		tail = strings.Trim(text[at+1:], " )")
		first, _, _ := strings.Cut(tail, " ")
		behind := withWords.begins(join.Fold(first)) && (mark != ' ' || controlNext(tail)) || mark == '(' && notation.IsControlWord(first)
		if (mark == ',' || mark == ';') && !anyDigit(text[:at]) && ratesControl(tail) { // "ceiling, knob of 10 W behind the till"
			return strings.TrimSpace(text[:at]), tail
		}
		if !behind || vocabulary.DeviceIn(tail) != vocabulary.ControlDevice && !namesRatedControl(tail) {
			continue
		}
		if mark == ' ' && joined == 0 && joinerAhead.MatchString(tail) {
			joined = at
			continue
		}
		return strings.TrimSpace(text[:at]), tail
	}
	if joined > 0 {
		return strings.TrimSpace(text[:joined]), strings.Trim(text[joined:], " )")
	}
	return text, ""
}

// namesRatedControl reports whether a text gives one control by its name and its power: "carries control VC1 of 20 W".
func namesRatedControl(text string) bool {
	if !mayStateWatts(text) {
		return false
	}
	list, err := notation.ParseControls(text, notation.Auto)
	return err == nil && len(list) == 1 && list[0].Name != "" && list[0].W > 0
}

// controlNext reports whether a word for a control follows the first word of a text before any figure:
// "via knob 12 W", but not "at 10 W via knob".
func controlNext(text string) bool {
	n := 0
	for w := range strings.FieldsSeq(text) {
		n++
		switch {
		case n == 1:
		case notation.IsControlWord(w[strings.LastIndexAny(w, "'’")+1:]): // "a l'atténuateur"
			return true
		case n > mostTagged || anyDigit(w):
			return false
		}
	}
	return false
}

// controlIn reads one such remark.
func controlIn(r *row, s seen) controlMention {
	if !s.had() || r.kind != loudspeakerRow && r.kind != zoneRow || countWords(s.text) > mostTagged {
		return controlMention{}
	}
	if folded := join.Fold(s.text); countWords(folded) <= fewestOfControl && !anyDigit(folded) && withWords.begins(folded) && !hasTagBehind(s.text) && vocabulary.DeviceIn(s.text) == vocabulary.ControlDevice {
		return controlMention{at: s, any: true}
	}
	list, err := notation.ParseControls(volumeBy(s.text), notation.Auto)
	if countWords(s.text) > mostRemark && (err != nil || list[0].Name == "") {
		if head, rest, ok := cutAny(s.text, ",", ";", " - "); ok && !notation.OneForEach(s.text) { // "wall control 50 W, serves nothing but the hall"
			s.text = head
			if !ratesControl(head) && !anyDigit(head) && ratesControl(rest) { // "ceiling, volume control of 10 W behind the till"
				s.text = rest
			}
			return controlIn(r, s)
		}
	}
	long := countWords(s.text) > mostRemark && !withWords.begins(join.Fold(s.text))
	if err != nil || list[0].Name == "" && (list[0].W == 0 || long) || countWords(s.text) > mostRemark && len(list) > 1 {
		return controlMention{}
	}
	m := controlMention{at: s, any: true, name: list[0].Name}
	if list[0].W > 0 {
		m.rating = s
		m.rating.text, m.rating.cell = plain(list[0].W)+" W", nil
	}
	return m
}

// controlShared reads a remark that a row hangs behind the control of another:
// "same vol control as cafe", "Regler wie Foyer". It is asked where that row, or
// its control, is not found.
func (b *builder) controlShared(r *row, s seen) (controlMention, bool) {
	if !s.had() || countWords(s.text) > mostRemark || vocabulary.DeviceIn(s.text) != vocabulary.ControlDevice {
		return controlMention{}, false
	}
	words := strings.Fields(s.text)
	at := slices.IndexFunc(words, func(w string) bool { return slices.Contains(asWords, join.Fold(w)) })
	if at < 0 || at+1 >= len(words) {
		return controlMention{}, false
	}
	if b.sharing {
		return controlMention{}, true // it has none of its own
	}
	for n := min(3, len(words)-at-1); n > 0; n-- {
		place := strings.Trim(strings.Join(words[at+1:at+1+n], " "), ".,;:()")
		if m := b.controlOfOther(r, s, place); m.any {
			return m, true
		}
	}
	b.askCell(s, whichControl(s), "the load of this control")
	return controlMention{}, true
}

// controlSeen reads a cell of controls that refers to another row of its list:
// "see hall", "siehe Foyer". It is asked where that has no control.
func (b *builder) controlSeen(r *row, s seen) (controlMention, bool) {
	folded := join.Fold(s.text)
	see := seeWords.ahead(folded)
	if see == "" || s.col == nil || len(folded) != len(s.text) {
		return controlMention{}, false
	}
	place := strings.Trim(s.text[len(see):], " .:,")
	if place == "" || len(r.t.rowsAt(join.Key(place))) == 0 {
		return controlMention{}, false
	}
	if b.sharing {
		return controlMention{}, true // it has none of its own
	}
	m := b.controlOfOther(r, s, place)
	if !m.any {
		b.askCell(s, whichControl(s), "the load of this control")
	}
	return m, true
}

func whichControl(s seen) string {
	return "“" + short(s.text) + "”: which control do these loudspeakers hang behind?"
}

// mostShared is how many rows are looked at for the one whose control a remark shares.
const mostShared = 50

// controlOfOther is the control of another row that a word in s names: by its room, zone
// or tag, or as the one above. Rows that refer to others have none of their own: nothing
// is followed from row to row.
func (b *builder) controlOfOther(r *row, s seen, place string) controlMention {
	list := r.t.rowsAt(join.Key(place))
	if slices.Contains(aboveWords, join.Fold(place)) {
		end := sort.Search(len(r.t.rows), func(i int) bool { return r.t.rows[i].At.Compare(r.At) >= 0 })
		list = slices.Clone(r.t.rows[max(0, end-mostShared):end])
		slices.Reverse(list)
	}
	b.sharing = true
	defer func() { b.sharing = false }()
	for _, o := range list[:min(len(list), mostShared)] {
		if o == r || o.out != "" || o.kind != loudspeakerRow && o.kind != zoneRow {
			continue
		}
		if m := b.controlText(o); m.any {
			m.as, m.at, m.rating = o, s, seen{}
			return m
		}
	}
	return controlMention{}
}

// rowsAt are the rows of a table whose room, zone or tag has a key.
func (t *table) rowsAt(key string) []*row {
	if t.rowsOfPlace == nil {
		t.rowsOfPlace = make(map[string][]*row)
		for _, r := range t.rows {
			for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone, vocabulary.Tag} {
				if s := r.own(f); s.had() {
					t.rowsOfPlace[s.key()] = append(t.rowsOfPlace[s.key()], r)
				}
			}
		}
	}
	return t.rowsOfPlace[key]
}

// controlReferred reads a remark that names a control by a tag that rows or other
// remarks explain: "on VR1", "also through RG-A", and its rating where it stands right behind: "on VR1 (20 W)".
func (b *builder) controlReferred(r *row, s seen) controlMention {
	s.text = withoutAlso(s.text)
	if !s.had() || r.kind != loudspeakerRow && r.kind != zoneRow || countWords(s.text) > mostReference {
		return controlMention{}
	}
	folded := join.Fold(s.text)
	if !withWords.begins(folded) && !viaWords.begins(folded) && countWords(s.text) > 1 {
		return controlMention{}
	}
	words := wordsAt(s.text)
	for i, w := range words {
		for n := min(2, len(words)-i); n > 0; n-- {
			tag := s.text[w[0]:words[i+n-1][1]]
			if k := join.Key(tag); isTag(tag) && (b.dir.controls[k] || b.dir.ownControls[k]) {
				m := controlMention{at: s, any: true, name: tag}
				if behind, watts := tagBehind(s.text); behind == tag && watts != "" {
					m.rating = s
					m.rating.text, m.rating.cell = watts, nil
				}
				return m
			}
		}
	}
	return controlMention{}
}

// gatherRemarked notes the tags that remarks of a row give controls.
func (b *builder) gatherRemarked(r *row) {
	for _, s := range b.remarksOf(r) {
		if m := controlIn(r, s); m.any && isTag(m.name) && (volumeBy(s.text) != s.text || vocabulary.DeviceIn(s.text) == vocabulary.ControlDevice || m.rating.had() && viaWords.begins(join.Fold(s.text))) && !slices.ContainsFunc(b.dir.devices[join.Key(m.name)], func(d *row) bool { return d.kind == loudspeakerRow }) {
			b.dir.controls[join.Key(m.name)] = true
		}
		tag, watts := tagBehind(s.text)
		if alone := strings.TrimSpace(s.text); tag == "" && !strings.Contains(alone, " ") && anyDigit(alone) && isTag(alone) && notation.KeyOf(alone).Kind == notation.KeyControl {
			tag = alone // "LR2", and no more
		}
		if k := join.Key(tag); tag != "" && !b.dir.controls[k] && len(b.dir.devices[k]) == 0 && !b.dir.amps[k] {
			switch {
			case notation.KeyOf(tag).Kind == notation.KeyControl, b.ratedInNotes(tag):
				b.dir.controls[k] = true
			case watts != "" && s.col != nil && b.ratedControl(r, s, tag):
				b.dir.controls[k] = true
				b.take(s, vocabulary.Control.String(), tag, schedule.LikelierReading, "its rating stands behind it, beside some of the loudspeakers")
			}
		}
	}
}

// ratedControl reports whether a tag that a remark rates, "on AT1 (20 W)", is that of a control:
// nothing else goes by it, and some rows of the list have no remark, which all that are fed would.
func (b *builder) ratedControl(r *row, s seen, tag string) bool {
	k := join.Key(tag)
	if notation.KeyOf(tag).Kind != notation.KeyNone || b.dir.ampRefs[k] || b.dir.circuits[k] {
		return false
	}
	if slices.ContainsFunc(b.spoken, func(n spoken) bool { return strings.Contains(n.text, tag) && notation.SpeaksOfAmplifier(n.text) }) {
		return false
	}
	return r.t.someBare(s.col)
}

// someBare reports whether some loudspeakers of a table have nothing in a column.
func (t *table) someBare(c *column) bool {
	bare, known := t.bareColumns[c]
	if !known {
		bare = slices.ContainsFunc(t.rows, func(o *row) bool { return o.kind == loudspeakerRow && o.out == "" && !o.at(c).had() })
		if t.bareColumns == nil {
			t.bareColumns = make(map[*column]bool)
		}
		t.bareColumns[c] = bare
	}
	return bare
}

// tagBehind is the tag that a remark of few words has behind a word for what hangs where, "on
// VC-A", "sur AT1", and the power alone behind the tag: "on VC-A (20 W)"; "" if it has none.
func tagBehind(text string) (tag, watts string) {
	text = withoutAlso(text)
	if countWords(text) > mostReference || !withWords.begins(join.Fold(text)) {
		return "", ""
	}
	words := wordsAt(text)
	if len(words) > 2 && slices.Contains(articleWords, join.Fold(text[words[1][0]:words[1][1]])) {
		words = words[1:] // "with the RG1"
	}
	for n := min(2, len(words)-1); n > 0; n-- {
		if tag = text[words[1][0]:words[n][1]]; !isTag(tag) || strings.ContainsAny(tag, "(,;:=") {
			continue
		}
		if p := wattsIn.FindStringSubmatchIndex(text[words[n][1]:]); p != nil && strings.Trim(text[words[n][1]:][:p[0]], " ,:=(") == "" {
			watts = text[words[n][1]:][p[2]:p[3]]
		}
		return tag, watts
	}
	return "", ""
}

// withoutAlso is a remark without a first or last word for one more of the same: "also on VR1", "on VR1 as well".
func withoutAlso(text string) string {
	if first, rest, ok := strings.Cut(text, " "); ok && slices.Contains(alsoWords, join.Fold(first)) {
		return strings.TrimSpace(rest)
	}
	folded := join.Fold(text)
	for _, word := range alsoWords {
		if head, ok := strings.CutSuffix(folded, " "+word); ok && len(folded) == len(text) { // of several words
			return strings.TrimRight(text[:len(head)], " ,")
		}
	}
	return cutAlso(text)
}

// hasTagBehind reports whether tagBehind finds a tag.
func hasTagBehind(text string) bool {
	tag, _ := tagBehind(text)
	return tag != ""
}

// mostBeforeRating is the most letters between a tag and its rating in a note: "AT-1 rated 20 W".
const mostBeforeRating = 12

// ratedInNotes reports whether a text outside the tables has a power right behind a tag.
func (b *builder) ratedInNotes(tag string) bool {
	return slices.ContainsFunc(b.spoken, func(s spoken) bool {
		i := strings.Index(s.text, tag)
		if i < 0 || i > 0 && isAlnum(rune(s.text[i-1])) || notation.SpeaksOfAmplifier(s.text) {
			return false
		}
		rest := s.text[i+len(tag):]
		at := strings.IndexAny(rest, "0123456789")
		return at > 0 && at <= mostBeforeRating && len(notation.PowersIn(rest, notation.Auto)) > 0
	})
}
