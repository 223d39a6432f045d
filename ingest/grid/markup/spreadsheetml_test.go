package markup

import (
	"errors"
	"os"
	"reflect"
	"strings"
	"testing"

	"golang.org/x/text/encoding/unicode"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/gridtest"
)

// wantXML is what must be read of the schedule when LibreOffice 7.4 has saved
// it as "Microsoft Excel 2003 XML", which loses notes, strike-through of part
// of a cell, hidden sheets, filters and most number formats.
func wantXML() []gridtest.Cell {
	var out []gridtest.Cell
	for _, c := range gridtest.Cells() {
		if c.Note != "" && c.Kind == grid.Blank {
			continue
		}
		c.Note = ""
		if c.Struck == grid.PartStruck {
			c.Struck, c.Kept = grid.NotStruck, ""
		}
		if c.Hidden == grid.HiddenByFilter {
			c.Hidden = grid.HiddenByHand
		}
		if c.Sheet == gridtest.Main {
			switch c.At {
			case "B5":
				c.Text = "7.5" // General
			case "B6":
				c.Text = "15"
			case "A8":
				c.Text = "2-Jan-26" // Medium Date
			case "C8":
				c.Text = "80.00%" // Percent
			case "D8":
				c.Text = "1234.50" // Fixed
			case "G8":
				c.Text = "0.50"
			}
		}
		out = append(out, c)
	}
	return out
}

func checkXML(t *testing.T, data []byte) {
	t.Helper()
	b, err := Read("jobs/schedule.xls", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if b.File != "jobs/schedule.xls" || b.Format != grid.XML2003 || len(b.Notes) > 0 {
		t.Errorf("book: file %q format %q notes %v", b.File, b.Format, b.Notes)
	}
	gridtest.Compare(t, gridtest.Read(b), wantXML())
	if s := b.Sheets[0]; !reflect.DeepEqual(s.Merges, gridtest.Merges) || !reflect.DeepEqual(s.HiddenCols, gridtest.HiddenCols) {
		t.Errorf("merges %v, hidden columns %v", s.Merges, s.HiddenCols)
	}
}

// The fixture is gridtest's schedule.fods, saved by LibreOffice 7.4.
func TestXMLFixture(t *testing.T) {
	data, err := os.ReadFile("testdata/schedule.xml")
	if err != nil {
		t.Fatal(err)
	}
	checkXML(t, data)
}

func TestXMLAgainstLibreOffice(t *testing.T) {
	checkXML(t, gridtest.Convert(t, "schedule.fods", gridtest.Schedule, "xml:MS Excel 2003 XML"))
}

// workbook returns a SpreadsheetML workbook with one sheet called S.
func workbook(styles, table, rest string) string {
	return `<?xml version="1.0"?><?mso-application progid="Excel.Sheet"?>` +
		`<Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet" xmlns:ss="urn:schemas-microsoft-com:office:spreadsheet" xmlns:x="urn:schemas-microsoft-com:office:excel">` +
		`<Styles><Style ss:ID="Default"/>` + styles + `</Styles><Worksheet ss:Name="S"><Table>` + table + `</Table>` + rest + `</Worksheet></Workbook>`
}

func TestXMLCells(t *testing.T) {
	is := func(at string, kind grid.Kind, text string, number float64) gridtest.Cell {
		return gridtest.Cell{Sheet: "S", At: at, Kind: kind, Text: text, Number: number}
	}
	str := func(at, s string) gridtest.Cell { return is(at, grid.String, s, 0) }
	made := func(c gridtest.Cell) gridtest.Cell { c.Formula = true; return c }
	hidden := func(c gridtest.Cell, h grid.Hiding) gridtest.Cell { c.Hidden = h; return c }
	struck := func(c gridtest.Cell, s grid.Strike, kept string) gridtest.Cell { c.Struck, c.Kept = s, kept; return c }
	data := func(typ, v string) string { return `<Data ss:Type="` + typ + `">` + v + `</Data>` }
	for _, tt := range []struct {
		name, styles, table, rest string
		want                      []gridtest.Cell
	}{
		{"kinds", `<Style ss:ID="d"><NumberFormat ss:Format="Short Date"/></Style><Style ss:ID="w"><NumberFormat ss:Format="0.0&quot; W&quot;"/></Style>`,
			`<Row><Cell ss:StyleID="w">` + data("Number", "7.5") + `</Cell><Cell ss:StyleID="d">` + data("DateTime", "2026-01-02T00:00:00.000") + `</Cell><Cell>` + data("DateTime", "1899-12-31T12:00:00.000") + `</Cell>` +
				`<Cell>` + data("Boolean", "1") + `</Cell><Cell>` + data("Error", "#N/A") + `</Cell><Cell>` + data("String", " 5 W ") + `</Cell><Cell ss:StyleID="d">` + data("Number", "46024") + `</Cell></Row>`, "",
			[]gridtest.Cell{is("A1", grid.Number, "7.5 W", 7.5), is("B1", grid.Date, "1/2/2026", 46024), is("C1", grid.Date, "1899-12-31T12:00:00", 0.5), is("D1", grid.Boolean, "TRUE", 1), is("E1", grid.Error, "#N/A", 0), str("F1", " 5 W "), is("G1", grid.Date, "1/2/2026", 46024)}},
		{"indexes, merges and spans", "",
			`<Row ss:Index="3"><Cell ss:Index="2" ss:MergeAcross="2" ss:MergeDown="1">` + data("String", "a") + `</Cell><Cell>` + data("String", "b") + `</Cell></Row><Row ss:Hidden="1" ss:Span="2"><Cell>` + data("String", "c") + `</Cell></Row><Row><Cell>` + data("String", "d") + `</Cell></Row>`, "",
			[]gridtest.Cell{str("B3", "a"), str("E3", "b"), hidden(str("A4", "c"), grid.HiddenByHand), str("A7", "d")}},
		{"formulas", "", `<Row><Cell ss:Formula="=1+1">` + data("Number", "2") + `</Cell><Cell ss:Formula="=A1"/><Cell ss:Formula="=1/0">` + data("Error", "#DIV/0!") + `</Cell><Cell ss:Formula="=&quot;&quot;">` + data("String", "") + `</Cell></Row>`, "",
			[]gridtest.Cell{made(is("A1", grid.Number, "2", 2)), made(is("B1", grid.NoValue, "", 0)), made(is("C1", grid.Error, "#DIV/0!", 0))}},
		{"strike-through and notes", `<Style ss:ID="s"><Font ss:StrikeThrough="1"/></Style><Style ss:ID="child" ss:Parent="s"/>`,
			`<Column ss:Index="3" ss:StyleID="child"/><Row><Cell ss:StyleID="s">` + data("Number", "30") + `</Cell>` +
				`<Cell><ss:Data ss:Type="String" xmlns="http://www.w3.org/TR/REC-html40"><S>15 W</S><Font> 5 W</Font></ss:Data><Comment><ss:Data xmlns="http://www.w3.org/TR/REC-html40"><B>me:</B>&#13;new&#13;&#10;tap</ss:Data></Comment></Cell>` +
				`<Cell>` + data("String", "col") + `</Cell></Row><Row ss:StyleID="s"><Cell>` + data("String", "row") + `</Cell><Cell ss:StyleID="Default"><Comment><Data>bare</Data></Comment></Cell></Row>`, "",
			[]gridtest.Cell{struck(is("A1", grid.Number, "30", 30), grid.WholeStruck, ""), {Sheet: "S", At: "B1", Kind: grid.String, Text: "15 W 5 W", Struck: grid.PartStruck, Kept: " 5 W", Note: "me:\nnew\ntap"}, struck(str("C1", "col"), grid.WholeStruck, ""), struck(str("A2", "row"), grid.WholeStruck, ""), {Sheet: "S", At: "B2", Note: "bare"}}},
		{"a filter that is on", "", strings.Repeat(`<Row ss:Hidden="1"><Cell>`+data("Number", "1")+`</Cell></Row>`, 3),
			`<AutoFilter x:Range="R1C1:R2C2" xmlns="urn:schemas-microsoft-com:office:excel"><AutoFilterColumn x:Type="Custom"/></AutoFilter>`,
			[]gridtest.Cell{hidden(is("A1", grid.Number, "1", 1), grid.HiddenByHand), hidden(is("A2", grid.Number, "1", 1), grid.HiddenByFilter), hidden(is("A3", grid.Number, "1", 1), grid.HiddenByHand)}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b, err := Read("a.xls", []byte(workbook(tt.styles, tt.table, tt.rest)), grid.DefaultLimits())
			if err != nil {
				t.Fatal(err)
			}
			gridtest.Compare(t, gridtest.Read(b), tt.want)
		})
	}
}

// A text that its format hides is read all the same, and said once a sheet.
func TestXMLTextThatAFormatHides(t *testing.T) {
	styles := `<Style ss:ID="h"><NumberFormat ss:Format="0;0;0;\ "/></Style>`
	cell := `<Cell ss:StyleID="h"><Data ss:Type="String">5 W</Data></Cell>`
	b, err := Read("a.xls", []byte(workbook(styles, "<Row>"+cell+cell+"</Row>", "")), grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if c := b.Sheets[0].Rows[0]; c.Len() != 2 || c.At(0).Text != "5 W" || len(b.Notes) != 1 || !strings.Contains(b.Notes[0].Text, "hide") {
		t.Errorf("cells %v, notes %v", c, b.Notes)
	}
}

func TestXMLHiddenSheetAndColumns(t *testing.T) {
	b, err := Read("a.xls", []byte(workbook("", `<Column/><Column ss:Hidden="1" ss:Span="1"/><Column ss:Width="0"/>`, `<WorksheetOptions xmlns="urn:schemas-microsoft-com:office:excel"><Visible>SheetHidden</Visible></WorksheetOptions>`)), grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if s := b.Sheets[0]; !s.Hidden || !reflect.DeepEqual(s.HiddenCols, []grid.Span{{First: 2, Last: 4}}) {
		t.Errorf("hidden %v, columns %v", s.Hidden, s.HiddenCols)
	}
}

// A prefixed workbook in UTF-16, as some exporters write.
func TestXMLEncodings(t *testing.T) {
	const doc = `<?xml version="1.0" encoding="%"?><ss:Workbook xmlns:ss="urn:schemas-microsoft-com:office:spreadsheet"><ss:Worksheet ss:Name="S"><ss:Table><ss:Row><ss:Cell><ss:Data ss:Type="String">5 W²</ss:Data></ss:Cell></ss:Row></ss:Table></ss:Worksheet></ss:Workbook>`
	in16, err := unicode.UTF16(unicode.LittleEndian, unicode.UseBOM).NewEncoder().String(strings.Replace(doc, "%", "UTF-16", 1))
	if err != nil {
		t.Fatal(err)
	}
	for name, data := range map[string]string{
		"UTF-8 with a mark": "\ufeff" + strings.Replace(doc, "%", "UTF-8", 1),
		"UTF-16":            in16,
		"Windows-1252":      strings.Replace(strings.Replace(doc, "%", "windows-1252", 1), "²", "\xb2", 1),
		"blank lines first": "\r\n\r\n" + strings.Replace(doc, "%", "UTF-8", 1),
	} {
		b, err := Read("a.xls", []byte(data), grid.DefaultLimits())
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		gridtest.Compare(t, gridtest.Read(b), []gridtest.Cell{{Sheet: "S", At: "A1", Kind: grid.String, Text: "5 W²"}})
	}
}

// Excel writes a control character of a cell as it is; a zero byte is damage.
func TestXMLControlCharacters(t *testing.T) {
	in := func(text string) []byte {
		return []byte(workbook("", `<Row><Cell><Data ss:Type="String">`+text+`</Data></Cell></Row>`, ""))
	}
	b, err := Read("a.xls", in("LS-1\x0cby\x0bthe slip"), grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if got := b.Sheets[0].Rows[0].At(0).Text; got != "LS-1 by the slip" || len(b.Notes) != 1 {
		t.Errorf("read %q with notes %v", got, b.Notes)
	}
	if _, err := Read("a.xls", in("LS-1\x00"), grid.DefaultLimits()); err == nil {
		t.Error("a zero byte is no error")
	}
}

func TestXMLUnreadable(t *testing.T) {
	row := func(s string) string { return workbook("", "<Row>"+s+"</Row>", "") }
	for _, tt := range []struct{ name, reason, data string }{
		{"cut", "tag is cut off", row("")[:len(row(""))-4]},
		{"cut between elements", "cut short", strings.TrimSuffix(row(""), "</Workbook>")},
		{"no sheet", "holds no sheet", `<Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet"/>`},
		{"document type", "document type", strings.Replace(row(""), "<Workbook", "<!DOCTYPE x><Workbook", 1)},
		{"bad number", `stored as "5 W"`, row(`<Cell><Data ss:Type="Number">5 W</Data></Cell>`)},
		{"columns out of order", "follows column", row(`<Cell ss:Index="3"/><Cell ss:Index="2"/>`)},
		{"rows out of order", "follows row", workbook("", `<Row ss:Index="3"/><Row ss:Index="2"/>`, "")},
		{"index that is no number", "where a number should stand", row(`<Cell ss:Index="x"/>`)},
		{"index beyond the sheet", "the limit is", row(`<Cell ss:Index="99999"/>`)},
		{"sheet is named", `in sheet "S"`, row(`<Cell ss:Index="99999"/>`)},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Read("a.xls", []byte(tt.data), grid.DefaultLimits())
			u, ok := errors.AsType[*grid.Unreadable](err)
			if !ok || !strings.Contains(u.Reason, tt.reason) {
				t.Errorf("error %v, want one with %q", err, tt.reason)
			}
		})
	}
}
