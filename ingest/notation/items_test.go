package notation

import (
	"slices"
	"testing"
)

// The texts are common practice, no source.
func TestItemRefs(t *testing.T) {
	for in, want := range map[string][]string{
		"for the corridor loudspeakers (item C)": {"C"}, "Pos. 3": {"3"}, "tous les HP du n° 3": {"3"}, "partida 9.2": {"9.2"},
		"Attenuator VC1, 36 W, for item W7": {"W7"}, "für Pos. W7, W8 und W9, 36 W": {"W7", "W8", "W9"}, "pour postes S2 et S3": {"S2", "S3"}, "item 7, 36 W": {"7"}, "post B12": {"B12"},
		"Attenuator for Nr. 4a": {"4a"}, "no loudspeaker": nil, "position of the horn": nil, "Vorposten 3": nil, "": nil,
	} {
		if got := ItemRefs(in); !slices.Equal(got, want) {
			t.Errorf("ItemRefs(%q) = %q, want %q", in, got, want)
		}
	}
}
