package ingest

import (
	"strings"
	"testing"
)

// A block for each zone, keys and values over the header of its loudspeakers. Common practice, no source.
func TestBlocksOfKeysAndValues(t *testing.T) {
	for _, w := range []string{
		"Card Zone Amp|Amp power|Control none Type|Qty|Tap W|Total W", "Blatt Zone Verstärker|Verstärkerleistung|Regler ohne Typ|Anzahl|Anzapfung W|Summe W",
		"Fiche Zone Ampli|Puissance ampli|Atténuateur sans Type HP|Nombre|Prise W|Total W", "Ficha Zona Etapa|Potencia etapa|Atenuador sin Tipo|Cantidad|Toma W|Total W",
		"Scheda Zona Ampli|Potenza ampli|Attenuatore senza Tipo|Quantità|Presa W|Totale W", "Kaart Zone Versterker|Vermogen versterker|Regelaar geen Soort|Aantal|Stand W|Totaal W",
	} {
		f := strings.Split(w, "|")
		first, third := strings.Fields(f[0]), strings.SplitN(f[2], " ", 3)
		header := strings.Join(append([]string{third[2]}, f[3:]...), " | ")
		r := strings.NewReplacer("CARD", first[0], "ZONE", first[1], "AMP", first[2], "POWER", f[1], "CONTROL", third[0], "NONE", third[1], "HEADER", header)
		j := wholeJob(t, r.Replace(`
Grebe stud farm | | | Job 0952
100 V line, a card for each zone
|
CARD 1
ZONE | Riding hall | AMP | AP1
POWER | 120 W | CONTROL | NONE
HEADER
Horn | 4 | 15 | 60
Column | 2 | 10 | 20
|
CARD 2
ZONE | Arena | AMP | AP2
POWER | 240 W | CONTROL | NONE
HEADER
Horn | 6 | 30 | 180
|
CARD 3
ZONE | Stables | AMP | AP3
POWER | 120 W | CONTROL | ATT1, 60 W
HEADER
Horn | 6 | 6 | 36
Box | 2 | 3 | 6
`))
		want(t, w, describe(j), []string{"4 x 15 W zone Riding hall channel AP1 / 1", "2 x 10 W zone Riding hall channel AP1 / 1", "6 x 30 W zone Arena channel AP2 / 1",
			"6 x 6 W zone Stables control ATT1 channel AP3 / 1", "2 x 3 W zone Stables control ATT1 channel AP3 / 1"})
		want(t, w, ratedOutputs(j), []string{"AP1 / 1 120 W", "AP2 / 1 240 W", "AP3 / 1 120 W"})
		if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "60" {
			t.Errorf("%s: controls %v", w, j.Controls)
		}
	}
}
