package ingest

import (
	"strings"
	"testing"
)

// Lists of controls refer to items of the list of loudspeakers, one each, in the same or a looser writing; where
// that ticks the loudspeakers, the list has the names. Common practice, no source.
func TestControlsOfSingleItems(t *testing.T) {
	for _, c := range []struct{ head, items, controls string }{
		{"Pos | Place | Qty | W | VC", "1.a 1.b 2.a 2.b", "VC | Pos | W | Where\nVC-1 | 1b | 20 | by the door\nVC-2 | 2b | 6 | at the till"},
		{"Pos. | Raum | Anzahl | Abgriff [W] | Regler", "1 2 3 4", "Bez. | Typ | Montageort | wirkt auf Pos. | Belastbarkeit\nVC-1 | LR | neben Tür | 2 | 20 W\nVC-2 | LR | Theke | 4 | 6 W"},
		{"Pos | Plaats | St | W | VR", "A1 A2 B1 B2", "VR | Pos | W | Plaats bediening\nVC-1 | A.2 | 20 | balie\nVC-2 | B.2 | 6 | naast deur"},
		{"Pos. | Local | Qté | W | VC", "1.a 1.b 2.a 2.b", "VC | Pos. | W | Emplacement\nVC-1 | 1b | 20 | comptoir\nVC-2 | 2b | 6 | porte"},
	} {
		i := strings.Fields(c.items)
		j := wholeJob(t, "## List\nIce hall, loudspeakers\n|\n"+c.head+"\n"+i[0]+" | Ring | 6 | 15 |\n"+i[1]+" | Stand | 4 | 3 | x\n"+i[2]+" | Foyer | 8 | 3 |\n"+i[3]+" | Office | 1 | 3 | x\n## Controls\n"+c.controls)
		want(t, c.head, describe(j), []string{"6 x 15 W zone Ring", "4 x 3 W zone Stand control VC-1", "8 x 3 W zone Foyer", "1 x 3 W zone Office control VC-2"})
		want(t, c.head, ratedControls(j), []string{"VC-1 20", "VC-2 6"})
	}
}

// Controls that are only counted refer to nothing.
func TestNumbersOfControlsAreNoItems(t *testing.T) {
	j := wholeJob(t, "## List\nIce hall, loudspeakers\n|\nPos | Place | Qty | W\n1 | Ring | 6 | 15\n2 | Stand | 4 | 3\n3 | Foyer | 8 | 3\n## Controls\nPos | VC | W | Where\n1 | VC-1 | 20 | Foyer\n2 | VC-2 | 20 | Stand")
	want(t, "counted", describe(j), []string{"6 x 15 W zone Ring", "4 x 3 W zone Stand control VC-2", "8 x 3 W zone Foyer control VC-1"})
}
