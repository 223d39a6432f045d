package ingest

import (
	"strings"
	"testing"
)

// A column of what controls act on, beside where they hang: a line as a whole, or places.
func TestWhatControlsActOn(t *testing.T) {
	for _, c := range []string{"Acts on|whole line L1|all of the Stand", "Wirkt auf|ganze Linie L1|Stand", "Agit sur|ligne L1|Stand", "Actúa sobre|toda la línea L1|Stand",
		"Agisce su|tutta la linea L1|Stand", "Werkt op|hele lijn L1|Stand"} {
		f := strings.Split(c, "|")
		j := wholeJob(t, "## A\nElmfield rink, 100 V\n|\nLine | Room | Qty | Tap (W)\nL1 | Foyer | 4 | 6\nL1 | Shop | 2 | 3\nL2 | Stand | 4 | 10\nL2 | Desk | 1 | 3\n\n## B\nControl | Room | Rating (W) | "+f[0]+
			"\nVC1 | Desk | 36 | "+f[1]+"\nVC2 | Shop | 60 | "+f[2])
		got := make([]string, 0, 4)
		for _, l := range j.Loudspeakers {
			name := "none"
			if l.Control != nil {
				name = l.Control.Name
			}
			got = append(got, l.Room.Value+" "+name)
		}
		want(t, c, got, []string{"Foyer VC1", "Shop VC1", "Stand VC2", "Desk none"})
	}
}

// Beside a zone such a column names a room of it, or all of it.
func TestWhatControlsActOnWithinZones(t *testing.T) {
	for _, c := range []string{"Turns down|whole zone", "Regelt|ganze Zone", "Règle|toute la zone", "Regula|toda la zona", "Regola|tutta la zona", "Regelt|hele zone"} {
		head, all, _ := strings.Cut(c, "|")
		j := wholeJob(t, "## A\nElmfield garden, 100 V\n|\nZone | Room | Qty | Tap (W)\nHouse | Hall | 4 | 6\nHouse | Desk | 2 | 3\nOrchids | Front | 4 | 10\nOrchids | Rear | 1 | 3\n\n## B\nControl | Zone | "+
			head+" | Rating (W)\nVR1 | House | Desk | 12\nVR2 | Orchids | "+all+" | 60")
		got := make([]string, 0, 4)
		for _, l := range j.Loudspeakers {
			name := "none"
			if l.Control != nil {
				name = l.Control.Name
			} else if l.Zone.Control != nil {
				name = l.Zone.Control.Name
			}
			got = append(got, l.Room.Value+" "+name)
		}
		want(t, c, got, []string{"Hall none", "Desk VR1", "Front VR2", "Rear VR2"})
	}
}
