package audit

import (
	"math/rand/v2"
	"testing"

	"lineaudit/audit/schedule"
)

// realisticJob has n loudspeaker rows and few faults: a clean archive's cost.
func realisticJob(n int) *schedule.Job {
	j := randomJob(rand.New(rand.NewPCG(1, 1)), n, false)
	for _, c := range j.Channels {
		c.Rated.Low, c.Rated.High = 5000, 5000
	}
	for _, a := range j.Amplifiers {
		a.Rated = schedule.Quantity[schedule.Watts]{}
	}
	for _, l := range j.Loudspeakers { // one tap a room and model
		l.Tap.Low, l.Tap.High = 5, 5
		if len(l.Offered) > 0 {
			l.Tap.Low, l.Tap.High = l.Offered[0].Watts, l.Offered[0].Watts
		}
	}
	for _, k := range j.Controls {
		k.Rated.Low, k.Rated.High = 1000, 1000
	}
	return j
}

func benchmarkExamine(b *testing.B, n int, faults bool) {
	j := realisticJob(n)
	if faults {
		j = randomJob(rand.New(rand.NewPCG(1, 1)), n, true)
	}
	s := DefaultSettings()
	b.ReportAllocs()
	for b.Loop() {
		examine(nil, j, s)
	}
}

func BenchmarkRules100(b *testing.B)       { benchmarkExamine(b, 100, false) }
func BenchmarkRules1000(b *testing.B)      { benchmarkExamine(b, 1000, false) }
func BenchmarkRulesFaulty100(b *testing.B) { benchmarkExamine(b, 100, true) }

// BenchmarkRemedies100 is the remedies of a faulty job alone.
func BenchmarkRemedies100(b *testing.B) {
	j := randomJob(rand.New(rand.NewPCG(1, 1)), 100, true)
	s := DefaultSettings()
	b.ReportAllocs()
	for b.Loop() {
		b.StopTimer()
		_, x := examine(nil, j, s)
		b.StartTimer()
		newWorkshop(x).remedy(triesOf(j))
	}
}
