package audit

import (
	"cmp"
	"fmt"
	"slices"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// move suggests one zone that could go to a channel with room: the lightest
// zone that cures the channel, on the channel that is left with most room. It
// is a question, since paging groups may forbid it.
func (p *repair) move(from int) {
	c := p.c
	n := &c.channels[from]
	limit := c.channelAllows(from)
	if p.f.Rule == channelOverload {
		limit = n.rating.watts.Low * c.lowestLimit("channel-overload", n.emergency) / 100
	}
	bestZone, bestTo, bestLoad := -1, -1, 0.0
	for _, z := range c.zonesOn(n) {
		w := c.zones[z].load.Watts
		if !w.bounded() || w.High == 0 || past(n.load.Watts.High-w.Low, limit) || !c.movable(z, from) {
			continue
		}
		to := p.roomFor(w.High, from)
		if to >= 0 && (bestZone < 0 || w.High < bestLoad) {
			bestZone, bestTo, bestLoad = z, to, w.High
		}
	}
	if bestZone < 0 {
		p.not("no single zone of it fits on another channel")
		return
	}
	zone, to := p.x.Job.Zones[bestZone], p.x.Job.Channels[bestTo]
	tried := p.try(func(j *trial) { c.moveZone(j, bestZone, to) }, zone, to)
	if tried == nil {
		return
	}
	m, taker := tried.after.sameNode(p.f), &tried.after.channels[tried.after.channelAt[tried.Channel(to)]]
	p.keep(Remedy{Kind: "move",
		Change: fmt.Sprintf("could zone %s (%s W) move from channel %s to %s? Paging groups may forbid it", zone.Name, figure(bestLoad), p.x.Job.Channels[from].Label(), to.Label()),
		Short:  "move " + zone.Name + " to " + to.Label(), Before: n.share(), After: m.share(), Unit: "% of rating",
		Effect: fmt.Sprintf("%s; channel %s then carries %s", loadEffect(m), to.Label(), loadEffect(taker)), Source: "this job"})
}

// zonesOn lists the zones of the rows on a node, in the order of the job.
func (c *circuit) zonesOn(n *node) []int {
	var out []int
	for _, m := range n.members {
		if z := c.rows[m.row].zone; z >= 0 && (len(out) == 0 || out[len(out)-1] != z) {
			out = append(out, z)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// movable reports whether a zone hangs on one channel alone, with controls
// that no other zone shares.
func (c *circuit) movable(z, from int) bool {
	for _, m := range c.zones[z].members {
		r := &c.rows[m.row]
		if r.part == notCounted {
			continue
		}
		if len(r.channels) != 1 || r.channels[0] != from {
			return false
		}
		for _, k := range c.above(r.control) {
			for _, o := range c.controls[k].members {
				if c.rows[o.row].zone != z {
					return false
				}
			}
		}
	}
	return !c.job.Zones[z].ABCircuits.Yes
}

// roomFor finds the channel of the same line voltage that has most room left
// after taking watts, -1 when none has.
func (w *workshop) roomFor(watts float64, from int) int {
	if w.roomiest == nil {
		w.roomiest = w.c.roomiest()
	}
	best, most := -1, 0.0
	for lineV, list := range w.roomiest {
		if !line.SameClass(lineV, w.c.channels[from].lineV) {
			continue
		}
		for _, i := range list {
			if i == from {
				continue
			}
			if left := w.c.roomOn(i) - watts; left >= 0 && (best < 0 || left > most || left == most && i < best) {
				best, most = i, left
			}
			break
		}
	}
	return best
}

// roomOn is the watts that a channel may still take without any finding.
func (c *circuit) roomOn(i int) float64 { return c.channelAllows(i) - c.channels[i].load.Watts.High }

// roomiest lists the channels that could take another zone by line voltage,
// those with most room first.
func (c *circuit) roomiest() map[float64][]int {
	out := make(map[float64][]int)
	for i, ch := range c.job.Channels {
		n := &c.channels[i]
		if c.taken[i] || isStandby(ch) || ch.LowImpedance.Yes || !n.rating.watts.Known || !n.load.Watts.bounded() || len(ch.Bridged) > 0 {
			continue
		}
		if n.lineV > 0 && n.lowRows+n.oddRows == 0 {
			out[n.lineV] = append(out[n.lineV], i)
		}
	}
	for _, list := range out {
		slices.SortStableFunc(list, func(a, b int) int { return cmp.Compare(c.roomOn(b), c.roomOn(a)) })
	}
	return out
}

// moveZone puts the copy of a zone on another channel.
func (c *circuit) moveZone(t *trial, zone int, to *schedule.Channel) {
	target, z := t.Channel(to), t.Zone(c.job.Zones[zone])
	if z.Channel != nil {
		z.Channel = target
	}
	z.Channels = nil
	done := map[int]bool{}
	for _, m := range c.zones[zone].members {
		l := t.Loudspeaker(c.rows[m.row].l)
		l.Channel, l.Split = target, nil
		for _, k := range c.above(c.rows[m.row].control) {
			if !done[k] {
				done[k] = true
				if control := t.Control(c.job.Controls[k]); control.Channel != nil {
					control.Channel = target
				}
			}
		}
	}
	for _, k := range t.job.Cables {
		if k.Zone == z && k.Channel != nil {
			k.Channel = target
		}
	}
}
