package audit

import (
	"fmt"
	"testing"

	"lineaudit/audit/schedule"
)

// manyOverloads is a job of n overloaded controls of 35 W: three loudspeakers at
// 15 W behind each, four controls on a channel, two channels in a frame. Every
// tenth zone has a long line, and every seventh row is tapped above its rating.
func manyOverloads(n int) *schedule.Job {
	c := &cells{}
	watts := func(v float64) schedule.Quantity[schedule.Watts] {
		return schedule.Exactly(schedule.Watts(v), c.source(figure(v)))
	}
	j := &schedule.Job{File: "many.csv", LineVolts: schedule.Exactly[schedule.Volts](100, c.source("100 V"))}
	for i := range n {
		if i%8 == 0 {
			j.Amplifiers = append(j.Amplifiers, &schedule.Amplifier{Key: fmt.Sprint("a", i), Name: fmt.Sprint("A", i), At: c.source("").At})
		}
		a := j.Amplifiers[len(j.Amplifiers)-1]
		if i%4 == 0 {
			ch := &schedule.Channel{Key: fmt.Sprint(i), Name: fmt.Sprint(i), Amplifier: a, At: c.source("").At, Rated: watts(240)}
			a.Channels, j.Channels = append(a.Channels, ch), append(j.Channels, ch)
		}
		ch := j.Channels[len(j.Channels)-1]
		z := &schedule.Zone{Key: fmt.Sprint("z", i), Name: fmt.Sprint("Greenhouse ", i), Channel: ch, At: c.source("").At}
		k := &schedule.Control{Key: fmt.Sprint("vc", i), Name: fmt.Sprint("VC-", i), Zone: z, Channel: ch, Rated: watts(35), At: c.source("").At}
		j.Zones, j.Controls = append(j.Zones, z), append(j.Controls, k)
		if i%10 == 0 {
			j.Cables = append(j.Cables, &schedule.Cable{Key: fmt.Sprint("c", i), Name: fmt.Sprint("C", i), Zone: z, Reach: schedule.WholeLine, At: c.source("").At,
				Length: schedule.Exactly[schedule.Metres](900, c.source("900")), Area: schedule.Exactly[schedule.SquareMM](0.75, c.source("0.75"))})
		}
		for range 3 {
			l := &schedule.Loudspeaker{Zone: z, Control: k, At: c.source("").At, Rows: schedule.Span{First: c.n, Last: c.n}, Model: schedule.Said(fmt.Sprint("M-", i%50), c.source("").At),
				Tag: schedule.Said(fmt.Sprint("LS-", c.n), c.source("").At), Tap: watts(15), Count: schedule.Exactly[schedule.Pieces](1, c.source("1")), Offered: randomTaps[2]}
			if c.n%7 == 0 {
				l.Model = schedule.Said(fmt.Sprint("H-", c.n), c.source("").At)
				l.Rated = watts(10)
			}
			j.Loudspeakers = append(j.Loudspeakers, l)
		}
	}
	return j
}

// TestManyOverloadsAreWorkedThrough: what is tried grows with the findings and not
// with their square, and each finding has its remedies, however large the job.
func TestManyOverloadsAreWorkedThrough(t *testing.T) {
	perControl := map[int]float64{}
	for _, n := range []int{80, 640} {
		j := manyOverloads(n)
		r, x := examine(nil, j, DefaultSettings())
		w := newWorkshop(x)
		w.remedy(triesOf(j))
		perControl[n] = float64(w.tried) / float64(n)
		if len(r.Findings) < n || w.tried > triesOf(j) {
			t.Errorf("%d controls: %d findings, %d devices tried", n, len(r.Findings), w.tried)
		}
		for _, f := range r.Findings {
			if f.Rule != lineLoss && len(f.Remedies) == 0 {
				t.Errorf("%d controls: no remedy for %s: %s", n, f.Place, f.NoRemedy)
			}
		}
	}
	if perControl[640] > 1.1*perControl[80] {
		t.Errorf("devices tried for each control: %v", perControl)
	}
}

// BenchmarkManyOverloads is rules and remedies of one job of overloaded controls,
// in microseconds for each: the same for 2,000 and for 20,000 where time is linear.
func BenchmarkManyOverloads(b *testing.B) {
	for _, n := range []int{2_000, 20_000} {
		j := manyOverloads(n)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			for b.Loop() {
				Check(j, DefaultSettings())
			}
			b.ReportMetric(float64(b.Elapsed().Microseconds())/float64(b.N*n), "us/control")
		})
	}
}
