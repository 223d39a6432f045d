package ingest

import "testing"

// A list of lines may say in which zone each of them lies, for loudspeakers that only name their line; a list of
// equipment may have controls below amplifiers. Common practice, no source.
func TestZonesOfLines(t *testing.T) {
	j := wholeJob(t, `## HP
Repère | Emplacement | Type | Réglage | Ligne | Commande
HP01 | Portail | projecteur | 10 W | L1 |
HP02 | Billetterie | plafonnier | 3 W | L2 | POT1
HP03 | Vestiaire | plafonnier | 3 W | L2 |
## Lignes
Ligne | Zone diffusée | Ampli | Sortie
L1 | Quai | AMP1 | 1
L2 | Service | AMP1 | 2
## Matériel
Matériel | Nombre de sorties | Puissance
AMP1 | 2 | 120 W par sortie, 100 V
POT1 | | 12 W`)
	want(t, "loudspeakers", describe(j), []string{"HP01 1 x 10 W zone Quai channel AMP1 / 1", "HP02 1 x 3 W zone Service control POT1 channel AMP1 / 2", "HP03 1 x 3 W zone Service channel AMP1 / 2"})
	if len(j.Amplifiers) != 1 || len(j.Controls) != 1 || show(j.Controls[0].Rated) != "12" {
		t.Errorf("%d amplifiers, controls %v", len(j.Amplifiers), j.Controls)
	}
}
