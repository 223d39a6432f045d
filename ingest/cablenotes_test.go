package ingest

import (
	"strconv"
	"testing"

	"lineaudit/ingest/layout"
)

// The notes are common practice, no source; areas of gauges as in ASTM B258.
func TestNotesOnAllCables(t *testing.T) {
	for _, tt := range []struct {
		note string
		want []string // mm² of the cables
	}{
		{"All wire 16/2 except Z4 18/2", []string{"1.31", "0.823"}},
		{"All cable 2 x 1.5 mm²", []string{"1.5", "1.5"}},
		{"New cable in the hall 2.5 mm²", []string{"?", "?"}},
	} {
		drawn := draw(layout.Loudspeakers, "Heads", "title : "+tt.note+"\ntag | zone | tap[W] | length[m]\nS1 | Z1 Lobby | 5 | 44\nS2 | Z4 Store | 5 | 90")
		var got []string
		for _, c := range jobOf(t, drawn).Cables {
			if c.Area.Had() {
				got = append(got, strconv.FormatFloat(float64(c.Area.Low), 'g', 3, 64))
			} else {
				got = append(got, "?")
			}
		}
		want(t, tt.note, got, tt.want)
	}
}

func TestExceptionThatNoCableHasIsAsked(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : All wire 16/2 except the tower 18/2\ntag | zone | tap[W] | length[m]\nS1 | Z1 Lobby | 5 | 44"))
	if len(j.Questions) != 1 || j.Questions[0].Field != "cable" {
		t.Errorf("asked %v", asked(j))
	}
}
