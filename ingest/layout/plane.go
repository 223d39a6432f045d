package layout

import (
	"cmp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
)

// A plane is a sheet, or a part of one, as lines of cells. In a turned plane
// the lines are the sheet's columns, so that a transposed table reads like any other.
type plane struct {
	file, sheet string
	on          schedule.Sheet // of these names
	turned      bool
	lines       []line // only those that hold something, ascending
	merges      []grid.Range
	mergedAt    map[int][]int // line number -> indexes of merges that touch it
	hiddenCols  []grid.Span
	stackedAt   map[[2]int]int        // line and column of the plane -> the sheet row, where lines were laid side by side
	stackedCols int                   // how many columns each of them has
	laidRows    map[int]schedule.Span // line -> the rows of the form that it was laid out from
	laid        grid.Range            // the sheet cells of forms that were laid out as a table
	laidAt      map[[2]int]cellAt     // line and column of the plane -> the sheet cell, where forms were laid out as a table
	glued       int                   // the sheet column that the whole plane was pasted into as text, else 0
}

// A cellAt is the row and the column of a cell of the sheet.
type cellAt struct{ row, col int }

// A line is one row (column, when turned) with its non-empty cells.
type line struct {
	n      int
	hidden grid.Hiding
	slots  []slot
}

// A slot is a non-empty cell and its place on the line.
type slot struct {
	col  int
	cell cell
}

// maxMergedLines bounds the lines that all merged areas together are looked up by.
const maxMergedLines = 2_000_000

// manyCells is the cells of a plane from which they keep no wordings, which would
// take more memory than the cells.
const manyCells = 100_000

// newPlane takes the cells of a sheet that hold something.
func newPlane(file string, s *grid.Sheet) *plane {
	p := &plane{file: file, sheet: s.Name, on: schedule.SheetOf(file, s.Name), hiddenCols: s.HiddenCols, merges: s.Merges}
	total := 0
	for i := range s.Rows {
		total += s.Rows[i].Len()
	}
	all := make([]slot, 0, total)
	few := total <= manyCells
	var above [64]cell // of the first columns: many cells say the same as the one above
	p.lines = make([]line, 0, len(s.Rows))
	for i := range s.Rows {
		row := &s.Rows[i]
		from := len(all)
		for c := range row.Cells() {
			if holds(c.Cell) {
				s := slot{c.Col, cell{Cell: c.Cell}}
				if few {
					last := &above[c.Col%len(above)]
					if last.Cell != c.Cell {
						last.Cell = c.Cell
						if t := now(c.Cell); last.said == nil || last.said.text != t {
							last.said = wordingOf(t)
						}
					}
					s.cell.said = last.said
				}
				all = append(all, s)
			}
		}
		if slots := all[from:]; len(slots) > 0 && !isRuled(slots) {
			p.lines = append(p.lines, line{row.Number, row.Hidden, all[from:len(all):len(all)]})
		}
	}
	p.indexMerges()
	return p
}

// isRuled reports whether a line draws a rule under or over columns and says nothing: "------ | --- | -----".
func isRuled(slots []slot) bool {
	long := 0
	for _, s := range slots {
		t := s.cell.Text
		if s.cell.Kind != grid.String || strings.Trim(t, "-–—=_+ ") != "" {
			return false
		}
		if len(t) >= 3 {
			long++
		}
	}
	return len(slots) > 1 && 2*long > len(slots)
}

func (p *plane) indexMerges() {
	p.mergedAt = make(map[int][]int)
	budget := maxMergedLines
	for i, m := range p.merges {
		if budget -= m.Row2 - m.Row1 + 1; budget < 0 {
			break
		}
		for n := m.Row1; n <= m.Row2; n++ {
			p.mergedAt[n] = append(p.mergedAt[n], i)
		}
	}
}

// merged returns the merged area that holds a place, if any.
func (p *plane) merged(n, col int) (grid.Range, bool) {
	for _, i := range p.mergedAt[n] {
		if p.merges[i].Contains(n, col) {
			return p.merges[i], true
		}
	}
	return grid.Range{}, false
}

// turn returns the part of the plane in r with lines and columns exchanged.
func (p *plane) turn(r grid.Range) *plane {
	t := &plane{file: p.file, sheet: p.sheet, on: p.on, turned: !p.turned}
	byCol := map[int]*line{}
	for _, l := range p.within(r.Row1, r.Row2) {
		for _, s := range l.slots {
			if s.col < r.Col1 || s.col > r.Col2 {
				continue
			}
			c := byCol[s.col]
			if c == nil {
				c = &line{n: s.col}
				byCol[s.col] = c
			}
			c.slots = append(c.slots, slot{l.n, s.cell})
		}
		if l.hidden == grid.HiddenByHand {
			t.hiddenCols = append(t.hiddenCols, grid.Span{First: l.n, Last: l.n})
		}
	}
	for _, l := range byCol {
		for _, h := range p.hiddenCols {
			if h.First <= l.n && l.n <= h.Last {
				l.hidden = grid.HiddenByHand
			}
		}
		t.lines = append(t.lines, *l)
	}
	slices.SortFunc(t.lines, func(a, b line) int { return cmp.Compare(a.n, b.n) })
	for _, m := range p.merges {
		if m.Row1 >= r.Row1 && m.Row2 <= r.Row2 {
			t.merges = append(t.merges, grid.Range{Row1: m.Col1, Col1: m.Row1, Row2: m.Col2, Col2: m.Row2})
		}
	}
	t.indexMerges()
	return t
}

// within returns the lines numbered from first to last.
func (p *plane) within(first, last int) []line {
	lo, _ := slices.BinarySearchFunc(p.lines, first, func(l line, n int) int { return cmp.Compare(l.n, n) })
	if last < first {
		return nil
	}
	hi, _ := slices.BinarySearchFunc(p.lines, last+1, func(l line, n int) int { return cmp.Compare(l.n, n) })
	return p.lines[lo:hi]
}

// at returns the cell at a place, a blank one if there is none.
func (l *line) at(col int) cell {
	if i := l.from(col); i < len(l.slots) && l.slots[i].col == col {
		return l.slots[i].cell
	}
	return cell{}
}

// from is the index of the first slot in column col or behind it. Most lines are
// filled without gaps, so that it is where it would be in one of these, or little before.
func (l *line) from(col int) int {
	if len(l.slots) == 0 || col <= l.slots[0].col {
		return 0
	}
	if i := col - l.slots[0].col; i < len(l.slots) && l.slots[i].col == col {
		return i
	}
	i, _ := slices.BinarySearchFunc(l.slots, col, func(s slot, c int) int { return cmp.Compare(s.col, c) })
	return i
}

// between returns the slots from column first to last.
func (l *line) between(first, last int) []slot {
	lo := l.from(first)
	hi := lo
	for hi < len(l.slots) && l.slots[hi].col <= last {
		hi++
	}
	return l.slots[lo:hi]
}

// ref names a place of the plane as a place of the sheet.
func (p *plane) ref(n, col int) schedule.Ref {
	n, col = p.place(n, col)
	return p.on.Cell(n, col)
}

// place is the row and the column of the sheet.
func (p *plane) place(n, col int) (row, column int) {
	if p.glued > 0 {
		col = p.glued
	}
	if at, ok := p.stackedAt[[2]int{n, col}]; ok {
		return at, (col-1)%p.stackedCols + 1
	}
	if at, ok := p.laidAt[[2]int{n, col}]; ok {
		return at.row, at.col
	}
	if p.turned {
		return col, n
	}
	return n, col
}

// span names lines of the plane.
func (p *plane) span(first, last int) schedule.Span {
	if rows, ok := p.laidRows[first]; ok && first == last {
		return rows
	}
	return schedule.Span{First: first, Last: last, Columns: p.turned}
}

// area turns a range of the plane into a range of the sheet.
func (p *plane) area(r grid.Range) grid.Range {
	if p.glued > 0 {
		r.Col1, r.Col2 = p.glued, p.glued
	}
	if p.laidAt != nil && r.Row1 <= p.laid.Row1 && r.Row2 <= p.laid.Row2 {
		return p.laid
	}
	if p.stackedCols > 0 {
		r.Col2 = min(r.Col2, p.stackedCols)
	}
	if p.turned {
		return grid.Range{Row1: r.Col1, Col1: r.Row1, Row2: r.Col2, Col2: r.Row2}
	}
	return r
}

// holds reports whether a cell says anything.
func holds(c *grid.Cell) bool {
	switch c.Kind {
	case grid.Blank:
		return false
	case grid.NoValue, grid.Error:
		return true
	}
	return clean(c.Text) != ""
}

// now is what a cell says now: struck-out parts left out, space trimmed.
func now(c *grid.Cell) string {
	switch {
	case c == nil, c.Struck == grid.WholeStruck:
		return ""
	case c.Struck == grid.PartStruck:
		return clean(c.Kept())
	}
	return clean(c.Text)
}

// written is the text of a cell, struck through or not.
func written(c *grid.Cell) string {
	if c.Struck == grid.PartStruck {
		return clean(c.Kept())
	}
	return clean(c.Text)
}

// clean trims space, also the unbreakable and the invisible kind.
func clean(s string) string {
	if n := len(s); n > 0 && '!' <= s[0] && s[0] <= '~' && '!' <= s[n-1] && s[n-1] <= '~' {
		return s
	}
	return strings.Trim(s, " \t\r\n\v\f\u00a0\u200b\u202f\u2007\ufeff")
}

// oneLine joins the lines of a text.
func oneLine(s string) string {
	if strings.ContainsAny(s, "\n\r\t\u00a0") {
		return strings.Join(strings.FieldsFunc(s, func(r rune) bool { return r == '\n' || r == '\r' || r == '\t' || r == ' ' || r == '\u00a0' }), " ")
	}
	return s
}

// maxText bounds the text of a row that is kept for people.
const maxText = 160

// summary joins the texts of slots for people, shortened.
func summary(slots []slot) string {
	var b strings.Builder
	for i, s := range slots {
		if i > 0 {
			b.WriteString(" | ")
		}
		b.WriteString(oneLine(written(s.cell.Cell)))
		if b.Len() > maxText {
			cut := b.String()[:maxText]
			return strings.ToValidUTF8(cut, "") + "…"
		}
	}
	return b.String()
}

func anyDigit(s string) bool { return notation.HasDigit(s) }
