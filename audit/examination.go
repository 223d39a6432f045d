package audit

import (
	"fmt"
	"math"
	"slices"

	"lineaudit/audit/schedule"
)

// An Examination is one rule at work on one job. A check reads the job's
// circuit through it and speaks only through it.
type Examination struct {
	Job *schedule.Job

	circuit  *circuit
	networks []*network
	rule     *Rule
	result   *Result
	asked    map[question]int // position in result.Questions, plus one
	taken    map[schedule.Ref][]schedule.Assumption
	stop     func() error // nil never stops
	steps    int          // since the beginning; see step
}

// A question is what makes two questions one.
type question struct {
	at          schedule.Ref
	field, text string
}

// A gap is one thing that the schedule leaves open.
type gap struct {
	at          schedule.Ref
	field, text string
}

// A claim is one thing at one place, measured and ready to be judged.
type claim struct {
	key        string // identifies the place within the job; no row numbers
	place      string // the place as a person would say it
	room, zone string
	at         schedule.Ref
	use        schedule.Use
	emergency  bool
	pieces     float64 // loudspeakers that hang on it
	measured   Interval
	unit       string
	ohms       Interval // what a meter should show
	message    string
	cells      func() []Evidence
	gaps       func() []gap
	settles    string // what an answer decides
	equipment  []equipment
	// show, when not nil, is the figure, the limit and the unit as a reader
	// meets them, where those are not the ones judged.
	show func(limit float64) (measured Interval, shownLimit float64, unit string)
	// own replaces limits of the rule for this place, such as a headroom that
	// the job's own brief asks for.
	own *LimitInForce
}

// An equipment is a type of thing or a habit that a finding can be laid to.
type equipment struct{ kind, name string }

// judge holds a claim against the graded limits of the rule for its use, and
// records what comes of it: a finding, a pass, or that it cannot be shown.
//
// The highest grade whose limit the whole interval is past is certain. Where
// the interval only straddles limits the highest of them is possible; without
// an upper bound nothing is shown, and the gaps become questions.
func (x *Examination) judge(c *claim) Verdict {
	x.step()
	certain, possible := x.weigh(c)
	switch {
	case !c.measured.Known, math.IsNaN(c.measured.Low), math.IsNaN(c.measured.High):
		return x.open(c, "the figure is not known")
	case certain != nil && (possible == nil || possible == certain):
		return x.found(c, certain, Certain, "")
	case certain != nil:
		return x.found(c, certain, Certain, x.higher(c, possible))
	case possible == nil:
		x.pass(c)
		return Verdict{Checked: true, Passed: true}
	case math.IsInf(c.measured.High, 1):
		return x.open(c, "no upper bound is known")
	}
	return x.found(c, possible, Possible, "")
}

// weigh returns the highest limit that the whole interval is past, and the
// highest that its upper end is past.
func (x *Examination) weigh(c *claim) (certain, possible *LimitInForce) {
	if !c.measured.Known {
		return nil, nil
	}
	for g := Caution; g <= Danger; g++ {
		l := x.limit(g, c.use)
		if c.own != nil && c.own.Grade == g {
			l = c.own
		}
		if l == nil {
			continue
		}
		if past(c.measured.Low, l.Value) {
			certain = l
		}
		if past(c.measured.High, l.Value) {
			possible = l
		}
	}
	return certain, possible
}

// limit is the limit of the rule that passing grades, nil when there is none.
func (x *Examination) limit(g Grade, use schedule.Use) *LimitInForce {
	return x.circuit.set.limits[x.rule.Name].grade[use][g]
}

// setting is a named setting of the rule, 0 when it is switched off.
func (x *Examination) setting(name string) float64 {
	l, _ := x.circuit.set.value(x.rule.Name, name, schedule.AnyUse)
	return l.Value
}

// higher names a grade that is possible above the certain one.
func (x *Examination) higher(c *claim, l *LimitInForce) string {
	what := "it may be as much as " + x.figure(c.measured.High, c.unit)
	if math.IsInf(c.measured.High, 1) {
		what = "no upper bound is known"
	}
	return fmt.Sprintf("possibly %s (above %s): %s", l.Grade, withUnit(l.Value, l.Unit), what)
}

func (x *Examination) figure(v float64, unit string) string {
	switch unit {
	case "dB":
		return decibels(v)
	case "% of rating":
		return percent(v) + " of rating"
	}
	return withUnit(v, unit)
}

// shown is the figure and the limit as a reader meets them.
func (c *claim) shown(l *LimitInForce) (measured Interval, limit float64, unit string) {
	if c.show != nil {
		return c.show(l.Value)
	}
	return c.measured, l.Value, c.unit
}

// pass records a check that held.
func (x *Examination) pass(c *claim) {
	p := Pass{Rule: x.rule, Place: c.place, At: c.at, Message: c.message}
	for g := Caution; g <= Danger; g++ {
		l := x.limit(g, c.use)
		if c.own != nil && c.own.Grade == g {
			l = c.own
		}
		if l != nil {
			p.Measured, p.Limit, p.Unit = c.shown(l)
			break
		}
	}
	x.result.Passed = append(x.result.Passed, p)
}

// holds reports whether a figure is within every graded limit of the rule.
func (x *Examination) holds(m Interval, use schedule.Use) bool {
	if !m.Known {
		return false
	}
	for g := Caution; g <= Danger; g++ {
		if l := x.limit(g, use); l != nil && past(m.High, l.Value) {
			return false
		}
	}
	return true
}

// passAll records many small checks of one rule that held as one pass.
func (x *Examination) passAll(n int, thing, message string) {
	if n == 0 {
		return
	}
	x.result.Passed = append(x.result.Passed, Pass{Rule: x.rule, Place: thing + "s", At: x.Job.Loudspeakers[0].At, Message: counted(float64(n), thing) + ": " + message})
}

// open records a check that cannot be shown, and asks what would settle it.
func (x *Examination) open(c *claim, why string) Verdict {
	if c.gaps != nil {
		gaps := c.gaps()
		if len(gaps) > 0 {
			why = gaps[0].text
			if len(gaps) > 1 {
				why += fmt.Sprintf(" (and %d more)", len(gaps)-1)
			}
		}
		x.ask(gaps, c.settles)
	}
	x.result.Unshown = append(x.result.Unshown, Unshown{Rule: x.rule, Place: c.place, At: c.at, Why: why})
	return Verdict{}
}

// ask adds questions; one asked before counts for one more verdict.
func (x *Examination) ask(gaps []gap, settles string) {
	for _, g := range gaps {
		q := question(g)
		if at := x.asked[q]; at > 0 {
			x.result.Questions[at-1].Verdicts++
			continue
		}
		x.result.Questions = append(x.result.Questions, Question{At: g.at, Field: g.field, Text: g.text, Settles: settles, Verdicts: 1})
		if x.asked == nil {
			x.asked = make(map[question]int)
		}
		x.asked[q] = len(x.result.Questions)
	}
}

// found records a finding.
func (x *Examination) found(c *claim, l *LimitInForce, certainty Certainty, higher string) Verdict {
	f := &Finding{
		ID: findingID(x.Job, x.rule.Name, c.key), Rule: x.rule, Place: c.place, Room: c.room, Zone: c.zone,
		Grade: l.Grade, Certainty: certainty, At: c.at,
		LimitSource: l.Source, Message: c.message, Higher: higher, Cautions: x.rule.Cautions, ExpectedOhm: c.ohms,
		equipment: c.equipment, emergency: c.emergency, key: c.key, pieces: c.pieces,
	}
	f.Measured, f.Limit, f.Unit = c.shown(l)
	if f.Limit != l.Value { // the figure shown is not the limit's own
		f.LimitSource = l.Name + " above " + withUnit(l.Value, l.Unit) + ": " + l.Source
	}
	if c.cells != nil {
		f.Cells = firstAt(c.cells(), c.at)
	}
	if len(f.Cells) == 0 {
		f.Cells = []Evidence{{At: c.at}}
	}
	f.At = f.Cells[0].At
	f.Assumed = x.assumptions(f.Cells)
	if (certainty == Possible || higher != "") && c.gaps != nil {
		gaps := c.gaps()
		x.ask(gaps, c.settles)
		if len(gaps) > 0 {
			f.Ask = gaps[0].text
			if len(gaps) > 1 {
				f.Ask += fmt.Sprintf(" (and %s)", counted(float64(len(gaps)-1), "more question"))
			}
		}
	}
	f.score()
	x.result.Findings = append(x.result.Findings, f)
	return Verdict{Checked: true, Grade: l.Grade, Certainty: certainty}
}

// firstAt moves the cell to look at first to the front, putting it there when
// it is not among the cells, drops repeated cells, and sorts the others in
// reading order.
func firstAt(cells []Evidence, at schedule.Ref) []Evidence {
	if at.IsZero() {
		return cells
	}
	out := make([]Evidence, 1, len(cells)+1)
	out[0] = Evidence{At: at}
	seen := make(map[schedule.Ref]bool, len(cells))
	for _, e := range cells {
		if e.At == at {
			out[0] = e
		} else if !seen[e.At] {
			out = append(out, e)
		}
		seen[e.At] = true
	}
	slices.SortStableFunc(out[1:], func(a, b Evidence) int { return a.At.Compare(b.At) })
	return out
}

// assumptions lists what was taken rather than stated in any of the cells.
func (x *Examination) assumptions(cells []Evidence) []schedule.Assumption {
	if x.taken == nil {
		x.taken = make(map[schedule.Ref][]schedule.Assumption)
		for _, list := range [][]schedule.Assumption{x.Job.Assumptions, x.circuit.assumed} {
			for _, a := range list {
				x.taken[a.At] = append(x.taken[a.At], a)
			}
		}
	}
	var out []schedule.Assumption
	for _, e := range cells {
		out = append(out, x.taken[e.At]...)
	}
	if v := x.Job.LineVolts; v.How.Assumed() {
		out = append(out, x.taken[v.At]...)
	}
	return out
}
