package ingest

import (
	"strings"
	"testing"
)

// Titles of an output alone and a place with a number of its own are both, above headers that come again.
func TestTitlesOfOutputsAtNumberedPlaces(t *testing.T) {
	for _, c := range []string{"OUTPUT 1 - PLATFORM 1/OUTPUT 2 - PLATFORM 2", "Ausgang 1 – Gleis 1/Ausgang 2 – Gleis 2", "Sortie 1, Quai 1/Sortie 2, Quai 2",
		"Salida 1 (Andén 1)/Salida 2 (Andén 2)", "Uscita 1 - Binario 1/Uscita 2 - Binario 2", "Uitgang 1 - Perron 1/Uitgang 2 - Perron 2"} {
		first, second, _ := strings.Cut(c, "/")
		header := "Post | Kind | Tap | Remarks\n"
		j := wholeJob(t, "Elmfield halt, 100 V\n|\n"+first+"\n"+header+"1 | horn | 6 W |\n2 | horn | 6 W |\n"+second+"\n"+header+"1 | horn | 10 W | loud\n2 | horn | 10 W |")
		place := func(title string) string {
			return strings.TrimRight(strings.Join(strings.Fields(title)[len(strings.Fields(title))-2:], " "), ")")
		}
		one, two := strings.TrimLeft(place(first), "("), strings.TrimLeft(place(second), "(")
		want(t, c, describe(j), []string{"1 x 6 W zone " + one + " channel 1", "1 x 6 W zone " + one + " channel 1",
			"1 x 10 W zone " + two + " channel 2", "1 x 10 W zone " + two + " channel 2"})
	}
}
