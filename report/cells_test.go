package report_test

import (
	"strings"
	"testing"
	"time"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/report"
)

// A finding may rest on every row of a register: its cells are told once each,
// in their order, in time that grows with their number alone.
func TestCellsOfARegister(t *testing.T) {
	at := func(row int) schedule.Ref { return schedule.At("a.csv", "", row, 3) }
	f := &audit.Finding{At: at(2)}
	for range 2 {
		for row := 1; row <= 100_000; row++ {
			f.Cells = append(f.Cells, audit.Evidence{At: at(row)})
		}
	}
	begin := time.Now()
	got := report.Cells(f)
	if took := time.Since(begin); took > 5*time.Second { // a minute, when each cell was sought among all
		t.Errorf("it took %v", took)
	}
	if n := strings.Count(got, ";") + 1; n != 100_000 || !strings.HasPrefix(got, "C2; C1; C3; ") {
		t.Errorf("%d cells, the first %.20s", n, got)
	}
}
