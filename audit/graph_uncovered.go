package audit

import (
	"math"

	"lineaudit/audit/schedule"
)

// widenUncovered widens what is judged of a run that leads from an output to one loudspeaker,
// where other loudspeakers of that output are on no cable: they may hang behind it.
func (g *graph) widenUncovered(nets []*network) {
	covered := make([]bool, len(g.c.rows))
	open := false
	for _, n := range nets {
		for _, m := range n.members {
			covered[m.row] = true
		}
		open = open || n.leadsToOne()
	}
	if !open {
		return
	}
	left := make(map[*schedule.Channel]Interval)
	for i := range g.c.rows {
		r := &g.c.rows[i]
		if r.part != counts || r.out != notOut || covered[i] || len(r.channels) != 1 {
			continue
		}
		ch := g.c.job.Channels[r.channels[0]]
		watts, had := left[ch]
		if !had {
			watts = Exact(0)
		}
		left[ch] = watts.plus(r.each.times(r.units))
	}
	for _, n := range nets {
		further, some := left[n.line.Channel]
		if !some || !n.leadsToOne() || !n.one.watts.Known {
			continue
		}
		n.one.watts.High = n.one.watts.plus(further).High
		n.line.LoadW = n.one.watts
		before := n.judged.High // where rows are kept out, or lengths unclear, it is more than the loss of the load
		n.one.read(n)
		n.judged.High = math.Max(n.judged.High, before)
		n.missing = append(n.missing, gap{n.line.At, "to", "Do the other loudspeakers of " + n.line.Channel.Label() + " hang behind this cable?"})
	}
}

// leadsToOne reports whether a network is a run from an output to one row of loudspeakers.
func (n *network) leadsToOne() bool { return n.one != nil && n.one.device && n.line.Channel != nil }
