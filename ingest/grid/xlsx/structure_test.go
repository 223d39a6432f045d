package xlsx

import (
	"archive/zip"
	"errors"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"golang.org/x/text/encoding/unicode"

	"lineaudit/ingest/grid"
)

const plainRows = `<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" s="1"><v>5</v></c></row><row r="2"><c r="A2" t="inlineStr"><is><t>Pier</t></is></c><c r="B2" s="2"><v>46024</v></c></row>`

// wantPlain checks the cells of plainRows.
func wantPlain(t *testing.T, book *grid.Book) {
	t.Helper()
	for at, want := range map[string]string{"A1": "Zone", "B1": "5 W", "A2": "Pier", "B2": "2-Jan"} {
		if got := cellAt(t, book, 0, at).Text; got != want {
			t.Errorf("%s is %q, want %q", at, got, want)
		}
	}
}

// The same workbook in the dialects and spellings that programs write.
func TestSameWorkbookOtherwiseWritten(t *testing.T) {
	base := workbookFiles(sheetOf(plainRows))
	each := func(change func(f file) file) []file {
		out := make([]file, len(base))
		for i, f := range base {
			out[i] = change(f)
		}
		return out
	}
	prefixed := func(text, space string) string { // every element of the main namespace gets the prefix x
		var b strings.Builder
		for i := 0; i < len(text); i++ {
			b.WriteByte(text[i])
			if text[i] != '<' || text[i+1] == '?' {
				continue
			}
			if text[i+1] == '/' {
				b.WriteString("/x:")
				i++
			} else {
				b.WriteString("x:")
			}
		}
		return strings.Replace(b.String(), `xmlns="`+space, `xmlns:x="`+space, 1)
	}
	for name, files := range map[string][]file{
		"as it is": base,
		"Strict": each(func(f file) file {
			f.text = strings.NewReplacer(mainSpace, strictSpace, relSpace, strictRels).Replace(f.text)
			return f
		}),
		"prefixed names": each(func(f file) file {
			if strings.HasPrefix(f.name, "xl/") && strings.HasSuffix(f.name, ".xml") {
				f.text = prefixed(f.text, mainSpace)
			} else if strings.HasSuffix(f.name, ".rels") {
				f.text = prefixed(f.text, packSpace)
			}
			return f
		}),
		"backslashes in part names":  each(func(f file) file { f.name = strings.ReplaceAll(f.name, "/", `\`); return f }),
		"part names in another case": each(func(f file) file { f.name = strings.ToUpper(f.name); return f }),
		"slash in front of names":    each(func(f file) file { f.name = "/" + f.name; return f }),
		"absolute targets": each(func(f file) file {
			if f.name == "xl/_rels/workbook.xml.rels" {
				f.text = strings.ReplaceAll(f.text, `Target="`, `Target="/xl/`)
			}
			return f
		}),
		"parts elsewhere": each(func(f file) file {
			f.name = strings.NewReplacer("xl/", "doc/", "sheet1.xml", "page.bin.xml", "sharedStrings", "texts").Replace(f.name)
			if strings.HasSuffix(f.name, ".rels") {
				f.text = strings.NewReplacer("xl/", "doc/", "sheet1.xml", "page.bin.xml", "sharedStrings.xml", "texts.xml").Replace(f.text)
			}
			return f
		}),
		"byte order marks":       each(func(f file) file { f.text = "\ufeff" + f.text; return f }),
		"no XML declaration":     each(func(f file) file { f.text = strings.TrimPrefix(f.text, head); return f }),
		"line ends between tags": each(func(f file) file { f.text = strings.ReplaceAll(f.text, "><", ">\r\n <"); return f }),
		"comments and instructions": each(func(f file) file {
			f.text = strings.ReplaceAll(f.text, "<sheetData>", "<!-- <row> --><?x <row?><sheetData><!-- a > b -->")
			return f
		}),
		"UTF-16": each(func(f file) file {
			text, err := unicode.UTF16(unicode.LittleEndian, unicode.UseBOM).NewEncoder().String(strings.Replace(f.text, "UTF-8", "UTF-16", 1))
			if err != nil {
				t.Fatal(err)
			}
			f.text = text
			return f
		}),
		"windows-1252": each(func(f file) file { f.text = strings.Replace(f.text, "UTF-8", "windows-1252", 1); return f }),
	} {
		t.Run(name, func(t *testing.T) { wantPlain(t, mustRead(t, pack(t, files))) })
	}
}

func TestWindows1252Part(t *testing.T) {
	text := strings.Replace(sheetOf(`<row r="1"><c r="A1" t="str"><v>1,5 mm`+"\xb2"+`</v></c></row>`), "UTF-8", "windows-1252", 1)
	book := mustRead(t, pack(t, workbookFiles(text)))
	if got := cellAt(t, book, 0, "A1").Text; got != "1,5 mm²" {
		t.Errorf("reads %q", got)
	}
}

// Junk before a zip, which self-extracting archives have, does not matter.
func TestJunkInFront(t *testing.T) {
	data := pack(t, workbookFiles(sheetOf(plainRows)))
	wantPlain(t, mustRead(t, append([]byte("MZ junk"), data...)))
}

func TestSheets(t *testing.T) {
	workbook := head + `<workbook xmlns="` + mainSpace + `" xmlns:q="` + relSpace + `"><workbookPr date1904="1"/><sheets>
<sheet name="Plan &amp; list" sheetId="1" q:id="r1"/><sheet name="Old" sheetId="2" state="hidden" q:id="r2"/><sheet name="Secret" sheetId="5" state="veryHidden" q:id="r3"/>
<sheet name="Chart" sheetId="6" q:id="r4"/><sheet name="Dialog" sheetId="7" q:id="r5"/><sheet name="Module1" sheetId="8" q:id=""/></sheets></workbook>`
	day := sheetOf(`<row r="1"><c r="A1" s="2"><v>44562</v></c><c r="B1" s="5"><v>1.5</v></c><c r="C1" t="d" s="2"><v>2026-01-02</v></c></row>`)
	files := workbookFiles(day,
		file{name: "xl/workbook.xml", text: workbook},
		file{name: "xl/_rels/workbook.xml.rels", text: rels(relTo("r1", "worksheet", "worksheets/sheet1.xml"), relTo("r2", "worksheet", "worksheets/sheet2.xml"), relTo("r3", "worksheet", "worksheets/sheet3.xml"),
			relTo("r4", "chartsheet", "chartsheets/sheet1.xml"), relTo("r5", "dialogsheet", "dialogsheets/sheet1.xml"), relTo("s", "styles", "styles.xml"))},
		file{name: "xl/worksheets/sheet2.xml", text: sheetOf("")},
		file{name: "xl/worksheets/sheet3.xml", text: head + `<worksheet xmlns="` + mainSpace + `"><sheetData/></worksheet>`},
		file{name: "xl/vbaProject.bin", text: "x"})
	book := mustRead(t, pack(t, files))
	if book.Format != grid.XLSM {
		t.Errorf("format %q, want %q: it holds macros", book.Format, grid.XLSM)
	}
	var got []string
	for _, s := range book.Sheets {
		got = append(got, fmt.Sprint(s.Name, " ", s.Hidden))
	}
	if want := []string{"Plan & list false", "Old true", "Secret true"}; !reflect.DeepEqual(got, want) {
		t.Errorf("sheets %v, want %v", got, want)
	}
	if len(book.Notes) != 3 {
		t.Errorf("notes %v, want one for each of the three sheets without cells", book.Notes)
	}
	// 44562 days from 1 January 1904 is 2 January 2026 (robustness of date1904 was checked with LibreOffice 7.4).
	if c := cellAt(t, book, 0, "A1"); c.Number != 46024 || c.Text != "2-Jan" {
		t.Errorf("a date of the 1904 system reads %v %q, want 46024 2-Jan", c.Number, c.Text)
	}
	if c := cellAt(t, book, 0, "B1"); c.Number != 1.5 || c.Text != "36:00" {
		t.Errorf("a duration reads %v %q, want 1.5 36:00", c.Number, c.Text)
	}
	if c := cellAt(t, book, 0, "C1"); c.Number != 46024 {
		t.Errorf("a written date reads %v, want 46024", c.Number)
	}
}

func TestColumnsAndMerges(t *testing.T) {
	sheet := head + `<worksheet xmlns="` + mainSpace + `"><cols><col min="2" max="3" width="9" hidden="1"/><col min="5" max="5" width="0" customWidth="1"/><col min="7" max="8" width="9"/>
<col min="9" max="9" hidden="true" outlineLevel="1"/><col min="20" max="16384" hidden="1"/></cols><sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>
<mergeCells count="3"><mergeCell ref="A1:C1"/><mergeCell ref="$D$9:B2"/><mergeCell ref="B:D"/></mergeCells></worksheet>`
	book := mustRead(t, pack(t, workbookFiles(sheet)))
	s := book.Sheets[0]
	if want := []grid.Span{{First: 2, Last: 3}, {First: 5, Last: 5}, {First: 20, Last: 16384}}; !reflect.DeepEqual(s.HiddenCols, want) {
		t.Errorf("hidden columns %v, want %v", s.HiddenCols, want)
	}
	if want := []grid.Range{{Row1: 1, Col1: 1, Row2: 1, Col2: 3}, {Row1: 2, Col1: 2, Row2: 9, Col2: 4}, {Row1: 1, Col1: 2, Row2: 1048576, Col2: 4}}; !reflect.DeepEqual(s.Merges, want) {
		t.Errorf("merges %v, want %v", s.Merges, want)
	}
}

// Who hid a row: a hand, a filter of the sheet or of a table, or a folded group.
func TestHiddenRows(t *testing.T) {
	var rows strings.Builder
	for i, attrs := range []string{"", `hidden="1"`, "", `hidden="true"`, `hidden="1" outlineLevel="1"`, `ht="0" customHeight="1"`, `outlineLevel="1"`, ""} {
		rows.WriteString(fmt.Sprintf(`<row r="%d" %s><c r="A%d"><v>%d</v></c></row>`, i+1, attrs, i+1, i+1))
	}
	const none, hand, filter, fold = grid.Shown, grid.HiddenByHand, grid.HiddenByFilter, grid.HiddenByOutline
	sheet := func(before, after string) string {
		return head + `<worksheet xmlns="` + mainSpace + `">` + before + `<sheetData>` + rows.String() + `</sheetData>` + after + `</worksheet>`
	}
	table := func(filters string) []file {
		return []file{
			{name: "xl/worksheets/_rels/sheet1.xml.rels", text: rels(relTo("rId1", "table", "../tables/table1.xml"))},
			{name: "xl/tables/table1.xml", text: head + `<table xmlns="` + mainSpace + `" id="1" ref="A3:C8"><autoFilter ref="A3:C8">` + filters + `</autoFilter></table>`},
		}
	}
	const criteria = `<filterColumn colId="0"><filters><filter val="1"/></filters></filterColumn>`
	for _, tt := range []struct {
		name   string
		sheet  string
		more   []file
		want   []grid.Hiding
		filter grid.Range
	}{
		{"no filter", sheet("", ""), nil, []grid.Hiding{none, hand, none, hand, fold, hand, none, none}, grid.Range{}},
		{"a filter without criteria", sheet("", `<autoFilter ref="A1:C8"/>`), nil, []grid.Hiding{none, hand, none, hand, fold, hand, none, none}, grid.Range{Row1: 1, Col1: 1, Row2: 8, Col2: 3}},
		{"a filter with a hidden button only", sheet("", `<autoFilter ref="A1:C8"><filterColumn colId="0" hiddenButton="1"/></autoFilter>`), nil, []grid.Hiding{none, hand, none, hand, fold, hand, none, none}, grid.Range{Row1: 1, Col1: 1, Row2: 8, Col2: 3}},
		{"an active filter, row 2 its header", sheet("", `<autoFilter ref="A2:C5">`+criteria+`</autoFilter>`), nil, []grid.Hiding{none, hand, none, filter, filter, hand, none, none}, grid.Range{Row1: 2, Col1: 1, Row2: 5, Col2: 3}},
		{"an active filter of a table", sheet("", ""), table(criteria), []grid.Hiding{none, hand, none, filter, filter, filter, none, none}, grid.Range{Row1: 3, Col1: 1, Row2: 8, Col2: 3}},
		{"a table without criteria", sheet("", ""), table(""), []grid.Hiding{none, hand, none, hand, fold, hand, none, none}, grid.Range{Row1: 3, Col1: 1, Row2: 8, Col2: 3}},
		{"an advanced filter", sheet(`<sheetPr filterMode="1"/>`, ""), []file{{name: "xl/workbook.xml", text: head + `<workbook xmlns="` + mainSpace + `" xmlns:r="` + relSpace + `"><sheets><sheet name="Loads" sheetId="1" r:id="rId1"/></sheets>
<definedNames><definedName name="_xlnm._FilterDatabase" localSheetId="0" hidden="1">'Lo!ads'!$A$1:$B$4</definedName></definedNames></workbook>`}},
			[]grid.Hiding{none, filter, none, filter, fold, hand, none, none}, grid.Range{Row1: 1, Col1: 1, Row2: 4, Col2: 2}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			book := mustRead(t, pack(t, workbookFiles(tt.sheet, tt.more...)))
			for i, r := range book.Sheets[0].Rows {
				if r.Hidden != tt.want[i] {
					t.Errorf("row %d is hidden %d, want %d", r.Number, r.Hidden, tt.want[i])
				}
			}
			if book.Sheets[0].Filtered != tt.filter {
				t.Errorf("filter %v, want %v", book.Sheets[0].Filtered, tt.filter)
			}
		})
	}
}

func TestNotes(t *testing.T) {
	comments := head + `<comments xmlns="` + mainSpace + `"><authors><author>A</author></authors><commentList>
<comment ref="A1" authorId="0"><text><r><rPr><b/></rPr><t>Foreman:</t></r><r><t xml:space="preserve">
moved &amp; re-tapped_x000D_</t></r></text></comment>
<comment ref="C1" authorId="0"><text><t>on an empty cell</t></text></comment>
<comment ref="B7" authorId="0"><text><t>on an empty row</t></text></comment><comment ref="A7" authorId="0"><text><t>left of it</t></text></comment>
<comment ref="A2" authorId="0"><text><t>[Threaded comment] for old programs</t></text></comment><comment ref="D9" authorId="0"><text/></comment></commentList></comments>`
	threads := head + `<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="A2" id="1"><text>which tap?</text></threadedComment>
<threadedComment ref="A2" id="2" parentId="1"><text>5 W</text></threadedComment></ThreadedComments>`
	book := mustRead(t, pack(t, workbookFiles(sheetOf(plainRows),
		file{name: "xl/worksheets/_rels/sheet1.xml.rels", text: rels(relTo("a", "comments", "../comments1.xml"),
			`<Relationship Id="b" Type="http://schemas.microsoft.com/office/2017/10/relationships/threadedComment" Target="../threadedComments/t1.xml"/>`)},
		file{name: "xl/comments1.xml", text: comments}, file{name: "xl/threadedComments/t1.xml", text: threads})))
	wantPlain(t, book)
	for at, want := range map[string]string{"A1": "Foreman:\nmoved & re-tapped", "C1": "on an empty cell", "B7": "on an empty row", "A7": "left of it", "A2": "which tap?\n5 W", "B1": ""} {
		c := cellAt(t, book, 0, at)
		if got := c.Note(); got != want {
			t.Errorf("the note on %s is %q, want %q", at, got, want)
		}
	}
	if n := cellCount(book); n != 7 {
		t.Errorf("%d cells, want 7:\n%s", n, dump(book))
	}
	if last := book.Sheets[0].Rows[len(book.Sheets[0].Rows)-1]; last.Number != 7 || last.At(0).Col != 1 {
		t.Errorf("rows or cells are out of order:\n%s", dump(book))
	}
}

// A workbook without the parts that it may lack.
func TestBareWorkbook(t *testing.T) {
	var files []file
	for _, f := range workbookFiles(sheetOf(`<row r="1"><c r="A1" t="inlineStr"><is><t>Pier</t></is></c><c r="B1" s="1"><v>5</v></c></row>`)) {
		switch f.name {
		case "xl/styles.xml", "xl/sharedStrings.xml", "_rels/.rels", "[Content_Types].xml":
			continue
		case "xl/_rels/workbook.xml.rels":
			f.text = rels(relTo("rId1", "worksheet", "worksheets/sheet1.xml"))
		}
		files = append(files, f)
	}
	book := mustRead(t, pack(t, files))
	if c := cellAt(t, book, 0, "B1"); c.Number != 5 || c.Text != "5" {
		t.Errorf("B1 is %+v", c)
	}
}

// A part may be stored as it is, and its size follow it; programs that write
// to a pipe do so.
func TestStoredAndStreamed(t *testing.T) {
	var out strings.Builder
	z := zip.NewWriter(&out)
	for i, f := range workbookFiles(sheetOf(plainRows)) {
		w, err := z.CreateHeader(&zip.FileHeader{Name: f.name, Method: []uint16{zip.Store, zip.Deflate}[i%2]})
		if err != nil {
			t.Fatal(err)
		}
		if _, err := w.Write([]byte(f.text)); err != nil {
			t.Fatal(err)
		}
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	wantPlain(t, mustRead(t, []byte(out.String())))
}

// A part in a form that is not known is a reason and what to do, and reaches
// no other reader.
func TestOddPart(t *testing.T) {
	for name, files := range map[string][]file{
		"texts":      workbookFiles(sheetOf(plainRows), file{name: "xl/sharedStrings.xml", text: head + `<SST xmlns="` + mainSpace + `"><si><t>Zone</t></si></SST>`}),
		"sheet":      workbookFiles(head + `<sheet/>`),
		"sheet list": workbookFiles(sheetOf(plainRows), file{name: "xl/workbook.xml", text: head + `<book/>`}),
	} {
		_, err := Read("x.xlsx", pack(t, files), grid.DefaultLimits())
		var u *grid.Unreadable
		if !errors.As(err, &u) || !strings.Contains(u.Reason, "no spreadsheet program writes") || u.Advice == "" {
			t.Errorf("%s: %v", name, err)
		}
	}
}
