package layout

import (
	"testing"

	"lineaudit/audit/schedule"
)

// A place comes back from its short form as it went in; two of one place are equal.
func TestSpot(t *testing.T) {
	for _, r := range []schedule.Ref{
		{},
		schedule.At("a.csv", "", 0, 0),
		schedule.At("a.csv", "", 1_048_576, 16_384),
		schedule.At("a.xlsx", "Dome", 3, 0),
		schedule.At("", "Dome", 3, 2),
	} {
		if got := SpotOf(r).Ref(); got != r {
			t.Errorf("%v comes back as %v", r, got)
		}
		if first, second := SpotOf(r), SpotOf(r); first != second {
			t.Errorf("%v differs from itself", r)
		}
	}
}
