package audit

import (
	_ "embed"
	"fmt"

	"lineaudit/audit/schedule"
)

//go:embed doc/both-outputs-loaded.md
var bothOutputsLoadedDoc string

// bothOutputsLoaded finds outputs of one amplifier that exclude each other and are both in use.
var bothOutputsLoaded = &Rule{
	Name:  "both-outputs-loaded",
	Title: "two outputs of an amplifier that exclude each other are both loaded",
	Why: "The low-impedance and the line output of one stage share its power, and a bridged channel uses its partner's output: " +
		"with both loaded the stage carries twice what it should, and a bridged pair may be shorted.",
	Doc: bothOutputsLoadedDoc,
	Limits: []Limit{
		{Name: "fault", Grade: Fault, Default: 0, Unit: "doubly used outputs", Source: "one output at a time: Bogen WV100 manual p. 8; bridging warnings: manualsdump.com 12720 p. 10"},
	},
	Silent: []string{
		"the low-impedance loudspeakers hang on a channel of their own",
		"the partner of the bridged channel carries nothing",
		"the two bridged channels name each other: they are one output, listed twice",
	},
	Cautions: []string{cautionHeat, cautionPaper},
	OnSite:   "look at the terminals of the amplifier: which outputs are wired?",
	Check:    checkBothOutputsLoaded,
}

func checkBothOutputsLoaded(x *Examination) error {
	c := x.circuit
	for i, a := range x.Job.Amplifiers {
		x.lowAndLine(i, a)
	}
	for i, ch := range x.Job.Channels {
		n := &c.channels[i]
		if len(ch.Bridged) == 0 || c.head[i] != i {
			continue
		}
		cl := &claim{key: channelKey(ch) + "\x1fbridged", place: channelName(ch), at: ch.At, pieces: n.pieces(), emergency: n.emergency,
			measured: Exact(0), unit: "doubly used outputs", message: "bridged, and its partner carries nothing"}
		cells := []Evidence{{At: ch.At, Written: ch.Name, Role: "bridged channel"}}
		for _, p := range ch.Bridged {
			at := indexOf(c.channelAt, p)
			if at < 0 || at == i || c.head[at] == i || c.channels[at].load.Count.High == 0 {
				continue
			}
			partner := &c.channels[at]
			cl.measured = Exact(1)
			cl.message = fmt.Sprintf("%s is bridged with %s, which carries a load of its own: %s", ch.Label(), p.Label(), partner.load.Sum)
			cells = append(cells, Evidence{At: p.At, Written: p.Name, Role: "partner"})
			cells = append(cells, c.cells(partner)...)
		}
		cl.cells = func() []Evidence { return cells }
		x.judge(cl)
	}
	return nil
}

// lowAndLine checks the low-impedance and the line outputs of one frame.
func (x *Examination) lowAndLine(i int, a *schedule.Amplifier) {
	c := x.circuit
	if len(a.LowImpedance) == 0 {
		return
	}
	var low []Evidence
	for _, l := range a.LowImpedance {
		at := c.positionOf(l)
		if at < 0 || c.rows[at].part != counts || len(c.rows[at].channels) > 0 {
			continue // it has a channel of its own
		}
		low = c.rows[at].evidence(low)
	}
	n := &c.amplifiers[i]
	if len(low) == 0 {
		return
	}
	cl := &claim{key: amplifierKey(a), place: amplifierName(a), at: a.At, pieces: n.pieces(), emergency: n.emergency, measured: Exact(0),
		unit: "doubly used outputs", message: "only its low-impedance output is loaded", equipment: modelEquipment("amplifier model", a.Model)}
	if n.load.Watts.High > 0 {
		cl.measured = Exact(1)
		cl.message = fmt.Sprintf("its low-impedance output is loaded (%s), and so is its line output: %s", counted(float64(len(a.LowImpedance)), "row"), n.load.Sum)
		cl.at = low[0].At
	}
	cl.cells = func() []Evidence { return append(low, c.cells(n)...) }
	x.judge(cl)
}
