package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// A remark that speaks of fewer loudspeakers than its row counts, or against its
// state, is asked about. Common practice, no source.
func TestRemarksOfSomeOfARow(t *testing.T) {
	for remark, questions := range map[string]int{"only 1 connected": 1, "nur 1 angeschlossen": 1, "2 removed 2019": 1, "only 4 left to paint": 0, "repainted 2019": 0, "": 0} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | status | notes\nHall | 4 | 5 | ok | "+remark+"\nShop | 2 | 6 | ok |"))
		if len(j.Questions) != questions || j.Loudspeakers[0].Count.High != 4 {
			t.Errorf("%s: asked %v", remark, asked(j))
		}
	}
}
