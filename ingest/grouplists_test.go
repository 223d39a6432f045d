package ingest

import "testing"

// A sheet of amplifiers that rates what the loudspeakers name, and names nothing
// else, lists outputs.
func TestListsThatRateGroups(t *testing.T) {
	for _, c := range []struct {
		name, sheets   string
		outputs, zones []string
		on             string // the output of the first loudspeaker
	}{
		{"Dutch groups are circuits", `
## Luidsprekers
Kas Zuid - omroep 100 V
groep | ruimte | type | aantal | aftakking
1 | kas | hoorn | 6 | 15 W
2 | entree | plafond | 4 | 3 W
## Versterkers
groep | vermogen
1 | 120 W
2 | 30 W`, []string{"1 120 W", "2 30 W"}, []string{"kas", "entree"}, "1"},
		{"German circuits", `
## Lautsprecher
Orchideenhaus - ELA 100 V
Kreis | Raum | Typ | Anzahl | Abgriff
1 | Halle | Horn | 8 | 15 W
2 | Kasse | Decke | 2 | 3 W
## Verstärker
Kreis | Leistung
1 | 240 W
2 | 60 W`, []string{"1 240 W", "2 60 W"}, []string{"Halle", "Kasse"}, "1"},
		{"English zones, each with an amplifier", `
## Speakers
Planetarium PA 70V
Zone | Room | Qty | Tap
1 | Dome | 8 | 10W
2 | Shop | 2 | 2.5W
## Amplifiers
Zone | Power
1 | 120 W
2 | 60 W`, []string{"1 120 W", "2 60 W"}, []string{"1", "2"}, "1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "outputs", ratedOutputs(j), c.outputs)
			want(t, "zones", zoned(j), c.zones)
			if ch := j.Loudspeakers[0].Channel; ch == nil || ch.Label() != c.on {
				t.Errorf("the first hangs on %v", ch)
			}
		})
	}
}

// "6 @ 25W" is a count and a tap, whatever stands above it.
func TestCountsWithPowersBelowAnyHeader(t *testing.T) {
	for _, header := range []string{"Devices", "Heads fitted", "Bestückung", "Équipement"} {
		j := wholeJob(t, `
Boathouse PA, 70 V
Area | `+header+` | Amp
Slip | 4 @ 15W | PA1
Club | 8 @ 5W | PA2`)
		want(t, header, describe(j), []string{"4 x 15 W zone Slip channel PA1 / 1", "8 x 5 W zone Club channel PA2 / 1"})
	}
}
