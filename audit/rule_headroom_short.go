package audit

import (
	_ "embed"
	"fmt"
)

//go:embed doc/headroom-short.md
var headroomShortDoc string

// headroomShort finds channels loaded past the share of rating that good
// practice leaves free.
var headroomShort = &Rule{
	Name:  "headroom-short",
	Title: "channel load leaves too little headroom",
	Why:   "Peaks clip, transformer losses eat the rest, and there is no room for one more loudspeaker.",
	Doc:   headroomShortDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 80, Unit: "% of rating",
			Source: "QSC CX Series Application Guide p. 12: add up to 25 % to the demand, which is 80 % of rating; also a trade rule of thumb",
			Note:   "published practice runs from 50 to 100 %; a job's own brief comes first"},
	},
	Silent: []string{
		"the load is exactly at the limit",
		"the load is past the rating: channel-overload speaks",
		"the job's own brief names another headroom and the load keeps it",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "measure the impedance of the channel's line at 1 kHz with the amplifier off and the controls fully on",
	Tool:     "impedance meter",
	Check:    checkHeadroomShort,
}

func checkHeadroomShort(x *Examination) error {
	c := x.circuit
	for i, ch := range x.Job.Channels {
		n := &c.channels[i]
		if ch.LowImpedance.Yes || n.load.Watts.High == 0 || !n.verdict.Checked || !n.verdict.Passed {
			continue // channel-overload has spoken, or could not
		}
		cl := x.channelClaim(i)
		cl.settles = "whether " + channelName(ch) + " has headroom left"
		cl.own = c.headroomLimit(i)
		limit := x.limit(Caution, cl.use)
		if cl.own != nil {
			limit = cl.own
		}
		if limit == nil {
			continue
		}
		if n.rating.watts.Known {
			cl.message = fmt.Sprintf("%s of a %s: %s, limit %s (%s W)", n.load.Sum, n.ratingText("channel"), percents(cl.measured),
				percent(limit.Value), span(n.rating.watts.scaled(limit.Value/100)))
		}
		if cl.own != nil && ch.Headroom.Had() {
			rated := cl.cells
			cl.cells = func() []Evidence { return appendCell(rated(), ch.Headroom.Source, "headroom asked for") }
		}
		if x.causedElsewhere(n, cl) {
			continue
		}
		if v := x.judge(cl); !v.Passed {
			n.verdict = v
		}
	}
	return nil
}

// headroomLimit is the share of its rating that a channel may carry before
// headroom-short speaks: what the job's own brief asks for, else the limit in
// force. Nil when there is none.
func (c *circuit) headroomLimit(i int) *LimitInForce {
	ch := c.job.Channels[i]
	if free, ok := ch.Headroom.Exact(); ok && free >= 0 && free < 1 {
		return &LimitInForce{Name: "caution", Grade: Caution, Value: 100 * (1 - float64(free)), Unit: "% of rating",
			Source: "the job's own brief, " + ch.Headroom.At.String()}
	}
	use := useOf(c.channels[i].emergency, nil, ch)
	return c.set.limits["headroom-short"].grade[use][Caution]
}
