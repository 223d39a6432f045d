package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// sameKinds takes a list of zones with counts and taps for one of loudspeakers where another list has the very same headers and
// was taken for that: sheet after sheet, for each amplifier maybe, lists its own, whatever zones they share.
func sameKinds(tables []*table) {
	var lists []string
	for _, t := range tables {
		if t.kind == layout.Loudspeakers {
			lists = append(lists, headersOf(t))
		}
	}
	for _, t := range tables {
		if t.kind == layout.Zones && !t.SheetHidden && t.has(vocabulary.Quantity) && t.has(vocabulary.Tap) && slices.Contains(lists, headersOf(t)) {
			t.kind = layout.Loudspeakers
		}
	}
}

// headersOf is what stands over the columns of a table.
func headersOf(t *table) string {
	var b strings.Builder
	for _, c := range t.columns {
		b.WriteString(headerKey(c) + "\n")
	}
	return b.String()
}
