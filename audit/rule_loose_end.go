package audit

import (
	_ "embed"
	"fmt"

	"lineaudit/audit/schedule"
)

//go:embed doc/loose-end.md
var looseEndDoc string

// looseEnd finds parts of the network that lead nowhere, or back to themselves.
var looseEnd = &Rule{
	Name:  "loose-end",
	Title: "a part of the network leads nowhere, or back to itself",
	Why:   "What hangs on nothing is in no sum, and a closed ring has no one answer: the verdicts around it say less than they seem to.",
	Doc:   looseEndDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 0, Unit: "loose ends", Source: "common practice, no source"},
	},
	Silent: []string{
		"the schedule ties no loudspeaker to a channel at all: then it is one question",
		"most controls have nothing behind them: then the schedule does not say what hangs where, and it is a question",
		"a cable ends at a place that the rest of the schedule does not name: a question",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "follow the cable to what feeds it",
	OfJob:    true,
	Check:    checkLooseEnd,
}

func checkLooseEnd(x *Examination) error {
	c := x.circuit
	loose := func(cl *claim) {
		cl.measured, cl.unit = Exact(1), "loose ends"
		x.judge(cl)
	}
	for _, k := range c.rings {
		loose(&claim{key: controlKey(k) + "\x1fring", place: controlName(k), room: k.Room.Value, zone: zoneName(k.Zone), at: k.At,
			message: "following what feeds it leads back to it", cells: func() []Evidence { return []Evidence{{At: k.At, Written: k.Name, Role: "control"}} }})
	}
	for _, n := range x.networks {
		cl := &claim{key: n.key, place: n.place, zone: zoneName(n.line.Zone), at: n.line.At, emergency: n.line.Emergency, message: n.line.Incomplete,
			cells: func() []Evidence { return n.cells(c) }}
		if n.count.bounded() {
			cl.pieces = n.count.High
		}
		switch {
		case n.ring:
			loose(cl)
		case n.loose:
			x.ask([]gap{{n.line.At, "from", "Which channel or control feeds " + n.place + "?"}}, "how much level it loses")
		}
	}
	if c.graph != nil {
		for _, k := range c.graph.loose {
			x.ask([]gap{{k.At, "to", "What does " + cableName(k) + " feed, and from where?"}}, "how much level it loses")
		}
	}
	x.looseRows()
	x.idleControls()
	return nil
}

// looseRows finds loudspeakers that lead to no channel, in a job that ties
// others to one.
func (x *Examination) looseRows() {
	c := x.circuit
	tied, watts, pieces := 0, Exact(0), 0.0
	var rows []int
	for i := range c.rows {
		r := &c.rows[i]
		if r.part != counts || r.out == offLine {
			continue
		}
		if len(r.channels) > 0 {
			tied++
			continue
		}
		rows = append(rows, i)
		pieces += pieceCount(r)
		if r.out == notOut {
			watts = watts.plus(r.total())
		}
	}
	if len(rows) == 0 || len(x.Job.Channels) == 0 {
		if tied > 0 {
			x.pass(&claim{place: "loudspeakers", at: c.rows[0].l.At, measured: Exact(0), unit: "loose ends", message: "every loudspeaker leads to a channel"})
		}
		return
	}
	c.byPlace(rows)
	first := c.rows[rows[0]].l
	if tied == 0 {
		x.ask([]gap{{first.At, "channel", "Which loudspeakers hang on which channel?"}}, "the load of every channel")
		return
	}
	cl := &claim{key: "rows without a channel", place: rowName(first), room: first.Room.Value, zone: zoneName(first.Zone), at: first.At, pieces: pieces,
		measured: Exact(float64(len(rows))), unit: "loose ends",
		message: fmt.Sprintf("%s of %s W lead to no channel, and are in the sum of none", counted(pieces, "loudspeaker"), span(watts)),
		cells: func() []Evidence {
			var cells []Evidence
			for _, i := range rows {
				cells = append(cells, Evidence{At: c.rows[i].l.At, Written: c.rows[i].l.Tag.Written, Role: "no channel"})
			}
			return cells
		}}
	if len(rows) > 1 {
		cl.place = counted(float64(len(rows)), "row") + " without a channel"
	}
	x.judge(cl)
}

// idleControls finds controls that nothing hangs behind: a loose end where the
// schedule ties at least as many controls to loudspeakers as it leaves alone,
// else a question, since then it may not say at all what hangs behind which.
func (x *Examination) idleControls() {
	c := x.circuit
	used := 0
	var idle []int
	for i, k := range x.Job.Controls {
		switch {
		case len(c.controls[i].members) > 0:
			used++
		case !k.Remote.Yes && k.Status == schedule.Installed && !c.inRing(i):
			idle = append(idle, i)
		}
	}
	for n, i := range idle {
		k := x.Job.Controls[i]
		cl := &claim{key: controlKey(k), place: controlName(k), room: k.Room.Value, zone: zoneName(k.Zone), at: k.At, measured: Exact(1), unit: "loose ends",
			message: "no loudspeaker is listed behind it, while the others have theirs",
			cells:   func() []Evidence { return []Evidence{{At: k.At, Written: k.Name, Role: "control"}} }}
		if used >= len(idle) {
			x.judge(cl)
			continue
		}
		text := "Which loudspeakers hang behind control " + k.Name + "?"
		if used == 0 {
			text = "Which loudspeakers hang behind which control?"
		}
		if used > 0 || n == 0 {
			x.ask([]gap{{k.At, "control", text}}, "whether it is overloaded")
		}
	}
}
