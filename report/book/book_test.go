package book_test

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid/source"
	"lineaudit/report"
	"lineaudit/report/book"
	"lineaudit/report/reporttest"
)

func written(t *testing.T, a *report.Audit) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := book.Write(&b, a, map[string]string{"gardens/palm.xlsx": "marked/gardens/palm.xlsx"}); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func opened(t *testing.T, data []byte) *excelize.File {
	t.Helper()
	f, err := excelize.OpenReader(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { f.Close() })
	return f
}

// at returns the cell of a sheet under a heading, in the nth row of the table.
func at(t *testing.T, f *excelize.File, sheet, heading string, n int) string {
	t.Helper()
	rows, err := f.GetRows(sheet, excelize.Options{RawCellValue: true})
	if err != nil {
		t.Fatal(err)
	}
	for i, h := range rows[3] {
		if h == heading {
			cell, _ := excelize.CoordinatesToCellName(i+1, 4+n)
			v, err := f.GetCellValue(sheet, cell, excelize.Options{RawCellValue: true})
			if err != nil {
				t.Fatal(err)
			}
			return v
		}
	}
	t.Fatalf("sheet %s has no heading %q: %q", sheet, heading, rows[3])
	return ""
}

// 8 x 10 W = 80 W on a 50 W control at 100 V: 160 %, 125 ohm. Hand calculation.
func TestFiguresAgree(t *testing.T) {
	f := opened(t, written(t, reporttest.Overloaded()))
	for heading, want := range map[string]string{"Control": "VC-1", "Rated (W)": "50", "Load (W)": "80", "Load of rating (%)": "160", "Expected at 1 kHz (ohm)": "125"} {
		if got := at(t, f, "Controls", heading, 1); got != want {
			t.Errorf("%s = %q, want %q", heading, got, want)
		}
	}
	if got := at(t, f, "Findings", "What was found", 1); got != "8 x 10 W = 80 W on a 50 W control: 160 %" {
		t.Errorf("finding %q", got)
	}
}

func TestReadersChangeTheOrderAlone(t *testing.T) {
	first := map[report.Reader]string{report.Service: "Findings", report.Bid: "Questions", report.Compliance: "Overview"}
	second := map[report.Reader]string{report.Service: "Visit list", report.Bid: "Findings", report.Compliance: "Register of requirements"}
	sheets := map[string]bool{}
	for reader := range first {
		a := reporttest.Overloaded()
		a.For = reader
		r := a.Archive.Results[0]
		r.Questions = append(r.Questions, audit.Question{At: r.Job.Zones[0].At, Field: "rating", Text: "What is the rating?"})
		list := opened(t, written(t, a)).GetSheetList()
		if list[0] != "Summary" || list[1] != first[reader] || list[2] != second[reader] {
			t.Errorf("%s: sheets %v", reader, list)
		}
		for _, s := range list {
			sheets[s] = true
		}
		if len(sheets) != len(list) {
			t.Errorf("%s: %d sheets, want %d", reader, len(list), len(sheets))
		}
	}
}

func TestNothingHostileBecomesAFormula(t *testing.T) {
	f := opened(t, written(t, reporttest.Hostile()))
	for _, sheet := range f.GetSheetList() {
		rows, err := f.GetRows(sheet)
		if err != nil {
			t.Fatal(err)
		}
		for r, row := range rows {
			for c := range row {
				cell, _ := excelize.CoordinatesToCellName(c+1, r+1)
				formula, err := f.GetCellFormula(sheet, cell)
				if err != nil {
					t.Fatal(err)
				}
				if formula != "" && !strings.HasPrefix(formula, "HYPERLINK(") {
					t.Errorf("%s!%s holds the formula %q", sheet, cell, formula)
				}
			}
		}
	}
}

func TestDispositionsComeBack(t *testing.T) {
	a := reporttest.Overloaded()
	id := a.Archive.Findings[0].ID
	a.Dispositions = map[string]report.Disposition{id: {Decision: "wrong because the control was changed", Remark: "see order 12"}}
	data := written(t, a)
	b, err := source.Parse(context.Background(), "audit.xlsx", data, source.Options{})
	if err != nil {
		t.Fatal(err)
	}
	back, err := book.Dispositions(b)
	if err != nil || len(back) != 1 || back[id] != a.Dispositions[id] {
		t.Errorf("%v, %v", back, err)
	}
	b.Sheets = b.Sheets[:1]
	if _, err := book.Dispositions(b); err == nil {
		t.Error("a workbook without the columns is no error")
	}
}

// A hundred thousand findings are written row by row: the memory held while
// writing stays far below what the whole workbook would take as cells.
func TestManyFindings(t *testing.T) {
	if testing.Short() {
		t.Skip("writes a large workbook")
	}
	job := reporttest.Job("big.xlsx", "Big site", 240, 50, 10, 8)
	a := reporttest.Of(job)
	rule := audit.Rules()[0]
	n := 100_000
	if slow {
		n = 5_000
	}
	for i := range n {
		a.Archive.Findings = append(a.Archive.Findings, &audit.Finding{Rule: rule, ID: fmt.Sprint(i), Rank: i + 2, Place: fmt.Sprint("control VC-", i), Grade: audit.Fault,
			Certainty: audit.Certain, At: schedule.At("big.xlsx", "Schedule", i+5, 2), Message: "60 W on a 50 W control: 120 %"})
	}
	a.Files[0].Results[0].Findings = a.Archive.Findings
	var before, after runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&before)
	var counter countingWriter
	if err := book.Write(&counter, a, nil); err != nil {
		t.Fatal(err)
	}
	runtime.ReadMemStats(&after)
	t.Logf("%d bytes of workbook; %d MiB taken from the system", counter, (after.Sys-before.Sys)>>20)
	if held := (after.Sys - before.Sys) >> 20; held > 600 {
		t.Errorf("writing took %d MiB", held)
	}
}

type countingWriter int

func (c *countingWriter) Write(p []byte) (int, error) {
	*c += countingWriter(len(p))
	return len(p), nil
}

// LibreOffice, where it is installed, opens the workbook and sees the figures.
func TestOpensInLibreOffice(t *testing.T) {
	program, err := exec.LookPath("soffice")
	if err != nil {
		t.Skip("LibreOffice is not installed")
	}
	dir := t.TempDir()
	for name, a := range map[string]*report.Audit{"overloaded": reporttest.Overloaded(), "hostile": reporttest.Hostile(), "empty": reporttest.Of()} {
		path := filepath.Join(dir, name+".xlsx")
		if err := os.WriteFile(path, written(t, a), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	paths, _ := filepath.Glob(filepath.Join(dir, "*.xlsx"))
	cmd := exec.Command(program, append([]string{"-env:UserInstallation=file://" + filepath.Join(dir, "profile"), "--headless", "--convert-to",
		"csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1", "--outdir", dir}, paths...)...)
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	for _, name := range []string{"overloaded", "hostile", "empty"} {
		if _, err := os.Stat(filepath.Join(dir, name+"-Findings.csv")); err != nil {
			t.Errorf("%s was not opened: %v", name, err)
		}
	}
	b, err := os.ReadFile(filepath.Join(dir, "overloaded-Controls.csv"))
	if err != nil || !strings.Contains(string(b), "VC-1") || !strings.Contains(string(b), ",50,80,160,-30,125,danger,") {
		t.Errorf("%v: %s", err, b)
	}
}
