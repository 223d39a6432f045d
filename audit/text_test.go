package audit

import (
	"math"
	"math/rand/v2"
	"strconv"
	"testing"
)

func TestFigure(t *testing.T) {
	for _, tt := range []struct {
		in   float64
		want string
	}{
		{0, "0"}, {-0.0001, "0"}, {5, "5"}, {7.5, "7.5"}, {0.05, "0.05"}, {-2.25, "-2.25"}, {0.62549, "0.625"}, {999.9996, "1000"}, {1234.56, "1234.6"},
		{1e15, "1000000000000000"}, {math.Inf(1), "any number"},
	} {
		if got := figure(tt.in); got != tt.want {
			t.Errorf("%v: %q, want %q", tt.in, got, tt.want)
		}
	}
	// Against the standard formatting of the rounded number.
	rng := rand.New(rand.NewPCG(1, 2))
	for range 10_000 {
		v := math.Pow(10, 8*rng.Float64()-4)
		scale := 1000.0
		if v >= 1000 {
			scale = 10
		}
		if want := strconv.FormatFloat(math.Round(v*scale)/scale, 'f', -1, 64); figure(v) != want {
			t.Fatalf("%v: %q, want %q", v, figure(v), want)
		}
	}
}

// A figure shown beside its limit is on the side of it that it is on.
func TestPercentShowsTheSide(t *testing.T) {
	for _, tt := range []struct {
		v    float64
		want string
	}{
		{133.3, "133 %"}, {82.4, "82 %"}, {100, "100 %"}, {100.2, "100.2 %"}, {99.96, "99.96 %"}, {100.002, "100.002 %"}, {80, "80 %"}, {80.3, "80.3 %"},
		{79.98, "79.98 %"}, {125.4, "125.4 %"}, {74.9, "74.9 %"}, {0, "0 %"}, {100 + 1e-12, "100 %"},
	} {
		if got := percent(tt.v); got != tt.want {
			t.Errorf("percent(%v) = %q, want %q", tt.v, got, tt.want)
		}
	}
}
