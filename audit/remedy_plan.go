package audit

import (
	"math"
	"slices"
)

// controlPlan is what a control may carry: its own limit, and, when its path
// can be brought inside its limits from here, what those leave for it.
func (p *repair) controlPlan(i int) plan {
	c := p.c
	n := &c.controls[i]
	pl := plan{allowed: c.carries(i)}
	pl.wanted = pl.allowed
	load := n.load.Watts.High
	for _, up := range slices.Clone(c.above(i)) {
		if up != i {
			pl.wanted = math.Min(pl.wanted, c.carries(up)-(c.controls[up].load.Watts.High-load))
		}
	}
	if ch := indexOf(c.channelAt, c.channelOfControl(p.x.Job.Controls[i])); ch >= 0 {
		ch = c.head[ch]
		if k := &c.channels[ch]; k.rating.watts.Known && k.load.Watts.bounded() {
			pl.wanted = math.Min(pl.wanted, c.channelAllows(ch)-(k.load.Watts.High-load))
		}
	}
	if pl.wanted <= 0 {
		pl.wanted = pl.allowed
	}
	return pl
}

// channelAllows is the watts that a channel may carry without any finding.
func (c *circuit) channelAllows(ch int) float64 {
	n := &c.channels[ch]
	if !n.rating.watts.Known {
		return math.Inf(1)
	}
	return n.rating.watts.Low * c.channelLimit(ch) / 100
}

// channelLimit is the mildest limit on a channel's load, in percent of its rating.
func (c *circuit) channelLimit(ch int) float64 {
	limit := c.lowestLimit("channel-overload", c.channels[ch].emergency)
	if l := c.headroomLimit(ch); l != nil {
		limit = math.Min(limit, l.Value)
	}
	return limit
}

func (p *repair) channelPlan(i int) plan {
	c := p.c
	n := &c.channels[i]
	pl := plan{wanted: c.channelAllows(i), allowed: n.rating.watts.Low * c.lowestLimit("channel-overload", n.emergency) / 100}
	if p.f.Rule == headroomShort {
		pl.allowed = pl.wanted
	}
	if a := indexOf(c.amplifierAt, p.x.Job.Channels[i].Amplifier); a >= 0 {
		if frame := &c.amplifiers[a]; frame.rating.watts.Known {
			rest := frame.load.Watts.High - n.load.Watts.High
			if left := frame.rating.watts.Low*c.lowestLimit("frame-overload", frame.emergency)/100 - rest; left > 0 {
				pl.wanted = math.Min(pl.wanted, left)
			}
		}
	}
	return pl
}

func (p *repair) framePlan(i int) plan {
	n := &p.c.amplifiers[i]
	w := n.rating.watts.Low * p.c.lowestLimit("frame-overload", n.emergency) / 100
	return plan{wanted: w, allowed: w}
}
