package ingest

import "testing"

// Kinds of loudspeakers behind their count and a sign of times, or behind "n.": counts, unless the numbers only number the rows.
// Common practice, no source.
func TestCountsAheadOfKinds(t *testing.T) {
	for _, kinds := range [][3]string{{"4x hoorn", "2x hoorn", "4x kastje"}, {"4 x horn", "2 x horn", "4 x cabinet"}, {"n. 4 a tromba", "n. 2 a tromba", "n. 4 da incasso"}} {
		j := wholeJob(t, "Riding hall 100 V\n|\nWhere | Speakers | Set to | Line\nLong side | "+kinds[0]+" | 15 W | 1\nShort side | "+kinds[1]+" | 10 W | 1\nStable | "+kinds[2]+" | 3 W | 1")
		var counts []string
		for _, l := range j.Loudspeakers {
			n, _ := l.Count.Exact()
			counts = append(counts, itoa(int(n)))
		}
		want(t, kinds[0], counts, []string{"4", "2", "4"})
	}
	j := wholeJob(t, "Teatro 100 V\n|\nDove | Diffusori | Presa | Linea\nAtrio | n. 1 a tromba | 15 W | 1\nSala | n. 2 a tromba | 10 W | 1\nPalco | n. 3 da incasso | 3 W | 1")
	for _, l := range j.Loudspeakers {
		if n, _ := l.Count.Exact(); n > 1 {
			t.Errorf("a number of a row is a count of %v", n)
		}
	}
}
