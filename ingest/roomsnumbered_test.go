package ingest

import (
	"strings"
	"testing"
)

// A list of controls names rooms by their numbers, which stand beside the names of the rooms below a word for rooms,
// or before them in one cell. Common practice, no source.
func TestControlsByNumbersOfRooms(t *testing.T) {
	for _, c := range []struct{ name, room, described, qty, tap, output, control string }{
		{"English", "Room", "Description", "Qty", "Tap", "Output", "Attenuator"},
		{"German", "Raum", "Bezeichnung", "Anzahl", "Abgriff", "Ausgang", "Regler"},
		{"French", "Local", "Désignation", "Nb", "Prise", "Sortie", "Atténuateur"},
		{"Spanish", "Local", "Descripción", "Uds", "Toma", "Salida", "Atenuador"},
		{"Italian", "Locale", "Descrizione", "N. diff.", "Presa", "Uscita", "Attenuatore"},
		{"Dutch", "Ruimte", "Omschrijving", "Aantal", "Afgetakt op", "Uitgang", "Regelaar"},
	} {
		rest := " | " + c.qty + " | " + c.tap + " | " + c.output
		controls := "\n## C\n" + c.control + " | " + c.room + " | W\nVR1 | 0.02 | 12\nVR2 | 0.10 | 6"
		hung := []string{"12 x 6 W zone Atrium channel 1", "3 x 3 W zone Forum control VR1 channel 1", "2 x 3 W zone Studio control VR2 channel 2", "1 x 3 W zone Archiv channel 2"}
		j := wholeJob(t, "## L\nFern library, 100 V\n|\n"+c.room+" | "+c.described+" | Typ"+rest+
			"\n0.01 | Atrium | PL | 12 | 6 W | 1\n0.02 | Forum | PL | 3 | 3 W | 1\n0.10 | Studio | PR | 2 | 3 W | 2\nP1 | Archiv | PL | 1 | 3 W | 2"+controls)
		want(t, c.name, describe(j), hung)
		for i, number := range []string{"0.01", "0.02", "0.10", "0.11"} {
			hung[i] = strings.Replace(hung[i], "zone ", "zone "+number+" ", 1)
		}
		j = wholeJob(t, "## L\nFern library, 100 V\n|\n"+c.room+rest+
			"\n0.01 Atrium | 12 | 6 W | 1\n0.02 Forum | 3 | 3 W | 1\n0.10 Studio | 2 | 3 W | 2\n0.11 Archiv | 1 | 3 W | 2"+controls)
		want(t, c.name+", in one cell", describe(j), hung)
	}
}
