package ingest

import "testing"

// Columns that come once for circuit A and once for circuit B, and the amplifier of
// each in one cell, are a row for each circuit.
func TestCircuitsAndAmplifiersByLetter(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want        []string
	}{
		{"English, letters before their word", `
Palm house voice alarm, 100 V
Zone | Area | Speaker | A circuit (Nr) | A circuit (W) | B circuit (Nr) | B circuit (W) | Tap (W) | Amplifier A / B
Z1 | Foyer | Ceiling | 5 | 30 | 5 | 30 | 6 | P1 / P2
Z2 | Stairs | Wall | 3 | 9 | 2 | 6 | 3 | P1 / P2`,
			[]string{"5 x 6 W zone Z1 channel P1 / A", "5 x 6 W zone Z1 channel P2 / B", "3 x 3 W zone Z2 channel P1 / A", "2 x 3 W zone Z2 channel P2 / B"}},
		{"German", `
Orangerie SAA 100 V
Zone | Raum | A-Kreis (Stk.) | B-Kreis (Stk.) | Abgriff (W) | Verstärker A/B
1 | Foyer | 4 | 4 | 6 | V1/V2
2 | Treppe | 2 | 1 | 3 | V1/V3`,
			[]string{"4 x 6 W zone 1 channel V1 / A", "4 x 6 W zone 1 channel V2 / B", "2 x 3 W zone 2 channel V1 / A", "1 x 3 W zone 2 channel V3 / B"}},
		{"French, letters behind their word", `
Serre - évacuation 100 V
Zone | Local | Ligne A nb | Ligne B nb | Réglage (W) | Ampli (A / B)
1 | Accueil | 4 | 4 | 6 | A1 / A2
2 | Galerie | 3 | 3 | 3 | A1 / A2`,
			[]string{"4 x 6 W zone 1 channel A1 / A", "4 x 6 W zone 1 channel A2 / B", "3 x 3 W zone 2 channel A1 / A", "3 x 3 W zone 2 channel A2 / B"}},
	} {
		t.Run(c.name, func(t *testing.T) { want(t, "loudspeakers", describe(wholeJob(t, c.sheet)), c.want) })
	}
}
