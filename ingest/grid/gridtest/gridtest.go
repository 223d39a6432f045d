// Package gridtest holds what the tests of the readers share: one schedule
// that shows every property of a cell, what must be read from it, and a way
// to have an office program save it in other formats.
package gridtest

import (
	"bytes"
	"context"
	_ "embed"
	"encoding/xml"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"lineaudit/ingest/grid"
)

// Schedule is a flat OpenDocument spreadsheet, written by hand.
//
//go:embed testdata/schedule.fods
var Schedule []byte

// A Cell is what must be read from a cell.
type Cell struct {
	Sheet, At string // e.g. "Filtered", "A3"
	Kind      grid.Kind
	Text      string
	Number    float64
	Struck    grid.Strike
	Kept      string
	Note      string
	Formula   bool
	Hidden    grid.Hiding // of the row
}

// The sheets of Schedule.
const (
	Main     = "Boathouse & rink"
	Filtered = "Filtered"
	Old      = "Old"
)

// Cells returns what must be read from Schedule, typed by hand beside it.
func Cells() []Cell {
	text := func(at, s string) Cell { return Cell{Sheet: Main, At: at, Kind: grid.String, Text: s} }
	number := func(at, s string, v float64) Cell {
		return Cell{Sheet: Main, At: at, Kind: grid.Number, Text: s, Number: v}
	}
	formula := func(c Cell) Cell { c.Formula = true; return c }
	failed := func(at, s string) Cell { return Cell{Sheet: Main, At: at, Kind: grid.Error, Text: s, Formula: true} }
	in := func(sheet string, hidden grid.Hiding, c Cell) Cell { c.Sheet, c.Hidden = sheet, hidden; return c }
	return []Cell{
		text("A1", "Boathouse – loudspeakers 70.7 V, 5 kΩ, ½"),
		text("E1", "in a hidden column"),
		text("A4", "Tag"), text("B4", "Tap"), text("C4", "Note"),
		text("A5", "LS-1"), number("B5", "7.5 W", 7.5),
		{Sheet: Main, At: "C5", Kind: grid.String, Text: "by the   slip\nnorth side", Note: "checked on site\nsecond line"},
		in(Main, grid.HiddenByHand, text("A6", "LS-2")), in(Main, grid.HiddenByHand, number("B6", "15.0 W", 15)),
		{Sheet: Main, At: "A7", Kind: grid.String, Text: "LS-3", Struck: grid.WholeStruck},
		{Sheet: Main, At: "B7", Kind: grid.Number, Text: "30", Number: 30, Struck: grid.WholeStruck},
		{Sheet: Main, At: "C7", Kind: grid.String, Text: "15 W 5 W", Struck: grid.PartStruck, Kept: " 5 W"},
		// 2 January 2026 is day 46024: 126 years of 365 days, 31 leap days
		// 1904 ... 2024, 29 February 1900 that never was, and 2 days.
		{Sheet: Main, At: "A8", Kind: grid.Date, Text: "2-Jan", Number: 126*365 + 31 + 1 + 2},
		{Sheet: Main, At: "B8", Kind: grid.Date, Text: "8:30", Number: 8.5 / 24},
		number("C8", "80%", 0.8), number("D8", "1,234.50", 1234.5),
		{Sheet: Main, At: "F8", Kind: grid.Boolean, Text: "TRUE", Number: 1},
		number("G8", " 1/2", 0.5),
		formula(number("A9", "52.5", 52.5)), formula(text("B9", "LS-1 Ω")),
		failed("C9", "#DIV/0!"), failed("D9", "#N/A"),
		{Sheet: Main, At: "F9", Kind: grid.Boolean, Text: "FALSE", Formula: true},
		number("A10", "4", 4), number("B10", "4", 4), number("C10", "4", 4),
		number("A11", "4", 4), number("B11", "4", 4), number("C11", "4", 4),
		text("A12", "both rows"), number("B12", "-0.25", -0.25),
		{Sheet: Main, At: "B13", Note: "a note on nothing"},
		in(Filtered, 0, text("A1", "Zone")), in(Filtered, 0, text("B1", "Tap")),
		in(Filtered, 0, text("A2", "Z1")), in(Filtered, 0, number("B2", "1", 1)),
		in(Filtered, grid.HiddenByFilter, text("A3", "Z2")), in(Filtered, grid.HiddenByFilter, number("B3", "2", 2)),
		in(Filtered, 0, text("A4", "Z1")), in(Filtered, 0, number("B4", "3", 3)),
		in(Filtered, grid.HiddenByHand, text("A5", "below")),
		in(Old, 0, text("A1", "superseded")),
	}
}

// Merges, HiddenCols and Filter are what must be read of the sheets.
var (
	Merges     = []grid.Range{{Row1: 1, Col1: 1, Row2: 1, Col2: 3}, {Row1: 12, Col1: 1, Row2: 13, Col2: 1}}
	HiddenCols = []grid.Span{{First: 5, Last: 5}}
	Filter     = grid.Range{Row1: 1, Col1: 1, Row2: 4, Col2: 2}
)

// Find returns the cell of the list with that place.
func Find(list []Cell, sheet, at string) *Cell {
	for i := range list {
		if list[i].Sheet == sheet && list[i].At == at {
			return &list[i]
		}
	}
	panic("gridtest: no cell " + at)
}

// Read returns all cells of a book.
func Read(b *grid.Book) []Cell {
	var out []Cell
	for _, s := range b.Sheets {
		for _, r := range s.Rows {
			for c := range r.Cells() {
				out = append(out, Cell{
					Sheet: s.Name, At: grid.A1(r.Number, c.Col), Kind: c.Kind, Text: c.Text, Number: c.Number,
					Struck: c.Struck, Kept: c.Kept(), Note: c.Note(), Formula: c.Formula, Hidden: r.Hidden,
				})
			}
		}
	}
	return out
}

// Compare reports the first cells that differ, are missing or too many.
// Numbers may differ by 1e-12 of their size.
func Compare(t testing.TB, got, want []Cell) {
	t.Helper()
	const most = 8
	for i, failed := 0, 0; i < max(len(got), len(want)) && failed < most; i++ {
		switch {
		case i >= len(got):
			t.Errorf("missing: %+v", want[i])
			failed++
		case i >= len(want):
			t.Errorf("too many: %+v", got[i])
			failed++
		default:
			g, w := got[i], want[i]
			if d := g.Number - w.Number; d < 1e-12*(1+w.Number) && d > -1e-12*(1+w.Number) {
				g.Number = w.Number
			}
			if g != w {
				t.Errorf("got  %+v\nwant %+v", g, w)
				failed++
			}
		}
	}
}

// Convert has LibreOffice save data, a file called name, in another format,
// e.g. Convert(t, "a.fods", data, "xls") or "xml:MS Excel 2003 XML". It skips
// the test where LibreOffice is not installed.
func Convert(t testing.TB, name string, data []byte, to string) []byte {
	t.Helper()
	program, err := exec.LookPath("soffice")
	if err != nil {
		t.Skip("soffice is not installed: not compared with LibreOffice")
	}
	if testing.Short() {
		t.Skip("short: not compared with LibreOffice")
	}
	dir := t.TempDir()
	in := filepath.Join(dir, name)
	if err := os.WriteFile(in, data, 0o600); err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithTimeout(t.Context(), 2*time.Minute)
	defer cancel()
	out := filepath.Join(dir, "out")
	cmd := exec.CommandContext(ctx, program, "-env:UserInstallation=file://"+filepath.ToSlash(dir)+"/profile",
		"--headless", "--convert-to", to, "--outdir", out, in)
	said, err := cmd.CombinedOutput()
	if err != nil {
		t.Fatalf("soffice: %v\n%s", err, said)
	}
	ext, _, _ := strings.Cut(to, ":")
	b, err := os.ReadFile(filepath.Join(out, strings.TrimSuffix(name, filepath.Ext(name))+"."+ext))
	if err != nil {
		t.Fatalf("soffice saved nothing: %v\n%s", err, said)
	}
	return b
}

// Dump writes a book as text, one cell a line, to compare two books.
func Dump(b *grid.Book) string {
	var out strings.Builder
	for _, s := range b.Sheets {
		fmt.Fprintf(&out, "sheet %q hidden=%v merges=%v columns=%v filter=%v\n", s.Name, s.Hidden, s.Merges, s.HiddenCols, s.Filtered)
	}
	for _, c := range Read(b) {
		fmt.Fprintf(&out, "%+v\n", c)
	}
	return out.String()
}

// Flat returns a flat OpenDocument spreadsheet with one text a row.
func Flat(texts []string) []byte {
	var b bytes.Buffer
	b.WriteString(`<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Sheet1">`)
	for _, s := range texts {
		b.WriteString(`<table:table-row><table:table-cell office:value-type="string"><text:p>`)
		_ = xml.EscapeText(&b, []byte(s)) // a Buffer takes everything
		b.WriteString("</text:p></table:table-cell></table:table-row>")
	}
	b.WriteString("</table:table></office:spreadsheet></office:body></office:document>")
	return b.Bytes()
}
