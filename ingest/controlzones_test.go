package ingest

import (
	"strings"
	"testing"
)

// zonedHeads are the headers of a list of loudspeakers and of lists of amplifiers, controls and cables.
var zonedHeads = []struct{ list, amps, controls, cables string }{
	{"Zone | Room | Qty | Tap (W) | Amplifier | Control", "Amplifier | Power (W)", "Control | Power (W)", "Zone | Cable | Length (m)"},
	{"Zone | Raum | Anzahl | Abgriff (W) | Verstärker | Regler", "Verstärker | Leistung (W)", "Regler | Leistung (W)", "Zone | Kabel | Länge (m)"},
	{"Zone | Local | Nombre | Réglage (W) | Ampli | Régleur", "Ampli | Puissance (W)", "Régleur | Puissance (W)", "Zone | Câble | Longueur (m)"},
	{"Zona | Sala | Cantidad | Toma (W) | Amplificador | Regulador", "Amplificador | Potencia (W)", "Regulador | Potencia (W)", "Zona | Cable | Longitud (m)"},
	{"Zona | Locale | Quantità | Presa (W) | Amplificatore | Regolatore", "Amplificatore | Potenza (W)", "Regolatore | Potenza (W)", "Zona | Cavo | Lunghezza (m)"},
	{"Zone | Ruimte | Aantal | Trafostand (W) | Versterker | Regelaar", "Versterker | Vermogen (W)", "Regelaar | Vermogen (W)", "Zone | Kabel | Lengte (m)"},
}

const zonedRows = "\n1 | Pool | 8 | 15 | A1 |\n2 | Paddling pool | 3 | 6 | A2 | R1\n2 | Stands | 4 | 6 | A2 |\n3 | Changing | 4 | 3 | A3 |\n4 | Hall | 4 | 3 | A4 | R2\n4 | Desk | 1 | 1.5 | A4 | R3\n"

var zonedWant = []string{"8 x 15 W zone 1 channel A1 / 1", "3 x 6 W zone 2 control R1 channel A2 / 1", "4 x 6 W zone 2 channel A2 / 1",
	"4 x 3 W zone 3 channel A3 / 1", "4 x 3 W zone 4 control R2 channel A4 / 1", "1 x 1.5 W zone 4 control R3 channel A4 / 1"}

// Three small tables may stand side by side, with a blank column between each two: what stands beside a control in the next of
// them is not its zone. Common practice, no source.
func TestThreeTablesSideBySide(t *testing.T) {
	for _, h := range zonedHeads {
		j := wholeJob(t, "## List\nSwimming pool, 100 V\n|\n"+h.list+zonedRows+"## Gear\n"+h.amps+" | | "+h.controls+" | | "+h.cables+
			"\nA1 | 360 | | R1 | 24 | | 1 | 2x2.5 mm² | 140\nA2 | 60 | | R2 | 24 | | 2 | 2x1.5 mm² | 90\nA3 | 60 | | R3 | 6 | | 3 | 2x1.5 mm² | 75\nA4 | 30 | | R4 | 12 | | 4 | 2x1.5 mm² | 50")
		want(t, h.list, describe(j), zonedWant)
		if len(j.Cables) != 4 || len(j.Amplifiers) != 4 {
			t.Errorf("%s: %d cables, %d amplifiers", h.list, len(j.Cables), len(j.Amplifiers))
		}
	}
}

// A control that loudspeakers of one zone name does not take another zone, whose number stands beside it, without a question.
func TestControlsBesideAnotherZone(t *testing.T) {
	for _, h := range zonedHeads {
		j := wholeJob(t, "## List\nSwimming pool, 100 V\n|\n"+h.list+zonedRows+"## Gear\n"+h.controls+" | | "+h.cables+
			"\nR1 | 24 | | 1 | 2x2.5 mm² | 140\nR2 | 24 | | 2 | 2x1.5 mm² | 90\nR3 | 6 | | 3 | 2x1.5 mm² | 75\nR4 | 12 | | 4 | 2x1.5 mm² | 50")
		want(t, h.list, describe(j), zonedWant)
		if got := strings.Join(asked(j), ", "); !strings.Contains(got, " control") {
			t.Errorf("%s: asked %s", h.list, got)
		}
		if len(j.Cables) != 4 {
			t.Errorf("%s: %d cables", h.list, len(j.Cables))
		}
	}
}
