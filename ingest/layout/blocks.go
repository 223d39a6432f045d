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
	first, last := 1<<30, 0
	for i := range lines {
		first, last = min(first, lines[i].slots[0].col), max(last, lines[i].slots[len(lines[i].slots)-1].col)
	}
	const widest = 200 // columns of a merged area that count
	used := make([]bool, max(0, last-first+1+widest))
	for i := range lines {
		l := &lines[i]
		for _, s := range l.slots {
			used[s.col-first] = true
		}
		for _, k := range p.mergedAt[l.n] {
			m := p.merges[k]
			if m.Col1 < first || m.Col1 > last || !used[m.Col1-first] {
				continue
			}
			for c := m.Col1; c <= m.Col2 && c < m.Col1+widest; c++ {
				used[c-first] = true
			}
		}
	}
	var out []grid.Range
	for i := 0; i < len(used); {
		if !used[i] {
			i++
			continue
		}
		j := i + 1
		for j < len(used) && used[j] {
			j++
		}
		r := grid.Range{Col1: first + i, Col2: first + j - 1}
		for k := range lines {
			l := &lines[k]
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
