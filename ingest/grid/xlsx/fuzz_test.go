package xlsx

import (
	"errors"
	"math"
	"testing"
	"time"

	"lineaudit/ingest/grid"
)

func fuzzLimits() grid.Limits {
	lim := grid.DefaultLimits()
	lim.MaxInflated, lim.MaxCells, lim.MaxText = 4<<20, 20_000, 1<<20
	end := time.Now().Add(10 * time.Second)
	lim.Stop = func() error {
		if time.Now().After(end) {
			return errors.New("too slow")
		}
		return nil
	}
	return lim
}

// wantSound checks what holds for every book.
func wantSound(t *testing.T, book *grid.Book) {
	t.Helper()
	for _, s := range book.Sheets {
		lastRow := 0
		for _, r := range s.Rows {
			if r.Number <= lastRow || r.Number > maxRow || r.Len() == 0 {
				t.Fatalf("row %d behind row %d with %d cells", r.Number, lastRow, r.Len())
			}
			lastRow = r.Number
			lastCol := 0
			for c := range r.Cells() {
				if c.Col <= lastCol || c.Col > maxCol {
					t.Fatalf("column %d behind %d", c.Col, lastCol)
				}
				lastCol = c.Col
				if math.IsNaN(c.Number) || math.IsInf(c.Number, 0) {
					t.Fatalf("%s is %v", grid.A1(r.Number, c.Col), c.Number)
				}
				if c.Kind == grid.Blank && c.Note() == "" || c.Kind == grid.String && c.Text == "" || c.Struck != grid.PartStruck && c.Kept() != "" {
					t.Fatalf("%s is %+v", grid.A1(r.Number, c.Col), *c.Cell)
				}
			}
		}
	}
}

// Any sheet part is read the same way quickly and slowly, into a sound book,
// or refused with a reason.
func FuzzSheet(f *testing.F) {
	for _, seed := range []string{
		plainRows, manyRows(5), wide(2), `<row r="2"><c r="C2"><f>A1</f></c><c t="b"><v>1</v></c></row><row/>`, `<row><c r="A1" t="d" s="2"><v>2026-01-02</v></c></row>`,
		`<row r="3"><c r="B3"><v>1</v></c></row><row r="1"><c r="A1"><v>2</v></c><c r="A1"><v>3</v></c><c r="D9"><v>3</v></c></row>`,
		`</sheetData><mergeCells><mergeCell ref="A1:B2"/></mergeCells><autoFilter ref="A1:B9"><filterColumn><filters/></filterColumn></autoFilter><sheetData>`,
		`<row><c t="inlineStr"><is><r><rPr><strike/></rPr><t>a</t></r><r><t>b_x000D_</t></r></is></c></row>`, `<x:row xmlns:x="y"><x:c><x:v>1</x:v></x:c></x:row>`, `<row><c><v><![CDATA[1]]></v></c></row>`,
	} {
		f.Add(sheetOf(seed))
	}
	f.Fuzz(func(t *testing.T, sheet string) {
		book, err := readBothWays(t, pack(t, workbookFiles(sheet)), fuzzLimits())
		if err == nil {
			wantSound(t, book)
			return
		}
		var u *grid.Unreadable
		if !errors.As(err, &u) && !errors.Is(err, errOdd) {
			t.Fatalf("the error is %T %v", err, err)
		}
	})
}

// Any bytes are read into a sound book or refused with a reason.
func FuzzWorkbook(f *testing.F) {
	f.Add(pack(f, workbookFiles(sheetOf(plainRows))))
	f.Add([]byte("PK\x05\x06"))
	f.Fuzz(func(t *testing.T, data []byte) {
		book, err := read("x.xlsx", data, nil, fuzzLimits(), true)
		if err == nil {
			wantSound(t, book)
			return
		}
		var u *grid.Unreadable
		if !errors.As(err, &u) && !errors.Is(err, errOdd) {
			t.Fatalf("the error is %T %v", err, err)
		}
	})
}

// Shared strings, formats and the sheet list go through the same scanner.
func FuzzParts(f *testing.F) {
	f.Add(testStyles, `<sst><si><t>a</t></si><si><r><rPr><strike/></rPr><t>b</t></r></si></sst>`, rels(relTo("rId1", "worksheet", "worksheets/sheet1.xml")))
	f.Fuzz(func(t *testing.T, styles, texts, links string) {
		data := pack(t, workbookFiles(sheetOf(plainRows), file{name: "xl/styles.xml", text: styles}, file{name: "xl/sharedStrings.xml", text: texts}, file{name: "xl/_rels/workbook.xml.rels", text: links}))
		book, err := readBothWays(t, data, fuzzLimits())
		if err == nil {
			wantSound(t, book)
		}
	})
}
