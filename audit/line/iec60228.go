package line

import (
	"fmt"
	"math"
)

// maximum is one row of the tables of IEC 60228 (2004 values): the largest DC
// resistance at 20 degC, in ohm/km, of one conductor. 0 is a blank.
type maximum struct {
	areaMM2               float64
	plain, coated         float64 // classes 1 and 2, copper
	flexPlain, flexCoated float64 // classes 5 and 6, copper
	aluminium             float64 // classes 1 and 2, aluminium
}

var maxima = [...]maximum{
	{0.5, 36.0, 36.7, 39.0, 40.1, 0},
	{0.75, 24.5, 24.8, 26.0, 26.7, 0},
	{1, 18.1, 18.2, 19.5, 20.0, 0},
	{1.5, 12.1, 12.2, 13.3, 13.7, 0},
	{2.5, 7.41, 7.56, 7.98, 8.21, 0},
	{4, 4.61, 4.70, 4.95, 5.09, 0},
	{6, 3.08, 3.11, 3.30, 3.39, 0},
	{10, 1.83, 1.84, 1.91, 1.95, 3.08},
}

// maximumOhmPerKM looks the resistance up. The standard knows no copper-clad
// aluminium, and aluminium only solid or stranded from 10 mm2.
func maximumOhmPerKM(areaMM2 float64, class int, material Material) (float64, error) {
	if class != 1 && class != 2 && class != 5 && class != 6 {
		return 0, fmt.Errorf("IEC 60228 class %d: %w", class, ErrValue)
	}
	flexible := class >= 5
	for _, row := range maxima {
		if math.Abs(areaMM2-row.areaMM2) > 1e-6*row.areaMM2 {
			continue
		}
		var ohm float64
		switch {
		case material == Copper && flexible:
			ohm = row.flexPlain
		case material == Copper:
			ohm = row.plain
		case material == TinnedCopper && flexible:
			ohm = row.flexCoated
		case material == TinnedCopper:
			ohm = row.coated
		case material == Aluminium && !flexible:
			ohm = row.aluminium
		}
		if ohm > 0 {
			return ohm, nil
		}
	}
	return 0, fmt.Errorf("%g mm2 %v class %d: %w", areaMM2, material, class, ErrNoStandardValue)
}
