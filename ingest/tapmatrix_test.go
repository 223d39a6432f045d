package ingest

import "testing"

// Taps across below one word for them with the line voltage, a unit beside them; and a
// list of zones with their amplifiers, the power of each, and a control here and there.
// Common practice, no source.
func TestTapsAcrossAndZonesBelow(t *testing.T) {
	for _, c := range []struct {
		name, sheets string
		want, rated  []string
		controls     int
	}{
		{"French", `
Patinoire, HP par prises
Local | Zone | Nombre par prise (100 V) | | | Somme
| | 3 W | 6 W | 15 W | W
Piste | 1 | | 2 | 8 | 132
Tribune | 1 | | | 4 | 60
Bar | 2 | 4 | 2 | | 24
Vestiaires | 2 | 6 | | | 18

Zone | Ampli | W | Atténuateur
1 | AM1 | 240 |
2 | AM2 | 60 |
3 | AM3 | 120 | AT1 (50 W)`,
			[]string{"2 x 6 W at 100 V zone 1 channel AM1 / 1", "8 x 15 W at 100 V zone 1 channel AM1 / 1", "4 x 15 W at 100 V zone 1 channel AM1 / 1",
				"4 x 3 W at 100 V zone 2 channel AM2 / 1", "2 x 6 W at 100 V zone 2 channel AM2 / 1", "6 x 3 W at 100 V zone 2 channel AM2 / 1"},
			[]string{"AM1 / 1 240 W", "AM2 / 1 60 W", "AM3 / 1 120 W"}, 1},
		{"English, each row behind a control of its own", `
PA, 100 V
Zone | Room | Qty | Tap W
A | Bar | 4 | 6
B | Hall | 6 | 6

Control | Zone | Amp | W
VC1 | A | P1 | 36
VC2 | B | P1 | 50`,
			[]string{"4 x 6 W zone A control VC1 channel P1 / 1", "6 x 6 W zone B control VC2 channel P1 / 1"}, []string{"P1 / 1 ? W"}, 2},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "loudspeakers", describe(j), c.want)
			want(t, "outputs", ratedOutputs(j), c.rated)
			if len(j.Controls) != c.controls {
				t.Errorf("%d controls, want %d", len(j.Controls), c.controls)
			}
			for _, k := range j.Controls {
				if !k.Rated.Had() {
					t.Errorf("%s is not rated", k.Name)
				}
			}
		})
	}
}
