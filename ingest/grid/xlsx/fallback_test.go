package xlsx

import (
	"archive/zip"
	"errors"
	"strings"
	"testing"

	"lineaudit/ingest/grid"
)

// The way through the library reads the same values, or refuses.
func TestFallback(t *testing.T) {
	data := features(t)
	direct := mustRead(t, data)
	book, err := readByLibrary("jobs/test.xlsx", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	compared := 0
	for i, s := range direct.Sheets {
		for _, r := range s.Rows {
			for _, c := range r.Cells {
				if c.Kind == grid.NoValue || c.Kind == grid.Blank {
					continue
				}
				got := cellAt(t, book, i, grid.A1(r.Number, c.Col))
				compared++
				if got.Kind != c.Kind || got.Number != c.Number || strings.ReplaceAll(got.Text, "\r", "\n") != c.Text && c.Kind != grid.String {
					t.Errorf("%s: %+v, the scanner reads %+v", grid.A1(r.Number, c.Col), got, c)
				}
			}
		}
	}
	if compared < 300 {
		t.Errorf("only %d cells compared", compared)
	}
}

func TestFallbackRefuses(t *testing.T) {
	for name, files := range map[string][]file{
		"wide rows":       workbookFiles(sheetOf(wide(200))),
		"many merges":     workbookFiles(strings.Replace(sheetOf(plainRows), "</worksheet>", "<mergeCells>"+strings.Repeat(`<mergeCell ref="A1:B2"/>`, 2001)+"</mergeCells></worksheet>", 1)),
		"broken XML":      workbookFiles(sheetOf(plainRows) + "<"),
		"a wrong sum":     workbookFiles(sheetOf(plainRows), file{name: "docProps/app.xml", text: "<a/>", lie: func(h *zip.FileHeader) { h.CRC32++ }}),
		"twice the part":  append(workbookFiles(sheetOf(plainRows)), file{name: "XL/styles.xml", text: testStyles}),
		"a document type": workbookFiles(sheetOf(plainRows), file{name: "xl/x.xml", text: "<!DOCTYPE a><a/>"}),
		"cells misplaced": workbookFiles(sheetOf(`<row r="3"><c r="A3"><v>1</v></c></row><row r="1"><c r="A1"><v>1</v></c></row>`)),
	} {
		if book, err := readByLibrary("x.xlsx", pack(t, files), grid.DefaultLimits()); err == nil {
			t.Errorf("%s: it was read:\n%s", name, dump(book))
		}
	}
}

// A part in a form that the scanner does not know goes to the library, which
// reads it or says why not.
func TestOddPartFallsBack(t *testing.T) {
	data := pack(t, workbookFiles(sheetOf(plainRows), file{name: "xl/sharedStrings.xml", text: head + `<SST xmlns="` + mainSpace + `"><si><t>Zone</t></si></SST>`}))
	if _, err := read("x.xlsx", data, grid.DefaultLimits(), true); !errors.Is(err, errOdd) {
		t.Fatalf("the scanner says %v", err)
	}
	_, err := Read("x.xlsx", data, grid.DefaultLimits())
	var u *grid.Unreadable
	if !errors.As(err, &u) || !strings.Contains(u.Reason, "expected element type") {
		t.Errorf("the library's answer is lost: %v", err)
	}
}
