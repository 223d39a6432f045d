package ingest

import (
	"strings"
	"testing"
)

// A tag with the place behind a comma is one loudspeaker, several tags are several. Common practice, no source.
func TestPlacesBehindTags(t *testing.T) {
	for _, place := range []string{"ice machine", "Eismaschine", "machine à glace", "máquina de hielo", "macchina del ghiaccio", "ijsmachine"} {
		j := wholeJob(t, "Rink 100 V\n|\nSpeaker | Tap W | Zone\nHorn E4 | 15 | East\nHorn E5, "+place+" | 10 | East\nE6, E7 | 6 | West\n")
		list := describe(j)
		if len(list) != 3 || !strings.Contains(list[1], "1 x 10 W") || !strings.Contains(list[2], "2 x 6 W") {
			t.Errorf("%s: %v", place, list)
		}
	}
}
