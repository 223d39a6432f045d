package audit

import (
	_ "embed"
	"fmt"
	"math"

	"lineaudit/audit/schedule"
)

//go:embed doc/count-mismatch.md
var countMismatchDoc string

// countMismatch finds stated numbers of loudspeakers that the rows do not bear out.
var countMismatch = &Rule{
	Name:  "count-mismatch",
	Title: "a stated number of loudspeakers is not the number listed",
	Why:   "Loudspeakers are missing from the list, or listed and not there: change orders, silent rooms and wrong loads follow.",
	Doc:   countMismatchDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 0, Unit: "loudspeakers apart", Source: "plain arithmetic"},
	},
	Silent: []string{
		"the stated number matches the rows with their spare and future ones",
		"a quantity among the rows is not known",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "count the loudspeakers",
	Check:    checkCountMismatch,
}

func checkCountMismatch(x *Examination) error {
	c := x.circuit
	for i, z := range x.Job.Zones {
		n := &c.zones[i]
		if z.Count.Had() && len(n.members) > 0 {
			x.countOf(z.Count, n.members, &claim{key: zoneKey(z), place: "zone " + z.Name, zone: z.Name, at: placeOf(z.Count.Source, z.At),
				pieces: n.pieces(), emergency: n.emergency})
		}
	}
	for _, t := range x.Job.Totals {
		if !t.Count.Had() {
			continue
		}
		var members []member
		for _, l := range t.Rows {
			if i := c.positionOf(l); i >= 0 {
				members = append(members, member{i, whole})
			}
		}
		if len(members) > 0 {
			of, zone := c.summed(&t, &node{members: members})
			x.countOf(t.Count, members, &claim{key: "total\x1f" + folded(of), place: "total of " + of, zone: zone, at: placeOf(t.Count.Source, t.At)})
		}
	}
	for i := range c.rows {
		r := &c.rows[i]
		l := r.l
		n, ok := l.Count.Exact()
		if r.part != counts || !ok || len(l.Tags) < 2 || l.Count.How == schedule.Computed {
			continue
		}
		cl := &claim{key: rowKey(l) + "\x1fcount", place: rowName(l), room: l.Room.Value, zone: zoneName(l.Zone), at: placeOf(l.Count.Source, l.At), pieces: float64(n),
			emergency: r.emergency, measured: Exact(math.Abs(float64(n) - float64(len(l.Tags)))), unit: "loudspeakers apart",
			message: fmt.Sprintf("quantity %s, but %d tags: %s", figure(float64(n)), len(l.Tags), l.Tag.Value),
			cells: func() []Evidence {
				return appendCell(appendCell(nil, l.Count.Source, "quantity"), l.Tag.Source, "tags")
			}}
		tags := float64(len(l.Tags))
		cl.show = func(float64) (Interval, float64, string) { return Exact(float64(n)), tags, "loudspeakers" }
		x.judge(cl)
	}
	return nil
}

// countOf compares a stated number with the installed rows, and with the spare
// and future ones added.
func (x *Examination) countOf(stated schedule.Quantity[schedule.Pieces], members []member, cl *claim) {
	want, ok := stated.Exact()
	if !ok || stated.How == schedule.Computed {
		return
	}
	installed, planned := Exact(0), Exact(0)
	for _, m := range members {
		r := &x.circuit.rows[m.row]
		if r.part == notCounted {
			continue
		}
		planned = planned.plus(r.count)
		if r.part == counts {
			installed = installed.plus(r.count)
		}
	}
	if !installed.exact() || !planned.exact() {
		return
	}
	off := math.Min(math.Abs(float64(want)-installed.Low), math.Abs(float64(want)-planned.Low))
	cl.measured, cl.unit = Exact(off), "loudspeakers apart"
	cl.message = fmt.Sprintf("stated %s, listed %s", counted(float64(want), "loudspeaker"), figure(installed.Low))
	if planned.Low != installed.Low {
		cl.message += fmt.Sprintf(" and %s spare or future", figure(planned.Low-installed.Low))
	}
	cl.show = func(float64) (Interval, float64, string) { return Exact(float64(want)), installed.Low, "loudspeakers" }
	cl.cells = func() []Evidence {
		cells := appendCell(nil, stated.Source, "stated number")
		for _, m := range members {
			cells = appendCell(cells, x.circuit.rows[m.row].l.Count.Source, "count")
		}
		return cells
	}
	x.judge(cl)
}
