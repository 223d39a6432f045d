package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// Powers across: each row has its count in a column of its own, and under the
// output, line or zone that it hangs on stands the tap, or the watts of the row.

// countsBeside finds the column that counts the loudspeakers of each row, nil if
// there is none.
func (f *finder) countsBeside(cols []*heading, sums *heading) *heading {
	for _, h := range cols {
		if len(h.parts) == 0 || h == sums || isTotalText(h.words) || h.cells.cells == 0 {
			continue
		}
		if own := f.s.Header(h.parts[len(h.parts)-1]).Best(); own.Field == vocabulary.Quantity && own.Score >= 0.8 {
			return h
		}
	}
	return nil
}

// tapNumbers reports whether all cells of a column are numbers at which
// transformers are tapped.
func (s *sample) tapNumbers() bool {
	return len(s.numbers) == s.cells && !slices.ContainsFunc(s.numbers, func(v float64) bool { return !tapValues[v] })
}

// powersBeside tells what the cells across are where rows are counted beside them,
// and what else they could be: taps, or the watts of rows; Unknown where they may
// be counts. Each row has one.
func (x *crosstab) powersBeside(counts *heading, cols []*heading) (is, orElse vocabulary.Field) {
	switch x.field {
	case vocabulary.Channel, vocabulary.Circuit, vocabulary.Amplifier, vocabulary.Zone, vocabulary.Room, vocabulary.Floor, vocabulary.Building:
	default:
		return vocabulary.Unknown, vocabulary.Unknown
	}
	count := map[int]float64{}
	for j, v := range counts.cells.numbers {
		count[counts.cells.lines[counts.cells.numberAt[j]]] = v
	}
	seen := map[int]bool{}
	rows, several, equal, taps, watts := 0, 0, 0, 0, 0
	for _, i := range x.cols {
		c := cols[i].cells
		for j, v := range c.numbers {
			n := c.lines[c.numberAt[j]]
			q := count[n]
			if v == 0 || q == 0 {
				continue
			}
			if seen[n] {
				return vocabulary.Unknown, vocabulary.Unknown
			}
			seen[n] = true
			rows++
			if q > 1 {
				several++
			}
			if v == q {
				equal++
			}
			if tapValues[v] {
				taps++
			}
			if tapValues[v/q] {
				watts++
			}
		}
	}
	switch {
	case rows < 2 || 2*equal >= rows:
	case watts == rows && (several >= 3 || taps < rows):
		is, orElse = vocabulary.TotalWatts, vocabulary.Tap
	case taps == rows:
		is, orElse = vocabulary.Tap, vocabulary.TotalWatts
	}
	if taps < rows || watts < rows || several == 0 {
		orElse = vocabulary.Unknown
	}
	return is, orElse
}
