package steady

import (
	"bytes"
	"io"
	"io/fs"
	"math"
	"testing"

	"github.com/xuri/excelize/v2"
)

// Rows are what the workbook library writes, byte for byte.
func TestRowsAsTheLibraryWritesThem(t *testing.T) {
	cells := []Cell{{}, {Style: 3}, {Style: 12, Text: "Foyer"}, {Text: " a <b> & \"c\" 'd'\te\nf\n"}, {Text: "Prüfung – ok"}, {Text: "_x0041_ _x005F_x0041_ _x00 a_x005f_"},
		{Style: 4, Formula: `HYPERLINK("#'Rules and sources'!A5","a <b>")`, Text: "a <b>"}, {Formula: "1\n+1", Text: " 2\n"}, {Formula: "A1"},
		{Number: 0, IsNumber: true}, {Style: 2, Number: -1.5, IsNumber: true}, {Number: 7.199999999999999, IsNumber: true}, {Number: 0.1 + 0.2, IsNumber: true},
		{Number: 12345678901234567890, IsNumber: true}, {Number: 123456789012345.67, IsNumber: true}, {Number: 1234567890123456.5, IsNumber: true},
		{Number: 1e-9 / 3, IsNumber: true}, {Number: 1e21, IsNumber: true}, {Number: math.Inf(1), IsNumber: true}, {Number: math.NaN(), IsNumber: true}}
	for len(cells) < 30 {
		cells = append(cells, Cell{Style: len(cells)})
	}
	var got bytes.Buffer
	w := &RowWriter{to: &got}
	for _, n := range []int{5, 6, 1000} {
		if err := w.Row(n, 12.5, cells); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.flush(); err != nil {
		t.Fatal(err)
	}
	if want := libraryRows(t, []int{5, 6, 1000}, 12.5, cells); got.String() != want {
		t.Errorf("got\n%s\nwant\n%s", &got, want)
	}
}

func libraryRows(t *testing.T, at []int, height float64, cells []Cell) string {
	f := excelize.NewFile()
	defer f.Close()
	s, err := f.NewStreamWriter("Sheet1")
	if err != nil {
		t.Fatal(err)
	}
	var values []any
	for _, c := range cells {
		v := excelize.Cell{StyleID: c.Style, Formula: c.Formula}
		switch {
		case c.IsNumber:
			v.Value = c.Number
		case c.Text != "":
			v.Value = c.Text
		}
		values = append(values, v)
	}
	for _, n := range at {
		cell, err := excelize.CoordinatesToCellName(1, n)
		if err != nil {
			t.Fatal(err)
		}
		if err := s.SetRow(cell, values, excelize.RowOpts{Height: height}); err != nil {
			t.Fatal(err)
		}
	}
	if err := s.Flush(); err != nil {
		t.Fatal(err)
	}
	var sheet bytes.Buffer
	f.SetZipWriter(func(io.Writer) excelize.ZipWriter { return onlySheet{&sheet} })
	if _, err := f.WriteTo(io.Discard); err != nil {
		t.Fatal(err)
	}
	_, rows, _ := bytes.Cut(sheet.Bytes(), []byte("<sheetData>"))
	rows, _, _ = bytes.Cut(rows, []byte(rowsEnd))
	return string(rows)
}

// onlySheet is a zip that keeps the first sheet alone.
type onlySheet struct{ to io.Writer }

func (z onlySheet) Create(name string) (io.Writer, error) {
	if name == sheetPart(1) {
		return z.to, nil
	}
	return io.Discard, nil
}

func (onlySheet) AddFS(fs.FS) error { return nil }
func (onlySheet) Close() error      { return nil }
