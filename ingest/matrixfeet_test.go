package ingest

import (
	"fmt"
	"strings"
	"testing"
)

// Below the counts of a matrix of rooms by lines stand the taps of the lines, what hangs on them, what feeds them and what
// that gives, behind a blank row or none. Common practice, no source.
func TestLinesBelowCountsOfLines(t *testing.T) {
	for _, c := range []struct{ room, line, tap, load, amp, output, watts string }{
		{"Room", "Line", "Tap (W)", "Total W", "Amplifier", "Output", "Output W"},
		{"Raum", "Linie", "Abgriff W", "Summe W", "Endstufe", "Ausgang", "Leistung Ausgang"},
		{"Local", "Ligne", "Prise W", "Total W", "Ampli", "Sortie", "Puissance sortie"},
		{"Sala", "Línea", "Toma W", "Total W", "Etapa", "Salida", "Potencia salida"},
		{"Ambiente", "Linea", "Presa W", "Totale W", "Finale di potenza", "Uscita", "Potenza uscita"},
		{"Ruimte", "Lijn", "Aftakking W", "Totaal W", "Versterker", "Uitgang", "Vermogen uitgang"},
	} {
		counts := fmt.Sprintf("Riverside Theatre\n|\n%s | %[2]s 1 | %[2]s 2 | %[2]s 3\nStalls | 8 | | \nGallery | | 6 | \nFoyer | | | 6\n", c.room, c.line)
		feed := fmt.Sprintf("%s | Amp A | Amp A | Amp B\n%s | 1 | 2 | 1\n%s | 120 | 120 | 60", c.amp, c.output, c.watts)
		for name, sheet := range map[string]string{
			"one block":    counts + c.tap + " | 10 | 10 | 6\n" + feed,
			"with sums":    counts + c.tap + " | 10 | 10 | 6\n" + c.load + " | 80 | 60 | 36\n" + feed,
			"behind a row": counts + c.tap + " | 10 | 10 | 6\n" + c.load + " | 80 | 60 | 36\n|\n" + feed,
			"counts with taps": strings.NewReplacer("| 8 |", "| 8x10W |", "| 6 | \n", "| 6x10W | \n", "| | 6\n", "| | 6x6W\n").Replace(counts) +
				c.load + " | 80 | 60 | 36\n" + feed,
		} {
			j := wholeJob(t, sheet)
			var got []string
			for _, l := range j.Loudspeakers {
				got = append(got, fmt.Sprintf("%s %s x %s on %s %s", l.Zone.Name, show(l.Count), show(l.Tap), l.Channel.Label(), show(l.Channel.Rated)))
			}
			want(t, c.line+", "+name, got, []string{"Stalls 8 x 10 on Amp A / 1 120", "Gallery 6 x 10 on Amp A / 2 120", "Foyer 6 x 6 on Amp B / 1 60"})
		}
	}
}
