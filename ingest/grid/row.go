package grid

import (
	"iter"
	"slices"
)

// A Row is one row of a sheet: its number from 1 and its non-empty cells in
// ascending column order. A long register has millions of cells: a row holds their
// numbers alone, since what they hold, and nearly always their columns, are those of
// other rows too.
type Row struct {
	Number int
	Hidden Hiding
	of     *shape   // nil in a row without cells
	ids    []uint32 // of the cells in the table of the shape
}

// A shape is what rows with cells in the same columns share.
type shape struct {
	cols  []int32 // from 1
	cells *table
}

// A Placed is a cell as a row hands it out: with its column, counted from 1.
type Placed struct {
	*Cell // never nil
	Col   int
}

// In returns the cell in a column, counted from 1.
func (c Cell) In(col int) Placed { return Placed{&c, col} }

// NewRow returns a row of cells, which are in ascending column order.
func NewRow(number int, cells ...Placed) Row { return new(Maker).Row(number, cells) }

// Len is the number of cells.
func (r *Row) Len() int { return len(r.ids) }

// At returns cell i of the row, counted from 0.
func (r *Row) At(i int) Placed { return Placed{r.of.cells.at(r.ids[i]), int(r.of.cols[i])} }

// Cells are all cells of the row.
func (r *Row) Cells() iter.Seq[Placed] {
	return func(yield func(Placed) bool) {
		for i := range r.ids {
			if !yield(r.At(i)) {
				return
			}
		}
	}
}

// Cell returns the cell in column col of the row, or nil.
func (r *Row) Cell(col int) *Cell {
	if r.of == nil {
		return nil
	}
	i, ok := slices.BinarySearch(r.of.cols, int32(col))
	if !ok {
		return nil
	}
	return r.of.cells.at(r.ids[i])
}
