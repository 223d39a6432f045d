package audit

import (
	_ "embed"
	"fmt"
	"strings"

	"lineaudit/audit/schedule"
)

//go:embed doc/box-too-shallow.md
var boxTooShallowDoc string

// boxTooShallow finds controls in back boxes smaller than they ask for.
var boxTooShallow = &Rule{
	Name:  "box-too-shallow",
	Title: "a control sits in a back box smaller than it asks for",
	Why:   "A cramped control cannot shed its heat, and its wires are strained; to an insurer it is a fire risk.",
	Doc:   boxTooShallowDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 100, Unit: "% of the box", Source: "what the schedule or the house book asks for; a 35 W control needs a double gang: Bogen AT10A and AT35A manual 54-2126-01A (2005)"},
	},
	Silent: []string{
		"neither the schedule nor the house book says what the control needs",
		"the schedule lists no box",
		"the box is exactly as deep as needed",
	},
	Cautions: []string{cautionHeat, cautionPaper},
	OnSite:   "measure the box and read the depth from the control's sheet",
	Tool:     "tape measure",
	Check:    checkBoxTooShallow,
}

func checkBoxTooShallow(x *Examination) error {
	for i, k := range x.Job.Controls {
		if k.Status != schedule.Installed {
			continue
		}
		needed := k.Box.Needed
		if m := x.circuit.set.model(k.Model, "control"); m != nil && !needed.Had() {
			needed = m.row.BoxDepth
		}
		boxed(x, i, "depth", k.Box.Depth, needed, "mm", "deep")
		boxed(x, i, "gangs", k.Box.Gangs, k.Box.NeededGangs, "gangs", "wide")
	}
	return nil
}

func boxed[T ~float64](x *Examination, i int, what string, is, needed schedule.Quantity[T], unit, way string) {
	k := x.Job.Controls[i]
	n := &x.circuit.controls[i]
	const most = 10_000 // mm, far past any back box
	if !is.Had() || !needed.Had() || odd(is, 0, most) || odd(needed, 0, most) {
		return
	}
	there, want := quantity(is), quantity(needed)
	say := func(i Interval) string {
		if i == Exact(1) {
			return "1 " + strings.TrimSuffix(unit, "s") + " " + way
		}
		return span(i) + " " + unit + " " + way
	}
	cl := &claim{key: controlKey(k) + "\x1f" + what, place: controlName(k), room: k.Room.Value, zone: zoneName(k.Zone), at: placeOf(is.Source, k.At),
		pieces: n.pieces(), emergency: n.emergency, measured: want.over(there).scaled(100), unit: "% of the box",
		message:   fmt.Sprintf("the box is %s, the control needs %s", say(there), say(want)),
		equipment: modelEquipment("control model", k.Model),
		show:      func(float64) (Interval, float64, string) { return there, want.Low, unit },
		cells: func() []Evidence {
			return appendCell(appendCell(nil, is.Source, "box"), needed.Source, "needed")
		}}
	x.judge(cl)
}
