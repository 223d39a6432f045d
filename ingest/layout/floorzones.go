package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// Titles of floors that name what feeds each are what the list is parted by: they are its zones where other titles of the
// same rank are none of floors, "HALL, output 2" between "GROUND FLOOR, output 1" and "FIRST FLOOR, output 3".

// floorsAsZones takes the floors of titles for zones where some rows stand below the title of a floor, others below that
// of a zone, none below both, and each title names an amplifier or an output too.
func floorsAsZones(t *Table) {
	for i := range t.Columns {
		if f := t.Columns[i].Field; f == vocabulary.Zone || f == vocabulary.Floor {
			return
		}
	}
	floors, zones := false, false
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != Device {
			continue
		}
		floor, zone := sectionOf(r, vocabulary.Floor), sectionOf(r, vocabulary.Zone)
		place := max(floor, zone)
		if min(floor, zone) >= 0 || place < 0 || !slices.ContainsFunc(r.Sections, func(s Fact) bool { return feeders[s.Field] && s.At == r.Sections[place].At }) {
			return
		}
		floors, zones = floors || floor >= 0, zones || zone >= 0
	}
	if !floors || !zones {
		return
	}
	for i := range t.Records {
		r := &t.Records[i]
		if k := sectionOf(r, vocabulary.Floor); k >= 0 {
			r.Sections = slices.Clone(r.Sections)
			r.Sections[k].Field = vocabulary.Zone
		}
	}
}

// sectionOf is where a title of the field stands among those in force for a row; -1 if there is none.
func sectionOf(r *Record, f vocabulary.Field) int {
	return slices.IndexFunc(r.Sections, func(s Fact) bool { return s.Field == f })
}
