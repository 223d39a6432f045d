package ingest

import (
	"slices"
	"testing"

	"lineaudit/audit/schedule"
)

// Tags in brackets behind places are controls where a note says so. Common practice, no source.
func TestTagsBehindPlaces(t *testing.T) {
	const list = `
Dampfbahnmuseum, Lautsprecher 100 V
Raum | Stk | Watt
Halle (D1) | 6 | 6
Kasse (D2) | 2 | 3
Bahnsteig | 4 | 15

`
	j := wholeJob(t, list+"D = Drehsteller, D1 50 W, D2 12 W")
	want(t, "controlled", describe(j), []string{"6 x 6 W zone Halle control D1", "2 x 3 W zone Kasse control D2", "4 x 15 W zone Bahnsteig"})
	for i, w := range []string{"50", "12"} {
		if got := show(j.Controls[i].Rated); got != w {
			t.Errorf("%s: %s W, want %s", j.Controls[i].Name, got, w)
		}
	}
	for _, note := range []string{"D1 und D2 siehe Deckenplan", "D = Deckenfeld, Drehsteller K1 36 W"} {
		if j = wholeJob(t, list+note); slices.ContainsFunc(j.Controls, func(c *schedule.Control) bool { return c.Name == "D1" }) {
			t.Errorf("what no note calls a control is one: %v", describe(j))
		}
	}
}

// A note headed by a word for controls gives their tags, places and powers, whatever else
// such tags are the names of. Common practice, no source.
func TestNotesHeadedByControls(t *testing.T) {
	j := wholeJob(t, `
Patinoire du Vercors, ligne 100 V
Ligne | Local | Qté | Prise W
L1 | Piste | 6 | 15
L2 | Salle de réunion | 4 | 3
L2 | Accueil | 4 | 6

Atténuateurs muraux : A1 salle de réunion 20 W, A2 accueil 36 W`)
	want(t, "controlled", describe(j), []string{"6 x 15 W zone Piste channel L1", "4 x 3 W zone Salle de réunion control A1 channel L2", "4 x 6 W zone Accueil control A2 channel L2"})
}

// Headers shorten the word for a control; what is numbered below them is a control each, rated by its name in a
// note, and no kind of control that every room has its own of. Common practice, no source.
func TestShortenedHeadersOfControls(t *testing.T) {
	for _, c := range []struct{ room, count, control, note string }{
		{"Room", "Qty", "Cntl.", "R1 and R3 50 W"}, {"Raum", "Stk", "Reg.", "R1 und R3 je 50 W"}, {"Local", "Qté", "Attén.", "R1 et R3 de 50 W"},
		{"Sala", "Cant.", "Reg.", "R1 y R3 de 50 W"}, {"Sala", "Pz", "Reg.", "R1 e R3 da 50 W"}, {"Ruimte", "Aantal", "Reg.", "R1 en R3 van 50 W"},
	} {
		j := wholeJob(t, "Slate library, 100 V\n"+c.room+" | "+c.count+" | W | "+c.control+`
Lobby | 4 | 3 |
Loans | 6 | 3 | R1
Reading | 8 | 6 | R2
Papers | 2 | 1.5 | R3

`+c.note+"\nR2 100 W")
		want(t, c.control, describe(j), []string{"4 x 3 W zone Lobby", "6 x 3 W zone Loans control R1", "8 x 6 W zone Reading control R2", "2 x 1.5 W zone Papers control R3"})
		for i, w := range []string{"50", "100", "50"} {
			if i >= len(j.Controls) || show(j.Controls[i].Rated) != w {
				t.Errorf("%s %s: control %d, want %s W", c.room, c.control, i, w)
			}
		}
	}
}
