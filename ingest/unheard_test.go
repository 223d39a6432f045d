package ingest

import "testing"

// A note that says what a control may carry is asked about where nothing came of it.
// The tables are invented; common practice, no source.
func TestNotesOfControlsThatAreNotHeard(t *testing.T) {
	const list = "Boathouse PA, 100 V\nCircuit | Room | Qty | Tap\nA | Slip | 4 | 15 W\nB | Club | 6 | 6 W\n\n"
	for _, tt := range []struct {
		note string
		want []string
	}{
		{"Half of the boats hang near a volume control of unknown make, 10 W or more", []string{"A6 control"}},
		{"Club: volume control 50 W", nil},
		{"All volume controls need a 24 V override", nil},
	} {
		want(t, tt.note, asked(wholeJob(t, list+tt.note)), tt.want)
	}
}
