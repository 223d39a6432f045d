package ingest

import "testing"

// Two lines below a list, one of names and one of a power below each, rate outputs and
// controls, in two languages too. Common practice, no source.
func TestNamesOverPowers(t *testing.T) {
	j := wholeJob(t, `
Piscine du Lac / Hallenbad am See - 100 V
N° | Local | Qté | W | Sortie | Réglage
1 | Hall | 4 | 6 | 1 | AT1
2 | Bassin | 6 | 15 | 2 |
3 | Gymnastique | 3 | 6 | 3 | AT2

Sortie / Ausgang | 1 | 2 | 3
W | 60 | 120 | 60

Atténuateur / Regler | AT1 | AT2
W | 36 | 20`)
	want(t, "outputs", ratedOutputs(j), []string{"1 60 W", "2 120 W", "3 60 W"})
	want(t, "loudspeakers", describe(j), []string{"4 x 6 W zone Hall control AT1 channel 1", "6 x 15 W zone Bassin channel 2", "3 x 6 W zone Gymnastique control AT2 channel 3"})
	for i, w := range []string{"36", "20"} {
		if got := show(j.Controls[i].Rated); got != w {
			t.Errorf("control %s rated %s W, want %s", j.Controls[i].Name, got, w)
		}
	}
}
