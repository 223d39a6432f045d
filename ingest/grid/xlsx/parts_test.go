package xlsx

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"hash/crc32"
	"strings"
	"testing"

	"github.com/klauspost/compress/flate"

	"lineaudit/ingest/grid"
)

// A file is one member of a workbook made for a test, a lie being what its
// directory entry says in place of the truth.
type file struct {
	name, text string
	lie        func(*zip.FileHeader)
}

const (
	head        = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>`
	mainSpace   = `http://schemas.openxmlformats.org/spreadsheetml/2006/main`
	relSpace    = `http://schemas.openxmlformats.org/officeDocument/2006/relationships`
	packSpace   = `http://schemas.openxmlformats.org/package/2006/relationships`
	strictSpace = `http://purl.oclc.org/ooxml/spreadsheetml/main`
	strictRels  = `http://purl.oclc.org/ooxml/officeDocument/relationships`
)

func rels(entries ...string) string {
	return head + `<Relationships xmlns="` + packSpace + `">` + strings.Join(entries, "") + `</Relationships>`
}

func relTo(id, kind, target string) string {
	return fmt.Sprintf(`<Relationship Id="%s" Type="%s/%s" Target="%s"/>`, id, relSpace, kind, target)
}

// workbookFiles are the parts of a workbook of one sheet, "Loads".
func workbookFiles(sheet string, more ...file) []file {
	files := []file{
		{name: "[Content_Types].xml", text: head + `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>`},
		{name: "_rels/.rels", text: rels(relTo("rId1", "officeDocument", "xl/workbook.xml"))},
		{name: "xl/workbook.xml", text: head + `<workbook xmlns="` + mainSpace + `" xmlns:r="` + relSpace + `"><sheets><sheet name="Loads" sheetId="1" r:id="rId1"/></sheets></workbook>`},
		{name: "xl/_rels/workbook.xml.rels", text: rels(relTo("rId1", "worksheet", "worksheets/sheet1.xml"), relTo("rId2", "sharedStrings", "sharedStrings.xml"), relTo("rId3", "styles", "styles.xml"))},
		{name: "xl/sharedStrings.xml", text: head + `<sst xmlns="` + mainSpace + `"><si><t>Zone</t></si><si><t xml:space="preserve"> Tap </t></si><si><t/></si></sst>`},
		{name: "xl/styles.xml", text: testStyles},
		{name: "xl/worksheets/sheet1.xml", text: sheet},
	}
	for _, m := range more {
		replaced := false
		for i := range files {
			if files[i].name == m.name {
				files[i], replaced = m, true
			}
		}
		if !replaced {
			files = append(files, m)
		}
	}
	return files
}

// testStyles numbers these formats: 0 General, 1 `0" W"`, 2 d-mmm, 3 struck,
// 4 0.0, 5 [h]:mm, 6 ;;; , 7 @" W".
const testStyles = head + `<styleSheet xmlns="` + mainSpace + `">
<numFmts count="5"><numFmt numFmtId="164" formatCode="0&quot; W&quot;"/><numFmt numFmtId="165" formatCode="0.0"/><numFmt numFmtId="166" formatCode="[h]:mm"/><numFmt numFmtId="167" formatCode=";;;"/><numFmt numFmtId="168" formatCode="@&quot; W&quot;"/></numFmts>
<fonts count="3"><font><sz val="11"/></font><font><strike/><sz val="11"/></font><font><strike val="0"/></font></fonts>
<cellStyleXfs count="1"><xf numFmtId="0" fontId="1"/></cellStyleXfs>
<cellXfs count="8"><xf numFmtId="0" fontId="0"/><xf numFmtId="164" fontId="2"/><xf numFmtId="16" fontId="0"/><xf numFmtId="0" fontId="1"><alignment wrapText="1"/></xf><xf numFmtId="165"/><xf numFmtId="166"/><xf numFmtId="167"/><xf numFmtId="168"/></cellXfs>
<dxfs><dxf><font><strike/></font><numFmt numFmtId="165" formatCode="d/m/yy"/></dxf></dxfs></styleSheet>`

// sheetOf wraps rows in a sheet.
func sheetOf(rows string) string {
	return head + `<worksheet xmlns="` + mainSpace + `" xmlns:r="` + relSpace + `"><sheetData>` + rows + `</sheetData></worksheet>`
}

// pack zips the files, with what they lie about.
func pack(tb testing.TB, files []file) []byte {
	tb.Helper()
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	for _, f := range files {
		var packed bytes.Buffer
		w, err := flate.NewWriter(&packed, 6)
		if err != nil {
			tb.Fatal(err)
		}
		if _, err := w.Write([]byte(f.text)); err != nil {
			tb.Fatal(err)
		}
		if err := w.Close(); err != nil {
			tb.Fatal(err)
		}
		h := &zip.FileHeader{Name: f.name, Method: zip.Deflate, CRC32: crc32.ChecksumIEEE([]byte(f.text)), UncompressedSize64: uint64(len(f.text)), CompressedSize64: uint64(packed.Len())}
		if f.lie != nil {
			f.lie(h)
		}
		m, err := z.CreateRaw(h)
		if err != nil {
			tb.Fatal(err)
		}
		if _, err := m.Write(packed.Bytes()); err != nil {
			tb.Fatal(err)
		}
	}
	if err := z.Close(); err != nil {
		tb.Fatal(err)
	}
	return out.Bytes()
}

// mustRead reads a workbook both ways and insists that they agree.
func mustRead(tb testing.TB, data []byte) *grid.Book {
	tb.Helper()
	book, err := readBothWays(tb, data, grid.DefaultLimits())
	if err != nil {
		tb.Fatal(err)
	}
	return book
}

func readBothWays(tb testing.TB, data []byte, lim grid.Limits) (*grid.Book, error) {
	tb.Helper()
	book, err := read("jobs/test.xlsx", data, nil, lim, true)
	slow, slowErr := read("jobs/test.xlsx", data, nil, lim, false)
	if fmt.Sprint(err) != fmt.Sprint(slowErr) {
		tb.Fatalf("the quick way says %v, the long way %v", err, slowErr)
	}
	if a, b := dump(book), dump(slow); a != b {
		tb.Fatalf("the quick way reads\n%s\nthe long way\n%s", a, b)
	}
	return book, err
}

// dump shows a book in full, one cell a line.
func dump(book *grid.Book) string {
	if book == nil {
		return ""
	}
	var b strings.Builder
	for _, s := range book.Sheets {
		fmt.Fprintf(&b, "sheet %q hidden %v merges %v columns %v filter %v\n", s.Name, s.Hidden, s.Merges, s.HiddenCols, s.Filtered)
		for _, r := range s.Rows {
			for c := range r.Cells() {
				fmt.Fprintf(&b, "%s %d kind %d %q %v %+v formula %v struck %d\n", grid.A1(r.Number, c.Col), r.Hidden, c.Kind, c.Text, c.Number, c.Extra.Get(), c.Formula, c.Struck)
			}
		}
	}
	for _, n := range book.Notes {
		fmt.Fprintf(&b, "note %+v\n", n)
	}
	return b.String()
}

// mustRefuse reads and wants an *grid.Unreadable whose reason holds the words.
func mustRefuse(tb testing.TB, data []byte, lim grid.Limits, words string) {
	tb.Helper()
	book, err := readBothWays(tb, data, lim)
	var u *grid.Unreadable
	switch {
	case err == nil:
		tb.Fatalf("it was read:\n%s", dump(book))
	case !errors.As(err, &u):
		tb.Fatalf("the error is %T %v, want an Unreadable", err, err)
	case !strings.Contains(u.Reason, words):
		tb.Fatalf("the reason is %q, want it to hold %q", u.Reason, words)
	case u.Advice == "":
		tb.Fatalf("%q comes without advice", u.Reason)
	}
}

// cellAt returns a cell that must be there.
func cellAt(tb testing.TB, book *grid.Book, sheet int, at string) grid.Placed {
	tb.Helper()
	row, col, err := grid.ParseA1(at)
	if err != nil {
		tb.Fatal(err)
	}
	for i := range book.Sheets[sheet].Rows {
		if r := &book.Sheets[sheet].Rows[i]; r.Number == row {
			if c := r.Cell(col); c != nil {
				return c.In(col)
			}
		}
	}
	tb.Fatalf("there is no cell %s in\n%s", at, dump(book))
	return grid.Placed{}
}

func cellCount(book *grid.Book) (n int) {
	for _, s := range book.Sheets {
		for _, r := range s.Rows {
			n += r.Len()
		}
	}
	return n
}
