package main

import (
	"archive/zip"
	"bytes"
	"context"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"

	"lineaudit/audit"
	"lineaudit/ingest"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/source"
	"lineaudit/ingest/layout"
	"lineaudit/report"
	"lineaudit/report/book"
	"lineaudit/report/data"
	"lineaudit/report/marked"
	"lineaudit/report/page"
	"lineaudit/samples/generate"
)

// A bench is an archive on which every stage of a run can be done by itself.
type bench struct {
	tb      testing.TB
	dir     string
	files   []source.File
	content [][]byte
	books   []*grid.Book
	jobs    [][]*ingest.File
	audit   *report.Audit // of all, with results that are whole
}

// newBench makes an archive of so many jobs with about 100 loudspeakers each,
// and does every stage once.
func newBench(tb testing.TB, jobs int) *bench {
	tb.Helper()
	b := &bench{tb: tb, dir: tb.TempDir()}
	if _, err := generate.Write(b.dir, generate.Config{Seed: 1, Jobs: jobs, Loudspeakers: 100, Noise: 1, Faults: 0.3, Languages: []string{"en"}, Format: "xlsx"}); err != nil {
		tb.Fatal(err)
	}
	list, err := source.Find(context.Background(), []string{b.dir}, source.Options{})
	if err != nil {
		tb.Fatal(err)
	}
	b.files = list.Files
	for _, f := range b.files {
		content, err := f.Bytes(context.Background(), source.Options{})
		if err != nil {
			tb.Fatal(err)
		}
		b.content = append(b.content, content)
	}
	b.read()
	b.understand()
	b.check()
	b.rank()
	return b
}

// used are the parts of a workbook that reading needs.
func used(name string) bool {
	return !strings.HasPrefix(name, "docProps/") && !strings.Contains(name, "theme")
}

// unpack is the floor: the standard library unpacks the parts that are used.
func (b *bench) unpack() {
	for _, content := range b.content {
		z, err := zip.NewReader(bytes.NewReader(content), int64(len(content)))
		if err != nil {
			b.tb.Fatal(err)
		}
		for _, f := range z.File {
			if !used(f.Name) {
				continue
			}
			r, err := f.Open()
			if err != nil {
				b.tb.Fatal(err)
			}
			if _, err := io.Copy(io.Discard, r); err != nil {
				b.tb.Fatal(err)
			}
			r.Close()
		}
	}
}

// parse reads one workbook; the checksum that the report prints is part of it.
func (b *bench) parse(i int) *grid.Book {
	book, err := source.Parse(context.Background(), b.files[i].Name, b.content[i], source.Options{})
	if err != nil {
		b.tb.Fatal(err)
	}
	return book
}

func (b *bench) read() {
	books := make([]*grid.Book, len(b.files))
	for i := range b.files {
		books[i] = b.parse(i)
	}
	b.books = books
}

func (b *bench) understand() {
	b.jobs = make([][]*ingest.File, len(b.books))
	for i, book := range b.books {
		b.jobs[i] = []*ingest.File{ingest.Read(marked.WithoutFindings(book), ingest.Options{})}
	}
}

// lay only finds the tables and the fields of their columns.
func (b *bench) lay() {
	for _, book := range b.books {
		layout.Read(book, layout.Options{})
	}
}

func (b *bench) check() {
	a := &report.Audit{For: report.Service, Version: "bench"}
	settings := audit.DefaultSettings()
	for _, files := range b.jobs {
		for _, f := range files {
			out := report.File{Name: f.Name, Kind: report.Kind(f.Kind), Reason: f.Reason}
			for _, j := range f.Jobs {
				out.Results = append(out.Results, audit.Check(j, settings))
			}
			a.Files = append(a.Files, out)
		}
	}
	b.audit = a
}

func (b *bench) rank() { b.audit.Archive = audit.Rank(b.audit.Results()) }

// tables writes the CSV tables and the JSON file to nowhere.
func (b *bench) tables() {
	for _, t := range b.audit.Tables() {
		if err := data.WriteCSV(io.Discard, t); err != nil {
			b.tb.Fatal(err)
		}
	}
	if err := data.WriteFindings(io.Discard, b.audit); err != nil {
		b.tb.Fatal(err)
	}
}

// whole is a run without the workbook, the page and the marked copies: file by
// file as the program does it, rows on the shelf.
func (b *bench) whole() {
	shelf, err := report.NewShelf()
	if err != nil {
		b.tb.Fatal(err)
	}
	defer shelf.Close()
	a := &report.Audit{For: report.Service, Version: "bench", Shelf: shelf}
	settings := audit.DefaultSettings()
	for i := range b.files {
		f := ingest.Read(marked.WithoutFindings(b.parse(i)), ingest.Options{})
		out := report.File{Name: f.Name, Kind: report.Kind(f.Kind), Reason: f.Reason}
		for _, j := range f.Jobs {
			out.Results = append(out.Results, shelf.Keep(audit.Check(j, settings)))
		}
		a.Files = append(a.Files, out)
	}
	a.Archive = audit.Rank(a.Results())
	whole := *b
	whole.audit = a
	whole.tables()
}

func (b *bench) workbook() {
	if err := book.Write(io.Discard, b.audit, nil); err != nil {
		b.tb.Fatal(err)
	}
}

func (b *bench) page() {
	if err := page.Write(io.Discard, b.audit, nil); err != nil {
		b.tb.Fatal(err)
	}
}

// marks writes marked copies of all workbooks with findings.
func (b *bench) marks() {
	for _, i := range b.withFindings() {
		again := func(copied []byte) (*grid.Book, error) {
			return source.Parse(context.Background(), b.files[i].Name, copied, source.Options{})
		}
		if _, err := marked.Write(io.Discard, marked.Source{Book: b.books[i], Data: b.content[i], Read: again}, b.findings(i)); err != nil {
			b.tb.Fatal(err)
		}
	}
}

func (b *bench) findings(i int) []*audit.Finding {
	var fs []*audit.Finding
	for _, r := range b.audit.Files[i].Results {
		fs = append(fs, r.Findings...)
	}
	return fs
}

func (b *bench) withFindings() []int {
	var out []int
	for i := range b.audit.Files {
		if len(b.findings(i)) > 0 {
			out = append(out, i)
		}
	}
	return out
}

// library reads all cells with the workbook library; more also asks it for
// merges, hidden columns and notes.
func (b *bench) library(more bool) {
	for _, content := range b.content {
		f, err := excelize.OpenReader(bytes.NewReader(content), excelize.Options{RawCellValue: true})
		if err != nil {
			b.tb.Fatal(err)
		}
		for _, name := range f.GetSheetList() {
			rows, err := f.Rows(name)
			if err != nil {
				b.tb.Fatal(err)
			}
			for rows.Next() {
				if _, err := rows.Columns(); err != nil {
					b.tb.Fatal(err)
				}
			}
			rows.Close()
			if more {
				f.GetMergeCells(name)
				for _, col := range []string{"A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L"} {
					f.GetColVisible(name, col)
				}
				f.GetComments(name)
			}
		}
		f.Close()
	}
}

func (b *bench) libraryRows() { b.library(false) }
func (b *bench) libraryMore() { b.library(true) }

// python runs a script of python3-openpyxl over the files of indices, if there is one.
func (b *bench) python(script string, indices []int) bool {
	const python = "/usr/bin/python3"
	if exec.Command(python, "-c", "import openpyxl").Run() != nil {
		return false
	}
	args := []string{"-c", script}
	for _, i := range indices {
		args = append(args, b.files[i].Path)
	}
	cmd := exec.Command(python, args...)
	cmd.Stderr = os.Stderr
	cmd.Dir = b.tb.TempDir()
	if err := cmd.Run(); err != nil {
		b.tb.Fatal(err)
	}
	return true
}

const (
	readScript = `import sys, openpyxl
for f in sys.argv[1:]:
    w = openpyxl.load_workbook(f, read_only=True, data_only=True)
    for s in w:
        for r in s.iter_rows(values_only=True):
            pass
    w.close()
`
	// A fill and a comment on some cells, and a sheet of findings.
	markScript = `import sys, openpyxl
from openpyxl.cell.cell import MergedCell
from openpyxl.comments import Comment
from openpyxl.styles import PatternFill
for f in sys.argv[1:]:
    w = openpyxl.load_workbook(f)
    s = w.worksheets[0]
    for row in range(5, 10):
        c = s.cell(row, 3)
        if isinstance(c, MergedCell):
            continue
        c.comment = Comment("load 96 W, limit 80 W", "lineaudit")
        c.fill = PatternFill("solid", fgColor="FFEE88")
    n = w.create_sheet("Findings")
    for i in range(10):
        n.append(["fault", "control-overload", "load 96 W, limit 80 W"])
    w.save("copy.xlsx")
`
)

// BenchmarkStages is each stage of a run over 200 jobs, by the workbook.
func BenchmarkStages(b *testing.B) {
	s := newBench(b, 200)
	for _, stage := range []struct {
		name string
		do   func()
	}{{"unpack", s.unpack}, {"read", s.read}, {"layout", s.lay}, {"understand", s.understand}, {"check", s.check}, {"rank", s.rank}, {"tables", s.tables},
		{"whole", s.whole}, {"workbook", s.workbook}, {"page", s.page}, {"marked", s.marks}} {
		b.Run(stage.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				stage.do()
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*len(s.files)), "µs/workbook")
		})
	}
}

// What understanding asks of memory tells what it does, on any machine: a pattern
// tried on every cell, or a message made for each that says nothing, is seen at once.
// The bounds are half as much again as it took when they were set.
func TestUnderstandingIsCheap(t *testing.T) {
	s := newBench(t, 40)
	for _, stage := range []struct {
		name string
		do   func()
		most float64 // allocations a workbook
	}{{"finding tables", s.lay, 1_600}, {"understanding", s.understand, 6_300}} {
		if took := testing.AllocsPerRun(2, stage.do) / float64(len(s.files)); took > underRace*stage.most {
			t.Errorf("%s takes %.0f allocations a workbook, not %.0f at most", stage.name, took, underRace*stage.most)
		} else {
			t.Logf("%s: %.0f allocations a workbook", stage.name, took)
		}
	}
}

// The order in which files are read, and what was read before, change nothing.
func TestOrderOfReadingDoesNotMatter(t *testing.T) {
	dir := t.TempDir()
	if _, err := generate.Write(dir, generate.Config{Seed: 5, Jobs: 40, Loudspeakers: 30, Noise: 3, Faults: 0.5, Languages: []string{"en", "de", "fr"}, Format: "xlsx"}); err != nil {
		t.Fatal(err)
	}
	told := func(reverse bool, workers int) string {
		set, _, err := parse([]string{dir, "--out", filepath.Join(t.TempDir(), "out")}, false)
		if err != nil {
			t.Fatal(err)
		}
		set.workers = workers
		p, code := prepare(context.Background(), set, screen{})
		if p == nil {
			t.Fatalf("exit code %d", code)
		}
		if p.shelf, err = report.NewShelf(); err != nil {
			t.Fatal(err)
		}
		defer p.shelf.Close()
		if reverse {
			slices.Reverse(p.files)
		}
		if err := p.readAll(context.Background(), screen{}); err != nil {
			t.Fatal(err)
		}
		if reverse {
			slices.Reverse(p.outcomes)
		}
		a := p.audit()
		var b bytes.Buffer
		for _, table := range a.Tables() {
			if err := data.WriteCSV(&b, table); err != nil {
				t.Fatal(err)
			}
		}
		return b.String()
	}
	first := told(false, 1)
	for _, again := range []struct {
		reverse bool
		workers int
	}{{true, 1}, {true, 4}, {false, 2}} {
		if told(again.reverse, again.workers) != first {
			t.Errorf("differs when %+v", again)
		}
	}
	if len(first) < 10_000 {
		t.Errorf("only %d bytes", len(first))
	}
}
