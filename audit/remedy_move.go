package audit

import (
	"fmt"

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
	for z := range c.zones {
		w := c.zones[z].load.Watts
		if !w.bounded() || w.High == 0 || past(n.load.Watts.High-w.Low, limit) || !c.movable(z, from) {
			continue
		}
		to := c.roomFor(w.High, from)
		if to >= 0 && (bestZone < 0 || w.High < bestLoad) {
			bestZone, bestTo, bestLoad = z, to, w.High
		}
	}
	if bestZone < 0 {
		p.not("no single zone of it fits on another channel")
		return
	}
	after := p.try(func(j *schedule.Job) { moveZone(c, j, bestZone, bestTo) })
	if after == nil {
		return
	}
	zone, to := p.x.Job.Zones[bestZone], p.x.Job.Channels[bestTo]
	m := after.sameNode(p.f)
	p.keep(Remedy{Kind: "move",
		Change: fmt.Sprintf("could zone %s (%s W) move from channel %s to %s? Paging groups may forbid it", zone.Name, figure(bestLoad), p.x.Job.Channels[from].Label(), to.Label()),
		Short:  "move " + zone.Name + " to " + to.Label(), Before: n.share(), After: m.share(), Unit: "% of rating",
		Effect: fmt.Sprintf("%s; channel %s then carries %s", loadEffect(m), to.Label(), loadEffect(&after.channels[bestTo])), Source: "this job"})
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
func (c *circuit) roomFor(watts float64, from int) int {
	best, most := -1, 0.0
	for i, ch := range c.job.Channels {
		n := &c.channels[i]
		if i == from || c.taken[i] || isStandby(ch) || ch.LowImpedance.Yes || !n.rating.watts.Known || !n.load.Watts.bounded() || len(ch.Bridged) > 0 {
			continue
		}
		if n.lineV <= 0 || !line.SameClass(n.lineV, c.channels[from].lineV) || n.lowRows+n.oddRows > 0 {
			continue
		}
		left := c.channelAllows(i) - n.load.Watts.High - watts
		if left >= 0 && (best < 0 || left > most) {
			best, most = i, left
		}
	}
	return best
}

// moveZone puts a zone of a copied job on another channel.
func moveZone(c *circuit, j *schedule.Job, zone, to int) {
	target := j.Channels[to]
	z := j.Zones[zone]
	if z.Channel != nil {
		z.Channel = target
	}
	z.Channels = nil
	done := map[int]bool{}
	for _, m := range c.zones[zone].members {
		l := j.Loudspeakers[m.row]
		l.Channel, l.Split = target, nil
		for _, k := range c.above(c.rows[m.row].control) {
			if !done[k] {
				done[k] = true
				if j.Controls[k].Channel != nil {
					j.Controls[k].Channel = target
				}
			}
		}
	}
	for _, k := range j.Cables {
		if k.Zone == z && k.Channel != nil {
			k.Channel = target
		}
	}
}
