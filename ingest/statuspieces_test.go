package ingest

import "testing"

// A knob or a grille that is missing leaves its device connected; a device that is missing is gone.
func TestPiecesThatAreMissing(t *testing.T) {
	j := wholeJob(t, "## S\nTag | Room | Qty | Tap | Condition\nS1 | Loft | 1 | 6 W | Good\nS2 | Mill | 1 | 6 W | Grille missing\n"+
		"S3 | Weir | 1 | 6 W | Abdeckung fehlt\nS4 | Barn | 1 | 6 W | fehlt\nS5 | Store | 1 | 6 W | Good\nS6 | Dock | 1 | 6 W | Good\nS7 | Gate | 1 | 6 W | Good")
	var got []string
	for _, l := range j.Loudspeakers {
		got = append(got, l.Status.String())
	}
	want(t, "states", got, []string{"installed", "installed", "installed", "removed", "installed", "installed", "installed"})
}

// A remark may say on what occasion a loudspeaker was taken away; one of a piece or a control says nothing of it.
func TestWhenALoudspeakerWasTakenAway(t *testing.T) {
	for text, gone := range map[string]bool{
		"bei Umbau demontiert": true, "beim Anstrich abgebaut": true, "during the roof works removed": true, "lors des travaux déposé": true,
		"durante las obras retirado": true, "durante i lavori rimosso": true, "bij verbouwing verwijderd": true,
		"bei Umbau Abdeckung demontiert": false, "bei Umbau 2 demontiert": false, "bei Umbau Regler demontiert": false, "demontiert": false, "nach Umbau": false,
	} {
		if got := goneWhen(text); got != gone {
			t.Errorf("%s: %v", text, got)
		}
	}
}

// A remark that begins with a figure says that some of its row are gone, however often: the row counts, aloud.
// Common practice, no source.
func TestSomeOfARowAreGone(t *testing.T) {
	for _, c := range []struct {
		remark string
		gone   bool
	}{
		{"1 is missing since the works, removed", false}, {"1 LS fehlt seit Umbau, entfällt", false}, {"1 HP manque, supprimé", false}, {"1 altavoz desmontado, eliminado", false}, {"1 diffusore mancante, eliminato", false},
		{"1 luidspreker ontbreekt, vervallen", false}, {"fehlt seit Umbau, entfällt", true},
	} {
		j := wholeJob(t, "Station, loudspeakers 100 V\n|\nLine | Area | Qty | W each | Remarks\n1 | Hall | 8 | 3 | "+c.remark+"\n2 | Yard | 4 | 6 |\n3 | Dock | 4 | 6 |")
		if got := j.Loudspeakers[0].Status.String() != "installed"; got != c.gone {
			t.Errorf("%s: %v", c.remark, j.Loudspeakers[0].Status)
		}
		if len(j.Questions) == 0 && !c.gone {
			t.Errorf("%s: no question", c.remark)
		}
	}
}
