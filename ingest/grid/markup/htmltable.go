package markup

import (
	"strconv"
	"strings"

	"golang.org/x/net/html/atom"

	"lineaudit/ingest/grid"
)

// Spans of the HTML standard, 4.9.11.
const (
	maxColSpan = 1000
	maxRowSpan = 65534
)

// An htmlTable is a table that is being read. Rows and columns count from 1
// within it.
type htmlTable struct {
	row    int // number of the row being read, 0 before the first
	col    int // number of the next column
	inRow  bool
	inCell bool
	hidden bool  // the row is hidden
	taken  []int // by column from 1: the last row that a cell from above takes up
	rows   []htmlRow
	merges []grid.Range
	cell   grid.Cell // what the open cell holds
	at     int       // its column
	struck bool      // its style strikes it through
	text   cellText  // its text
	note   cellText  // its note
	cols   int       // columns that col tags told of so far
	spans  []grid.Span
	depth  int // open elements around the table
	within int // open elements around the open cell
}

// An htmlRow is a row of a table and its cells.
type htmlRow struct {
	number int
	hidden bool
	cells  []grid.Placed
}

// startTable opens a table, in a cell of another or not.
func (p *page) startTable() error {
	if limit := p.spent.Limits().MaxDepth; limit > 0 && len(p.open) >= limit {
		return grid.TooLarge("tables nested more than %d deep", limit)
	}
	if len(p.open) == 0 {
		if err := p.flushLoose(false); err != nil {
			return err
		}
	}
	p.found = true
	t := &htmlTable{depth: len(p.deep)}
	p.open = append(p.open, t)
	p.block = append(p.block, t)
	return nil
}

// endTable closes the innermost table. When it is the outermost too, it and
// the tables within are laid below each other on the sheet.
func (p *page) endTable() error {
	if err := p.endRow(); err != nil {
		return err
	}
	t := p.top()
	p.deep = p.deep[:min(t.depth, len(p.deep))]
	p.open = p.open[:len(p.open)-1]
	if n := len(p.block); p.block[n-1] == t && len(t.rows) == 0 {
		p.block = p.block[:n-1] // nothing to lay
	}
	if len(p.open) > 0 {
		return nil
	}
	if err := p.flushLoose(false); err != nil { // text that stood between cells
		return err
	}
	for _, t := range p.block {
		if err := p.lay(t); err != nil {
			return err
		}
	}
	p.block = nil
	return nil
}

// lay puts a finished table on the sheet, below what is there.
func (p *page) lay(t *htmlTable) error {
	above := p.next - 1
	for _, r := range t.rows {
		row := p.maker.Row(above+r.number, r.cells)
		if r.hidden {
			row.Hidden = grid.HiddenByHand
		}
		if err := p.addRow(row); err != nil {
			return err
		}
	}
	for _, m := range t.merges {
		m.Row2 = min(m.Row2, t.row) // a span ends with its table
		if m.Row1 == m.Row2 && m.Col1 == m.Col2 {
			continue
		}
		m.Row1, m.Row2 = m.Row1+above, m.Row2+above
		p.sheet.Merges = append(p.sheet.Merges, m)
	}
	if above == 0 { // columns are hidden for the whole sheet
		p.sheet.HiddenCols = t.spans
	}
	p.next += t.row
	return nil
}

// top returns the innermost open table, or nil.
func (p *page) top() *htmlTable {
	if len(p.open) == 0 {
		return nil
	}
	return p.open[len(p.open)-1]
}

// column takes in a col tag.
func (p *page) column(t tag) {
	top := p.top()
	if top == nil {
		return
	}
	n := span(t.attr["span"], maxColSpan)
	first := top.cols + 1
	top.cols = min(top.cols+n, maxCol)
	if p.css.of(t).hidden || t.attr["width"] == "0" {
		top.spans = append(top.spans, grid.Span{First: first, Last: top.cols})
	}
}

// startRow opens a row; a row that is open ends.
func (p *page) startRow(t tag) error {
	top := p.top()
	if top == nil {
		return nil
	}
	if err := p.endRow(); err != nil {
		return err
	}
	if top.row++; top.row > maxRow {
		return grid.TooLarge("a table of more than %d rows", maxRow)
	}
	top.col, top.inRow, top.hidden = 1, true, p.css.of(t).hidden
	if p.struckBy(t) && len(p.deep) < maxDeep {
		p.deep = append(p.deep, element{t.name, t.raw, true})
	}
	return nil
}

// endRow closes the row of the innermost table, if one is open.
func (p *page) endRow() error {
	if err := p.endCell(); err != nil {
		return err
	}
	if top := p.top(); top != nil {
		top.inRow = false
		p.deep = p.deep[:min(top.depth, len(p.deep))]
	}
	return nil
}

// startCell opens a cell at the next column that no cell from above takes up.
func (p *page) startCell(t tag) error {
	top := p.top()
	if top == nil {
		return nil
	}
	if err := p.endCell(); err != nil {
		return err
	}
	if !top.inRow {
		if err := p.startRow(tag{name: atom.Tr, raw: "tr"}); err != nil {
			return err
		}
	}
	for top.col <= len(top.taken) && top.taken[top.col-1] >= top.row {
		top.col++
	}
	wide, high := span(t.attr["colspan"], maxColSpan), span(t.attr["rowspan"], maxRowSpan)
	last := top.col + wide - 1
	if last > maxCol {
		return grid.TooLarge("a table of more than %d columns", maxCol)
	}
	if wide*high > 1 {
		if err := p.spent.Merge(); err != nil {
			return err
		}
		top.merges = append(top.merges, grid.Range{Row1: top.row, Col1: top.col, Row2: top.row + high - 1, Col2: last})
	}
	for len(top.taken) < last {
		top.taken = append(top.taken, 0)
	}
	for c := top.col; c <= last; c++ {
		top.taken[c-1] = top.row + high - 1
	}
	top.cell, top.at = grid.Cell{}, top.col
	p.stored(&top.cell, t)
	top.struck = p.struckBy(t)
	top.text, top.note = cellText{}, cellText{}
	p.noting = false
	top.inCell, top.col, top.within = true, last+1, len(p.deep)
	return nil
}

// endCell closes the cell of the innermost table, if one is open.
func (p *page) endCell() error {
	top := p.top()
	if top == nil || !top.inCell {
		return nil
	}
	top.inCell = false
	p.deep = p.deep[:min(top.within, len(p.deep))]
	var note grid.Cell
	top.note.fill(&note)
	top.cell.SetNote(note.Text)
	if !top.text.fill(&top.cell) {
		if note.Text == "" {
			return nil
		}
		top.cell.Kind = grid.Blank
	}
	if n := len(top.rows); n == 0 || top.rows[n-1].number != top.row {
		top.rows = append(top.rows, htmlRow{number: top.row, hidden: top.hidden})
	}
	row := &top.rows[len(top.rows)-1]
	row.cells = append(row.cells, grid.Placed{Cell: p.maker.Of(top.cell), Col: top.at})
	return p.spent.Step()
}

// span reads a rowspan, colspan or span; what is no number above 0 is 1.
func span(s string, limit int) int {
	n, err := strconv.Atoi(strings.TrimSpace(s))
	if err != nil || n < 1 {
		return 1
	}
	return min(n, limit)
}
