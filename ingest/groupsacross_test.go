package ingest

import "testing"

// Under outputs or lines across may stand how many loudspeakers of how many watts hang on
// them; a line above the counts says what each gives. Common practice, no source.
func TestGroupsUnderOutputs(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want, rated []string
	}{
		{"German, outputs with their power below", `
Stadthalle Weiher, 100 V, Anzahl x Watt
Raum | Ausgang 1 | Ausgang 2 | Ausgang 3
Leistung | 60 W | 120 W | 240 W
Kasse | 1x3 | |
Saal | | 8x6 |
Galerie | | 6x3 |
Hof | | | 10x15
Summe | 3 W | 66 W | 150 W`,
			[]string{"1 x 3 W zone Kasse channel 1", "8 x 6 W zone Saal channel 2", "6 x 3 W zone Galerie channel 2", "10 x 15 W zone Hof channel 3"},
			[]string{"1 60 W", "2 120 W", "3 240 W"}},
		{"French, lines, with units", `
Serres du Vallon - haut-parleurs par ligne
Local | Ligne 1 | Ligne 2
Accueil | 2 x 3 W |
Palmeraie | 4 x 10 W | 4 x 10 W
Atelier | | 3 x 6 W`,
			[]string{"2 x 3 W zone Accueil channel 1", "4 x 10 W zone Palmeraie channel 1", "4 x 10 W zone Palmeraie channel 2", "3 x 6 W zone Atelier channel 2"},
			[]string{"1 ? W", "2 ? W"}},
		{"English, lettered zones", `
Slate quay PA - loudspeakers, 100 V
Room | Zone A | Zone B | Zone C
Foyer | 4 @ 6W | |
Rope walk | | 6 @ 6W |
Jetty | | | 4 @ 15W`,
			[]string{"4 x 6 W zone Zone A", "6 x 6 W zone Zone B", "4 x 15 W zone Zone C"}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheet)
			want(t, "loudspeakers", describe(j), c.want)
			want(t, "outputs", ratedOutputs(j), c.rated)
		})
	}
	for _, j := range wholeJobs(`
Beschallung, Leitungen
Strecke | Zone 1 | Zone 2
Rack - Halle | 2x2,5 | 2x4
Halle - Tor | 3x1,5 | 2x2,5`) {
		if len(j.Loudspeakers) > 0 {
			t.Errorf("cables are loudspeakers: %v", describe(j))
		}
	}
}
