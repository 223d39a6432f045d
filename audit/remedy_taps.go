package audit

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

// tapForLine moves wrong-voltage taps to those that their transformers offer
// for this line, nearest to the watts that were meant.
func (p *repair) tapForLine() {
	c := p.c
	type move struct {
		row int
		o   offer
	}
	var moves []move
	var rows []int
	var texts []string
	for _, i := range p.resting() {
		r := &c.rows[i]
		if !r.wrongV || r.part != counts || r.out != notOut {
			continue
		}
		best := offer{}
		for _, o := range r.offers {
			if o.volts > 0 && same(o.volts, r.lineV) && (best.watts == 0 || math.Abs(math.Log(o.watts/r.marked.Low)) < math.Abs(math.Log(best.watts/r.marked.Low))) {
				best = o
			}
		}
		if best.watts == 0 {
			what, lists := cmpOr(r.l.Model.Value, rowName(r.l)), "lists no tap for "+volts(r.lineV)
			if len(r.offers) == 0 {
				lists = "comes without a list of its taps"
			}
			p.not("%s %s: replace the transformer or the loudspeaker by one for %s", what, lists, volts(r.lineV))
			return
		}
		moves, rows = append(moves, move{i, best}), append(rows, i)
		texts = append(texts, fmt.Sprintf("set %s from %s W at %s to %s W at %s", rowName(r.l), figure(r.marked.Low), volts(r.tapV), figure(best.marked), volts(best.volts)))
	}
	if len(moves) == 0 {
		return
	}
	tried := p.try(func(j *trial) {
		for _, m := range moves {
			setTap(j.Loudspeaker(c.rows[m.row].l), m.o)
		}
	}, c.loudspeakers(rows)...)
	if tried == nil {
		return
	}
	watts, now := 0.0, 0.0
	for _, m := range moves {
		watts += c.rows[m.row].total().High
		now += tried.after.rows[tried.after.positionOf(tried.Loudspeaker(c.rows[m.row].l))].total().High
	}
	p.keep(Remedy{Kind: "retap", Change: strings.Join(slices.Compact(texts), "; "), Short: "tap for " + volts(c.rows[moves[0].row].lineV), Before: watts, After: now, Unit: "W",
		Effect: fmt.Sprintf("draws %s W instead of %s W", figure(now), figure(watts)), Source: "taps offered"})
}

// resting lists the rows on whose taps the finding rests.
func (p *repair) resting() []int {
	var out []int
	for _, e := range p.f.Cells {
		out = append(out, p.tapAt[e.At]...)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// loudspeakers are those of rows, as try takes them.
func (c *circuit) loudspeakers(rows []int) []any {
	out := make([]any, len(rows))
	for i, row := range rows {
		out[i] = c.rows[row].l
	}
	return out
}

// nearestTap sets a tap that is not on offer, or above the rating, to the
// nearest one that is and that overloads nothing.
func (p *repair) nearestTap() {
	c := p.c
	var rows []int
	for _, i := range p.resting() {
		if r := &c.rows[i]; r.part == counts && r.out == notOut && r.tapped {
			rows = append(rows, i)
		}
	}
	if len(rows) == 0 {
		return
	}
	r := &c.rows[rows[0]]
	most := math.Inf(1)
	if rated := c.ratedOf(r); rated.Had() {
		most = float64(rated.Low)
	}
	taps, source := c.tapsFor(r, most)
	if len(taps) == 0 && len(r.offers) == 0 {
		p.not("which taps it has is not listed: it needs one of at most %s W", figure(most))
		return
	}
	pieces := 0.0
	for _, i := range rows {
		pieces += pieceCount(&c.rows[i])
	}
	for _, o := range taps {
		if p.try(func(j *trial) {
			for _, i := range rows {
				setTap(j.Loudspeaker(c.rows[i].l), o)
			}
		}, c.loudspeakers(rows)...) == nil {
			p.not("the tap of %s W on offer would overload something else", figure(o.marked))
			continue
		}
		p.keep(Remedy{Kind: "retap", Change: fmt.Sprintf("set %s from %s W to %s W (%+.1f dB)", counted(pieces, "loudspeaker"), figure(r.marked.Low), figure(o.marked),
			10*math.Log10(o.marked/r.marked.Low)), Short: "retap to " + figure(o.marked) + " W", Before: r.marked.Low, After: o.marked, Unit: "W", Source: source})
		return
	}
	p.not("no tap on offer suits")
}

// tapsFor lists the taps up to most watts that a row may be set to, the nearest
// first, and where they come from: what its model offers, else what other
// loudspeakers of its model in this job are set to, where that is within 3 dB
// of what it may have: there may be nearer ones.
func (c *circuit) tapsFor(r *row, most float64) (taps []offer, source string) {
	source = "taps offered"
	for _, o := range r.offers {
		if (o.volts == 0 || r.tapV == 0 || same(o.volts, r.tapV)) && !past(o.marked, most) {
			taps = append(taps, o)
		}
	}
	if len(r.offers) == 0 && r.model != 0 {
		source = "taps of the same model in this job"
		for i := range c.rows {
			o := &c.rows[i]
			known := o.model == r.model && o.tapV == r.tapV && o.tapped && o.out == notOut && o.marked.exact() && o.marked != r.marked
			if known && !past(o.marked.Low, most) && !below(o.marked.Low*2, math.Min(most, r.marked.Low)) {
				taps = append(taps, offer{watts: o.each.Low, marked: o.marked.Low})
			}
		}
	}
	apart := func(o offer) float64 { return math.Abs(math.Log(o.marked / r.marked.Low)) }
	slices.SortStableFunc(taps, func(a, b offer) int { return cmp.Or(cmp.Compare(apart(a), apart(b)), cmp.Compare(a.marked, b.marked)) })
	return slices.CompactFunc(taps, func(a, b offer) bool { return a.marked == b.marked }), source
}

// evenTaps sets the odd loudspeakers of a room to the tap that most have.
func (p *repair) evenTaps() {
	c := p.c
	count := map[float64]float64{}
	var rows []int
	for _, i := range p.resting() {
		if r := &c.rows[i]; r.part == counts && r.tapped {
			rows = append(rows, i)
			count[r.marked.Low] += pieceCount(r)
		}
	}
	var taps []float64
	for w := range count {
		taps = append(taps, w)
	}
	slices.SortFunc(taps, func(a, b float64) int { return cmp.Or(cmp.Compare(count[b], count[a]), cmp.Compare(a, b)) })
	if len(taps) < 2 {
		return
	}
	for _, w := range taps {
		if p.evenTo(w, rows) {
			return
		}
	}
}

// evenTo tries one tap for all of a room.
func (p *repair) evenTo(w float64, rows []int) bool {
	c := p.c
	pieces, db := 0.0, 0.0
	for _, i := range rows {
		if r := &c.rows[i]; r.marked.Low != w {
			pieces += pieceCount(r)
			if d := 10 * math.Log10(w/r.marked.Low); math.Abs(d) > math.Abs(db) {
				db = d
			}
		}
	}
	if p.try(func(j *trial) {
		for _, i := range rows {
			if c.rows[i].marked.Low != w {
				j.Loudspeaker(c.rows[i].l).Tap = stateQuantity(schedule.Watts(w))
			}
		}
	}, c.loudspeakers(rows)...) == nil {
		p.not("%s W for all of the room would overload something", figure(w))
		return false
	}
	p.keep(Remedy{Kind: "retap", Change: fmt.Sprintf("set %s in %s to %s W like the others (%+.1f dB at most)", counted(pieces, "loudspeaker"), p.f.Room, figure(w), db),
		Short: "retap to " + figure(w) + " W", Before: p.f.Measured.High, After: 0, Unit: "dB", Source: "the other taps of the room"})
	return true
}
