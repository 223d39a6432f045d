package audit

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

// A retap problem: groups of loudspeakers, each of which takes one of the taps
// its model offers, on a tree of places that may each carry so many watts. The
// answer is the choice that keeps every place and gives up the least level in
// all: the sum over loudspeakers of the decibels that each loses. It is a
// multiple-choice knapsack on a tree, solved exactly: every place keeps the
// choices of its subtree that no other choice beats in both watts and decibels.
type retapProblem struct {
	groups []tapGroup
	places []tapPlace // children before their parents; the last one is the root
}

// A tapGroup is loudspeakers that are retapped together: one room, one model, one tap.
type tapGroup struct {
	place   int
	count   float64
	options []tapOption // the first is the tap as it is
	rows    []int
}

// A tapOption is one tap: what one loudspeaker draws, and the level it gives up.
type tapOption struct {
	watts float64
	db    float64
	offer offer
}

// A tapPlace may carry budget watts; fixed is what cannot be changed there.
type tapPlace struct {
	parent int // -1 for the root
	budget float64
	fixed  float64
}

// maxChoices bounds the choices that a place may keep. Past it the problem is
// given up rather than solved by halves.
const maxChoices = 20_000

// A choice is a partial answer: the watts it draws, the level it gives up, and
// how it was put together.
type choice struct {
	watts, db   float64
	changes     int
	group       int // -1: a sum of two others
	option      int
	left, right *choice
}

// solve returns the option of every group, or false when no choice keeps every
// place, or when there are too many to be exact.
func (t *retapProblem) solve() (options []int, ok bool) {
	sums := make([][]*choice, len(t.places))
	for i := range t.places {
		sums[i] = []*choice{{watts: t.places[i].fixed, group: -1}}
	}
	for g := range t.groups {
		p := t.groups[g].place
		var own []*choice
		for k, o := range t.groups[g].options {
			c := &choice{watts: o.watts * t.groups[g].count, db: o.db * t.groups[g].count, group: g, option: k}
			if k > 0 {
				c.changes = 1
			}
			own = append(own, c)
		}
		if sums[p], ok = combine(sums[p], own, t.places[p].budget); !ok {
			return nil, false
		}
	}
	for i := range t.places {
		sums[i] = within(sums[i], t.places[i].budget)
		if len(sums[i]) == 0 {
			return nil, false
		}
		if up := t.places[i].parent; up >= 0 {
			if sums[up], ok = combine(sums[up], sums[i], t.places[up].budget); !ok {
				return nil, false
			}
		}
	}
	best := sums[len(sums)-1][0]
	for _, c := range sums[len(sums)-1] {
		if c.db < best.db-1e-9 || math.Abs(c.db-best.db) <= 1e-9 && c.changes < best.changes {
			best = c
		}
	}
	options = make([]int, len(t.groups))
	best.unfold(options)
	return options, true
}

// unfold writes the options that a choice stands for.
func (c *choice) unfold(options []int) {
	for c != nil {
		if c.group >= 0 {
			options[c.group] = c.option
		}
		if c.right != nil {
			c.right.unfold(options)
		}
		c = c.left
	}
}

// combine adds every choice of one list to every choice of another, and keeps
// those within the budget that no other beats.
func combine(a, b []*choice, budget float64) ([]*choice, bool) {
	out := make([]*choice, 0, len(a)*len(b))
	for _, x := range a {
		for _, y := range b {
			if past(x.watts+y.watts, budget) {
				continue
			}
			out = append(out, &choice{watts: x.watts + y.watts, db: x.db + y.db, changes: x.changes + y.changes, group: -1, left: x, right: y})
		}
	}
	out = unbeaten(out)
	return out, len(out) <= maxChoices && len(out) > 0
}

func within(list []*choice, budget float64) []*choice {
	return slices.DeleteFunc(list, func(c *choice) bool { return past(c.watts, budget) })
}

// unbeaten keeps the choices that no other draws less than while giving up no
// more. Watts within a millionth of a millionth are equal.
func unbeaten(list []*choice) []*choice {
	slices.SortStableFunc(list, func(x, y *choice) int {
		return cmp.Or(cmp.Compare(x.watts, y.watts), cmp.Compare(x.db, y.db), cmp.Compare(x.changes, y.changes))
	})
	kept := list[:0]
	for _, c := range list {
		if n := len(kept); n > 0 {
			last := kept[n-1]
			if c.db > last.db-1e-9 && (c.db > last.db+1e-9 || c.changes >= last.changes) {
				continue
			}
			if math.Abs(c.watts-last.watts) < 1e-9 {
				kept[n-1] = c
				continue
			}
		}
		kept = append(kept, c)
	}
	return kept
}

// A plan says what a place may carry and what its path above may.
type plan struct {
	wanted  float64 // watts: every limit on the path kept, headroom included
	allowed float64 // watts: enough to clear the finding
}

// retap looks for the tap changes below a node, that of a part of the job.
func (p *repair) retap(n *node, part any, pl plan) {
	for _, budget := range []float64{pl.wanted, pl.allowed} {
		t, reason := p.c.retapProblem(n, budget)
		if t == nil {
			p.not("%s", reason)
			return
		}
		options, ok := t.solve()
		if !ok {
			if budget == pl.allowed {
				p.not("even the lowest taps on offer draw too much")
			}
			if pl.wanted == pl.allowed {
				return
			}
			continue
		}
		tried := p.try(func(j *trial) { t.apply(p.c, j, options) }, part)
		if tried == nil {
			continue
		}
		p.keepRetap(t, options, tried.after, available{})
		return
	}
}

// retapAndReplace lowers taps until the largest control there is will do.
func (p *repair) retapAndReplace(i int) {
	c := p.c
	n := &c.controls[i]
	with := c.largestControl(n.lineV)
	t, reason := c.retapProblem(n, with.watts*c.lowestLimit("control-overload", n.emergency)/100)
	if t == nil {
		p.not("%s", reason)
		return
	}
	options, ok := t.solve()
	if !ok {
		p.not("even the lowest taps on offer draw more than %s W", figure(with.watts))
		return
	}
	control := c.job.Controls[i]
	tried := p.try(func(j *trial) {
		t.apply(c, j, options)
		setControl(j.Control(control), with, n.lineV)
	}, control)
	if tried != nil {
		p.keepRetap(t, options, tried.after, with)
	}
}

// keepRetap writes the remedy down.
func (p *repair) keepRetap(t *retapProblem, options []int, after *circuit, with available) {
	var changes, short []string
	pieces := 0.0
	for g, k := range options {
		if k == 0 {
			continue
		}
		grp := &t.groups[g]
		o := grp.options[k]
		l := p.c.rows[grp.rows[0]].l
		where := cmpOr(cmpOr(l.Room.Value, zoneName(l.Zone)), l.Model.Value)
		if where != "" {
			where = " in " + where
		}
		if where == "" && len(grp.rows) == 1 {
			where = " " + l.Tag.Value
		}
		from := p.c.rows[grp.rows[0]].marked.Low
		was, now := figure(from)+" W", figure(o.offer.marked)+" W"
		if tapV := p.c.rows[grp.rows[0]].tapV; o.offer.volts > 0 && o.offer.volts != tapV {
			was, now = was+" at "+volts(tapV), now+" at "+volts(o.offer.volts)
		}
		changes = append(changes, fmt.Sprintf("set %s%s from %s to %s (%+.1f dB)", counted(grp.count, "loudspeaker"), where, was, now, -o.db))
		short = append(short, fmt.Sprintf("%s x %s to %s W", figure(grp.count), figure(from), figure(o.offer.marked)))
		pieces += grp.count
	}
	if len(changes) == 0 {
		return
	}
	n := after.sameNode(p.f)
	r := Remedy{Kind: "retap", Change: strings.Join(changes, "; "), Short: "retap " + strings.Join(short, ", "), Effect: loadEffect(n),
		Before: p.before100(), After: n.share(), Unit: "% of rating", Source: p.c.offerSource(t, options)}
	if with.watts > 0 {
		r.Change = "replace the control by one of " + figure(with.watts) + " W, and " + r.Change
		r.Part, r.Source = ratedPart("control", with, n.lineV), r.Source+"; "+with.source
	}
	if p.f.emergency {
		r.Effect += "; check that emergency messages stay loud enough"
	}
	p.keep(r)
}

// before100 is the measured figure of an overload in percent of the rating.
func (p *repair) before100() float64 {
	n := p.c.sameNode(p.f)
	return n.share()
}

// sameNode is the node that a finding speaks of, in this circuit.
func (c *circuit) sameNode(f *Finding) *node {
	at := c.byKey()
	if i, ok := at.controls[f.key]; ok {
		return &c.controls[i]
	}
	if i, ok := at.channels[f.key]; ok {
		return &c.channels[i]
	}
	if i, ok := at.amplifiers[f.key]; ok {
		return &c.amplifiers[i]
	}
	return &node{}
}

// A keyIndex is the positions of parts by the keys that findings have for them.
type keyIndex struct{ controls, channels, amplifiers map[string]int }

func (c *circuit) byKey() *keyIndex {
	if c.keyed == nil {
		c.keyed = &keyIndex{keyed(c.job.Controls, controlKey), keyed(c.job.Channels, channelKey), keyed(c.job.Amplifiers, amplifierKey)}
	}
	return c.keyed
}

// keyed is the position of the first part of each key.
func keyed[T any](parts []*T, key func(*T) string) map[string]int {
	out := make(map[string]int, len(parts))
	for i, p := range slices.Backward(parts) {
		out[key(p)] = i
	}
	return out
}

func (c *circuit) offerSource(t *retapProblem, options []int) string {
	house := false
	for g, k := range options {
		if k > 0 && len(c.rows[t.groups[g].rows[0]].l.Offered) == 0 {
			house = true
		}
	}
	if house {
		return "taps offered, house book"
	}
	return "taps offered, this schedule"
}

// retapProblem sets the problem up for everything below a node. It returns why
// there is none when a load below is not known or no taps are.
func (c *circuit) retapProblem(n *node, budget float64) (*retapProblem, string) {
	t := &retapProblem{}
	place := map[int]int{} // control to its place
	inside := map[int]bool{}
	var controls []int // below the node, deepest first
	for _, m := range n.members {
		for _, k := range slices.Clone(c.above(c.rows[m.row].control)) {
			if &c.controls[k] == n {
				break
			}
			if !inside[k] && holds(n, &c.controls[k]) {
				inside[k] = true
				controls = append(controls, k)
			}
		}
	}
	depth := func(k int) int { return len(c.above(k)) }
	slices.SortStableFunc(controls, func(a, b int) int { return cmp.Or(cmp.Compare(depth(b), depth(a)), cmp.Compare(a, b)) })
	for _, k := range controls {
		place[k] = len(t.places)
		t.places = append(t.places, tapPlace{parent: -2, budget: c.carries(k)})
	}
	t.places = append(t.places, tapPlace{parent: -1, budget: budget})
	top := len(t.places) - 1
	for _, k := range controls {
		t.places[place[k]].parent = top
		for _, up := range slices.Clone(c.above(k))[1:] {
			if at, ok := place[up]; ok {
				t.places[place[k]].parent = at
				break
			}
		}
	}
	movable := false
	for _, m := range n.members {
		r := &c.rows[m.row]
		if r.part != counts || r.out != notOut {
			continue
		}
		at := top
		for _, k := range slices.Clone(c.above(r.control)) {
			if pl, ok := place[k]; ok {
				at = pl
				break
			}
		}
		w := r.each.times(r.units.times(m.share))
		if !w.bounded() {
			return nil, "a tap below it is not known"
		}
		options := c.optionsOf(r)
		if len(options) < 2 || !m.share.exact() || !r.count.exact() {
			t.places[at].fixed += w.High
			continue
		}
		movable = true
		t.addGroup(c, at, m, options)
	}
	if !movable {
		return nil, "neither the schedule nor the house book lists lower taps for these models"
	}
	return t, ""
}

// holds reports whether all of a control's rows are among those of a node.
func holds(n, inner *node) bool {
	in := make(map[int]bool, len(n.members))
	for _, m := range n.members {
		in[m.row] = true
	}
	for _, m := range inner.members {
		if !in[m.row] {
			return false
		}
	}
	return len(inner.members) > 0
}

// carries is the watts that a control may carry without any finding.
func (c *circuit) carries(control int) float64 {
	n := &c.controls[control]
	if !n.rating.watts.Known {
		return math.Inf(1)
	}
	return n.rating.watts.Low * c.lowestLimit("control-overload", n.emergency) / 100
}

// lowestLimit is the mildest graded limit of a rule in force.
func (c *circuit) lowestLimit(rule string, emergency bool) float64 {
	use := schedule.AnyUse
	if emergency {
		use = schedule.Emergency
	}
	for g := Caution; g <= Danger; g++ {
		if l := c.set.limits[rule].grade[use][g]; l != nil {
			return l.Value
		}
	}
	return math.Inf(1)
}

// addGroup adds a row to the group it is retapped with.
func (t *retapProblem) addGroup(c *circuit, at int, m member, options []tapOption) {
	r := &c.rows[m.row]
	count := r.count.times(m.share).Low
	for i := range t.groups {
		g := &t.groups[i]
		o := &c.rows[g.rows[0]]
		if g.place == at && o.zone == r.zone && o.control == r.control && o.marked == r.marked && folded(o.l.Room.Value) == folded(r.l.Room.Value) &&
			modelKey(o.l.Model.Value) == modelKey(r.l.Model.Value) && slices.Equal(g.options, options) {
			g.count += count
			g.rows = append(g.rows, m.row)
			return
		}
	}
	t.groups = append(t.groups, tapGroup{place: at, count: count, options: options, rows: []int{m.row}})
}

// optionsOf lists the taps that a row may be set to: the present one first,
// then those on offer that draw less, the highest first.
func (c *circuit) optionsOf(r *row) []tapOption {
	if !r.each.exact() || r.wrongV || !r.tapped || r.each.Low <= 0 {
		return nil
	}
	out := []tapOption{{watts: r.each.Low, offer: offer{watts: r.each.Low, marked: r.marked.Low}}}
	loss := 1.0
	if r.lossDB > 0 {
		loss = math.Pow(10, r.lossDB/10)
	}
	for _, o := range r.offers {
		w := o.watts * loss
		if o.watts > 0 && below(w, r.each.Low) {
			out = append(out, tapOption{watts: w, db: 10 * math.Log10(r.each.Low/w), offer: o})
		}
	}
	slices.SortStableFunc(out[1:], func(a, b tapOption) int { return cmp.Compare(b.watts, a.watts) })
	// One tap marked for two voltages is one tap: keep the marking of the line.
	return slices.CompactFunc(out, func(a, b tapOption) bool { return same(a.watts, b.watts) })
}

// apply sets the taps in a copy of the job.
func (t *retapProblem) apply(c *circuit, j *trial, options []int) {
	for g, k := range options {
		if k == 0 {
			continue
		}
		o := t.groups[g].options[k].offer
		for _, row := range t.groups[g].rows {
			setTap(j.Loudspeaker(c.rows[row].l), o)
		}
	}
}

func setTap(l *schedule.Loudspeaker, o offer) {
	l.Tap = stateQuantity(schedule.Watts(o.marked))
	if o.volts > 0 {
		l.TapVolts = stateQuantity(schedule.Volts(o.volts))
	}
}
