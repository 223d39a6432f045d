package audit

import (
	_ "embed"
	"fmt"
	"math"

	"lineaudit/audit/schedule"
)

//go:embed doc/frame-overload.md
var frameOverloadDoc string

// frameOverload finds amplifiers whose channels together carry more than the frame gives.
var frameOverload = &Rule{
	Name:  "frame-overload",
	Title: "the channels of an amplifier together carry more than its frame gives",
	Why: "Channels that share one supply sag when all of them play at once, which is what happens in an all-call or an evacuation, " +
		"although each looks right by itself.",
	Doc: frameOverloadDoc,
	Limits: []Limit{
		{Name: "fault", Grade: Fault, Default: 100, Unit: "% of rating",
			Source: "a shared output rating limits the sum of all lines: PASO voice-evacuation manual p. 10"},
		{Name: "danger", Grade: Danger, Default: 125, Unit: "% of rating", Source: "common practice, no source"},
	},
	Silent: []string{
		"the schedule and the house book state no total for the frame",
		"the frame would hold once its overloaded channels were cured: channel-overload speaks",
		"the frame has one channel: channel-overload speaks",
		"the amplifier only stands by",
	},
	Cautions: []string{cautionHeat, cautionPaper},
	OnSite:   "read the frame's total from its label or sheet, and measure the impedance of each of its lines",
	Tool:     "impedance meter",
	Check:    checkFrameOverload,
}

func checkFrameOverload(x *Examination) error {
	c := x.circuit
	for i, a := range x.Job.Amplifiers {
		n := &c.amplifiers[i]
		if !n.rating.watts.Known || n.load.Watts.High == 0 || a.Status != schedule.Installed {
			continue
		}
		cl := x.frameClaim(i)
		if len(a.Channels) == 1 && x.Job.Channels != nil {
			n.verdict = x.frameByChannel(a, cl)
			continue
		}
		if x.causedElsewhere(n, cl) || x.causedByChannels(a, n) {
			n.verdict, n.elsewhere = x.silentVerdict(cl), true
			continue
		}
		n.verdict = x.judge(cl)
	}
	return nil
}

func (x *Examination) frameClaim(i int) *claim {
	c := x.circuit
	n, a := &c.amplifiers[i], x.Job.Amplifiers[i]
	share := n.load.Watts.over(n.rating.watts).scaled(100)
	cl := &claim{
		key: amplifierKey(a), place: amplifierName(a), zone: c.onlyZone(n), at: ratingCell(n, a.At),
		emergency: n.emergency, use: useOf(n.emergency, nil, nil), pieces: n.pieces(),
		measured: share, unit: "% of rating", show: n.inWatts(),
		message:   fmt.Sprintf("%s on a %s: %s", n.load.Sum, n.ratingText("frame"), percents(share)),
		cells:     func() []Evidence { return n.withRating(c.cells(n), a.At) },
		gaps:      func() []gap { return append(frameRatingGap(n, a), c.rowGaps(n)...) },
		settles:   "whether " + amplifierName(a) + " is overloaded",
		equipment: modelEquipment("amplifier model", a.Model),
	}
	return x.keptOut(n, cl)
}

func frameRatingGap(n *node, a *schedule.Amplifier) []gap {
	if n.rating.note == "" {
		return nil
	}
	return []gap{{placeOf(a.Rated.Source, a.At), "channel rating",
		fmt.Sprintf("Is the rating of %s, %s W, that of each output or of all together?", amplifierName(a), span(n.rating.nominal))}}
}

// frameByChannel is the verdict of a frame with one channel: the channel's.
func (x *Examination) frameByChannel(a *schedule.Amplifier, cl *claim) Verdict {
	at := indexOf(x.circuit.channelAt, a.Channels[0])
	if at < 0 {
		return x.judge(cl)
	}
	ch := &x.circuit.channels[at]
	if ch.rating.watts == x.circuit.amplifiers[indexOf(x.circuit.amplifierAt, a)].rating.watts {
		return ch.verdict
	}
	if !ch.rating.watts.Known || ch.verdict.Passed || !ch.verdict.Checked {
		return x.judge(cl)
	}
	return ch.verdict
}

// causedByChannels reports that a frame is past its total only through channels
// that are past their own ratings: with each of those cut back to its rating,
// the frame holds.
func (x *Examination) causedByChannels(a *schedule.Amplifier, n *node) bool {
	if !past(n.load.Watts.High, n.rating.watts.Low) {
		return false
	}
	cut, over := 0.0, false
	for _, ch := range a.Channels {
		at := indexOf(x.circuit.channelAt, ch)
		if at < 0 {
			continue
		}
		k := &x.circuit.channels[at]
		load := k.load.Watts.High
		if k.rating.watts.Known && past(load, k.rating.watts.High) {
			over = true
			load = k.rating.watts.High
		}
		cut += load
	}
	return over && !math.IsInf(cut, 1) && !past(cut, n.rating.watts.Low)
}
