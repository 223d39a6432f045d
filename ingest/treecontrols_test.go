package ingest

import (
	"strings"
	"testing"
)

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

// What carries loudspeakers, has watts and hangs on an amplifier is a control aloud, whatever it is called; what has no
// watts, or carries other things, is not. Common practice, no source.
func TestControlsByHowTheyHang(t *testing.T) {
	const head = "Inventory\n100 V\n|\nNo. | Item | Place | Power | Connected to\nSO-01 | Amplifier | Plant | 120 W |\n"
	const tail = "\nSO-30 | Ceiling loudspeaker | Hall | 6 W | SO-01\nSO-31 | Ceiling loudspeaker | Theory | 6 W | SO-10\nSO-32 | Ceiling loudspeaker | Theory | 6 W | SO-10\nSO-33 | Ceiling loudspeaker | Foyer | 3 W | SO-01"
	for _, word := range []string{"Selector", "Drehding", "Rotacteur"} {
		j := wholeJob(t, head+"SO-10 | "+word+" | Theory | 30 W | SO-01"+tail)
		if got := controlsOf(j); got != "SO-10 30 W x2" {
			t.Errorf("%s: %s", word, got)
		}
		if taken := strings.Join(takenAs(j), "; "); !strings.Contains(taken, "control = SO-10") {
			t.Errorf("%s: taken %s", word, taken)
		}
	}
	if got := controlsOf(wholeJob(t, head+"SO-10 | Selector | Theory | | SO-01"+tail)); got != "" {
		t.Errorf("without watts: %s", got)
	}
}

// A register whose kinds of devices stand one below the other is no table on its side.
func TestRegisterOfKindsIsUpright(t *testing.T) {
	j := wholeJob(t, "Inventory\n100 V\n|\nNo. | Item | Place | Power | Connected to\nSO-01 | Amplifier | Plant | 120 W |\nSO-10 | Volume dial on wall | Theory | 30 W | SO-01\nSO-11 | Local box | Foyer | 30 W | SO-01\n"+
		"SO-30 | Ceiling loudspeaker | Hall | 6 W | SO-01\nSO-31 | Ceiling loudspeaker | Theory | 6 W | SO-10\nSO-32 | Ceiling loudspeaker | Theory | 6 W | SO-10\nSO-33 | Ceiling loudspeaker | Foyer | 6 W | SO-11")
	if got := controlsOf(j); len(j.Loudspeakers) != 4 || got != "SO-10 30 W x2" {
		t.Errorf("%q, controls %s", describe(j), got)
	}
}
