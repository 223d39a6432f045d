package ingest

import (
	"strings"
	"testing"
)

// Two rows of one zone that state one length have one cable; where rows are of
// rooms, one pair alike may be chance. The tables are invented; common practice, no source.
func TestOneLengthOfAZone(t *testing.T) {
	for _, tt := range []struct {
		name, sheet string
		want        string
	}{
		{"two models in a zone", "Zone | Qty | Tap | Amp | Ch | Cable m\nPalms | 12 | 5 W | A | 1 | 97\nPalms | 2 | 10 W | A | 1 | 97\nFerns | 6 | 2.5 W | A | 2 | 45\nDock | 4 | 15 W | B | 1 | 186", "97 45 186"},
		{"rooms", "Zone | Room | Qty | Tap | Amp | Ch | Cable m\nPalms | Dome | 12 | 5 W | A | 1 | 97\nPalms | Porch | 2 | 10 W | A | 1 | 97\nFerns | Walk | 6 | 2.5 W | A | 2 | 45\nDock | Quay | 4 | 15 W | B | 1 | 186", "97 97 45 186"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var got []string
			for _, c := range wholeJob(t, "Garden PA, 100 V\n"+tt.sheet).Cables {
				got = append(got, show(c.Length))
			}
			want(t, "lengths", got, strings.Fields(tt.want))
		})
	}
}

// Where some cells of a column hold a size and a length, others hold a length alone.
// Common practice, no source.
func TestLengthAloneUnderCable(t *testing.T) {
	j := wholeJob(t, "Garden PA, 100 V\nZone | Qty | Tap | Amp | Cable\nPalms | 3 | 6 W | A | 40m 2x1,5\nFerns | 3 | 6 W | A | +25m\nKiosk | 1 | 3 W | B | 15 m")
	var got []string
	for _, c := range j.Cables {
		got = append(got, show(c.Length))
	}
	want(t, "lengths", got, []string{"40", "25", "15"})
}
