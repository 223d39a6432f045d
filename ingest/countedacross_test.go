package ingest

import "testing"

// Under risers, wings or amplifiers stand counts with their watts, several in a cell or with the
// control that they hang behind; the line above says what feeds each column. Common practice, no source.
func TestCountsWithWattsAcross(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want, rated []string
	}{
		{"English, levels by risers", `
Quarry Tower, loudspeakers by level and riser, 100 V
Level | East riser | West riser | Core
 | AMP E, 120 W | AMP W, 120 W | AMP K, 60 W
L3 | 4 x 3 W | 6 x 3 W | 2 x 1.5 W
L2 | 8 x 3 W | none | 2 x 1.5 W
L1 | 2 x 6 W + 4 x 3 W | 4 x 6 W | 2 x 1.5 W
B | none | 2 x 6 W, via VC-B (24 W) | 1 x 6 W
Total | 60 W | 54 W | 15 W`,
			[]string{"4 x 3 W zone L3 channel AMP E / East riser", "6 x 3 W zone L3 channel AMP W / West riser", "2 x 1.5 W zone L3 channel AMP K / Core",
				"8 x 3 W zone L2 channel AMP E / East riser", "2 x 1.5 W zone L2 channel AMP K / Core",
				"2 x 6 W zone L1 channel AMP E / East riser", "4 x 3 W zone L1 channel AMP E / East riser", "4 x 6 W zone L1 channel AMP W / West riser", "2 x 1.5 W zone L1 channel AMP K / Core",
				"2 x 6 W zone B control VC-B channel AMP W / West riser", "1 x 6 W zone B channel AMP K / Core"},
			[]string{"AMP E / East riser 120 W", "AMP W / West riser 120 W", "AMP K / Core 60 W"}},
		{"German, rooms by wings", `
Schulhaus Ahornweg, Lautsprecher je Trakt, 100 V
Raum | Nordtrakt | Südtrakt
Aula | 8 x 6 W | 4 x 6 W + 2 x 10 W
Flur | 6 x 3 W | 6 x 3 W`,
			[]string{"8 x 6 W zone Aula", "4 x 6 W zone Aula", "2 x 10 W zone Aula", "6 x 3 W zone Flur", "6 x 3 W zone Flur"}, nil},
		{"French, types", `
Piscine du Vallon, haut-parleurs 100 V
Local | Plafonniers | Projecteurs
Hall | 6 x 3 W | 2 x 10 W
Bassin | 4 x 6 W + 2 x 3 W | 4 x 15 W`,
			[]string{"6 x 3 W zone Hall", "2 x 10 W zone Hall", "4 x 6 W zone Bassin", "2 x 3 W zone Bassin", "4 x 15 W zone Bassin"}, nil},
		{"Dutch, amplifiers", `
Sporthal De Wilg, luidsprekers 100 V
Ruimte | Versterker 1 | Versterker 2
Zaal | 8 x 6 W | 4 x 10 W, 2 x 6 W
Kantine | 4 x 3 W | 2 x 3 W`,
			[]string{"8 x 6 W zone Zaal channel Versterker 1 / 1", "4 x 10 W zone Zaal channel Versterker 2 / 1", "2 x 6 W zone Zaal channel Versterker 2 / 1",
				"4 x 3 W zone Kantine channel Versterker 1 / 1", "2 x 3 W zone Kantine channel Versterker 2 / 1"}, []string{"Versterker 1 / 1 ? W", "Versterker 2 / 1 ? W"}},
		{"Italian, risers", `
Biblioteca Rocca, diffusori 100 V
Piano | Montante nord | Montante sud
P2 | 4 x 3 W + 2 x 6 W | 6 x 3 W
P1 | 8 x 3 W | 6 x 6 W`,
			[]string{"4 x 3 W zone P2 channel Montante nord", "2 x 6 W zone P2 channel Montante nord", "6 x 3 W zone P2 channel Montante sud", "8 x 3 W zone P1 channel Montante nord", "6 x 6 W zone P1 channel Montante sud"}, nil},
		{"Spanish, lines", `
Estación Valverde, altavoces 100 V
Planta | Montante este | Montante oeste
P2 | 4 x 3 W + 2 x 6 W | 6 x 3 W
P1 | 8 x 3 W | 6 x 6 W`,
			[]string{"4 x 3 W zone P2 channel Montante este", "2 x 6 W zone P2 channel Montante este", "6 x 3 W zone P2 channel Montante oeste", "8 x 3 W zone P1 channel Montante este", "6 x 6 W zone P1 channel Montante oeste"}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheet)
			want(t, "loudspeakers", describe(j), c.want)
			if c.rated != nil {
				want(t, "outputs", ratedOutputs(j), c.rated)
			}
		})
	}
	// what was and what is count once
	for _, states := range []string{"Found | Left", "Bestand | Neu", "Avant | Après"} {
		if j := wholeJob(t, "Hall PA, loudspeakers 100 V\nRoom | "+states+"\nHall | 4 x 3 W | 6 x 3 W\nYard | 2 x 15 W | 2 x 15 W"); len(j.Loudspeakers) > 2 {
			t.Errorf("%s: %v", states, describe(j))
		}
	}
}
