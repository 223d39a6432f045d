package ingest

import "testing"

// The header over lengths tells the size of all cables, whether the list stands upright or is turned.
// Common practice, no source.
func TestSizesInHeadersOfLengths(t *testing.T) {
	const rows = "\nA | 6 | 5 | 1 | 120\nB | 4 | 5 | 2 | 60"
	for _, c := range []struct{ sheet, first, second string }{
		{"Zone | Qty | Tap (W) | Channel | Wire 16/2 (ft)" + rows, "36.576 1.3086957277552627", "18.288 1.3086957277552627"},
		{"Zone | A | B\nNo. of speakers | 6 | 4\nTap (W) | 5 | 5\nChannel | 1 | 2\nWire 16/2 (ft) | 120 | 60", "36.576 1.3086957277552627", "18.288 1.3086957277552627"},
		{"Zone | A | B\nNb de HP | 6 | 4\nTap par HP (W) | 5 | 5\nCanal | 1 | 2\nFil 16/2 (pi) | 120 | 60", "36.576 1.3086957277552627", "18.288 1.3086957277552627"},
		{"Zone | Nb HP | Réglage (W) | Sortie | Câble 2x1,5 (m)" + rows, "120 1.5", "60 1.5"},
		{"Zone | Anzahl | Anzapfung (W) | Ausgang | Kabel 2 x 2,5 mm² (m)" + rows, "120 2.5", "60 2.5"},
		{"Zona | Cantidad | Toma (W) | Salida | Cable 2x1,5 (m)" + rows, "120 1.5", "60 1.5"},
		{"Zona | Quantità | Presa (W) | Uscita | Cavo 2x1,5 (m)" + rows, "120 1.5", "60 1.5"},
		{"Zone | Aantal | Tap (W) | Uitgang | Kabel 2x1,5 (m)" + rows, "120 1.5", "60 1.5"},
		{"Zone | Qty | Tap (W) | Channel | Length (m)" + rows, "120 ?", "60 ?"},
	} {
		j := wholeJob(t, "Theatre 70.7 V\n|\n"+c.sheet)
		var got []string
		for _, k := range j.Cables {
			got = append(got, show(k.Length)+" "+show(k.Area))
		}
		want(t, c.sheet, got, []string{c.first, c.second})
	}
}
