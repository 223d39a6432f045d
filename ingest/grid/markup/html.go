package markup

import (
	"bytes"
	"errors"
	"io"
	"path"
	"slices"
	"strings"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/budget"
)

// maxTag is the longest tag, comment or piece of text held at once, in bytes.
// A picture within the page is one attribute.
const maxTag = 16 << 20

// A page reads an HTML page the way a spreadsheet program does: one sheet,
// the tables and the text around them below each other.
type page struct {
	tok    *html.Tokenizer
	sheet  *grid.Sheet
	maker  grid.Maker
	spent  *budget.Budget
	next   int          // number of the next row of the sheet
	open   []*htmlTable // the tables that the reading position is in
	block  []*htmlTable // the outermost of them and all within, in order
	found  bool         // there was a table
	frame  bool         // there was a frame set
	loose  cellText     // text outside of tables
	css    styleSheet
	deep   []element // open elements that bear on the style of text
	noting bool      // text goes to the note of the cell
	raw    rawText   // what the next text is, if not text of the page
	cut    bool      // ends inside an end tag behind all tables
}

// rawText says that a text is not part of what the page shows.
type rawText uint8

const (
	pageText rawText = iota
	styleText
	otherText // a script, the title
)

func readHTML(book *grid.Book, data []byte, spent *budget.Budget) error {
	text, remark, err := decodeHTML(data)
	if err != nil {
		return err
	}
	if remark != "" {
		book.Notes = append(book.Notes, grid.Note{Text: remark})
	}
	base := path.Base(book.File)
	p := &page{
		tok:   html.NewTokenizer(bytes.NewReader(text)),
		sheet: &grid.Sheet{Name: strings.TrimSuffix(base, path.Ext(base))},
		spent: spent, next: 1, css: styleSheet{},
	}
	p.tok.SetMaxBuf(maxTag)
	if err := p.readAll(); err != nil {
		return err
	}
	switch {
	case p.frame && !p.found:
		return &grid.Unreadable{
			Reason: "the file is only the frame of a saved web page; its sheets are in other files beside it",
			Advice: "open it in a spreadsheet program together with its folder and save it as .xlsx",
		}
	case !p.found:
		return noTable(book.File, "the page holds no table")
	}
	if p.cut {
		book.Notes = append(book.Notes, grid.Note{Sheet: p.sheet.Name, Text: "the page ends inside an end tag behind its tables; it may be cut short"})
	}
	if len(p.open) > 0 {
		if p.open[len(p.open)-1].inCell {
			return grid.Damaged("the page ends inside a table cell: it is cut short")
		}
		book.Notes = append(book.Notes, grid.Note{Sheet: p.sheet.Name, Text: "the page ends inside a table; it may be cut short"})
		for len(p.open) > 0 {
			if err := p.endTable(); err != nil {
				return err
			}
		}
	}
	if err := p.flushLoose(false); err != nil {
		return err
	}
	book.Sheets = []*grid.Sheet{p.sheet}
	return nil
}

// readAll reads the page token by token.
func (p *page) readAll() error {
	for {
		if err := p.spent.Step(); err != nil {
			return err
		}
		raw := p.raw
		p.raw = pageText
		switch p.tok.Next() {
		case html.ErrorToken:
			switch err := p.tok.Err(); {
			case errors.Is(err, io.EOF) && len(p.open) == 0 && p.found && bytes.HasPrefix(p.tok.Raw(), []byte("</")):
				p.cut = true // in the last end tag, behind all tables
				return nil
			case errors.Is(err, io.EOF) && len(p.tok.Raw()) > 0:
				return grid.Damaged("the page ends inside a tag: it is cut short")
			case errors.Is(err, io.EOF):
				return nil
			default:
				return grid.TooLarge("a tag or text of more than %d bytes", maxTag)
			}
		case html.TextToken:
			switch raw {
			case pageText:
				if err := p.text(p.tok.Text()); err != nil {
					return err
				}
			case styleText:
				p.css.read(string(p.tok.Text()))
			}
		case html.StartTagToken, html.SelfClosingTagToken:
			if err := p.startTag(p.tag()); err != nil {
				return err
			}
		case html.EndTagToken:
			name, _ := p.tok.TagName()
			if err := p.endTag(atom.Lookup(name), string(name)); err != nil {
				return err
			}
		}
	}
}

// A tag is a start tag with the attributes that bear on a table.
type tag struct {
	name atom.Atom
	raw  string
	attr map[string]string
}

// attributes are the names of those attributes.
var attributes = []string{
	"class", "style", "colspan", "rowspan", "span", "width",
	"sdval", "sdnum", "x:num", "x:bool", "x:err", "x:fmla",
}

// tag reads the start tag at hand.
func (p *page) tag() tag {
	name, more := p.tok.TagName()
	t := tag{name: atom.Lookup(name), raw: string(name)}
	for more {
		var key, val []byte
		key, val, more = p.tok.TagAttr()
		if !slices.Contains(attributes, string(key)) {
			continue
		}
		if t.attr == nil {
			t.attr = map[string]string{}
		}
		if _, twice := t.attr[string(key)]; !twice {
			t.attr[string(key)] = string(val)
		}
	}
	return t
}

// text takes in a piece of text.
func (p *page) text(b []byte) error {
	into := p.sink()
	into.collapse(b, p.struck())
	if limit := p.spent.Limits().MaxCellText; limit > 0 && into.text.Len() > limit {
		return grid.TooLarge("more than %d bytes of text in one cell", limit)
	}
	return nil
}

// sink returns what text goes into: the innermost open cell or its note, or
// the text outside of tables.
func (p *page) sink() *cellText {
	for i := len(p.open) - 1; i >= 0; i-- {
		switch {
		case !p.open[i].inCell:
		case p.noting:
			return &p.open[i].note
		default:
			return &p.open[i].text
		}
	}
	return &p.loose
}

// flushLoose makes a row of the text gathered outside of tables. Behind a
// paragraph or a heading a row stays empty, as in a spreadsheet program.
func (p *page) flushLoose(gap bool) error {
	var c grid.Cell
	ok := p.loose.fill(&c)
	p.loose = cellText{}
	if !ok {
		return nil
	}
	if err := p.addRow(p.maker.Row(p.next, []grid.Placed{c.In(1)})); err != nil {
		return err
	}
	p.next++
	if gap {
		p.next++
	}
	return nil
}

// addRow adds a row to the sheet.
func (p *page) addRow(r grid.Row) error {
	if r.Number > maxRow {
		return grid.TooLarge("a row with the number %d", r.Number)
	}
	if err := p.spent.Row(); err != nil {
		return err
	}
	for c := range r.Cells() {
		if err := p.spent.Cell(c.Cell); err != nil {
			return err
		}
	}
	p.sheet.Rows = append(p.sheet.Rows, r)
	return nil
}
