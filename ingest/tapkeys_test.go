package ingest

import "testing"

// Notes explain the codes of taps, and shares of the rated power. Common practice, no source.
func TestNotesExplainTaps(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want        []string
	}{
		{"German, positions of a switch", `
Freilichtbühne Anger, 100 V
Stufe des Übertragers: 1 = 15 W, 2 = 7,5 W, 3 = 3 W

Nr | Platz | Bauart | Stk | Stufe
1 | Bühne | Horn | 4 | 1
2 | Kasse | Gehäuse | 2 | 3
3 | Garderobe | Gehäuse | 3 | 3
4 | Hof | Horn | 2 | 2`,
			[]string{"4 x 15 W zone Bühne", "2 x 3 W zone Kasse", "3 x 3 W zone Garderobe", "2 x 7.5 W zone Hof"}},
		{"French, letters under a header that begins the word", `
Gare d'Aubrac - sonorisation 100 V
Réglage du transfo : A = 10 W, B = 5 W, C = 2,5 W
Local | Qté | Régl.
Quai | 4 | A
Hall | 6 | C
Guichet | 1 | C

Ampli | Puissance
A1 | 120 W`,
			[]string{"4 x 10 W zone Quai", "6 x 2.5 W zone Hall", "1 x 2.5 W zone Guichet"}},
		{"English, shares where no cell is whole", `
Fernery PA, 100 V line
Tap: 1/2 = half of the rated power, 1/4 = a quarter
Where | Nos | Rated W | Tap
Fern house | 3 | 20 | 1/2
Porch | 2 | 6 | 1/4
Shop | 1 | 6 | 1/2`,
			[]string{"3 x 10 W zone Fern house", "2 x 1.5 W zone Porch", "1 x 3 W zone Shop"}},
		{"what outputs give explains no taps", `
Werkhof, 100 V
Kanal: 1 = 60 W, 2 = 30 W
Raum | Stk | Watt | Kanal
Halle | 3 | 10 | 1
Büro | 2 | 3 | 2`,
			[]string{"3 x 10 W zone Halle channel 1", "2 x 3 W zone Büro channel 2"}},
		{"Italian, points that are places", `
Vivaio del Colle, linea 100 V
Targa W | Presa | Punto | N.
30 | 1/1 | Serra grande | 2
30 | 1/2 | Viale | 4
6 | 1/2 | Cassa | 1`,
			[]string{"2 x 30 W zone Serra grande", "4 x 15 W zone Viale", "1 x 3 W zone Cassa"}},
	} {
		t.Run(c.name, func(t *testing.T) { want(t, "loudspeakers", describe(wholeJob(t, c.sheet)), c.want) })
	}
}
