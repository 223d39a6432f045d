package audit

import (
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

// A workshop is what the remedies of one job are worked out with.
type workshop struct {
	x      *Examination
	c      *circuit
	before map[string]Grade // danger and fault findings of the job, by rule and key
	all    *archipelago
	tried  int // devices that changes were tried on; see triesOf

	networks map[string]*network    // by key
	tapAt    map[schedule.Ref][]int // rows by the cell of their tap
	ratings  map[ratingsFor][2][]available
	roomiest map[float64][]int // channels by line voltage, those with most room first

	kept func(f *Finding, change func(*trial)) // told of each remedy; nil for nobody
}

// A repair tries remedies for one finding. Each is applied to a copy of the
// islands that it touches, which are examined again: a remedy is kept only if
// its finding is gone and no danger or fault has come up that was not there before.
type repair struct {
	*workshop
	f      *Finding
	why    []string     // why no remedy was found
	change func(*trial) // what was tried last
}

// A trial is a copy of the part of a job that a change touches.
type trial struct {
	job *schedule.Job
	schedule.Counterparts
	after *circuit // of the copy, with the change
}

// newWorkshop prepares the remedies of a job that was examined.
func newWorkshop(x *Examination) *workshop {
	r := x.result
	w := &workshop{x: x, c: x.circuit, before: grave(r), ratings: make(map[ratingsFor][2][]available)}
	for _, v := range r.Waived {
		w.before[v.Finding.Rule.Name+"\x1f"+v.Finding.key] = v.Finding.Grade
	}
	if len(r.Findings) == 0 {
		return w
	}
	w.all = w.c.archipelago()
	w.networks = make(map[string]*network, len(x.networks))
	for _, n := range x.networks {
		if w.networks[n.key] == nil {
			w.networks[n.key] = n
		}
	}
	w.tapAt = make(map[schedule.Ref][]int, len(w.c.rows))
	for i := range w.c.rows {
		at := w.c.rows[i].l.Tap.At
		w.tapAt[at] = append(w.tapAt[at], i)
	}
	return w
}

// remedy computes the remedies of the findings of a result, the worst first,
// until changes were tried on so many devices.
func (w *workshop) remedy(tries int) {
	findings := w.x.result.Findings
	for i, f := range findings {
		if w.tried > tries {
			left := counted(float64(len(findings)-i), "finding")
			for _, f := range findings[i:] {
				f.NoRemedy = "No remedy was worked out: each is tried on all that hangs together, which is done for the worst findings of a job only, not for its last " + left + "."
			}
			return
		}
		p := &repair{workshop: w, f: f}
		w.x.attempt("remedies of "+f.Rule.Name, func() error { p.find(); return nil })
		if len(f.Remedies) == 0 {
			f.NoRemedy = p.onSite()
		}
	}
}

// triesOf is how many devices remedies of one job are tried on, about: at each
// try, all that hang together with what it changes. It is some ten seconds of
// work, and for each device a fraction of a millisecond.
func triesOf(j *schedule.Job) int { return 2_000_000 + 20*devices(j) }

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
		p.retap(&p.c.controls[i], p.x.Job.Controls[i], p.controlPlan(i))
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
		p.retap(&p.c.channels[i], p.x.Job.Channels[i], p.channelPlan(i))
		if p.c.onlyZone(&p.c.channels[i]) == "" {
			p.move(i)
			p.nextChannel(i)
		} else { // its only zone would leave it idle: the last resort
			p.nextChannel(i)
			p.move(i)
		}
	case frameOverload:
		i := p.amplifier()
		p.retap(&p.c.amplifiers[i], p.x.Job.Amplifiers[i], p.framePlan(i))
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

func (p *repair) control() int { return p.named(p.c.byKey().controls) }

func (p *repair) channel() int { return p.named(p.c.byKey().channels) }

func (p *repair) amplifier() int { return p.named(p.c.byKey().amplifiers) }

// named is the position of the part that the finding speaks of.
func (p *repair) named(at map[string]int) int {
	if i, ok := at[p.f.key]; ok {
		return i
	}
	panic("nothing is known as " + p.f.Place)
}

// try applies a change to a copy of what hangs together with the parts that it
// touches, and examines that again. It returns the new state when the finding is
// gone and nothing grave was added, else nil.
func (p *repair) try(change func(*trial), touched ...any) *trial {
	p.x.pause()
	part := p.all.around(touched)
	t := &trial{}
	t.job, t.Counterparts = part.job(p.x.Job).Copy()
	p.tried += devices(t.job)
	change(t)
	p.change = change
	for _, l := range t.job.Loudspeakers {
		l.Measured, l.RowTotal = schedule.Quantity[schedule.Ohms]{}, keepTotal(l)
	}
	after := &Result{Job: t.job, Settings: p.c.set}
	x := &Examination{Job: t.job, result: after, stop: p.x.stop}
	if x.work(func() *circuit { return newCircuitOf(t.job, p.c.set, p.c, part.rows) }) {
		x.run(func(r *Rule) bool { return !r.OfJob })
		x.waive()
	}
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
	t.after = x.circuit
	return t
}

// anyOf is a list of parts as try takes them.
func anyOf[T any](parts []*T) []any {
	out := make([]any, len(parts))
	for i, p := range parts {
		out[i] = p
	}
	return out
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
	if p.kept != nil {
		p.kept(p.f, p.change)
	}
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
