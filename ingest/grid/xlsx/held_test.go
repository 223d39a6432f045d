package xlsx

import (
	"fmt"
	"runtime"
	"strings"
	"testing"

	"lineaudit/ingest/grid"
)

// A register whose cells mostly say what others do takes few bytes for each cell
// (4 and a share of its row; 40 once).
func TestRegisterIsHeldShort(t *testing.T) {
	const rows, cols, most = 20_000, 13, 12
	var b strings.Builder
	for i := range rows {
		fmt.Fprintf(&b, `<row r="%d">`, i+1)
		for k := range cols {
			fmt.Fprintf(&b, `<c r="%s" t="str"><v>House %d</v></c>`, grid.A1(i+1, k+1), i/50+k*i%100)
		}
		b.WriteString("</row>")
	}
	data := pack(t, workbookFiles(sheetOf(b.String())))
	inUse := func() int64 {
		runtime.GC()
		runtime.GC()
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		return int64(m.HeapAlloc)
	}
	before := inUse()
	book, err := Read("register.xlsx", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if took := float64(inUse()-before) / (rows * cols); took > most {
		t.Errorf("%.1f bytes for each cell, want %d at most", took, most)
	} else {
		t.Logf("%.1f bytes for each cell", took)
	}
	runtime.KeepAlive(book)
}
