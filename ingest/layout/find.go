package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// A draft is a table on its way: where its header and its rows are.
type draft struct {
	header   []int // line numbers of the header rows, ascending
	units    map[int]bool
	repeated map[int]Class // later lines that repeat the header or its units
	above    []int         // line numbers of the titles directly above
	from, to int           // columns
	first    int           // line numbers of the body
	last     int
	words    map[int]map[int]string // header line -> column -> folded text
	fixed    bool                   // stands for a transposed table, found before
	skip     bool                   // cannot be read
}

// lookAhead is how many lines below are asked about a header.
const lookAhead = 6

// drafts finds the tables of the plane whose headers run along the lines.
func (f *finder) drafts() []*draft {
	lines := f.p.lines
	var done, active []*draft
	skip := 0 // first line number that is free again
	for i := range lines {
		f.watch.Step()
		l := &lines[i]
		if l.n < skip {
			continue
		}
		if f.repeats(active, l) {
			continue
		}
		atBreak := i < 30 || l.n-lines[i-1].n > 1 || len(lines[i-1].slots) <= 2
		if !promising(l, atBreak, vocabulary.Known) && !f.forcedIn(l) {
			continue
		}
		below := lines[i+1 : min(len(lines), i+1+lookAhead)]
		strips := f.headerStrips(l, below, atBreak)
		for _, s := range strips {
			over := overlapping(active, s.from, s.to)
			if over != nil && f.continuesRows(over, &s, strips, i) {
				continue
			}
			if over != nil && s.from > over.from+1 && len(l.between(over.from, s.from-1)) >= 2 && s.distinct >= 2 {
				// The left part of the running table goes on: it was two tables beside each other.
				if right := over.cut(s.from); right != nil {
					active, done = append(active, right), append(done, right)
				}
				over = overlapping(active, s.from, s.to)
			}
			if over != nil && !f.replaces(over, &s, atBreak) {
				continue
			}
			d := f.draft(i, &s)
			// A row of groups that looked like a header of its own.
			done = slices.DeleteFunc(done, func(a *draft) bool { return a.takenBy(d) })
			active = slices.DeleteFunc(active, func(a *draft) bool { return a.takenBy(d) })
			for _, a := range active {
				if a.from <= d.to && d.from <= a.to {
					a.last = d.header[0] - 1
					if len(d.above) > 0 {
						a.last = d.above[0] - 1
					}
				}
			}
			active = slices.DeleteFunc(active, func(a *draft) bool { return a.last < l.n })
			active = append(active, d)
			done = append(done, d)
			skip = max(skip, d.first)
		}
	}
	return done
}

// cut takes the columns from col on off a draft and returns them as a draft of
// their own, or nil when it has no header there.
func (d *draft) cut(col int) *draft {
	right := &draft{header: slices.Clone(d.header), units: d.units, repeated: map[int]Class{}, from: col, to: d.to, first: d.first, last: d.last, words: map[int]map[int]string{}}
	found := false
	for n, words := range d.words {
		right.words[n] = map[int]string{}
		for c, w := range words {
			if c >= col {
				right.words[n][c] = w
				found = true
			}
		}
	}
	if !found {
		return nil
	}
	d.to = col - 1
	return right
}

// takenBy reports whether the header rows of d are rows of o.
func (d *draft) takenBy(o *draft) bool {
	return d.from <= o.to && o.from <= d.to && d.header[len(d.header)-1] >= o.header[0]
}

func (f *finder) forcedIn(l *line) bool {
	if len(f.forced) == 0 {
		return false
	}
	n := 0
	for _, s := range l.slots {
		if f.forced[vocabulary.Fold(oneLine(text(s.cell)))] != vocabulary.Unknown {
			n++
		}
	}
	return n >= 2
}

func overlapping(active []*draft, from, to int) *draft {
	for _, a := range active {
		if a.from <= to && from <= a.to {
			return a
		}
	}
	return nil
}

// continuesRows reports whether a strip inside the columns of a running table
// is rather a part of one of its rows: its cells say or look like what stands above them, or cells of
// the same row stand on both sides of it. Cells of other headers on the line
// are none of the row.
func (f *finder) continuesRows(d *draft, s *strip, strips []strip, i int) bool {
	l := &f.p.lines[i]
	left, right := len(l.between(d.from, s.from-1)), len(l.between(s.to+1, d.to))
	for k := range strips {
		switch o := &strips[k]; {
		case o.to < s.from:
			left -= len(l.between(max(d.from, o.from), o.to))
		case o.from > s.to:
			right -= len(l.between(o.from, min(d.to, o.to)))
		}
	}
	if right > 0 || left > 0 && (s.distinct < 3 && s.matched < len(s.slots) || len(s.slots) < 2) {
		return true
	}
	const back = 24
	alike := 0
	for _, sl := range s.slots {
		k := lookOf(sl.cell) &^ (lookRoom | lookWords | lookLong | lookModel)
		t := vocabulary.Fold(oneLine(text(sl.cell)))
		for j := i - 1; j >= 0 && i-j <= back && f.p.lines[j].n >= d.first; j-- {
			c := f.p.lines[j].at(sl.col)
			if c == nil || d.repeated[f.p.lines[j].n] != "" {
				continue
			}
			if vocabulary.Fold(oneLine(text(c))) == t || lookOf(c)&k != 0 {
				alike++
				break
			}
		}
	}
	if s.matched == len(s.slots) && s.distinct == s.matched {
		return alike == len(s.slots) // nothing but header words, each for another column
	}
	return 5*alike >= 2*len(s.slots)
}

// replaces decides whether a header inside the columns of a running table
// begins a new one.
func (f *finder) replaces(d *draft, s *strip, atBreak bool) bool {
	n := len(s.slots)
	if atBreak {
		return n >= 3 || s.to-s.from >= (d.to-d.from)/2 || s.matched == n
	}
	return s.distinct >= 3 && 10*s.matched >= 8*n && s.data == 0
}

// repeats reports whether the line repeats a header row of a running table, and notes it there.
func (f *finder) repeats(active []*draft, l *line) bool {
	for _, d := range active {
		if d.last < l.n {
			continue
		}
		for _, h := range d.header {
			words := d.words[h]
			slots := l.between(d.from, d.to)
			if len(slots) == 0 || len(words) == 0 || len(slots) > len(words)+1 || len(slots)*10 < len(words)*7 {
				continue
			}
			// Most lines fail at the first cell.
			if vocabulary.Fold(oneLine(text(slots[0].cell))) != words[slots[0].col] && vocabulary.Fold(oneLine(text(slots[len(slots)-1].cell))) != words[slots[len(slots)-1].col] {
				continue
			}
			same := 0
			for _, s := range slots {
				if vocabulary.Fold(oneLine(text(s.cell))) == words[s.col] {
					same++
				}
			}
			if 10*same >= 7*len(slots) && (same >= 2 || len(words) == 1) {
				class := Header
				if d.units[h] {
					class = UnitsRow
				}
				d.repeated[l.n] = class
				return true
			}
		}
	}
	return false
}

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
				near && wordy && (is[i] || outIs[n-1]) && (small || is[i] && outIs[n-1]) && !f.separate(&out[n-1], &s, l, below) {
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
			same = vocabulary.Fold(text(s.slots[i].cell)) == vocabulary.Fold(text(s.slots[i-size].cell))
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
			if h := f.header(y.cell); vocabulary.Fold(oneLine(text(x.cell))) == vocabulary.Fold(oneLine(text(y.cell))) && h.field != vocabulary.Notes && h.field != vocabulary.Ignored {
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

// draft makes a table of a header strip on line i: it looks for more header
// rows below and above, and for titles.
func (f *finder) draft(i int, s *strip) *draft {
	lines := f.p.lines
	d := &draft{header: []int{lines[i].n}, units: map[int]bool{}, repeated: map[int]Class{}, from: s.from, to: s.to, last: 1 << 30, words: map[int]map[int]string{}}
	for _, m := range f.mergesAt(lines[i].n) {
		if m.Col1 >= d.from && m.Col1 <= d.to {
			d.to = max(d.to, m.Col2)
		}
	}
	bottom := i
	for j := i + 1; j < len(lines) && len(d.header) < 4; j++ {
		if lines[j].n != lines[j-1].n+1 {
			break
		}
		sub := lines[j].between(d.from, d.to)
		if len(sub) == 0 {
			break
		}
		if f.unitsOnly(sub) && (len(sub) >= 2 || len(s.slots) <= 3 || f.unitUnder(&lines[j-1], sub[0])) {
			d.header = append(d.header, lines[j].n)
			d.units[lines[j].n] = true
			bottom = j
			break
		}
		if !f.continues(d, &lines[j-1], &lines[j], j) {
			break
		}
		d.header = append(d.header, lines[j].n)
		bottom = j
		for _, part := range f.strips(&lines[j]) { // sub-headers may reach further than their groups
			if part.from <= d.to+1 && part.to >= d.from-1 {
				w := part
				f.weigh(&w)
				if w.data == 0 && 2*w.matched >= len(w.slots) {
					d.from, d.to = min(d.from, part.from), max(d.to, part.to)
				}
			}
		}
	}
	top := i
	for j := i - 1; j >= 0 && len(d.header) < 4 && i-j <= 2; j-- {
		if lines[j].n != lines[j+1].n-1 || !f.isGroupRow(d, &lines[j], &lines[j+1]) {
			break
		}
		d.header = slices.Insert(d.header, 0, lines[j].n)
		for _, sl := range lines[j].between(d.from-1, d.to+1) {
			if last := f.lastColumn(lines[j].n, sl.col); last > sl.col {
				d.from, d.to = min(d.from, sl.col), max(d.to, last)
			}
		}
		top = j
	}
	// Lines of several cells may be keys and values, or the end of another
	// table: they count only where the block begins with titles.
	single := -1 // titles below the lowest line of several cells
	for j := top - 1; j >= 0 && top-j < 20 && lines[j].n >= lines[j+1].n-1; j-- {
		if !f.isTitleLine(d, &lines[j]) {
			if single >= 0 {
				d.above = d.above[len(d.above)-single:]
			}
			break
		}
		if single < 0 && len(lines[j].between(d.from, d.to)) > 1 {
			single = len(d.above)
		}
		d.above = slices.Insert(d.above, 0, lines[j].n)
	}
	d.first = lines[bottom].n + 1
	for _, h := range d.header {
		words := map[int]string{}
		for _, l := range f.p.within(h, h) {
			for _, sl := range l.between(d.from, d.to) {
				words[sl.col] = vocabulary.Fold(oneLine(text(sl.cell)))
			}
		}
		d.words[h] = words
	}
	return d
}

// unitUnder reports whether a lone unit belongs to the header right above it.
func (f *finder) unitUnder(head *line, s slot) bool {
	c := head.at(s.col)
	if c == nil {
		return false
	}
	unit := f.s.Header(strings.Trim(oneLine(text(s.cell)), " []()")).Unit
	h := f.header(c)
	return unit != "" && h.score >= headerScore && vocabulary.Fits(h.field, unit) == 1
}

func (f *finder) mergesAt(n int) []grid.Range {
	var out []grid.Range
	for _, i := range f.p.mergedAt[n] {
		out = append(out, f.p.merges[i])
	}
	return out
}

// underLastGroup is the column down to which header words stand side by side
// under the last group of a header row, which may reach over more columns than it is written in.
func (f *finder) underLastGroup(d *draft, head, l *line) int {
	to := d.to
	if head.at(to) == nil || l.at(to) == nil || f.header(l.at(to)).score < headerScore {
		return d.to
	}
	for {
		c := l.at(to + 1)
		if c == nil || head.at(to+1) != nil || f.header(c).score < headerScore {
			return to
		}
		to++
	}
}

// continues decides whether the line under a header row is a second row of it.
func (f *finder) continues(d *draft, head, l *line, at int) bool {
	beyond := f.underLastGroup(d, head, l)
	sub := strip{slots: l.between(d.from, beyond), from: d.from, to: beyond}
	if sentences(sub.slots) {
		return false
	}
	// A header cell merged down takes the line with it.
	for _, m := range f.mergesAt(l.n) {
		if m.Row1 <= head.n && m.Row2 >= l.n && m.Col1 >= d.from && m.Col1 <= d.to {
			for _, s := range sub.slots {
				if s.cell.Kind != grid.String {
					return false
				}
			}
			return true
		}
	}
	for _, s := range sub.slots {
		if t := oneLine(text(s.cell)); len(t) > 44 || len(strings.Fields(t)) > 6 {
			return false
		}
	}
	f.weigh(&sub)
	if f.namesUnderGroups(d, head, l, at) || f.tapsUnderGroup(&sub, head, at) {
		return true
	}
	if sub.data > 0 || len(sub.slots) < 1 {
		return false
	}
	spread := false // a header cell over several columns, or columns without one
	for _, s := range head.between(d.from, d.to) {
		if f.lastColumn(head.n, s.col) > s.col {
			spread = true
		}
	}
	if !spread {
		for _, s := range sub.slots {
			if head.at(s.col) == nil && f.header(s.cell).score >= headerScore {
				spread = true
			}
		}
	}
	next := f.p.lines[at+1 : min(len(f.p.lines), at+3)]
	if len(next) > 1 && f.unitsOnly(next[0].between(d.from, d.to)) {
		next = next[1:]
	}
	if spread && 10*sub.matched >= 6*len(sub.slots) && (sub.matched >= 2 || len(sub.slots) == 1) {
		if len(next) > 0 {
			below := strip{slots: next[0].between(d.from, d.to), from: d.from, to: d.to}
			f.weigh(&below)
			return len(below.slots) > 0 && (below.data > 0 || 2*below.matched < len(below.slots))
		}
		return false
	}
	// Words wrapped over two rows read better together.
	better := 0
	for _, s := range sub.slots {
		top := head.at(s.col)
		if top == nil {
			return false
		}
		alone := f.header(top).score
		both := f.s.Header(oneLine(text(top)) + " " + oneLine(text(s.cell)))
		if b := both.Best(); b.Score > alone+0.02 && both.Explained == 1 && !both.Numbered {
			better++
		}
	}
	return better == len(sub.slots) && better > 0
}

// namesUnderGroups reports whether a line holds the names that belong under
// the groups of the row above, such as models under "Loudspeakers": words only,
// only where the row above has no header of its own, and figures below.
func (f *finder) namesUnderGroups(d *draft, head, l *line, at int) bool {
	sub := strip{from: d.from, to: d.to}
	for _, part := range f.strips(l) {
		if part.from <= d.to+1 && part.to >= d.from {
			sub.slots = append(sub.slots, part.slots...)
		}
	}
	bare := 0
	for _, s := range sub.slots {
		if s.cell.Kind != grid.String || lookOf(s.cell)&(lookWatts|lookNumber|lookLength|lookMissing) != 0 && reLabelTag.FindString(text(s.cell)) == "" {
			return false
		}
		own := head.at(s.col)
		switch {
		case own == nil:
			bare++
		case f.lastColumn(head.n, s.col) > s.col: // a merged group
		case head.at(s.col+1) == nil && slices.ContainsFunc(sub.slots, func(o slot) bool { return o.col == s.col+1 }):
		default:
			return false
		}
	}
	if bare < 2 && !(bare == 1 && len(sub.slots) == 2) || at+1 >= len(f.p.lines) {
		return false
	}
	figures, cells := 0, 0
	for _, l := range f.p.lines[at+1 : min(len(f.p.lines), at+5)] {
		for _, s := range sub.slots {
			if c := l.at(s.col); c != nil {
				cells++
				if lookOf(c)&(lookNumber|lookWatts|lookCount) != 0 {
					figures++
				}
			}
		}
	}
	if cells == 0 || 3*figures < 2*cells {
		return false
	}
	d.from, d.to = min(d.from, sub.slots[0].col), max(d.to, sub.slots[len(sub.slots)-1].col)
	return true
}

// isGroupRow decides whether the line above a header row names groups of its columns.
func (f *finder) isGroupRow(d *draft, l, head *line) bool {
	slots := l.between(d.from, d.to)
	if len(slots) == 0 || len(slots) > len(head.slots) {
		return false
	}
	if len(l.slots) > len(slots) { // cells beside the table: only if they stand clear of it
		for _, s := range l.slots {
			if (s.col == d.from-1 || s.col == d.to+1) && s.cell.Kind != grid.String {
				return false
			}
		}
	}
	spread, matched := 0, 0
	for _, s := range slots {
		t := oneLine(text(s.cell))
		if s.cell.Kind != grid.String || strings.Contains(t, ":") || len(t) > 50 || sectionField(t) != vocabulary.Unknown && strings.ContainsAny(t, "0123456789") {
			return false
		}
		last := f.lastColumn(l.n, s.col)
		if s.col <= d.from && last >= d.to {
			return false // a title over the whole table
		}
		if last > s.col {
			spread++
		}
		if h := f.header(s.cell); h.score >= headerScore {
			if titleFields[h.field] && l.at(s.col+1) != nil && last == s.col {
				return false // a key and its value
			}
			matched++
		}
	}
	for _, m := range f.mergesAt(l.n) { // merged down into the header
		if m.Row2 >= head.n && m.Col1 >= d.from && m.Col1 <= d.to {
			return true
		}
	}
	switch {
	case spread > 0 && (len(slots) > 1 || slots[0].col > d.from || matched > 0):
		return true
	case len(slots) == 1:
		return slots[0].col > d.from && matched == 1 && head.at(slots[0].col) != nil && head.at(slots[0].col+1) != nil
	}
	return 2*matched >= len(slots) && matched >= 1
}

// isTitleLine reports whether a line above a header is a title of the table.
func (f *finder) isTitleLine(d *draft, l *line) bool {
	slots := l.between(d.from, d.to)
	if len(slots) == 0 || len(slots) > 3 || l.at(d.from-1) != nil || l.at(d.to+1) != nil {
		return false
	}
	for _, s := range slots {
		if s.cell.Kind != grid.String {
			return false
		}
	}
	t := oneLine(text(slots[0].cell))
	if len(slots) > 1 && !strings.HasSuffix(t, ":") && sectionField(t) == vocabulary.Unknown {
		return false
	}
	return classOf(t)&classTotal == 0 && !isTotalText(t)
}

// kindsOf are the kinds of tables that the headers of a strip would do for.
func (f *finder) kindsOf(s *strip) []Kind {
	have := map[vocabulary.Field]bool{}
	for _, sl := range s.slots {
		for _, c := range f.s.Header(oneLine(text(sl.cell))).Candidates {
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
