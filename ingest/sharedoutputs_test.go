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
		{"said behind the name of one of them", `
Rink PA, 100 V
Circuit | Area | Heads
Amp 1 (2 x 180W) | |
Line 1 | Ice | 12 x 15W
Line 2 | Benches | 8 x 6W
Amp 2 (1 x 120W) | |
Line 3 | Void | 10 x 5W
Line 4 | Store | 4 x 5W`, []string{"Amp 1 / 1 180 W", "Amp 1 / 2 180 W", "Amp 2 / 1 120 W"}},
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

// Strings of loudspeakers on one output are chains of their own, each from the output.
func TestStringsOnOneOutput(t *testing.T) {
	for _, c := range []struct{ name, sheet, on string }{
		{"English", `
Outdoor pad - as pulled
All off amp OP way 1, 70 V, 120 W. First length of a string is from the amp.
Head | Setting | String | Since last | Wire
OP1 | 15 W | S1 | 180 ft | 14/2
OP2 | 15 W | S1 | 45 ft | 14/2
OP3 | 15 W | S2 | 60 m | 2 x 2.5 mm²
OP4 | 7.5 W | S2 | 15 m | 2 x 1.5 mm²`, "OP / 1"},
		{"German", `
Rosengarten - Pilzlautsprecher
Alles an Verstärker V1 Ausgang 2, 100 V, 120 W
LS | Watt | Strang | Länge ab vorigem (m) | Kabel
P1 | 10 | A | 60 | 2x2.5 mm²
P2 | 10 | A | 12 | 2x2.5 mm²
P3 | 10 | B | 45 | 2x2.5 mm²
P4 | 10 | B | 15 | 2x2.5 mm²`, "V1 / 2"},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheet)
			if len(j.Loudspeakers) != 4 || len(j.Cables) != 4 {
				t.Fatalf("%d loudspeakers, %d cables", len(j.Loudspeakers), len(j.Cables))
			}
			for i, l := range j.Loudspeakers {
				if l.Channel == nil || l.Channel.Label() != c.on || l.Run == nil {
					t.Errorf("%s: on %v, run %v", l.Tag.Value, l.Channel, l.Run)
					continue
				}
				if first := i%2 == 0; first != (l.Run.From.Channel == l.Channel) || first == (l.Run.From.Loudspeaker != nil) {
					t.Errorf("%s: from %+v", l.Tag.Value, l.Run.From)
				}
			}
		})
	}
}
