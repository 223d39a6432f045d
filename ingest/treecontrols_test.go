package ingest

import "testing"

// Controls that a register calls by any of their words carry what hangs on them. Common practice, no source.
func TestControlsOfARegister(t *testing.T) {
	for _, word := range []string{"Régulateur de volume", "Régulateur", "Perilla", "Volume control", "Wandregler", "Regolatore", "Volumeregelaar"} {
		j := wholeJob(t, "Inventory\n100 V\n|\nNo. | Item | Place | Power | Connected to\nSO-01 | Amplifier | Plant | 120 W |\nSO-10 | "+word+" | Theory | 30 W | SO-01\n"+
			"SO-30 | Ceiling loudspeaker | Hall | 6 W | SO-01\nSO-31 | Ceiling loudspeaker | Theory | 6 W | SO-10\nSO-32 | Ceiling loudspeaker | Theory | 6 W | SO-10")
		if got := controlsOf(j); got != "SO-10 30 W x2" {
			t.Errorf("%s: %s", word, got)
		}
		want(t, word, describe(j), []string{"SO-30 1 x 6 W zone Hall channel SO-01 / 1", "SO-31 1 x 6 W zone Theory control SO-10 channel SO-01 / 1", "SO-32 1 x 6 W zone Theory control SO-10 channel SO-01 / 1"})
	}
}
