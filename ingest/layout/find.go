package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// A draft is a table on its way: where its header and its rows are.
type draft struct {
	header   []int // line numbers of the header rows, ascending
	units    map[int]bool
	repeated map[int]Class // later lines that repeat the header or its units
	heads    map[int]bool  // lines that are known as titles of sections
	above    []int         // line numbers of the titles directly above
	from, to int           // columns
	first    int           // line numbers of the body
	last     int
	words    map[int]map[int]string // header line -> column -> folded text
	fixed    bool                   // stands for a transposed table, found before
	skip     bool                   // cannot be read
}

// mostTitles is the most cells of a line of titles over headers side by side.
const mostTitles = 3

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
		if f.headsHistory(i) {
			for _, a := range active {
				a.last = min(a.last, l.n-1)
			}
			active = slices.DeleteFunc(active, func(a *draft) bool { return a.last < l.n })
			continue
		}
		again := f.repeats(active, l)
		if len(again) > 0 && !besideRepeats(active, again, l) {
			continue
		}
		if len(l.slots) <= mostTitles && i+1 < len(lines) && lines[i+1].n == l.n+1 && len(f.repeats(active, &lines[i+1])) > 0 {
			continue // "BUILDING" over a header that comes again
		}
		atBreak := i < 30 || l.n-lines[i-1].n > 1 || len(lines[i-1].slots) <= 2
		if !promising(l, atBreak) && !f.forcedIn(l) || f.keyedLine(l) {
			continue
		}
		below := lines[i+1 : min(len(lines), i+1+lookAhead)]
		strips := f.headerStrips(l, below, atBreak)
		for _, s := range strips {
			if overlapping(again, s.from, s.to) != nil {
				continue
			}
			over := overlapping(active, s.from, s.to)
			if over != nil && f.continuesRows(over, &s, strips, i) || f.saysOfPlaces(i, &s) {
				continue
			}
			if over != nil && s.from > over.from+1 && len(l.between(over.from, s.from-1)) >= 2 && s.distinct >= 2 {
				if !f.beginsBeside(i, &s, below) {
					continue
				}
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

// beginsBeside reports whether a strip inside the columns of a running table
// may be the header of another one beside it: nothing stands on it, and words
// stand over figures. A row that says "spare" and "in its box" is none.
func (f *finder) beginsBeside(i int, s *strip, below []line) bool {
	above := &f.p.lines[i-1]
	return (above.n < f.p.lines[i].n-1 || len(above.between(s.from, s.to)) == 0) && contrast(s, below) > 0
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
		if f.forced[s.cell.folded()] != vocabulary.Unknown {
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
		t := sl.cell.folded()
		for j := i - 1; j >= 0 && i-j <= back && f.p.lines[j].n >= d.first; j-- {
			c := f.p.lines[j].at(sl.col)
			if c.blank() || d.repeated[f.p.lines[j].n] != "" {
				continue
			}
			if c.folded() == t || lookOf(c)&k != 0 {
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

// repeats returns the running tables whose header row the line repeats, and notes it there.
func (f *finder) repeats(active []*draft, l *line) (again []*draft) {
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
			if slots[0].cell.folded() != words[slots[0].col] && slots[len(slots)-1].cell.folded() != words[slots[len(slots)-1].col] {
				continue
			}
			same := 0
			for _, s := range slots {
				if s.cell.folded() == words[s.col] {
					same++
				}
			}
			if 10*same >= 7*len(slots) && (same >= 2 || len(words) == 1) {
				class := Header
				if d.units[h] {
					class = UnitsRow
				}
				d.repeated[l.n] = class
				again = append(again, d)
				break
			}
		}
	}
	return again
}

// besideRepeats reports whether a line that repeats the headers of some running tables has
// three cells or more below another table, which may be the header of a third: "Point | Qty | Tap"
// again on the left, "Amp | Output | W" on the right.
func besideRepeats(active, again []*draft, l *line) bool {
	for _, d := range active {
		if !slices.Contains(again, d) && len(l.between(d.from, d.to)) >= 3 {
			return true
		}
	}
	return false
}
