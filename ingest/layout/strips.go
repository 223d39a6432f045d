package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// A line may head several tables that stand beside each other.

// headerStrips returns the parts of a line that are headers, each of one table.
func (f *finder) headerStrips(l *line, below []line, atBreak bool) []strip {
	parts := f.strips(l)
	is := make([]bool, len(parts))
	any := false
	for i := range parts {
		is[i] = f.isHeader(&parts[i], l.n, below, atBreak)
		any = any || is[i]
	}
	if !any {
		if len(parts) < 2 {
			return nil
		}
		whole := strip{slots: l.slots, from: parts[0].from, to: parts[len(parts)-1].to}
		if !f.isHeader(&whole, l.n, below, atBreak) {
			return nil
		}
		return f.halves(whole)
	}
	var out []strip
	var outIs []bool
	for i, s := range parts {
		if n := len(out); n > 0 {
			near := s.from-out[n-1].to <= 3
			small := len(s.slots) == 1 || len(out[n-1].slots) == 1
			wordy := s.data == 0 && out[n-1].data == 0
			if wordy && (is[i] || outIs[n-1]) && bridgedBelow(l, below, out[n-1].to, s.from) ||
				near && wordy && (is[i] || outIs[n-1]) && (small || is[i] && outIs[n-1]) && !f.separate(&out[n-1], &s, l, below) && !f.keyedBy(&s, out[:n-1]) && !f.partedLikewise(&s, out) {
				out[n-1] = f.joinStrips(l, out[n-1], s)
				outIs[n-1] = true
				continue
			}
		}
		out = append(out, s)
		outIs = append(outIs, is[i])
	}
	var headers []strip
	for i, s := range out {
		if outIs[i] {
			headers = append(headers, f.halves(s)...)
		}
	}
	return headers
}

// bridgedBelow reports whether the line right below has a cell in every column
// between two parts of a header: the names under a group of columns whose word
// stands over the first of them.
func bridgedBelow(l *line, below []line, left, right int) bool {
	return len(below) > 0 && below[0].n == l.n+1 && len(below[0].between(left+1, right-1)) == right-left-1 && right-left-1 <= widestGroup
}

// widestGroup is the most columns under one word of a header.
const widestGroup = 12

func (f *finder) joinStrips(l *line, a, b strip) strip {
	j := strip{slots: l.between(a.from, b.to), from: a.from, to: b.to}
	f.weigh(&j)
	return j
}

// halves cuts a header that says the same words twice or three times side by side.
func (f *finder) halves(s strip) []strip {
	n := len(s.slots)
	for _, k := range []int{2, 3, 4} {
		if n%k != 0 || n/k < 2 {
			continue
		}
		size, same := n/k, true
		for i := size; i < n && same; i++ {
			same = s.slots[i].cell.folded() == s.slots[i-size].cell.folded()
		}
		if !same {
			continue
		}
		var out []strip
		for i := 0; i < n; i += size {
			part := strip{slots: s.slots[i : i+size], from: s.slots[i].col, to: s.slots[i+size-1].col}
			f.weigh(&part)
			out = append(out, part)
		}
		return out
	}
	return []strip{s}
}

// keyedBy reports whether a header begins with words that also stand in a table
// further left: "Control | Rated W" behind a list with a column "Control" is
// the list of the controls, whatever stands between the two.
func (f *finder) keyedBy(s *strip, earlier []strip) bool {
	if len(s.slots) < 2 || !f.worthATable(s) {
		return false
	}
	first := s.slots[0].cell.folded()
	return slices.ContainsFunc(earlier, func(e strip) bool {
		return slices.ContainsFunc(e.slots, func(x slot) bool { return x.cell.folded() == first })
	})
}

// partedLikewise reports whether a header stands as far from the one before it as that one from another table, and would do for
// a table by itself: "Amplifier | Watts", "Control | Watts" and "Zone | Cable | Length", with a blank column between each two.
func (f *finder) partedLikewise(s *strip, earlier []strip) bool {
	n := len(earlier)
	if n < 2 {
		return false
	}
	before, last := &earlier[n-2], &earlier[n-1]
	return last.from-before.to == s.from-last.to && len(s.slots) > 1 && len(last.slots) > 1 && len(before.slots) > 1 &&
		f.worthATable(s) && f.worthATable(last) && f.worthATable(before)
}

// separate decides whether two headers beside each other belong to two tables.
func (f *finder) separate(a, b *strip, l *line, below []line) bool {
	fields := func(s *strip) map[vocabulary.Field]bool {
		m := map[vocabulary.Field]bool{}
		for _, sl := range s.slots {
			if h := f.header(sl.cell); h.score >= 0.7 && h.field != vocabulary.Notes && h.field != vocabulary.Ignored {
				m[h.field] = true
			}
		}
		return m
	}
	fa, fb := fields(a), fields(b)
	if len(a.slots) < 2 || len(b.slots) < 2 {
		return false
	}
	for _, x := range a.slots { // the same words twice head two tables
		for _, y := range b.slots {
			if h := f.header(y.cell); x.cell.folded() == y.cell.folded() && h.field != vocabulary.Notes && h.field != vocabulary.Ignored {
				return true
			}
		}
	}
	if len(fa) < 2 || len(fb) < 2 {
		return b.from-a.to > 2
	}
	shared := 0
	for x := range fb {
		if fa[x] {
			shared++
		}
	}
	if 2*shared >= min(len(fa), len(fb)) {
		return true
	}
	// Rows: one table's rows run through both, two tables' end where each ends.
	heightA, countA := f.height(l.n, a)
	heightB, countB := f.height(l.n, b)
	if heightA != heightB && 10*countA >= 8*heightA && 10*countB >= 8*heightB && f.worthATable(b) {
		return true
	}
	return shared > 0 && b.from-a.to > 2 || b.from-a.to > 3
}

// height is the number of lines down to the first blank one in the columns of
// a strip, and how many of them are filled.
func (f *finder) height(n int, s *strip) (height, filled int) {
	blank := 0
	for want, lines := n+1, f.p.within(n+1, n+400); len(lines) > 0; want++ {
		for len(lines) > 0 && lines[0].n < want {
			lines = lines[1:]
		}
		if len(lines) == 0 {
			break
		}
		if lines[0].n == want && len(lines[0].between(s.from, s.to)) > 0 {
			filled++
			height, blank = want-n, 0
			continue
		}
		if blank++; blank > 1 || lines[0].n > want {
			break
		}
	}
	return height, filled
}

// worthATable reports whether the headers of a strip would do for a table by themselves.
func (f *finder) worthATable(s *strip) bool {
	return len(f.kindsOf(s)) > 0
}

// kindsOf are the kinds of tables that the headers of a strip would do for.
func (f *finder) kindsOf(s *strip) []Kind {
	have := map[vocabulary.Field]bool{}
	for _, sl := range s.slots {
		for _, c := range f.s.Header(sl.cell.line()).Candidates {
			if c.Score >= 0.7 {
				have[c.Field] = true
			}
		}
	}
	var kinds []Kind
	for _, k := range kindOrder {
		ok := true
		for _, group := range needs[k] {
			ok = ok && slices.ContainsFunc(group, func(f vocabulary.Field) bool { return have[f] })
		}
		if ok {
			kinds = append(kinds, k)
		}
	}
	return kinds
}
