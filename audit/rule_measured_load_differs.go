package audit

import (
	_ "embed"
	"fmt"
	"math"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

//go:embed doc/measured-load-differs.md
var measuredLoadDiffersDoc string

// measuredLoadDiffers finds measured lines that are not what their taps say.
var measuredLoadDiffers = &Rule{
	Name:  "measured-load-differs",
	Title: "what was measured is not the load that the taps add up to",
	Why: "The strongest evidence there is that the taps on site are not those on paper, that something is short, open or missing, " +
		"or that devices hang on the line that nobody listed: every sum above it is then fiction.",
	Doc: measuredLoadDiffersDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 20, Unit: "% of the computed load", Source: "meter and transformer tolerances are 10 to 20 % (from memory)"},
		{Name: "fault", Grade: Fault, Default: 100, Unit: "% of rating measured", Source: "the same rating as for the computed load; judged only where the measured load differs"},
	},
	Silent: []string{
		"the difference is within meter and transformer tolerance",
		"the line voltage is not known",
		"the load is not known: the measured one is then shown instead",
	},
	Cautions: []string{cautionVolts, cautionPaper},
	OnSite:   "open the line in halves and measure the impedance of each until the difference is found",
	Tool:     "impedance meter",
	Check:    checkMeasuredLoadDiffers,
}

// A reading is one measured value held against one computed load.
type reading struct {
	claim
	ohms     schedule.Quantity[schedule.Ohms]
	watts    schedule.Quantity[schedule.Watts]
	lineV    float64
	computed Interval
	rated    Interval
	sum      string
}

func checkMeasuredLoadDiffers(x *Examination) error {
	c := x.circuit
	for _, m := range x.Job.Measurements {
		r := &reading{ohms: m.Ohms, watts: m.Watts}
		r.at = placeOf(m.Ohms.Source, placeOf(m.Watts.Source, m.At))
		var n *node
		switch {
		case m.Loudspeaker != nil:
			if i := c.positionOf(m.Loudspeaker); i >= 0 {
				x.measuredRow(i, m.Ohms)
			}
			continue
		case m.Control != nil && indexOf(c.controlAt, m.Control) >= 0:
			n = &c.controls[c.controlAt[m.Control]]
			r.key, r.place, r.room, r.zone = controlKey(m.Control), controlName(m.Control), m.Control.Room.Value, zoneName(m.Control.Zone)
		case m.Channel != nil && indexOf(c.channelAt, m.Channel) >= 0:
			n = &c.channels[c.head[c.channelAt[m.Channel]]]
			r.key, r.place, r.zone = channelKey(m.Channel), channelName(m.Channel), c.onlyZone(n)
		case m.Zone != nil && indexOf(c.zoneAt, m.Zone) >= 0:
			n = &c.zones[c.zoneAt[m.Zone]]
			r.key, r.place, r.zone = zoneKey(m.Zone), "zone "+m.Zone.Name, m.Zone.Name
		default:
			continue
		}
		r.lineV, r.computed, r.rated, r.sum = n.lineV, n.load.Watts, n.rating.watts, n.load.Sum
		if n.lowRows+n.oddRows > 0 {
			r.computed.High = math.Inf(1)
		}
		r.pieces, r.emergency = n.pieces(), n.emergency
		r.cells = func() []Evidence {
			cells := appendCell(appendCell(nil, m.Ohms.Source, "measured"), m.Watts.Source, "measured")
			return append(cells, c.cells(n)...)
		}
		r.gaps = func() []gap { return c.rowGaps(n) }
		x.measured(r)
	}
	for i := range c.rows {
		if c.rows[i].l.Measured.Had() {
			x.measuredRow(i, c.rows[i].l.Measured)
		}
	}
	return nil
}

// measuredRow compares the impedance measured at one row: of one of its
// loudspeakers, or of all of them together, whichever is nearer.
func (x *Examination) measuredRow(i int, ohms schedule.Quantity[schedule.Ohms]) {
	row := &x.circuit.rows[i]
	l := row.l
	if row.part != counts || row.out != notOut {
		return
	}
	r := &reading{ohms: ohms, lineV: row.lineV, computed: row.each, sum: span(row.each) + " W"}
	r.claim = claim{key: rowKey(l), place: rowName(l), room: l.Room.Value, zone: zoneName(l.Zone), at: placeOf(ohms.Source, l.At), pieces: pieceCount(row),
		emergency: row.emergency, cells: func() []Evidence { return row.evidence(appendCell(nil, ohms.Source, "measured")) }}
	if z, ok := ohms.Exact(); ok && z > 0 && row.lineV > 0 && row.count.exact() && row.count.Low > 1 {
		w := line.Watts(row.lineV, float64(z))
		all := row.total()
		if math.Abs(math.Log(w/math.Max(all.Low, 1e-9))) < math.Abs(math.Log(w/math.Max(row.each.Low, 1e-9))) {
			r.computed, r.sum = all, fmt.Sprintf("%s x %s W = %s W", span(row.count), span(row.each), span(all))
		}
	}
	x.measured(r)
}

// measured judges one reading.
func (x *Examination) measured(r *reading) {
	watts := Interval{}
	text := ""
	switch {
	case odd(r.watts, 0, math.MaxFloat32) || odd(r.ohms, 0, math.MaxFloat32):
		return // no reading of a meter
	case r.watts.Had():
		watts = quantity(r.watts)
		text = "measured " + span(watts) + " W"
	case r.ohms.Had() && r.ohms.Low > 0 && r.lineV > 0:
		watts = between(line.Watts(r.lineV, float64(r.ohms.High)), line.Watts(r.lineV, float64(r.ohms.Low)))
		text = fmt.Sprintf("measured %s ohm, %s x %s / %s ohm = %s W", span(quantity(r.ohms)), volts(r.lineV), volts(r.lineV), span(quantity(r.ohms)), span(watts))
	default:
		return
	}
	r.unit = "% of the computed load"
	r.settles = "whether the taps on site are those on paper"
	if !r.computed.bounded() || r.computed.High == 0 {
		r.measured, r.message = Interval{}, text
		x.open(&r.claim, "the computed load is not known; "+text)
		return
	}
	r.measured = apart(watts, r.computed)
	r.message = fmt.Sprintf("%s, against %s", text, r.sum)
	computed := r.computed
	r.show = func(float64) (Interval, float64, string) { return watts, computed.High, "W" }
	differs := x.orNothing(Caution, r.use)
	rating := x.orNothing(Fault, r.use)
	switch {
	case past(r.measured.Low, differs.Value) && r.rated.Known && past(watts.Low, r.rated.High*rating.Value/100):
		r.message += fmt.Sprintf("; the measured load is past the rating of %s W", span(r.rated))
		x.found(&r.claim, rating, Certain, "")
	case past(r.measured.Low, differs.Value):
		x.found(&r.claim, differs, Certain, "")
	case past(r.measured.High, differs.Value):
		x.found(&r.claim, differs, Possible, "")
	default:
		x.pass(&r.claim)
	}
}

// orNothing is the limit of a grade, or one that nothing is past.
func (x *Examination) orNothing(g Grade, use schedule.Use) *LimitInForce {
	if l := x.limit(g, use); l != nil {
		return l
	}
	return &LimitInForce{Grade: g, Value: math.Inf(1)}
}

// apart is how far two intervals are from each other, in percent of the second.
func apart(a, of Interval) Interval {
	off := func(v, base float64) float64 { return 100 * math.Abs(v-base) / base }
	if of.Low <= 0 {
		return between(0, math.Inf(1))
	}
	high := math.Max(math.Max(off(a.Low, of.Low), off(a.Low, of.High)), math.Max(off(a.High, of.Low), off(a.High, of.High)))
	switch {
	case a.High < of.Low:
		return between(off(a.High, of.Low), high)
	case a.Low > of.High:
		return between(off(a.Low, of.High), high)
	}
	return between(0, high)
}
