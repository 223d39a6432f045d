package strike_test

import (
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/strike"
)

func TestOf(t *testing.T) {
	type runs = []strike.Run
	for _, tt := range []struct {
		name string
		in   runs
		want grid.Strike
		kept string
	}{
		{"no text", nil, grid.NotStruck, ""},
		{"plain", runs{{"5 W", false}}, grid.NotStruck, ""},
		{"whole", runs{{"5 W", true}}, grid.WholeStruck, ""},
		{"old and new", runs{{"5 W", true}, {" 2.5 W", false}}, grid.PartStruck, " 2.5 W"},
		{"only the space is plain", runs{{"5", true}, {" ", false}, {"W", true}}, grid.WholeStruck, ""},
		{"only the space is struck", runs{{"5", false}, {" ", true}, {"W", false}}, grid.NotStruck, ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if s, kept := strike.Of(tt.in); s != tt.want || kept != tt.kept {
				t.Errorf("Of = %v %q, want %v %q", s, kept, tt.want, tt.kept)
			}
		})
	}
}
