package audit

import (
	_ "embed"
	"fmt"
	"slices"

	"lineaudit/audit/schedule"
)

//go:embed doc/cannot-check.md
var cannotCheckDoc string

// cannotCheck finds jobs whose schedule says too little to be audited, and asks
// about rows that were left out although they would change a verdict.
var cannotCheck = &Rule{
	Name:  "cannot-check",
	Title: "the schedule says too little to be checked",
	Why:   "A job without findings is only as good as the number of checks behind it: what nobody can show is no pass, and the risk moves to whoever signs.",
	Doc:   cannotCheckDoc,
	Limits: []Limit{
		{Name: "least decided", Default: 1, Unit: "checks of loads", Source: "common practice, no source",
			Note: "a job in which fewer checks of loads against ratings could be decided is shown as one that cannot be judged from its papers"},
	},
	Silent: []string{
		"the missing cell cannot change a verdict: a group is within its limits at its highest tap",
		"some checks could be decided: then each open one is a question, apart from the findings",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "read the ratings from the labels, and measure the impedance of each line at 1 kHz",
	Tool:     "impedance meter",
	OfJob:    true,
	Check:    checkCannotCheck,
}

func checkCannotCheck(x *Examination) error {
	x.askLeftOut()
	x.askCableClass()
	decided, open := 0, 0
	var first schedule.Ref
	for _, nodes := range [][]node{x.circuit.channels, x.circuit.controls} {
		for i := range nodes {
			// A sum that only lacks rows of another finding is no lack of papers.
			if n := &nodes[i]; n.verdict.Checked || n.lowRows+n.oddRows > 0 {
				decided++
			}
		}
	}
	for _, u := range x.result.Unshown {
		if u.Rule.Name == "control-overload" || u.Rule.Name == "channel-overload" {
			open++
			if first.IsZero() {
				first = u.At
			}
		}
	}
	least := x.setting("least decided")
	pieces := 0.0
	for i := range x.circuit.rows {
		if r := &x.circuit.rows[i]; r.part == counts {
			pieces += pieceCount(r)
			if first.IsZero() {
				first = r.l.At
			}
		}
	}
	if float64(decided) >= least || pieces == 0 {
		return nil
	}
	why := "no rating of a channel or control to hold the loads against"
	if open > 0 {
		why = fmt.Sprintf("none of %s could be decided", counted(float64(open), "load"))
		if open > 1 {
			why = fmt.Sprintf("none of %d loads could be decided", open)
		}
	}
	if len(x.Job.Channels)+len(x.Job.Controls) == 0 {
		x.ask([]gap{{first, "channel rating", "Which amplifier channels and controls do these loudspeakers hang on, and what are they rated?"}}, "whether anything is overloaded")
	}
	cl := &claim{key: "job", place: "the job", at: first, pieces: pieces, emergency: x.circuit.emergency, unit: "checks of loads",
		message: why, measured: Exact(float64(decided))}
	x.found(cl, &LimitInForce{Grade: Unknown, Value: least, Unit: "checks of loads"}, CannotBeShown, "")
	return nil
}

// askCableClass asks, once for a system of emergency use that lists cables,
// about wiring class and fire jackets. They are never failed: the class marked
// on the amplifier and the code in force decide (NEC 640.9(C) as read in ECMag,
// Good Vibrations part 2; BS 5839-1 as read in a guide on cabling).
func (x *Examination) askCableClass() {
	emergency := false
	for i := range x.circuit.rows {
		emergency = emergency || x.circuit.rows[i].part == counts && x.circuit.rows[i].emergency
	}
	for _, k := range x.Job.Cables {
		if emergency && k.Status == schedule.Installed {
			x.ask([]gap{{k.At, "wiring class", "Which wiring class is marked on the amplifiers, and which routes ask for plenum-rated or fire-resisting cable?"}},
				"whether the cables suit their class and routes; nothing is failed for it here")
			return
		}
	}
}

// askLeftOut asks about rows that were left out, where counting them would
// change a verdict: both loads are shown.
func (x *Examination) askLeftOut() {
	for _, left := range doubtful(x.Job.LeftOut) {
		x.askLeft(left)
	}
}

// doubtful are the rows that might count, each alone; those of a sheet that is no longer
// valid count all or none.
func doubtful(rows []schedule.LeftOut) []schedule.LeftOut {
	var out []schedule.LeftOut
	for _, left := range rows {
		if len(left.Would) == 0 {
			continue
		}
		if n := len(out); n > 0 && left.Kind == schedule.OutdatedRow && out[n-1].Kind == left.Kind && out[n-1].At.Sheet() == left.At.Sheet() {
			out[n-1].Would = slices.Concat(out[n-1].Would, left.Would)
			continue
		}
		out = append(out, left)
	}
	return out
}

// askLeft asks about what was left out where counting it would change a verdict.
func (x *Examination) askLeft(left schedule.LeftOut) {
	c := x.circuit
	extra := map[*node]Interval{}
	var order []*node
	names := map[*node]string{}
	note := func(n *node, name string, w Interval) {
		if _, ok := extra[n]; !ok {
			order = append(order, n)
			extra[n] = Exact(0)
		}
		names[n] = name
		extra[n] = extra[n].plus(w)
	}
	for _, l := range left.Would {
		if slices.Contains(x.Job.Loudspeakers, l) {
			continue
		}
		r := &row{l: l}
		c.hang(r)
		r.work(c)
		if r.out != notOut {
			continue
		}
		for _, k := range c.above(r.control) {
			note(&c.controls[k], controlName(x.Job.Controls[k]), r.total())
		}
		for _, k := range r.channels {
			note(&c.channels[k], channelName(x.Job.Channels[k]), r.total())
		}
	}
	asked := "Is this row"
	if left.Kind == schedule.OutdatedRow {
		asked = "Are the loudspeakers listed here"
	}
	for _, n := range order {
		with := n.load.Watts.plus(extra[n])
		if x.sameGrade(n, with) {
			continue
		}
		x.ask([]gap{{left.At, "row", fmt.Sprintf("%s (%s) installed? With it %s carries %s W, without it %s W, of %s W.",
			asked, left.Reason, names[n], span(with), span(n.load.Watts), span(n.rating.watts))}}, "whether "+names[n]+" is overloaded")
	}
}

// sameGrade reports whether a node comes out alike with another load.
func (x *Examination) sameGrade(n *node, load Interval) bool {
	rule := "channel-overload"
	grade := func(w Interval) (g [2]Grade) {
		share := w.over(n.rating.watts).scaled(100)
		if !share.Known {
			return g
		}
		for k := Caution; k <= Danger; k++ {
			if l := x.circuit.set.limits[rule].grade[schedule.AnyUse][k]; l != nil {
				if past(share.Low, l.Value) {
					g[0] = k
				}
				if past(share.High, l.Value) {
					g[1] = k
				}
			}
		}
		return g
	}
	return grade(load) == grade(n.load.Watts)
}
