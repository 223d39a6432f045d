package line

import "math"

// LossDB returns the level drop in decibels from a source of sourceV to a load
// at loadV, 20 log10(sourceV/loadV): positive when the load has fewer volts.
// This is the drop that a listener hears on a constant-voltage line, not the
// share of power burnt in the cable, which gives about half the figure.
// Both voltages must be > 0; a load at 0 V has a loss of +Inf.
func LossDB(sourceV, loadV float64) float64 {
	return 20 * math.Log10(sourceV/loadV)
}

// LoopShare returns the loop resistance, as a share of the resistance of the
// load at its end, that costs lossDB: 10^(lossDB/20) - 1. 0.5 dB is 0.0593.
func LoopShare(lossDB float64) float64 {
	return math.Expm1(lossDB / 20 * math.Ln10)
}

// ShareLossDB returns the level drop in decibels across a loop whose resistance
// is the given share of the load at its end, 20 log10(1 + share); the inverse
// of LoopShare.
func ShareLossDB(share float64) float64 {
	return 20 * math.Log1p(share) / math.Ln10
}
