package ingest

import "testing"

// Controls without names: one in each of several places of a note; and a yes in two
// languages beside rooms, all rated in a note. Common practice, no source.
func TestOneControlInEach(t *testing.T) {
	for _, c := range []struct {
		name, sheets string
		want, rated  []string
	}{
		{"English, places in a sentence", `
PA loudspeakers, 100 V line
Room | Type | Qty | Tap
Gym | Horn | 2 | 10 W
Classroom | Ceiling | 4 | 3 W
Corridor | Ceiling | 6 | 3 W

There is one 30 W volume control each in the gym and in the classroom, by the door.`,
			[]string{"2 x 10 W zone Gym control control (Gym)", "4 x 3 W zone Classroom control control (Classroom)", "6 x 3 W zone Corridor"},
			[]string{"control (Gym) 30", "control (Classroom) 30"}},
		{"German, tags in brackets in turn", `
Lautsprecher ELA 100 V
Raum | Typ | Stk | Watt
Laube | Horn | 2 | 10
Scheune | Decke | 4 | 3

In Scheune und Laube ist je ein Lautstärkesteller montiert (LSB und LSA, 20 W).`,
			[]string{"2 x 10 W zone Laube control LSA", "4 x 3 W zone Scheune control LSB"}, []string{"LSB 20", "LSA 20"}},
		{"French and German, a yes beside rooms", `
Sonorisation / Beschallung 100 V
Local / Raum | HP | Nombre / Anzahl | W | Atténuateur / Regler
Cantine / Kantine | plafond | 6 | 3 | oui / ja
Atelier / Werkstatt | mur | 2 | 6 | non / nein
Salle / Saal | colonne | 4 | 10 | oui / ja

Atténuateurs: un par local, 50 W`,
			[]string{"6 x 3 W zone Cantine / Kantine control control (Cantine / Kantine)", "2 x 6 W zone Atelier / Werkstatt", "4 x 10 W zone Salle / Saal control control (Salle / Saal)"},
			[]string{"control (Cantine / Kantine) 50", "control (Salle / Saal) 50"}},
		{"one for each of what is not named stays open", `
PA loudspeakers, 100 V line
Room | Type | Qty | Tap
Cabins | Ceiling | 8 | 3 W
Corridor | Ceiling | 6 | 3 W

One 10 W volume control per cabin.`,
			[]string{"8 x 3 W zone Cabins", "6 x 3 W zone Corridor"}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "loudspeakers", describe(j), c.want)
			var rated []string
			for _, k := range j.Controls {
				rated = append(rated, k.Name+" "+show(k.Rated))
			}
			want(t, "controls", rated, c.rated)
		})
	}
}
