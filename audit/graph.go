package audit

import (
	"math"

	"lineaudit/audit/schedule"
)

// A graph is the cables of a job as a network of places: what a cable joins,
// whichever way round it was written.
type graph struct {
	c       *circuit
	places  []place
	byPart  map[any]int    // a pointer of the model to its place
	byText  map[string]int // an end that names no part to its place
	joins   []join
	single  []single
	loose   []*schedule.Cable // cables with no place to lead to
	unclear []int             // rows whose length may be from the rack or from the one before
	runRows map[*schedule.Cable][]int
	runCtl  map[*schedule.Cable]int
	targets map[string][]int // singles by what they feed
	along   map[alongKey]int // near ends of cables along the loudspeakers of a row to their places, -1 before they are met
}

// A place is one point that cables meet at. Positions are -1 for what it is not.
type place struct {
	channel, control, zone, row int
	text                        string // a joint, or the tag of one of several in a row, as written
	joins                       []int
	asTo                        bool // some cable leads to it
}

// A join is one cable between two places.
type join struct {
	a, b   int
	d      conduit
	pieces int // equal pieces that lead from loudspeaker to loudspeaker, else 1
	walked bool
	queued bool // for the walk
}

func newGraph(c *circuit) *graph {
	n := len(c.job.Cables)
	g := &graph{c: c, byPart: make(map[any]int, n), byText: map[string]int{}, runRows: make(map[*schedule.Cable][]int, n),
		runCtl: map[*schedule.Cable]int{}, targets: map[string][]int{}, places: make([]place, 0, n+1), joins: make([]join, 0, n)}
	own := make([]int, len(c.rows)) // most cables lead to one row
	for i := range c.rows {
		if k := c.rows[i].l.Run; k != nil && c.rows[i].part == counts {
			rows := g.runRows[k]
			if rows == nil {
				rows = own[i : i : i+1]
			}
			g.runRows[k] = append(rows, i)
		}
	}
	for i, k := range c.job.Controls {
		if k.Run != nil && k.Status == schedule.Installed {
			g.runCtl[k.Run] = i
		}
	}
	g.ranAlong()
	var chains, unclear []*schedule.Cable
	for _, k := range c.job.Cables {
		if k.Status != schedule.Installed {
			continue
		}
		rows := g.runRows[k]
		ctl, toControl := g.runCtl[k]
		ends := k.From.Text.Value != "" || k.To.Text.Value != "" || k.From.Resolved() || k.To.Resolved()
		switch {
		case k.Reach == schedule.WholeLine:
			g.whole(k, rows)
		case ends && (k.Reach == schedule.FromTo || k.Reach == schedule.ReachUnknown):
			g.between(k, rows)
		case len(rows) > 0 && k.Reach == schedule.FromPrevious:
			chains = append(chains, k)
		case len(rows) > 0 && k.Reach == schedule.FromRack:
			g.homeRun(k, rows)
		case len(rows) > 0:
			unclear = append(unclear, k)
		case toControl:
			g.toControl(k, ctl)
		default:
			g.whole(k, nil)
		}
	}
	g.chain(chains)
	for _, k := range unclear {
		g.homeRun(k, g.runRows[k])
		g.unclear = append(g.unclear, g.runRows[k]...)
	}
	g.markShared()
	return g
}

// part is the place of a part of the model, made when it is first met.
func (g *graph) part(p any) int {
	if i, ok := g.byPart[p]; ok {
		return i
	}
	n := place{channel: -1, control: -1, zone: -1, row: -1}
	switch v := p.(type) {
	case *schedule.Channel:
		n.channel = indexOf(g.c.channelAt, v)
		if n.channel >= 0 && g.c.head[n.channel] != n.channel {
			return g.part(g.c.job.Channels[g.c.head[n.channel]])
		}
	case *schedule.Control:
		n.control = indexOf(g.c.controlAt, v)
	case *schedule.Zone:
		n.zone = indexOf(g.c.zoneAt, v)
	case *schedule.Loudspeaker:
		n.row = g.c.positionOf(v)
	}
	g.places = append(g.places, n)
	g.byPart[p] = len(g.places) - 1
	return len(g.places) - 1
}

// joint is the place of an end that names no part.
func (g *graph) joint(text string) int {
	key := folded(text)
	if i, ok := g.byText[key]; ok {
		return i
	}
	g.places = append(g.places, place{channel: -1, control: -1, zone: -1, row: -1, text: text})
	g.byText[key] = len(g.places) - 1
	return len(g.places) - 1
}

func (c *circuit) positionOf(l *schedule.Loudspeaker) int {
	if c.rowAt == nil {
		c.rowAt = positions(c.job.Loudspeakers)
	}
	return indexOf(c.rowAt, l)
}

// join adds a cable between two places.
func (g *graph) join(from, to int, k *schedule.Cable, pieces int) {
	if from < 0 || to < 0 || from == to {
		g.loose = append(g.loose, k)
		return
	}
	g.joins = append(g.joins, join{a: from, b: to, d: g.c.conduit(k), pieces: pieces})
	g.places[from].joins = append(g.places[from].joins, len(g.joins)-1)
	g.places[to].joins = append(g.places[to].joins, len(g.joins)-1)
	g.places[to].asTo = true
}

// source is the place of the channel that feeds a row, else -1.
func (g *graph) source(row int) int {
	if ch := g.c.rows[row].channels; len(ch) > 0 {
		return g.part(g.c.job.Channels[ch[0]])
	}
	return -1
}

// homeRun adds cables that each lead from the rack to one row.
func (g *graph) homeRun(k *schedule.Cable, rows []int) {
	for _, r := range rows {
		s := single{k: k, members: []member{{r, whole}}, channel: -1}
		if ch := g.c.rows[r].channels; len(ch) > 0 {
			s.channel = ch[0]
		}
		g.addSingle(s, "row "+rowKey(g.c.rows[r].l)+figure(float64(r)))
	}
}

// toControl adds the run from the channel, or the control above, to a control.
func (g *graph) toControl(k *schedule.Cable, ctl int) {
	control := g.c.job.Controls[ctl]
	to := g.part(control)
	if p := control.Parent; p != nil && p.Run != nil {
		g.join(g.part(p), to, k, 1)
		return
	}
	if ch := g.c.channelOfControl(control); ch != nil {
		g.join(g.part(ch), to, k, 1)
		return
	}
	g.loose = append(g.loose, k)
}

// chain adds the pieces that lead from the loudspeaker before to this one, in
// the order of the rows. The first of a zone, or of a control that has a run
// of its own, is fed from the channel or from that control.
func (g *graph) chain(cables []*schedule.Cable) {
	if len(cables) == 0 {
		return
	}
	in := make(map[*schedule.Cable]bool, len(cables))
	for _, k := range cables {
		in[k] = true
	}
	type head struct{ channel, zone, control int }
	last := map[head]int{}
	for i := range g.c.rows {
		r := &g.c.rows[i]
		if r.l.Run == nil || !in[r.l.Run] || r.part != counts {
			continue
		}
		h := head{-1, r.zone, -1}
		if len(r.channels) > 0 {
			h.channel = r.channels[0]
		}
		feed := -1
		if r.control >= 0 {
			if at, ok := g.byPart[g.c.job.Controls[r.control]]; ok && len(g.places[at].joins) > 0 {
				h.control, h.zone, feed = r.control, -1, at
			}
		}
		before, ok := last[h]
		if !ok {
			before = feed
			if before < 0 {
				before = g.source(i)
			}
			if before < 0 {
				before = g.joint("feed of " + cmpOr(zoneName(r.l.Zone), rowName(r.l)))
			}
		}
		to := g.part(r.l)
		pieces := 1
		if n, ok := r.l.Run.Count.Exact(); ok && n > 1 && r.count.exact() && float64(n) == r.count.Low {
			pieces = int(n)
		}
		g.join(before, to, r.l.Run, pieces)
		last[h] = to
	}
}

// between adds a cable with written ends.
func (g *graph) between(k *schedule.Cable, rows []int) {
	to := g.end(k.To, k.From, k)
	if to < 0 {
		switch {
		case len(rows) == 1:
			to = g.part(g.c.rows[rows[0]].l)
		case k.Control != nil:
			to = g.part(k.Control)
		case k.Zone != nil:
			to = g.part(k.Zone)
		}
	}
	from := g.end(k.From, k.To, k)
	if from < 0 && to >= 0 {
		if ch := g.channelBehind(to, k); ch != nil {
			from = g.part(ch)
		}
	}
	if to >= 0 && g.places[to].joint() && from >= 0 && g.places[from].channel >= 0 {
		if in := g.roomRows(k, g.places[from].channel); len(in) > 0 {
			g.addSingle(single{k: k, members: in, channel: g.places[from].channel}, "room\x1f"+zoneKey(k.Zone)+"\x1f"+folded(k.To.Text.Value))
			return // it leads from the rack to a room
		}
	}
	g.join(from, to, k, 1)
}

// end is the place that an end of a cable names, -1 when it is blank.
func (g *graph) end(e, other schedule.End, k *schedule.Cable) int {
	switch {
	case e.Loudspeaker != nil:
		return g.device(e)
	case e.Control != nil:
		return g.part(e.Control)
	case e.Zone != nil:
		return g.part(e.Zone)
	case e.Channel != nil:
		return g.part(e.Channel)
	case e.Amplifier != nil:
		if ch := g.channelOn(e.Amplifier, other, k); ch != nil {
			return g.part(ch)
		}
		return g.joint("amplifier " + e.Amplifier.Name)
	case e.Text.Value != "":
		return g.joint(e.Text.Value)
	}
	return -1
}

// channelOn is the channel of an amplifier that a cable starts from: the
// cable's, else the one that feeds its other end, else the only one.
func (g *graph) channelOn(a *schedule.Amplifier, other schedule.End, k *schedule.Cable) *schedule.Channel {
	if k.Channel != nil && k.Channel.Amplifier == a {
		return k.Channel
	}
	var candidates []*schedule.Channel
	switch {
	case other.Loudspeaker != nil:
		if i := g.c.positionOf(other.Loudspeaker); i >= 0 {
			for _, ch := range g.c.rows[i].channels {
				candidates = append(candidates, g.c.job.Channels[ch])
			}
		}
	case other.Control != nil:
		candidates = append(candidates, g.c.channelOfControl(other.Control))
	case other.Zone != nil:
		candidates = append(append(candidates, other.Zone.Channel), other.Zone.Channels...)
	}
	for _, ch := range candidates {
		if ch != nil && ch.Amplifier == a {
			return ch
		}
	}
	if len(a.Channels) == 1 {
		return a.Channels[0]
	}
	return nil
}

// channelBehind is the channel that feeds a place, for a cable whose start was
// not written.
func (g *graph) channelBehind(at int, k *schedule.Cable) *schedule.Channel {
	p := &g.places[at]
	switch {
	case k.Channel != nil:
		return k.Channel
	case p.row >= 0 && len(g.c.rows[p.row].channels) > 0:
		return g.c.job.Channels[g.c.rows[p.row].channels[0]]
	case p.control >= 0:
		return g.c.channelOfControl(g.c.job.Controls[p.control])
	case p.zone >= 0:
		return g.c.job.Zones[p.zone].Channel
	}
	return nil
}

// widenUnclear widens what is judged of lengths that may count from the rack
// or from the loudspeaker before: to the loss of the chain that they would form.
func (g *graph) widenUnclear(nets []*network) {
	type feed struct{ channel, zone int }
	chains := map[feed]*tree{}
	for _, i := range g.unclear {
		r := &g.c.rows[i]
		if len(r.channels) == 0 || r.lineV <= 0 {
			continue
		}
		f := feed{r.channels[0], r.zone}
		t := chains[f]
		if t == nil {
			t = &tree{volts: r.lineV}
			chains[f] = t
		}
		d := g.c.conduit(r.l.Run)
		b := branch{parent: len(t.nodes) - 1, d: &d, pieces: 1, members: []member{{i, whole}}, spread: 1}
		t.nodes = append(t.nodes, b)
	}
	for _, n := range nets {
		if len(n.members) != 1 || n.one == nil || position(g.unclear, n.members[0].row) < 0 {
			continue
		}
		r := &g.c.rows[n.members[0].row]
		if len(r.channels) == 0 || !n.judged.Known {
			continue
		}
		t := chains[feed{r.channels[0], r.zone}]
		if t == nil || len(t.nodes) < 2 {
			continue
		}
		s := g.c.solve(t, true, false)
		if s == nil {
			n.judged.High = math.Inf(1)
			continue
		}
		for k := range t.nodes {
			if t.nodes[k].members[0].row == n.members[0].row {
				n.judged.High = math.Max(n.judged.High, s.at[k].LossDB)
			}
		}
		n.missing = append(n.missing, gap{n.line.At, "length", "Do these lengths count from the rack, or from the loudspeaker before?"})
	}
}
