package ingest

import "testing"

// Lists in words put the place of a line in brackets behind it, and its control behind a dash or a comma. Common practice,
// no source.
func TestToldPlacesAndControls(t *testing.T) {
	for _, list := range []string{
		"Line 1 (north stand): 6 horns at 15 W\nLine 2 (changing rooms): 8 ceiling speakers at 3 W, volume control 20 W",
		"Line 1 - north stand - 6 horns 15 W\nLine 2 - changing rooms - 8 ceiling 3 W - VC 20 W",
		"Linie 1 (north stand): 6 Hörner zu 15 W\nLinie 2 (changing rooms): 8 Deckenlautsprecher zu 3 W, Regler 20 W",
		"Ligne 1 (north stand) : 6 trompes à 15 W\nLigne 2 (changing rooms) : 8 HP plafonniers à 3 W, atténuateur 20 W",
		"Línea 1 (north stand): 6 bocinas de 15 W\nLínea 2 (changing rooms): 8 altavoces de techo de 3 W, atenuador de 20 W",
		"Linea 1 (north stand): 6 trombe da 15 W\nLinea 2 (changing rooms): 8 plafoniere da 3 W, regolatore da 20 W",
		"Lijn 1 (north stand): 6 hoorns van 15 W\nLijn 2 (changing rooms): 8 plafondluidsprekers van 3 W, volumeregelaar 20 W",
	} {
		j := wholeJob(t, "Ice rink public address\n"+list)
		want(t, list, describe(j), []string{"6 x 15 W zone north stand channel 1", "8 x 3 W zone changing rooms control control (changing rooms) channel 2"})
		if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "20" {
			t.Errorf("%s: controls %v", list, j.Controls)
		}
	}
}

// Amplifiers of several powers in one sentence are not the one amplifier of all outputs.
func TestAmplifiersOfSeveralPowers(t *testing.T) {
	j := wholeJob(t, "Ice rink public address\nLine 1: 6 horns at 15 W\nLine 2: 8 ceiling speakers at 3 W\nAmplifiers: 2 of 120 W for the stands, 1 of 60 W for lines 3 and 4")
	for _, a := range j.Amplifiers {
		if a.Rated.Had() {
			t.Errorf("amplifier %s of %s W", a.Name, show(a.Rated))
		}
	}
}
