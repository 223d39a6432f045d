package audit

import (
	"cmp"
	"fmt"
	"slices"

	"lineaudit/audit/schedule"
)

// Check audits one job: it runs every rule, computes the remedies and returns
// everything worked out on the way. It depends on the job and the settings
// alone, changes neither, and gives the same result every time.
func Check(job *schedule.Job, s *Settings) *Result { return check(nil, job, s) }

// check is Check with a question whether to stop; see CheckUntil.
func check(stop func() error, job *schedule.Job, s *Settings) *Result {
	r, x := examine(stop, job, s)
	if x.circuit == nil {
		return r
	}
	x.attempt("models", func() error {
		x.models(r)
		x.uses(r)
		return nil
	})
	newWorkshop(x).remedy(triesOf(job))
	return r
}

// examine is Check without remedies.
func examine(stop func() error, job *schedule.Job, s *Settings) (*Result, *Examination) {
	r := &Result{Job: job, Settings: s}
	x := &Examination{Job: job, result: r, stop: stop}
	if !x.work(func() *circuit { return newCircuit(job, s) }) {
		return r, x
	}
	x.run(func(*Rule) bool { return true })
	x.circuit.fill(r, x.networks)
	r.Assumptions = append(slices.Clone(job.Assumptions), x.circuit.assumed...)
	x.waive()
	x.closeQuestions()
	slices.SortStableFunc(r.Findings, compareFindings)
	for _, f := range r.Findings {
		r.Score = max(r.Score, f.Score)
	}
	return r, x
}

// work works the circuit and its lines out.
func (x *Examination) work(circuit func() *circuit) (ok bool) {
	return x.attempt("circuit", func() error {
		x.circuit = circuit()
		x.networks = x.circuit.networksOf()
		return nil
	})
}

// run runs the rules that are asked for.
func (x *Examination) run(asked func(*Rule) bool) {
	x.result.Passed = make([]Pass, 0, 16+4*len(x.Job.Channels)+4*len(x.Job.Controls)+len(x.networks))
	for _, rule := range registry {
		if x.rule = rule; asked(rule) {
			x.attempt(rule.Name, func() error { return rule.Check(x) })
		}
	}
}

// attempt runs a step. An error or a panic from it means that the step broke:
// never a finding, nor the lack of one.
func (x *Examination) attempt(name string, step func() error) (ok bool) {
	x.pause()
	findings, passed, unshown := len(x.result.Findings), len(x.result.Passed), len(x.result.Unshown)
	broke := func(what any) {
		x.result.Broken = append(x.result.Broken, fmt.Sprintf("%s: %v", name, what))
		x.result.Findings = x.result.Findings[:findings]
		x.result.Passed = x.result.Passed[:passed]
		x.result.Unshown = x.result.Unshown[:unshown]
	}
	defer func() {
		switch p := recover().(type) {
		case nil:
		case ended:
			panic(p)
		default:
			broke(p)
			ok = false
		}
	}()
	if err := step(); err != nil {
		broke(err)
		return false
	}
	return true
}

// compareFindings is the one order of findings: by score, then by place, then
// by rule and message, so that ties cannot move.
func compareFindings(a, b *Finding) int {
	return cmp.Or(cmp.Compare(b.Score, a.Score), a.At.Compare(b.At),
		cmp.Compare(a.Rule.Name, b.Rule.Name), cmp.Compare(a.Message, b.Message))
}

// closeQuestions adds the questions of the reading and sorts all by how many
// verdicts an answer settles.
func (x *Examination) closeQuestions() {
	r := x.result
	for _, q := range x.Job.Questions {
		r.Questions = append(r.Questions, Question{At: q.At, Field: q.Field, Text: q.Text, Settles: q.Settles})
	}
	slices.SortStableFunc(r.Questions, func(a, b Question) int {
		return cmp.Or(cmp.Compare(b.Verdicts, a.Verdicts), a.At.Compare(b.At), cmp.Compare(a.Field, b.Field), cmp.Compare(a.Text, b.Text))
	})
}

// waive takes findings that the house book accepts out of the findings.
func (x *Examination) waive() {
	waivers := x.circuit.set.waivers
	if len(waivers) == 0 {
		return
	}
	r := x.result
	kept := r.Findings[:0]
	for _, f := range r.Findings {
		if w := waiverFor(waivers, x.Job, f); w != nil {
			r.Waived = append(r.Waived, Waived{Finding: f, Reason: w.Reason.Value, By: w.By.Value, At: w.At})
			continue
		}
		kept = append(kept, f)
	}
	r.Findings = kept
}

func waiverFor(waivers []schedule.WaiverRow, j *schedule.Job, f *Finding) *schedule.WaiverRow {
	for i := range waivers {
		w := &waivers[i]
		job, place := folded(w.Job.Value), folded(w.Place.Value)
		switch {
		case w.Rule.Value != "" && folded(w.Rule.Value) != f.Rule.Name:
		case job != "" && job != folded(j.Name.Value) && job != folded(j.Number.Value) && job != folded(j.File):
		case place != "" && place != folded(f.Place) && place != folded(f.Room) && place != folded(f.Zone) && place != f.ID:
		default:
			return w
		}
	}
	return nil
}

// fill copies what was worked out into the result.
func (c *circuit) fill(r *Result, networks []*network) {
	r.Zones, r.Channels, r.Controls = make([]ZoneLoad, 0, len(c.zones)), make([]ChannelLoad, 0, len(c.channels)), make([]ControlLoad, 0, len(c.controls))
	r.Amplifiers, r.Lines = make([]AmplifierLoad, 0, len(c.amplifiers)), make([]Line, 0, len(networks))
	for i, z := range c.job.Zones {
		n := &c.zones[i]
		r.Zones = append(r.Zones, ZoneLoad{Zone: z, Load: n.load, LineV: voltsInterval(n.lineV), ExpectedOhm: expectedOhm(n.lineV, n.load.Watts)})
	}
	for i, ch := range c.job.Channels {
		n := &c.channels[i]
		n.fillCells(c)
		r.Channels = append(r.Channels, ChannelLoad{Channel: ch, LineV: voltsInterval(n.lineV), Rated: n.rating.watts, Load: n.load,
			Share: n.load.Watts.over(n.rating.watts), FreeW: c.freeOnChannel(i), ExpectedOhm: expectedOhm(n.lineV, n.load.Watts), Verdict: n.verdict})
	}
	for i, k := range c.job.Controls {
		n := &c.controls[i]
		n.fillCells(c)
		r.Controls = append(r.Controls, ControlLoad{Control: k, LineV: voltsInterval(n.lineV), Rated: n.rating.watts, Load: n.load,
			Share: n.load.Watts.over(n.rating.watts), FreeW: n.rating.watts.minus(n.load.Watts), ExpectedOhm: expectedOhm(n.lineV, n.load.Watts), Verdict: n.verdict})
	}
	for i, a := range c.job.Amplifiers {
		n := &c.amplifiers[i]
		n.fillCells(c)
		r.Amplifiers = append(r.Amplifiers, AmplifierLoad{Amplifier: a, Rated: n.rating.nominal, Load: n.load,
			Share: n.load.Watts.over(n.rating.watts), Verdict: n.verdict})
	}
	for _, n := range networks {
		r.Lines = append(r.Lines, n.line)
	}
}

// fillCells lists the cells of a load that did not pass.
func (n *node) fillCells(c *circuit) {
	if n.verdict.Checked && !n.verdict.Passed {
		n.load.Cells = c.cells(n)
	}
}

func voltsInterval(v float64) Interval {
	if v <= 0 {
		return Interval{}
	}
	return Exact(v)
}

// freeOnChannel is what may still be added before the limit of headroom-short.
func (c *circuit) freeOnChannel(i int) Interval {
	if c.taken[i] {
		return Interval{}
	}
	n := &c.channels[i]
	allowed := n.rating.watts
	if l := c.headroomLimit(i); l != nil {
		allowed = allowed.scaled(l.Value / 100)
	}
	return allowed.minus(n.load.Watts)
}
