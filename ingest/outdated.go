package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// A book may keep the list that was there before: a sheet whose name or title says that it is no
// longer valid ("Old list - do not use", "périmé", "veraltet"), beside one that is.

// outdatedSheets marks the tables of such sheets, whose rows count nothing, and forgets what else
// stands on them.
func (b *builder) outdatedSheets() {
	first := b.firstRows()
	if len(first) < 2 {
		return
	}
	old := make(map[string]bool)
	earlier := b.earlierRevisions()
	for sheet := range first {
		old[sheet] = saysOutdated(sheet) || earlier[sheet]
	}
	for i := range b.facts {
		f := &b.facts[i]
		if top, table := first[f.At.Sheet()]; table && int(f.At.Row) < top && f.Cell != nil && saysOutdated(f.Cell.Text) {
			old[f.At.Sheet()] = true
		}
	}
	for i := range b.spoken {
		s := &b.spoken[i]
		if top, table := first[s.at.Sheet()]; table && int(s.at.Row) < top && saysOutdated(s.text) {
			old[s.at.Sheet()] = true
		}
	}
	valid := slices.ContainsFunc(b.tables, func(t *table) bool {
		return !old[t.Sheet] && (t.kind == layout.Loudspeakers || t.kind == layout.Mixed || t.kind == layout.Zones && len(earlier) > 0)
	})
	if !valid {
		return
	}
	on := func(at schedule.Ref) bool { return old[at.Sheet()] }
	for _, t := range b.tables {
		t.outdated, t.replaced = old[t.Sheet], earlier[t.Sheet]
	}
	b.facts = without(b.facts, func(f layout.Fact) bool { return on(f.At) })
	b.said = without(b.said, func(s said) bool { return on(s.source.At) })
	b.spoken = without(b.spoken, func(s spoken) bool { return on(s.at) })
}

// without is a list without some of its elements; the list itself stays as it is.
func without[T any](list []T, drop func(T) bool) []T {
	if !slices.ContainsFunc(list, drop) {
		return list
	}
	return slices.DeleteFunc(slices.Clone(list), drop)
}

// longestOutdated is more than the bytes of a title that says so; what is longer is a note.
const longestOutdated = 160

// saysOutdated reports whether a title or the name of a sheet says that what stands below is no
// longer valid. Words that may be said of other things ("do not use") must end it.
func saysOutdated(text string) bool {
	if len(text) > longestOutdated {
		return false
	}
	if stateOfDevice(text) {
		return false
	}
	folded := strings.TrimRight(join.Fold(text), " .!)*]-")
	return outdatedWords.in(folded) || slices.ContainsFunc(outdatedEnds, func(w string) bool {
		return strings.HasSuffix(folded, w) && apart(folded, len(folded)-len(w), len(folded))
	})
}

// stateOfDevice reports whether a text says what a device is: "the amplifier is obsolete".
func stateOfDevice(text string) bool {
	words := strings.Fields(text)
	for i, w := range words {
		if i > 0 && slices.Contains(beingWords, join.Fold(w)) {
			return kindInWords(strings.Join(words[:i], " ")) != noKind
		}
	}
	return false
}

// standAlone reports whether no row of loudspeakers that counts stands at a place that the rows
// of outdated sheets name: then these may be no older state of the same list.
func (b *builder) standAlone() bool {
	if b.outdatedAlone == nil {
		old, valid := make(map[string]bool), make(map[string]bool)
		for _, t := range b.tables {
			for _, r := range t.rows {
				if r.kind != loudspeakerRow {
					continue
				}
				switch places := placeKey(r); {
				case places == "":
				case t.outdated:
					old[places] = true
				case r.out == "":
					valid[places] = true
				}
			}
		}
		alone := true
		for k := range old {
			alone = alone && !valid[k]
		}
		b.outdatedAlone = &alone
	}
	return *b.outdatedAlone
}

// placeKey is the key of the place of a row, its room or else its zone.
func placeKey(r *row) string {
	if s := r.own(vocabulary.Room); s.had() {
		return s.key()
	}
	return r.own(vocabulary.Zone).key()
}
