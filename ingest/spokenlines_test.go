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

// A note lists the lengths of places behind one size for all. Common practice, no source.
func TestNotesOfLengths(t *testing.T) {
	for note, want := range map[string][2]string{
		"CABLE: 2C x 1.5 sq.mm armoured. Zone-1 - 85 mtrs, Zone-2 - 320 mtrs (2C x 2.5 sq.mm).": {"85 1.5", "320 2.5"},
		"Kabel 2x1,5 mm²: Zone 1: 40 m, Zone 2: 75,5 m":                                         {"40 1.5", "75.5 1.5"},
		"Cavo 2x2,5: zona 1 = 60 m; zona 2 = 110 m (2x4)":                                       {"60 2.5", "110 4"},
	} {
		j := wholeJob(t, "Garden - speakers 100 V\n|\nZone | Place | Qty | W\nZone-1 | Gate | 2 | 15\nZone-2 | Pond | 4 | 6\n|\n"+note)
		if len(j.Cables) != 2 {
			t.Fatalf("%s: %d cables", note, len(j.Cables))
		}
		for i, k := range j.Cables {
			if got := show(k.Length) + " " + show(k.Area); got != want[i] || k.Zone != j.Zones[i] {
				t.Errorf("%s: cable %s of %v, want %s", note, got, k.Zone, want[i])
			}
		}
	}
}

// A note lists the lengths of lines, with a word for "about" or none. Common practice, no source.
func TestNotesOfLengthsOfLines(t *testing.T) {
	for _, note := range []string{
		"Leitungen alle 2x1,5; L1 ca. 85 m, L2 ca. 140 m", "All cables 2 x 1.5 mm²: L1 85 m, L2 about 140 m", "Câbles 2x1,5 mm² : L1 env. 85 m, L2 env. 140 m",
		"Cable 2x1,5 mm²: L1 unos 85 m, L2 unos 140 m", "Cavi 2x1,5: L1 circa 85 m, L2 circa 140 m", "Kabels 2x1,5: L1 ong. 85 m, L2 ong. 140 m",
	} {
		j := wholeJob(t, "Garden - speakers 100 V\n|\nLine | Place | Qty | W\nL1 | Gate | 2 | 15\nL2 | Pond | 4 | 6\n|\n"+note)
		var got []string
		for _, k := range j.Cables {
			got = append(got, show(k.Length)+" m "+show(k.Area)+" mm²")
		}
		want(t, note, got, []string{"85 m 1.5 mm²", "140 m 1.5 mm²"})
	}
}
