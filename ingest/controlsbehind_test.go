package ingest

import (
	"testing"
)

// Lists of controls say behind which other each one hangs, or what feeds it: an amplifier or another
// control. Common practice, no source.
func TestControlsBehindControls(t *testing.T) {
	const list = "Rink - 100 V\n|\nWhere | Kind | Qty | W | Control | Amp\nHall | ceiling | 4 | 6 | P1 | A\nCafe | ceiling | 2 | 6 | P2 | A\nShop | ceiling | 2 | 3 | P3 | A\nYard | horn | 2 | 15 | | B\n|\n"
	for _, controls := range []string{
		"Control | Max W | Behind\nP1 | 60 |\nP2 | 20 | P1\nP3 | 10 | P1",
		"Control | Rated W | Fed from\nP1 | 60 | A\nP2 | 20 | P1\nP3 | 10 | P1",
		"Regler | Nennlast W | Sitzt hinter\nP1 | 60 | -\nP2 | 20 | P1\nP3 | 10 | P1",
		"Regolatore | Carico max W | A valle di\nP1 | 60 |\nP2 | 20 | P1\nP3 | 10 | P1",
	} {
		j := wholeJob(t, list+controls)
		if len(j.Controls) != 3 || len(j.Amplifiers) != 2 {
			t.Fatalf("%s: %d controls, %d amplifiers", controls, len(j.Controls), len(j.Amplifiers))
		}
		for i, c := range j.Controls {
			if up := c.Parent; (up == nil) != (i == 0) || up != nil && up != j.Controls[0] {
				t.Errorf("%s: %s hangs behind %v", controls, c.Name, up)
			}
		}
	}
}
