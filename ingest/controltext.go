package ingest

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// A controlMention is what a row that is no control says of its control.
type controlMention struct {
	name   string // its tag, "" for one that is only described
	model  seen
	rating seen // a rating beside the tag, or alone
	place  seen // where it hangs, as its title says
	at     seen
	any    bool // there is a control, named or not
	as     *row // the row whose control it shares, nil if its own
}

// ratingBehind finds a rating behind a name: "VC-3 (35 W)", "Amp 1 (4 x 125 W)".
var ratingBehind = regexp.MustCompile(`(?i)^(.*?\S)[\s,;(/:–-]+((?:\d+\s?[x×*]\s?)?\d+(?:[.,]\d+)?\s?k?W(?:atts?)?\b.*?)\)?$`)

func findRatingBehind(text string) []string {
	if !mayStateWatts(text) {
		return nil
	}
	m := ratingBehind.FindStringSubmatch(text)
	if m != nil && onlyTimes.MatchString(m[1]) {
		return nil // "2 x 250 W" alone
	}
	if m == nil {
		return nil
	}
	if i := strings.LastIndexByte(m[1], '('); i > 0 && !strings.Contains(m[1][i:], ")") && strings.HasSuffix(text, ")") {
		return []string{text, strings.TrimSpace(m[1][:i]), strings.TrimSuffix(text[i+1:], ")")} // "AMP 1 (2-channel, 250 W/ch)"
	}
	return m
}

// onlyTimes is a number of outputs in front of what each gives.
var onlyTimes = regexp.MustCompile(`(?i)^\d{1,2}\s*[x×*]$`)

// bareInBrackets finds a figure in brackets behind other words.
var bareInBrackets = regexp.MustCompile(`^(.*\S)\s*\((\d{1,3})\)$`)

// controlInBrackets parts where a control hangs from what it is, in brackets: "by the door (25 W knob)".
func controlInBrackets(text string) (place, rating string, ok bool) {
	head, rest, found := strings.Cut(text, "(")
	inner, isLast := strings.CutSuffix(strings.TrimSpace(rest), ")")
	if !found || !isLast || anyDigit(head) || countWords(head) < 2 || notation.IsControlWord(strings.TrimSpace(head)) || vocabulary.DeviceIn(inner) != vocabulary.ControlDevice {
		return "", "", false
	}
	powers := notation.PowersIn(inner, notation.Auto)
	if len(powers) != 1 {
		return "", "", false
	}
	return strings.TrimSpace(head), plain(powers[0].W) + " W", true
}

// withRemark adds what the remarks of a row say of a control of which a column only says that it
// is there: "yes" and "knob says 12 W", "yes" and "same knob as the hall".
func (b *builder) withRemark(r *row, c controlMention) controlMention {
	m := b.controlRemark(r)
	switch {
	case !m.any:
		return c
	case m.as != nil || m.name != "":
		return m
	}
	if !c.rating.had() {
		c.rating = m.rating
	}
	if !c.model.had() {
		c.model = m.model
	}
	return c
}

// controlText reads the control of a row that describes something else.
func (b *builder) controlText(r *row) controlMention {
	r = b.speaker(r)
	c := controlMention{}
	if r.feed != nil && r.feed.control.had() && !r.own(vocabulary.Control).had() {
		return controlMention{name: tidy(r.feed.control.text), at: r.feed.control, any: true}
	}
	s := r.say(vocabulary.Control)
	if !r.concerns(s) {
		s = seen{}
	}
	if m := r.own(vocabulary.ControlModel); m.had() {
		c.model, c.any, c.at = m, true, m
	}
	if w := r.own(vocabulary.ControlWatts); w.had() {
		c.rating, c.any = w, true
		if !c.at.had() {
			c.at = w
		}
	}
	if d, by := b.hangsOn(r); d != nil && d.kind == controlRow && r.kind != cableRow {
		c.name, c.at, c.any = b.ownControlName(d).text, by, true
		return c
	}
	if !s.had() && !c.any && s.missing == notation.MissingNone {
		if m := b.controlOnTheWay(r); m.any {
			return m
		}
		return b.controlRemark(r)
	}
	if !s.had() || s.col != nil && b.otherFeed(r).source.At == s.source.At {
		return c
	}
	if notation.AnswerOf(s.text) == notation.No || controlGone(s.text) {
		return controlMention{}
	}
	c.at, c.any = s, true
	if notation.AnswerOf(s.text) == notation.Yes {
		return b.withRemark(r, c)
	}
	if m, ok := b.controlSeen(r, s); ok {
		return m
	}
	if m, ok := b.controlSame(r, s); ok {
		return m
	}
	if notation.OneForEach(s.text) { // "one 10 W knob per booth"
		b.ask(s.source.At, "control", "“"+short(s.text)+"” are several controls: how many loudspeakers hang behind each?", "the load of each of these controls")
		return controlMention{}
	}
	if b.areSeveral(s) {
		b.ask(s.source.At, "control", "“"+short(s.text)+"” are several controls: how many of these loudspeakers hang behind each?", "the load of each of these controls")
		return controlMention{}
	}
	if s.col == nil && (len(notation.PowersIn(s.text, notation.Auto)) > 1 || r.t.has(vocabulary.Control) && r.t.title(vocabulary.Control).source.At == s.source.At) {
		return controlMention{} // said of several controls: see controlsIn
	}
	if n, one := notation.CountedControls(s.text); n == 1 {
		s.text, s.cell = one, nil
	}
	if place, rating, ok := controlInBrackets(s.text); ok {
		c.rating, c.place = s, s
		c.rating.text, c.rating.cell, c.place.text, c.place.cell = rating, nil, place, nil
		return c
	}
	t := notation.ParseControlCell(s.text)
	if !strings.HasSuffix(t.Name, ")") {
		// nothing in brackets behind it
	} else if m := bareInBrackets.FindStringSubmatch(t.Name); m != nil && t.Watts == "" && s.col != nil && !b.modelColumns[s.col] && vocabulary.DeviceIn(m[1]) == vocabulary.ControlDevice && usualRating(wattsOf(seen{text: m[2] + " W"})) {
		t.Name, t.Watts = m[1], m[2]+" W" // "Knob at the desk (60)"
		b.take(s, "control rating", t.Watts, schedule.LikelierReading, "a usual rating of controls, in brackets")
	}
	switch {
	case t.Watts != "":
		if !c.rating.had() {
			c.rating = s
			c.rating.text, c.rating.cell = t.Watts, nil
		}
		if t.Name == "" || notation.AnswerOf(t.Name) == notation.Yes {
			return c // "Y - 35 W", "wall control 35 W"
		}
	case s.cell != nil && s.cell.Kind == grid.Number || pureRating(tidy(s.text)):
		if !c.rating.had() {
			c.rating = s
		}
		return c
	}
	if s.col != nil && b.modelColumns[s.col] {
		if !c.model.had() {
			c.model = s
			c.model.text = t.Name
		}
		return c
	}
	c.name = b.tagOfControl(t.Name)
	if s.col != nil && saysOnlyWhere(s.text) && !anyDigit(c.name) {
		if b.oneInEach(c.name) {
			c.name = ""
			return c
		}
		b.take(s, "control", c.name, schedule.LikelierReading, "where it hangs is all that is said of it")
	}
	if s.col == nil && t.Place != "" {
		c.place = s
		c.place.text, c.place.cell = t.Place, nil
	}
	return c
}

// tagThenPlace is the tag of a control and a place behind it.
var tagThenPlace = regexp.MustCompile(`^(\pL{1,4}[-. ]?\d{1,3}\pL?)\s+\pL[^0-9]*$`)

// tagOfControl is the tag alone of a name such as "LR1 Kasse", where a note outside the
// tables calls the control by its tag.
func (b *builder) tagOfControl(name string) string {
	if !strings.ContainsAny(name, " \t\n") {
		return name
	}
	if m := tagThenPlace.FindStringSubmatch(name); m != nil && b.isNoted(m[1]) && !b.isNoted(name) {
		return m[1]
	}
	return name
}

// isNoted reports whether a text outside the tables has a name, apart from other words.
func (b *builder) isNoted(name string) bool {
	known, ok := b.noted[name]
	if !ok {
		known = slices.ContainsFunc(b.spoken, func(s spoken) bool { return wordList{join.Fold(name)}.in(join.Fold(s.text)) })
		if b.noted == nil {
			b.noted = make(map[string]bool)
		}
		b.noted[name] = known
	}
	return known
}

// controlParts parts a list of controls, by slashes too, but not by words.
var controlParts = remember.New(8192, func(text string, _ int) []string { return splitAll(listMarks.Split(text, -1), slashMark) })

// areSeveral reports whether a text is of several controls: a list, a range,
// or a number of them, "(6) 10 W".
func (b *builder) areSeveral(s seen) bool {
	if parts := controlParts.Of(s.text, 0); len(parts) > 1 && b.areControls(parts) {
		return true
	}
	count, _ := notation.CountedControls(s.text)
	return s.col != nil && (count > 1 || isControlRange(s.text))
}

// isControlRange reports whether a text is a range of tags: "ST3 ... ST6". One
// that may be a single tag, "VC1-4", is none.
func isControlRange(text string) bool {
	if parts := controlParts.Of(text, 0); len(parts) != 1 || !anyDigit(text) {
		return false
	}
	tags, err := notation.ParseTags(text)
	return err == nil && len(tags.List) > 1 && !tags.Doubts.Has(notation.RangeOrTag) && strings.IndexFunc(tags.List[0], unicode.IsLetter) == 0
}

// areControls reports whether all of several names are tags of controls that
// have rows of their own.
func (b *builder) areControls(names []string) bool {
	return !slices.ContainsFunc(names, func(name string) bool {
		k := join.Key(name)
		list := b.dir.devices[k]
		return !b.dir.ownControls[k] && (len(list) == 0 || list[0].kind != controlRow)
	})
}

// isListedControl reports whether a name is that of a control that has a row of its own.
func (b *builder) isListedControl(name string) bool {
	k := join.Key(name)
	list := b.dir.devices[k]
	return len(b.dir.controlRows[k]) > 0 || len(list) > 0 && list[0].kind == controlRow
}

// cutAny cuts a text at the first of some marks that it has.
func cutAny(s string, marks ...string) (before, after string, ok bool) {
	for _, m := range marks {
		if before, after, ok = strings.Cut(s, m); ok {
			return strings.TrimSpace(before), strings.TrimSpace(after), true
		}
	}
	return s, "", false
}

// pureRating reports whether the text is a power and nothing else. It begins
// with a figure: "R1" is a tag.
func pureRating(s string) bool {
	if s == "" || s[0] < '0' || s[0] > '9' {
		return false
	}
	p, err := notation.ParseWatts(s, notation.Auto)
	return err == nil && !p.Doubts.Has(notation.Bare)
}
