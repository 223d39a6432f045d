package audit

import (
	_ "embed"

	"lineaudit/audit/schedule"
)

//go:embed doc/channel-overload.md
var channelOverloadDoc string

// channelOverload finds amplifier channels loaded past their rating.
var channelOverload = &Rule{
	Name:  "channel-overload",
	Title: "an amplifier channel is loaded past its rating",
	Why: "An overloaded output clips, trips its protection or fails; switching one group changes the level of the others, " +
		"and an announcement may not be heard.",
	Doc: channelOverloadDoc,
	Limits: []Limit{
		{Name: "fault", Grade: Fault, Default: 100, Unit: "% of rating",
			Source: "summed loudspeaker power must not exceed rated amplifier power: Bosch Plena Power Amplifier, Installation and User Instructions (2006-11), 3.5.5, p. 16; RCF L2406 manual p. 22"},
		{Name: "danger", Grade: Danger, Default: 125, Unit: "% of rating",
			Source: "a load mismatch of 25 % is called tolerable: 70-Volt Loud-Speaker Matching Systems, wa7zcz page on qsl.net", Note: "taken as the point past which it is not"},
	},
	Silent: []string{
		"the sum equals the rating exactly",
		"the rating in the schedule is that of the whole frame",
		"the sum is past the rating only because of taps of another line voltage: that is voltage-mismatch",
		"the rating is not a continuous one at the line voltage: it bounds the verdict and raises a question",
	},
	Cautions: []string{cautionHeat, cautionVolts, cautionPaper},
	OnSite:   "measure the impedance of the channel's line at 1 kHz with the amplifier off and the controls fully on",
	Tool:     "impedance meter",
	Check:    checkChannelOverload,
}

func checkChannelOverload(x *Examination) error {
	c := x.circuit
	for i, ch := range x.Job.Channels {
		n := &c.channels[i]
		if ch.LowImpedance.Yes || n.load.Watts.High == 0 {
			continue
		}
		cl := x.channelClaim(i)
		if x.causedElsewhere(n, cl) {
			n.verdict, n.elsewhere = x.silentVerdict(cl), true
			continue
		}
		n.verdict = x.judge(cl)
	}
	return nil
}

// channelClaim is the load of a channel against its rating.
func (x *Examination) channelClaim(i int) *claim {
	c := x.circuit
	n, ch := &c.channels[i], x.Job.Channels[i]
	share := n.load.Watts.over(n.rating.watts).scaled(100)
	var model schedule.Text
	if ch.Amplifier != nil {
		model = ch.Amplifier.Model
	}
	cl := &claim{
		key: channelKey(ch), place: channelName(ch), zone: c.onlyZone(n), at: ratingCell(n, ch.At),
		emergency: n.emergency, use: useOf(n.emergency, nil, ch), pieces: n.pieces(),
		measured: share, unit: "% of rating", show: n.inWatts(), ohms: expectedOhm(n.lineV, n.load.Watts),
		message:   n.load.Sum + " on a " + n.ratingText("channel") + ": " + percents(share),
		cells:     func() []Evidence { return n.withRating(c.cells(n), ch.At) },
		gaps:      func() []gap { return append(c.rowGaps(n), channelRatingGap(n, ch)...) },
		settles:   "whether " + channelName(ch) + " is overloaded",
		equipment: modelEquipment("amplifier model", model),
	}
	return x.keptOut(n, cl)
}

// onlyZone is the name of the zone that all loudspeakers of a node are in, ""
// when there are several.
func (c *circuit) onlyZone(n *node) string {
	zone := -1
	for _, m := range n.members {
		z := c.rows[m.row].zone
		if z < 0 || zone >= 0 && z != zone {
			return ""
		}
		zone = z
	}
	if zone < 0 {
		return ""
	}
	return c.job.Zones[zone].Name
}

func channelRatingGap(n *node, ch *schedule.Channel) []gap {
	if n.rating.watts.Known && n.rating.note == "" {
		return nil
	}
	what := "channel " + ch.Label()
	switch {
	case ch.Pair || len(ch.Bridged) > 0:
		what += ", bridged,"
	case ch.Amplifier != nil && ch.Amplifier.Model.Value != "":
		what = "a channel of amplifier model " + ch.Amplifier.Model.Value
	}
	at := " at the line voltage"
	if n.lineV > 0 {
		at = " at " + volts(n.lineV)
	}
	return []gap{{placeOf(ch.Rated.Source, ch.At), "channel rating", "What may " + what + " give continuously" + at + ", in watts?"}}
}
