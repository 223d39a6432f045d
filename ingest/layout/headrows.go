package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// A header may take several rows: groups above it, words below it that belong
// to them, units; titles stand over it.

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
	if top > 0 && lines[top-1].n == lines[top].n-1 {
		if over := lines[top-1].between(d.from, d.to); len(over) >= 2 && f.unitsOnly(over) {
			d.header = slices.Insert(d.header, 0, lines[top-1].n)
			d.units[lines[top-1].n] = true
			top--
		}
	}
	for j := top - 1; j >= 0 && len(d.header) < 4 && i-j <= 3; j-- {
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
				words[sl.col] = sl.cell.folded()
			}
		}
		d.words[h] = words
	}
	return d
}

// unitUnder reports whether a lone unit belongs to the header right above it.
func (f *finder) unitUnder(head *line, s slot) bool {
	c := head.at(s.col)
	if c.blank() {
		return false
	}
	unit := f.s.Header(strings.Trim(s.cell.line(), " []()")).Unit
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
	if head.at(to).blank() || l.at(to).blank() || f.header(l.at(to)).score < headerScore {
		return d.to
	}
	for {
		c := l.at(to + 1)
		if c.blank() || !head.at(to+1).blank() || f.header(c).score < headerScore {
			return to
		}
		to++
	}
}

// continues decides whether the line under a header row is a second row of it.
func (f *finder) continues(d *draft, head, l *line, at int) bool {
	beyond := f.underLastGroup(d, head, l)
	sub := strip{slots: l.between(d.from, beyond), from: d.from, to: beyond}
	if sentences(sub.slots) || slices.ContainsFunc(sub.slots, func(s slot) bool { return reGroup.MatchString(s.cell.line()) }) {
		return false // "4 x 15 W" is what hangs there
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
	if f.powersBelow(d, head, at) {
		return true
	}
	for _, s := range sub.slots {
		if t := s.cell.line(); len(t) > 44 || len(strings.Fields(t)) > 6 {
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
			if head.at(s.col).blank() && f.header(s.cell).score >= headerScore {
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
		if top.blank() {
			return false
		}
		alone := f.header(top).score
		both := f.s.Header(top.line() + " " + s.cell.line())
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
		case own.blank():
			bare++
		case f.lastColumn(head.n, s.col) > s.col: // a merged group
		case head.at(s.col+1).blank() && slices.ContainsFunc(sub.slots, func(o slot) bool { return o.col == s.col+1 }):
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
			if c := l.at(s.col); !c.blank() {
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
	if f.titleAndSubject(d, l, head) || f.titleAndSheet(d, l, head) || f.keyedLine(l) {
		return false
	}
	spread, matched, volts := 0, 0, 0
	for _, s := range slots {
		t := s.cell.line()
		if s.cell.Kind != grid.String || strings.Contains(t, ":") || len(t) > 50 || sectionField(t) != vocabulary.Unknown && anyDigit(t) {
			return false
		}
		last := f.lastColumn(l.n, s.col)
		if reLineVolts.MatchString(t) {
			return false // "Linie 100 V" is the system's
		}
		if s.col <= d.from && last >= d.to {
			return false // a title over the whole table
		}
		if last > s.col {
			spread++
		}
		if h := f.header(s.cell); h.score >= headerScore {
			if titleFields[h.field] && !l.at(s.col+1).blank() && last == s.col {
				return false // a key and its value
			}
			if matched++; last == s.col && lineVoltsWord(t) {
				volts++
			}
		}
	}
	if volts == 1 && matched == 1 {
		return false // "Palm House | 100 V line": the system's, while groups name a voltage each
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
		return slots[0].col > d.from && matched == 1 && !head.at(slots[0].col).blank() && !head.at(slots[0].col+1).blank()
	}
	return 2*matched >= len(slots) && matched >= 1
}

// titleAndSubject reports whether the first line of a sheet has two cells at the left, the first of which is no word for
// a column, over a header of many more: "Town of Elmfield, works" beside "Inventory of the PA".
func (f *finder) titleAndSubject(d *draft, l, head *line) bool {
	if len(l.slots) != 2 || l.n != f.p.lines[0].n || len(head.slots) < len(l.slots)+3 || l.slots[0].col != d.from || l.slots[1].col != d.from+1 {
		return false
	}
	for _, s := range l.slots {
		if f.lastColumn(l.n, s.col) > s.col {
			return false // merged: a group
		}
	}
	return f.header(l.slots[0].cell).score < headerScore
}

// titleAndSheet reports whether the first line of a sheet has a title at the left, which is no word for a column, and
// the name of the sheet at the right, over headers that need no groups: each is understood, and none comes twice.
func (f *finder) titleAndSheet(d *draft, l, head *line) bool {
	if len(l.slots) != 2 || l.n != f.p.lines[0].n || l.slots[0].col != d.from || len(head.slots) < 4 || f.header(l.slots[0].cell).score >= headerScore ||
		vocabulary.Fold(f.p.sheet) != l.slots[1].cell.folded() {
		return false
	}
	seen := make(map[string]bool)
	for _, s := range head.between(d.from, d.to) {
		if seen[s.cell.folded()] || f.header(s.cell).score < headerScore {
			return false
		}
		seen[s.cell.folded()] = true
	}
	return true
}

// isTitleLine reports whether a line above a header is a title of the table.
func (f *finder) isTitleLine(d *draft, l *line) bool {
	slots := l.between(d.from, d.to)
	if headsBlock(slots) || f.keyedLine(l) || f.numbersCard(l) {
		return true
	}
	if len(slots) == 0 || len(slots) > 3 || !l.at(d.from-1).blank() || !l.at(d.to+1).blank() {
		return false
	}
	for _, s := range slots {
		if s.cell.Kind != grid.String {
			return false
		}
	}
	t := slots[0].cell.line()
	if len(slots) > 1 && !strings.HasSuffix(t, ":") && sectionField(t) == vocabulary.Unknown {
		return false
	}
	return classOf(t)&classTotal == 0 && !isTotalText(t)
}
