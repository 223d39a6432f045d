package ingest

import (
	"fmt"
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

// A length that all rows of an output state is that of its one line, whatever
// the rooms on it; lengths that differ are runs of their own.
func TestLengthsOfOutputs(t *testing.T) {
	const head = "room | quantity | tap[W] | amplifier | channel | length[m] | gauge[mm2]\n"
	lines := func(rows string) (out []string) {
		for _, c := range jobOf(t, draw(layout.Loudspeakers, "L", head+rows)).Cables {
			out = append(out, fmt.Sprintf("%s m %v", show(c.Length), c.Reach == schedule.WholeLine))
		}
		return out
	}
	want(t, "repeated", lines("Hall | 4 | 6 | A1 | 1 | 60 | 1.5\nStage | 4 | 6 | A1 | 1 | 60 | 1.5\nFoyer | 4 | 6 | A1 | 2 | 85 | 1.5\nShop | 2 | 3 | A1 | 2 | 85 | 1.5"), []string{"60 m true", "85 m true"})
	if got := lines("Hall | 4 | 6 | A1 | 1 | 60 | 1.5\nStage | 4 | 6 | A1 | 1 | 75 | 1.5\nFoyer | 4 | 6 | A1 | 2 | 85 | 1.5\nShop | 2 | 3 | A1 | 2 | 85 | 1.5"); len(got) != 4 {
		t.Errorf("runs of their own: %v", got)
	}
}
