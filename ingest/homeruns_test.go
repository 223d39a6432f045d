package ingest

import (
	"slices"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// A home run is the cable from the rack to the first loudspeaker of a line.
// Common practice, no source.
func TestHomeRunCarriesItsLine(t *testing.T) {
	for _, tt := range []struct {
		name, second string
		want         []schedule.Reach
	}{
		{"stated once", "", []schedule.Reach{schedule.WholeLine}},
		{"stated for each", "52", []schedule.Reach{schedule.FromRack, schedule.FromRack}},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | tap[W] | circuit | length[m]: Home run\nS1 | 5 | L1 | 44\nS2 | 5 | L1 | "+tt.second))
		var got []schedule.Reach
		for _, c := range j.Cables {
			got = append(got, c.Reach)
		}
		if !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}
