package markup

import (
	"errors"
	"os"
	"reflect"
	"strings"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/gridtest"
)

// wantHTML is what must be read of the schedule when LibreOffice 7.4 has saved
// it as a web page: the sheets below each other behind an overview, without
// hidden rows, columns and sheets, and texts as a browser would show them.
func wantHTML() []gridtest.Cell {
	in := map[string]string{} // place in the schedule to place on the page
	for at, to := range map[string]string{
		"A1": "A7", "A4": "A10", "B4": "B10", "C4": "C10", "A5": "A11", "B5": "B11", "C5": "C11", "A7": "A12", "B7": "B12", "C7": "C12",
		"A8": "A13", "B8": "B13", "C8": "C13", "D8": "D13", "F8": "E13", "G8": "F13", "A9": "A14", "B9": "B14", "C9": "C14", "D9": "D14", "F9": "E14",
		"A10": "A15", "B10": "B15", "C10": "C15", "A11": "A16", "B11": "B16", "C11": "C16", "A12": "A17", "B12": "B17", "B13": "B18",
	} {
		in[gridtest.Main+"!"+at] = to
	}
	for at, to := range map[string]string{"A1": "A21", "B1": "B21", "A2": "A22", "B2": "B22", "A4": "A23", "B4": "B23"} {
		in[gridtest.Filtered+"!"+at] = to
	}
	str := func(at, s string) gridtest.Cell { return gridtest.Cell{At: at, Kind: grid.String, Text: s} }
	out := []gridtest.Cell{str("A1", "Overview"), str("A3", gridtest.Main), str("A4", gridtest.Filtered), str("A5", "Sheet 1: "+gridtest.Main)}
	second := false
	for _, c := range gridtest.Cells() {
		to, ok := in[c.Sheet+"!"+c.At]
		if !ok {
			continue
		}
		if c.Sheet == gridtest.Filtered && !second {
			second = true
			out = append(out, str("A19", "Sheet 2: "+gridtest.Filtered))
		}
		c.At, c.Formula = to, false
		switch to {
		case "C11": // a browser joins spaces
			c.Text = "by the slip\nnorth side"
			c.Note = "checked on site second line"
		case "C12": // the page does not say which part is struck
			c.Struck, c.Kept = grid.NotStruck, ""
		case "F13":
			c.Text = "1/2"
		case "E14": // saved as the number 0 under the format BOOLEAN
			c.Kind = grid.Boolean
		}
		out = append(out, c)
	}
	for i := range out {
		out[i].Sheet = "schedule"
	}
	return out
}

func checkHTML(t *testing.T, data []byte) {
	t.Helper()
	b, err := Read("jobs/schedule.xls", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if b.Format != grid.HTML || len(b.Notes) > 0 {
		t.Errorf("format %q notes %v", b.Format, b.Notes)
	}
	gridtest.Compare(t, gridtest.Read(b), wantHTML())
	if want := []grid.Range{{Row1: 7, Col1: 1, Row2: 7, Col2: 3}, {Row1: 17, Col1: 1, Row2: 18, Col2: 1}}; !reflect.DeepEqual(b.Sheets[0].Merges, want) {
		t.Errorf("merges %v, want %v", b.Sheets[0].Merges, want)
	}
}

// The fixture is gridtest's schedule.fods, saved by LibreOffice 7.4.
func TestHTMLFixture(t *testing.T) {
	data, err := os.ReadFile("testdata/schedule.html")
	if err != nil {
		t.Fatal(err)
	}
	checkHTML(t, data)
}

func TestHTMLAgainstLibreOffice(t *testing.T) {
	checkHTML(t, gridtest.Convert(t, "schedule.fods", gridtest.Schedule, "html:HTML (StarCalc)"))
}

func TestHTMLCells(t *testing.T) {
	is := func(at string, kind grid.Kind, text string, number float64) gridtest.Cell {
		return gridtest.Cell{Sheet: "a", At: at, Kind: kind, Text: text, Number: number}
	}
	str := func(at, s string) gridtest.Cell { return is(at, grid.String, s, 0) }
	struck := func(c gridtest.Cell, s grid.Strike, kept string) gridtest.Cell { c.Struck, c.Kept = s, kept; return c }
	hidden := func(c gridtest.Cell) gridtest.Cell { c.Hidden = grid.HiddenByHand; return c }
	made := func(c gridtest.Cell) gridtest.Cell { c.Formula = true; return c }
	for _, tt := range []struct {
		name, in string
		want     []gridtest.Cell
	}{
		{"text around tables", "<title>no</title><h1>Head</h1>one<br>two<table><tr><td>a<td>b</table>behind", []gridtest.Cell{
			str("A1", "Head"), str("A3", "one"), str("A4", "two"), str("A5", "a"), str("B5", "b"), str("A6", "behind")}},
		{"tables below each other", "<table><tr><td>a</td></tr></table><table><tr><td>b</td></tr></table>", []gridtest.Cell{str("A1", "a"), str("A2", "b")}},
		{"a table within a cell goes below", "<table><tr><td>a<table><tr><td>in</td></tr></table></td><td>b</td></tr></table>", []gridtest.Cell{str("A1", "a"), str("B1", "b"), str("A2", "in")}},
		{"end tags left out", "<table><tr><td>a<td>b<tr><th>c<th>d</table>", []gridtest.Cell{str("A1", "a"), str("B1", "b"), str("A2", "c"), str("B2", "d")}},
		{"cells without a row", "<table><td>a</td><td>b</td></table>", []gridtest.Cell{str("A1", "a"), str("B1", "b")}},
		{"spans push cells aside", `<table><tr><td rowspan=2>a<td colspan=2>b<td>c<tr><td>d<td>e<td>f</table>`, []gridtest.Cell{str("A1", "a"), str("B1", "b"), str("D1", "c"), str("B2", "d"), str("C2", "e"), str("D2", "f")}},
		{"white space, breaks and references", "<table><tr><td>\n 5&nbsp;W \n x<br>y<p>z</p></td><td>&nbsp;</td><td>&Omega; &#189; &lt;</td></tr></table>", []gridtest.Cell{str("A1", "5\u00a0W x\ny\nz"), str("C1", "Ω ½ <")}},
		{"strike-through", `<style><!-- .xl24 {text-decoration:line-through;} --></style><table><tr><td><s>15 W</s> 5 W</td><td class=xl24>gone</td><td><del>a</del><strike>b</strike></td><td><span style="text-decoration: line-through">1</span>2</td><td>plain</td></tr><tr style="text-decoration:line-through"><td>row</td></tr><tr><td>next</td></tr></table>`, []gridtest.Cell{
			struck(str("A1", "15 W 5 W"), grid.PartStruck, " 5 W"), struck(str("B1", "gone"), grid.WholeStruck, ""), struck(str("C1", "ab"), grid.WholeStruck, ""), struck(str("D1", "12"), grid.PartStruck, "2"), str("E1", "plain"), struck(str("A2", "row"), grid.WholeStruck, ""), str("A3", "next")}},
		{"an open strike ends with its cell", `<table><tr><td><s>gone<td>plain<tr><td>next</table>`, []gridtest.Cell{struck(str("A1", "gone"), grid.WholeStruck, ""), str("B1", "plain"), str("A2", "next")}},
		{"hidden rows", `<table><tr style="display:none"><td>a<tr><td>b</table>`, []gridtest.Cell{hidden(str("A1", "a")), str("A2", "b")}},
		{"stored values", `<style>.w {mso-number-format:"0\.0\0022 W\0022";} .d {mso-number-format:"d\\-mmm";}</style><table><tr><td x:num class=w>7.5 W</td><td x:num="7.5" class=w></td><td x:num="46024" style='mso-number-format:"d\\-mmm"'>2-Jan</td><td x:bool="TRUE">TRUE</td><td x:err="#N/A">#N/A</td><td x:num="2" x:fmla="=1+1">2</td><td sdval="0.5" sdnum="1033;1033;0%">50%</td></tr></table>`, []gridtest.Cell{
			str("A1", "7.5 W"), is("B1", grid.Number, "7.5 W", 7.5), is("C1", grid.Date, "2-Jan", 46024), is("D1", grid.Boolean, "TRUE", 1), is("E1", grid.Error, "#N/A", 0), made(is("F1", grid.Number, "2", 2)), is("G1", grid.Number, "50%", 0.5)}},
		{"scripts and comments", `<script>if (a<b) "<table>"</script><!-- <table><tr><td>no --><table><tr><td>a<!-- b --></td></tr></table>`, []gridtest.Cell{str("A1", "a")}},
		{"what only shows without scripts", `<noscript><div>Switch scripts on.</div></noscript><table><tr><td>a<noscript>no</noscript></td></tr></table>`, []gridtest.Cell{str("A1", "a")}},
		{"text between cells is kept", `<table><caption>Amps</caption><tr><td>a</td></tr>stray</table>`, []gridtest.Cell{str("A1", "Amps"), str("A2", "stray"), str("A3", "a")}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b, err := Read("x/a.xls", []byte("<html>"+tt.in), grid.DefaultLimits())
			if err != nil {
				t.Fatal(err)
			}
			gridtest.Compare(t, gridtest.Read(b), tt.want)
		})
	}
}

func TestHTMLEncodings(t *testing.T) {
	const table = "<table><tr><td>5 W\xb2 \x96</td></tr></table>" // Windows-1252
	for _, tt := range []struct {
		name, data, want string
		notes            int
	}{
		{"named", `<meta charset="windows-1252">` + table, "5 W² –", 0},
		{"named the old way", `<meta http-equiv=Content-Type content="text/html; charset=windows-1251">` + table, "5 WІ –", 0},
		{"not named", table, "5 W² –", 1},
		{"named wrongly", `<meta charset="utf-8">` + table, "5 W² –", 1},
		{"unknown name", `<meta charset="x-house">` + table, "5 W² –", 1},
		{"unknown name of UTF-8", `<meta charset="x-house"><table><tr><td>5 W²</td></tr></table>`, "5 W²", 1},
		{"UTF-8", "<table><tr><td>5 W²</td></tr></table>", "5 W²", 0},
		{"UTF-8 with a mark", "\ufeff<table><tr><td>5 W²</td></tr></table>", "5 W²", 0},
		{"UTF-16 with a mark", "\xff\xfe" + strings.Join(strings.Split("<table><td>5 W</table>", ""), "\x00") + "\x00", "5 W", 0},
	} {
		t.Run(tt.name, func(t *testing.T) {
			b, err := Read("a.xls", []byte(tt.data), grid.DefaultLimits())
			if err != nil {
				t.Fatal(err)
			}
			if len(b.Notes) != tt.notes {
				t.Errorf("notes %v, want %d", b.Notes, tt.notes)
			}
			gridtest.Compare(t, gridtest.Read(b), []gridtest.Cell{{Sheet: "a", At: "A1", Kind: grid.String, Text: tt.want}})
		})
	}
}

func TestHTMLUnreadable(t *testing.T) {
	for _, tt := range []struct{ name, reason, data string }{
		{"no table", "holds no table", "<html><p>hello"},
		{"frame set", "only the frame", "<html><frameset><frame src=sheet001.htm></frameset>"},
		{"cut in a cell", "inside a table cell", "<table><tr><td>5 W"},
		{"cut in a tag", "inside a tag", "<table><tr><td>5 W</td></tr></tab"},
		{"too wide", "columns", "<table><tr>" + strings.Repeat("<td colspan=1000>", 20) + "</table>"},
		{"nested deep", "nested more than", strings.Repeat("<table><tr><td>", 300)},
		{"too many rows of a table", "more than 1048576 rows", "<table>" + strings.Repeat("<tr>", 1<<20+1) + "</table>"},
		{"too many rows", "row with the number", strings.Repeat("<table>"+strings.Repeat("<tr>", 600_000)+"<tr><td>x</table>", 2)},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Read("a.xls", []byte(tt.data), grid.DefaultLimits())
			u, ok := errors.AsType[*grid.Unreadable](err)
			if !ok || !strings.Contains(u.Reason, tt.reason) {
				t.Errorf("error %v, want one with %q", err, tt.reason)
			}
		})
	}
	for name, foreign := range map[string]bool{"a.html": true, "a.xls": false} {
		_, err := Read(name, []byte("<p>hello"), grid.DefaultLimits())
		if u, ok := errors.AsType[*grid.Unreadable](err); !ok || u.Foreign != foreign {
			t.Errorf("%s: %+v, want Foreign %v", name, err, foreign)
		}
	}
	b, err := Read("a.xls", []byte("<table><tr><td>5 W</td></tr>"), grid.DefaultLimits())
	if err != nil || len(b.Notes) != 1 || len(b.Sheets[0].Rows) != 1 {
		t.Errorf("a table without an end: %v %v, want a note and a row", b, err)
	}
	b, err = Read("a.xls", []byte("<html><body><table><tr><td>5 W</td></tr></table></body>\n</html"), grid.DefaultLimits())
	if err != nil || len(b.Notes) != 1 || len(b.Sheets[0].Rows) != 1 {
		t.Errorf("a last tag without an end: %v %v, want a note and a row", b, err)
	}
}

func TestUnescape(t *testing.T) {
	for in, want := range map[string]string{
		`"0\.00"`: "0.00", `\@`: "@", `"0\.0\0022 W\0022"`: `0.0" W"`, `"\#\,\#\#0"`: "#,##0", `Fixed`: "Fixed", `"a\`: `"a\`,
	} {
		if got := unescape(in); got != want {
			t.Errorf("unescape(%s) = %s, want %s", in, got, want)
		}
	}
}

func TestLimits(t *testing.T) {
	xml := workbook("", `<Row><Cell ss:MergeAcross="1"><Data ss:Type="String">LS-1 by the slip</Data></Cell><Cell><Data ss:Type="String">b</Data></Cell></Row><Row><Cell ss:MergeAcross="1"><Data ss:Type="String">c</Data></Cell></Row>`, "")
	html := `<table><tr><td colspan=2>LS-1 by the slip<td>b<tr><td colspan=2>c</table>`
	for name, set := range map[string]func(*grid.Limits){
		"bytes":     func(l *grid.Limits) { l.MaxBytes = 10 },
		"cells":     func(l *grid.Limits) { l.MaxCells = 2 },
		"rows":      func(l *grid.Limits) { l.MaxRows = 1 },
		"merges":    func(l *grid.Limits) { l.MaxMerges = 1 },
		"text":      func(l *grid.Limits) { l.MaxText = 5 },
		"cell text": func(l *grid.Limits) { l.MaxCellText = 5 },
	} {
		for _, data := range []string{xml, html} {
			lim := grid.DefaultLimits()
			if _, err := Read("a.xls", []byte(data), lim); err != nil {
				t.Fatal(err)
			}
			set(&lim)
			_, err := Read("a.xls", []byte(data), lim)
			if u, ok := errors.AsType[*grid.Unreadable](err); !ok || !strings.Contains(u.Reason, "too large") {
				t.Errorf("%s: error %v, want one that says too large", name, err)
			}
		}
	}
}

func FuzzRead(f *testing.F) {
	for _, name := range []string{"testdata/schedule.xml", "testdata/schedule.html"} {
		if data, err := os.ReadFile(name); err == nil {
			f.Add(data)
		}
	}
	f.Add([]byte(`<table><tr><td rowspan=2>a<td colspan=2 x:num="5">b<tr><td><s>d</s> e<table><td>f</table></table>`))
	f.Add([]byte(workbook(`<Style ss:ID="s"><Font ss:StrikeThrough="1"/></Style>`, `<Row ss:Index="2"><Cell ss:StyleID="s"><Data ss:Type="Number">5</Data></Cell></Row>`, "")))
	lim := grid.DefaultLimits()
	lim.MaxCells, lim.MaxText = 100_000, 1<<20
	f.Fuzz(func(t *testing.T, data []byte) {
		b, err := Read("a.xls", data, lim)
		if err != nil {
			if _, ok := errors.AsType[*grid.Unreadable](err); !ok {
				t.Fatalf("error of another kind: %v", err)
			}
			return
		}
		for _, s := range b.Sheets {
			last := 0
			for _, r := range s.Rows {
				if r.Number <= last || r.Len() == 0 {
					t.Fatalf("row %d after row %d with %d cells", r.Number, last, r.Len())
				}
				last = r.Number
				for i := range r.Len() {
					c := r.At(i)
					if c.Col < 1 || i > 0 && c.Col <= r.At(i-1).Col || c.Number != c.Number {
						t.Fatalf("row %d: cell %+v", r.Number, *c.Cell)
					}
				}
			}
		}
	})
}
