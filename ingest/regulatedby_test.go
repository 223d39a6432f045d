package ingest

import (
	"strings"
	"testing"
)

// Remarks that say by which control loudspeakers are regulated, or that others hang on it as well, and the ratings in
// a sentence. Common practice in six languages, no source.
func TestRegulatedByControls(t *testing.T) {
	for _, c := range []struct{ by, also, note string }{
		{"controlled by V1 behind the desk", "on V1 as well", "Ratings of the controls: V1 35 W, V2 20 W"},
		{"geregelt über V1 hinter der Theke", "auf V1 auch", "Belastbarkeit der Regler: V1 35 W, V2 20 W"},
		{"réglé par V1 derrière la banque", "sur V1 aussi", "Puissance des réglages : V1 35 W, V2 20 W"},
		{"regulado por V1 detrás del mostrador", "en V1 también", "Potencia de los reguladores: V1 35 W, V2 20 W"},
		{"regolato da V1 dietro il banco", "su V1 anche", "Potenza dei regolatori: V1 35 W, V2 20 W"},
		{"geregeld door V1 achter de balie", "op V1 ook", "Vermogen van de regelaars: V1 35 W, V2 20 W"},
	} {
		head, _, _ := strings.Cut(c.by, "V1")
		j := wholeJob(t, "Library, 100 V\n|\nRoom | Qty | W | Remarks\nHall | 2 | 3\nDesk | 6 | 3 | "+c.by+"\nStore | 2 | 1.5 | "+c.also+
			"\nReading room | 4 | 3 | "+head+"V2\n|\nAmplifier of 120 W\n"+c.note)
		if got := controlsOf(j); got != "V1 35 W x2, V2 20 W x1" {
			t.Errorf("%s, %s: %s", c.by, c.also, got)
		}
	}
}
