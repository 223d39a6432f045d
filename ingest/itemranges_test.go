package ingest

import (
	"strings"
	"testing"

	"lineaudit/ingest/layout"
)

// A row may stand for the loudspeakers of several numbers, and a control in the
// title of a section is one for all below it. Common practice, no source.
func TestNumbersOfSeveralLoudspeakers(t *testing.T) {
	for _, tt := range []struct{ items, want string }{
		{"1.1, 1.2, 1.3 - 1.6", "4 x 3 W"}, {"1, 2, 3-6", "4 x 3 W"}, {"1, 2, 3 to 6", "4 x 3 W"}, {"1, 2, 1.3 - 1.6", "1 x 3 W"}, {"1, 2, 4-3", "1 x 3 W"},
	} {
		var rows strings.Builder
		for _, item := range splitAll([]string{tt.items}, listMarks) {
			rows.WriteString("\n" + item + " | CS6 | 3")
		}
		j := jobOf(t, draw(layout.Loudspeakers, "Check", "item | model | tap[W]"+rows.String()))
		want(t, tt.items, describe(j)[2:], []string{tt.want})
	}
	j := wholeJob(t, `
Heron Hall loudspeaker check, 100 V
Line 1 (amp A out 1, 125 W)
pos | model | set
1.1 | CS6 | 3 W
1.2 | CS6 | 6 W
Line 2 (amp B, 60 W, via wall control 12 W)
pos | model | set
2.1 | CS6 | 3 W
2.2 | CS6 | 3 W`)
	if got := controlsOf(j); got != "control (Line 2) 12 W x2" {
		t.Errorf("got %s", got)
	}
}
