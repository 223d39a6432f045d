package audit

import (
	_ "embed"
	"fmt"
	"math"
	"slices"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

//go:embed doc/line-loss.md
var lineLossDoc string

// lineLoss finds lines whose worst loudspeaker loses too much level in the cable.
var lineLoss = &Rule{
	Name:  "line-loss",
	Title: "a cable run loses too much level on the way to its worst loudspeaker",
	Why:   "The last loudspeakers are quieter than the first; on an emergency line a message may not be understood there.",
	Doc:   lineLossDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 1, Unit: "dB", Source: "high-impedance tables are drawn for 1 dB: doctorproaudio.com, Maximum speaker cable lengths"},
		{Name: "fault", Grade: Fault, Default: 3, Unit: "dB", Source: "the loosest column of a maker's guide: Belden, Speaker Cable Selection Guide, p. 19.31",
			Note: "the guide counts power burnt in the cable; here it is the level drop at the loudspeaker"},
		{Name: "caution", Grade: Caution, Use: schedule.Emergency, Default: 0.5, Unit: "dB", Source: "GE Security EST3 Installation and Service Manual, p. B.17"},
		{Name: "fault", Grade: Fault, Use: schedule.Emergency, Default: 2, Unit: "dB", Source: "Bosch PRAESENSA Installation manual (German) 2019.11, 4.5.2, p. 23"},
		{Name: "danger", Grade: Danger, Use: schedule.Emergency, Default: 3, Unit: "dB", Source: "common practice, no source"},
		{Name: "temperature", Default: 20, Unit: "degC", Source: "the reference temperature of conductor tables (IEC 60228)", Note: "of the conductors, where the schedule states none"},
		{Name: "class", Default: 0, Unit: "IEC 60228 class", Source: "common practice, no source", Note: "0 takes the resistivity over the nominal area; 1, 2, 5 and 6 the largest resistance the standard allows"},
	},
	Silent: []string{
		"the loss is exactly at the limit",
		"one length only, and one of its two readings keeps the limit: then the finding is possible, not certain",
		"the cable's size is missing and even a thin usual wire would keep the limit: then it is not asked for",
		"the cables form a closed ring: that is loose-end",
	},
	Cautions: []string{cautionVolts, cautionEmergency, cautionPaper},
	OnSite:   "measure the volts at the amplifier and at the last loudspeaker with the same tone, and the run's length and gauge",
	Tool:     "voltmeter and a test tone",
	Check:    checkLineLoss,
}

func checkLineLoss(x *Examination) error {
	for _, n := range x.networks {
		n.line.Verdict = x.lineLossOf(n)
	}
	if len(x.networks) == 0 {
		x.askCables()
	}
	return nil
}

func (x *Examination) lineLossOf(n *network) Verdict {
	if n.ring || n.loose {
		return Verdict{}
	}
	cl := x.lineClaim(n)
	if n.judged.Known && math.IsInf(n.judged.High, 1) && !math.IsInf(n.presume, 1) {
		probe := *cl
		probe.measured = between(n.judged.Low, n.presume)
		if _, possible := x.weigh(&probe); possible == nil {
			cl.gaps = nil // the missing size cannot change the verdict
		}
	}
	return x.judge(cl)
}

func (x *Examination) lineClaim(n *network) *claim {
	cl := &claim{key: n.key, place: n.place, room: n.room, zone: zoneName(n.line.Zone), at: n.line.At, use: n.use, emergency: n.line.Emergency,
		measured: n.judged, unit: "dB", message: n.message(), settles: "how much level " + n.place + " loses"}
	if n.count.Known && !math.IsInf(n.count.High, 1) {
		cl.pieces = n.count.High
	}
	if n.line.LineV.Known {
		cl.ohms = expectedOhm(n.line.LineV.Low, n.line.LoadW)
	}
	seen := map[string]bool{}
	for _, k := range n.line.Cables {
		d := x.circuit.conduit(k)
		if name := d.wireName(); !seen[name] && d.perMetre.Known {
			seen[name] = true
			cl.equipment = append(cl.equipment, equipment{"cable type", name})
		}
	}
	cl.gaps = func() []gap { return n.missing }
	cl.cells = func() []Evidence { return n.cells(x.circuit) }
	return cl
}

// cells lists the cells of a line's cables and loads.
func (n *network) cells(c *circuit) []Evidence {
	var cells []Evidence
	for _, k := range n.line.Cables {
		cells = appendCell(cells, k.Length.Source, "length")
		switch {
		case k.Area.Had() && k.Area.At.Row > 0:
			cells = appendCell(cells, k.Area.Source, "conductor")
		case k.AWG.Had():
			cells = appendCell(cells, k.AWG.Source, "conductor")
		}
		cells = appendCell(cells, k.Material.Source, "material")
	}
	cells = append(cells, c.cells(&node{members: n.members})...)
	slices.SortStableFunc(cells, func(a, b Evidence) int { return a.At.Compare(b.At) })
	return compactCells(cells)
}

// message is the loss with its arithmetic.
func (n *network) message() string {
	l := &n.line
	if !n.judged.Known {
		return cmpOr(l.Incomplete, "not enough is known")
	}
	what := fmt.Sprintf("%s m of %s", metres(l.LengthM), n.wire())
	if l.LoopOhm.Known {
		what += fmt.Sprintf(" (loop %s ohm)", span(l.LoopOhm))
	}
	what += fmt.Sprintf(", %s W at %s", span(l.LoadW), volts(l.LineV.Low))
	if l.FarDB.Known {
		sum := n.one.farSum(l)
		if same(l.FarDB.High, l.EvenDB.High) {
			return fmt.Sprintf("%s: %s%s at the far end", what, sum, decibelSpan(l.FarDB))
		}
		return fmt.Sprintf("%s: %s%s with all load at the far end, %s evenly spaced", what, sum, decibelSpan(l.FarDB), decibelSpan(l.EvenDB))
	}
	text := fmt.Sprintf("%s: %s at the worst loudspeaker", what, decibelSpan(n.judged))
	if n.worst != "" {
		text += " (" + n.worst + ")"
	}
	if l.Incomplete != "" {
		text += "; " + l.Incomplete
	}
	return text
}

// farSum writes the loss with all load at the far end so that it can be redone
// on a calculator, "20 log(1 + 15.3/31.3) = "; "" where bounds or a
// control in the line make it more than that.
func (o *oneLength) farSum(l *Line) string {
	if o == nil || o.ratioDB != 0 || !l.LoopOhm.exact() || !o.watts.exact() || o.watts.Low <= 0 || !same(o.watts.Low, l.LoadW.Low) {
		return ""
	}
	return fmt.Sprintf("20 log(1 + %s/%s) = ", figure(l.LoopOhm.Low), figure(line.Impedance(l.LineV.Low, o.watts.Low)))
}

func (n *network) wire() string {
	if n.one != nil {
		return n.one.conduit.wireName()
	}
	if !n.line.AreaMM2.Known {
		return "cable of unknown size"
	}
	text := span(n.line.AreaMM2) + " mm2 " + n.line.Material
	if n.tree != nil {
		text = counted(float64(len(n.tree.nodes)), "segment") + ", thinnest " + text
	}
	return text
}

// askCables asks, once a job, for the cables of a schedule that lists none.
func (x *Examination) askCables() {
	for i := range x.circuit.channels {
		if x.circuit.channels[i].load.Watts.High > 0 {
			ch := x.Job.Channels[i]
			x.result.Unshown = append(x.result.Unshown, Unshown{Rule: x.rule, Place: "the job", At: ch.At, Why: "no cable lengths are listed"})
			return
		}
	}
}
