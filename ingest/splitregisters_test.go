package ingest

import "testing"

// A rating in the row of a loudspeaker is its own where amplifiers and controls of the same
// register have theirs in the same column. Common practice, no source.
func TestRatingsOfARegisterInGerman(t *testing.T) {
	j := wholeJob(t, `Objekt-Nr. | Bezeichnung | Objektart | Übergeordnetes Objekt | Raum | Zustandsnote | Status | Letzte Wartung | Nennwert | Einheit | Einstellwert | Bemerkung
4001 | Verstärker ELA | Verstärker | | Technik | 2 | in Betrieb | 03/2024 | 2 x 120 | W | |
4002 | Lautstärkeregler Sauna | Regler | 4001 | Sauna | 2 | in Betrieb | 03/2024 | 12 | W | | Kanal 2
4010 | Lautsprecher Halle | Lautsprecher | 4001 | Schwimmhalle | 3 | in Betrieb | 03/2024 | 30 | W | 15 | Kanal 1
4011 | Lautsprecher Halle | Lautsprecher | 4001 | Schwimmhalle | 3 | in Betrieb | 03/2024 | 30 | W | 15 | Kanal 1
4020 | Lautsprecher Sauna | Lautsprecher | 4002 | Sauna | 2 | in Betrieb | 03/2024 | 6 | W | 3 |
4021 | Lautsprecher Sauna | Lautsprecher | 4002 | Sauna | 2 | in Betrieb | 03/2024 | 6 | W | 3 |`)
	want(t, "outputs", ratedOutputs(j), []string{"4001 / 2 120 W", "4001 / 1 120 W"})
	if len(j.Loudspeakers) != 4 || show(j.Loudspeakers[0].Rated) != "30" {
		t.Errorf("%d loudspeakers, the first rated %s", len(j.Loudspeakers), show(j.Loudspeakers[0].Rated))
	}
}

// "Réglage" may be a tap or what one is set by: cells of places and ratings decide.
func TestControlsByTheirCells(t *testing.T) {
	j := wholeJob(t, `Observatoire du Mont Clair
AMPLI 1 - 4 x 100 W, voies 1+2 pontées = 200 W, 100 V

Voie | Local | Nb | Prise | Réglage
1+2 | Coupole | 8 | 20 W |
3 | Hall | 6 | 6 W | HALL 50 W
3 | Accueil | 2 | 3 W | HALL 50 W
4 | Boutique | 4 | 3 W | BOUTIQUE 24 W`)
	if got, want := controlsOf(j), "HALL 50 W x2, BOUTIQUE 24 W x1"; got != want {
		t.Errorf("controls %s, want %s", got, want)
	}
	want(t, "outputs", ratedOutputs(j), []string{"Amp 1 / 1+2 200 W", "Amp 1 / 3 100 W", "Amp 1 / 4 100 W"})
}

// Of several amplifiers that a title names, none is that of the whole list: its lines decide.
func TestSeveralAmplifiersInATitle(t *testing.T) {
	j := wholeJob(t, `Piscina di Monteverde - diffusori
Amplificatore A: 2 x 120 W (L1, L2). Amplificatore B: 60 W (L3). Linea 100 V

Linea | Locale | N. diffusori | Presa | Attenuatore
L1 | Vasca | 8 | 10 W |
L2 | Spogliatoi | 10 | 3 W | ATT1
L3 | Ufficio | 2 | 3 W | ATT3`)
	want(t, "outputs", ratedOutputs(j), []string{"A / L1 120 W", "A / L2 120 W", "B / L3 60 W"})
}

// A note may rate controls that no row names.
func TestRangesOfControlsThatNoRowNames(t *testing.T) {
	j := noted(t, "1. Fix to soffit.\n2. ATT-1 to ATT-9 are 24 W with relays.", "1")
	for _, c := range j.Controls {
		if show(c.Rated) != "24" {
			t.Errorf("%s rated %s, want 24", c.Name, show(c.Rated))
		}
	}
}
