package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// A row that tells of a part of the row above counts nothing twice. Common
// practice in six languages, no source.
func TestPartsOfTheRowAbove(t *testing.T) {
	for _, words := range []string{"of which behind a wall control 36 W", "davon hinter Regler 36 W", "dont derrière atténuateur 36 W", "di cui dietro attenuatore 36 W"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "description | quantity | tap[W] | channel\nCeiling | 14 | 3 | 2\n"+words+" | 8 | 3 |\nHorn | 4 | 15 | 3"))
		if got := describe(j); len(got) != 3 || got[0] != "6 x 3 W channel 2" || j.Loudspeakers[1].Channel != j.Loudspeakers[0].Channel || j.Loudspeakers[1].Count.High != 8 {
			t.Errorf("%s: %q", words, got)
		}
	}
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "description | quantity | tap[W] | channel\nCeiling | 4 | 3 | 2\nof which in the hall | 8 | 3 |"))
	if len(j.Questions) == 0 {
		t.Error("more than there are is not asked")
	}
}
