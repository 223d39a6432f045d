package ingest

import "testing"

// A record of measurements writes lines with what they feed. Common practice, no source.
func TestMeasuredLinesWithPlaces(t *testing.T) {
	j := wholeJob(t, `## Measured
Linie | Soll-Last [W] | Z gemessen [Ohm] | i.O.
1.1 Tribüne Ost | 96 | 105 | ja
1.2 Tribüne West | 96 | 99 | ja
2.1 Kabinen | 18 | 380 | ja
|
## Bestückung
Linie | Ort | Typ | Stk. | W
1.1 | Tribüne Ost | Tonsäule | 4 | 24
1.2 | Tribüne West | Tonsäule | 4 | 24
2.1 | Kabine 1-6 | Decke | 6 | 3
|
## Rack
Gerät | Ausgänge | Bemerkung
Endstufe 1 | 2 x 120 W | 1.1, 1.2
Endstufe 2 | 1 x 60 W | 2.1`)
	want(t, "outputs", channelRatings(j), []string{"Endstufe 1 / 1 120 W ? V", "Endstufe 1 / 2 120 W ? V", "Endstufe 2 / 1 60 W ? V"})
	for _, m := range j.Measurements {
		if m.Channel == nil || m.Channel.Amplifier == nil {
			t.Errorf("%v: of no output of an amplifier", m.Ohms)
		}
	}
	if len(j.Measurements) != 3 {
		t.Errorf("%d measurements", len(j.Measurements))
	}
}
