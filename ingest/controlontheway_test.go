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

// What feeds a row and the control on the way share a cell with a comma; the register describes both. Common practice, no source.
func TestControlsOnTheWayBehindACommaAreNoAmplifiers(t *testing.T) {
	for _, c := range []struct{ hangs, via, amp, control string }{
		{"Connected to", "via", "Amplifier", "Volume control"}, {"Angeschlossen an", "über", "Verstärker", "Lautstärkeregler"}, {"Raccordé à", "via", "Amplificateur", "Atténuateur"},
		{"Conectado a", "mediante", "Amplificador", "Atenuador"}, {"Collegato a", "tramite", "Amplificatore", "Attenuatore"}, {"Aangesloten op", "via", "Versterker", "Volumeregelaar"},
	} {
		j := wholeJob(t, "Elmfield planetarium\nAsset no. | Description | Location | Qty | Power | "+c.hangs+"\n3001 | "+c.amp+" AM-A, 120 W, 100 V | Plant | 1 | | \n3002 | "+c.amp+" AM-B, 60 W, 100 V | Plant | 1 | | \n"+
			"3003 | Wall loudspeaker | Dome | 8 | 6 W | AM-A\n3004 | Ceiling loudspeaker | Shop | 2 | 3 W | AM-B\n3005 | Ceiling loudspeaker | Show | 6 | 3 W | AM-B, "+c.via+" AT-1\n3006 | Horn | Yard | 1 | 10 W | AM-B\n3007 | "+c.control+" AT-1, 24 W | Show | 1 | | \n")
		want(t, c.hangs, describe(j), []string{"3003 8 x 6 W zone Dome channel AM-A / 1", "3004 2 x 3 W zone Shop channel AM-B / 1", "3005 6 x 3 W zone Show control AT-1 channel AM-B / 1", "3006 1 x 10 W zone Yard channel AM-B / 1"})
	}
}
