package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

func TestTapsAtSeveralLineVoltagesAreAsked(t *testing.T) {
	rows := "room | quantity | tap | channel\nBays | 4 | 7.5 W @ 70 V | 1\nSlip | 2 | 15 W @ 100 V | 1"
	for _, tt := range []struct {
		name, table string
		want        int
	}{
		{"no line voltage", rows, 1},
		{"stated above", "title line voltage: 100 V\n" + rows, 0},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.table))
			n := 0
			for _, q := range j.Questions {
				if q.Field == "line voltage" {
					n++
				}
			}
			if n != tt.want {
				t.Errorf("asked %v", asked(j))
			}
		})
	}
}
