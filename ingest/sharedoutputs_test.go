package ingest

import (
	"slices"
	"strings"
	"testing"
)

// Lines that share the only output of their amplifier are no outputs.
func TestLinesOnOneOutput(t *testing.T) {
	for _, c := range []struct {
		name, sheet string
		rated       []string
	}{
		{"German, said below the list", `
Botanischer Garten - Bestand
Strang | Ort | Lautsprecher | Verstärker
1 | Palmenhaus | 4 x 10 W | V1 (120 W)
2 | Orchideen | 6 x 6 W | V1 (120 W)
3 | Kasse | 3 x 3 W | V2 (60 W)
4 | Werkstatt | 2 x 6 W | V2 (60 W)

Alle 100 V. Jeder Verstärker hat nur einen Ausgang.`, []string{"V1 / 1 120 W", "V2 / 1 60 W"}},
		{"Spanish, lettered lines", `
Planetario - sonorización
Zona | Línea | Altavoces | Etapa
Cúpula | A | 8 x 6W | E1
Taquilla | B | 4 x 3W | E1
Sala | C | 6 x 10W | E2
Talleres | D | 2 x 6W | E2

Cada etapa tiene una sola salida, 120 W, línea de 100 V`, []string{"E1 / 1 120 W", "E2 / 1 120 W"}},
		{"English, of one amplifier alone", `
Slipway PA
Circuit | Area | Heads | Amp
1 | Slip | 4 @ 15W | PA1
2 | Store | 6 @ 5W | PA1
A | Club | 8 @ 5W | PA2
B | Office | 2 @ 2.5W | PA2

PA1: one output, 120 W. PA2: 2 outputs of 60 W. 70 V`, []string{"PA1 / 1 120 W", "PA2 / A 60 W", "PA2 / B 60 W"}},
		{"one line, which is the output's name", `
Rink PA
Circuit | Area | Heads | Amp
L1 | Ice | 4 @ 15W | PA1
L2 | Stand | 6 @ 5W | PA2

All amps 120 W, single output, 70 V`, []string{"PA1 / L1 120 W", "PA2 / L2 120 W"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			want(t, "outputs", ratedOutputs(wholeJob(t, c.sheet)), c.rated)
		})
	}
}

// Where nothing says so, each line is taken for an output, and that is told.
func TestLinesTakenForOutputs(t *testing.T) {
	j := wholeJob(t, `
Rink PA, 100 V
Circuit | Area | Heads | Amp
1 | Ice | 4 @ 15W | PA1
2 | Stand | 6 @ 5W | PA1
3 | Skate hire | 4 @ 5W | PA2`)
	if !slices.ContainsFunc(takenAs(j), func(s string) bool { return strings.Contains(s, "channel = an output of its own") }) {
		t.Errorf("not told: %q", takenAs(j))
	}
}
