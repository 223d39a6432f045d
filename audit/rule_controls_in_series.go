package audit

import (
	_ "embed"
	"fmt"
)

//go:embed doc/controls-in-series.md
var controlsInSeriesDoc string

// controlsInSeries finds controls that hang behind another control.
var controlsInSeries = &Rule{
	Name:  "controls-in-series",
	Title: "a control hangs behind another control",
	Why: "The upper control carries everything behind the lower one as well, the level is turned down twice, " +
		"and an override of one does not lift the other.",
	Doc: controlsInSeriesDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 1, Unit: "controls on one path", Source: "common practice, no source"},
	},
	Silent: []string{
		"one of the two is a remote control that carries no loudspeaker power",
		"one of the two is not installed",
		"nothing hangs behind the lower control",
		"the two feed each other: that is loose-end",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "follow the wires: is the lower device a control, or a switch or selector?",
	Check:    checkControlsInSeries,
}

func checkControlsInSeries(x *Examination) error {
	c := x.circuit
	for i, k := range x.Job.Controls {
		n := &c.controls[i]
		if n.load.Count.High == 0 || c.inRing(i) {
			continue
		}
		path := c.above(i)
		if len(path) == 0 || path[0] != i {
			continue
		}
		var names []string
		at := []Evidence{{At: k.At, Written: k.Name, Role: "control"}}
		for _, p := range path[1:] {
			u := x.Job.Controls[p]
			names = append(names, fmt.Sprintf("%s (%s W of %s W)", u.Name, span(c.controls[p].load.Watts), span(c.controls[p].rating.watts)))
			at = append(at, Evidence{At: u.At, Written: u.Name, Role: "control upstream"})
		}
		cl := &claim{key: controlKey(k), place: controlName(k), room: k.Room.Value, zone: zoneName(k.Zone), at: k.At, pieces: n.pieces(), emergency: n.emergency,
			measured: Exact(float64(len(path))), unit: "controls on one path", message: "the only control on its path", equipment: []equipment{{"habit", "controls in series"}},
			cells: func() []Evidence { return at }}
		if len(names) > 0 {
			cl.message = fmt.Sprintf("%s hangs behind %s, which carries its load as well", k.Name, listed(names))
		}
		x.judge(cl)
	}
	return nil
}
