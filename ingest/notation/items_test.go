package notation

import (
	"slices"
	"testing"
)

// The texts are common practice, no source.
func TestItemRefs(t *testing.T) {
	for in, want := range map[string][]string{
		"for the corridor loudspeakers (item C)": {"C"}, "Pos. 3": {"3"}, "tous les HP du n° 3": {"3"}, "partida 9.2": {"9.2"},
		"Attenuator for Nr. 4a": {"4a"}, "no loudspeaker": nil, "position of the horn": nil, "Vorposten 3": nil, "": nil,
	} {
		if got := ItemRefs(in); !slices.Equal(got, want) {
			t.Errorf("ItemRefs(%q) = %q, want %q", in, got, want)
		}
	}
}
