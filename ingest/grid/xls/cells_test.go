package xls

import (
	"math"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/gridtest"
)

// in1 returns a cell of the only sheet of a test workbook.
func in1(at string, kind grid.Kind, text string, number float64) gridtest.Cell {
	return gridtest.Cell{Sheet: "Sheet1", At: at, Kind: kind, Text: text, Number: number}
}

func TestCells(t *testing.T) {
	formulaCell := func(c gridtest.Cell) gridtest.Cell { c.Formula = true; return c }
	struck := func(c gridtest.Cell, s grid.Strike, kept string) gridtest.Cell { c.Struck, c.Kept = s, kept; return c }
	noted := func(c gridtest.Cell, s string) gridtest.Cell { c.Note = s; return c }
	special := func(kind, v byte) []byte { return []byte{kind, 0, v, 0, 0, 0, 0xff, 0xff} }
	// RkNumbers by [MS-XLS] 2.5.122: bit 0 is "times 100", bit 1 "integer".
	const int7, int12345by100, minus3 = 7<<2 | 2, 12345<<2 | 3, -3<<2 | 2
	floatRK := func(v float64) []byte { return le32(int(math.Float64bits(v) >> 32)) }
	for _, tt := range []struct {
		name    string
		globals []byte
		sheet   [][]byte
		want    []gridtest.Cell
	}{
		{"numbers", nil, [][]byte{
			cell(recNumber, 0, 0, le64(70.7)),
			cell(recRK, 1, 0, le32(int7)), cell(recRK, 1, 1, le32(int12345by100)), cell(recRK, 1, 2, le32(minus3)), cell(recRK, 1, 3, floatRK(0.5)),
			rec(recMulRk, le16(2, 4), le16(0), le32(int7), le16(0), le32(minus3), le16(5)),
		}, []gridtest.Cell{
			in1("A1", grid.Number, "70.7", 70.7),
			in1("A2", grid.Number, "7", 7), in1("B2", grid.Number, "123.45", 123.45), in1("C2", grid.Number, "-3", -3), in1("D2", grid.Number, "0.5", 0.5),
			in1("E3", grid.Number, "7", 7), in1("F3", grid.Number, "-3", -3),
		}},
		{"line ends", nil, [][]byte{cell(recLabel, 0, 0, text8("a\r\nb\rc\nd\x00"))}, []gridtest.Cell{in1("A1", grid.String, "a\nb\nc\nd", 0)}},
		{"not a number", nil, [][]byte{cell(recNumber, 0, 0, le64(math.NaN())), cell(recNumber, 0, 1, le64(math.Inf(1)))},
			[]gridtest.Cell{in1("A1", grid.Error, "#NUM!", 0), in1("B1", grid.Error, "#NUM!", 0)}},
		{"truth values and errors", nil, [][]byte{
			cell(recBoolErr, 0, 0, []byte{1, 0}), cell(recBoolErr, 0, 1, []byte{0, 0}), cell(recBoolErr, 0, 2, []byte{0x17, 1}),
		}, []gridtest.Cell{in1("A1", grid.Boolean, "TRUE", 1), in1("B1", grid.Boolean, "FALSE", 0), in1("C1", grid.Error, "#REF!", 0)}},
		{"formulas", nil, [][]byte{
			formula(0, 0, le64(12.5)),
			formula(0, 1, special(1, 1)), formula(0, 2, special(2, 0x2a)),
			formula(0, 3, special(0, 0)), rec(recString, text8("Zone Ω")),
			formula(0, 4, special(3, 0)), // an empty text
			formula(0, 5, special(0, 0)), // its text never comes
			formula(0, 6, le64(8)),
		}, []gridtest.Cell{
			formulaCell(in1("A1", grid.Number, "12.5", 12.5)), formulaCell(in1("B1", grid.Boolean, "TRUE", 1)),
			formulaCell(in1("C1", grid.Error, "#N/A", 0)), formulaCell(in1("D1", grid.String, "Zone Ω", 0)),
			formulaCell(in1("F1", grid.NoValue, "", 0)), formulaCell(in1("G1", grid.Number, "8", 8)),
		}},
		{"text formulas saved without a result", nil, [][]byte{
			formula(0, 0, le64(0), 0x44, 0, 0, 0, 0xc0, 0x17, 1, 0, 'W', 0x08),       // =A1&"W"
			formula(0, 1, le64(0), 0x44, 0, 0, 0, 0xc0, 0x1e, 2, 0, 0x42, 2, 115, 0), // =LEFT(A1,2)
			formula(0, 2, le64(0), 0x24, 0x22, 0, 0x1e, 0),                           // =$AE$35
			formula(0, 3, le64(0), 0x44, 0, 0, 0, 0xc0, 0x1e, 8, 8, 0x03),            // =A1+2056
		}, []gridtest.Cell{
			formulaCell(in1("A1", grid.NoValue, "", 0)), formulaCell(in1("B1", grid.NoValue, "", 0)),
			formulaCell(in1("C1", grid.Number, "0", 0)), formulaCell(in1("D1", grid.Number, "0", 0)),
		}},
		{"a shared text in two pieces of two widths, then a rich one",
			join(font(false), font(true), xf(0, 0), rec(recSST, le32(2), le32(2), le16(4), []byte{0}, []byte("LS")),
				rec(recContinue, []byte{1}, wide("-Ω"), le16(8), []byte{8}, le16(1), []byte("15 W 5 W"), le16(0, 1))),
			[][]byte{cell(recLabelSST, 0, 0, le32(0)), cell(recLabelSST, 0, 1, le32(1))},
			[]gridtest.Cell{in1("A1", grid.String, "LS-Ω", 0), struck(in1("B1", grid.String, "15 W 5 W", 0), grid.WholeStruck, "")}},
		{"strike-through of part, font numbers skip 4",
			join(font(false), font(false), font(false), font(false), font(true), xf(0, 0),
				rec(recSST, le32(1), le32(1), le16(8), []byte{8}, le16(2), []byte("15 W 5 W"), le16(0, 5), le16(4, 0))),
			[][]byte{cell(recLabelSST, 0, 0, le32(0))},
			[]gridtest.Cell{struck(in1("A1", grid.String, "15 W 5 W", 0), grid.PartStruck, " 5 W")}},
		{"a struck cell font", join(font(true), xf(0, 0)), [][]byte{cell(recNumber, 0, 0, le64(5)), cell(recLabel, 0, 1, text8("5 W"))},
			[]gridtest.Cell{struck(in1("A1", grid.Number, "5", 5), grid.WholeStruck, ""), struck(in1("B1", grid.String, "5 W", 0), grid.WholeStruck, "")}},
		{"dates of 1904", join(rec(recDate1904, le16(1)), xf(0, 16), xf(0, 20)),
			[][]byte{cell(recNumber, 0, 0, le64(46024-1462)), rec(recNumber, le16(0, 1, 1), le64(0.25))},
			[]gridtest.Cell{in1("A1", grid.Date, "2-Jan", 46024), in1("B1", grid.Date, "6:00", 0.25)}},
		{"a format of the file's own", join(rec(recFormat, le16(164), text8(`0.0" W"`)), xf(0, 164)),
			[][]byte{cell(recNumber, 0, 0, le64(7.5))}, []gridtest.Cell{in1("A1", grid.Number, "7.5 W", 7.5)}},
		{"out of order and twice", nil, [][]byte{cell(recNumber, 3, 1, le64(1)), cell(recNumber, 0, 0, le64(2)), cell(recNumber, 3, 0, le64(3)), cell(recNumber, 0, 0, le64(4))},
			[]gridtest.Cell{in1("A1", grid.Number, "4", 4), in1("A4", grid.Number, "3", 3), in1("B4", grid.Number, "1", 1)}},
		{"notes", nil, [][]byte{
			cell(recNumber, 0, 0, le64(5)),
			rec(recObj, le16(0x15, 0x12, 0x19, 7), make([]byte, 14)), rec(recTxO, make([]byte, 10), le16(9, 0), make([]byte, 4)),
			rec(recContinue, []byte{0}, []byte("on s")), rec(recContinue, []byte{1}, wide("ite Ω")), rec(recContinue, make([]byte, 8)),
			rec(recObj, le16(0x15, 0x12, 0x19, 8), make([]byte, 14)), rec(recTxO, make([]byte, 10), le16(4, 0), make([]byte, 4)), rec(recContinue, []byte{0}, []byte("bare")),
			rec(recNote, le16(0, 0, 0, 7), text8("me")), rec(recNote, le16(4, 2, 0, 8), text8("me")),
		}, []gridtest.Cell{noted(in1("A1", grid.Number, "5", 5), "on site Ω"), noted(in1("C5", grid.Blank, "", 0), "bare")}},
		{"a chart within the sheet", nil, [][]byte{
			cell(recNumber, 0, 0, le64(5)), rec(recBOF, le16(0x600, 0x20), make([]byte, 12)), cell(recNumber, 9, 9, le64(1)), rec(recEOF), cell(recNumber, 1, 0, le64(6)),
		}, []gridtest.Cell{in1("A1", grid.Number, "5", 5), in1("A2", grid.Number, "6", 6)}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b, err := Read("a.xls", one(tt.globals, tt.sheet...), grid.DefaultLimits())
			if err != nil {
				t.Fatal(err)
			}
			gridtest.Compare(t, gridtest.Read(b), tt.want)
		})
	}
}

// Some programs number the record of a formula as older formats do; nothing of
// it is lost.
func TestFormulasOfOtherVersions(t *testing.T) {
	b, err := Read("a.xls", one(nil, cell(recFormula3, 0, 0, le64(7.5), make([]byte, 6), le16(0)), cell(recFormula4, 0, 1, []byte{0, 0, 0, 0, 0, 0, 0xff, 0xff}, make([]byte, 6), le16(0)), rec(recString, text8("Pier"))), grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	gridtest.Compare(t, gridtest.Read(b), []gridtest.Cell{
		{Sheet: "Sheet1", At: "A1", Kind: grid.Number, Text: "7.5", Number: 7.5, Formula: true},
		{Sheet: "Sheet1", At: "B1", Kind: grid.String, Text: "Pier", Formula: true},
	})
}

// Excel 5.0/95 stores bytes in the code page that the workbook names.
func TestBIFF5(t *testing.T) {
	data := book{
		names: []string{"\xc7\xee\xed\xe0"}, // Зона in Windows-1251
		globals: join(rec(recCodePage, le16(1251)), font(false), font(true), xf(0, 0), xf(0, 164),
			rec(recFormat, le16(164), append([]byte{8}, `0.0" \xc2\xf2"`[:7]...), []byte("\""))),
		sheets: [][]byte{join(
			cell(recLabel, 0, 0, le16(4), []byte("\xc7\xee\xed\xe0")),
			cell(recRString, 0, 1, le16(8), []byte("15 W 5 W"), []byte{2, 0, 1, 4, 0}),
			formula(1, 0, []byte{0, 0, 0, 0, 0, 0, 0xff, 0xff}), rec(recString, le16(2), []byte("\xcf5")),
			rec(recNote, le16(0, 0, 5), []byte("first")), rec(recNote, le16(0xffff, 0, 4), []byte(" \xe4\xe0.")),
		)},
	}.bytes()
	b, err := Read("a.xls", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	gridtest.Compare(t, gridtest.Read(b), []gridtest.Cell{
		{Sheet: "Зона", At: "A1", Kind: grid.String, Text: "Зона", Note: "first да."},
		{Sheet: "Зона", At: "B1", Kind: grid.String, Text: "15 W 5 W", Struck: grid.PartStruck, Kept: " 5 W"},
		{Sheet: "Зона", At: "A2", Kind: grid.String, Text: "П5", Formula: true},
	})
}

// The hidden name of a filter's area stays when the filter is taken away.
func TestFilterThatIsGone(t *testing.T) {
	area := join([]byte{0x3b}, le16(0), le16(0, 3), le16(0, 1))
	name := rec(recName, le16(0x20), []byte{0, 1}, le16(len(area)), le16(0, 1), make([]byte, 4), []byte{0, 0x0d}, area)
	b, err := Read("a.xls", one(name), grid.DefaultLimits())
	if err != nil || b.Sheets[0].Filtered != (grid.Range{}) {
		t.Errorf("filter %v, %v", b.Sheets[0].Filtered, err)
	}
}

// Old exporters write one sheet without a list of sheets around it.
func TestLoneSheet(t *testing.T) {
	b := book{}
	data := join(b.bof(0x0010), font(true), xf(0, 0), cell(recLabel, 0, 0, le16(3), []byte("5 W")), rec(recEOF))
	got, err := Read("a.xls", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	gridtest.Compare(t, gridtest.Read(got), []gridtest.Cell{{Sheet: "Sheet1", At: "A1", Kind: grid.String, Text: "5 W", Struck: grid.WholeStruck}})
}

// Rows are hidden by hand, by a filter that is on, or folded in an outline.
func TestHiding(t *testing.T) {
	row := func(n int, flags byte) []byte {
		return rec(recRow, le16(n, 0, 1, 300, 0, 0), []byte{flags, 0, 0, 0})
	}
	var cells [][]byte
	for i := range 6 {
		cells = append(cells, cell(recNumber, i, 0, le64(1)))
	}
	// _FilterDatabase of sheet 1: PtgArea3d of A1:B4.
	area := join([]byte{0x3b}, le16(0), le16(0, 3), le16(0, 1))
	name := rec(recName, le16(0x20), []byte{0, 1}, le16(len(area)), le16(0, 1), make([]byte, 4), []byte{0, 0x0d}, area)
	hidden := join(row(0, 0x20), row(1, 0), row(2, 0x20), row(4, 0x20), row(5, 0x21))
	for _, tt := range []struct {
		name  string
		extra []byte
		want  [6]grid.Hiding
	}{
		{"no filter is on", rec(recFilterInfo, le16(2)), [6]grid.Hiding{1, 0, 1, 0, 1, grid.HiddenByOutline}},
		{"a filter is on", rec(recFilterMode), [6]grid.Hiding{1, 0, grid.HiddenByFilter, 0, 1, grid.HiddenByOutline}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b, err := Read("a.xls", one(name, tt.extra, hidden, join(cells...)), grid.DefaultLimits())
			if err != nil {
				t.Fatal(err)
			}
			if f := b.Sheets[0].Filtered; f != (grid.Range{Row1: 1, Col1: 1, Row2: 4, Col2: 2}) {
				t.Errorf("filter area %v", f)
			}
			for i, r := range b.Sheets[0].Rows {
				if r.Hidden != tt.want[i] {
					t.Errorf("row %d: %v, want %v", r.Number, r.Hidden, tt.want[i])
				}
			}
			if len(b.Notes) != 1 {
				t.Errorf("notes %v, want one on the outline", b.Notes)
			}
		})
	}
}

func TestHiddenColumns(t *testing.T) {
	col := func(first, last, width, flags int) []byte {
		return rec(recColInfo, le16(first, last, width, 0, flags), make([]byte, 2))
	}
	b, err := Read("a.xls", one(nil, col(0, 1, 2000, 0), col(4, 5, 2000, 1), col(2, 3, 0, 0), col(8, 8, 0, 1), col(9, 9, 2000, 0x101)), grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	got := b.Sheets[0].HiddenCols
	if len(got) != 2 || got[0] != (grid.Span{First: 3, Last: 6}) || got[1] != (grid.Span{First: 9, Last: 9}) {
		t.Errorf("hidden columns %v, want C:F and I", got)
	}
}

// A list of sheets that points beside the sheets is mended by their order.
func TestSheetList(t *testing.T) {
	b, err := Read("a.xls", book{biff8: true, shift: 20, state: 2, names: []string{"Amps", "Zones"}, sheets: [][]byte{
		cell(recNumber, 0, 0, le64(1)), cell(recNumber, 0, 0, le64(2)),
	}}.bytes(), grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	gridtest.Compare(t, gridtest.Read(b), []gridtest.Cell{
		{Sheet: "Amps", At: "A1", Kind: grid.Number, Text: "1", Number: 1}, {Sheet: "Zones", At: "A1", Kind: grid.Number, Text: "2", Number: 2},
	})
	if !b.Sheets[0].Hidden || b.Sheets[1].Hidden || len(b.Notes) != 1 {
		t.Errorf("hidden %v %v, notes %v", b.Sheets[0].Hidden, b.Sheets[1].Hidden, b.Notes)
	}
	b, err = Read("a.xls", book{biff8: true, kind: 2, names: []string{"Chart", "Zones"}, sheets: [][]byte{nil, nil}}.bytes(), grid.DefaultLimits())
	if err != nil || len(b.Sheets) != 1 || len(b.Notes) != 1 || b.Notes[0].Text != "chart sheet left out" {
		t.Errorf("a chart sheet: %v, %v", err, b)
	}
}
