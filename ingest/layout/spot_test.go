package layout

import (
	"testing"

	"lineaudit/audit/schedule"
)

// A place comes back from its short form as it went in; two of one place are equal.
func TestSpot(t *testing.T) {
	for _, r := range []schedule.Ref{
		{},
		{File: "a.csv"},
		{File: "a.csv", Row: 1_048_576, Col: 16_384},
		{File: "a.xlsx", Sheet: "Dome", Row: 3},
		{Sheet: "Dome", Row: 3, Col: 2},
	} {
		if got := SpotOf(r).Ref(); got != r {
			t.Errorf("%v comes back as %v", r, got)
		}
		if first, second := SpotOf(r), SpotOf(r); first != second {
			t.Errorf("%v differs from itself", r)
		}
	}
}
