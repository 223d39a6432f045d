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
	var texts []string
	for i := range c.rows {
		r := &c.rows[i]
		if !r.wrongV || r.part != counts || r.out != notOut || !p.rests(r) {
			continue
		}
		best := offer{}
		for _, o := range r.offers {
			if o.volts > 0 && same(o.volts, r.lineV) && (best.watts == 0 || math.Abs(math.Log(o.watts/r.marked.Low)) < math.Abs(math.Log(best.watts/r.marked.Low))) {
				best = o
			}
		}
		if best.watts == 0 {
			p.not("%s lists no tap for %s: replace the transformer or the loudspeaker by one for this line", cmpOr(r.l.Model.Value, rowName(r.l)), volts(r.lineV))
			return
		}
		moves = append(moves, move{i, best})
		texts = append(texts, fmt.Sprintf("set %s from %s W at %s to %s W at %s", rowName(r.l), figure(r.marked.Low), volts(r.tapV), figure(best.marked), volts(best.volts)))
	}
	after := p.try(func(j *schedule.Job) {
		for _, m := range moves {
			setTap(j.Loudspeakers[m.row], m.o)
		}
	})
	if len(moves) == 0 || after == nil {
		return
	}
	watts, now := 0.0, 0.0
	for _, m := range moves {
		watts += c.rows[m.row].total().High
		now += after.rows[m.row].total().High
	}
	p.keep(Remedy{Kind: "retap", Change: strings.Join(slices.Compact(texts), "; "), Short: "tap for " + volts(c.rows[moves[0].row].lineV), Before: watts, After: now, Unit: "W",
		Effect: fmt.Sprintf("draws %s W instead of %s W", figure(now), figure(watts)), Source: "taps offered"})
}

// rests reports whether the finding rests on the tap of a row.
func (p *repair) rests(r *row) bool {
	for _, e := range p.f.Cells {
		if e.At == r.l.Tap.At {
			return true
		}
	}
	return false
}

// nearestTap sets a tap that is not on offer, or above the rating, to the
// nearest one that is.
func (p *repair) nearestTap() {
	c := p.c
	var best offer
	var rows []int
	for i := range c.rows {
		r := &c.rows[i]
		if r.part != counts || r.out != notOut || !r.tap.Had() || !p.rests(r) {
			continue
		}
		rows = append(rows, i)
		if len(rows) > 1 {
			continue
		}
		most := math.Inf(1)
		if rated := c.ratedOf(r); rated.Had() {
			most = float64(rated.Low)
		}
		for _, o := range r.offers {
			if o.volts > 0 && r.tapV > 0 && !same(o.volts, r.tapV) || past(o.marked, most) {
				continue
			}
			if best.marked == 0 || math.Abs(math.Log(o.marked/r.marked.Low)) < math.Abs(math.Log(best.marked/r.marked.Low)) {
				best = o
			}
		}
	}
	if best.marked == 0 {
		p.not("no tap on offer suits")
		return
	}
	r := &c.rows[rows[0]]
	after := p.try(func(j *schedule.Job) {
		for _, i := range rows {
			setTap(j.Loudspeakers[i], best)
		}
	})
	if after == nil {
		p.not("the nearest tap on offer, %s W, overloads something else", figure(best.marked))
		return
	}
	pieces := 0.0
	for _, i := range rows {
		pieces += pieceCount(&c.rows[i])
	}
	p.keep(Remedy{Kind: "retap", Change: fmt.Sprintf("set %s from %s W to %s W (%+.1f dB)", counted(pieces, "loudspeaker"), figure(r.marked.Low), figure(best.marked),
		10*math.Log10(best.marked/r.marked.Low)), Short: "retap to " + figure(best.marked) + " W", Before: r.marked.Low, After: best.marked, Unit: "W", Source: "taps offered"})
}

// evenTaps sets the odd loudspeakers of a room to the tap that most have.
func (p *repair) evenTaps() {
	c := p.c
	count := map[float64]float64{}
	var rows []int
	for i := range c.rows {
		if r := &c.rows[i]; r.part == counts && r.tap.Had() && p.rests(r) {
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
	usual, pieces, db := taps[0], 0.0, 0.0
	for _, i := range rows {
		if r := &c.rows[i]; r.marked.Low != usual {
			pieces += pieceCount(r)
			if d := 10 * math.Log10(usual/r.marked.Low); math.Abs(d) > math.Abs(db) {
				db = d
			}
		}
	}
	after := p.try(func(j *schedule.Job) {
		for _, i := range rows {
			if c.rows[i].marked.Low != usual {
				j.Loudspeakers[i].Tap = stateQuantity(schedule.Watts(usual))
			}
		}
	})
	if after == nil {
		p.not("the usual tap of the room, %s W, overloads something", figure(usual))
		return
	}
	p.keep(Remedy{Kind: "retap", Change: fmt.Sprintf("set %s in %s to %s W like the others (%+.1f dB at most)", counted(pieces, "loudspeaker"), p.f.Room, figure(usual), db),
		Short: "retap to " + figure(usual) + " W", Before: p.f.Measured.High, After: 0, Unit: "dB", Source: "the other taps of the room"})
}
