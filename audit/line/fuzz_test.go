package line

import (
	"errors"
	"math"
	"testing"
)

// palette holds the quantities that the fuzzed networks are made of: the
// ordinary, the extreme that must be solved, and (from badFrom on) what must be
// refused everywhere.
var palette = []float64{
	0, 1, 0.01, 0.5, 5, 70.7, 1000, 1e-6, 0.999, math.Copysign(0, -1),
	1e9, 1e-9, 1e-150, 1e-300, 5e-324,
	-1, -5e-324, 1e10, 1e200, math.MaxFloat64, math.Inf(1), math.Inf(-1), math.NaN(),
}

const badFrom = 15

// FuzzSolve builds a network from bytes, five to a node: parent and the four
// quantities of a Node as places in the palette. Whatever they are, the answer
// is an error of this package or numbers that balance; never NaN.
func FuzzSolve(f *testing.F) {
	f.Add(byte(5), []byte{0, 1, 0, 0, 2})
	f.Add(byte(5), []byte{0, 1, 0, 0, 2, 1, 4, 4, 3, 2, 1, 10, 0, 0, 10})
	f.Add(byte(10), []byte{2, 10, 10, 7, 10, 0, 10, 10, 7, 10})
	f.Add(byte(5), []byte{2, 1, 1, 1, 1, 1, 1, 1, 1, 1})
	f.Add(byte(22), []byte{0, 1, 0, 0, 2})
	f.Add(byte(5), []byte{0, 22, 20, 15, 16})
	f.Fuzz(func(t *testing.T, voltsAt byte, data []byte) {
		pick := func(b byte) float64 { return palette[int(b)%len(palette)] }
		bad := int(voltsAt)%len(palette) >= badFrom || pick(voltsAt) < 0.001
		nodes := make([]Node, min(len(data)/5, 300))
		for i := range nodes {
			b := data[5*i : 5*i+5]
			nodes[i] = Node{
				Parent:   int(int8(b[0])) - 1,
				LoopOhms: pick(b[1]), ControlOhms: pick(b[2]), Ratio: pick(b[3]), LoadSiemens: pick(b[4]),
			}
			for _, q := range b[1:] {
				bad = bad || int(q)%len(palette) >= badFrom
			}
			ratio := nodes[i].Ratio
			bad = bad || ratio > 1 || ratio != 0 && ratio < 1e-6
			bad = bad || nodes[i].Parent < Source || nodes[i].Parent >= len(nodes)
		}
		for i := range nodes {
			bad = bad || endless(nodes, i)
		}
		sol, err := Solve(pick(voltsAt), nodes)
		if (err != nil) != bad {
			t.Fatalf("error %v, bad input %v: %+v", err, bad, nodes)
		}
		if err != nil {
			if sol != nil || !errors.Is(err, ErrValue) && !errors.Is(err, ErrParent) && !errors.Is(err, ErrCycle) {
				t.Fatalf("%v, %v", sol, err)
			}
			return
		}
		for _, v := range []float64{sol.Amps, sol.Watts, sol.LoadWatts, sol.CableWatts, sol.ControlWatts, sol.NominalWatts} {
			if !(v >= 0) || math.IsInf(v, 1) {
				t.Fatalf("%+v", sol)
			}
		}
		if !(sol.LoadOhms > 0) {
			t.Fatalf("load of %v ohm", sol.LoadOhms)
		}
		for i, res := range sol.Nodes {
			for _, v := range []float64{
				res.InVolts, res.Volts, res.LossDB, res.Amps, res.FeedWatts,
				res.CableWatts, res.ControlWatts, res.LoadWatts, res.NominalWatts,
			} {
				if !(v >= 0) || math.IsInf(v, 1) {
					t.Fatalf("node %d of %+v: %+v", i, nodes, res)
				}
			}
			if res.Volts > res.InVolts || res.InVolts > sol.Volts {
				t.Fatalf("node %d: volts rise: %+v", i, res)
			}
		}
		if out := sol.LoadWatts + sol.CableWatts + sol.ControlWatts; math.Abs(out-sol.Watts) > 1e-6*sol.Watts+1e-300 {
			t.Fatalf("%v W in, %v W out: %+v", sol.Watts, out, nodes)
		}
	})
}

// endless reports whether node i is fed through a ring.
func endless(nodes []Node, i int) bool {
	for range len(nodes) + 1 {
		if i < 0 || i >= len(nodes) {
			return false
		}
		i = nodes[i].Parent
	}
	return true
}

// FuzzEvenlySpaced: an error, or a finite loss that is not negative and, while
// small, no more than with all the load at the far end.
func FuzzEvenlySpaced(f *testing.F) {
	f.Add(70.7, 60.0, 3.0, 12)
	f.Add(100.0, 0.0, 0.0, 1)
	f.Add(math.NaN(), math.Inf(1), -1.0, 0)
	f.Add(1e9, 1e9, 1e9, 1000)
	f.Add(5e-324, 1e9, 1e9, 3)
	f.Fuzz(func(t *testing.T, volts, watts, ohms float64, n int) {
		if n > 2000 {
			n = n%2000 + 1
		}
		usable := func(v float64) bool { return v >= 0 && v <= 1e9 }
		bad := !usable(volts) || volts < 0.001 || !usable(watts) || !usable(ohms) || n < 1
		even, err := EvenlySpaced(volts, watts, ohms, n)
		far, farErr := EvenlySpaced(volts, watts, ohms, 1)
		if err != nil || farErr != nil {
			for _, err := range []error{err, farErr} {
				if err != nil && !errors.Is(err, ErrValue) {
					t.Fatal(err)
				}
			}
			if !bad {
				t.Fatalf("%v V, %v W, %v ohm, %d: %v", volts, watts, ohms, n, err)
			}
			return
		}
		if bad {
			t.Fatalf("%v V, %v W, %v ohm, %d: no error", volts, watts, ohms, n)
		}
		for _, r := range []Reading{even, far} {
			if !(r.LossDB >= 0) || math.IsInf(r.LossDB, 1) || !(r.Volts >= 0) || r.Volts > volts {
				t.Fatalf("%v V, %v W, %v ohm, %d: %+v", volts, watts, ohms, n, r)
			}
		}
		// Spreading the load helps as long as the far end loses little; past
		// that a long ladder loses more (cosh(sqrt(s)) > 1 + s from 19 dB on).
		if far.LossDB < 6 && even.LossDB > far.LossDB+1e-9 {
			t.Fatalf("%v V, %v W, %v ohm, %d: even %v dB, far %v dB", volts, watts, ohms, n, even.LossDB, far.LossDB)
		}
	})
}
