package markup

import (
	"bytes"
	"errors"
	"fmt"
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/budget"
	"lineaudit/ingest/grid/xmltok"
)

// spaces gives the short prefixes of the name spaces of SpreadsheetML 2003.
var spaces = map[string]string{
	"urn:schemas-microsoft-com:office:spreadsheet": "ss",
	"urn:schemas-microsoft-com:office:excel":       "x",
	"http://www.w3.org/TR/REC-html40":              "html",
}

// The largest sheet that spreadsheet programs know.
const (
	maxRow = 1 << 20
	maxCol = 1 << 14
)

// An xmlBook reads a SpreadsheetML workbook.
type xmlBook struct {
	r        *xmltok.Reader
	book     *grid.Book
	spent    *budget.Budget
	styles   map[string]cellStyle
	date1904 bool
}

func readXML(book *grid.Book, data []byte, spent *budget.Budget) error {
	data, err := xmltok.Decode(data)
	if err != nil {
		return err
	}
	data = bytes.TrimLeft(data, " \t\r\n") // an exporter's blank line before the declaration
	if clean, n := withoutControls(data); n > 0 {
		data = clean
		book.Notes = append(book.Notes, grid.Note{Text: fmt.Sprintf("the file holds %d control characters, such as page breaks, which XML does not allow; they were read as spaces", n)})
	}
	r, err := xmltok.New(data, spaces, spent.Limits())
	if err != nil {
		return err
	}
	b := &xmlBook{r: r, book: book, spent: spent, styles: map[string]cellStyle{}}
	root, err := r.Root()
	if err != nil {
		return err
	}
	if root.Name != "ss:Workbook" {
		return noTable(book.File, "the XML file is not a spreadsheet")
	}
	if err := r.Children(b.readPart, nil); err != nil {
		return err
	}
	if len(book.Sheets) == 0 {
		return grid.Damaged("the workbook holds no sheet")
	}
	return r.Finish()
}

// withoutControls returns a file with spaces for its control characters, and how
// many there were: Excel writes those of a cell as they are, though they are no
// XML. A zero byte is never one of them.
func withoutControls(data []byte) ([]byte, int) {
	control := func(c byte) bool { return c < ' ' && c != 0 && c != '\t' && c != '\n' && c != '\r' }
	n := 0
	for _, c := range data {
		if control(c) {
			n++
		}
	}
	if n == 0 {
		return data, 0
	}
	clean := bytes.Clone(data)
	for i, c := range clean {
		if control(c) {
			clean[i] = ' '
		}
	}
	return clean, n
}

// readPart reads a child of the workbook.
func (b *xmlBook) readPart(t xmltok.Token) error {
	switch t.Name {
	case "ss:Styles":
		return b.r.Children(b.readStyle, nil)
	case "x:ExcelWorkbook":
		return b.r.Children(func(t xmltok.Token) error {
			b.date1904 = b.date1904 || t.Name == "x:Date1904"
			return b.r.Skip()
		}, nil)
	case "ss:Worksheet":
		if err := b.spent.Sheet(); err != nil {
			return err
		}
		name := b.attr(t, "Name")
		err := b.readSheet(name)
		if u, ok := errors.AsType[*grid.Unreadable](err); ok {
			v := *u
			v.Reason += ` (in sheet "` + name + `")`
			return &v
		}
		return err
	}
	return b.r.Skip()
}

// attr returns an attribute of the ss space; some exporters leave the prefix out.
func (b *xmlBook) attr(t xmltok.Token, name string) string {
	if v, ok := b.r.Lookup(t, "ss:"+name); ok {
		return v
	}
	return b.r.Attr(t, name)
}

// count returns an attribute that counts or numbers, at most limit; 0 where
// it is not there.
func (b *xmlBook) count(t xmltok.Token, name string, limit int) (int, error) {
	s := b.attr(t, name)
	if s == "" {
		return 0, nil
	}
	n, err := strconv.Atoi(strings.TrimSpace(s))
	if err != nil || n < 0 {
		return 0, grid.Damaged("%s is %q where a number should stand", name, s)
	}
	if n > limit {
		return 0, grid.TooLarge("%s is %d, the limit is %d", name, n, limit)
	}
	return n, nil
}

// text reads the text of an element that holds nothing else.
func (b *xmlBook) text() (string, error) {
	var out []byte
	err := b.r.Children(func(xmltok.Token) error { return b.r.Skip() }, func(t []byte) error {
		out = append(out, t...)
		return b.tooLong(len(out))
	})
	return string(out), err
}

// tooLong returns an error when a cell's text passes its limit.
func (b *xmlBook) tooLong(n int) error {
	if limit := b.spent.Limits().MaxCellText; limit > 0 && n > limit {
		return grid.TooLarge("more than %d bytes of text in one cell", limit)
	}
	return nil
}
