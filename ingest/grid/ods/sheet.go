package ods

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/xmltok"
)

// The largest sheet that spreadsheet programs know.
const (
	maxRow = 1 << 20
	maxCol = 1 << 14
)

// A sheetReader gathers one sheet.
type sheetReader struct {
	d       *document
	r       *xmltok.Reader
	sheet   *grid.Sheet
	columns []columnRun
	maker   grid.Maker
	row     int  // number of the next row
	folded  bool // something is folded away in an outline group
}

// A columnRun is a run of columns that are alike.
type columnRun struct {
	span  grid.Span
	style string // default style of its cells
}

// readSheet reads the table whose start was read last.
func (d *document) readSheet(r *xmltok.Reader, t xmltok.Token) error {
	s := &sheetReader{d: d, r: r, row: 1, sheet: &grid.Sheet{
		Name:   r.Attr(t, "table:name"),
		Hidden: d.styles.hidesSheet(r.Attr(t, "table:style-name")),
	}}
	d.book.Sheets = append(d.book.Sheets, s.sheet)
	if s.sheet.Name == "" {
		s.sheet.Name = "Sheet" + strconv.Itoa(len(d.book.Sheets))
	}
	d.nested = false
	if err := s.readGroup(outline{}); err != nil {
		return err
	}
	if d.nested {
		d.book.Notes = append(d.book.Notes, grid.Note{Sheet: s.sheet.Name, Text: "a table within a cell was left out"})
	}
	if s.folded {
		d.book.Notes = append(d.book.Notes, grid.Note{Sheet: s.sheet.Name, Text: "rows or columns are folded away in an outline group; they were read as if shown"})
	}
	return nil
}

// outline says whether rows or columns are in an outline group, and whether
// that is folded away.
type outline struct{ grouped, folded bool }

// readGroup reads the rows and columns of a table, or of a group of them.
func (s *sheetReader) readGroup(in outline) error {
	return s.r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "table:table-column":
			return s.readColumn(t, in)
		case "table:table-row":
			return s.readRow(t, in)
		case "table:table-row-group", "table:table-column-group":
			return s.readGroup(outline{true, in.folded || s.r.Attr(t, "table:display") == "false"})
		case "table:table-columns", "table:table-header-columns",
			"table:table-rows", "table:table-header-rows":
			return s.readGroup(in)
		}
		return s.r.Skip()
	}, nil)
}

// repeated returns how often an element stands, by an attribute, at most
// a little above any sheet's size. It places what follows: an attribute that is
// no count is an error, and so is one that is too long for a number.
func repeated(r *xmltok.Reader, t xmltok.Token, attr string) (int, error) {
	text := strings.TrimSpace(r.Attr(t, attr))
	if text == "" {
		return 1, nil
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 0 {
		return 0, grid.Damaged("%s is %q", attr, text)
	}
	return min(max(n, 1), maxRow+1), nil
}

// readColumn reads a run of columns.
func (s *sheetReader) readColumn(t xmltok.Token, in outline) error {
	first := 1
	if n := len(s.columns); n > 0 {
		first = s.columns[n-1].span.Last + 1
	}
	times, err := repeated(s.r, t, "table:number-columns-repeated")
	if err != nil {
		return err
	}
	last := min(first+times-1, maxRow)
	run := columnRun{grid.Span{First: first, Last: last}, s.r.Attr(t, "table:default-cell-style-name")}
	if first > last {
		return s.r.Skip()
	}
	s.columns = append(s.columns, run)
	switch v := s.r.Attr(t, "table:visibility"); {
	case !in.folded && v != "collapse" && v != "filter":
	case in.grouped:
		s.folded = true
	default:
		h := &s.sheet.HiddenCols
		if n := len(*h); n > 0 && (*h)[n-1].Last+1 == first {
			(*h)[n-1].Last = last
		} else {
			*h = append(*h, run.span)
		}
	}
	if err := s.d.spent.Step(); err != nil {
		return err
	}
	return s.r.Skip()
}

// columnStyle returns the default style of a column's cells.
func (s *sheetReader) columnStyle(col int) string {
	i, ok := slices.BinarySearchFunc(s.columns, col, func(c columnRun, col int) int {
		switch {
		case c.span.Last < col:
			return -1
		case c.span.First > col:
			return 1
		}
		return 0
	})
	if !ok {
		return ""
	}
	return s.columns[i].style
}

// A rowReader gathers one row, which may stand for several.
type rowReader struct {
	*sheetReader
	style  string // default style of its cells, "" for the columns'
	cells  []grid.Placed
	merges []grid.Range // by rows relative to this one
	col    int          // number of the next column
}

// readRow reads the row whose start was read last.
func (s *sheetReader) readRow(t xmltok.Token, in outline) error {
	row := rowReader{sheetReader: s, style: s.r.Attr(t, "table:default-cell-style-name"), col: 1}
	times, err := repeated(s.r, t, "table:number-rows-repeated")
	if err != nil {
		return err
	}
	hidden := grid.Shown
	switch v := s.r.Attr(t, "table:visibility"); {
	case v == "filter":
		hidden = grid.HiddenByFilter
	case in.folded, in.grouped && v == "collapse":
		hidden, s.folded = grid.HiddenByOutline, true
	case v == "collapse":
		hidden = grid.HiddenByHand
	}
	err = s.r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "table:table-cell":
			return row.readCell(t, false)
		case "table:covered-table-cell":
			return row.readCell(t, true)
		}
		return s.r.Skip()
	}, nil)
	if err != nil {
		return err
	}
	if err := row.place(times, hidden); err != nil {
		return err
	}
	s.row = min(s.row+times, 2*maxRow)
	return s.d.spent.Step()
}

// readCell reads a cell, which may stand for several beside each other.
func (row *rowReader) readCell(t xmltok.Token, covered bool) error {
	r := row.r
	style := r.Attr(t, "table:style-name")
	if style == "" {
		style = row.style
	}
	own := style
	if own == "" {
		own = row.columnStyle(row.col)
	}
	times, err := repeated(r, t, "table:number-columns-repeated")
	wide, err2 := repeated(r, t, "table:number-columns-spanned")
	high, err3 := repeated(r, t, "table:number-rows-spanned")
	if err := cmp.Or(err, err2, err3); err != nil {
		return err
	}
	c, ok, err := row.d.readCell(r, t, own)
	if err != nil {
		return err
	}
	if !covered && wide*high > 1 {
		row.merges = append(row.merges, grid.Range{Row1: 0, Col1: row.col, Row2: high - 1, Col2: row.col + wide - 1})
	}
	if ok {
		if last := row.col + times - 1; last > maxCol {
			return grid.TooLarge("a cell in column %d of row %d", last, row.sheetReader.row)
		}
		shared := row.maker.Of(c)
		for i := range times {
			if err := row.d.spent.Cell(shared); err != nil {
				return err
			}
			row.cells = append(row.cells, grid.Placed{Cell: shared, Col: row.col + i})
		}
	}
	row.col = min(row.col+times, maxRow)
	return nil
}

// place adds the row to the sheet, as often as it stands. A row that holds
// nothing leaves only its merged areas, and none where it is repeated.
func (row *rowReader) place(times int, hidden grid.Hiding) error {
	s := row.sheetReader
	if len(row.cells) == 0 && times > 1 {
		return nil
	}
	if len(row.cells) > 0 && s.row+times-1 > maxRow {
		return grid.TooLarge("a row with the number %d", s.row+times-1)
	}
	for i := range times {
		number := s.row + i
		for _, m := range row.merges {
			if err := s.d.spent.Merge(); err != nil {
				return err
			}
			m.Row1, m.Row2 = number, number+m.Row2
			s.sheet.Merges = append(s.sheet.Merges, m)
		}
		if len(row.cells) == 0 {
			return nil
		}
		if err := s.d.spent.Row(); err != nil {
			return err
		}
		if i > 0 { // the first time they were counted as they were read
			for _, c := range row.cells {
				if err := s.d.spent.Cell(c.Cell); err != nil {
					return err
				}
			}
		}
		placed := s.maker.Row(number, row.cells)
		placed.Hidden = hidden
		s.sheet.Rows = append(s.sheet.Rows, placed)
	}
	return nil
}
