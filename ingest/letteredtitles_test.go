package ingest

import (
	"strings"
	"testing"
)

// Bills whose chapters are lettered and whose items count on from the letter; titles say after "from" what feeds a place, and
// that spares follow. Common practice, no source.
func TestBillsWithLetteredChapters(t *testing.T) {
	for _, c := range []struct{ name, head, from, horn, ceiling, amp, control, spares string }{
		{"English", "Item | Description | Unit | Qty | Rate", "from amplifier", "Horn loudspeaker, tapped at 15 W", "Ceiling loudspeaker, tapped at 3 W", "Amplifier", "Attenuator ATT1, 15 W, for item B1", "SPARES TO CLIENT'S STORE"},
		{"German", "Pos. | Bezeichnung | Einheit | Menge | EP", "ab Verstärker", "Hornlautsprecher, Abgriff 15 W", "Deckenlautsprecher, Abgriff 3 W", "Verstärker", "Lautstärkesteller ATT1, 15 W, für Pos. B1", "ERSATZTEILE FÜR DAS LAGER"},
		{"French", "Poste | Désignation | Unité | Qté | PU", "depuis ampli", "Haut-parleur à pavillon, prise 15 W", "Haut-parleur de plafond, prise 3 W", "Amplificateur", "Atténuateur ATT1, 15 W, pour poste B1", "PIÈCES DE RECHANGE AU MAGASIN"},
	} {
		j := wholeJob(t, "## Bill\nDepot of Hex, 100 V\n|\n"+c.head+"\nA | HALL ("+c.from+" PA1)\nA1 | "+c.horn+" | nr | 8 | 62\nA2 | "+c.horn+" | nr | 4 | 62\nB | MESS ("+c.from+" PA2)\n"+
			"B1 | "+c.ceiling+" | nr | 5 | 21\nB2 | "+c.control+" | nr | 1 | 28\nC | EQUIPMENT\nC1 | "+c.amp+" PA1, 240 W | nr | 1 | 640\nC2 | "+c.amp+" PA2, 60 W | nr | 1 | 290\nD | "+c.spares+"\nD1 | "+c.horn+" | nr | 2 | 62")
		got := describe(j)
		for i := range got {
			got[i] = strings.TrimPrefix(got[i], []string{"A1 ", "A2 ", "B1 ", "D1 "}[min(i, 3)]) // items may be tags
		}
		one, two := c.amp+" PA1 / 1", c.amp+" PA2 / 1"
		want(t, c.name, got, []string{"8 x 15 W zone HALL channel " + one, "4 x 15 W zone HALL channel " + one, "5 x 3 W zone MESS control ATT1 channel " + two, "2 x 15 W zone " + c.spares + " channel " + two + " spare"})
		want(t, c.name, ratedOutputs(j), []string{one + " 240 W", two + " 60 W"})
		want(t, c.name, ratedControls(j), []string{"ATT1 15"})
	}
}
