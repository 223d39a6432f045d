package ingest

import (
	"strings"
	"testing"
)

// Sheets of prices count again what the other sheets list by place: it counts once. Common practice, no source.
func TestSheetsOfPricesCountNothing(t *testing.T) {
	const list = "Where | Kind | Qty | W | Amp\nHall | cabinet | 4 | 6 | A\nYard | horn | 2 | 15 | A\nQuay | horn | 3 | 15 | B\n"
	for _, c := range []struct{ name, prices, taken string }{
		{"no taps", "Item | Qty | Rate | Amount\nCabinet loudspeakers | 4 | 30 | 120\nHorn loudspeakers | 5 | 80 | 400\nTotal | | | 520", ""},
		{"taps in words", "Art. | Bezeichnung | Menge | EP € | GP €\n1 | Wandlautsprecher 6 W | 4 | 30 | 120\n2 | Druckkammerlautsprecher 20 W | 5 | 80 | 400", ""},
		{"other counts", "Art. | Bezeichnung | Menge | EP € | GP €\n1 | Wandlautsprecher 6 W | 4 | 30 | 120\n2 | Druckkammerlautsprecher 20 W | 6 | 80 | 480",
			"loudspeakers = those of the other lists"},
		{"a spare kit", "art. | omschrijving | aantal | eenheidsprijs | totaal\n10 | inbouwluidspreker | 4 | 30 | 120\n11 | hoornluidspreker | 5 | 80 | 400\n12 | versterker | 1 | 900 | 900", ""},
	} {
		j := wholeJob(t, "## List\nIce hall\n|\n"+list+"\n## Kalkulation 2\n"+c.prices)
		want(t, c.name, describe(j), []string{"4 x 6 W zone Hall channel A / 1", "2 x 15 W zone Yard channel A / 1", "3 x 15 W zone Quay channel B / 1"})
		if got := strings.Join(takenAs(j), "; "); strings.Contains(got, "those of the other lists") != (c.taken != "") {
			t.Errorf("%s: taken %s", c.name, got)
		}
	}
}

// A bill with prices that gives places is a list of its own.
func TestBillsThatCount(t *testing.T) {
	const list = "Where | Kind | Qty | W | Amp\nHall | cabinet | 1 | 6 | A\nYard | horn | 1 | 15 | A\n"
	const prices = "Place | Item | Qty | W | Rate | Amount\nQuay | horn loudspeaker | 4 | 15 | 80 | 320\nPier | horn loudspeaker | 2 | 15 | 80 | 160"
	if j := wholeJob(t, "## List\nIce hall\n|\n"+list+"\n## Kalkulation 2\n"+prices); len(j.Loudspeakers) != 4 {
		t.Error(describe(j))
	}
}
