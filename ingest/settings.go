package ingest

import (
	"slices"
	"strings"
	"unicode"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// A list without taps says what stands where, and another list of the book what each of its items is set to, and on
// which output it hangs: "A.1 | Horn, 20 W | North stand | 5" and "A1 | 15 W | Z1".

// settingFields are what such a list may add to the rows of the other one.
var settingFields = []vocabulary.Field{vocabulary.Tap, vocabulary.TapVoltage, vocabulary.Channel, vocabulary.Amplifier, vocabulary.Circuit, vocabulary.Control, vocabulary.Zone, vocabulary.Notes}

// settingsOfItems adds what lists of settings say of items to the lists of these, and makes lists of settings of them.
func settingsOfItems(tables []*table) {
	byCode := make(map[*table]map[string]*layout.Record) // of the lists that were asked
	for _, s := range tables {
		codes, at := s.listsSettings()
		if codes == nil {
			continue
		}
		var of *table
		var items *column
		for _, t := range tables {
			c := t.itemsOfSettings(s, codes, at, byCode)
			if c != nil && of != nil {
				of = nil // which one is not said
				break
			}
			if c != nil {
				of, items = t, c
			}
		}
		if of != nil {
			of.takeSettings(items, s, at)
		}
	}
}

// listsSettings is the column of codes of a list that sets taps, and says neither where anything stands nor how many
// there are of it, with its records by their codes; nil if the table is anything else.
func (t *table) listsSettings() (*column, map[string]*layout.Record) {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed && t.kind != layout.Types || t.SheetHidden || len(t.byField[vocabulary.Tap]) != 1 {
		return nil, nil
	}
	if slices.ContainsFunc([]vocabulary.Field{vocabulary.Quantity, vocabulary.Room, vocabulary.Floor, vocabulary.Building, vocabulary.TotalWatts, vocabulary.Describe, vocabulary.Model}, t.has) {
		return nil, nil
	}
	c := t.codeColumn()
	if c == nil {
		return nil, nil
	}
	at := t.recordsByCode(c)
	if len(at) < 2 {
		return nil, nil
	}
	return c, at
}

// codeColumn is the only column of items or tags of a table, nil if there is none or there are several.
func (t *table) codeColumn() *column {
	cols := slices.Concat(t.byField[vocabulary.Item], t.byField[vocabulary.Tag])
	if len(cols) != 1 {
		return nil
	}
	return cols[0]
}

// recordsByCode are the records of devices by the key of their code; nil where a code stands twice, or none.
func (t *table) recordsByCode(c *column) map[string]*layout.Record {
	at := make(map[string]*layout.Record)
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		k := join.Key(r.Values[c.i].Text)
		if k == "" || at[k] != nil {
			return nil
		}
		at[k] = r
	}
	return at
}

// itemsOfSettings is the column of a list without taps that has each code of a list of settings once, nil if it has
// not. Bare numbers must be those of all its rows, below the same header.
func (t *table) itemsOfSettings(s *table, codes *column, at map[string]*layout.Record, byCode map[*table]map[string]*layout.Record) *column {
	if t == s || t.kind != layout.Loudspeakers && t.kind != layout.Mixed && t.kind != layout.Zones || t.SheetHidden || t.statesTaps() || !t.has(vocabulary.Quantity) && !t.has(vocabulary.Room) {
		return nil
	}
	c := t.codeColumn()
	if c == nil {
		return nil
	}
	items, asked := byCode[t]
	if !asked {
		items = t.recordsByCode(c)
		byCode[t] = items
	}
	bare := true
	for k := range at {
		if items[k] == nil {
			return nil
		}
		bare = bare && strings.IndexFunc(k, unicode.IsLetter) < 0
	}
	if bare && (len(items) != len(at) || join.Key(c.Header) != join.Key(codes.Header)) {
		return nil
	}
	return c
}

// statesTaps reports whether a list has a column of taps, and not only watts among the words of what describes its
// devices.
func (t *table) statesTaps() bool {
	return slices.ContainsFunc(t.byField[vocabulary.Tap], func(c *column) bool { return !t.inWords(c) })
}

// inWords reports whether a column was made of the words in another one.
func (t *table) inWords(c *column) bool {
	return c.Col == 0 && slices.ContainsFunc(t.columns, func(o *column) bool { return o.Col != 0 && o.At == c.At })
}

// takeSettings adds the columns of a list of settings to a list of their items, and leaves the list of settings
// without devices.
func (t *table) takeSettings(items *column, s *table, at map[string]*layout.Record) {
	for _, c := range slices.Clone(t.byField[vocabulary.Tap]) {
		t.become(c, vocabulary.RatedWatts, "another list sets the taps")
	}
	for _, f := range settingFields {
		if t.has(f) {
			continue
		}
		for _, c := range s.byField[f] {
			of := *c.Column
			of.Evidence += "; of a list of settings"
			added := &column{Column: &of, i: len(t.columns), style: c.style}
			t.columns = append(t.columns, added)
			t.byField[f] = append(t.byField[f], added)
			for i := range t.Records {
				r := &t.Records[i]
				var v layout.Value
				if set := at[join.Key(r.Values[items.i].Text)]; set != nil && r.Class == layout.Device {
					v = set.Values[c.i]
				}
				r.Values = append(r.Values[:len(r.Values):len(r.Values)], v)
			}
		}
	}
	t.kind = layout.Loudspeakers
	for i := range s.Records {
		if r := &s.Records[i]; r.Class == layout.Device {
			r.Class, r.Reason = layout.NoDevice, "what an item of another list is set to"
		}
	}
}
