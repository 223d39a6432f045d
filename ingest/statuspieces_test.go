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
