package ingest

import "testing"

// One word names where a cable begins and the line that begins there; where no
// column says where any ends, it is the line. Common practice, no source.
func TestWordsForLinesAndNearEnds(t *testing.T) {
	for _, c := range []struct {
		name, sheets string
		want, runs   []string
	}{
		{"French, numbers, cables in a pipe", `
## Haut-parleurs
Repère | Départ | Local | Type | Qté | Puissance W
HP1 | 21 | Accueil | Plafonnier | 4 | 6
HP2 | 21 | Vestiaire | Plafonnier | 2 | 3
HP3 | 22 | Bassin | Projecteur | 6 | 15
## Câbles
Départ | Câble | Longueur m | Cheminement
21 | 2x1,5 mm² | 40 | Tuyau
22 | 2x2,5 mm² | 95 | Tuyau
## Départs
Sonorisation 100 V
Départ | Amplificateur | Voie | Puissance W
21 | AM1 | 1 | 120
22 | AM1 | 2 | 250`,
			[]string{"HP1 4 x 6 W zone Accueil channel AM1 / 1", "HP2 2 x 3 W zone Vestiaire channel AM1 / 1", "HP3 6 x 15 W zone Bassin channel AM1 / 2"}, []string{"40 m AM1 / 1", "95 m AM1 / 2"}},
		{"German, near ends of cables", `
## Lautsprecher
ELA 100 V
LS | Ort | Watt
L1 | Halle | 10
L2 | Halle | 10
## Kabel
Abgang | Ziel | Länge m | Querschnitt
V1/1 | L1 | 30 | 2x1,5
L1 | L2 | 12 | 2x1,5`,
			[]string{"L1 1 x 10 W zone Halle", "L2 1 x 10 W zone Halle"}, []string{"30 m", "12 m"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "loudspeakers", describe(j), c.want)
			var runs []string
			for _, x := range j.Cables {
				run := show(x.Length) + " m"
				if x.Channel != nil {
					run += " " + x.Channel.Label()
				}
				runs = append(runs, run)
			}
			want(t, "lengths", runs, c.runs)
		})
	}
}
