package xlsx

import (
	"strings"
	"testing"

	"lineaudit/ingest/grid"
)

// What one cell of a sheet part says, by ECMA-376 part 1, 18.3.1.4, 18.3.1.40,
// 18.18.11 and 22.9.2.19.
func TestCell(t *testing.T) {
	for _, tt := range []struct {
		name, xml string
		at        string // "" for no cell
		want      grid.Cell
	}{
		{"shared text", `<row r="1"><c r="A1" t="s"><v>0</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "Zone"}},
		{"blanks around shared text stay", `<row r="1"><c r="A1" t="s"><v>1</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: " Tap "}},
		{"empty shared text", `<row r="1"><c r="A1" t="s"><v>2</v></c></row>`, "", grid.Cell{}},
		{"shared text without an index is no text 0", `<row r="1"><c r="A1" t="s"><v></v></c></row>`, "", grid.Cell{}},
		{"number", `<row r="1"><c r="A1"><v>7.5</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "7.5", Number: 7.5}},
		{"number with a format", `<row r="1"><c r="A1" s="1"><v>7.5</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "8 W", Number: 7.5, Extra: grid.Extra{Format: `0" W"`}.Share()}},
		{"number with a long tail", `<row r="1"><c r="A1"><v>0.30000000000000004</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "0.3", Number: 0.30000000000000004}},
		{"number with an exponent", `<row r="1"><c r="A1"><v>1.5E-3</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "0.0015", Number: 0.0015}},
		{"number with noughts in front", `<row r="1"><c r="A1"><v>007</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "7", Number: 7}},
		{"number with blanks", "<row r=\"1\"><c r=\"A1\"><v> 7\n</v></c></row>", "A1", grid.Cell{Kind: grid.Number, Text: "7", Number: 7}},
		{"number that a format hides", `<row r="1"><c r="A1" s="6"><v>42</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Number: 42, Extra: grid.Extra{Format: ";;;"}.Share()}},
		{"text that a format hides stays", `<row r="1"><c r="A1" s="6" t="str"><v>x</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "x", Extra: grid.Extra{Format: ";;;"}.Share()}},
		{"text with a format", `<row r="1"><c r="A1" s="7" t="str"><v>6</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "6 W", Extra: grid.Extra{Format: `@" W"`}.Share()}},
		{"decimal comma in a number", `<row r="1"><c r="A1"><v>1,5</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "1,5"}},
		{"not a number", `<row r="1"><c r="A1"><v>NaN</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "NaN"}},
		{"infinite", `<row r="1"><c r="A1"><v>1e999</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "1e999"}},
		{"date", `<row r="1"><c r="A1" s="2"><v>46024</v></c></row>`, "A1", grid.Cell{Kind: grid.Date, Text: "2-Jan", Number: 46024, Extra: grid.Extra{Format: "d-mmm"}.Share()}},
		{"duration", `<row r="1"><c r="A1" s="5"><v>2.25</v></c></row>`, "A1", grid.Cell{Kind: grid.Date, Text: "54:00", Number: 2.25, Extra: grid.Extra{Format: "[h]:mm"}.Share()}},
		{"ISO date", `<row r="1"><c r="A1" t="d" s="2"><v>2026-01-02</v></c></row>`, "A1", grid.Cell{Kind: grid.Date, Text: "2-Jan", Number: 46024, Extra: grid.Extra{Format: "d-mmm"}.Share()}},
		{"ISO date and time, plain", `<row r="1"><c r="A1" t="d"><v>2026-01-02T06:00:00Z</v></c></row>`, "A1", grid.Cell{Kind: grid.Date, Text: "2026-01-02T06:00:00Z", Number: 46024.25}},
		{"ISO date of January 1900", `<row r="1"><c r="A1" t="d"><v>1900-01-01</v></c></row>`, "A1", grid.Cell{Kind: grid.Date, Text: "1900-01-01", Number: 1}},
		{"true", `<row r="1"><c r="A1" t="b"><v>1</v></c></row>`, "A1", grid.Cell{Kind: grid.Boolean, Text: "TRUE", Number: 1}},
		{"false", `<row r="1"><c r="A1" t="b"><v>0</v></c></row>`, "A1", grid.Cell{Kind: grid.Boolean, Text: "FALSE"}},
		{"neither", `<row r="1"><c r="A1" t="b"><v>yes</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "yes"}},
		{"error", `<row r="1"><c r="A1" t="e"><v>#DIV/0!</v></c></row>`, "A1", grid.Cell{Kind: grid.Error, Text: "#DIV/0!"}},
		{"unknown kind", `<row r="1"><c r="A1" t="x"><v>5</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "5"}},
		{"formula with a number", `<row r="1"><c r="A1"><f>B1*2</f><v>15</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "15", Number: 15, Formula: true}},
		{"formula with a text", `<row r="1"><c r="A1" t="str"><f>B1&amp;" W"</f><v>6 W</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "6 W", Formula: true}},
		{"formula with an empty text is empty", `<row r="1"><c r="A1" t="str"><f>""</f><v></v></c></row>`, "", grid.Cell{}},
		{"formula without a result", `<row r="1"><c r="A1" s="1"><f>B1*2</f></c></row>`, "A1", grid.Cell{Kind: grid.NoValue, Formula: true, Extra: grid.Extra{Format: `0" W"`}.Share()}},
		{"formula with an empty result", `<row r="1"><c r="A1"><f>B1*2</f><v/></c></row>`, "A1", grid.Cell{Kind: grid.NoValue, Formula: true}},
		{"formula with an empty result, written out", `<row r="1"><c r="A1"><f>B1*2</f><v></v></c></row>`, "A1", grid.Cell{Kind: grid.NoValue, Formula: true}},
		{"text formula never calculated", `<row r="1"><c r="A1" t="str"><f>B1</f></c></row>`, "A1", grid.Cell{Kind: grid.NoValue, Formula: true}},
		{"shared formula", `<row r="1"><c r="A1"><f t="shared" si="0"/><v>3</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "3", Number: 3, Formula: true}},
		{"only a format", `<row r="1"><c r="A1" s="1"/><c r="B1" s="1"></c></row>`, "", grid.Cell{}},
		{"inline text", `<row r="1"><c r="A1" t="inlineStr"><is><t>Pier &amp; café</t></is></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "Pier & café"}},
		{"inline text of several runs", `<row r="1"><c r="A1" t="inlineStr"><is><r><t>5</t></r><r><rPr><b/></rPr><t xml:space="preserve"> W</t></r><rPh sb="0" eb="1"><t>no</t></rPh></is></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "5 W", Extra: grid.Extra{Kept: "W"}.Share()}},
		{"inline text in the place of a value", `<row r="1"><c r="A1" t="inlineStr"><v>Pier</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "Pier"}},
		{"text in CDATA", `<row r="1"><c r="A1" t="str"><v><![CDATA[a<b&c]]></v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "a<b&c"}},
		{"comment inside a value", `<row r="1"><c r="A1"><v>1<!-- x -->2</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "12", Number: 12}},
		{"character number", `<row r="1"><c r="A1" t="str"><v>1.5 mm&#178; &#x3A9;</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "1.5 mm² Ω"}},
		{"no name", `<row><c><v>1</v></c><c t="s"><v>0</v></c></row>`, "B1", grid.Cell{Kind: grid.String, Text: "Zone"}},
		{"no name behind a named one", `<row r="4"><c r="C4"><v>1</v></c><c><v>2</v></c></row>`, "D4", grid.Cell{Kind: grid.Number, Text: "2", Number: 2}},
		{"row without number behind a numbered one", `<row r="4"><c r="A4"><v>1</v></c></row><row><c><v>2</v></c></row>`, "A5", grid.Cell{Kind: grid.Number, Text: "2", Number: 2}},
		{"a number for a name", `<row r="1"><c r="0"><v>1</v></c><c r="1"><v>2</v></c></row>`, "B1", grid.Cell{Kind: grid.Number, Text: "2", Number: 2}},
		{"lower case name", `<row r="1"><c r="b1"><v>1</v></c></row>`, "B1", grid.Cell{Kind: grid.Number, Text: "1", Number: 1}},
		{"last cell", `<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>`, "XFD1048576", grid.Cell{Kind: grid.Number, Text: "1", Number: 1}},
		{"empty style attribute", `<row r="1"><c r="A1" s="" t="s"><v>0</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "Zone"}},
		{"style that is not there", `<row r="1"><c r="A1" s="99"><v>5</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "5", Number: 5}},
		{"struck cell", `<row r="1"><c r="A1" s="3" t="s"><v>0</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "Zone", Struck: grid.WholeStruck}},
		{"struck number", `<row r="1"><c r="A1" s="3"><v>5</v></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "5", Number: 5, Struck: grid.WholeStruck}},
		{"tap struck out with a new one behind it", `<row r="1"><c r="A1" t="inlineStr"><is><r><rPr><strike/></rPr><t>5W</t></r><r><rPr><sz val="11"/></rPr><t xml:space="preserve"> 10W</t></r></is></c></row>`, "A1",
			grid.Cell{Kind: grid.String, Text: "5W 10W", Struck: grid.PartStruck, Extra: grid.Extra{Kept: " 10W"}.Share()}},
		{"struck cell with a run that is not", `<row r="1"><c r="A1" s="3" t="inlineStr"><is><r><t>5W</t></r><r><rPr><sz val="11"/></rPr><t xml:space="preserve"> 10W</t></r></is></c></row>`, "A1",
			grid.Cell{Kind: grid.String, Text: "5W 10W", Struck: grid.PartStruck, Extra: grid.Extra{Kept: " 10W"}.Share()}},
		{"all runs struck", `<row r="1"><c r="A1" t="inlineStr"><is><r><rPr><strike val="1"/></rPr><t>5W</t></r><r><t> </t></r></is></c></row>`, "A1",
			grid.Cell{Kind: grid.String, Text: "5W ", Struck: grid.WholeStruck}},
		{"one of the taps in bold", `<row r="1"><c r="A1" t="inlineStr"><is><r><t>5/</t></r><r><rPr><b/><sz val="11"/></rPr><t>10W</t></r><r><rPr><b val="0"/></rPr><t>/20W</t></r></is></c></row>`, "A1",
			grid.Cell{Kind: grid.String, Text: "5/10W/20W", Extra: grid.Extra{Kept: "10W"}.Share()}},
		{"all in bold", `<row r="1"><c r="A1" t="inlineStr"><is><r><rPr><b/></rPr><t>5/10</t></r><r><rPr><u val="single"/></rPr><t> W</t></r></is></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "5/10 W"}},
		{"runs not struck", `<row r="1"><c r="A1" t="inlineStr"><is><r><rPr><strike val="0"/></rPr><t>5W</t></r></is></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "5W"}},
		{"extension inside a cell", `<row r="1"><c r="A1"><v>5</v><extLst><ext><v>9</v></ext></extLst></c></row>`, "A1", grid.Cell{Kind: grid.Number, Text: "5", Number: 5}},
		{"attributes in another order and single quotes", `<row r='1'><c t='s' r='A1' ><v>0</v></c></row>`, "A1", grid.Cell{Kind: grid.String, Text: "Zone"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			book := mustRead(t, pack(t, workbookFiles(sheetOf(tt.xml))))
			if tt.at == "" {
				if n := cellCount(book); n != 0 {
					t.Fatalf("want no cell, got\n%s", dump(book))
				}
				return
			}
			if got := *cellAt(t, book, 0, tt.at).Cell; !got.Equal(tt.want) {
				t.Errorf("got  %+v\nwant %+v", got, tt.want)
			}
		})
	}
}

// The escapes of spreadsheets for what XML cannot hold, ECMA-376 part 1, 22.9.2.19.
func TestEscapes(t *testing.T) {
	for in, want := range map[string]string{
		"a_x000D_\nb":            "a\nb",
		"a_x000D__x000A_b":       "a\nb",
		"a_x000D_b":              "a\nb",
		"a\r\nb":                 "a\nb",
		"a\rb":                   "a\nb",
		"a&#13;&#10;b":           "a\nb",
		"a&#xD;b":                "a\nb",
		"a_x0009_b":              "a\tb",
		"a_x0007_b":              "ab",
		"_x005F_x0041_":          "_x0041_",
		"a_xD83D__xDD0A_b":       "a🔊b",
		"a_xD83D_b":              "a\uFFFDb",
		"model_xAB12_rev":        "model_xAB12_rev", // typed so by somebody
		"_x00":                   "_x00",
		"a_xZZZZ_":               "a_xZZZZ_",
		"no\u00a0break ½ \u200b": "no\u00a0break ½ \u200b",
	} {
		book := mustRead(t, pack(t, workbookFiles(sheetOf(`<row r="1"><c r="A1" t="str"><v>`+in+`</v></c><c r="B1" t="inlineStr"><is><t>`+in+`</t></is></c></row>`))))
		for _, at := range []string{"A1", "B1"} {
			if got := cellAt(t, book, 0, at).Text; got != want {
				t.Errorf("%q in %s reads %q, want %q", in, at, got, want)
			}
		}
	}
}

// Rows and cells that stand in the part in another order than in the sheet.
func TestOutOfOrder(t *testing.T) {
	book := mustRead(t, pack(t, workbookFiles(sheetOf(
		`<row r="3"><c r="B3"><v>32</v></c><c r="A3"><v>31</v></c></row>`+
			`<row r="1"><c r="A1"><v>11</v></c></row>`+
			`<row r="2"><c r="A2"><v>21</v></c><c r="C4"><v>43</v></c><c r="B2"><v>22</v></c></row>`+
			`<row r="1"><c r="B1"><v>12</v></c><c r="A1"><v>99</v></c></row>`))))
	for at, want := range map[string]float64{"A1": 99, "B1": 12, "A2": 21, "B2": 22, "A3": 31, "B3": 32, "C4": 43} {
		if got := cellAt(t, book, 0, at).Number; got != want {
			t.Errorf("%s is %v, want %v", at, got, want)
		}
	}
	if n := cellCount(book); n != 7 {
		t.Errorf("%d cells, want 7:\n%s", n, dump(book))
	}
	for _, words := range []string{"stores this cell twice", "among the cells of row 2"} {
		if !strings.Contains(dump(book), words) {
			t.Errorf("no note says %q:\n%s", words, dump(book))
		}
	}
}
