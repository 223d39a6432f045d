package audit

import (
	"math"
	"slices"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// solveTree solves a tree with its lightest and its heaviest values, groups
// both at one place and spread along the cable that leads to it.
func (c *circuit) solveTree(n *network) {
	t := n.tree
	if t == nil || t.volts <= 0 {
		return
	}
	low, high := c.solveBoth(t, false)
	lowSpread, highSpread := low, high
	if t.hasGroups() {
		lowSpread, highSpread = c.solveBoth(t, true)
	}
	if low == nil || lowSpread == nil {
		n.line.Incomplete = "it could not be solved"
		return
	}
	if low.worst < 0 && (high == nil || high.worst < 0) {
		n.line.Incomplete = "no loudspeaker on it"
		n.missing = append(n.missing, gap{n.line.At, "to", "Which loudspeakers hang on " + n.place + "?"})
		return
	}
	n.judged = between(math.Min(low.worstDB, lowSpread.worstDB), math.Inf(1))
	n.line.LoadW = Interval{low.watts, math.Inf(1), true}
	if high != nil && highSpread != nil {
		n.judged.High = math.Max(high.worstDB, highSpread.worstDB)
		n.line.LoadW.High = high.watts
		n.line.WorstDB = between(math.Max(low.worstDB, lowSpread.worstDB), math.Max(high.worstDB, highSpread.worstDB))
		n.fill(c, t, high)
	} else {
		n.fill(c, t, low)
	}
	for _, m := range n.members {
		if o := c.rows[m.row].out; o == lowImpedance || o == absurd {
			n.judged.High = math.Inf(1)
			n.line.Incomplete = "a row of it is kept out"
		}
	}
}

// hasGroups reports whether several loudspeakers hang at one place, so that
// the two readings differ.
func (t *tree) hasGroups() bool {
	for i := range t.nodes {
		if t.nodes[i].spread > 1 {
			return true
		}
	}
	return false
}

// solveBoth solves a tree with the low and with the high ends of its values: once
// where no value has two.
func (c *circuit) solveBoth(t *tree, spread bool) (low, high *treeSolution) {
	low = c.solve(t, false, spread)
	if low != nil && low.exact {
		return low, low
	}
	return low, c.solve(t, true, spread)
}

// A treeSolution is a tree solved once.
type treeSolution struct {
	exact   bool // no value of it has bounds
	worstDB float64
	worst   int // branch
	watts   float64
	at      []line.NodeResult // one for each branch: the last piece of it
	loops   []float64         // ohm from the source to each branch
}

// solve solves a tree with the low or the high end of every value. It returns
// nil where the high end of a value is not known.
func (c *circuit) solve(t *tree, high, spread bool) *treeSolution {
	pick := func(i Interval) float64 {
		if high {
			return i.High
		}
		return i.Low
	}
	nodes := c.nodes[:0]
	last := slices.Grow(c.last[:0], len(t.nodes))[:len(t.nodes)]
	out := &treeSolution{exact: true, loops: make([]float64, len(t.nodes)), worst: -1, at: make([]line.NodeResult, 0, len(t.nodes))}
	defer func() { c.nodes, c.last = nodes, last }()
	for i := range t.nodes {
		b := &t.nodes[i]
		loop := pick(b.d.loop)
		out.exact = out.exact && b.d.loop.Low == b.d.loop.High
		watts := 0.0
		for _, m := range b.members {
			r := &c.rows[m.row]
			if r.out == notOut {
				w := r.each.times(r.units.times(m.share))
				watts += pick(w)
				out.exact = out.exact && w.Low == w.High
			}
		}
		if math.IsInf(loop, 1) || math.IsInf(watts, 1) {
			return nil
		}
		out.watts += watts
		parent := line.Source
		if b.parent >= 0 {
			parent = last[b.parent]
			out.loops[i] = out.loops[b.parent]
		}
		n := 1
		if b.pieces > 1 {
			n = min(b.pieces, maxSpread)
			loop *= float64(b.pieces) / float64(n)
		} else if spread && b.spread > 1 {
			n = b.spread
			loop /= float64(n)
		}
		out.loops[i] += loop * float64(n)
		for k := range n {
			node := line.Node{Parent: parent, LoopOhms: loop, LoadSiemens: line.Siemens(t.volts, watts) / float64(n)}
			if k == n-1 && b.ratioDB > 0 {
				node.Ratio = math.Pow(10, -b.ratioDB/20)
			}
			nodes = append(nodes, node)
			parent = len(nodes) - 1
		}
		last[i] = parent
	}
	sol, err := c.solver.Solve(t.volts, nodes)
	if err != nil {
		return nil
	}
	for i := range t.nodes {
		r := sol.Nodes[last[i]]
		out.at = append(out.at, r)
		if nodes[last[i]].LoadSiemens > 0 && (out.worst < 0 || r.LossDB > out.worstDB) {
			out.worstDB, out.worst = r.LossDB, i
		}
	}
	return out
}

// fill writes a solution into the line as plain nodes.
func (n *network) fill(c *circuit, t *tree, s *treeSolution) {
	l := &n.line
	l.Nodes = append(l.Nodes[:0], Node{Parent: -1, Kind: "amplifier", Place: channelLabel(l.Channel), At: channelAt(l.Channel), Volts: t.volts})
	loop := Interval{}
	for i := range t.nodes {
		b := &t.nodes[i]
		loop = loop.hull(Exact(s.loops[i]))
		node := Node{Parent: b.parent + 1, Kind: c.kindOf(n, b), Place: c.placeName(n, b), At: placeOf(b.d.k.Length.Source, b.d.k.At),
			LengthM: b.d.length.High * float64(max(1, b.pieces)), AreaMM2: b.d.areaOf().Low,
			Volts: s.at[i].Volts, LossDB: s.at[i].LossDB, Watts: s.at[i].LoadWatts, ThroughW: s.at[i].FeedWatts}
		for _, m := range b.members {
			node.Loudspeakers += int(pieceCount(&c.rows[m.row]))
		}
		if b.pieces > 1 {
			node.Watts *= float64(min(b.pieces, maxSpread))
		}
		l.Nodes = append(l.Nodes, node)
	}
	l.Nodes[0].ThroughW, l.Nodes[0].Watts = s.watts, 0
	if loop.Known && n.judged.bounded() {
		l.LoopOhm = Exact(loop.High)
	}
	if s.worst >= 0 {
		n.worst = l.Nodes[s.worst+1].Place
	}
}

// longest is the length of the longest way from the output to a loudspeaker, in m.
func (t *tree) longest() Interval {
	lengths := make([]Interval, len(t.nodes))
	longest := Interval{}
	for i := range t.nodes {
		b := &t.nodes[i]
		lengths[i] = b.d.length.scaled(float64(max(1, b.pieces)))
		if b.parent >= 0 {
			lengths[i] = lengths[i].plus(lengths[b.parent])
		}
		if lengths[i].Known && lengths[i].High > longest.High {
			longest = lengths[i]
		}
	}
	return longest
}

func channelLabel(ch *schedule.Channel) string {
	if ch == nil {
		return ""
	}
	return ch.Label()
}

func channelAt(ch *schedule.Channel) schedule.Ref {
	if ch == nil {
		return schedule.Ref{}
	}
	return ch.At
}

func (c *circuit) kindOf(n *network, b *branch) string {
	p := &c.graph.places[b.place]
	switch {
	case p.control >= 0:
		return "control"
	case p.text == "" && (p.row >= 0 || p.zone >= 0):
		return "loudspeaker"
	}
	return "joint"
}

func (c *circuit) placeName(n *network, b *branch) string {
	p := &c.graph.places[b.place]
	switch {
	case p.control >= 0:
		return controlName(c.job.Controls[p.control])
	case p.row >= 0:
		return rowName(c.rows[p.row].l)
	case p.zone >= 0:
		return "zone " + c.job.Zones[p.zone].Name
	}
	return p.text
}
