package ingest

import (
	"lineaudit/ingest/vocabulary"
)

// How the lengths of a table repeat themselves.
const (
	repeatsUnknown = iota
	repeatsOnLines // each stands on every row of its line
	repeatsOnOutputs
	repeatsNot
)

// runsRepeated reports whether the lengths of the table stand on every row of
// their line: wherever several rows share a cable (or, without one, a zone and
// a channel), they state the same length; or wherever they share an output,
// whatever the zones on it.
func (t *table) runsRepeated() bool {
	if t.runsRepeat == repeatsUnknown {
		t.runsRepeat = t.findRepeats()
	}
	return t.runsRepeat != repeatsNot
}

func (t *table) findRepeats() int {
	cols := t.byField[vocabulary.Length]
	if len(cols) == 0 || saysReach.Of(cols[0].Header, 0).previous {
		return repeatsNot
	}
	output := func(r *row) string {
		return r.say(vocabulary.Amplifier).key() + "\x00" + r.say(vocabulary.Channel).key()
	}
	lines, _, ok := t.sharedLengths(cols[0], func(r *row) string {
		if key := r.own(vocabulary.Cable).text; key != "" {
			return key
		}
		return r.zoneText().text + "\x00" + r.say(vocabulary.Channel).text
	})
	rows := 0
	for _, n := range lines {
		rows += n - 1
	}
	// Rows of zones alone, as of two models in one zone, need no second case.
	zones := !t.has(vocabulary.Tag) && !t.has(vocabulary.Room)
	if ok && rows > 0 && (rows > 1 || zones || saysReach.Of(cols[0].Header, 0).whole || saysReach.Of(cols[0].Header, 0).rack) {
		return repeatsOnLines
	}
	if t.has(vocabulary.Cable) || !t.has(vocabulary.Channel) {
		return repeatsNot
	}
	outputs, lengths, ok := t.sharedLengths(cols[0], output)
	several := 0
	for _, n := range outputs {
		if n > 1 {
			several++
		}
	}
	if ok && several > 1 && lengths > 1 {
		return repeatsOnOutputs
	}
	return repeatsNot
}

// sharedLengths counts the rows with a length by a key, and the different
// lengths, and reports whether all rows of each key state the same.
func (t *table) sharedLengths(length *column, key func(*row) string) (rows map[string]int, lengths int, ok bool) {
	rows = make(map[string]int)
	all := make(map[string]bool)
	first := make(map[string]string)
	for _, r := range t.rows {
		if r.out != "" {
			continue
		}
		s := r.at(length)
		if !s.had() {
			continue
		}
		k := key(r)
		if had, ok := first[k]; ok && had != s.text {
			return nil, 0, false
		}
		first[k], all[s.text] = s.text, true
		rows[k]++
	}
	return rows, len(all), true
}
