package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A take-off refers to a legend, a sheet or a table of its own that says what each code of an item is: "S1 | Ceiling
// speaker | 2.5 W", "VC-A | Volume control, 35 W", "Wire | 16 AWG pair".

// mostOfLegend is the most rows of a legend; longestCode the most bytes of a code in it.
const mostOfLegend, longestCode = 40, 12

// A legend is such a table, its column of codes, and by code whether it is one of loudspeakers.
type legendTable struct {
	t        *table
	codes    *column
	speakers map[string]bool
}

// legendsOfItems takes tables that explain the codes of other tables for lists of types, and the codes of
// loudspeakers in those for their models.
func legendsOfItems(tables []*table) {
	of := make(map[string]*legendTable) // by code
	for _, t := range tables {
		l := t.asLegend()
		if l == nil {
			continue
		}
		for code := range l.speakers {
			if _, twice := of[code]; twice {
				of[code] = nil // of two legends: which one is not said
			} else {
				of[code] = l
			}
		}
	}
	if len(of) == 0 {
		return
	}
	for _, t := range tables {
		if l, c := t.refersTo(of); l != nil {
			t.takeCodes(c, l)
			l.t.beLegend(l)
		}
	}
}

// asLegend is a table as a legend, nil if it cannot be one: it has taps or ratings, counts nothing, and its first
// column of names is of codes that differ.
func (t *table) asLegend() *legendTable {
	switch {
	case t.kind != layout.Loudspeakers && t.kind != layout.Mixed && t.kind != layout.Types || t.SheetHidden || len(t.Records) > mostOfLegend:
		return nil
	case t.has(vocabulary.Quantity) || t.has(vocabulary.Channel) || t.has(vocabulary.Amplifier) || t.has(vocabulary.Circuit) || !t.has(vocabulary.Tap) && !t.has(vocabulary.TapList):
		return nil
	}
	for _, c := range t.columns {
		switch c.Field {
		case vocabulary.Tag, vocabulary.Item, vocabulary.Model, vocabulary.Kind:
			return t.legendBy(c)
		case vocabulary.Unknown: // "Code"
			if l := t.legendBy(c); l != nil {
				return l
			}
		}
	}
	return nil
}

// legendBy is a table as a legend of the codes in a column, nil where these do not differ or are no codes.
func (t *table) legendBy(c *column) *legendTable {
	l := &legendTable{t: t, codes: c, speakers: make(map[string]bool)}
	rows := 0
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		text := r.Values[c.i].Text
		rows++
		if text == "" || len(text) > longestCode {
			return nil
		}
		l.speakers[join.Key(text)] = t.setsTap(r)
	}
	if len(l.speakers) < 2 || len(l.speakers) != rows {
		return nil
	}
	return l
}

// setsTap reports whether a record has a tap, and no word for a control or an amplifier.
func (t *table) setsTap(r *layout.Record) bool {
	tap := false
	for _, c := range t.columns {
		text := r.Values[c.i].Text
		switch c.Field {
		case vocabulary.Tap, vocabulary.TapList:
			tap = tap || text != ""
		default:
			if k := kindInWords(text); k == controlRow || k == amplifierRow {
				return false
			}
		}
	}
	return tap
}

// refersTo is the legend that a column of a list of places refers to, and that column; nil if none does. Most of
// its cells are codes of one legend, of loudspeakers too, which it counts or repeats. A list that sets taps itself repeats
// them: the watts of the legend are what its types can be set to.
func (t *table) refersTo(of map[string]*legendTable) (*legendTable, *column) {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || !t.has(vocabulary.Room) && !t.has(vocabulary.Zone) && !t.has(vocabulary.Floor) {
		return nil, nil
	}
	for _, c := range t.columns {
		switch c.Field {
		case vocabulary.Tag, vocabulary.Item, vocabulary.Model, vocabulary.Kind, vocabulary.Describe, vocabulary.Unknown:
		default:
			continue
		}
		cells := 0
		hits, speakers := make(map[*legendTable]int), make(map[*legendTable]int)
		t.eachText(c, func(text string) {
			cells++
			if l := of[join.Key(text)]; l != nil && l.t != t {
				hits[l]++
				if l.speakers[join.Key(text)] {
					speakers[l]++
				}
			}
		})
		for l, n := range hits { // no more than one has most of the cells
			if n >= 2 && 10*n >= 8*cells && speakers[l] > 0 && (t.has(vocabulary.Quantity) && !t.has(vocabulary.Tap) || n > len(l.speakers)) && !t.sharesPlaces(l.t) {
				return l, c
			}
		}
	}
	return nil, nil
}

// sharesPlaces reports whether another table names one of the places of this one: then it lists devices there.
func (t *table) sharesPlaces(o *table) bool {
	at := make(map[string]bool)
	places := func(t *table, do func(string)) {
		for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone} {
			for _, c := range t.byField[f] {
				t.eachText(c, do)
			}
		}
	}
	places(t, func(text string) { at[join.Key(text)] = true })
	found := false
	places(o, func(text string) { found = found || at[join.Key(text)] })
	return found
}

// takeCodes moves the codes of loudspeakers in a column to one of models.
func (t *table) takeCodes(c *column, l *legendTable) {
	for _, m := range t.byField[vocabulary.Model] {
		if m != c {
			t.become(m, vocabulary.Unknown, "another column names the models")
		}
	}
	of := *c.Column
	of.Field, of.RunnerUp, of.Evidence, of.Confidence = vocabulary.Model, vocabulary.Unknown, "codes of the legend", max(of.Confidence, unsureHeader)
	models := &column{Column: &of, i: len(t.columns)}
	t.columns = append(t.columns, models)
	t.byField[vocabulary.Model] = append(t.byField[vocabulary.Model], models)
	for i := range t.Records {
		r := &t.Records[i]
		v := r.Values[c.i]
		moved := layout.Value{At: v.At}
		if l.speakers[join.Key(v.Text)] {
			r.Values[c.i], moved = moved, v
		}
		r.Values = append(r.Values[:len(r.Values):len(r.Values)], moved)
	}
	if c.Field != vocabulary.Tag {
		t.become(c, vocabulary.Tag, "what is no loudspeaker of the legend")
	}
}

// beLegend makes a table a list of types: its codes are tags, and what was taken for places describes them.
func (t *table) beLegend(l *legendTable) {
	if t.kind == layout.Types {
		return
	}
	t.kind = layout.Types
	if l.codes.Field != vocabulary.Tag {
		t.become(l.codes, vocabulary.Tag, "codes of another list")
	}
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone, vocabulary.Building, vocabulary.Unknown} {
		for _, c := range t.byField[f] {
			if !t.has(vocabulary.Describe) {
				t.become(c, vocabulary.Describe, "what the codes of another list mean")
			}
		}
	}
}

// conductorOfLegend reads a row of a legend that says which cable is laid everywhere: "Wire | 16 AWG pair".
func (b *builder) conductorOfLegend(r *row) bool {
	name, s := r.first(vocabulary.Tag, vocabulary.Item), r.own(vocabulary.Describe)
	if r.own(vocabulary.Tap).had() || !s.had() || vocabulary.DeviceIn(name.text+" "+s.text) != vocabulary.CableDevice && !saysCable(name.text) {
		return false
	}
	size, _, ok := notation.ConductorIn(s.text, notation.Auto)
	if !ok || b.cableTitle != nil {
		return false
	}
	s.text, s.cell = size.String(), nil
	var c schedule.Cable
	if !b.readConductor(&c, s, vocabulary.Gauge) {
		return false
	}
	b.cableTitle = &c
	r.used = true
	b.take(s, "gauge", strings.TrimSpace(s.text)+" for all cables", schedule.LikelierReading, "the legend has one cable")
	return true
}

// saysCable reports whether a text is a word for cable: "Wire".
func saysCable(text string) bool {
	for _, c := range vocabulary.NewScorer().Concepts(text) {
		if c != "cable" {
			return false
		}
	}
	return len(vocabulary.NewScorer().Concepts(text)) > 0
}
