package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// A note may say of a line what feeds it and what its cable is. Common practice, no source.
func TestCablesInNotesOfLines(t *testing.T) {
	const rows = "room | quantity | tap[W] | circuit\nHall | 4 | 10 | 1\nShop | 6 | 5 | 2"
	for _, note := range []string{
		"Línea 1: etapa A salida 1, 120 W, 2x1,5 180 m; Línea 2: etapa B, 60 W, 2x2,5 70 m",
		"Line 1: 180 m of 2 x 1.5 mm²; line 2: 70 m, 2.5 mm²",
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+note+"\n"+rows))
		var got []string
		for _, c := range j.Cables {
			got = append(got, show(c.Length)+" m "+show(c.Area)+" mm²")
		}
		want(t, note, got, []string{"180 m 1.5 mm²", "70 m 2.5 mm²"})
	}
}

// Notes may give each zone its cable. Common practice, no source.
func TestNotesOfCablesOfZones(t *testing.T) {
	for _, sheet := range []string{`
Hortus, luidsprekers 100 V
Zone | Plek | Aantal | Watt
1 | Ingang | 2 | 15
2 | Kas | 4 | 6

Kabel zone 1: 40 m 2x1,5
Kabel naar zone 2: 85 m van 2x2,5`, `
Steinbruch, Lautsprecher 100 V
Zone | Ort | Stk | Watt
Nord | Rampe | 2 | 15
Süd | Halle | 4 | 6

Kabel Nord: 40 m NYM 2x1,5
Leitung Süd: 85 m NYM 2x2,5`,
	} {
		j := wholeJob(t, sheet)
		if len(j.Cables) != 2 {
			t.Fatalf("%d cables of %s", len(j.Cables), sheet)
		}
		for i, w := range []string{"40 1.5", "85 2.5"} {
			k := j.Cables[i]
			if got := show(k.Length) + " " + show(k.Area); got != w || k.Zone != j.Zones[i] {
				t.Errorf("cable %s, want %s", got, w)
			}
		}
	}
}
