package line

import (
	"fmt"
	"math"
)

// Material is what a conductor is made of. The zero value is copper.
type Material uint8

// The materials that loudspeaker cable is sold in.
const (
	Copper Material = iota
	TinnedCopper
	CopperCladAluminium
	Aluminium
)

// metal describes a material at the reference temperature.
type metal struct {
	name string
	// iacs is the conductivity as a share of annealed copper.
	iacs float64
	// alpha is the rise of resistance per degC from 20 degC.
	alpha float64
}

// copperSiemensMPerMM2 is the conductivity of standard annealed copper at
// 20 degC, 58 S m/mm2, that is 1/58 ohm mm2/m: 100 % IACS (IEC 60028).
const copperSiemensMPerMM2 = 58

// referenceC is the temperature, in degC, of every tabulated resistance.
const referenceC = 20

// tinnedShare is the conductivity taken for tinned copper of no stated class:
// 1.04 times the resistance of plain copper, as between coated and uncoated
// solid copper of 18 to 12 AWG in the US National Electrical Code, chapter 9,
// table 8. IEC 60228 has 1.03 for flexible conductors; thin strands do worse.
const tinnedShare = 1 / 1.04

var metals = [...]metal{
	Copper:       {"copper", 1, 0.00393},
	TinnedCopper: {"tinned copper", tinnedShare, 0.00393},
	// The minimum that ASTM B566 wire with 10 % copper by volume must reach,
	// 62.9 % IACS; typical wire has about 64.5 %. Most of it is aluminium,
	// whose temperature coefficient is used.
	CopperCladAluminium: {"copper-clad aluminium", 0.629, 0.00403},
	// Electrical-grade aluminium, 0.028264 ohm mm2/m (IEC 60889).
	Aluminium: {"aluminium", 0.61, 0.00403},
}

// String returns the name of the material, such as "tinned copper".
func (m Material) String() string {
	if int(m) >= len(metals) {
		return fmt.Sprintf("material %d", m)
	}
	return metals[m].name
}

// Conductor is one conductor of a cable; a two-wire line has two.
// Conductor{AreaMM2: 1.5} is copper of the standard resistivity at 20 degC.
type Conductor struct {
	AreaMM2  float64 // nominal cross-section of one wire
	Material Material
	// Class is an IEC 60228 class: 1 solid, 2 stranded, 5 flexible, 6 very
	// flexible. The conductor then has the largest resistance that the
	// standard allows. 0 is resistivity over nominal area.
	Class int
	// RiseC is the temperature above 20 degC, in degC; see At.
	RiseC float64
	// Parallel is the number of such wires joined at both ends; 0 is taken as 1.
	Parallel int
}

// At returns the conductor at a temperature in degC.
func (c Conductor) At(tempC float64) Conductor {
	c.RiseC = tempC - referenceC
	return c
}

// TempC returns the temperature of the conductor in degC.
func (c Conductor) TempC() float64 { return referenceC + c.RiseC }

// OhmPerMetre returns the DC resistance of one metre of the conductor.
// It returns an error wrapping ErrValue for an area that is not > 0, an unknown
// material or class, a temperature outside -80 to 250 degC or a negative
// Parallel, and ErrNoStandardValue where IEC 60228 has no such conductor.
//
// R(T) = R20 (1 + alpha (T - 20)), alpha 0.00393 for copper (IEC 60028) and
// 0.00403 for aluminium (IEC 60889).
func (c Conductor) OhmPerMetre() (float64, error) {
	switch {
	case !positive(c.AreaMM2):
		return 0, badValue("area mm2", c.AreaMM2)
	case int(c.Material) >= len(metals):
		return 0, fmt.Errorf("%v: %w", c.Material, ErrValue)
	case !(c.TempC() >= -80 && c.TempC() <= 250):
		return 0, badValue("temperature", c.TempC())
	case c.Parallel < 0:
		return 0, fmt.Errorf("%d in parallel: %w", c.Parallel, ErrValue)
	}
	m := metals[c.Material]
	r20 := 1 / (copperSiemensMPerMM2 * m.iacs * c.AreaMM2)
	if c.Class != 0 {
		ohmPerKM, err := maximumOhmPerKM(c.AreaMM2, c.Class, c.Material)
		if err != nil {
			return 0, err
		}
		r20 = ohmPerKM / 1000
	}
	return r20 * (1 + m.alpha*c.RiseC) / float64(max(c.Parallel, 1)), nil
}

// LoopOhms returns the out-and-back resistance of a two-wire run of the given
// one-way length in metres. Errors are those of OhmPerMetre, and ErrValue for a
// length that is not >= 0.
func (c Conductor) LoopOhms(lengthM float64) (float64, error) {
	if !notNegative(lengthM) {
		return 0, badValue("length m", lengthM)
	}
	r, err := c.OhmPerMetre()
	if err != nil {
		return 0, err
	}
	return 2 * lengthM * r, nil
}

// AWGAreaMM2 returns the cross-section of a solid wire of an American gauge,
// from 0000 (-3) to 40: d = 0.005 in x 92^((36-n)/39) (ASTM B258).
// Other gauges are an error wrapping ErrValue.
func AWGAreaMM2(gauge int) (float64, error) {
	if gauge < -3 || gauge > 40 {
		return 0, fmt.Errorf("AWG %d: %w", gauge, ErrValue)
	}
	return awgAreaMM2(gauge), nil
}

func awgAreaMM2(gauge int) float64 {
	const smallestMM = 0.005 * 25.4 // AWG 36
	d := smallestMM * math.Pow(92, float64(36-gauge)/39)
	return math.Pi / 4 * d * d
}
