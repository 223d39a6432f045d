package ingest

import (
	"slices"
	"testing"

	"lineaudit/ingest/layout"
)

// A cell of controls that is merged over several rows is one control of all of them.
// Common practice, no source.
func TestMergedCellsOfControls(t *testing.T) {
	for said, want := range map[string]string{
		"behind the bar, 24 W": "bar 24 W x2", "achter de toog, 24 W": "toog 24 W x2", "yes, 24 W": "control (Bar) 24 W x2", "24 W": "control (Bar) 24 W x2",
	} {
		table := draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | control\nHall | 8 | 3 | none\nBar | 2 | 6 | "+said+"\nHire | 2 | 3 | "+said)
		v, first := &table.Records[2].Values[3], &table.Records[1].Values[3]
		v.At, v.Merged = first.At, true
		j := jobOf(t, table)
		if got := controlsOf(j); got != want {
			t.Errorf("%s: got %s, want %s", said, got, want)
		}
		if len(takenAs(j)) == 0 || !slices.ContainsFunc(takenAs(j), func(a string) bool { return a[:2] == "D3" || a[:2] == "D4" }) {
			t.Errorf("%s: nothing told: %v", said, takenAs(j))
		}
	}
}
