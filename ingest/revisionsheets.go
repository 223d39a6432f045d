package ingest

import (
	"slices"
	"strconv"
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// A book may keep each revision of its list on a sheet: "Rev A", "Rev B", or "Speakers 2019", "Speakers 2023". The latest counts.

// A revisionMark is what the name of a sheet says of its revision: "Speakers" and 2 for "Speakers rev B" or "Speakers v2".
type revisionMark struct {
	base string
	kind string // "letter", "number" or "year"
	rank int
}

// revisionOf reads the mark at the end of the name of a sheet; ok is false where it has none.
func revisionOf(sheet string) (m revisionMark, ok bool) {
	words := strings.FieldsFunc(join.Fold(sheet), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	n := len(words) - 1
	if n < 0 {
		return m, false
	}
	last := words[n]
	if year, err := strconv.Atoi(last); err == nil && year >= 1950 && year < 2100 {
		return revisionMark{strings.Join(words[:n], " "), "year", year}, true
	}
	end := ""
	switch word := strings.TrimRight(last, "0123456789"); {
	case n > 0 && slices.Contains(revisionMarkWords, words[n-1]):
		end, n = last, n-1
	case word != last && slices.Contains(revisionMarkWords, word):
		end = last[len(word):] // "v2"
	}
	if n == 0 && strings.HasPrefix(last, "v") && len(last) <= 3 {
		return m, false // "V1" and "V2" alone may be amplifiers
	}
	rank, err := strconv.Atoi(end)
	switch {
	case end == "":
		return m, false
	case err == nil:
		return revisionMark{strings.Join(words[:n], " "), "number", rank}, true
	case len(end) == 1:
		return revisionMark{strings.Join(words[:n], " "), "letter", int(end[0])}, true
	}
	return m, false
}

// earlierRevisions are the sheets of lists that a later revision of the same list on another sheet replaces: the names differ
// in the mark alone, the headers are the same, and most places of the earlier list come again.
func (b *builder) earlierRevisions() map[string]bool {
	var lists []*table
	for _, t := range b.tables {
		if _, ok := revisionOf(t.Sheet); ok && (t.kind == layout.Loudspeakers || t.kind == layout.Mixed || t.kind == layout.Zones) && !t.SheetHidden && len(lists) < mostRevisions {
			lists = append(lists, t)
		}
	}
	old := make(map[string]bool)
	for _, t := range lists {
		mark, _ := revisionOf(t.Sheet)
		for _, later := range lists {
			m, _ := revisionOf(later.Sheet)
			if m.base != mark.base || m.kind != mark.kind || m.rank <= mark.rank || !sameHeaders(t, later) || !comeAgain(t, later) {
				continue
			}
			if !old[t.Sheet] && len(t.columns) > 0 {
				s := seen{t: t, text: t.Sheet, field: vocabulary.Revision, source: schedule.Source{At: t.columns[0].At, Written: t.Sheet}}
				b.take(s, "sheet", "an earlier state that counts nothing", schedule.LikelierReading, "the sheet “"+short(later.Sheet)+"” lists the same places later")
			}
			old[t.Sheet] = true
		}
	}
	return old
}

// mostRevisions is the most sheets of a book that are compared with each other.
const mostRevisions = 40

// sameHeaders reports whether most headers of a list are those of another.
func sameHeaders(t, o *table) bool {
	same := 0
	for _, c := range t.columns {
		if slices.ContainsFunc(o.columns, func(x *column) bool { return join.Key(x.Header) == join.Key(c.Header) }) {
			same++
		}
	}
	return same > 0 && 4*same >= 3*len(t.columns)
}

// comeAgain reports whether most places of a list are places of another.
func comeAgain(t, o *table) bool {
	there := make(map[string]bool)
	for _, r := range o.rows {
		there[placeKey(r)] = true
	}
	places, again := 0, 0
	for _, r := range t.rows {
		if k := placeKey(r); k != "" {
			places++
			if there[k] {
				again++
			}
		}
	}
	return places > 0 && 2*again > places
}
