package audit

import (
	_ "embed"
	"fmt"

	"lineaudit/audit/schedule"
)

//go:embed doc/conductor-too-small.md
var conductorTooSmallDoc string

// conductorTooSmall finds cables thinner than the schedule itself asks for.
var conductorTooSmall = &Rule{
	Name:  "conductor-too-small",
	Title: "a cable is thinner than the schedule asks for",
	Why:   "What was specified was chosen for loss, strength or code; the thinner cable loses more and may have to be pulled again.",
	Doc:   conductorTooSmallDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 102, Unit: "% of the conductor", Source: "what the schedule asks for; the 2 % are the rounding of gauges to mm2, common practice, no source"},
	},
	Silent: []string{
		"the schedule does not say what size it asks for",
		"the conductor is as thick as asked, within the rounding of gauges",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "read the gauge from the cable's jacket at both ends",
	Check:    checkConductorTooSmall,
}

func checkConductorTooSmall(x *Examination) error {
	c := x.circuit
	for _, k := range x.Job.Cables {
		if k.Status != schedule.Installed || !k.Needed.Had() || odd(k.Needed, c.limits.thin, c.limits.thick) {
			continue
		}
		d := c.conduit(k)
		is, want := d.areaOf(), quantity(k.Needed)
		if k.Parallel > 1 {
			is = is.scaled(float64(k.Parallel))
		}
		if !is.Known {
			continue
		}
		cl := &claim{key: cableKey(k), place: cableName(k), zone: zoneName(k.Zone), at: placeOf(k.Area.Source, placeOf(k.Gauge.Source, k.At)), pieces: x.piecesOn(k),
			measured: want.over(is).scaled(100), unit: "% of the conductor", message: fmt.Sprintf("%s, %s mm2 asked for", d.wireName(), span(want)),
			equipment: []equipment{{"cable type", d.wireName()}},
			show:      func(float64) (Interval, float64, string) { return is, want.Low, "mm2" },
			cells: func() []Evidence {
				cells := appendCell(appendCell(nil, k.Area.Source, "conductor"), k.Gauge.Source, "conductor")
				return appendCell(cells, k.Needed.Source, "needed")
			}}
		x.judge(cl)
	}
	return nil
}

// piecesOn is the number of loudspeakers on the line of a cable.
func (x *Examination) piecesOn(k *schedule.Cable) float64 {
	for _, n := range x.networks {
		for _, o := range n.line.Cables {
			if o == k && n.count.bounded() {
				return n.count.High
			}
		}
	}
	return 0
}
