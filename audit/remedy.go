package audit

import (
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

// A repair tries remedies for one finding. Each is applied to a copy of the
// job, which is examined again: a remedy is kept only if its finding is gone
// and no danger or fault has come up that was not there before.
type repair struct {
	x      *Examination
	c      *circuit
	f      *Finding
	before map[string]Grade    // danger and fault findings of the job, by rule and key
	why    []string            // why no remedy was found
	change func(*schedule.Job) // what was tried last
}

// A cure is a remedy with the change it was examined with.
type cure struct {
	finding *Finding
	remedy  int
	change  func(*schedule.Job)
}

// remedy computes the remedies of the findings of a result, the worst first,
// until changes were tried on so many devices.
func (x *Examination) remedy(r *Result, tries int) {
	if x.circuit == nil {
		return
	}
	before := grave(r)
	for _, w := range r.Waived {
		before[w.Finding.Rule.Name+"\x1f"+w.Finding.key] = w.Finding.Grade
	}
	for i, f := range r.Findings {
		if x.tried > tries {
			left := counted(float64(len(r.Findings)-i), "finding")
			for _, f := range r.Findings[i:] {
				f.NoRemedy = "No remedy was worked out: each is tried on the whole job, which is done for its worst findings only, not for its last " + left + "."
			}
			return
		}
		p := &repair{x: x, c: x.circuit, f: f, before: before}
		x.attempt("remedies of "+f.Rule.Name, func() error { p.find(); return nil })
		if len(f.Remedies) == 0 {
			f.NoRemedy = p.onSite()
		}
	}
}

// triesAJob is how many devices remedies of one job are tried on, about: all of
// its devices count at each try. It is some ten seconds of work; a job of 500
// devices may have 4,000 tries.
const triesAJob = 2_000_000

// devices is the number of devices of a job.
func devices(j *schedule.Job) int {
	return len(j.Loudspeakers) + len(j.Zones) + len(j.Controls) + len(j.Channels) + len(j.Amplifiers) + len(j.Cables)
}

// grave lists the findings of grade fault and danger by rule and key.
func grave(r *Result) map[string]Grade {
	out := make(map[string]Grade)
	for _, f := range r.Findings {
		if f.Grade >= Fault {
			k := f.Rule.Name + "\x1f" + f.key
			out[k] = max(out[k], f.Grade)
		}
	}
	return out
}

// find tries what can cure the finding, the cheapest first: a tap change, a
// move, a next rating, a split, a cable.
func (p *repair) find() {
	if p.f.Certainty == Possible && p.f.Ask != "" {
		return // first the question
	}
	if n := p.c.sameNode(p.f); n.lowRows+n.oddRows > 0 {
		p.not("first settle what is kept out of its sum: %s", n.load.Incomplete)
		return
	}
	switch p.f.Rule {
	case controlOverload:
		i := p.control()
		p.retap(&p.c.controls[i], p.controlPlan(i))
		p.nextControl(i)
		p.split(i)
		if len(p.f.Remedies) == 0 {
			p.retapAndReplace(i)
		}
	case controlVoltageMismatch:
		i := p.control()
		p.nextControl(i)
		if len(p.f.Remedies) == 0 {
			p.split(i)
		}
	case channelOverload, headroomShort:
		i := p.channel()
		p.retap(&p.c.channels[i], p.channelPlan(i))
		if p.c.onlyZone(&p.c.channels[i]) == "" {
			p.move(i)
			p.nextChannel(i)
		} else { // its only zone would leave it idle: the last resort
			p.nextChannel(i)
			p.move(i)
		}
	case frameOverload:
		i := p.amplifier()
		p.retap(&p.c.amplifiers[i], p.framePlan(i))
		p.nextFrame(i)
	case lineLoss:
		p.cable()
	case voltageMismatch:
		p.tapForLine()
	case tapNotOffered, tapAboveRating:
		p.nearestTap()
	case cladAluminium:
		p.copper()
	case unevenLevel:
		p.evenTaps()
	}
}

func (p *repair) control() int {
	for i, k := range p.x.Job.Controls {
		if controlKey(k) == p.f.key {
			return i
		}
	}
	panic("no control for " + p.f.Place)
}

func (p *repair) channel() int {
	for i, ch := range p.x.Job.Channels {
		if channelKey(ch) == p.f.key {
			return i
		}
	}
	panic("no channel for " + p.f.Place)
}

func (p *repair) amplifier() int {
	for i, a := range p.x.Job.Amplifiers {
		if amplifierKey(a) == p.f.key {
			return i
		}
	}
	panic("no amplifier for " + p.f.Place)
}

// try applies a change to a copy of the job and examines it again. It returns
// the new state when the finding is gone and nothing grave was added, else nil.
func (p *repair) try(change func(*schedule.Job)) *circuit {
	p.x.pause()
	p.x.tried += devices(p.x.Job)
	job := p.x.Job.Clone()
	change(job)
	p.change = change
	// What was measured, and what totals were written, belongs to the state before.
	job.Measurements, job.Totals = nil, nil
	for _, l := range job.Loudspeakers {
		l.Measured, l.RowTotal = schedule.Quantity[schedule.Ohms]{}, keepTotal(l)
	}
	after, x := examine(p.x.stop, job, p.c.set)
	if len(after.Broken) > 0 {
		return nil
	}
	for _, f := range after.Findings {
		k := f.Rule.Name + "\x1f" + f.key
		if f.Rule == p.f.Rule && f.key == p.f.key {
			return nil
		}
		if f.Grade >= Fault && f.Grade > p.before[k] {
			return nil
		}
	}
	for _, u := range after.Unshown {
		if u.Rule == p.f.Rule && u.Place == p.f.Place {
			return nil // not cured, only hidden
		}
	}
	return x.circuit
}

// keepTotal keeps the total of a row that states no tap, whose load it is.
func keepTotal(l *schedule.Loudspeaker) schedule.Quantity[schedule.Watts] {
	if l.Tap.Had() {
		return schedule.Quantity[schedule.Watts]{}
	}
	return l.RowTotal
}

// keep adds a remedy.
func (p *repair) keep(r Remedy) {
	p.f.Remedies = append(p.f.Remedies, r)
	p.x.cures = append(p.x.cures, cure{p.f, len(p.f.Remedies) - 1, p.change})
}

// not notes why something offers no remedy.
func (p *repair) not(format string, args ...any) { p.why = append(p.why, fmt.Sprintf(format, args...)) }

// OnSite begins the part of Finding.NoRemedy that tells what to look at on site.
const OnSite = "On site: "

// onSite says why there is no remedy on paper and what to look at on site.
func (p *repair) onSite() string {
	var parts []string
	if p.f.Certainty == Possible && p.f.Ask != "" {
		parts = append(parts, "Settle it first: "+p.f.Ask)
	}
	if len(p.why) > 0 {
		parts = append(parts, "No remedy on paper: "+strings.Join(slices.Compact(p.why), "; ")+".")
	}
	on := p.f.Rule.OnSite
	if on != "" {
		if p.f.ExpectedOhm.Known && strings.Contains(on, "impedance") {
			on += fmt.Sprintf(" (these taps should show %s ohm)", span(p.f.ExpectedOhm))
		}
		if !strings.HasSuffix(on, "?") {
			on += "."
		}
		parts = append(parts, OnSite+on)
	}
	return strings.Join(parts, " ")
}

// stated is a value that a remedy sets.
func stateQuantity[T ~float64](v T) schedule.Quantity[T] {
	return schedule.Exactly(v, schedule.Source{How: schedule.Stated})
}

// loadEffect says what a node carries after a change.
func loadEffect(n *node) string {
	if n.rating.watts.Known {
		return fmt.Sprintf("load %s W of %s W, %s", span(n.load.Watts), span(n.rating.watts), percents(n.load.Watts.over(n.rating.watts).scaled(100)))
	}
	return "load " + span(n.load.Watts) + " W"
}

// share is the load of a node in percent of its rating, its upper end.
func (n *node) share() float64 { return 100 * n.load.Watts.over(n.rating.watts).High }
