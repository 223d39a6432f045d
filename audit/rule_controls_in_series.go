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
	alone := 0
	for i := range x.Job.Controls {
		if c.controls[i].load.Count.High == 0 || c.inRing(i) {
			continue
		}
		path := c.above(i)
		switch {
		case len(path) == 0 || path[0] != i:
		case len(path) == 1:
			alone++
		default:
			x.controlPath(i, path)
		}
	}
	x.passAll(alone, "control", "the only one on its path")
	return nil
}

// controlPath judges the controls on the path of one, itself the first.
func (x *Examination) controlPath(i int, path []int) {
	c, k := x.circuit, x.Job.Controls[i]
	n := &c.controls[i]
	var names []string
	at := []Evidence{{At: k.At, Written: k.Name, Role: "control"}}
	for _, p := range path[1:] {
		u := x.Job.Controls[p]
		names = append(names, fmt.Sprintf("%s (%s W of %s W)", u.Name, span(c.controls[p].load.Watts), span(c.controls[p].rating.watts)))
		at = append(at, Evidence{At: u.At, Written: u.Name, Role: "control upstream"})
	}
	cl := &claim{key: controlKey(k), place: controlName(k), room: k.Room.Value, zone: zoneName(k.Zone), at: k.At, pieces: n.pieces(), emergency: n.emergency,
		measured: Exact(float64(len(path))), unit: "controls on one path", equipment: []equipment{{"habit", "controls in series"}},
		message: fmt.Sprintf("%s hangs behind %s, which carries its load as well", k.Name, listed(names)),
		cells:   func() []Evidence { return at }}
	x.judge(cl)
}
