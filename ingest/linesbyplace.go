package ingest

import (
	"slices"
	"unicode/utf8"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// Lines may be called by where they go: "Channel | Line to: 1 | Pool, 2 | Changing rooms" and, in the list of
// loudspeakers, "Line | Place: pool | long side".

// linesByPlace takes the lines of a list of loudspeakers that has no zones for zones where their names are words and
// most of them are the places of one list of outputs, each on a row of its own; these are zones then too.
func linesByPlace(tables []*table) {
	for _, t := range tables {
		line := t.wordedLine()
		if line == nil {
			continue
		}
		lines := make(map[string]bool)
		t.eachText(line, func(text string) { lines[join.Key(text)] = true })
		var of *table
		var at *column
		found := 0
		for _, o := range tables {
			if c := o.placesOfOutputs(lines); o != t && c != nil {
				of, at = o, c
				found++
			}
		}
		if found != 1 {
			continue
		}
		t.become(line, vocabulary.Zone, "its cells are the places of a list of outputs")
		if at.Field != vocabulary.Zone {
			of.become(at, vocabulary.Zone, "the lines of the loudspeakers are called by its cells")
		}
	}
}

// wordedLine is the one column of a list of loudspeakers without zones that says what feeds them, where no cell of it
// has a figure or is a letter or two; nil if there is none.
func (t *table) wordedLine() *column {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || t.has(vocabulary.Zone) || t.has(vocabulary.Amplifier) || !t.has(vocabulary.Tap) && !t.has(vocabulary.TotalWatts) {
		return nil
	}
	cols := slices.Concat(t.byField[vocabulary.Circuit], t.byField[vocabulary.Channel])
	if len(cols) != 1 || !t.allCells(cols[0], func(text string) bool { return !anyDigit(text) && utf8.RuneCountInString(text) >= 3 }) {
		return nil
	}
	return cols[0]
}

// mostLines is the least share of the names of lines that a list of outputs must have: others are written otherwise.
const mostLines = 0.75

// placesOfOutputs is the column of a list of outputs that has most of these names of lines, each once; nil if the table
// is no such list.
func (t *table) placesOfOutputs(lines map[string]bool) *column {
	if !t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) || t.has(vocabulary.Tap) || t.has(vocabulary.Quantity) || t.has(vocabulary.Tag) || t.SheetHidden {
		return nil
	}
	for _, f := range []vocabulary.Field{vocabulary.Zone, vocabulary.Room, vocabulary.To, vocabulary.Describe} {
		cols := t.byField[f]
		if len(cols) != 1 || f != vocabulary.Zone && t.has(vocabulary.Zone) {
			continue
		}
		seen, hits, twice := make(map[string]bool), 0, false
		t.eachText(cols[0], func(text string) {
			k := join.Key(text)
			twice = twice || seen[k]
			seen[k] = true
			if lines[k] {
				hits++
			}
		})
		if !twice && hits >= 2 && float64(hits) >= mostLines*float64(len(lines)) {
			return cols[0]
		}
	}
	return nil
}
