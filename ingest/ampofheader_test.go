package ingest

import (
	"strings"
	"testing"
)

// Lists of what comes out of an amplifier that is named nowhere but in their header. Common practice, no source.
func TestAmplifierOfAHeader(t *testing.T) {
	const list = "Garden\n100 V\n|\nLine | Where | Qty | Tap\nL1 | House | 6 | 10 W\nL2 | Path | 5 | 15 W\nL3 | Gate | 2 | 6 W\n|\n"
	const rows = "\n1 | L1 | 120\n2 | L2 | 60\n3 | L3 | 240"
	for _, head := range []string{"Sortie ampli | Ligne | W sortie", "Amp output | Line | Output W", "Verstärkerausgang | Linie | Ausgang W", "Salida del amplificador | Línea | W de salida",
		"Uscita amplificatore | Linea | Uscita W", "Versterkeruitgang | Lijn | W uitgang"} {
		j := wholeJob(t, list+head+rows)
		want(t, head, frames(j), []string{`"" ? W 3 outputs`})
		if taken := strings.Join(takenAs(j), "; "); !strings.Contains(taken, "one amplifier of 3 outputs") {
			t.Errorf("%s: taken %s", head, taken)
		}
	}
	// there may be several
	for _, rest := range []string{"Output | Line | Output W" + rows, "Amp output | Line | Output W\n1 | L1 | 120\n2 | L2 | 60\n1 | L3 | 240", "Amp output | Line | Output W" + rows + "\n|\nTwo amplifiers in the rack"} {
		want(t, rest, frames(wholeJob(t, list+rest)), nil)
	}
}
