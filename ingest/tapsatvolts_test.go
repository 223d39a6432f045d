package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// Of taps listed for several line voltages that of the line counts, wherever it is
// told. Common practice, no source.
func TestTapsAtTheVoltageOfTheLine(t *testing.T) {
	const rows = "room | circuit | quantity | tap[W]: W @70V | tap[W]: W @100V\nHall | L1 | 4 | 5 | 10\nShop | L2 | 2 | 2.5 | 5"
	for _, tt := range []struct {
		note  string
		want  []string
		asked bool
	}{
		{"L1: 100 V, 60 W amp channel 1. L2: 100 V, 60 W channel 2", []string{"10", "5"}, false},
		{"", []string{"5..10", "2.5..5"}, true},
	} {
		title := ""
		if tt.note != "" {
			title = "title : " + tt.note + "\n"
		}
		table := draw(layout.Loudspeakers, "Heads", title+rows)
		table.Columns[3].Volts, table.Columns[4].Volts = 70, 100
		j := jobOf(t, table)
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, show(l.Tap))
		}
		want(t, tt.note, got, tt.want)
		if len(j.Questions) > 0 != tt.asked {
			t.Errorf("%s: asked %v", tt.note, asked(j))
		}
	}
}
