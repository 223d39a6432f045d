package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// A row may stand for several places with as many loudspeakers in each. Common
// practice, no source.
func TestCountsInEachPlace(t *testing.T) {
	for _, tt := range []struct{ room, count, want string }{
		{"Kabine 1-4", "je 2", "8 x 3 W zone Kabine 1-4"}, {"Cabins 1 & 2", "2 per cabin", "4 x 3 W zone Cabins 1 & 2"}, {"Vestiaires 1 à 3", "2 chacun", "6 x 3 W zone Vestiaires 1 à 3"},
		{"Kabine 1-4", "8", "8 x 3 W zone Kabine 1-4"}, {"Kabine 1-4", "2 ea", "2 x 3 W zone Kabine 1-4"}, {"Foyer", "je 2", "2 x 3 W zone Foyer"},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W]\n"+tt.room+" | "+tt.count+" | 3\nHall | 4 | 6\nShop | 2 | 6"))
		want(t, tt.room+" "+tt.count, describe(j)[:1], []string{tt.want})
	}
}
