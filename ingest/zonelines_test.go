package ingest

import "testing"

// Circuits A and B of each zone side by side, and a second sheet that gives each its amplifier: the
// group of circuit B hangs on the amplifier of circuit B. Common practice, no source.
func TestAmplifiersOfTheCircuitsOfEachZone(t *testing.T) {
	for _, c := range []struct{ name, head, sub, amps string }{
		{"English", "Zone | Location | Circuit A | | Circuit B", "| | Qty | Tap (W) | Qty | Tap (W)", "Zone | Circuit | Amplifier | Rated output (W)"},
		{"German", "Zone | Ort | Kreis A | | Kreis B", "| | Anzahl | Abgriff (W) | Anzahl | Abgriff (W)", "Zone | Kreis | Verstärker | Nennleistung (W)"},
		{"French", "Zone | Emplacement | Ligne A | | Ligne B", "| | Qté | Réglage (W) | Qté | Réglage (W)", "Zone | Ligne | Amplificateur | Puissance (W)"},
		{"Spanish", "Zona | Ubicación | Línea A | | Línea B", "| | Cant. | Toma (W) | Cant. | Toma (W)", "Zona | Línea | Amplificador | Potencia (W)"},
		{"Italian", "Zona | Posizione | Linea A | | Linea B", "| | Qtà | Presa (W) | Qtà | Presa (W)", "Zona | Linea | Amplificatore | Potenza (W)"},
		{"Dutch", "Zone | Plaats | Lijn A | | Lijn B", "| | Aantal | Stand (W) | Aantal | Stand (W)", "Zone | Lijn | Versterker | Vermogen (W)"},
	} {
		j := wholeJob(t, "## List\nCoal Halt, 100 V\n|\n"+c.head+"\n"+c.sub+"\n1 | Kanopa | 6 | 6 | 5 | 6\n1 | Stepa | 2 | 3 | 2 | 3\n2 | Subwa | 4 | 6 | 3 | 6\n"+
			"## Rack 2\n"+c.amps+"\n1 | A | AMP 1A | 120\n1 | B | AMP 1B | 120\n2 | A | AMP 2A | 60\n2 | B | AMP 2B | 60")
		want(t, c.name, describe(j), []string{"6 x 6 W zone 1 channel AMP 1A / A", "5 x 6 W zone 1 channel AMP 1B / B", "2 x 3 W zone 1 channel AMP 1A / A", "2 x 3 W zone 1 channel AMP 1B / B",
			"4 x 6 W zone 2 channel AMP 2A / A", "3 x 6 W zone 2 channel AMP 2B / B"})
		want(t, c.name, ratedOutputs(j), []string{"AMP 1A / A 120 W", "AMP 1B / B 120 W", "AMP 2A / A 60 W", "AMP 2B / B 60 W"})
	}
}

// The letters of one amplifier that feeds both circuits are its outputs.
func TestCircuitsOfOneAmplifierAreOutputs(t *testing.T) {
	j := wholeJob(t, "## List\nCoal Halt, 100 V\n|\nZone | Location | Circuit A | | Circuit B\n| | Qty | Tap (W) | Qty | Tap (W)\n1 | Kanopa | 6 | 6 | 5 | 6\n1 | Stepa | 2 | 3 | 2 | 3\n"+
		"## Rack 2\nZone | Circuit | Amplifier | Rated output (W)\n1 | A | AMP 1 | 120\n1 | B | AMP 1 | 120")
	want(t, "loudspeakers", describe(j), []string{"6 x 6 W zone 1 channel AMP 1 / A", "5 x 6 W zone 1 channel AMP 1 / B", "2 x 3 W zone 1 channel AMP 1 / A", "2 x 3 W zone 1 channel AMP 1 / B"})
}
