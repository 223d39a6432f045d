package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// ratingsOfSplitLists takes a column of what outputs give, in the loudspeakers of a register
// whose amplifiers or controls were made a list of their own, for that of the loudspeakers:
// each device of the register has its own rating in it.
func ratingsOfSplitLists(tables []*table) {
	for _, t := range tables {
		cols := t.byField[vocabulary.ChannelWatts]
		if t.kind != layout.Loudspeakers || len(cols) != 1 || t.has(vocabulary.RatedWatts) || speaksOfOutputs(cols[0].Header) {
			continue
		}
		apart := slices.ContainsFunc(tables, func(o *table) bool {
			return o != t && (o.kind == layout.Amplifiers || o.kind == layout.Controls) && o.Sheet == t.Sheet && o.Range == t.Range && slices.Equal(o.HeaderRows, t.HeaderRows)
		})
		if apart {
			t.become(cols[0], vocabulary.RatedWatts, "amplifiers and controls of the same register have theirs in it")
		}
	}
}

// controlsByTheirCells takes a column that was not surely understood for one of controls
// where each of its cells is a place of the list and a rating: "HALL 50 W".
func (t *table) controlsByTheirCells() {
	if t.has(vocabulary.Control) || t.kind != layout.Loudspeakers && t.kind != layout.Mixed && t.kind != layout.Zones {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Model, vocabulary.Unknown} {
		for _, c := range slices.Clone(t.byField[f]) {
			cells, named := 0, 0
			t.eachText(c, func(text string) {
				cells++
				if t.ratedByPlace(text) {
					named++
				}
			})
			if cells > 1 && named == cells && c.Confidence < unsureHeader {
				t.become(c, vocabulary.Control, "its cells are places of the list with ratings")
				return
			}
		}
	}
}

// ratedByPlace reports whether a text is a power behind a word of a zone or room of the table.
func (t *table) ratedByPlace(text string) bool {
	m := findRatingBehind(text)
	if m == nil {
		return false
	}
	name := placeInControl(m[1])
	if len(name) < fewestOfPlace {
		return false
	}
	found := false
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone} {
		for _, c := range t.byField[f] {
			t.eachText(c, func(place string) { found = found || strings.Contains(join.Fold(place), name) })
		}
	}
	return found
}
