package ingest

import (
	"strings"
	"testing"
)

// A row for each line names its rooms in one cell, a line of text each. Common practice, no source.
func TestRoomsInOneCell(t *testing.T) {
	for _, header := range []string{
		"Group | Name | Speakers (qty x tap) | Total W | Amplifier | Output", "Gruppe | Name | Lautsprecher (Anzahl x W) | Summe W | Verstärker | Ausgang",
		"Groupe | Nom | Haut-parleurs (nombre x prise) | Total W | Ampli | Sortie", "Grupo | Nombre | Altavoces (cantidad x toma) | Total W | Amplificador | Salida",
		"Gruppo | Nome | Diffusori (numero x presa) | Totale W | Amplificatore | Uscita", "Groep | Naam | Luidsprekers (aantal x stand) | Totaal W | Versterker | Uitgang",
	} {
		for _, between := range []string{"\n", "; "} {
			book := drawnBook("Grebe playhouse - 100 V\n|\n" + header + `
G1 | Foyers | Lower foyer: 6 x 6 W~Upper foyer: 5 x 6 W | 66 | PA-1 (2 x 120 W) | 1
G2 | Dressing | Dressing 1: 2 x 3 W~Dressing 2: 2 x 3 W~Corridor: 4 x 1,5 W | 18 | PA-1 | 2
G3 | Stage | Wings: 2 x 10 W | 20 | PA-2 (2 x 60 W) | 1
`)
			for i := range book.Sheets[0].Rows {
				for c := range book.Sheets[0].Rows[i].Cells() {
					c.Text = strings.ReplaceAll(c.Text, "~", between)
				}
			}
			j := Read(book, Options{}).Jobs[0]
			want(t, header, describe(j), []string{"6 x 6 W zone Foyers channel PA-1 / 1", "5 x 6 W zone Foyers channel PA-1 / 1", "2 x 3 W zone Dressing channel PA-1 / 2",
				"2 x 3 W zone Dressing channel PA-1 / 2", "4 x 1.5 W zone Dressing channel PA-1 / 2", "2 x 10 W zone Stage channel PA-2 / 1"})
			if len(j.Questions) > 0 {
				t.Errorf("%s: asked %v", header, asked(j))
			}
		}
	}
}
