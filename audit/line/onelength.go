package line

import "fmt"

// MaxEven is the largest number of loudspeakers that EvenlySpaced takes.
const MaxEven = 100_000

// Reading is the far end of a line of which one length and one load are known.
type Reading struct {
	Volts  float64 // at the last loudspeaker
	LossDB float64 // 20 log10(source volts / Volts)
}

// EvenlySpaced reads a line as n equal loudspeakers that share loadWatts and
// hang at 1/n, 2/n ... all of its length, and returns what the last one gets,
// exactly. n = 1 puts all load at the far end, the usual sizing convention:
// V_load = V Z/(Z + R_loop). Real spacing may be better or worse: this is a
// reading, not a bound. loadWatts is the nominal load at that voltage (0 is no
// load, no loss), loopOhms the out-and-back resistance. It returns ErrValue for quantities out of range or an
// n outside 1 to MaxEven.
func EvenlySpaced(volts, loadWatts, loopOhms float64, n int) (Reading, error) {
	switch {
	case !usableVolts(volts):
		return Reading{}, badValue("source volts", volts)
	case !notNegative(loadWatts):
		return Reading{}, badValue("load watts", loadWatts)
	case !notNegative(loopOhms):
		return Reading{}, badValue("loop ohms", loopOhms)
	case n < 1 || n > MaxEven:
		return Reading{}, fmt.Errorf("%d loudspeakers: %w", n, ErrValue)
	}
	each := Siemens(volts, loadWatts) / float64(n)
	step := loopOhms / float64(n)
	// From the last loudspeaker towards the source. Every step divides the
	// volts by one plus its resistance times the siemens behind it.
	y := 0.0
	end := Reading{Volts: volts}
	for range n {
		y += each
		share := step * y
		end.Volts /= 1 + share
		end.LossDB += ShareLossDB(share)
		y /= 1 + share
	}
	return end, nil
}
