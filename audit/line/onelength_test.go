package line

import (
	"errors"
	"math"
	"testing"
)

// TestEvenlySpacedClosedForm checks the recursion against the closed form of a
// ladder of n equal steps of r ohms and g siemens (from memory, any text on
// iterative networks): with 2 sinh(a/2) = sqrt(r g),
// V_n/V = cosh(a/2)/cosh((n + 1/2) a).
func TestEvenlySpacedClosedForm(t *testing.T) {
	for _, n := range []int{1, 2, 3, 12, 100, 5000, MaxEven} {
		for _, share := range []float64{1e-6, 0.0593, 0.5, 3} { // loop over load
			const volts, watts = 100.0, 50.0
			loop := share * Impedance(volts, watts)
			got := must(EvenlySpaced(volts, watts, loop, n))(t)
			a := 2 * math.Asinh(math.Sqrt(share)/float64(n)/2)
			want := volts * math.Cosh(a/2) / math.Cosh((float64(n)+0.5)*a)
			if !near(got.Volts, want, 1e-9) {
				t.Errorf("%d loudspeakers, share %v: %v V, want %v", n, share, got.Volts, want)
			}
			if want := LossDB(volts, want); math.Abs(got.LossDB-want) > 1e-8 {
				t.Errorf("%d loudspeakers, share %v: %v dB, want %v", n, share, got.LossDB, want)
			}
		}
	}
	// Ever more loudspeakers become a line with load all along it, where
	// V_end/V = 1/cosh(sqrt(R_loop/Z)): a transmission line at direct current.
	got := must(EvenlySpaced(100, 50, 100, MaxEven))(t)
	if want := 100 / math.Cosh(math.Sqrt(0.5)); !near(got.Volts, want, 1e-5) {
		t.Errorf("%d loudspeakers: %v V, without end %v", MaxEven, got.Volts, want)
	}
}

// TestEvenlySpacedIsTheNetwork: the same line as nodes gives the same volts.
func TestEvenlySpacedIsTheNetwork(t *testing.T) {
	for _, n := range []int{1, 2, 12, 1000} {
		nodes := make([]Node, n)
		for i := range nodes {
			nodes[i] = Node{Parent: i - 1, LoopOhms: 9.0 / float64(n), LoadSiemens: Siemens(70.7, 60) / float64(n)}
		}
		want := must(Solve(70.7, nodes))(t).Nodes[n-1]
		got := must(EvenlySpaced(70.7, 60, 9, n))(t)
		if !near(got.Volts, want.Volts, 1e-12) || !near(got.LossDB, want.LossDB, 1e-12) {
			t.Errorf("%d: %+v, network %+v", n, got, want)
		}
	}
}

// TestReadingsBracket: circuit 02 of testdata/spice has twelve loudspeakers,
// 100 ft to the first and 25 ft between; read as evenly spaced over the same
// 375 ft they must lose more than nothing and less than all at the end.
func TestReadingsBracket(t *testing.T) {
	loop := feetOhms(375, 4.0160)
	even := must(EvenlySpaced(70.7, 60, loop, 12))(t)
	far := must(EvenlySpaced(70.7, 60, loop, 1))(t)
	if !(even.LossDB > 0 && even.LossDB < far.LossDB) {
		t.Errorf("evenly %v dB, far end %v dB", even.LossDB, far.LossDB)
	}
	// With a long home run the truth (0.1973 dB, circuit 02) is past the even
	// reading: a reading, not a bound.
	if even.LossDB >= 0.1973 {
		t.Errorf("evenly %v dB, circuit 02 has 0.1973 dB", even.LossDB)
	}
}

func TestOneLengthEdges(t *testing.T) {
	for _, tt := range []struct {
		name         string
		volts, w, r  float64
		n            int
		wantV, share float64
	}{
		{"no load", 100, 0, 5, 4, 100, 0},
		{"no cable", 100, 50, 0, 4, 100, 0},
		{"one at the end", 100, 100, 100, 1, 50, 1e-15}, // 100 ohm behind 100 ohm
	} {
		got := must(EvenlySpaced(tt.volts, tt.w, tt.r, tt.n))(t)
		if !near(got.Volts, tt.wantV, tt.share) || math.Abs(got.LossDB-LossDB(tt.volts, tt.wantV)) > 1e-12 {
			t.Errorf("%s: %+v, want %v V", tt.name, got, tt.wantV)
		}
	}
	nan, inf := math.NaN(), math.Inf(1)
	for _, bad := range [][4]float64{
		{0, 1, 1, 1}, {-1, 1, 1, 1}, {nan, 1, 1, 1}, {inf, 1, 1, 1},
		{1, -1, 1, 1}, {1, nan, 1, 1}, {1, inf, 1, 1},
		{1, 1, -1, 1}, {1, 1, nan, 1}, {1, 1, inf, 1},
		{1, 1, 1, 0}, {1, 1, 1, -1}, {1, 1, 1, MaxEven + 1},
	} {
		if got, err := EvenlySpaced(bad[0], bad[1], bad[2], int(bad[3])); !errors.Is(err, ErrValue) || got != (Reading{}) {
			t.Errorf("%v: %+v, %v", bad, got, err)
		}
	}
}

func TestDecibels(t *testing.T) {
	// R_loop/R_L for 0.5, 1, 2 and 3 dB, 10^(dB/20) - 1 by hand calculation; the
	// first is the factor 59.25 of testdata/worked-examples.csv, 004 and 010.
	for _, tt := range []struct{ dB, share float64 }{
		{0, 0}, {0.5, 0.059253725}, {1, 0.122018454}, {2, 0.258925412}, {3, 0.412537545}, {20, 9},
	} {
		if got := LoopShare(tt.dB); math.Abs(got-tt.share) > 1e-9 {
			t.Errorf("LoopShare(%v) = %v, want %v", tt.dB, got, tt.share)
		}
		if got := ShareLossDB(LoopShare(tt.dB)); math.Abs(got-tt.dB) > 1e-12 {
			t.Errorf("ShareLossDB(LoopShare(%v)) = %v", tt.dB, got)
		}
	}
	if got := LossDB(100, 50); math.Abs(got-6.0206) > 1e-4 {
		t.Errorf("LossDB(100, 50) = %v", got)
	}
	if got := LossDB(100, 0); !math.IsInf(got, 1) {
		t.Errorf("LossDB(100, 0) = %v", got)
	}
}
