package ingest

import "testing"

// A register names in the cell for what supplies a loudspeaker the control between the two.
func TestControlsNamedOnTheWay(t *testing.T) {
	for _, via := range []string{"via", "über", "mediante", "tramite"} {
		j := wholeJob(t, "## S\nAsset no. | Class | Description | Room | Tapping | Supplied by\n"+
			"MZ-001 | Amplifier | Mixer amplifier, 240 W, 100 V line | Store | | \n"+
			"MZ-010 | Loudspeaker | Ceiling | Entry | 6 W | MZ-001\nMZ-011 | Loudspeaker | Wall | Gallery | 6 W | MZ-001 "+via+" MZ-020\n"+
			"MZ-012 | Loudspeaker | Wall | Annexe | 3 W | MZ-001 "+via+" MZ-020\nMZ-013 | Loudspeaker | Wall | Gallery | 3 W | MZ-001\n"+
			"MZ-020 | Volume control | Rotary 24 W | Gallery | | MZ-001")
		var got []string
		for _, l := range j.Loudspeakers {
			if l.Control == nil {
				got = append(got, "-")
				continue
			}
			got = append(got, l.Control.Name)
		}
		want(t, via, got, []string{"-", "MZ-020", "MZ-020", "-"})
	}
}
