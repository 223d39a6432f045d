package housebook_test

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"lineaudit/report/housebook"
)

var form = housebook.Form{Sheets: []string{"names", "ratings"}, Fields: []string{"tap"}, Rules: []string{"headroom-short"}, Uses: []string{"any"},
	Columns: func(sheet string) []string {
		return map[string][]string{"names": {"kind", "written", "means"}, "ratings": {"model", "kind", "rated_w"}}[sheet]
	}}

func opened(t *testing.T, write func(b *bytes.Buffer) error) *excelize.File {
	t.Helper()
	var b bytes.Buffer
	if err := write(&b); err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(&b)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { f.Close() })
	return f
}

func TestEmptyBook(t *testing.T) {
	f := opened(t, func(b *bytes.Buffer) error { return housebook.Empty(b, form) })
	if got := f.GetSheetList(); got[0] != "read me" || !slices.Contains(got, "names") || !slices.Contains(got, "ratings") || !slices.Contains(got, "examples") {
		t.Errorf("sheets %v", got)
	}
	rows, err := f.GetRows("ratings")
	if err != nil || len(rows) != 1 || !slices.Equal(rows[0], []string{"model", "kind", "rated_w"}) {
		t.Errorf("rows %v, %v", rows, err)
	}
	lists, err := f.GetDataValidations("ratings")
	if err != nil || len(lists) == 0 || lists[0].ShowErrorMessage {
		t.Errorf("lists %+v, %v", lists, err)
	}
	// the explanation of names is some 230 characters on 110: more than one line of 13 points
	if high, _ := f.GetRowHeight("read me", 4); high < 28 {
		t.Errorf("the explanation has a row of %g points", high)
	}
}

func TestFilledBook(t *testing.T) {
	long := strings.Repeat("met on many schedules ", 20)
	rows := map[string][]housebook.Row{"ratings": {{Cells: map[string]string{"model": "=WK-35", "kind": "control"}, Note: long}}}
	extras := []housebook.Extra{{Name: "questions", Columns: []string{"file", "question"}, Widths: []float64{20, 60}, Rows: [][]string{{"a.xlsx", "what?"}}}}
	f := opened(t, func(b *bytes.Buffer) error { return housebook.Filled(b, form, rows, extras, "Met in the archive.") })
	for cell, want := range map[string]string{"A2": "=WK-35", "B2": "control", "D1": "remark", "D2": long} {
		if got, _ := f.GetCellValue("ratings", cell); got != want {
			t.Errorf("%s = %q, want %q", cell, got, want)
		}
	}
	if formula, _ := f.GetCellFormula("ratings", "A2"); formula != "" {
		t.Errorf("a model became the formula %q", formula)
	}
	if got, _ := f.GetCellValue("questions", "B2"); got != "what?" {
		t.Errorf("questions!B2 = %q", got)
	}
	if high, _ := f.GetRowHeight("ratings", 2); high < 60 {
		t.Errorf("the remark has a row of %g points", high)
	}
}
