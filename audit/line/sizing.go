package line

import "strconv"

// Size is a conductor size that can be bought.
type Size struct {
	Name    string // "16 AWG", "1.5 mm2"
	AreaMM2 float64
}

// AWGSizes returns the gauges that loudspeaker cable is commonly sold in,
// thinnest first. Common practice, no source.
func AWGSizes() []Size {
	var sizes []Size
	for gauge := 24; gauge >= 6; gauge -= 2 {
		sizes = append(sizes, Size{strconv.Itoa(gauge) + " AWG", awgAreaMM2(gauge)})
	}
	return sizes
}

// MM2Sizes returns the nominal cross-sections of IEC 60228 from 0.5 to 10 mm2,
// thinnest first.
func MM2Sizes() []Size {
	var sizes []Size
	for _, row := range maxima {
		sizes = append(sizes, Size{strconv.FormatFloat(row.areaMM2, 'g', -1, 64) + " mm2", row.areaMM2})
	}
	return sizes
}

// AllowedLoopOhms returns the loop resistance that costs exactly lossDB when
// all the load, of loadOhms, is at the far end: loadOhms (10^(lossDB/20) - 1).
func AllowedLoopOhms(loadOhms, lossDB float64) float64 {
	return loadOhms * LoopShare(lossDB)
}

// LongestRunM returns the one-way length in metres at which a load of loadOhms
// at the far end of the conductor loses lossDB. It returns an error wrapping
// ErrValue for a load that is not > 0 or a loss that is not >= 0, and the
// errors of OhmPerMetre.
func LongestRunM(c Conductor, loadOhms, lossDB float64) (float64, error) {
	if !positive(loadOhms) {
		return 0, badValue("load ohms", loadOhms)
	}
	if !notNegative(lossDB) {
		return 0, badValue("loss dB", lossDB)
	}
	r, err := c.OhmPerMetre()
	if err != nil {
		return 0, err
	}
	return AllowedLoopOhms(loadOhms, lossDB) / (2 * r), nil
}
