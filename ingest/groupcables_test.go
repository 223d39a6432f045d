package ingest

import "testing"

// A list of cables names the groups that the list of amplifiers gives their outputs, and nothing else. Common practice, no source.
func TestCablesOfGroups(t *testing.T) {
	for _, group := range []string{"Groep", "Lijn", "Circuit", "Linie", "Ligne", "Línea", "Linea"} {
		j := wholeJob(t, "## A\nElmfield station\n|\n"+group+" | Room | Type | Qty | Tap W\nG1 | Platform | horn | 8 | 10 W\nG1 | Stairs | horn | 2 | 6 W\nG2 | Hall | ceiling | 6 | 6 W\n"+
			"## B\n"+group+" | Amplifier | Channel | Power\nG1 | V1 | 1 | 120 W\nG2 | V1 | 2 | 60 W\n"+
			"## C\n"+group+" | Cable | Length\nG1 | 2 x 2.5 mm² | 180 m\nG2 | 2 x 1.5 mm² | 60 m\n")
		want(t, group, describe(j), []string{"8 x 10 W zone Platform channel V1 / 1", "2 x 6 W zone Stairs channel V1 / 1", "6 x 6 W zone Hall channel V1 / 2"})
		var cables []string
		for _, k := range j.Cables {
			if k.Channel != nil {
				cables = append(cables, k.Channel.Label()+" "+k.Length.Written)
			}
		}
		want(t, group+", cables", cables, []string{"V1 / 1 180 m", "V1 / 2 60 m"})
	}
}
