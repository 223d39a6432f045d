package book_test

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
	"lineaudit/report/book"
	"lineaudit/report/reporttest"
)

// shown writes a workbook as text: every sheet with its cells as they are
// shown, formulas behind them, widths and what is printed.
func shown(t *testing.T, f *excelize.File, leave ...string) string {
	t.Helper()
	var b strings.Builder
	for _, sheet := range f.GetSheetList() {
		if slices.Contains(leave, sheet) {
			continue
		}
		fmt.Fprintf(&b, "== %s\n", sheet)
		rows, err := f.GetRows(sheet)
		if err != nil {
			t.Fatal(err)
		}
		for r, row := range rows {
			for c, text := range row {
				if text == "" {
					continue
				}
				cell, _ := excelize.CoordinatesToCellName(c+1, r+1)
				fmt.Fprintf(&b, "%s %s", cell, strings.ReplaceAll(text, "\n", "\\n"))
				if formula, _ := f.GetCellFormula(sheet, cell); formula != "" {
					fmt.Fprintf(&b, " = %s", formula)
				}
				b.WriteString("\n")
			}
		}
	}
	for _, n := range f.GetDefinedName() {
		if !slices.Contains(leave, n.Scope) {
			fmt.Fprintf(&b, "%s %s %s\n", n.Scope, n.Name, n.RefersTo)
		}
	}
	return b.String()
}

// The sheets of rules alone change when the audit does; they are left out.
func TestWholeWorkbook(t *testing.T) {
	for _, reader := range []report.Reader{report.Service, report.Bid, report.Compliance} {
		a := reporttest.Fixed()
		a.For = reader
		f := opened(t, written(t, a))
		leave := []string{"Rules and sources", "Register of requirements", "Overview"}
		if reader != report.Service {
			leave = slices.DeleteFunc(f.GetSheetList(), func(s string) bool { return s == "Summary" })
		}
		reporttest.Golden(t, "workbook-"+string(reader), shown(t, f, leave...))
	}
}

func TestAFullDiskIsAnError(t *testing.T) {
	for _, room := range []int{0, 1, 5000} {
		if err := book.Write(&reporttest.Disk{Room: room}, reporttest.Fixed(), nil); !errors.Is(err, reporttest.ErrFull) {
			t.Errorf("room for %d: %v", room, err)
		}
	}
}
