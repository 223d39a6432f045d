package audit

import (
	"math"

	"lineaudit/audit/schedule"
)

// maxSpread is the most pieces that a group at one place is spread over for
// the even reading; more change the result by less than a thousandth.
const maxSpread = 200

// A tree is one cable network fed by a channel, without closed rings.
type tree struct {
	volts float64
	nodes []branch // parents before children
}

// A branch is one place of a tree with the cable that leads to it.
type branch struct {
	parent  int // -1: the amplifier
	place   int // in graph.places
	d       *conduit
	pieces  int
	members []member
	ratioDB float64 // insertion loss of the control here
	spread  int     // loudspeakers that the schedule puts at this one place, when it is a group
}

// trees turns the joined places into lines: one for every branch that leaves a
// channel, since branches of one amplifier output do not load each other's cable.
func (g *graph) trees() []*network {
	if len(g.joins) == 0 {
		return nil
	}
	at := g.hangRows()
	seen := make([]bool, len(g.places))
	var out []*network
	for root := range g.places {
		if g.places[root].channel >= 0 {
			out = append(out, g.fromRoot(root, seen, at)...)
		}
	}
	for root := range g.places {
		if seen[root] || len(g.places[root].joins) == 0 {
			continue
		}
		start, channel := g.lostRoot(root, seen)
		nets := g.fromRoot(start, seen, at)
		for _, n := range nets {
			ch := channel
			if ch == several {
				ch = g.branchChannel(start, n)
			}
			g.adopt(n, start, ch)
		}
		out = append(out, nets...)
	}
	return out
}

// hangRows finds the place of every row: its own, else the nearest control or
// the zone that a cable leads to; -1 for none.
func (g *graph) hangRows() [][]member {
	at := make([][]member, len(g.places))
	firsts := make([]member, len(g.places)) // most places have one
	put := func(p, row int, share Interval) {
		if at[p] == nil {
			at[p] = firsts[p : p : p+1]
		}
		at[p] = append(at[p], member{row, share})
	}
	has := func(p any) (int, bool) {
		i, ok := g.byPart[p]
		return i, ok && len(g.places[i].joins) > 0
	}
	for i := range g.c.rows {
		r := &g.c.rows[i]
		if r.part != counts {
			continue
		}
		if p, ok := has(r.l); ok {
			put(p, i, whole)
			continue
		}
		if r.l.Zone != nil {
			if p, ok := has(r.l.Zone); ok && g.behindControl(p) {
				put(p, i, whole)
				continue
			}
		}
		placed := false
		for _, k := range g.c.above(r.control) {
			if p, ok := has(g.c.job.Controls[k]); ok {
				put(p, i, whole)
				placed = true
				break
			}
		}
		if placed || r.l.Zone == nil {
			continue
		}
		if p, ok := has(r.l.Zone); ok {
			put(p, i, whole)
		}
	}
	return at
}

// behindControl reports whether a cable joins a place to a control.
func (g *graph) behindControl(p int) bool {
	for _, j := range g.places[p].joins {
		if g.places[g.joins[j].a+g.joins[j].b-p].control >= 0 {
			return true
		}
	}
	return false
}

// several stands for a channel where rows hang on more than one.
const several = -2

// oneChannel is the channel of what hangs together, where ch is that of one more of its places; -1 for none.
func oneChannel(channel, ch int) int {
	switch {
	case ch < 0 || channel == ch:
		return channel
	case channel == -1:
		return ch
	}
	return several
}

// branchChannel is the channel that the rows of one branch behind a root share, -1 if there is none: several lines may
// start at a rack that is called by its place.
func (g *graph) branchChannel(root int, n *network) int {
	if n.tree == nil {
		return -1 // a ring
	}
	channel := g.placeChannel(&g.places[root])
	for i := range n.tree.nodes {
		channel = oneChannel(channel, g.placeChannel(&g.places[n.tree.nodes[i].place]))
	}
	return channel
}

// lostRoot picks where a network without a channel starts: at an end that no
// cable leads to, as written; and the channel that its rows hang on, -1 for none.
func (g *graph) lostRoot(start int, seen []bool) (root, channel int) {
	root, channel = start, -1
	best := 4
	visited := map[int]bool{start: true}
	queue := []int{start}
	for len(queue) > 0 {
		p := queue[0]
		queue = queue[1:]
		n := &g.places[p]
		rank := 3
		switch {
		case n.asTo:
		case n.joint():
			rank = 0
		case n.control >= 0:
			rank = 1
		default:
			rank = 2
		}
		if rank < best {
			root, best = p, rank
		}
		channel = oneChannel(channel, g.placeChannel(n))
		for _, j := range n.joins {
			o := g.joins[j].a + g.joins[j].b - p
			if !visited[o] && !seen[o] {
				visited[o] = true
				queue = append(queue, o)
			}
		}
	}
	return root, channel
}

func (g *graph) placeChannel(n *place) int {
	var ch *schedule.Channel
	switch {
	case n.row >= 0:
		if list := g.c.rows[n.row].channels; len(list) == 1 {
			return list[0]
		}
	case n.control >= 0:
		ch = g.c.channelOfControl(g.c.job.Controls[n.control])
	case n.zone >= 0:
		ch = g.c.job.Zones[n.zone].Channel
	}
	if i := indexOf(g.c.channelAt, ch); i >= 0 {
		return g.c.head[i]
	}
	return -1
}

// adopt gives a network that no cable ties to a channel the one its rows hang on.
func (g *graph) adopt(n *network, start, channel int) {
	p := &g.places[start]
	if channel < 0 {
		n.loose = true
		n.line.Incomplete = "nothing on it leads to an amplifier"
		n.judged = Interval{}
		return
	}
	n.setChannel(g.c, channel)
	switch {
	case p.joint():
		ch := g.c.job.Channels[channel]
		g.c.assumed = append(g.c.assumed, schedule.Assumption{At: n.line.At, Field: "from", Written: p.text, TakenAs: ch.Label(),
			How: schedule.Computed, Because: "the loudspeakers on this cable hang on it"})
	case p.control >= 0:
		n.line.Incomplete = "the run to " + controlName(g.c.job.Controls[p.control]) + " is not listed"
	default:
		n.line.Incomplete = "the run to its first place is not listed"
	}
	g.c.solveTree(n)
	if !p.joint() && n.judged.Known {
		n.judged.High = math.Inf(1)
	}
}

// fromRoot builds one network for every branch that leaves a root.
func (g *graph) fromRoot(root int, seen []bool, at [][]member) []*network {
	seen[root] = true
	var out []*network
	for _, j := range g.places[root].joins {
		first := g.joins[j].a + g.joins[j].b - root
		if g.joins[j].walked {
			continue // the other end of a ring
		}
		if g.places[first].channel >= 0 && g.places[root].channel >= 0 {
			g.loose = append(g.loose, g.joins[j].d.k)
			continue
		}
		if g.asOneLength(root, first, j) {
			seen[first] = true
			out = append(out, g.c.oneLengthLine(g.oneOf(root, first, j, at)))
			continue
		}
		if seen[first] {
			out = append(out, g.ring(root, []int{j}))
			continue
		}
		out = append(out, g.grow(root, j, seen, at))
	}
	return out
}

// asOneLength reports whether a cable from a channel simply ends at a zone, a
// control or a group of loudspeakers, so that one length is all that is known.
func (g *graph) asOneLength(root, first, j int) bool {
	p := &g.places[first]
	if g.places[root].channel < 0 || p.text != "" || g.joins[j].pieces > 1 {
		return false
	}
	if p.row >= 0 || p.control >= 0 {
		return len(p.joins) == 1
	}
	for _, k := range p.joins {
		if o := g.joins[k].a + g.joins[k].b - first; g.places[o].channel < 0 {
			return false
		}
	}
	return true
}

func (g *graph) oneOf(root, first, j int, at [][]member) single {
	p := &g.places[first]
	s := single{k: g.joins[j].d.k, members: at[first], channel: g.places[root].channel, control: p.control >= 0, device: p.row >= 0}
	if p.zone >= 0 && len(p.joins) > 1 {
		s.members = g.zoneMembers(g.c.job.Zones[p.zone], s.channel)
		same := 0
		for _, k := range p.joins {
			if g.joins[k].a+g.joins[k].b-first == root {
				same++
			}
		}
		s.shared = same > 1
	}
	return s
}

// grow walks the branch behind one cable.
func (g *graph) grow(root, first int, seen []bool, at [][]member) *network {
	t := &tree{}
	n := &network{tree: t, presume: math.Inf(1)}
	ringed := []int{}
	type step struct{ from, join, parent int }
	queue := []step{{root, first, -1}}
	g.joins[first].queued = true
	for len(queue) > 0 {
		s := queue[0]
		queue = queue[1:]
		j := &g.joins[s.join]
		j.walked = true
		p := j.a + j.b - s.from
		if seen[p] {
			ringed = append(ringed, s.join)
			continue
		}
		seen[p] = true
		b := branch{parent: s.parent, place: p, d: &j.d, pieces: j.pieces, members: at[p]}
		if k := g.places[p].control; k >= 0 {
			b.ratioDB = g.c.insertionDB(k)
		}
		b.spread = g.spreadOf(p, &b)
		t.nodes = append(t.nodes, b)
		n.line.Cables = append(n.line.Cables, j.d.k)
		me := len(t.nodes) - 1
		for _, k := range g.places[p].joins {
			if !g.joins[k].queued {
				g.joins[k].queued = true
				queue = append(queue, step{p, k, me})
			}
		}
	}
	g.describe(n, root, first)
	if len(ringed) > 0 {
		n.ring = true
		n.line.Incomplete = "its cables form a closed ring, through " + cableName(g.joins[ringed[0]].d.k)
		n.judged = Interval{}
		n.tree = nil
		return n
	}
	if ch := g.places[root].channel; ch >= 0 {
		n.setChannel(g.c, ch)
	}
	g.c.solveTree(n)
	return n
}

// spreadOf is the number of loudspeakers that hang at one place as a group.
func (g *graph) spreadOf(p int, b *branch) int {
	if g.places[p].control >= 0 {
		return 1 // the run ends at the control
	}
	count := 0.0
	for _, m := range b.members {
		count += pieceCount(&g.c.rows[m.row])
	}
	return int(math.Min(math.Max(1, count), maxSpread))
}

// describe fills what is known of a network before it is solved.
func (g *graph) describe(n *network, root, first int) {
	k := g.joins[first].d.k
	n.key = "tree\x1f" + cableKey(k)
	n.line.Reading = "segments"
	n.line.Name = lineName(k)
	n.line.At = placeOf(k.Length.Source, k.At)
	n.line.Zone = k.Zone
	n.count = Exact(0)
	zone := -2
	for i := range n.tree.nodes {
		for _, m := range n.tree.nodes[i].members {
			r := &g.c.rows[m.row]
			n.members = append(n.members, m)
			n.line.Emergency = n.line.Emergency || r.emergency
			n.count = n.count.plus(r.count)
			if zone == -2 {
				zone = r.zone
			} else if zone != r.zone {
				zone = -1
			}
		}
	}
	if n.line.Zone == nil && zone >= 0 {
		n.line.Zone = g.c.job.Zones[zone]
	}
	if k.Name == "" && zone >= 0 {
		n.line.Name = g.c.job.Zones[zone].Name
	}
	n.place = "line " + n.line.Name
	n.use = useOf(n.line.Emergency, n.line.Zone, nil)
	materials, area := "", Interval{}
	for i := range n.tree.nodes {
		b := &n.tree.nodes[i]
		if m := metalOf(b.d.k); materials == "" {
			materials = m
		} else if materials != m {
			materials = "mixed"
		}
		if a := b.d.areaOf(); a.Known && (!area.Known || a.Low < area.Low) {
			area = a
		}
		n.missing = append(n.missing, g.c.cableGaps(b.d)...)
	}
	n.line.Material, n.line.AreaMM2, n.line.LengthM = materials, area, n.tree.longest()
	n.missing = append(n.missing, g.c.rowGaps(&node{members: n.members})...)
}

// cableGaps asks for the length and the size of one piece.
func (c *circuit) cableGaps(d *conduit) []gap {
	var out []gap
	if !d.length.Known && !d.k.Length.Had() {
		out = append(out, gap{placeOf(d.k.Length.Source, d.k.At), "length", "How long is " + cableName(d.k) + ", one way?"})
	}
	if !d.perMetre.Known && !d.k.Area.Had() && !d.k.AWG.Had() {
		out = append(out, gap{placeOf(d.k.Gauge.Source, d.k.At), "gauge", "What size are the conductors of " + cableName(d.k) + "?"})
	}
	return out
}

func (n *network) setChannel(c *circuit, channel int) {
	n.line.Channel = c.job.Channels[channel]
	n.line.LineV = voltsInterval(c.channels[channel].lineV)
	n.use = useOf(n.line.Emergency, n.line.Zone, n.line.Channel)
	if n.tree != nil {
		n.tree.volts = c.channels[channel].lineV
	}
}

// ring is a network that closes on itself with its first cable.
func (g *graph) ring(root int, joins []int) *network {
	k := g.joins[joins[0]].d.k
	n := &network{key: "tree\x1f" + cableKey(k), ring: true, presume: math.Inf(1), count: Exact(0)}
	n.line = Line{Name: lineName(k), At: placeOf(k.Length.Source, k.At), Zone: k.Zone, Cables: []*schedule.Cable{k}, Reading: "segments",
		Incomplete: "its cables form a closed ring, through " + cableName(k)}
	n.place = "line " + n.line.Name
	if ch := g.places[root].channel; ch >= 0 {
		n.setChannel(g.c, ch)
	}
	return n
}
