package ingest

import (
	"strings"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/text"
)

// A file with more rows in its tables than one may have is refused as a whole,
// with the reason and what to do; one with just as many is read in full.
func TestRowsAreBounded(t *testing.T) {
	book, err := text.Read("a.csv", []byte("Tag,Zone,Tap\n"+strings.Repeat("LS,Pier,5 W\n", 50)), grid.DefaultLimits(), "")
	if err != nil {
		t.Fatal(err)
	}
	if f := Read(book, Options{MaxRows: 49}); f.Kind != Unreadable || len(f.Jobs) > 0 || !strings.Contains(f.Reason, "50 rows, more than the 49") || !strings.Contains(f.Reason, "; split it") {
		t.Errorf("%s: %s", f.Kind, f.Reason)
	}
	if f := Read(book, Options{MaxRows: 50}); f.Kind != Schedule || f.Jobs[0].RowsRead != 50 {
		t.Errorf("%s: %s", f.Kind, f.Reason)
	}
}
