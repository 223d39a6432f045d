package marked_test

import (
	"archive/zip"
	"bytes"
	"context"
	"image"
	"image/png"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/source"
	"lineaudit/report/marked"
)

// workbook makes a workbook that holds much of what people put into one.
func workbook(t testing.TB) []byte {
	t.Helper()
	f := excelize.NewFile()
	check := func(err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
	}
	check(f.SetSheetName("Sheet1", "Schedule"))
	_, err := f.NewSheet("Amps & 'old' racks")
	check(err)
	watts := `0.0" W"`
	style, err := f.NewStyle(&excelize.Style{CustomNumFmt: &watts, Font: &excelize.Font{Bold: true}})
	check(err)
	for i, v := range []float64{5, 7.5, 10} {
		cell, _ := excelize.CoordinatesToCellName(3, i+2)
		check(f.SetCellFloat("Schedule", cell, v, -1, 64))
		check(f.SetCellStyle("Schedule", cell, cell, style))
	}
	check(f.SetCellFormula("Schedule", "C5", "SUM(C2:C4)"))
	check(f.SetCellStr("Schedule", "A1", "Tag"))
	check(f.MergeCell("Schedule", "A7", "C7"))
	check(f.SetRowVisible("Schedule", 6, false))
	check(f.AddComment("Schedule", excelize.Comment{Cell: "C3", Author: "someone", Text: "measured"}))
	check(f.SetCellHyperLink("Schedule", "A1", "https://example.invalid/", "External"))
	check(f.SetDefinedName(&excelize.DefinedName{Name: "taps", RefersTo: "Schedule!$C$2:$C$4", Scope: "Schedule"}))
	check(f.SetConditionalFormat("Schedule", "C2:C4", []excelize.ConditionalFormatOptions{{Type: "data_bar", Criteria: "=", MinType: "min", MaxType: "max", BarColor: "#638EC6"}}))
	v := excelize.NewDataValidation(true)
	v.Sqref = "B2:B9"
	check(v.SetDropList([]string{"a", "b"}))
	check(f.AddDataValidation("Schedule", v))
	var picture bytes.Buffer
	check(png.Encode(&picture, image.NewGray(image.Rect(0, 0, 8, 8))))
	check(f.AddPictureFromBytes("Schedule", "H2", &excelize.Picture{Extension: ".png", File: picture.Bytes()}))
	check(f.AddChart("Amps & 'old' racks", "D2", &excelize.Chart{Type: excelize.Col, Series: []excelize.ChartSeries{{Values: "Schedule!$C$2:$C$4"}}}))
	check(f.SetCellStr("Amps & 'old' racks", "A1", "Amp 1"))
	f.SetActiveSheet(1)
	var b bytes.Buffer
	_, err = f.WriteTo(&b)
	check(err)
	return b.Bytes()
}

func parse(t testing.TB, name string, data []byte) *grid.Book {
	t.Helper()
	b, err := source.Parse(context.Background(), name, data, source.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return b
}

// findings are two: one on C2 and C3 of the first sheet, one on the second.
func findings(file string) []*audit.Finding {
	at := func(sheet string, row, col int) schedule.Ref {
		return schedule.At(file, sheet, row, col)
	}
	rule := audit.Rules()[0]
	return []*audit.Finding{
		{Rule: rule, Place: "control VC-1", Grade: audit.Danger, Certainty: audit.Certain, At: at("Schedule", 2, 3), Message: "5 W + 7.5 W on a 10 W control <&>",
			Cells: []audit.Evidence{{At: at("Schedule", 2, 3)}, {At: at("Schedule", 3, 3)}}, Remedies: []audit.Remedy{{Change: "set both to 2.5 W"}}},
		{Rule: rule, Place: "amplifier", Grade: audit.Caution, Certainty: audit.Possible, At: at("Amps & 'old' racks", 1, 1), Message: "=HYPERLINK(\"x\")"},
	}
}

func copied(t *testing.T, name string, data []byte, fs []*audit.Finding) []byte {
	t.Helper()
	var out bytes.Buffer
	src := marked.Source{Book: parse(t, name, data), Data: data, Read: func(b []byte) (*grid.Book, error) {
		return source.Parse(context.Background(), name, b, source.Options{})
	}}
	why, err := marked.Write(&out, src, fs)
	if err != nil {
		t.Fatal(err)
	}
	if why != "" {
		t.Fatalf("not marked in place: %s", why)
	}
	return out.Bytes()
}

func parts(t *testing.T, data []byte) map[string]string {
	t.Helper()
	r, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]string{}
	for _, f := range r.File {
		rc, _ := f.Open()
		b, err := io.ReadAll(rc)
		if err != nil {
			t.Fatal(err)
		}
		rc.Close()
		out[f.Name] = string(b)
	}
	return out
}

func TestOnlyWhatMustChangesChanges(t *testing.T) {
	before := workbook(t)
	after := parts(t, copied(t, "a.xlsx", before, findings("a.xlsx")))
	mayChange := []string{"[Content_Types].xml", "xl/workbook.xml", "xl/_rels/workbook.xml.rels", "xl/styles.xml", "xl/worksheets/sheet", "xl/worksheets/_rels/", "xl/comments", "xl/drawings/vmlDrawing"}
	for name, content := range parts(t, before) {
		got, ok := after[name]
		if !ok {
			t.Errorf("the part %s is gone", name)
		}
		changes := false
		for _, m := range mayChange {
			changes = changes || strings.HasPrefix(name, m)
		}
		if got != content && !changes {
			t.Errorf("the part %s has changed", name)
		}
	}
}

// The workbook library reads the copy independently of our own reader.
func TestCopyReadByTheLibrary(t *testing.T) {
	f, err := excelize.OpenReader(bytes.NewReader(copied(t, "a.xlsx", workbook(t), findings("a.xlsx"))))
	if err != nil {
		t.Fatal(err)
	}
	if got := f.GetSheetList(); got[0] != "Findings" || got[1] != "Schedule" || len(got) != 3 {
		t.Errorf("sheets %v", got)
	}
	for cell, want := range map[string]string{"C2": "5.0 W", "C3": "7.5 W"} {
		if got, _ := f.GetCellValue("Schedule", cell); got != want {
			t.Errorf("%s = %q, want %q", cell, got, want)
		}
	}
	if got, _ := f.GetCellFormula("Schedule", "C5"); got != "SUM(C2:C4)" {
		t.Errorf("formula %q", got)
	}
	comments, err := f.GetComments("Schedule")
	if err != nil {
		t.Fatal(err)
	}
	texts := map[string]string{}
	for _, c := range comments {
		for _, p := range c.Paragraph {
			texts[c.Cell] += p.Text
		}
		texts[c.Cell] += c.Text
	}
	if !strings.Contains(texts["C2"], "Finding 1, danger") || !strings.Contains(texts["C3"], "measured") || !strings.Contains(texts["C3"], "Finding 1") {
		t.Errorf("notes %q", texts)
	}
	formats, err := f.GetConditionalFormats("Schedule")
	if err != nil || len(formats) != 2 {
		t.Errorf("conditional formats %v, %v", formats, err)
	}
	names := f.GetDefinedName()
	if len(names) != 2 || names[0].Scope != "Schedule" || names[1].Scope != "Findings" {
		t.Errorf("defined names %+v", names)
	}
	if got, _ := f.GetCellValue("Findings", "E6"); got != `=HYPERLINK("x")` {
		t.Errorf("E6 = %q", got)
	}
	if got, _ := f.GetCellFormula("Findings", "C6"); !strings.Contains(got, `#'Amps & ''old'' racks'!A1`) {
		t.Errorf("link %q", got)
	}
	if pics, _ := f.GetPictures("Schedule", "H2"); len(pics) != 1 {
		t.Errorf("%d pictures", len(pics))
	}
}

// compareCells compares, with python3-openpyxl, every cell of every sheet of
// two workbooks: value, number format, font, fill, note, and the sheets' areas, widths and hidden rows.
const compareCells = `
import sys, openpyxl
a, b = (openpyxl.load_workbook(p) for p in sys.argv[1:3])
assert b.sheetnames[0] == "Findings" and b.sheetnames[1:] == a.sheetnames, b.sheetnames
n = 0
for name in a.sheetnames:
    x, y = a[name], b[name]
    for row in x.iter_rows():
        for c in row:
            d = y[c.coordinate]
            n += 1
            assert (c.value, c.number_format, repr(c.font), repr(c.fill)) == (d.value, d.number_format, repr(d.font), repr(d.fill)), (name, c.coordinate)
            assert not c.comment or d.comment.text.startswith(c.comment.text), c.coordinate
    assert str(x.merged_cells.ranges) == str(y.merged_cells.ranges)
    assert {k: (v.height, v.hidden) for k, v in x.row_dimensions.items()} == {k: (v.height, v.hidden) for k, v in y.row_dimensions.items()}
    assert {k: (v.width, v.hidden) for k, v in x.column_dimensions.items()} == {k: (v.width, v.hidden) for k, v in y.column_dimensions.items()}
    assert len(x.data_validations.dataValidation) == len(y.data_validations.dataValidation)
    assert len(x._images) == len(y._images) and len(x._charts) == len(y._charts)
assert "Finding 1" in b["Schedule"]["C3"].comment.text and "measured" in b["Schedule"]["C3"].comment.text
print(n)
`

// LibreOffice and python3-openpyxl, where they are installed, open the copy and see what they see in the original.
func TestCopyReadByOtherPrograms(t *testing.T) {
	dir := t.TempDir()
	before, after := filepath.Join(dir, "original.xlsx"), filepath.Join(dir, "copy.xlsx")
	data := workbook(t)
	for path, content := range map[string][]byte{before: data, after: copied(t, "a.xlsx", data, findings("a.xlsx"))} {
		if err := os.WriteFile(path, content, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	t.Run("openpyxl", func(t *testing.T) {
		python := withOpenpyxl(t)
		out, err := exec.Command(python, "-c", compareCells, before, after).CombinedOutput()
		if n, _ := strconv.Atoi(strings.TrimSpace(string(out))); err != nil || n < 20 {
			t.Errorf("%v\n%s", err, out)
		}
	})
	t.Run("LibreOffice", func(t *testing.T) {
		program, err := exec.LookPath("soffice")
		if err != nil {
			t.Skip("LibreOffice is not installed")
		}
		cmd := exec.Command(program, "-env:UserInstallation=file://"+filepath.Join(dir, "profile"), "--headless", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1", "--outdir", dir, before, after)
		if out, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("%v\n%s", err, out)
		}
		for _, sheet := range []string{"Schedule", "Amps & 'old' racks"} {
			want, err := os.ReadFile(filepath.Join(dir, "original-"+sheet+".csv"))
			if err != nil {
				t.Fatal(err)
			}
			if got, _ := os.ReadFile(filepath.Join(dir, "copy-"+sheet+".csv")); len(want) < 5 || !bytes.Equal(got, want) {
				t.Errorf("%s: %q, want %q", sheet, got, want)
			}
		}
		if b, _ := os.ReadFile(filepath.Join(dir, "copy-Findings.csv")); !strings.Contains(string(b), "Schedule!C2") || !strings.Contains(string(b), "set both to 2.5 W") {
			t.Errorf("findings sheet: %q", b)
		}
	})
}

// withOpenpyxl returns a Python that has openpyxl, or skips the test.
func withOpenpyxl(t *testing.T) string {
	t.Helper()
	for _, python := range []string{"python3", "/usr/bin/python3"} {
		if exec.Command(python, "-c", "import openpyxl").Run() == nil {
			return python
		}
	}
	t.Skip("python3-openpyxl is not installed")
	return ""
}

// A marked copy that comes back is read without the sheet that we put into it.
func TestOwnSheetIsKnown(t *testing.T) {
	data := workbook(t)
	before, after := parse(t, "a.xlsx", data), parse(t, "a.xlsx", copied(t, "a.xlsx", data, findings("a.xlsx")))
	if n := len(marked.WithoutFindings(after).Sheets); n != len(before.Sheets) || len(after.Sheets) != n+1 {
		t.Errorf("%d sheets of %d are left, want %d", n, len(after.Sheets), len(before.Sheets))
	}
	if marked.WithoutFindings(before) != before {
		t.Error("a workbook of another hand is changed")
	}
}

func TestTextFileGetsAWorkbook(t *testing.T) {
	out := copied(t, "a.csv", []byte("Tag;Tap\nLS1;5 W\nLS2;=1+1\n"), []*audit.Finding{{Rule: audit.Rules()[0], Grade: audit.Fault, Certainty: audit.Certain,
		At: schedule.At("a.csv", parse(t, "a.csv", []byte("Tag;Tap\nLS1;5 W\nLS2;=1+1\n")).Sheets[0].Name, 2, 2), Message: "too much"}})
	f, err := excelize.OpenReader(bytes.NewReader(out))
	if err != nil {
		t.Fatal(err)
	}
	sheet := f.GetSheetList()[1]
	if got, _ := f.GetCellValue(sheet, "B2"); got != "5 W" {
		t.Errorf("B2 = %q", got)
	}
	if formula, _ := f.GetCellFormula(sheet, "B3"); formula != "" {
		t.Errorf("a text became the formula %q", formula)
	}
	if note, _ := f.GetCellValue("Findings", "A3"); !strings.Contains(note, "a.csv") {
		t.Errorf("the copy does not say what it is: %q", note)
	}
	if comments, _ := f.GetComments(sheet); len(comments) != 1 || comments[0].Cell != "B2" {
		t.Errorf("notes %+v", comments)
	}
}

// A copy of a usual workbook, read back and compared.
func BenchmarkCopy(b *testing.B) {
	data := workbook(b)
	src := marked.Source{Book: parse(b, "a.xlsx", data), Data: data, Read: func(c []byte) (*grid.Book, error) { return parse(b, "a.xlsx", c), nil }}
	fs := findings("a.xlsx")
	for b.Loop() {
		var out bytes.Buffer
		if why, err := marked.Write(&out, src, fs); err != nil || why != "" {
			b.Fatal(why, err)
		}
	}
}
