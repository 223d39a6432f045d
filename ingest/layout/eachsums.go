package layout

import (
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// A row may have the figures that the rows above it make together, and be a place like them: "Shop | 2 | 3",
// "Hall | 2 | 3", "Yard | 4 | 6".

// sumsOfEach reports whether a line has a quantity and the watts of each of them, in a list where rows above have
// several: nobody adds the watts of one to those of another.
func (b *bodyReader) sumsOfEach(slots []slot) bool {
	each, several := false, false
	for _, s := range slots {
		i := b.index[s.col-b.d.from]
		if _, ok := figure(s.cell); i < 0 || !ok {
			continue
		}
		switch b.t.Columns[i].Field {
		case vocabulary.Tap:
			each = true
		case vocabulary.Quantity:
			several = b.allSums[i] > float64(b.allAddends[i])
		}
	}
	return each && several
}

// remarked reports whether a line has words in a column of remarks, as a row of devices has.
func (b *bodyReader) remarked(slots []slot) bool {
	for _, s := range slots {
		if f := b.field(s.col); (f == vocabulary.Notes || f == vocabulary.Unknown) && s.cell.Kind == grid.String && !anyDigit(text(s.cell)) {
			return true
		}
	}
	return false
}
