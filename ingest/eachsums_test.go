package ingest

import (
	"strings"
	"testing"
)

// Places whose figures happen to be those of the rows above together are places like them: watts of one are no
// sum, and a row with a remark of its own sums up nothing. Common practice, no source.
func TestPlacesThatLookLikeSums(t *testing.T) {
	for _, c := range []struct{ head, remarks string }{
		{"Where | How many | Watts each | Fixed to", "ceiling/ceiling/beams/beams/wall"},
		{"Wo | Anzahl | Watt je Stück | Befestigt an", "Decke/Decke/Balken/Balken/Wand"},
		{"Stanza | Casse | Watt ognuna | Dove", "soffitto/soffitto/travi/travi/parete"},
		{"Lugar | Altavoces | Vatios cada uno | Observaciones", "techo/techo/vigas/vigas/pared"},
		{"Lieu | Haut-parleurs | W/HP", "////"},
		{"Waar | Aantal | Watt per stuk", "////"},
	} {
		m := strings.Split(c.remarks, "/")
		j := wholeJob(t, "Paper museum, loudspeakers 100 V\n|\n"+c.head+"\nShop | 2 | 3 | "+m[0]+"\nDesk | 2 | 3 | "+m[1]+"\nHall | 4 | 6 | "+m[2]+"\nGallery | 4 | 6 | "+m[3]+"\nYard | 3 | 6 | "+m[4])
		want(t, c.head, describe(j), []string{"2 x 3 W zone Shop", "2 x 3 W zone Desk", "4 x 6 W zone Hall", "4 x 6 W zone Gallery", "3 x 6 W zone Yard"})
	}
	j := wholeJob(t, "Paper museum, loudspeakers 100 V\n|\nWhere | Qty | Tap (W) | Total (W)\nA | 2 | 3 | 6\nB | 2 | 3 | 6\nC | 4 | 1.5 | 6\nSpeakers | 8 | | 18")
	want(t, "real sums", describe(j), []string{"2 x 3 W zone A", "2 x 3 W zone B", "4 x 1.5 W zone C"})
}
