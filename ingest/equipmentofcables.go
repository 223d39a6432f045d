package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// A list of equipment, "Device | Output | Power", is one of amplifiers where the cables of the book begin at its
// rows and lead to the loudspeakers of another list: "PV1.1 -> L01". What cables lead to and from is a control.

// A cableEnds is where the cables of a book begin and end, by the keys of their texts and of the outputs in them.
type cableEnds struct{ from, to map[string]bool }

// equipmentOfCables takes such lists for lists of amplifiers.
func equipmentOfCables(tables []*table) {
	ends := endsOfCables(tables)
	if len(ends.from) == 0 || !loudspeakersAt(tables, ends.to) {
		return
	}
	for _, t := range tables {
		names, watts := t.equipmentColumns()
		if names == nil {
			continue
		}
		if controls, ok := t.beginsCables(names, ends); ok {
			t.kind, t.controlsAmong = layout.Amplifiers, controls
			t.become(watts, vocabulary.ChannelWatts, "the cables begin here: its watts are what amplifiers give and controls carry")
			t.become(names, vocabulary.Amplifier, "the cables begin here")
		}
	}
}

// endsOfCables are the ends of the cables of a book.
func endsOfCables(tables []*table) cableEnds {
	ends := cableEnds{from: make(map[string]bool), to: make(map[string]bool)}
	for _, t := range tables {
		if t.kind != layout.Cables || !t.has(vocabulary.From) || !t.has(vocabulary.To) {
			continue
		}
		for _, c := range t.byField[vocabulary.From] {
			t.eachText(c, func(text string) { ends.from[join.Key(text)], ends.from[outputKey(text)] = true, true })
		}
		for _, c := range t.byField[vocabulary.To] {
			t.eachText(c, func(text string) { ends.to[join.Key(text)] = true })
		}
	}
	delete(ends.from, "")
	return ends
}

// loudspeakersAt reports whether a list of loudspeakers with watts names ends of cables.
func loudspeakersAt(tables []*table, ends map[string]bool) bool {
	for _, t := range tables {
		if !t.has(vocabulary.Tap) && !t.has(vocabulary.TotalWatts) || !t.has(vocabulary.Room) && !t.has(vocabulary.Zone) && !t.has(vocabulary.Quantity) {
			continue
		}
		for _, c := range t.byField[vocabulary.Tag] {
			cells, known := 0, 0
			t.eachText(c, func(text string) {
				cells++
				if ends[join.Key(text)] {
					known++
				}
			})
			if known > 1 && 2*known > cells {
				return true
			}
		}
	}
	return false
}

// equipmentColumns are the columns of names and of watts of a list that may be one of equipment: nothing in it
// says how many there are or where they play. Both are nil where it is none.
func (t *table) equipmentColumns() (names, watts *column) {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed && t.kind != layout.Types || t.Matrix ||
		slices.ContainsFunc([]vocabulary.Field{vocabulary.Zone, vocabulary.Room, vocabulary.Quantity, vocabulary.Control, vocabulary.From, vocabulary.To}, t.has) {
		return nil, nil
	}
	for _, f := range []vocabulary.Field{vocabulary.Amplifier, vocabulary.Tag, vocabulary.Item, vocabulary.Model, vocabulary.Unknown} {
		if names == nil && len(t.byField[f]) > 0 {
			names = t.byField[f][0]
		}
	}
	for _, f := range []vocabulary.Field{vocabulary.Tap, vocabulary.TotalWatts, vocabulary.RatedWatts, vocabulary.ChannelWatts} {
		for _, c := range t.byField[f] {
			if watts != nil {
				return nil, nil
			}
			watts = c
		}
	}
	if watts == nil {
		return nil, nil
	}
	return names, watts
}

// beginsCables reports whether cables begin at most rows of a list, beside an output of theirs or not, and
// which of these, without an output, others lead to. No loudspeaker has cables that begin at its outputs.
func (t *table) beginsCables(names *column, ends cableEnds) (controls map[string]bool, ok bool) {
	controls = make(map[string]bool)
	rows, outputs := 0, 0
	for i := range t.Records {
		r := &t.Records[i]
		name := r.Values[names.i].Text
		if r.Class != layout.Device || name == "" {
			continue
		}
		rows++
		output := ""
		for _, c := range slices.Concat(t.byField[vocabulary.Channel], t.byField[vocabulary.Circuit]) {
			if v := &r.Values[c.i]; v.How == schedule.Stated { // not what a blank repeats
				output = v.Text
			}
		}
		k := join.Key(name)
		switch {
		case ends.to[k] && ends.from[k] && output == "":
			controls[k] = true
		case !ends.to[k] && (ends.from[k] || ends.from[outputKey(name+" "+output)] || ends.from[join.Key(name+" "+output)]):
			outputs++
		}
	}
	return controls, outputs > 0 && 2*(outputs+len(controls)) > rows
}
