package ingest

import (
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// ampsAsPlaces takes what stands over the counts of a table for amplifiers, and no zones or types, where each of them is an amplifier
// that another table names: "Zone | E1 | E2: Foyer | 8 x 10 W |" beside "Amplifier | Watts: E1 | 240 W". The zones are in the column that says so.
func ampsAsPlaces(tables []*table) {
	var amps map[string]*table
	for _, t := range tables {
		if !t.Matrix {
			continue
		}
		if amps == nil {
			amps = namedAmplifiers(tables)
		}
		for _, f := range []vocabulary.Field{vocabulary.Zone, vocabulary.Model, vocabulary.Circuit, vocabulary.Channel} {
			if c := t.acrossAmps(f, amps); c != nil {
				t.become(c, vocabulary.Amplifier, "they are amplifiers of another table")
				t.zonesGivenUp()
				break
			}
		}
	}
}

// acrossAmps is the column of a field that has two or more of these amplifiers, and nothing else, nil if there is none.
func (t *table) acrossAmps(f vocabulary.Field, amps map[string]*table) *column {
	if len(t.byField[f]) != 1 || t.has(vocabulary.Amplifier) {
		return nil
	}
	c, met := t.byField[f][0], make(map[string]bool)
	t.eachText(c, func(text string) { met[join.Key(text)] = true })
	for k := range met {
		if of := amps[k]; of == nil || of == t {
			return nil
		}
	}
	if len(met) < 2 {
		return nil
	}
	return c
}

// zonesGivenUp takes a column that was not understood for the zones where its header says that it has them.
func (t *table) zonesGivenUp() {
	for _, c := range t.byField[vocabulary.Unknown] {
		if c.Header != "" && !t.has(vocabulary.Zone) && vocabulary.NewScorer().Header(c.Header).Best().Field == vocabulary.Zone {
			t.become(c, vocabulary.Zone, "its header")
			return
		}
	}
}
