package audit

import (
	_ "embed"
	"fmt"
	"math"
	"strings"

	"lineaudit/audit/schedule"
)

//go:embed doc/control-voltage-mismatch.md
var controlVoltageMismatchDoc string

// controlVoltageMismatch finds controls rated for another line voltage than theirs.
var controlVoltageMismatch = &Rule{
	Name:  "control-voltage-mismatch",
	Title: "a control is rated for another line voltage than that of its line",
	Why: "On a higher line voltage its core saturates and it runs hot; on a lower one the same watts mean more current, " +
		"so that it may carry less than its rating says.",
	Doc: controlVoltageMismatchDoc,
	Limits: []Limit{
		{Name: "fault", Grade: Fault, Default: 100, Unit: "% of rating", Source: "derived from P = V x I; no printed rule found",
			Note: "of its rated voltage on a higher line, of its rated watts x V/Vr on a lower one"},
	},
	Silent: []string{
		"the control is rated for both voltages, or for none in particular",
		"the line is lower and the load keeps rating x V/Vr",
		"the load is past the rating at any voltage: control-overload speaks",
	},
	Cautions: []string{cautionHeat, cautionVolts, cautionPaper},
	OnSite:   "read the voltages and the rating from the control's label",
	Check:    checkControlVoltageMismatch,
}

func checkControlVoltageMismatch(x *Examination) error {
	c := x.circuit
	for i, k := range x.Job.Controls {
		n := &c.controls[i]
		if k.Remote.Yes || k.Status != schedule.Installed || n.lineV <= 0 || len(n.rating.volts) == 0 {
			continue
		}
		cl := x.controlClaim(i)
		cl.settles = "whether " + controlName(k) + " suits its line"
		rated := voltsList(n.rating.volts)
		cells := cl.cells
		cl.cells = func() []Evidence {
			out := cells()
			for _, v := range k.RatedVolts {
				out = appendCell(out, v.Source, "rated voltage")
			}
			return appendCell(out, x.Job.LineVoltsOf(c.channelOfControl(k)).Source, "line voltage")
		}
		switch n.rating.fit {
		case fits:
			cl.measured = Exact(100)
			cl.message = fmt.Sprintf("rated for %s on a %s line", rated, volts(n.lineV))
			cl.show = nil
		case exceeded:
			highest := 0.0
			for _, v := range n.rating.volts {
				highest = math.Max(highest, v)
			}
			lineV := n.lineV
			cl.measured = Exact(100 * lineV / highest)
			cl.message = fmt.Sprintf("rated for %s on a %s line", rated, volts(lineV))
			cl.show = func(float64) (Interval, float64, string) {
				return Exact(math.Round(lineV*10) / 10), math.Round(highest*10) / 10, "V"
			}
		case derated:
			if certain, _ := x.weighAs("control-overload", cl.use, n.load.Watts.over(n.rating.nominal).scaled(100)); certain != nil {
				continue
			}
			if n.load.Watts.High == 0 {
				continue
			}
		}
		v := x.judge(cl)
		if v.Checked && !v.Passed && (!n.verdict.Checked || v.Grade > n.verdict.Grade || n.verdict.Passed) {
			n.verdict = v
		}
	}
	return nil
}

// weighAs weighs a figure against the limits of another rule.
func (x *Examination) weighAs(rule string, use schedule.Use, m Interval) (certain, possible *LimitInForce) {
	if !m.Known {
		return nil, nil
	}
	for g := Caution; g <= Danger; g++ {
		l := x.circuit.set.limits[rule].grade[use][g]
		if l == nil {
			continue
		}
		if past(m.Low, l.Value) {
			certain = l
		}
		if past(m.High, l.Value) {
			possible = l
		}
	}
	return certain, possible
}

func voltsList(list []float64) string {
	var out []string
	for _, v := range list {
		out = append(out, strings.TrimSuffix(volts(v), " V"))
	}
	return listed(out) + " V"
}
