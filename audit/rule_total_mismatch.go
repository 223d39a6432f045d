package audit

import (
	_ "embed"
	"fmt"
	"math"
	"strings"

	"lineaudit/audit/schedule"
)

//go:embed doc/total-mismatch.md
var totalMismatchDoc string

// totalMismatch finds sums in the schedule that are not the sum of their rows.
var totalMismatch = &Rule{
	Name:  "total-mismatch",
	Title: "a total in the schedule is not the sum of its rows",
	Why:   "The amplifier was chosen by the total on paper: a wrong one means a wrong amplifier, or rows that were added or taken away afterwards.",
	Doc:   totalMismatchDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 1, Unit: "% of the sum", Source: "plain arithmetic; the margin for rounding is common practice, no source"},
		{Name: "rounding", Default: 0.5, Unit: "W", Source: "common practice, no source", Note: "differences up to this are rounding"},
	},
	Silent: []string{
		"the total includes a factor that the schedule states",
		"the total matches the rows with their spare and future ones, or what wrong-voltage taps really draw",
		"the total is a usual margin (10, 15, 20, 25, 30 or 50 %) above the sum: then it is a question",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "count the loudspeakers and read their taps, or ask who made the sheet",
	Check:    checkTotalMismatch,
}

// margins are the factors that a total may silently include. Common practice,
// no source, except 1.2 (a loudspeaker manual p. 17, manualsdump.com 10863) and
// 1.25 (QSC CX Series Application Guide p. 12).
var margins = [...]float64{1.1, 1.15, 1.2, 1.25, 1.3, 1.5}

// A statement is one total with the sums that would bear it out.
type statement struct {
	claim
	stated  schedule.Quantity[schedule.Watts]
	factor  float64
	marked  Interval // installed rows as marked
	drawn   Interval // installed rows as drawn
	planned Interval // as marked, spare and future rows included
	sum     string
	least   Interval // marked, without the rows that have no tap
	low     bool     // it has rows of low impedance, for which its author may have counted anything
	open    string   // why the sum cannot be known
}

func checkTotalMismatch(x *Examination) error {
	c := x.circuit
	x.rowTotals()
	for _, t := range x.Job.Totals {
		if t.Stated.Had() && len(t.Rows) > 0 {
			x.jobTotal(&t)
		}
	}
	for i, z := range x.Job.Zones {
		if z.Stated.Had() {
			x.nodeTotal(z.Stated, &c.zones[i], zoneKey(z), "zone "+z.Name, z.At, z.Name)
		}
	}
	for i, k := range x.Job.Controls {
		if count, ok := k.Count.Exact(); k.Stated.Had() && (!ok || count <= 1) {
			x.nodeTotal(k.Stated, &c.controls[i], controlKey(k), controlName(k), k.At, zoneName(k.Zone))
		}
	}
	for i, ch := range x.Job.Channels {
		if ch.Stated.Had() {
			x.nodeTotal(ch.Stated, &c.channels[i], channelKey(ch), channelName(ch), ch.At, c.onlyZone(&c.channels[i]))
		}
	}
	return nil
}

// rowTotals checks the row totals of single rows against count x tap. Those
// that hold are one pass.
func (x *Examination) rowTotals() {
	c := x.circuit
	held := 0
	defer func() { x.passAll(held, "row total", "the count times the tap") }()
	for i := range c.rows {
		r := &c.rows[i]
		l := r.l
		if !l.RowTotal.Had() || !l.Tap.Had() || r.out == absurd || l.RowTotal.How == schedule.Computed || l.Tap.How == schedule.Computed {
			continue
		}
		if stated, ok := l.RowTotal.Exact(); ok && x.difference(float64(stated), quantity(l.Tap).times(r.count)) == Exact(0) {
			held++
			continue
		}
		s := &statement{stated: l.RowTotal, marked: quantity(l.Tap).times(r.count), drawn: r.total()}
		s.planned = s.marked
		s.sum = fmt.Sprintf("%s x %s W = %s W", span(r.count), span(quantity(l.Tap)), span(s.marked))
		s.claim = claim{key: rowKey(l) + "\x1frow total", place: rowName(l), room: l.Room.Value, zone: zoneName(l.Zone), at: placeOf(l.RowTotal.Source, l.At),
			pieces: pieceCount(r), emergency: r.emergency,
			cells: func() []Evidence { return r.evidence(appendCell(nil, l.RowTotal.Source, "row total")) }}
		x.total(s)
	}
}

// nodeTotal checks the load that the schedule states for a zone, control or channel.
func (x *Examination) nodeTotal(stated schedule.Quantity[schedule.Watts], n *node, key, place string, at schedule.Ref, zone string) {
	if !stated.Had() || stated.How == schedule.Computed || len(n.members) == 0 {
		return
	}
	s := &statement{stated: stated, sum: n.load.Sum}
	s.claim = claim{key: key + "\x1ftotal", place: place, zone: zone, at: placeOf(stated.Source, at), pieces: n.pieces(), emergency: n.emergency,
		cells: func() []Evidence {
			return append(appendCell(nil, stated.Source, "total"), x.circuit.cells(n)...)
		}}
	x.addUp(s, n.members)
	x.total(s)
}

// summed says what a total row sums, and the zone when all of it is in one.
func (c *circuit) summed(t *schedule.Total, n *node) (of, zone string) {
	of, zone = cmpOr(t.Of, "the sheet"), c.onlyZone(n)
	if zone != "" && !strings.Contains(of, zone) {
		of += ", zone " + zone
	}
	return of, zone
}

// jobTotal checks one total row.
func (x *Examination) jobTotal(t *schedule.Total) {
	c := x.circuit
	members := make([]member, 0, len(t.Rows))
	for _, l := range t.Rows {
		if i := c.positionOf(l); i >= 0 {
			members = append(members, member{i, whole})
		}
	}
	s := &statement{stated: t.Stated, factor: t.Factor}
	n := &node{members: members}
	of, zone := c.summed(t, n)
	s.claim = claim{key: "total\x1f" + folded(of), place: "total of " + of, zone: zone, at: placeOf(t.Stated.Source, t.At),
		cells: func() []Evidence { return append(appendCell(nil, t.Stated.Source, "total"), c.cells(n)...) }}
	x.addUp(s, members)
	x.total(s)
}

func (x *Examination) addUp(s *statement, members []member) {
	zero, more := Exact(0), Exact(0)
	s.marked, s.drawn, s.planned = zero, zero, zero
	var t tally
	for _, m := range members {
		r := &x.circuit.rows[m.row]
		if r.part == notCounted {
			continue
		}
		if r.out == absurd || r.doubted != nil {
			s.open = "a row of it is kept out of the sums"
			continue
		}
		if r.out == lowImpedance { // whatever its author counted for it
			more = Interval{0, math.Inf(1), true}
			continue
		}
		pieces := r.units.times(m.share)
		if r.out == offLine {
			continue
		}
		s.planned = s.planned.plus(r.marked.times(pieces))
		if r.part != counts {
			continue
		}
		s.marked = s.marked.plus(r.marked.times(pieces))
		s.drawn = s.drawn.plus(r.each.times(pieces))
		s.pieces += pieceCount(r)
		s.emergency = s.emergency || r.emergency
		t.addMarked(r, pieces)
	}
	s.least, s.low = s.marked, more.High > 0
	s.marked, s.drawn, s.planned = s.marked.plus(more), s.drawn.plus(more), s.planned.plus(more)
	s.sum = t.sum(s.marked)
}

// total judges a statement against the sum that comes nearest to it.
func (x *Examination) total(s *statement) {
	stated, ok := s.stated.Exact()
	if !ok || s.open != "" || !s.marked.Known || stated < 0 || math.IsInf(float64(stated), 0) || math.IsNaN(float64(stated)) {
		if s.open != "" {
			x.result.Unshown = append(x.result.Unshown, Unshown{Rule: x.rule, Place: s.place, At: s.at, Why: s.open})
		}
		return
	}
	factor := 1.0
	if s.factor > 0 {
		factor = s.factor
	}
	want := float64(stated)
	if s.low && x.difference(want, s.least.scaled(factor)) == Exact(0) {
		s.measured, s.unit, s.message = Exact(0), "% of the sum", fmt.Sprintf("stated %s W, the sum of the rows that have taps", figure(want))
		x.pass(&s.claim) // its author counted nothing for what has no tap
		return
	}
	best := Interval{}
	for _, sum := range []Interval{s.marked, s.drawn, s.planned} {
		off := x.difference(want, sum.scaled(factor))
		if !best.Known || off.Low < best.Low || off.Low == best.Low && off.High < best.High {
			best = off
		}
	}
	s.measured, s.unit = best, "% of the sum"
	s.message = fmt.Sprintf("stated %s W, but %s", figure(want), s.sum)
	if factor != 1 {
		s.message += fmt.Sprintf(", x %s = %s W", figure(factor), span(s.marked.scaled(factor)))
	}
	sum := s.marked.scaled(factor)
	s.show = func(float64) (Interval, float64, string) { return Exact(want), sum.High, "W" }
	s.settles = "whether the total stated for " + strings.TrimPrefix(s.place, "total of ") + " is right"
	s.claim.gaps = func() []gap {
		return []gap{{s.at, "total", fmt.Sprintf("What does the stated total of %s W include? The rows come to %s W.", figure(want), span(s.marked))}}
	}
	if m := x.margin(want, s); m > 0 {
		s.claim.gaps = func() []gap {
			return []gap{{s.at, "total", fmt.Sprintf("Does the stated total of %s W include a margin of %s %% on the %s W of the rows?",
				figure(want), figure(math.Round((m-1)*100)), span(s.marked))}}
		}
		x.open(&s.claim, "the total may include a margin")
		return
	}
	x.judge(&s.claim)
}

// difference is how far a stated total is from a sum, in percent of the sum; 0
// within rounding, and from 0 where the sum may be the stated one.
func (x *Examination) difference(stated float64, sum Interval) Interval {
	off := func(v float64) float64 {
		d := math.Abs(stated - v)
		switch {
		case !past(d, x.setting("rounding")):
			return 0
		case v == 0 || math.IsInf(v, 1):
			return math.Inf(1)
		}
		return 100 * d / v
	}
	a, b := off(sum.Low), off(sum.High)
	if stated >= sum.Low && stated <= sum.High {
		return between(0, math.Max(a, b))
	}
	return between(math.Min(a, b), math.Max(a, b))
}

// margin finds a usual margin that explains a total, 0 for none.
func (x *Examination) margin(stated float64, s *statement) float64 {
	if s.factor > 0 || !s.marked.exact() || s.measured.High == 0 {
		return 0
	}
	for _, m := range margins {
		if d := math.Abs(stated - s.marked.Low*m); !past(d, x.setting("rounding")) {
			return m
		}
	}
	return 0
}
