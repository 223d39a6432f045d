package ingest

import "testing"

// Outputs by the letter of their amplifier and a number, below a header that speaks of both. Below one that speaks of outputs
// alone they stay as they are. Common practice, no source.
func TestAmplifiersByTheLettersOfOutputs(t *testing.T) {
	const rows = "\nPool | 3 | 15 | A1\nLearner | 3 | 15 | A2\nFoyer | 4 | 6 | B1\nGym | 4 | 6 | B2\n|\n"
	const rated = "\nA1 | 240\nA2 | 120\nB1 | 120\nB2 | 60"
	for _, c := range []struct{ list, outputs string }{
		{"Area | Qty | Tap W | Amp ch", "Amp channel | Rated W"}, {"Bereich | Anzahl | Abgriff W | Verst.-Kanal", "Verstärkerkanal | Leistung W"},
		{"Zone | Nb | Prise W | Voie ampli", "Voie ampli | Puissance W"}, {"Zona | Cant. | Toma W | Canal ampli", "Canal del amplificador | Potencia W"},
		{"Zona | N. diffusori | Presa W | Canale ampli", "Canale amplificatore | Potenza W"}, {"Zone | Aantal | Aftakking W | Kanaal versterker", "Versterkerkanaal | Vermogen W"},
	} {
		j := wholeJob(t, "Baths, 100 V\n|\n"+c.list+rows+c.outputs+rated)
		want(t, c.list, ratedOutputs(j), []string{"A / 1 240 W", "A / 2 120 W", "B / 1 120 W", "B / 2 60 W"})
		want(t, c.list, describe(j), []string{"3 x 15 W zone Pool channel A / 1", "3 x 15 W zone Learner channel A / 2", "4 x 6 W zone Foyer channel B / 1", "4 x 6 W zone Gym channel B / 2"})
	}
	j := wholeJob(t, "Baths, 100 V\n|\nArea | Qty | Tap W | Output"+rows+"Output | Rated W"+rated)
	want(t, "outputs alone", ratedOutputs(j), []string{"A1 240 W", "A2 120 W", "B1 120 W", "B2 60 W"})
}
