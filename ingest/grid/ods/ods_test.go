package ods

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"os"
	"reflect"
	"strings"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/gridtest"
)

func checkSchedule(t *testing.T, data []byte, format grid.Format, want []gridtest.Cell) {
	t.Helper()
	b, err := Read("jobs/schedule.ods", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if b.File != "jobs/schedule.ods" || b.Format != format || len(b.Notes) > 0 {
		t.Errorf("book: file %q format %q notes %v", b.File, b.Format, b.Notes)
	}
	gridtest.Compare(t, gridtest.Read(b), want)
	if len(b.Sheets) != 3 {
		t.Fatalf("%d sheets, want 3", len(b.Sheets))
	}
	if s := b.Sheets[0]; !reflect.DeepEqual(s.Merges, gridtest.Merges) || !reflect.DeepEqual(s.HiddenCols, gridtest.HiddenCols) {
		t.Errorf("merges %v, hidden columns %v", s.Merges, s.HiddenCols)
	}
	if s := b.Sheets[1]; s.Filtered != gridtest.Filter {
		t.Errorf("filter %v, want %v", s.Filtered, gridtest.Filter)
	}
	if b.Sheets[0].Hidden || !b.Sheets[2].Hidden {
		t.Error("the third sheet alone is hidden")
	}
}

func TestFlat(t *testing.T) {
	want := gridtest.Cells()
	gridtest.Find(want, gridtest.Main, "G8").Text = "1/2" // as the file has it
	checkSchedule(t, gridtest.Schedule, grid.FODS, want)
}

// The fixture is gridtest's schedule.fods, saved by LibreOffice 7.4 as .ods.
func TestFixture(t *testing.T) {
	data, err := os.ReadFile("testdata/schedule.ods")
	if err != nil {
		t.Fatal(err)
	}
	checkSchedule(t, data, grid.ODS, gridtest.Cells())
}

func TestAgainstLibreOffice(t *testing.T) {
	checkSchedule(t, gridtest.Convert(t, "schedule.fods", gridtest.Schedule, "ods"), grid.ODS, gridtest.Cells())
}

// flat returns a flat spreadsheet of one sheet called S.
func flat(styles, table string) []byte {
	return []byte(`<?xml version="1.0" encoding="UTF-8"?><office:document` +
		` xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"` +
		` xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:style="urn:oasis:names:tc:opendocument:xmlns:style:1.0"` +
		` xmlns:number="urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0" xmlns:draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0"` +
		` xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0">` +
		`<office:automatic-styles>` + styles + `</office:automatic-styles><office:body><office:spreadsheet>` +
		`<table:table table:name="S">` + table + `</table:table></office:spreadsheet></office:body></office:document>`)
}

// row returns a row of the sheet; text is a cell of text.
func row(attr string, cells ...string) string {
	return "<table:table-row " + attr + ">" + strings.Join(cells, "") + "</table:table-row>"
}

func text(attr, s string) string {
	return `<table:table-cell office:value-type="string" ` + attr + `><text:p>` + s + `</text:p></table:table-cell>`
}

func value(typ, attr, shown string) string {
	return `<table:table-cell office:value-type="` + typ + `" ` + attr + `>` + shown + `</table:table-cell>`
}

func TestCells(t *testing.T) {
	is := func(at string, kind grid.Kind, text string, number float64) gridtest.Cell {
		return gridtest.Cell{Sheet: "S", At: at, Kind: kind, Text: text, Number: number}
	}
	str := func(at, s string) gridtest.Cell { return is(at, grid.String, s, 0) }
	made := func(c gridtest.Cell) gridtest.Cell { c.Formula = true; return c }
	hidden := func(c gridtest.Cell, h grid.Hiding) gridtest.Cell { c.Hidden = h; return c }
	struck := func(c gridtest.Cell, s grid.Strike, kept string) gridtest.Cell { c.Struck, c.Kept = s, kept; return c }
	const line = `<style:text-properties style:text-line-through-style="solid"/>`
	const noLine = `<style:text-properties style:text-line-through-style="none"/>`
	for _, tt := range []struct {
		name, styles, table string
		want                []gridtest.Cell
	}{
		{"kinds without shown text", "", row("",
			value("float", `office:value="7.5"`, ""), value("percentage", `office:value="0.5"`, ""), value("currency", `office:value="-3" office:currency="EUR"`, ""),
			value("date", `office:date-value="2026-01-02"`, ""), value("date", `office:date-value="2026-01-02T12:00:00"`, ""), value("time", `office:time-value="PT36H00M00S"`, ""),
			value("boolean", `office:boolean-value="true"`, ""), value("string", `office:string-value="5 W"`, "")),
			[]gridtest.Cell{
				is("A1", grid.Number, "7.5", 7.5), is("B1", grid.Number, "0.5", 0.5), is("C1", grid.Number, "-3", -3),
				is("D1", grid.Date, "2026-01-02", 46024), is("E1", grid.Date, "2026-01-02T12:00:00", 46024.5), is("F1", grid.Date, "PT36H00M00S", 1.5),
				is("G1", grid.Boolean, "TRUE", 1), str("H1", "5 W"),
			}},
		{"shown text counts", "", row("", value("float", `office:value="7.5"`, "<text:p>7,50 W</text:p>"), value("boolean", `office:boolean-value="false"`, "<text:p>FALSCH</text:p>")),
			[]gridtest.Cell{is("A1", grid.Number, "7,50 W", 7.5), is("B1", grid.Boolean, "FALSCH", 0)}},
		{"formulas", "", row("",
			value("float", `office:value="2" table:formula="of:=1+1"`, "<text:p>2</text:p>"), `<table:table-cell table:formula="of:=A1"/>`,
			value("string", `table:formula="of:=1/0" office:string-value="" calcext:value-type="error"`, "<text:p>#DIV/0!</text:p>"),
			value("float", `table:formula="of:=X" office:value="0"`, "<text:p>Err:508</text:p>"),
			value("string", `table:formula="of:=T(1)" office:string-value=""`, "")),
			[]gridtest.Cell{made(is("A1", grid.Number, "2", 2)), made(is("B1", grid.NoValue, "", 0)), made(is("C1", grid.Error, "#DIV/0!", 0)), made(is("D1", grid.Error, "Err:508", 0))}},
		{"a value that is none", "", row("", value("float", `office:value="NaN"`, ""), value("date", `office:date-value="soon"`, "<text:p>soon</text:p>")),
			[]gridtest.Cell{is("A1", grid.Error, "#VALUE!", 0), str("B1", "soon")}},
		{"a type without a value", "", row("",
			value("float", `table:formula="of:=X"`, ""), value("float", `table:formula="of:=X" office:string-value="OK"`, ""), `<table:table-cell table:formula="of:=X" office:string-value="OK"/>`,
			value("float", "", "<text:p>2,5 W</text:p>"), value("boolean", "", "<text:p>yes</text:p>"), value("date", "", ""), value("float", `office:value=""`, "")),
			[]gridtest.Cell{made(is("A1", grid.NoValue, "", 0)), made(str("B1", "OK")), made(str("C1", "OK")), str("D1", "2,5 W"), str("E1", "yes"), is("G1", grid.Error, "#VALUE!", 0)}},
		{"lists in a cell", "", row("", `<table:table-cell office:value-type="string"><text:p>taps</text:p><text:list><text:list-item><text:p>5 W</text:p><text:list><text:list-item><text:p>10 W</text:p></text:list-item></text:list></text:list-item></text:list></table:table-cell>`),
			[]gridtest.Cell{str("A1", "taps\n5 W\n10 W")}},
		{"white space", "", row("", text("", "a  b<text:s text:c=\"2\"/>c<text:tab/>d<text:line-break/>e"), text("", "\n   laid\n   out\n  "), text("", "<text:a>link</text:a> and <text:sheet-name>field</text:sheet-name>")),
			[]gridtest.Cell{str("A1", "a  b  c\td\ne"), str("B1", "laid out"), str("C1", "link and field")}},
		{"repeated cells and rows", "", `<table:table-row table:number-rows-repeated="3"/>` +
			row(`table:number-rows-repeated="2"`, `<table:table-cell table:number-columns-repeated="2"/>`, text(`table:number-columns-repeated="2"`, "x")) +
			row(`table:number-rows-repeated="1048000"`, `<table:table-cell table:number-columns-repeated="16384"/>`),
			[]gridtest.Cell{str("C4", "x"), str("D4", "x"), str("C5", "x"), str("D5", "x")}},
		{"outlines and groups", "", `<table:table-header-rows>` + row("", text("", "head")) + `</table:table-header-rows>` +
			`<table:table-row-group>` + row("", text("", "shown")) + row(`table:visibility="collapse"`, text("", "folded")) + `</table:table-row-group>` +
			`<table:table-row-group table:display="false">` + row("", text("", "in a folded group")) + `</table:table-row-group>` + row(`table:visibility="collapse"`, text("", "by hand")),
			[]gridtest.Cell{str("A1", "head"), str("A2", "shown"), hidden(str("A3", "folded"), grid.HiddenByOutline), hidden(str("A4", "in a folded group"), grid.HiddenByOutline), hidden(str("A5", "by hand"), grid.HiddenByHand)}},
		{"strike-through of styles",
			`<style:style style:name="s" style:family="table-cell">` + line + `</style:style><style:style style:name="child" style:family="table-cell" style:parent-style-name="s"/>` +
				`<style:style style:name="no" style:family="text">` + noLine + `</style:style><style:style style:name="yes" style:family="text">` + line + `</style:style>`,
			`<table:table-column table:number-columns-repeated="2"/><table:table-column table:default-cell-style-name="child"/>` +
				row("", text(`table:style-name="s"`, "own"), text("", "plain"), text("", "column's")) +
				row(`table:default-cell-style-name="child"`, text("", "row's"), text("", `old <text:span text:style-name="no">new</text:span>`)) +
				row("", text("", `<text:span text:style-name="yes">5 W</text:span> 2 W`), text("", `<text:span text:style-name="yes">gone</text:span> `)),
			[]gridtest.Cell{
				struck(str("A1", "own"), grid.WholeStruck, ""), str("B1", "plain"), struck(str("C1", "column's"), grid.WholeStruck, ""),
				struck(str("A2", "row's"), grid.WholeStruck, ""), struck(str("B2", "old new"), grid.PartStruck, "new"),
				struck(str("A3", "5 W 2 W"), grid.PartStruck, " 2 W"), struck(str("B3", "gone "), grid.WholeStruck, ""),
			}},
		{"a default style's strike-through", `<style:default-style style:family="table-cell">` + line + `</style:default-style><style:style style:name="n" style:family="table-cell">` + noLine + `</style:style>`,
			row("", text("", "a"), text(`table:style-name="n"`, "b")), []gridtest.Cell{struck(str("A1", "a"), grid.WholeStruck, ""), str("B1", "b")}},
		{"drawings and tables within a cell", "", row("", `<table:table-cell office:value-type="string"><draw:frame><draw:text-box><text:p>box</text:p></draw:text-box></draw:frame><text:p>cell</text:p></table:table-cell>`),
			[]gridtest.Cell{str("A1", "cell")}},
		{"covered cells keep what they hold", "", row("", text(`table:number-columns-spanned="2"`, "over"), `<table:covered-table-cell office:value-type="string"><text:p>under</text:p></table:covered-table-cell>`),
			[]gridtest.Cell{str("A1", "over"), str("B1", "under")}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b, err := Read("a.fods", flat(tt.styles, tt.table), grid.DefaultLimits())
			if err != nil {
				t.Fatal(err)
			}
			gridtest.Compare(t, gridtest.Read(b), tt.want)
		})
	}
}

// zipped packs members in order.
func zipped(t testing.TB, members ...[2]string) []byte {
	t.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, m := range members {
		f, err := w.Create(m[0])
		if err == nil {
			_, err = f.Write([]byte(m[1]))
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestUnreadable(t *testing.T) {
	content := string(flat("", row("", text("", "5 W"))))
	sound := zipped(t, [2]string{"content.xml", content})
	flipped := bytes.Clone(sound)
	at := bytes.Index(flipped, []byte("content.xml")) + len("content.xml") + 60
	flipped[at] ^= 0x10
	wrongSum := bytes.Clone(sound)
	wrongSum[bytes.Index(wrongSum, []byte("PK\x01\x02"))+16] ^= 1 // the sum in the directory
	deep := strings.Repeat("<table:table-row-group>", 300)
	for _, tt := range []struct {
		name, reason string
		data         []byte
	}{
		{"empty", "no element", nil},
		{"not a spreadsheet", "not a spreadsheet", []byte(`<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"><office:body><office:text/></office:body></office:document>`)},
		{"password", "password", zipped(t, [2]string{"META-INF/manifest.xml", "<manifest:encryption-data/>"}, [2]string{"content.xml", "?"})},
		{"password, whole package", "password", zipped(t, [2]string{"encrypted-package", "?"})},
		{"no content", "content is missing", zipped(t, [2]string{"mimetype", "x"})},
		{"two contents", "content.xml twice", zipped(t, [2]string{"content.xml", content}, [2]string{"content.xml", content})},
		{"cut zip", "cannot be unpacked", sound[:len(sound)-30]},
		{"flipped bit", "content.xml", flipped},
		{"wrong sum", "checksum of the part content.xml differs", wrongSum},
		{"cut text", "tag is cut off", []byte(content[:len(content)-20])},
		{"cut between elements", "cut short", []byte(content[:strings.Index(content, "</table:table>")])},
		{"document type", "document type", []byte(`<!DOCTYPE x [<!ENTITY a "b">]>` + content)},
		{"entity", "entity that is not known", []byte(strings.Replace(content, "5 W", "&a;", 1))},
		{"control character", "does not allow", []byte(strings.Replace(content, "5 W", "\x01", 1))},
		{"bad UTF-8", "does not allow", []byte(strings.Replace(content, "5 W", "\xff", 1))},
		{"text behind the end", "follows the end", []byte(content + "<a/>")},
		{"nested deep", "nested more than 200", flat("", deep)},
		{"text longer than a cell may hold", "bytes of text in one cell", []byte(strings.Replace(content, "5 W", strings.Repeat("x", 1<<20+1), 1))},
		{"value longer than a cell may hold", "bytes of text in one cell", flat("", row("", value("string", `office:string-value="`+strings.Repeat("x", 1<<20+1)+`"`, "")))},
		{"row beyond the sheet", "row with the number", flat("", `<table:table-row table:number-rows-repeated="1048576"/>`+row("", text("", "x")))},
		{"a count beyond all numbers", `number-columns-repeated is "99999999999999999999"`, flat("", row("", `<table:table-cell table:number-columns-repeated="99999999999999999999"/>`, text("", "x")))},
		{"a count below nothing", `number-rows-repeated is "-7"`, flat("", `<table:table-row table:number-rows-repeated="-7"/>`+row("", text("", "x")))},
		{"a span that is none", `number-rows-spanned is "two"`, flat("", row("", `<table:table-cell table:number-rows-spanned="two"/>`, text("", "x")))},
		{"column beyond the sheet", "a cell in column", flat("", row("", `<table:table-cell table:number-columns-repeated="99999999"/>`, text("", "x")))},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Read("a.ods", tt.data, grid.DefaultLimits())
			u, ok := errors.AsType[*grid.Unreadable](err)
			if !ok || !strings.Contains(u.Reason, tt.reason) {
				t.Errorf("error %v, want one with %q", err, tt.reason)
			}
		})
	}
}

func TestBombs(t *testing.T) {
	big := zipped(t, [2]string{"content.xml", string(flat("", row("", text("", strings.Repeat(" ", 32<<20)))))})
	if _, err := Read("a.ods", big, grid.DefaultLimits()); err == nil || !strings.Contains(err.Error(), "times its size") {
		t.Errorf("32 MiB of blanks in %d bytes: %v", len(big), err)
	}
	lim := grid.DefaultLimits()
	lim.MaxInflated = 100
	if _, err := Read("a.ods", zipped(t, [2]string{"content.xml", string(flat("", ""))}), lim); err == nil || !strings.Contains(err.Error(), "limit") {
		t.Errorf("parts above the limit: %v", err)
	}
}

func TestTableWithinACell(t *testing.T) {
	b, err := Read("a.fods", flat("", row("", `<table:table-cell><table:table><table:table-row>`+text("", "in")+`</table:table-row></table:table></table:table-cell>`, text("", "out"))), grid.DefaultLimits())
	if err != nil || len(b.Notes) != 1 || len(b.Sheets) != 1 {
		t.Fatalf("%v %v, want one sheet and a note", b, err)
	}
	gridtest.Compare(t, gridtest.Read(b), []gridtest.Cell{{Sheet: "S", At: "B1", Kind: grid.String, Text: "out"}})
}

// Cells and rows that stand for many are counted, not cut short.
func TestRepeatedContentIsBounded(t *testing.T) {
	lim := grid.DefaultLimits()
	lim.MaxCells = 50_000
	for _, rows := range []string{"1", "1000000"} {
		_, err := Read("a.ods", flat("", row(`table:number-rows-repeated="`+rows+`"`, text(`table:number-columns-repeated="16384"`, "x"))), lim)
		if (err == nil) != (rows == "1") {
			t.Errorf("%s rows of 16384 cells, limit 50000: %v", rows, err)
		}
	}
}

func TestLimits(t *testing.T) {
	data := flat("", row("", text(`table:number-columns-spanned="2"`, "LS-1 by the slip"), text("", "b"))+row("", text(`table:number-columns-spanned="2"`, "c")))
	for _, tt := range []struct {
		name string
		set  func(*grid.Limits)
	}{
		{"bytes", func(l *grid.Limits) { l.MaxBytes = 10 }},
		{"cells", func(l *grid.Limits) { l.MaxCells = 2 }},
		{"rows", func(l *grid.Limits) { l.MaxRows = 1 }},
		{"merges", func(l *grid.Limits) { l.MaxMerges = 1 }},
		{"text", func(l *grid.Limits) { l.MaxText = 5 }},
		{"cell text", func(l *grid.Limits) { l.MaxCellText = 5 }},
	} {
		t.Run(tt.name, func(t *testing.T) {
			lim := grid.DefaultLimits()
			if _, err := Read("a.fods", data, lim); err != nil {
				t.Fatal(err)
			}
			tt.set(&lim)
			_, err := Read("a.fods", data, lim)
			if u, ok := errors.AsType[*grid.Unreadable](err); !ok || !strings.Contains(u.Reason, "too large") {
				t.Errorf("error %v, want one that says too large", err)
			}
		})
	}
}

func TestFilterOfQuotedSheet(t *testing.T) {
	for _, tt := range []struct{ in, sheet, from, to string }{
		{"Filtered.A1:Filtered.B4", "Filtered", "A1", "B4"},
		{"$'It''s: a.b'.$A$1:$'It''s: a.b'.$B$4", "It's: a.b", "$A$1", "$B$4"},
	} {
		from, to, ok := splitRange(tt.in)
		sheet, first := splitCell(from)
		_, last := splitCell(to)
		if !ok || sheet != tt.sheet || first != tt.from || last != tt.to {
			t.Errorf("%s: %q %q %q %v", tt.in, sheet, first, last, ok)
		}
	}
}

func TestSerialOfDate(t *testing.T) {
	for in, want := range map[string]float64{
		"1900-03-01": 61, "1904-01-01": 1462, "2026-01-02": 46024, "2026-01-02T06:00:00": 46024.25, "1899-12-30T12:00:00": 0.5, "2026-01-02T18:00:00Z": 46024.75,
	} {
		if got, ok := serialOfDate(in); !ok || got != want {
			t.Errorf("%s: %v %v, want %v", in, got, ok, want)
		}
	}
	if v, ok := serialOfDate("2.1.2026"); ok {
		t.Errorf("2.1.2026: %v", v)
	}
}

func TestSerialOfTime(t *testing.T) {
	for _, tt := range []struct {
		in   string
		want float64
		ok   bool
	}{
		{"PT12H00M00S", 0.5, true}, {"PT12H", 0.5, true}, {"P1DT6H", 1.25, true}, {"-PT6H", -0.25, true}, {"PT00H00M43,2S", 0.0005, true},
		{"PT", 0, true}, {"P1M", 0, false}, {"12:00", 0, false}, {"PTxH", 0, false}, {"PT1", 0, false}, {"", 0, false},
	} {
		v, ok := serialOfTime(tt.in)
		if ok != tt.ok || ok && (v-tt.want > 1e-12 || tt.want-v > 1e-12) {
			t.Errorf("%q: %v %v, want %v %v", tt.in, v, ok, tt.want, tt.ok)
		}
	}
}

func FuzzRead(f *testing.F) {
	f.Add(gridtest.Schedule)
	f.Add(flat("", row("", text("", "5 W"), value("date", `office:date-value="2026-01-02"`, ""))))
	if data, err := os.ReadFile("testdata/schedule.ods"); err == nil {
		f.Add(data)
	}
	lim := grid.DefaultLimits()
	lim.MaxCells, lim.MaxText = 100_000, 1<<20
	f.Fuzz(func(t *testing.T, data []byte) {
		b, err := Read("a.fods", data, lim)
		if err != nil {
			if _, ok := errors.AsType[*grid.Unreadable](err); !ok {
				t.Fatalf("error of another kind: %v", err)
			}
			return
		}
		if err := inOrder(b); err != nil {
			t.Fatal(err)
		}
	})
}

// inOrder checks what every book promises.
func inOrder(b *grid.Book) error {
	for _, s := range b.Sheets {
		last := 0
		for _, r := range s.Rows {
			if r.Number <= last || r.Len() == 0 {
				return fmt.Errorf("row %d after row %d with %d cells", r.Number, last, r.Len())
			}
			last = r.Number
			for i := range r.Len() {
				c := r.At(i)
				if c.Col < 1 || i > 0 && c.Col <= r.At(i-1).Col || c.Number != c.Number {
					return fmt.Errorf("row %d: cell %+v", r.Number, *c.Cell)
				}
			}
		}
	}
	return nil
}
