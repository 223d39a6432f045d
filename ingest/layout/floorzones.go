package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// Titles of floors are what the list is parted by, and its zones, where each names what feeds it: "HALL, output 2" between
// "GROUND FLOOR, output 1" and "FIRST FLOOR, output 3"; or where others of the same rank are no floors: "Grounds" below the
// rows of "First floor".

// floorsAsZones takes the floors of titles for zones where each row stands below the title of a floor or of a zone, none
// below both, and each title names an amplifier or an output too; or where zonesBesideFloors.
func floorsAsZones(t *Table) {
	for i := range t.Columns {
		if f := t.Columns[i].Field; f == vocabulary.Zone || f == vocabulary.Floor {
			return
		}
	}
	if zonesBesideFloors(t) {
		floorTitlesToZones(t)
		return
	}
	floors := false
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
		floors = floors || floor >= 0
	}
	if floors {
		floorTitlesToZones(t)
	}
}

// floorTitlesToZones makes the floors of titles zones; below a title that is a zone already the floor before it has ended.
func floorTitlesToZones(t *Table) {
	for i := range t.Records {
		r := &t.Records[i]
		k := sectionOf(r, vocabulary.Floor)
		if k < 0 {
			continue
		}
		r.Sections = slices.Clone(r.Sections)
		if sectionOf(r, vocabulary.Zone) >= 0 {
			r.Sections = slices.Delete(r.Sections, k, k+1)
			continue
		}
		r.Sections[k].Field = vocabulary.Zone
	}
}

// zonesBesideFloors reports whether titles that are but a name, a floor or a zone without a number, part the list: loudspeakers
// stand right below each of several floors, and no zone stands at the head of a floor.
func zonesBesideFloors(t *Table) bool {
	floors, zones := 0, 0
	last := -1 // of the titles that nothing stands below yet
	for i := range t.Records {
		r := &t.Records[i]
		switch {
		case r.Class == Title && (len(r.Sections) != 1 || last >= 0):
			return false
		case r.Class == Title:
			last = i
		case r.Class == Device && len(r.Sections) == 0:
			return false
		case r.Class == Device && last >= 0:
			switch title := &t.Records[last].Sections[0]; {
			case title.Field == vocabulary.Floor:
				floors++
			case title.Field == vocabulary.Zone && !anyDigit(title.Text):
				zones++
			default:
				return false
			}
			last = -1
		}
	}
	return floors > 1 && zones > 0
}

// sectionOf is where a title of the field stands among those in force for a row; -1 if there is none.
func sectionOf(r *Record, f vocabulary.Field) int {
	return slices.IndexFunc(r.Sections, func(s Fact) bool { return s.Field == f })
}
