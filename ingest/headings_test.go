package ingest

import (
	"slices"
	"testing"
)

// Titles of kinds of things are no zones; titles of places in front of an amplifier are.
func TestTitlesOfKindsAndOfPlaces(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		zones       []string
	}{
		{"kinds of things in a list", `
Boathouse 100 V
Tag | Item | Room | W
Loudspeakers
S1 | Horn | Slip | 15
S2 | Ceiling loudspeaker | Club | 6
Controls
C1 | Volume control | Club | 24`, []string{"Slip", "Club"}},
		{"Italian, places and their amplifiers over headers", `
Orto di Valle - elenco altoparlanti

SERRA (amplificatore A, 120 W)
n. | tipo | W | regolatore
1 | a parete | 10
2 | a parete | 10

BIGLIETTERIA E AULA (amplificatore B, 60 W)
n. | tipo | W | regolatore
3 | a soffitto | 3 | R1
4 | a soffitto | 6 | R2`, []string{"SERRA", "SERRA", "BIGLIETTERIA E AULA", "BIGLIETTERIA E AULA"}},
		{"German, places and their outputs", `
Schlossgarten ELA 100 V
Nr | Typ | Watt
Orangerie - Verstärker 1 Ausgang 1
1 | Säule | 10
2 | Säule | 10
Kasse - Verstärker 1 Ausgang 2
3 | Decke | 3`, []string{"Orangerie", "Orangerie", "Kasse"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			want(t, "zones", zoned(wholeJob(t, c.sheet)), c.zones)
		})
	}
}

// A list of amplifiers that gives the output of each group makes lines of groups;
// an output may have its power beside it.
func TestGroupsAndOutputsWithPower(t *testing.T) {
	j := wholeJob(t, `
## luidsprekers
Object | Kas De Wending
Ruimte | Aantal | Type | Aansluitwaarde | Groep
Kas | 10 | hoorn | 10 W | 1
Hal | 4 | inbouw | 6 W | 2
Kassa | 1 | inbouw | 3 W | 2
## versterkers
Groep | Versterker | Uitgang | Vermogen
1 | V1 | 1 | 200 W
2 | V2 | 1 | 60 W`)
	want(t, "groups", describe(j), []string{"10 x 10 W zone Kas channel V1 / 1", "4 x 6 W zone Hal channel V2 / 1", "1 x 3 W zone Kassa channel V2 / 1"})

	for _, header := range []string{"Rack way and its watts", "Kanal u. was er gibt", "Voie (et sa puissance)"} {
		j = wholeJob(t, `
Boathouse 12, 100 V
Room | Heads | Each tap | `+header+`
Slipway | 4 | 7.5 W | 1, 60 W
Boat hall | 10 | 5 W | 2, 120 W
Loft | 6 | 2.5 W | 2, 120 W`)
		want(t, header, ratedOutputs(j), []string{"1 60 W", "2 120 W"})
	}
}

// "Ditto" in a bill hangs on the output of the item above; a spare is none that is installed.
func TestDittoInABill(t *testing.T) {
	j := wholeJob(t, `
BILL 4 - LILY HOUSE SOUND, 100 V line
Item | Description | Unit | Qty
A | Ceiling loudspeaker 6 W, set to 3 W, in lily house; connected to amplifier A, output 1 | nr | 14
B | Ditto, but set to 1.5 W, in corridor | nr | 9
C | Horn loudspeaker 15 W, at full power, to service yard; amplifier A, output 2 | nr | 2
D | Spare ceiling loudspeaker 6 W as item A, handed over boxed, set to 3 W | nr | 2`)
	want(t, "loudspeakers", describe(j)[:3], []string{"14 x 3 W zone lily house channel A / 1", "9 x 1.5 W zone corridor channel A / 1", "2 x 15 W zone service yard channel A / 2"})
	if !slices.ContainsFunc(describe(j)[3:], func(s string) bool { return s[len(s)-5:] == "spare" }) {
		t.Errorf("no spare: %q", describe(j))
	}
}
