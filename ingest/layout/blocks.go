package layout

import (
	"slices"

	"lineaudit/ingest/grid"
)

// without returns the plane without the cells in the areas.
func (p *plane) without(areas []grid.Range) *plane {
	if len(areas) == 0 {
		return p
	}
	q := *p
	q.lines = nil
	for _, l := range p.lines {
		touched := false
		for _, a := range areas {
			touched = touched || a.Row1 <= l.n && l.n <= a.Row2
		}
		if touched {
			var kept []slot
			for _, s := range l.slots {
				if !slices.ContainsFunc(areas, func(a grid.Range) bool { return a.Contains(l.n, s.col) }) {
					kept = append(kept, s)
				}
			}
			l.slots = kept
		}
		if len(l.slots) > 0 {
			q.lines = append(q.lines, l)
		}
	}
	return &q
}

// blocks returns the rectangles of cells that stand clear of each other: runs
// of lines without a blank one, cut at columns that are empty throughout.
// Runs of more than maxLines are left out.
func (p *plane) blocks(maxLines int) []grid.Range {
	var all []grid.Range
	for i := 0; i < len(p.lines); {
		j := i + 1
		for j < len(p.lines) && p.lines[j].n == p.lines[j-1].n+1 {
			j++
		}
		if j-i <= maxLines {
			all = append(all, p.columnsOf(p.lines[i:j])...)
		}
		i = j
	}
	return all
}

func (p *plane) columnsOf(lines []line) []grid.Range {
	used := map[int]bool{}
	for _, l := range lines {
		for _, s := range l.slots {
			used[s.col] = true
		}
		for _, k := range p.mergedAt[l.n] {
			m := p.merges[k]
			for c := m.Col1; c <= m.Col2 && c < m.Col1+200; c++ {
				if used[m.Col1] {
					used[c] = true
				}
			}
		}
	}
	cols := make([]int, 0, len(used))
	for c := range used {
		cols = append(cols, c)
	}
	slices.Sort(cols)
	var out []grid.Range
	for i := 0; i < len(cols); {
		j := i + 1
		for j < len(cols) && cols[j] == cols[j-1]+1 {
			j++
		}
		r := grid.Range{Col1: cols[i], Col2: cols[j-1]}
		for _, l := range lines {
			if len(l.between(r.Col1, r.Col2)) > 0 {
				if r.Row1 == 0 {
					r.Row1 = l.n
				}
				r.Row2 = l.n
			}
		}
		if r.Row1 > 0 {
			out = append(out, r)
		}
		i = j
	}
	return out
}
