package ingest

import (
	"testing"
)

// Notes that list amplifiers with their powers, and what they feed. The tables are
// invented; what each must come to is common practice, no source.
func TestNotesOfSeveralAmplifiers(t *testing.T) {
	const lines = "Garden PA, 100 V\nZone | Qty | Tap | Line\nPalms | 8 | 6 W | L1\nFerns | 4 | 6 W | L2\nWalk | 10 | 10 W | L3\n\n"
	const outputs = "Garden PA, 100 V\nZone | Qty | Tap | Amp out\nPalms | 8 | 6 W | A1/1\nFerns | 4 | 6 W | A1/2\nWalk | 10 | 10 W | A2\n\n"
	for _, tt := range []struct {
		name, sheet string
		want        []string
	}{
		{"lines behind each", lines + "Amp F1 240W: L1+L2; Amp F2 120W: L3", []string{"F1 / L1 ? W", "F1 / L2 ? W", "F2 / L3 120 W"}},
		{"in cells of their own", lines + "Amp F1 240W: L1+L2 | Amp F2 120W: L3", []string{"F1 / L1 ? W", "F1 / L2 ? W", "F2 / L3 120 W"}},
		{"one, which feeds some lines", lines + "Amp F1 (240W): lines L1, L2", []string{"F1 / L1 ? W", "F1 / L2 ? W", "L3 ? W"}},
		{"parted by a dash", outputs + "A1: 2 x 60 W - A2: 120 W", []string{"A1 / 1 60 W", "A1 / 2 60 W", "A2 / 1 120 W"}},
		{"written close", outputs + "A1: 2x60W, A2: 120W", []string{"A1 / 1 60 W", "A1 / 2 60 W", "A2 / 1 120 W"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			want(t, "outputs", ratedOutputs(wholeJob(t, tt.sheet)), tt.want)
		})
	}
}
