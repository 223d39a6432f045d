package layout

import (
	"slices"
	"strings"
	"unicode/utf8"

	"lineaudit/ingest/grid"
)

// minGlued is the least number of lines that make a table of text pasted into one column.
const minGlued = 4

// unglue takes a table apart that was pasted as text into one column, its own
// columns lined up by spaces or parted by tabs. It returns nil when the plane is no such sheet.
// The pieces become cells of the plane, all at the place of the cell they were pasted in.
func (p *plane) unglue() *plane {
	if p.turned || len(p.lines) < minGlued {
		return nil
	}
	col, alone, several := p.lines[0].slots[0].col, 0, 0
	for _, l := range p.lines {
		if len(l.slots) != 1 || l.slots[0].col != col || l.slots[0].cell.Kind != grid.String {
			continue
		}
		alone++
		if len(pieces(l.slots[0].cell.Text)) >= 3 {
			several++
		}
	}
	if alone*10 < len(p.lines)*9 || several < minGlued || 2*several < len(p.lines) {
		return nil
	}
	starts := p.starts()
	if len(starts) < 3 {
		return nil
	}
	q := &plane{file: p.file, sheet: p.sheet, on: p.on, glued: col, mergedAt: map[int][]int{}}
	for _, l := range p.lines {
		if len(l.slots) != 1 || l.slots[0].cell.Kind != grid.String {
			return nil
		}
		line := line{n: l.n, hidden: l.hidden}
		at := 0
		found := pieces(l.slots[0].cell.Text)
		for _, piece := range found {
			// Its column is the last that starts no later, and right of the one before.
			i := 0
			for i+1 < len(starts) && starts[i+1] <= piece.start+1 {
				i++
			}
			if len(found) < 3 {
				i = min(i, at)
			}
			at = max(at+1, i+1)
			c := *l.slots[0].cell.Cell
			c.Text = piece.text
			c.SetKept(piece.text)
			if c.Struck == grid.PartStruck {
				c.Struck = grid.NotStruck
			}
			line.slots = append(line.slots, slot{at, cell{&c, wordingOf(now(&c))}})
		}
		if !isRuled(line.slots) {
			q.lines = append(q.lines, line)
		}
	}
	return q
}

// A piece is a part of a pasted line and the position, in characters, it starts at.
type piece struct {
	start int
	text  string
}

// pieces cuts a pasted line at tabs and at two spaces or more.
func pieces(s string) []piece {
	var out []piece
	pos := 0
	for part := range strings.SplitSeq(strings.ReplaceAll(s, "\t", "  \t"), "  ") {
		lead := len(part) - len(strings.TrimLeft(part, " \t\u00a0"))
		if t := clean(part); t != "" {
			out = append(out, piece{pos + lead, t})
		}
		pos += utf8.RuneCountInString(part) + 2
	}
	return out
}

// starts are the positions at which pieces start in at least a third of the
// lines that have several.
func (p *plane) starts() []int {
	count, lines := map[int]int{}, 0
	for _, l := range p.lines {
		if found := pieces(l.slots[0].cell.Text); len(found) >= 3 {
			lines++
			for _, piece := range found {
				count[piece.start]++
			}
		}
	}
	var out []int
	for at, n := range count {
		if 3*n >= lines {
			out = append(out, at)
		}
	}
	slices.Sort(out)
	return slices.CompactFunc(out, func(a, b int) bool { return max(a-b, b-a) <= 1 })
}
