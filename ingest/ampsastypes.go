package ingest

import (
	"slices"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// ampsAsTypes takes a list of types, or one that says nowhere how many there are, for one of amplifiers where each of its names is an amplifier that another table
// names, and its watts are ratings: "Ref. | Configuration: EP1 | 2 x 240 W" and "Zone | Amplifier | Channel: 1 | EP1 | A".
func ampsAsTypes(tables []*table) {
	var amps map[string]*table
	for _, t := range tables {
		taps := t.byField[vocabulary.Tap]
		if t.kind != layout.Types && t.kind != layout.Loudspeakers && t.kind != layout.Mixed || len(taps) != 1 || slices.ContainsFunc(notOfTypes, t.has) {
			continue
		}
		if amps == nil {
			amps = namedAmplifiers(tables)
		}
		for _, c := range slices.Concat(t.byField[vocabulary.Model], t.byField[vocabulary.Item], t.byField[vocabulary.Tag], t.byField[vocabulary.Unknown]) {
			if t.ratesAmplifiers(c, taps[0], amps) {
				t.kind = layout.Amplifiers
				t.become(c, vocabulary.Amplifier, "its cells are amplifiers of another table")
				t.become(taps[0], vocabulary.ChannelWatts, "what amplifiers give")
				break
			}
		}
	}
}

// notOfTypes are the fields of lists that say how many there are, where, and on what, or rate amplifiers by themselves.
var notOfTypes = []vocabulary.Field{vocabulary.Quantity, vocabulary.Room, vocabulary.Zone, vocabulary.TotalWatts, vocabulary.Channel, vocabulary.Circuit, vocabulary.Control,
	vocabulary.Amplifier, vocabulary.ChannelWatts, vocabulary.FrameWatts}

// namedAmplifiers are the keys of the names in columns of amplifiers, each with a table that has it.
func namedAmplifiers(tables []*table) map[string]*table {
	amps := make(map[string]*table)
	for _, t := range tables {
		for _, c := range t.byField[vocabulary.Amplifier] {
			t.eachText(c, func(text string) { amps[join.Key(text)] = t })
		}
	}
	delete(amps, "")
	return amps
}

// ratesAmplifiers reports whether each device of a table is one of these amplifiers, named once, with a rating.
func (t *table) ratesAmplifiers(names, watts *column, amps map[string]*table) bool {
	met := make(map[string]bool)
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		k := join.Key(r.Values[names.i].Text)
		if _, err := notation.ParseRating(r.Values[watts.i].Text, notation.Auto); err != nil || amps[k] == nil || met[k] {
			return false
		}
		met[k] = true
	}
	return len(met) > 0
}
