package audit

import (
	"math"
	"math/rand/v2"
	"reflect"
	"testing"

	"lineaudit/audit/schedule"
)

// absurdValues are numbers that no schedule means.
var absurdValues = []float64{math.NaN(), math.Inf(1), math.Inf(-1), -1, 0, 1e-300, 1e300, 5e9, 0.5}

// spoil sets some quantities below v to absurd values.
func spoil(rng *rand.Rand, v reflect.Value, share float64, seen map[uintptr]bool) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() && !seen[v.Pointer()] {
			seen[v.Pointer()] = true
			spoil(rng, v.Elem(), share, seen)
		}
	case reflect.Slice:
		for i := range v.Len() {
			spoil(rng, v.Index(i), share, seen)
		}
	case reflect.Struct:
		low, high := v.FieldByName("Low"), v.FieldByName("High")
		if low.IsValid() && high.IsValid() && low.Kind() == reflect.Float64 {
			if rng.Float64() < share {
				a, b := absurdValues[rng.IntN(len(absurdValues))], absurdValues[rng.IntN(len(absurdValues))]
				if rng.IntN(3) > 0 {
					b = a
				}
				low.SetFloat(a)
				high.SetFloat(b)
				v.FieldByName("How").SetUint(uint64(schedule.Stated))
			}
			return
		}
		for _, field := range v.Fields() {
			spoil(rng, field, share, seen)
		}
	}
}

// TestAbsurdValuesBreakNothing: whatever stands in the cells, no rule breaks,
// and no figure of a finding is NaN.
func TestAbsurdValuesBreakNothing(t *testing.T) {
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		spoil(rng, reflect.ValueOf(j), []float64{0.02, 0.3}[rng.IntN(2)], map[uintptr]bool{})
		r := Check(j, DefaultSettings())
		for _, b := range r.Broken {
			t.Errorf("broken: %s", b)
		}
		for _, f := range r.Findings {
			if math.IsNaN(f.Measured.Low) || math.IsNaN(f.Measured.High) || math.IsNaN(f.Score) || f.Score < 0 || f.Score > 100 {
				t.Errorf("%s at %s: measured %v, score %v", f.Rule.Name, f.Place, f.Measured, f.Score)
			}
		}
		for _, c := range r.Channels {
			if math.IsNaN(c.Load.Watts.Low) || math.IsNaN(c.Load.Watts.High) {
				t.Errorf("channel %s carries %v", c.Channel.Name, c.Load.Watts)
			}
		}
		Rank([]*Result{r})
	})
}

// TestDanglingPointersBreakNothing: parts that point at strangers, at nothing
// or at each other.
func TestDanglingPointersBreakNothing(t *testing.T) {
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		stranger := randomJob(rng, 5, true)
		for _, l := range j.Loudspeakers {
			switch rng.IntN(8) {
			case 0:
				l.Zone = stranger.Zones[0]
			case 1:
				l.Channel = stranger.Channels[0]
			case 2:
				l.Split = []*schedule.Channel{nil, stranger.Channels[0], j.Channels[0]}
			case 3:
				l.Run = &schedule.Cable{Reach: schedule.FromPrevious}
			}
		}
		for i, k := range j.Controls {
			if rng.IntN(3) == 0 {
				k.Parent = j.Controls[rng.IntN(len(j.Controls))]
			}
			if rng.IntN(5) == 0 {
				j.Controls[i].Channel = nil
			}
		}
		j.Amplifiers[0].Channels = append(j.Amplifiers[0].Channels, nil, stranger.Channels[0])
		j.Channels[0].Bridged = []*schedule.Channel{j.Channels[0], nil, j.Channels[len(j.Channels)-1]}
		for _, b := range Check(j, DefaultSettings()).Broken {
			t.Errorf("broken: %s", b)
		}
	})
	for _, j := range []*schedule.Job{{}, {LeftOut: []schedule.LeftOut{{Would: []*schedule.Loudspeaker{{}}}}}, {Cables: []*schedule.Cable{{}}},
		{Measurements: []schedule.Measurement{{}}, Totals: []schedule.Total{{}}}} {
		if r := Check(j, DefaultSettings()); len(r.Broken) > 0 {
			t.Errorf("broken on an empty job: %v", r.Broken)
		}
	}
}
