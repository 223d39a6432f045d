package xlsx

import (
	"reflect"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/gridtest"
)

// The schedule that all readers share, saved as .xlsx by LibreOffice, reads as
// it was written down by hand.
func TestScheduleSavedByLibreOffice(t *testing.T) {
	book := mustRead(t, gridtest.Convert(t, "schedule.fods", gridtest.Schedule, "xlsx"))
	want := gridtest.Cells()
	gridtest.Find(want, gridtest.Main, "F9").Kind = grid.Number // LibreOffice stores a formula's FALSE as 0 that shows as FALSE
	gridtest.Compare(t, gridtest.Read(book), want)
	if s := book.Sheets[0]; !reflect.DeepEqual(s.Merges, gridtest.Merges) || !reflect.DeepEqual(s.HiddenCols, gridtest.HiddenCols) {
		t.Errorf("merges %v, hidden columns %v", s.Merges, s.HiddenCols)
	}
	if s := book.Sheets[1]; s.Filtered != gridtest.Filter {
		t.Errorf("filter %v, want %v", s.Filtered, gridtest.Filter)
	}
	if s := book.Sheets[2]; !s.Hidden || s.Name != gridtest.Old || book.Format != grid.XLSX {
		t.Errorf("sheet %q hidden %v, format %q", s.Name, s.Hidden, book.Format)
	}
}
