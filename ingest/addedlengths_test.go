package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// A length that is written as added on goes on from the device before, and the
// first of its line begins at the output. Common practice, no source.
func TestAddedLengths(t *testing.T) {
	for _, added := range []string{"+20 m", "+ 20 m", "20 m on", "20 m weiter", "20 m de plus"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | circuit | length\nBay | 4 | 15 | A | 40 m\nShed | 4 | 15 | A | "+added+"\nQuay | 2 | 10 | B | 60 m"))
		first, second, other := j.Loudspeakers[0].Run, j.Loudspeakers[1].Run, j.Loudspeakers[2].Run
		if first == nil || second == nil || first.From.Channel == nil || second.From.Loudspeaker != j.Loudspeakers[0] || show(second.Length) != "20" {
			t.Errorf("%s: %+v, %+v", added, first, second)
		}
		if other != nil && other.Reach == schedule.FromTo {
			t.Errorf("%s: the other line %+v", added, other)
		}
	}
}
