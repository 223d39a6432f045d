package layout

import "lineaudit/ingest/vocabulary"

// Groups that are not merged may stand over a line that looks like one of units: "Contract | | After |" over
// "Qty | Tap W | Qty | Tap W". That line tells how far each reaches: it begins anew under the next.

// groupOverUnits finds the group heading over col in line i of the header, whose next and last line is one of
// units, where the units under the group come again under the one beside it.
func (f *finder) groupOverUnits(d *draft, l *line, i, col int) (cell, int) {
	if i+2 != len(d.header) || !d.units[d.header[i+1]] {
		return cell{}, 0
	}
	for _, units := range f.p.within(d.header[i+1], d.header[i+1]) {
		first := col
		for first > d.from && l.at(first).blank() && !units.at(first).blank() {
			first--
		}
		size := groupSize(d, l, &units, first)
		if first+size > col && size > 1 && (sameUnits(d, l, &units, first, first+size, size) || sameUnits(d, l, &units, first, first-size, size)) {
			return l.at(first), first
		}
	}
	return cell{}, 0
}

// groupSize is how many columns with units a heading reaches over, 0 where it has none.
func groupSize(d *draft, l, units *line, first int) int {
	n := 0
	for c := first; c <= d.to && !units.at(c).blank() && l.at(c).blank() == (c > first); c++ {
		n++
	}
	return n
}

// sameUnits reports whether another heading reaches over as many columns, with the same units in the same order.
func sameUnits(d *draft, l, units *line, first, other, size int) bool {
	if other < d.from || groupSize(d, l, units, other) != size {
		return false
	}
	for k := range size {
		a, b := units.at(first+k), units.at(other+k)
		if vocabulary.Fold(a.line()) != vocabulary.Fold(b.line()) {
			return false
		}
	}
	return true
}
