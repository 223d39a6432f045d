package layout

import "lineaudit/ingest/grid"

// A header of types may go on in rows that nothing is merged over: what the types are, and what they are tapped at.
//
//	Zone | Output | Type A     | Type B     | Qty | Load
//	     |        | ceiling 6" | ceiling 8" |     |
//	     |        | 3 W        | 6 W        | No. | W

// powersBelow reports whether a line under a header row gives the powers of its columns, over counts, or the words
// between them and such a line.
func (f *finder) powersBelow(d *draft, head *line, at int) bool {
	if f.underHeads(d, head, at) == nil {
		return false
	}
	if f.powersOfHeads(d, head, at) {
		return true
	}
	for _, s := range f.underHeads(d, head, at) {
		if reOnlyWatts.MatchString(s.cell.line()) {
			return false
		}
	}
	return at+1 < len(f.p.lines) && f.powersOfHeads(d, head, at+1)
}

// underHeads are the cells of a line that all are words under those of a header row, none of them under its first; nil
// if it is no such line.
func (f *finder) underHeads(d *draft, head *line, at int) []slot {
	slots := f.p.lines[at].between(d.from, d.to)
	if len(slots) < 2 || len(d.header) == 1 && head.at(d.from).blank() || slots[0].col == d.from {
		return nil
	}
	for _, s := range slots {
		if s.cell.Kind != grid.String || len(d.header) == 1 && head.at(s.col).blank() {
			return nil
		}
	}
	return slots
}

// powersOfHeads reports whether such a line has a power under each of two or more columns of counts beside each other,
// and no more than headers and units under others.
func (f *finder) powersOfHeads(d *draft, head *line, at int) bool {
	slots := f.underHeads(d, head, at)
	if slots == nil || at+2 >= len(f.p.lines) || f.p.lines[at+1].at(d.from).blank() {
		return false
	}
	var powers []slot
	for _, s := range slots {
		switch {
		case reOnlyWatts.MatchString(s.cell.line()):
			if n := len(powers); n > 0 && powers[n-1].col != s.col-1 {
				return false
			}
			powers = append(powers, s)
		case f.header(s.cell).score < headerScore && f.s.Header(s.cell.line()).Unit == "":
			return false
		}
	}
	end := at + 1
	for end < len(f.p.lines) && end <= at+lookAhead && f.p.lines[end].n == f.p.lines[end-1].n+1 {
		end++
	}
	return len(powers) >= 2 && valueLabels(&strip{slots: powers}, f.p.lines[at+1:end]) == len(powers)
}
