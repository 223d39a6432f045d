package layout

import (
	"strings"
	"testing"
	"time"
)

// A cell as long as a book is prose, at once.
func TestEndlessCell(t *testing.T) {
	for _, piece := range []string{"10 W + ", "(", "1/", "4 x ", "½"} {
		start := time.Now()
		if k := readLook(strings.Repeat(piece, 1<<20/len(piece))); k&lookLong == 0 {
			t.Errorf("%q repeated looks like %b", piece, k)
		}
		if took := time.Since(start); took > 2*time.Second {
			t.Errorf("%q repeated took %v", piece, took)
		}
	}
}
