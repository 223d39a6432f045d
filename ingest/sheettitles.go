package ingest

import (
	"slices"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// What the sheets of a book are called where there is one for each zone.

// A titleCount is how many of several lists each title of a field stands above.
type titleCount map[vocabulary.Field]map[string]int

// countTitles counts the titles of lists that may be names of their own: plain
// ones, and those that name buildings or floors.
func countTitles(lists []*table) titleCount {
	count := titleCount{vocabulary.Unknown: {}, vocabulary.Building: {}, vocabulary.Floor: {}}
	for _, t := range lists {
		own := make(map[layout.Fact]bool)
		for _, f := range t.titles {
			met := layout.Fact{Field: f.Field, Text: f.Text}
			if n := count[f.Field]; n != nil && !own[met] {
				own[met] = true
				n[f.Text]++
			}
		}
	}
	return count
}

// nameOfSheet is the last title of a field above a list that no other list has,
// the name of its sheet among them; nil if there is none.
func (t *table) nameOfSheet(f vocabulary.Field, count titleCount) *layout.Fact {
	var name *layout.Fact
	for i := range t.titles {
		x := &t.titles[i]
		if x.Field == f && count[f][x.Text] == 1 && x.Key == "" && !inYear.MatchString(x.Text) && !deniesControl(x.Text) && (name == nil || x.At.Row > name.At.Row) {
			name = x
		}
	}
	return name
}

// namesOfSheets are the zones that sheets are named after: plain titles, and beside
// these what reads like a building ("Yard + school" beside "Block A", "Block B") or a floor ("Planta baja" beside "Planta alta").
// Sheets that are all buildings are buildings, or floors where all are floors.
func namesOfSheets(lists []*table) []*layout.Fact {
	if names := namedAgain(lists); names != nil {
		return names
	}
	count := countTitles(lists)
	names := make([]*layout.Fact, len(lists))
	some := false
	for i, t := range lists {
		names[i] = t.nameOfSheet(vocabulary.Unknown, count)
		some = some || names[i] != nil
	}
	if some && slices.Contains(names, nil) && !slices.ContainsFunc(lists, func(t *table) bool { return t.nameOfSheet(vocabulary.Floor, count) == nil }) {
		return make([]*layout.Fact, len(lists)) // all are floors, and some have a title of the whole job besides
	}
	for i, t := range lists {
		if some && names[i] == nil {
			names[i] = t.nameOfSheet(vocabulary.Building, count)
		}
		if some && names[i] == nil {
			names[i] = t.nameOfSheet(vocabulary.Floor, count)
		}
	}
	return names
}

// namedAgain are the names of sheets where each list has that of its sheet again in a cell of its own above it, which
// may be a floor or a building: "Museum, works | | Basement" on the sheet "Basement"; nil where one has not.
func namedAgain(lists []*table) []*layout.Fact {
	names := make([]*layout.Fact, len(lists))
	for i, t := range lists {
		sheet := join.Key(t.Sheet)
		for k := range t.titles {
			f := &t.titles[k]
			named := f.Field == vocabulary.Unknown || f.Field == vocabulary.Floor || f.Field == vocabulary.Building
			if named && f.Key == "" && f.Cell != nil && join.Key(f.Text) == sheet && join.Key(f.Cell.Text) == sheet {
				names[i] = f
			}
		}
		if names[i] == nil {
			return nil
		}
	}
	return names
}
