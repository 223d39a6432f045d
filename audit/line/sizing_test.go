package line

import (
	"errors"
	"math"
	"slices"
	"testing"
)

func TestSizes(t *testing.T) {
	for _, tt := range []struct {
		sizes           []Size
		thinnest, thick Size
		count           int
	}{
		{AWGSizes(), Size{"24 AWG", 0.204732}, Size{"6 AWG", 13.3018}, 10}, // areas: testdata/conductors-awg.csv
		{MM2Sizes(), Size{"0.5 mm2", 0.5}, Size{"10 mm2", 10}, 8},
	} {
		if len(tt.sizes) != tt.count {
			t.Errorf("%d sizes, want %d", len(tt.sizes), tt.count)
		}
		first, last := tt.sizes[0], tt.sizes[len(tt.sizes)-1]
		if first.Name != tt.thinnest.Name || !near(first.AreaMM2, tt.thinnest.AreaMM2, 1e-5) ||
			last.Name != tt.thick.Name || !near(last.AreaMM2, tt.thick.AreaMM2, 1e-5) {
			t.Errorf("from %+v to %+v", first, last)
		}
		if !slices.IsSortedFunc(tt.sizes, func(a, b Size) int {
			if a.AreaMM2 < b.AreaMM2 {
				return -1
			}
			return 1
		}) {
			t.Errorf("not thinnest first: %+v", tt.sizes)
		}
	}
}

// TestThinnestSize takes its cases from testdata/worked-examples.csv, 051 to
// 055: an installation manual allows 2 dB, and the next thinner size fails.
func TestThinnestSize(t *testing.T) {
	for _, tt := range []struct {
		name                  string
		sizes                 []Size
		c                     Conductor
		volts, watts, lengthM float64
		lossDB                float64
		want                  string // blank: none
	}{
		{"100 V, 200 W, 500 m", MM2Sizes(), Conductor{}, 100, 200, 500, 2, "1.5 mm2"},
		{"70.7 V, 150 W, 1312 ft", AWGSizes(), Conductor{}, 70.7, 150, 1312 * footM, 2, "14 AWG"},
		{"the same in copper-clad", AWGSizes(), Conductor{Material: CopperCladAluminium}, 70.7, 150, 1312 * footM, 2, "12 AWG"},
		// 13.3 ohm/km x 2 x 0.5 km = 13.3 ohm, past the 12.95 ohm of 2 dB at 50 ohm.
		{"flexible at its maximum", MM2Sizes(), Conductor{Class: 5}, 100, 200, 500, 2, "2.5 mm2"},
		{"a class knows no gauges", AWGSizes(), Conductor{Class: 5}, 100, 200, 500, 2, ""},
		{"too far for any", MM2Sizes(), Conductor{}, 100, 200, 50_000, 2, ""},
		{"no loss allowed", MM2Sizes(), Conductor{}, 100, 200, 500, 0, ""},
	} {
		load := Impedance(tt.volts, tt.watts)
		reach := func(size Size) float64 {
			tt.c.AreaMM2 = size.AreaMM2
			metres, err := LongestRunM(tt.c, load, tt.lossDB)
			if err != nil {
				return 0 // the class does not have this size
			}
			return metres
		}
		at := slices.IndexFunc(tt.sizes, func(s Size) bool { return reach(s) >= tt.lengthM })
		got := ""
		if at >= 0 {
			got = tt.sizes[at].Name
		}
		if got != tt.want {
			t.Errorf("%s: %q; want %q", tt.name, got, tt.want)
		}
		if at < 0 {
			continue
		}
		// What is proposed holds, and at the longest run of it holds exactly.
		longest := reach(tt.sizes[at])
		far := must(EvenlySpaced(tt.volts, tt.watts, must(tt.c.LoopOhms(tt.lengthM))(t), 1))(t)
		atLimit := must(EvenlySpaced(tt.volts, tt.watts, must(tt.c.LoopOhms(longest))(t), 1))(t)
		if far.LossDB > tt.lossDB || longest < tt.lengthM || !near(atLimit.LossDB, tt.lossDB, 1e-12) {
			t.Errorf("%s: %s loses %v dB, reaches %v m at %v dB", tt.name, got, far.LossDB, longest, atLimit.LossDB)
		}
	}
}

func TestLongestRunErrors(t *testing.T) {
	copper := Conductor{AreaMM2: 1}
	for _, tt := range []struct {
		c          Conductor
		ohms, loss float64
	}{
		{Conductor{}, 100, 1}, {copper, 0, 1}, {copper, -5, 1}, {copper, math.NaN(), 1}, {copper, math.Inf(1), 1},
		{copper, 100, -1}, {copper, 100, math.NaN()}, {copper, 100, math.Inf(1)},
	} {
		if got, err := LongestRunM(tt.c, tt.ohms, tt.loss); !errors.Is(err, ErrValue) || got != 0 {
			t.Errorf("%+v: %v, %v", tt, got, err)
		}
	}
	if got := must(LongestRunM(copper, 100, 0))(t); got != 0 {
		t.Errorf("no loss allowed: %v m", got)
	}
}
