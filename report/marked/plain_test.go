package marked

import (
	"bytes"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"lineaudit/ingest/grid"
)

func TestPlainBookKeepsWhatTheGridHolds(t *testing.T) {
	s := &grid.Sheet{Name: "Rink/2: [east] and a name that is much too long", HiddenCols: []grid.Span{{First: 3, Last: 3}},
		Merges: []grid.Range{{Row1: 1, Col1: 1, Row2: 1, Col2: 3}, {Row1: 1, Col1: 2, Row2: 2, Col2: 2}},
		Rows: []grid.Row{
			grid.NewRow(1, grid.Cell{Kind: grid.String, Text: "=1+1"}.In(1)),
			grid.NewRow(4, grid.Cell{Kind: grid.Number, Number: 7.5, Text: "7.5 W", Extra: grid.Extra{Format: `0.0" W"`}.Share()}.In(1),
				grid.Cell{Kind: grid.Date, Number: 46024, Extra: grid.Extra{Format: "d/m/yyyy"}.Share()}.In(2), grid.Cell{Kind: grid.Boolean, Number: 1}.In(3),
				grid.Cell{Kind: grid.String, Text: "two\nlines", Struck: grid.WholeStruck}.In(4)),
		}}
	s.Rows[1].Hidden = grid.HiddenByHand
	data, names := plainBook(&grid.Book{File: "a.xls", Sheets: []*grid.Sheet{s, {Name: "History"}, {Name: "history"}, {Name: ""}}})
	f, err := excelize.OpenReader(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	sheets := f.GetSheetList()
	if len(sheets) != 4 || sheets[0] != names[s.Name] || strings.ContainsAny(sheets[0], `:\/?*[]`) || len(sheets[0]) > 31 {
		t.Errorf("sheets %q", sheets)
	}
	for cell, want := range map[string]string{"A1": "=1+1", "A4": "7.5 W", "B4": "2/1/2026", "C4": "TRUE", "D4": "two\nlines"} {
		if got, _ := f.GetCellValue(sheets[0], cell); got != want {
			t.Errorf("%s = %q, want %q", cell, got, want)
		}
	}
	if formula, _ := f.GetCellFormula(sheets[0], "A1"); formula != "" {
		t.Errorf("a text became the formula %q", formula)
	}
	if merges, _ := f.GetMergeCells(sheets[0]); len(merges) != 1 {
		t.Errorf("overlapping areas are kept: %v", merges)
	}
	if shown, _ := f.GetRowVisible(sheets[0], 4); shown {
		t.Error("row 4 is shown")
	}
	if shown, _ := f.GetColVisible(sheets[0], "C"); shown {
		t.Error("column C is shown")
	}
}

func TestSheetNames(t *testing.T) {
	taken := map[string]string{}
	for i, tt := range []struct{ in, want string }{
		{"Rink", "Rink"}, {"rink", "rink 2"}, {"'quoted'", "quoted"}, {"a/b:c", "a-b-c"}, {"", "Sheet5"}, {"History", "History sheet"},
		{strings.Repeat("x", 40), strings.Repeat("x", 24)}, {strings.Repeat("x", 41), strings.Repeat("x", 24) + " 8"}, {"\x1b[31m\u202ered", "-31mred"},
	} {
		got := sheetName(tt.in, i, taken)
		if got != tt.want {
			t.Errorf("sheetName(%q) = %q, want %q", tt.in, got, tt.want)
		}
		taken[tt.in] = got
	}
}
