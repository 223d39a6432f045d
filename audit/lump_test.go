package audit

import (
	"strings"
	"testing"
)

// A row that states no more than its total is told as what was written, once
// for each, and not as "1 x 32 W".
func TestSumOfRowsThatStateTheirTotalAlone(t *testing.T) {
	j := loadCase(t, "testdata/control-overload/fires.csv").job
	for _, l := range j.Loudspeakers[:1] {
		l.RowTotal = l.Tap
		l.RowTotal.Low, l.RowTotal.High = 60, 60
		l.Tap.How, l.Count.How = 0, 0
	}
	for _, c := range Check(j, DefaultSettings()).Controls {
		if c.Control.Name == "VC-1" && !strings.Contains(c.Load.Sum, "60 W as written") {
			t.Errorf("sum %q", c.Load.Sum)
		}
	}
}
