package audit

import (
	"errors"
	"math"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// metals are the materials by the name that a cable states.
var metals = map[string]line.Material{
	"copper":                line.Copper,
	"tinned copper":         line.TinnedCopper,
	"copper-clad aluminium": line.CopperCladAluminium,
	"aluminium":             line.Aluminium,
}

// A conduit is a cable's electricity: its loop, as far as it is known.
type conduit struct {
	k        *schedule.Cable
	wire     line.Conductor // of the stated area, the smaller where it has bounds
	perMetre Interval       // ohm of one conductor for a metre; unknown without an area
	length   Interval       // m, one way; unknown when not stated
	loop     Interval       // ohm, out and back; at least 0 where a part is not known
}

// conduit works the resistance of a cable out: material, class, temperature
// and conductors in parallel as the schedule states them, else copper of the
// standard resistivity at the temperature in force.
func (c *circuit) conduit(k *schedule.Cable) conduit {
	out := conduit{k: k, length: quantity(k.Length)}
	area := quantity(k.Area)
	if g, ok := k.AWG.Exact(); !area.Known && ok {
		if mm2, err := line.AWGAreaMM2(int(g)); err == nil {
			area = Exact(mm2)
		}
	}
	if !area.Known || oddArea(c, k) {
		area = Interval{}
	}
	if oddLength(c, k) {
		out.length = Interval{}
	}
	out.wire = line.Conductor{AreaMM2: area.Low, Material: metals[k.Material.Value], Class: k.Class, Parallel: max(k.Parallel, 0)}.At(c.temperature(k))
	if out.wire.Class == 0 {
		out.wire.Class = c.usualClass
	}
	if area.Known {
		low, errLow := c.ohmPerMetre(&out.wire, area.High)
		high, errHigh := c.ohmPerMetre(&out.wire, area.Low)
		out.wire.AreaMM2 = area.Low
		if errLow == nil && errHigh == nil {
			out.perMetre = between(low, high)
		}
	}
	switch {
	case out.length.Known && out.perMetre.Known:
		out.loop = out.length.times(out.perMetre).scaled(2)
	default:
		out.loop = atLeast(0)
	}
	return out
}

// ohmPerMetre is the resistance of the wire at an area; where the standard of
// its class has no such size, that of the resistivity.
func (c *circuit) ohmPerMetre(wire *line.Conductor, areaMM2 float64) (float64, error) {
	wire.AreaMM2 = areaMM2
	r, err := wire.OhmPerMetre()
	if errors.Is(err, line.ErrNoStandardValue) {
		wire.Class = 0
		r, err = wire.OhmPerMetre()
	}
	return r, err
}

// temperature is the conductor temperature in degC.
func (c *circuit) temperature(k *schedule.Cable) float64 {
	if t, ok := k.Temperature.Exact(); ok && !math.IsNaN(float64(t)) {
		return float64(t)
	}
	return c.usualC
}

// The thinnest wire that a loudspeaker line is usually run with, for bounding
// what a missing size could do. Common practice, no source.
const thinnestGauge = 24

// worstCase is the loop with the thinnest usual wire, for a cable whose length
// is known and whose area is not.
func (d *conduit) worstCase() Interval {
	if d.loop.bounded() || !d.length.Known {
		return d.loop
	}
	mm2, err := line.AWGAreaMM2(thinnestGauge)
	if err != nil {
		return d.loop
	}
	wire := d.wire
	wire.AreaMM2, wire.Class = mm2, 0
	r, err := wire.OhmPerMetre()
	if err != nil {
		return d.loop
	}
	return between(0, 2*d.length.High*r)
}

// metalOf is the material as reports name it.
func metalOf(k *schedule.Cable) string {
	if _, ok := metals[k.Material.Value]; ok {
		return k.Material.Value
	}
	return line.Copper.String()
}

// areaOf is the conductor area of a cable in mm2.
func (d *conduit) areaOf() Interval {
	if !d.perMetre.Known {
		return Interval{}
	}
	if a := quantity(d.k.Area); a.Known {
		return a
	}
	return Exact(d.wire.AreaMM2)
}

// wireName says what a conductor is: "1.5 mm2 copper", "16 AWG copper".
func (d *conduit) wireName() string {
	size := ""
	switch g, ok := d.k.AWG.Exact(); {
	case ok:
		size = figure(float64(g)) + " AWG"
	case d.perMetre.Known:
		size = span(d.areaOf()) + " mm2"
	default:
		size = "unknown size"
	}
	if d.k.Parallel > 1 {
		size = figure(float64(d.k.Parallel)) + " x " + size
	}
	return size + " " + metalOf(d.k)
}
