package ingest

import "testing"

// Lists side by side, each under its place, and below them a further one beside the outputs: the header comes
// again on the left only. A note gives one of the places its control. Common practice, no source.
func TestListsSideBySideAboveOutputs(t *testing.T) {
	for _, c := range []struct{ name, sheet, hall, left, right, control string }{
		{"English", `
Elmfield landing stage, PA at 100 V
|
PIER 1 | | | | | PIER 2
Point | Qty | Tap W | Line | | Point | Qty | Tap W | Line
Canopy north | 4 | 6 | L1A | | Canopy | 4 | 6 | L2A
Masts 1 to 4 | 4 | 6 | L1B | | Masts 5 to 10 | 6 | 10 | L2A
Lift | 1 | 3 | L1A | | Lift | 1 | 3 | L2B
|
BUILDING | | | | | PA CABINET
Point | Qty | Tap W | Line | | Amp | Output | W | Line
Hall | 4 | 6 | L3 | | A1 | 1 | 120 | L1A
Ticket desk | 2 | 1.5 | L3 | | A1 | 2 | 100 | L1B
WC | 2 | 1.5 | L3 | | A2 | 1 | 120 | L2A
Stairs | 1 | 3 | L3 | | A2 | 2 | 60 | L2B
Office | 1 | 3 | L3 | | A3 | 1 | 60 | L3
|
The ticket desk carries control VC1 of 20 W.`, "BUILDING", "PIER 1", "PIER 2", "VC1"},
		{"German", `
Anleger Ulmenfeld, Beschallung 100 V
|
STEG 1 | | | | | STEG 2
Raum | Stk. | Abgriff W | Linie | | Raum | Stk. | Abgriff W | Linie
Dach Nord | 4 | 6 | L1A | | Dach | 4 | 6 | L2A
Masten 1 bis 4 | 4 | 6 | L1B | | Masten 5 bis 10 | 6 | 10 | L2A
Aufzug | 1 | 3 | L1A | | Aufzug | 1 | 3 | L2B
|
HAUS | | | | | SCHRANK
Raum | Stk. | Abgriff W | Linie | | Endstufe | Ausgang | W | Linie
Halle | 4 | 6 | L3 | | A1 | 1 | 120 | L1A
Warteraum | 2 | 1,5 | L3 | | A1 | 2 | 100 | L1B
WC | 2 | 1,5 | L3 | | A2 | 1 | 120 | L2A
Treppe | 1 | 3 | L3 | | A2 | 2 | 60 | L2B
Kasse | 1 | 3 | L3 | | A3 | 1 | 60 | L3
|
Der Warteraum erhält den Regler R1 mit 20 W.`, "HAUS", "STEG 1", "STEG 2", "R1"},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheet)
			want(t, "loudspeakers", describe(j), []string{
				"4 x 6 W zone " + c.left + " channel A1 / 1", "4 x 6 W zone " + c.left + " channel A1 / 2", "1 x 3 W zone " + c.left + " channel A1 / 1",
				"4 x 6 W zone " + c.hall + " channel A3 / 1", "2 x 1.5 W zone " + c.hall + " control " + c.control + " channel A3 / 1",
				"2 x 1.5 W zone " + c.hall + " channel A3 / 1", "1 x 3 W zone " + c.hall + " channel A3 / 1", "1 x 3 W zone " + c.hall + " channel A3 / 1",
				"4 x 6 W zone " + c.right + " channel A2 / 1", "6 x 10 W zone " + c.right + " channel A2 / 1", "1 x 3 W zone " + c.right + " channel A2 / 2",
			})
			want(t, "outputs", channelRatings(j), []string{"A1 / 1 120 W 100 V", "A1 / 2 100 W 100 V", "A2 / 1 120 W 100 V", "A2 / 2 60 W 100 V", "A3 / 1 60 W 100 V"})
			if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "20" {
				t.Errorf("controls %+v", j.Controls)
			}
		})
	}
}

// Titles of the kinds of things in lists side by side are no zones.
func TestTitlesOfKindsBesideEachOther(t *testing.T) {
	j := wholeJob(t, `
Elmfield landing stage, PA at 100 V
|
Loudspeakers | | | | Horns
Room | Qty | Tap W | | Room | Qty | Tap W
Hall | 4 | 6 | | Yard | 2 | 15
Desk | 1 | 3 | | Quay | 2 | 15`)
	want(t, "loudspeakers", describe(j), []string{"4 x 6 W zone Hall", "1 x 3 W zone Desk", "2 x 15 W zone Yard", "2 x 15 W zone Quay"})
}
