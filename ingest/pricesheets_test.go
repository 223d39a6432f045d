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

// A sheet of prices with hours and feet of cable beside a take-off: its amplifiers and controls are those of the other
// sheets, and a control's tag may stand ahead of the words for it. Common practice, no source.
func TestPricesOfAmplifiersAndHours(t *testing.T) {
	for _, c := range []struct{ prices, control string }{
		{"Item | Qty | Unit price | Extended\nCeiling speaker | 11 | 88 | 968\nAmplifier 2 x 120 W | 1 | 940 | 940\nVolume control | 1 | 46 | 46\nSpeaker wire, per ft | 635 | 0.38 | 241\nLabor, hr | 52 | 74 | 3848", "volume control"},
		{"Bezeichnung | Menge | EP € | GP €\nDeckenlautsprecher | 11 | 88 | 968\nVerstärker 2 x 120 W | 1 | 940 | 940\nLautstärkeregler | 1 | 46 | 46\nLautsprecherkabel, m | 635 | 0,38 | 241\nArbeitszeit, h | 52 | 74 | 3848", "Lautstärkeregler"},
		{"Omschrijving | Aantal | Eenheidsprijs | Totaal\nPlafondluidspreker | 11 | 88 | 968\nVersterker 2 x 120 W | 1 | 940 | 940\nVolumeregelaar | 1 | 46 | 46\nLuidsprekerkabel, m | 635 | 0,38 | 241\nArbeidsuren | 52 | 74 | 3848", "volumeregelaar"},
	} {
		j := wholeJob(t, "## Prices\nElm museum\n|\n"+c.prices+"\n## Places\nLine | Room | Qty | Device | Tap, W\n1 | Lobby | 6 | Ceiling speaker | 5\n2 | Class | 3 | Ceiling speaker | 2.5\n3 | Office | 2 | Ceiling speaker | 2.5\n2 | Class | 1 | VC-1 "+c.control+", 35 W |\n"+
			"## Amps\nLine | Amp | Channel | Amp watts per channel\n1 | PA-1 | A | 120\n2 | PA-1 | B | 120\n3 | PA-2 | 1 | 60\n")
		want(t, c.control, describe(j), []string{"6 x 5 W zone Lobby channel PA-1 / A", "3 x 2.5 W zone Class control VC-1 channel PA-1 / B", "2 x 2.5 W zone Office channel PA-2 / 1"})
		want(t, c.control, channelRatings(j), []string{"PA-1 / A 120 W ? V", "PA-1 / B 120 W ? V", "PA-2 / 1 60 W ? V"})
	}
}
