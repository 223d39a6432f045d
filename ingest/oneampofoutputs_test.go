package ingest

import (
	"strings"
	"testing"
)

// Common practice, no source.
func TestOutputsOfAnAmplifierWithoutAName(t *testing.T) {
	const heads = "Elmfield landing stage\n|\nRoom | Type | Qty | Tap W | Circuit\nHall | ceiling | 4 | 6 | L1\nYard | horn | 2 | 15 | L2\nStand | horn | 2 | 10 | L3\n|\n"
	const zoned = "Elmfield landing stage\n|\nZone | Room | Type | Qty | Tap W\n1 | Hall | ceiling | 4 | 6\n2 | Yard | horn | 2 | 15\n3 | Stand | horn | 2 | 10\n|\n"
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"ratings of outputs", heads + "Circuit | Amp output rating (W)\nL1 | 60\nL2 | 60\nL3 | 120", []string{`"" ? W 3 outputs`}},
		{"in German", heads + "Linie | Verstärkerausgang (W)\nL1 | 60\nL2 | 60\nL3 | 120", []string{`"" ? W 3 outputs`}},
		{"in French", heads + "Ligne | Sortie ampli (W)\nL1 | 60\nL2 | 60\nL3 | 120", []string{`"" ? W 3 outputs`}},
		{"in Spanish", heads + "Línea | Salida del amplificador (W)\nL1 | 60\nL2 | 60\nL3 | 120", []string{`"" ? W 3 outputs`}},
		{"in Italian", heads + "Linea | Uscita amplificatore (W)\nL1 | 60\nL2 | 60\nL3 | 120", []string{`"" ? W 3 outputs`}},
		{"in Dutch", heads + "Lijn | Versterkeruitgang (W)\nL1 | 60\nL2 | 60\nL3 | 120", []string{`"" ? W 3 outputs`}},
		{"names of outputs", zoned + "Zone | Amp ch | Ch W\n1 | 1 | 60\n2 | 2 | 60\n3 | 3 | 60", []string{`"" ? W 3 outputs`}},
		{"zones by name", zoned + "Zone | Amp output | Output W\n1 | 1 | 60\n2 | 2 | 60\n3 | 3 | 60", []string{`"" ? W 3 outputs`}},
		// no amplifier is spoken of, or they may be several
		{"circuits alone", heads + "Circuit | Rating (W)\nL1 | 60\nL2 | 60\nL3 | 120", nil},
		{"amplifiers of circuits", heads + "Circuit | Amp watts\nL1 | 60\nL2 | 60\nL3 | 120", nil},
		{"a gap", heads + "Circuit | Amp output rating (W)\nL1 | 60\nL2 | 60\nL3 | 120\nL7 | 120", nil},
		{"two spoken of", heads + "Circuit | Amp output rating (W)\nL1 | 60\nL2 | 60\nL3 | 120\n|\nTwo amplifiers, 4 x 120 W each", nil},
	} {
		want(t, c.name, frames(wholeJob(t, c.text)), c.want)
	}
}

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
	for _, head := range []string{"Sortie de l'ampli VA | Ligne | W sortie", "Output of amplifier VA | Line | Output W", "Ausgang Verstärker VA | Linie | Ausgang W", "Salida del amplificador VA | Línea | W de salida",
		"Uscita amplificatore VA | Linea | Uscita W", "Uitgang van versterker VA | Lijn | W uitgang"} {
		want(t, head, frames(wholeJob(t, list+head+rows)), []string{`"VA" ? W 3 outputs`})
	}
	// there may be several
	for _, rest := range []string{"Output | Line | Output W" + rows, "Amp output | Line | Output W\n1 | L1 | 120\n2 | L2 | 60\n1 | L3 | 240", "Amp output | Line | Output W" + rows + "\n|\nTwo amplifiers in the rack"} {
		want(t, rest, frames(wholeJob(t, list+rest)), nil)
	}
}
