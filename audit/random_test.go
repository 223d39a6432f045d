package audit

import (
	"fmt"
	"math/rand/v2"
	"slices"

	"lineaudit/audit/schedule"
)

// cells hands out one cell after the other.
type cells struct{ n int }

func (c *cells) source(written string) schedule.Source {
	c.n++
	return schedule.Source{At: schedule.At("random.csv", "", 1+c.n/20, 1+c.n%20), Written: written, How: schedule.Stated}
}

// randomTaps are the taps that the models of random jobs offer.
var randomTaps = [][]schedule.TapOffer{
	{{Watts: 20}, {Watts: 10}, {Watts: 5}, {Watts: 2.5}},
	{{Watts: 6}, {Watts: 3}, {Watts: 1.5}},
	{{Watts: 30}, {Watts: 15}, {Watts: 7.5}},
	nil,
}

// randomJob makes a job of n loudspeaker rows with controls in a tree, several
// channels, cables, and now and then a missing or wrong value.
func randomJob(rng *rand.Rand, n int, faults bool) *schedule.Job {
	c := &cells{}
	watts := func(v float64) schedule.Quantity[schedule.Watts] {
		return schedule.Exactly(schedule.Watts(v), c.source(figure(v)))
	}
	j := &schedule.Job{File: "random.csv", LineVolts: schedule.Exactly[schedule.Volts](100, c.source("100 V"))}
	if rng.IntN(2) == 0 {
		j.LineVolts = schedule.Exactly[schedule.Volts](70.7, c.source("70.7 V"))
	}
	a := &schedule.Amplifier{Key: "a1", Name: "A1", At: c.source("").At}
	j.Amplifiers = append(j.Amplifiers, a)
	for i := range 2 + rng.IntN(3) {
		ch := &schedule.Channel{Key: fmt.Sprint(i + 1), Name: fmt.Sprint(i + 1), Amplifier: a, At: c.source("").At}
		ch.Rated = watts([]float64{60, 120, 240, 480}[rng.IntN(4)])
		a.Channels = append(a.Channels, ch)
		j.Channels = append(j.Channels, ch)
	}
	if rng.IntN(3) == 0 {
		a.Rated = watts(float64(200 + 100*rng.IntN(6)))
	}
	for i := range 1 + n/8 {
		z := &schedule.Zone{Key: fmt.Sprintf("z%d", i), Name: fmt.Sprintf("Zone %d", i), At: c.source("").At, Channel: j.Channels[rng.IntN(len(j.Channels))]}
		if rng.IntN(4) == 0 {
			z.Emergency = schedule.Flag{Yes: true, Source: c.source("yes")}
		}
		j.Zones = append(j.Zones, z)
		for k := range rng.IntN(3) {
			ctl := &schedule.Control{Key: fmt.Sprintf("vc%d-%d", i, k), Name: fmt.Sprintf("VC-%d-%d", i, k), Zone: z, Channel: z.Channel, At: c.source("").At}
			ctl.Rated = watts([]float64{10, 35, 75, 100}[rng.IntN(4)])
			if k > 0 && rng.IntN(2) == 0 {
				ctl.Parent = j.Controls[len(j.Controls)-1]
			}
			if faults && rng.IntN(5) == 0 {
				ctl.RatedVolts = []schedule.Quantity[schedule.Volts]{schedule.Exactly(schedule.Volts([]float64{100, 70.7}[rng.IntN(2)]), c.source("V"))}
			}
			j.Controls = append(j.Controls, ctl)
		}
		if rng.IntN(2) == 0 {
			k := &schedule.Cable{Key: fmt.Sprintf("c%d", i), Name: fmt.Sprintf("C%d", i), Zone: z, Reach: schedule.WholeLine, At: c.source("").At,
				Length: schedule.Exactly(schedule.Metres(20+rng.IntN(400)), c.source("m")), Area: schedule.Exactly[schedule.SquareMM](1.5, c.source("1.5"))}
			j.Cables = append(j.Cables, k)
		}
	}
	for i := range n {
		z := j.Zones[rng.IntN(len(j.Zones))]
		l := &schedule.Loudspeaker{At: c.source("").At, Zone: z, Rows: schedule.Span{First: i + 2, Last: i + 2}}
		l.Tag = schedule.Said(fmt.Sprintf("LS-%03d", i+1), c.source("").At)
		m := rng.IntN(len(randomTaps))
		l.Model = schedule.Said(fmt.Sprintf("M-%d", m), c.source("").At)
		l.Room = schedule.Said(fmt.Sprintf("%s room %d", z.Name, rng.IntN(2)), c.source("").At)
		l.Offered = randomTaps[m]
		tap := []float64{5, 10, 2}[rng.IntN(3)]
		if len(l.Offered) > 0 {
			tap = float64(l.Offered[rng.IntN(len(l.Offered))].Watts)
		}
		l.Tap = watts(tap)
		l.Count = schedule.Exactly(schedule.Pieces(1+rng.IntN(4)), c.source("n"))
		var own []*schedule.Control
		for _, k := range j.Controls {
			if k.Zone == z {
				own = append(own, k)
			}
		}
		if len(own) > 0 {
			l.Control = own[rng.IntN(len(own))]
		}
		if faults {
			switch rng.IntN(25) {
			case 0:
				l.Tap = schedule.Quantity[schedule.Watts]{}
			case 1:
				l.TapVolts = schedule.Exactly(schedule.Volts([]float64{70.7, 100}[rng.IntN(2)]), c.source("V"))
			case 2:
				l.Status = schedule.Spare
			case 3:
				l.Tap, l.LowImpedance = schedule.Quantity[schedule.Watts]{}, schedule.Exactly[schedule.Ohms](8, c.source("8 ohm"))
			}
		}
		j.Loudspeakers = append(j.Loudspeakers, l)
	}
	if faults {
		v := &varied{rng, c, j}
		v.channels()
		v.controls()
		v.loudspeakers()
		v.cables()
		v.statements()
	}
	return j
}

// varied gives a random job what ordinary ones have now and then: mixed
// voltages, bridged, split and standby channels, controls of many kinds, cable
// trees, values with bounds, and what the schedule states or measured itself.
type varied struct {
	rng *rand.Rand
	c   *cells
	j   *schedule.Job
}

// chance is true once in n.
func (v *varied) chance(n int) bool { return v.rng.IntN(n) == 0 }

func (v *varied) flag() schedule.Flag {
	return schedule.Flag{Yes: v.chance(2), Source: v.c.source("yes or no")}
}

func (v *varied) channels() {
	j := v.j
	if v.chance(3) {
		j.Channels[v.rng.IntN(len(j.Channels))].LineVolts = schedule.Exactly(schedule.Volts([]float64{25, 70.7, 100}[v.rng.IntN(3)]), v.c.source("V"))
	}
	if v.chance(3) {
		a, b := j.Channels[0], j.Channels[1]
		a.Bridged = []*schedule.Channel{b}
		if v.chance(2) {
			b.Bridged = []*schedule.Channel{a}
		}
	}
	if v.chance(4) {
		j.Channels[len(j.Channels)-1].Standby = true
	}
	if v.chance(6) {
		j.Channels[0].RatedBasis = schedule.Said("240 W at 4 ohm", v.c.source("").At)
	}
	for _, z := range j.Zones {
		if v.chance(4) {
			z.Channels = []*schedule.Channel{j.Channels[0], j.Channels[len(j.Channels)-1]}
			z.Channel = z.Channels[0]
			z.ABCircuits = v.flag()
		}
	}
	if v.chance(5) {
		j.Emergency = v.flag()
	}
}

func (v *varied) controls() {
	for _, k := range v.j.Controls {
		switch v.rng.IntN(14) {
		case 0:
			k.Remote = v.flag()
		case 1:
			k.Status = schedule.Spare
		case 2:
			k.Count = schedule.Exactly[schedule.Pieces](2, v.c.source("2"))
		case 3:
			k.Stereo = v.flag()
		case 4:
			k.Override, k.HasOff = v.flag(), v.flag()
		case 5:
			k.Rated = schedule.Quantity[schedule.Watts]{}
		case 6:
			k.Rated = schedule.Between[schedule.Watts](20, 50, v.c.source("20-50 W"))
		case 7:
			k.LossDB = schedule.Exactly[schedule.Decibels](0.5, v.c.source("0.5 dB"))
		}
	}
}

func (v *varied) loudspeakers() {
	j := v.j
	for _, l := range j.Loudspeakers {
		switch v.rng.IntN(40) {
		case 0:
			l.Status = []schedule.Status{schedule.Future, schedule.Removed, schedule.ByOthers}[v.rng.IntN(3)]
		case 1:
			l.Count = schedule.Between[schedule.Pieces](1, 4, v.c.source("1-4"))
		case 2:
			l.Tap = schedule.Between[schedule.Watts](2.5, 10, v.c.source("2.5-10"))
		case 3:
			l.Tap, l.Offered = schedule.Quantity[schedule.Watts]{}, nil
		case 4:
			l.Tap, l.RowTotal = schedule.Quantity[schedule.Watts]{}, schedule.Exactly[schedule.Watts](40, v.c.source("40"))
			if v.chance(2) {
				l.Count = schedule.Quantity[schedule.Pieces]{}
			}
		case 5:
			l.Rated = schedule.Exactly[schedule.Watts](6, v.c.source("6"))
		case 6:
			l.Split = []*schedule.Channel{j.Channels[0], j.Channels[1]}
		case 7:
			l.Tap, l.LowImpedance = schedule.Quantity[schedule.Watts]{}, schedule.Exactly[schedule.Ohms](8, v.c.source("8 ohm"))
			j.Amplifiers[0].LowImpedance = append(j.Amplifiers[0].LowImpedance, l)
		}
	}
}

// cables gives some zones a tree of runs: from the channel over a joint or a
// control to the loudspeakers, which branch now and then.
func (v *varied) cables() {
	j := v.j
	run := func(from, to schedule.End) {
		area := []float64{0.75, 1.5, 2.5}[v.rng.IntN(3)]
		k := &schedule.Cable{Key: fmt.Sprintf("t%d", len(j.Cables)), Name: fmt.Sprintf("T%d", len(j.Cables)), At: v.c.source("").At, From: from, To: to, Reach: schedule.FromTo,
			Length: schedule.Exactly(schedule.Metres(5+v.rng.IntN(200)), v.c.source("m")), Area: schedule.Exactly(schedule.SquareMM(area), v.c.source("mm2"))}
		if v.chance(8) {
			k.Material = schedule.Said("copper-clad aluminium", v.c.source("CCA").At)
		}
		j.Cables = append(j.Cables, k)
	}
	for i, z := range j.Zones {
		if !v.chance(3) || z.Channel == nil {
			continue
		}
		at := schedule.End{Text: schedule.Said("box "+z.Name, v.c.source("").At)}
		if len(j.Controls) > 0 && v.chance(2) {
			if k := j.Controls[v.rng.IntN(len(j.Controls))]; k.Zone == z {
				at = schedule.End{Control: k}
			}
		}
		run(schedule.End{Channel: z.Channel}, at)
		for _, l := range j.Loudspeakers {
			if l.Zone != z {
				continue
			}
			next := schedule.End{Loudspeaker: l}
			run(at, next)
			if v.chance(2) {
				at = next
			}
		}
		j.Cables = slices.DeleteFunc(j.Cables, func(k *schedule.Cable) bool { return k.Key == fmt.Sprintf("c%d", i) })
	}
}

func (v *varied) statements() {
	j := v.j
	for _, z := range j.Zones {
		if v.chance(6) {
			z.Stated = schedule.Exactly(schedule.Watts(20*(1+v.rng.IntN(8))), v.c.source("W"))
		}
		if v.chance(6) {
			z.Count = schedule.Exactly(schedule.Pieces(1+v.rng.IntN(12)), v.c.source("n"))
		}
	}
	if v.chance(4) {
		j.Measurements = append(j.Measurements, schedule.Measurement{At: v.c.source("").At, Channel: j.Channels[0],
			Ohms: schedule.Exactly(schedule.Ohms(20+v.rng.IntN(300)), v.c.source("ohm"))})
	}
}
