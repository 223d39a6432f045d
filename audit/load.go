package audit

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

// maxTerms is how many different terms a sum names; the rest are added up in
// one last term. No more than this fit a line that a person would follow.
const maxTerms = 12

// A term is one kind of loudspeaker in a sum: a count and what each draws.
type term struct {
	count  Interval
	each   Interval
	marked Interval
	tapV   float64 // 0: that of the line
	lossDB float64
	lump   bool // rows that state no more than their total
}

// A tally adds rows up. It is reused from node to node.
type tally struct {
	terms []term
	text  []byte
}

// sum works out the load of every node.
func (c *circuit) sum() {
	var t tally
	for i := range c.zones {
		c.total(&c.zones[i], &t)
	}
	for i := range c.controls {
		n := &c.controls[i]
		c.total(n, &t)
		c.shareOut(n, c.job.Controls[i].Count, "equal controls")
		if c.job.Controls[i].Stereo.Yes {
			n.divide(2, "the two sides of the control")
		}
	}
	for i := range c.channels {
		c.total(&c.channels[i], &t)
	}
	for i := range c.amplifiers {
		n := &c.amplifiers[i]
		c.total(n, &t)
		c.shareOut(n, c.job.Amplifiers[i].Count, "equal amplifiers")
		for _, ch := range c.job.Amplifiers[i].Channels {
			if at := indexOf(c.channelAt, ch); at >= 0 && n.lineV == 0 {
				n.lineV = c.channels[at].lineV
			}
		}
	}
}

// total sums one node.
func (c *circuit) total(n *node, t *tally) {
	t.terms = t.terms[:0]
	zero := Exact(0)
	watts, marked, more, count := zero, zero, zero, zero
	for _, m := range n.members {
		r := &c.rows[m.row]
		pieces := r.units.times(m.share)
		if r.part == growth {
			if r.out == notOut {
				more = more.plus(r.each.times(pieces))
			}
			continue
		}
		count = count.plus(r.count.times(m.share))
		switch r.out {
		case lowImpedance:
			n.lowRows++
			continue
		case absurd:
			n.oddRows++
			continue
		case offLine:
			continue
		}
		if !r.known() {
			n.openRows++
		}
		watts = watts.plus(r.each.times(pieces))
		asMarked := r.each
		if r.wrongV {
			asMarked = r.marked
		}
		marked = marked.plus(asMarked.times(pieces))
		t.add(r, pieces)
	}
	n.total, n.marked = watts, marked
	n.load = Load{Watts: watts, WithGrowth: watts.plus(more), Count: count, Sum: t.sum(watts), Incomplete: n.incomplete()}
}

// add adds what a row draws from its line.
func (t *tally) add(r *row, pieces Interval) {
	tapV := r.tapV
	if tapV == r.lineV {
		tapV = 0
	}
	t.addTerm(term{pieces, r.each, r.marked, tapV, r.lossDB, r.lump})
}

// addMarked adds a row as its taps are marked, whatever they draw.
func (t *tally) addMarked(r *row, pieces Interval) {
	t.addTerm(term{count: pieces, each: r.marked, marked: r.marked, lump: r.lump})
}

func (t *tally) addTerm(n term) {
	for i := range t.terms {
		k := &t.terms[i]
		if k.each == n.each && k.marked == n.marked && k.tapV == n.tapV && k.lossDB == n.lossDB && k.lump == n.lump {
			k.count = k.count.plus(n.count)
			return
		}
	}
	t.terms = append(t.terms, n)
}

// sum writes the terms, the smallest tap first: "12 x 5 W + 4 x 10 W = 100 W".
func (t *tally) sum(total Interval) string {
	if len(t.terms) == 0 {
		return ""
	}
	slices.SortFunc(t.terms, func(a, b term) int {
		return cmp.Or(cmp.Compare(a.each.Low, b.each.Low), cmp.Compare(a.each.High, b.each.High),
			cmp.Compare(a.marked.Low, b.marked.Low), cmp.Compare(a.tapV, b.tapV), cmp.Compare(a.lossDB, b.lossDB))
	})
	b := t.text[:0]
	shown := t.terms
	rest := Exact(0)
	if len(shown) > maxTerms {
		for _, k := range shown[maxTerms-1:] {
			rest = rest.plus(k.each.times(k.count))
		}
		shown = shown[:maxTerms-1]
	}
	for i := range shown {
		if i > 0 {
			b = append(b, " + "...)
		}
		b = shown[i].write(b)
	}
	if len(shown) < len(t.terms) {
		b = append(b, " + "...)
		b = appendSpan(b, rest)
		b = append(b, " W of "...)
		b = appendFigure(b, float64(len(t.terms)-len(shown)))
		b = append(b, " other kinds"...)
	}
	b = append(b, " = "...)
	b = appendSpan(b, total)
	b = append(b, " W"...)
	t.text = b
	return string(b)
}

func appendSpan(b []byte, i Interval) []byte {
	if i.exact() {
		return appendFigure(b, i.Low)
	}
	return append(b, span(i)...)
}

// write appends "6 x 10 W", "6 x 10 W (5 W at 70.7 V)", "3 x (2.5 to 10) W" or,
// for a row that states no more than its total, "32 W as written".
func (k *term) write(b []byte) []byte {
	once := k.lump && k.count == whole
	if !once {
		b = appendBracketed(b, k.count)
		b = append(b, " x "...)
	}
	b = appendBracketed(b, k.each)
	b = append(b, " W"...)
	if once {
		b = append(b, " as written"...)
	}
	if k.tapV == 0 && k.lossDB == 0 {
		return b
	}
	b = append(b, " ("...)
	b = appendSpan(b, k.marked)
	b = append(b, " W"...)
	if k.tapV > 0 {
		b = append(b, " at "...)
		b = append(b, volts(k.tapV)...)
	}
	if k.lossDB > 0 {
		b = append(b, ", insertion loss "...)
		b = append(b, decibels(k.lossDB)...)
	}
	return append(b, ')')
}

func appendBracketed(b []byte, i Interval) []byte {
	switch {
	case i.exact():
		return appendFigure(b, i.Low)
	case i.Low == 0 && math.IsInf(i.High, 1):
		return append(b, "(unknown)"...)
	}
	b = append(b, '(')
	b = append(b, span(i)...)
	return append(b, ')')
}

// incomplete says what the sum leaves out.
func (n *node) incomplete() string {
	if n.lowRows+n.oddRows+n.openRows == 0 {
		return ""
	}
	var why []string
	if n.lowRows > 0 {
		why = append(why, counted(float64(n.lowRows), "low-impedance row")+" kept out")
	}
	if n.oddRows > 0 {
		why = append(why, counted(float64(n.oddRows), "row")+" with an implausible value kept out")
	}
	if n.openRows > 0 {
		why = append(why, counted(float64(n.openRows), "row")+" without a tap or a count")
	}
	return strings.Join(why, "; ")
}

// shareOut divides a load over a group of equal parts that one row of the
// schedule stands for: the fullest of n carries at least an nth of it, and at
// most all of it.
func (c *circuit) shareOut(n *node, count schedule.Quantity[schedule.Pieces], what string) {
	if k, ok := count.Exact(); ok && k > 1 {
		n.divide(float64(k), what)
	}
}

func (n *node) divide(k float64, over string) {
	n.load.Watts.Low /= k
	n.marked.Low /= k
	if n.load.Sum != "" {
		n.load.Sum += ", over " + figure(k) + " " + over
		if k == 2 && strings.HasPrefix(over, "the two") {
			n.load.Sum = strings.Replace(n.load.Sum, "over 2 the two", "over the two", 1)
		}
	}
}

// cells lists the cells that a node's load rests on, in reading order.
func (c *circuit) cells(n *node) []Evidence {
	out := make([]Evidence, 0, 2*len(n.members))
	for _, m := range n.members {
		if r := &c.rows[m.row]; r.part == counts && r.out != offLine {
			out = r.evidence(out)
		}
	}
	slices.SortStableFunc(out, func(a, b Evidence) int { return a.At.Compare(b.At) })
	return compactCells(out)
}

// evidence appends the cells that say what a row draws.
func (r *row) evidence(out []Evidence) []Evidence {
	l := r.l
	switch {
	case l.Tap.Had():
		out = appendCell(out, l.Tap.Source, "tap")
	case l.RowTotal.Had():
		out = appendCell(out, l.RowTotal.Source, "row total")
	case l.LowImpedance.Had():
		out = appendCell(out, l.LowImpedance.Source, "impedance")
	case r.doubted != nil:
		out = append(out, Evidence{At: *r.doubted, Role: "tap that cannot be"})
	default:
		out = append(out, Evidence{At: l.At, Role: "no tap"})
	}
	if l.Count.Had() && l.Count.At.Row > 0 {
		out = appendCell(out, l.Count.Source, "count")
	}
	if r.wrongV {
		out = appendCell(out, l.TapVolts.Source, "tap voltage")
	}
	return out
}

// appendCell adds the cell of a value, if it has one.
func appendCell(out []Evidence, s schedule.Source, role string) []Evidence {
	if !s.Had() || s.At.IsZero() {
		return out
	}
	return append(out, Evidence{At: s.At, Written: s.Written, Role: role})
}

// compactCells joins neighbours that are one cell.
func compactCells(in []Evidence) []Evidence {
	return slices.CompactFunc(in, func(a, b Evidence) bool { return a.At == b.At })
}

// expectedOhm is what an impedance meter should show for a load at a line
// voltage: V^2/P. Unknown without either, or without load.
func expectedOhm(lineV float64, watts Interval) Interval {
	if lineV <= 0 || !watts.Known || watts.High <= 0 {
		return Interval{}
	}
	v2 := lineV * lineV
	high := math.Inf(1)
	if watts.Low > 0 {
		high = v2 / watts.Low
	}
	low := v2 / watts.High
	return between(low, high)
}
