package ingest

import "testing"

// Lists of amplifiers, of lines and of what was measured may count the loudspeakers of each with
// their watts in one cell: they are the loudspeakers. Common practice, no source.
func TestListsThatCountLoudspeakers(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		want        []string
	}{
		{"English, by output", `
Slate Hall - rack list - 100 V
Unit | Output | Rating (W) | Area | Speakers on line | Load (W) | Wire | Run (ft)
PA-1 | 1 | 300 | Dome | 16 x 10 W | 160 | 14 AWG | 190
PA-1 | 2 | 300 | Lobby | 10 x 5 W + 2 x 2.5 W | 55 | 16 AWG | 120
PA-2 | 1 | 150 | Loft | 6 x 5 W, 6 x 2.5 W | 45 | 16 AWG | 240
PA-2 | 2 | 150 | spare | | | |`,
			[]string{"16 x 10 W zone Dome channel PA-1 / 1", "10 x 5 W zone Lobby channel PA-1 / 2", "2 x 2.5 W zone Lobby channel PA-1 / 2",
				"6 x 5 W zone Loft channel PA-2 / 1", "6 x 2.5 W zone Loft channel PA-2 / 1"}},
		{"English, test record", `
Commissioning test sheet, 100 V
Cct | Amp / ch | Area covered | Loudspeakers | Calc. W | Meas. ohm | Meas. W | Result
1A | PA1/1 | Stalls | 12 @ 3 W + 2 @ 6 W | 48 | 204 | 49 | Pass
1B | PA1/2 | Circle | 10 @ 3 W | 30 | 341 | 29 | Pass
2A | PA2/1 | Spare | none | 0 | | | n/a`,
			[]string{"12 x 3 W zone Stalls channel PA1 / 1", "2 x 6 W zone Stalls channel PA1 / 1", "10 x 3 W zone Circle channel PA1 / 2"}},
		{"German, measured", `
Linienmessung Halle, 100 V
Linie | Verstärker | Bereich | Lautsprecher | Last W | Impedanz gemessen | W gemessen
1 | V1 | Foyer | 8 x 3 W | 24 | 410 | 24
2 | V1 | Saal | 4 x 10 W + 6 x 6 W | 76 | 130 | 77`,
			[]string{"8 x 3 W zone Foyer channel V1 / 1", "4 x 10 W zone Saal channel V1 / 2", "6 x 6 W zone Saal channel V1 / 2"}},
		{"French, by output", `
Baie du Vallon, 100 V
Ampli | Sortie | Puissance (W) | Zone | Haut-parleurs | Charge (W)
A1 | 1 | 120 | Hall | 8 x 6 W | 48
A1 | 2 | 120 | Quai | 4 x 15 W + 2 x 10 W | 80`,
			[]string{"8 x 6 W zone Hall channel A1 / 1", "4 x 15 W zone Quai channel A1 / 2", "2 x 10 W zone Quai channel A1 / 2"}},
		{"Spanish, by output", `
Rack de la estación, 100 V
Etapa | Salida | Potencia (W) | Zona | Altavoces | Carga (W)
E1 | 1 | 120 | Vestíbulo | 8 x 6 W | 48
E1 | 2 | 120 | Andén | 4 x 15 W + 2 x 10 W | 80`,
			[]string{"8 x 6 W zone Vestíbulo channel E1 / 1", "4 x 15 W zone Andén channel E1 / 2", "2 x 10 W zone Andén channel E1 / 2"}},
		{"Italian, by output", `
Rack del museo, 100 V
Finale | Uscita | Potenza (W) | Zona | Diffusori | Carico (W)
F1 | 1 | 120 | Atrio | 8 x 6 W | 48
F1 | 2 | 120 | Cortile | 4 x 15 W + 2 x 10 W | 80`,
			[]string{"8 x 6 W zone Atrio channel F1 / 1", "4 x 15 W zone Cortile channel F1 / 2", "2 x 10 W zone Cortile channel F1 / 2"}},
		{"Dutch, by output", `
Rek van de sporthal, 100 V
Versterker | Uitgang | Vermogen (W) | Zone | Luidsprekers | Belasting (W)
V1 | 1 | 120 | Hal | 8 x 6 W | 48
V1 | 2 | 120 | Perron | 4 x 15 W + 2 x 10 W | 80`,
			[]string{"8 x 6 W zone Hal channel V1 / 1", "4 x 15 W zone Perron channel V1 / 2", "2 x 10 W zone Perron channel V1 / 2"}},
	} {
		t.Run(c.name, func(t *testing.T) { want(t, "loudspeakers", describe(wholeJob(t, c.sheet)), c.want) })
	}
	// ratings of outputs are none
	for _, j := range wholeJobs("Hall rack, 100 V loudspeaker lines\nAmplifier | Outputs | Zones\nAmp 1 | 4 x 120 W | Hall, Yard\nAmp 2 | 2 x 60 W | Loft") {
		if len(j.Loudspeakers) > 0 {
			t.Errorf("ratings: %v", describe(j))
		}
	}
}
