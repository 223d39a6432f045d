package line

import "math"

// Impedance returns the ohms of a load that draws watts from volts, Z = V^2/P.
// It is +Inf for 0 W. The result has no meaning unless volts > 0 and watts >= 0.
func Impedance(volts, watts float64) float64 {
	return volts * volts / watts
}

// Watts returns the watts that a load of the given ohms draws from volts,
// P = V^2/Z. The result has no meaning unless ohms > 0.
func Watts(volts, ohms float64) float64 {
	return volts * volts / ohms
}

// Siemens returns the admittance of a load that draws watts from volts, the
// inverse of Impedance: 0 for 0 W. It has no meaning unless volts > 0.
func Siemens(volts, watts float64) float64 {
	return watts / (volts * volts)
}

// TapWatts returns the watts drawn by a tap marked tapW at tapV when it hangs
// on a line of lineV: tapW (lineV/tapV)^2. Both voltages are taken as their
// nominal class, so that a tap marked for 70 V draws exactly its tap on a
// 70.7 V line and exactly twice its tap on a 100 V line.
// It has no meaning unless both voltages are > 0.
func TapWatts(tapW, tapV, lineV float64) float64 {
	from, to := Nominal(tapV), Nominal(lineV)
	if from == to {
		return tapW
	}
	r := to / from
	return tapW * r * r
}

// WithInsertionLoss returns the watts drawn from the line by a transformer
// that loses lossDB and still hands watts to its loudspeaker:
// watts x 10^(lossDB/10).
func WithInsertionLoss(watts, lossDB float64) float64 {
	return watts * math.Pow(10, lossDB/10)
}
