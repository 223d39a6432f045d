package ingest

import (
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// Each zone may have its circuits A and B, and a list of amplifiers tells which of them feeds
// which: "PA zone 1 | Circuit A | AMP 1A". The letter is a line's, no output's.

// linesOfZones takes the outputs of such a list for lines: their header speaks of lines, each zone has
// every line once, each amplifier feeds one line of a zone, some line name belongs to several
// amplifiers, and the loudspeakers of another table stand in lines of these names.
func linesOfZones(tables []*table) {
	var lines map[string]bool
	for _, t := range tables {
		zones, outputs, amps := t.byField[vocabulary.Zone], t.byField[vocabulary.Channel], t.byField[vocabulary.Amplifier]
		if t.kind != layout.Channels && t.kind != layout.Amplifiers || len(zones) != 1 || len(outputs) != 1 || len(amps) != 1 || t.has(vocabulary.Circuit) || !namesLines(outputs[0]) {
			continue
		}
		if lines == nil {
			lines = linesBesideZones(tables)
		}
		if t.pairZonesWithLines(zones[0], outputs[0], amps[0], lines) {
			t.become(outputs[0], vocabulary.Circuit, "each zone has its own, and the amplifiers stand beside them")
		}
	}
}

// linesBesideZones are the identities of the lines that loudspeakers stand in beside their zones.
func linesBesideZones(tables []*table) map[string]bool {
	out := make(map[string]bool)
	for _, t := range tables {
		if t.kind == layout.Channels || t.kind == layout.Amplifiers || !t.has(vocabulary.Zone) {
			continue
		}
		for _, c := range t.byField[vocabulary.Circuit] {
			t.eachText(c, func(text string) { out[lineIdentity(text)] = true })
		}
	}
	delete(out, "")
	return out
}

// pairZonesWithLines reports whether the rows of a table pair each zone with each of its lines once, an
// amplifier with one name of a line, and one of these names with several amplifiers.
func (t *table) pairZonesWithLines(zone, line, amp *column, known map[string]bool) bool {
	pairs, ofAmp, ofLine := make(map[[2]string]bool), make(map[string]string), make(map[string]string)
	several := false
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		z, l, a := join.Key(r.Values[zone.i].Text), lineIdentity(r.Values[line.i].Text), join.Key(r.Values[amp.i].Text)
		if z == "" || a == "" || !known[l] || pairs[[2]string{z, l}] || ofAmp[a] != "" && ofAmp[a] != l {
			return false
		}
		several = several || ofLine[l] != "" && ofLine[l] != a
		pairs[[2]string{z, l}], ofAmp[a], ofLine[l] = true, l, a
	}
	return several
}
