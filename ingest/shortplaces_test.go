package ingest

import (
	"strings"
	"testing"
)

// Outputs that say in short what they feed, and lists of loudspeakers that do. Common practice, no source.
func TestZonesInShort(t *testing.T) {
	for _, c := range []struct{ zones, serves [2]string }{
		{[2]string{"Block A", "Block B"}, [2]string{"Blk A", "Blk B"}},
		{[2]string{"Bahnsteig 1", "Empfangsgebäude"}, [2]string{"Bstg. 1", "EG (Empfangsgeb.)"}},
		{[2]string{"Tribune nord", "Buvette"}, [2]string{"Trib. nord", "Buv."}},
		{[2]string{"Vest. norte", "Vest. sur"}, [2]string{"Vestuarios norte", "Vestuarios sur"}},
	} {
		j := wholeJob(t, "Zone | Room | Type | Qty | W\n"+c.zones[0]+" | east | horn | 2 | 10\n"+c.zones[1]+" | west | horn | 3 | 10\n|\n"+
			"## Rack\nAmplifier | Output | Serves | Max. W\nE1 | A | "+c.serves[0]+" | 120\nE1 | B | "+c.serves[1]+" | 120\n")
		want(t, c.serves[0], describe(j), []string{"2 x 10 W zone " + c.zones[0] + " channel E1 / A", "3 x 10 W zone " + c.zones[1] + " channel E1 / B"})
	}
}

// What is short of nothing, or of two, joins nothing.
func TestZonesThatAreNotInShort(t *testing.T) {
	for _, c := range []struct {
		zones  [2]string
		serves string
		asks   bool
	}{
		{[2]string{"Saal Nord", "Saal Süd"}, "Saal N", false},
		{[2]string{"Bahnsteig 1", "Bahnsteig 2"}, "Bstg. 3", false},
		{[2]string{"Hallway", "Yard"}, "Hall", false},
		{[2]string{"Umkleide", "Umkehrstelle"}, "Umk.", true},
	} {
		j := wholeJob(t, "Zone | Room | Type | Qty | W\n"+c.zones[0]+" | east | horn | 2 | 10\n"+c.zones[1]+" | west | horn | 3 | 10\n|\n"+
			"## Rack\nAmplifier | Output | Serves | Max. W\nE1 | A | "+c.serves+" | 120\n")
		for _, l := range describe(j) {
			if strings.Contains(l, "channel") {
				t.Errorf("%s: %s", c.serves, l)
			}
		}
		asked := false
		for _, q := range j.Questions {
			asked = asked || strings.Contains(q.Text, c.serves+"” could be")
		}
		if asked != c.asks {
			t.Errorf("%s: asked %v: %v", c.serves, asked, j.Questions)
		}
	}
}
