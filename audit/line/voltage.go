package line

import "math"

// classes holds the exact value of each nominal line voltage, in volts.
// "70 V" is 100 V peak of a sine wave, 100/sqrt(2), and is also written 70.7
// and 71. Source: the histories of the constant-voltage line cited in
// testdata/lines.csv.
var classes = [...]float64{25, 35, 50, 100 / math.Sqrt2, 100, 140, 200}

// classTolerance is how far, as a share of the exact value, a written voltage
// may be from its class. 1.5 % takes in 70 and 71 for 70.7 (1.0 % and 0.4 %
// away), 35.4 for 35 and 141.4 for 140, and nothing that is a voltage of its
// own. Common practice, no source.
const classTolerance = 0.015

// Class returns the exact value in volts of the nominal line voltage that a
// written voltage stands for: 100/sqrt(2) for 70, 70.7 and 71, and 25, 35, 50,
// 100, 140 or 200. It reports false for anything else, such as the 4 and 8 of
// a low-impedance loudspeaker, NaN or a negative value.
func Class(volts float64) (nominal float64, ok bool) {
	for _, v := range classes {
		if math.Abs(volts-v) <= classTolerance*v {
			return v, true
		}
	}
	return 0, false
}

// SameClass reports whether two voltages name the same nominal line voltage.
// Two voltages outside every class are the same only if they are equal.
func SameClass(a, b float64) bool {
	return Nominal(a) == Nominal(b)
}

// Nominal returns the exact value in volts of the class of a written voltage,
// or the voltage itself where it belongs to none.
func Nominal(volts float64) float64 {
	if v, ok := Class(volts); ok {
		return v
	}
	return volts
}
