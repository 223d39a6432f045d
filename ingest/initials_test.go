package ingest

import "testing"

// Groups called by letters of which the first or last begins their header are lines where the header is a word for
// them and a list gives each an amplifier and an output; a header that means zones keeps them. Common practice, no source.
func TestGroupsCalledByInitials(t *testing.T) {
	const dutch = "Versterker | Uitgang | Vermogen (W) | Groep"
	for _, c := range []struct {
		group, listed, rooms, amps string
		lines                      bool
	}{
		{"LG1", "LG 1", "Ruimte | Aantal | Afgetakt op | Groep", dutch, true},
		{"LG-1", "LG1", "Ruimte | Aantal | Afgetakt op | Groep", dutch, true},
		{"Gr.1", "GR 1", "Ruimte | Aantal | Afgetakt op | Groep", dutch, true},
		{"SG1", "SG 1", "Room | Qty | Tap | Group", "Amplifier | Output | Power (W) | Group", false},
	} {
		j := wholeJob(t, "## A\nFern library, 100 V\n|\n"+c.rooms+"\nAtrium | 12 | 6 W | "+c.group+"\nForum | 4 | 3 W | "+c.group+"\n## B\n"+
			c.amps+"\nV1 | 1 | 120 | "+c.listed)
		one, two := "Atrium", "Forum"
		if !c.lines {
			one, two = c.listed, c.listed
		}
		want(t, c.group, describe(j), []string{"12 x 6 W zone " + one + " channel V1 / 1", "4 x 3 W zone " + two + " channel V1 / 1"})
	}
}
