// Package budget keeps the count of what one file has cost so far and says
// when a limit is passed. The readers of the grid share it.
package budget

import "lineaudit/ingest/grid"

// checkEvery is the number of cells between two questions to Limits.Stop.
const checkEvery = 4096

// A Budget counts the sheets, rows, cells, merged areas and text of one book.
type Budget struct {
	lim                         grid.Limits
	sheets, rows, cells, merges int
	text                        int64 // bytes
	steps                       int
}

// New returns a budget that nothing has been spent of.
func New(lim grid.Limits) *Budget { return &Budget{lim: lim} }

// Limits returns the limits the budget was made with.
func (b *Budget) Limits() grid.Limits { return b.lim }

// Sheet counts one sheet.
func (b *Budget) Sheet() error {
	b.sheets++
	return over("sheets", b.sheets, b.lim.MaxSheets)
}

// Row counts one row that holds something.
func (b *Budget) Row() error {
	b.rows++
	return over("rows", b.rows, b.lim.MaxRows)
}

// Merge counts one merged area.
func (b *Budget) Merge() error {
	b.merges++
	return over("merged areas", b.merges, b.lim.MaxMerges)
}

// Cell counts one non-empty cell and the text it holds.
func (b *Budget) Cell(c *grid.Cell) error {
	b.cells++
	if err := over("cells", b.cells, b.lim.MaxCells); err != nil {
		return err
	}
	e := c.Extra.Get()
	for _, s := range [...]string{c.Text, e.Kept, e.Note} {
		if err := b.Text(len(s)); err != nil {
			return err
		}
	}
	return b.Step()
}

// Text counts n bytes of the text of one cell.
func (b *Budget) Text(n int) error {
	if err := over("bytes of text in one cell", n, b.lim.MaxCellText); err != nil {
		return err
	}
	b.text += int64(n)
	if b.lim.MaxText > 0 && b.text > b.lim.MaxText {
		return grid.TooLarge("more than %d bytes of cell text", b.lim.MaxText)
	}
	return nil
}

// Step asks Limits.Stop now and then. Loops that meet no cell call it.
func (b *Budget) Step() error {
	if b.steps++; b.steps%checkEvery != 0 {
		return nil
	}
	return b.lim.Check()
}

// over returns an error when n passes a limit; zero or less is no limit.
func over(what string, n, limit int) error {
	if limit > 0 && n > limit {
		return grid.TooLarge("more than %d %s", limit, what)
	}
	return nil
}
