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
			if c.Confidence >= unsureHeader {
				continue
			}
			places := t.placesFolded()
			cells, named := 0, 0
			t.eachText(c, func(text string) {
				cells++
				if ratedByPlace(text, places) {
					named++
				}
			})
			if cells > 1 && named == cells {
				t.become(c, vocabulary.Control, "its cells are places of the list with ratings")
				return
			}
		}
	}
}

// placesFolded are the zones and rooms of a table, one a line, so that a word is
// looked for in all of them at once.
func (t *table) placesFolded() string {
	seen := make(map[string]bool)
	var all strings.Builder
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone} {
		for _, c := range t.byField[f] {
			t.eachText(c, func(place string) {
				if folded := join.Fold(place); !seen[folded] {
					seen[folded] = true
					all.WriteString(folded + "\n")
				}
			})
		}
	}
	return all.String()
}

// ratedByPlace reports whether a text is a power behind a word of one of the places.
func ratedByPlace(text, places string) bool {
	m := findRatingBehind(text)
	if m == nil {
		return false
	}
	name := placeInControl(m[1])
	return len(name) >= fewestOfPlace && strings.Contains(places, name)
}

// ownNames are the fields under which rows of a kind of table give their own names.
var ownNames = map[layout.Kind]vocabulary.Field{layout.Amplifiers: vocabulary.Amplifier, layout.Controls: vocabulary.Control,
	layout.Loudspeakers: vocabulary.Tag, layout.Mixed: vocabulary.Tag}

// placesHangTogether takes a column of places that may be sites or rooms for rooms where
// a device in one of them hangs on a device in another.
func placesHangTogether(tables []*table) {
	doubtful := func(t *table) *column {
		if cols := t.byField[vocabulary.Site]; len(cols) == 1 && cols[0].RunnerUp == vocabulary.Room && !t.has(vocabulary.Room) {
			return cols[0]
		}
		return nil
	}
	at := make(map[string]string) // places by the names of devices
	each := func(do func(t *table, own *column, r *layout.Record, place string)) {
		for _, t := range tables {
			places, own := doubtful(t), t.byField[ownNames[t.kind]]
			if places == nil || ownNames[t.kind] == vocabulary.Unknown || len(own) == 0 {
				continue
			}
			for i := range t.Records {
				if r := &t.Records[i]; r.Class == layout.Device {
					do(t, own[0], r, join.Key(r.Values[places.i].Text))
				}
			}
		}
	}
	each(func(t *table, own *column, r *layout.Record, place string) {
		at[join.Key(r.Values[own.i].Text)] = place
	})
	together := false
	each(func(t *table, own *column, r *layout.Record, place string) {
		for _, f := range feedFields {
			for _, c := range t.byField[f] {
				other := at[join.Key(r.Values[c.i].Text)]
				together = together || c != own && other != "" && place != "" && other != place
			}
		}
	})
	if !together {
		return
	}
	for _, t := range tables {
		if c := doubtful(t); c != nil {
			t.become(c, vocabulary.Room, "devices in one of them hang on devices in another")
		}
	}
}
