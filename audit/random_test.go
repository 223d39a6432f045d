package audit

import (
	"fmt"
	"math/rand/v2"

	"lineaudit/audit/schedule"
)

// cells hands out one cell after the other.
type cells struct{ n int }

func (c *cells) source(written string) schedule.Source {
	c.n++
	return schedule.Source{At: schedule.Ref{File: "random.csv", Row: 1 + c.n/20, Col: 1 + c.n%20}, Written: written, How: schedule.Stated}
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
	return j
}
