package answer

import "math"

// Copper is the resistivity of standard annealed copper at 20 degC in
// ohm mm2/m: one over 58 (IEC 60028, the international annealed copper
// standard, as quoted in every handbook).
const Copper = 1.0 / 58

// resistivity lists ohm mm2/m at 20 degC by material as the answers name it.
// The copper-clad figure is the maximum of ASTM B566 for 10 % copper by
// volume (from memory); aluminium is IEC 60889 hard-drawn wire (from memory).
var resistivity = map[string]float64{
	"copper":                Copper,
	"copper-clad aluminium": 0.02743,
	"aluminium":             0.028264,
}

// AreaAWG returns the area in mm2 of a solid conductor of gauge n, from the
// definition d = 0.127 mm x 92^((36-n)/39) (ASTM B258).
func AreaAWG(n int) float64 {
	d := 0.127 * math.Pow(92, float64(36-n)/39)
	return math.Pi / 4 * d * d
}

// LoopOhm returns the resistance out and back, in ohm at 20 degC, of a
// two-wire cable lengthM metres long with conductors of areaMM2.
func LoopOhm(lengthM, areaMM2 float64, material string) float64 {
	return 2 * lengthM * resistivity[material] / areaMM2
}

// Draw returns the watts that a tap of tapW, meant for a line of tapV volts,
// takes from a line of lineV volts. 70, 70.7 and 71 V are one class.
func Draw(tapW, tapV, lineV float64) float64 {
	r := Class(lineV) / Class(tapV)
	return tapW * r * r
}

// Class returns the exact voltage of a nominal line voltage: 100/sqrt(2)
// for anything written as 70, 70.7 or 71 V, else the number itself.
func Class(v float64) float64 {
	if v >= 70 && v <= 71 {
		return 100 / math.Sqrt2
	}
	return v
}

// LossFar returns the level drop in dB where the whole of loadW sits at the
// far end of a cable of loopOhm on a line of volts.
func LossFar(loopOhm, volts, loadW float64) float64 {
	z := Class(volts) * Class(volts) / loadW
	return 20 * math.Log10((z+loopOhm)/z)
}

// LossEven returns the level drop in dB at the last of n equal loudspeakers
// that share loadW, spaced evenly along the cable from 1/n of it to its end.
func LossEven(loopOhm, volts, loadW float64, n int) float64 {
	steps := make([]Step, n)
	for i := range steps {
		steps[i] = Step{Ohm: loopOhm / float64(n), W: loadW / float64(n)}
	}
	return LossChain(volts, steps)
}

// Step is one piece of a daisy chain: the loop resistance from the device
// before it, and the nominal watts of the loudspeaker at its end.
type Step struct {
	Ohm, W float64
}

// LossChain returns the level drop in dB at the last loudspeaker of a daisy
// chain fed with volts, solved exactly.
func LossChain(volts float64, steps []Step) float64 {
	v := Class(volts)
	in := 0.0 // admittance looking into the rest of the chain
	ratio := 1.0
	for i := len(steps) - 1; i >= 0; i-- {
		y := steps[i].W/(v*v) + in
		drop := 1 + steps[i].Ohm*y
		ratio *= drop
		in = y / drop
	}
	return 20 * math.Log10(ratio)
}
