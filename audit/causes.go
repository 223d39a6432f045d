package audit

import (
	"cmp"
	"fmt"
	"slices"

	"lineaudit/audit/schedule"
)

// How many causes "what to fix first" names: types of equipment and cable, and
// habits, which are what one rule finds.
const (
	mostTypes  = 8
	mostHabits = 4
)

// rareCause is the share of the jobs using a type below which findings are not
// laid to it: that is what everybody uses. Common practice, no source.
const rareCause = 0.05

const habit = "habit"

// causeID is what makes two causes one.
type causeID struct{ kind, key string }

func (e equipment) id() causeID { return causeID{e.kind, modelKey(e.name)} }

// uses notes which types of equipment and cable a job uses.
func (x *Examination) uses(r *Result) {
	r.uses = make(map[causeID]bool)
	note := func(kind, name string) {
		if name != "" {
			r.uses[equipment{kind, name}.id()] = true
		}
	}
	for _, k := range x.Job.Controls {
		note("control model", k.Model.Value)
	}
	for _, a := range x.Job.Amplifiers {
		note("amplifier model", a.Model.Value)
	}
	last := ""
	for _, l := range x.Job.Loudspeakers {
		if l.Model.Value != last {
			last = l.Model.Value
			note("loudspeaker model", last)
		}
	}
	for _, k := range x.Job.Cables {
		if k.Status == schedule.Installed {
			d := x.circuit.conduit(k)
			note("cable type", d.wireName())
		}
	}
}

// firstCauses gathers the findings of the current jobs by the equipment behind
// them, and by the habit that their rule finds: what stands behind two findings
// or more, the causes with the highest total score first. A finding may count
// for several.
func firstCauses(findings []*Finding, current []*Result) []Cause {
	from := map[*Finding]*Result{}
	using := map[causeID]int{}
	for _, r := range current {
		for _, f := range r.Findings {
			from[f] = r
		}
		for id := range r.uses {
			using[id]++
		}
	}
	at := map[causeID]int{}
	var causes []Cause
	total := 0.0
	add := func(id causeID, name string, f *Finding) {
		i, ok := at[id]
		if !ok {
			i = len(causes)
			at[id] = i
			causes = append(causes, Cause{Kind: id.kind, Name: name})
		}
		causes[i].Findings = append(causes[i].Findings, f)
		causes[i].Score += f.Score
	}
	for _, f := range findings {
		total += f.Score
		for _, e := range f.equipment {
			if e.kind != habit {
				add(e.id(), e.name, f)
			}
		}
		add(causeID{habit, f.Rule.Name}, f.Rule.Title, f)
	}
	var types, habits []Cause
	for _, c := range causes {
		if len(c.Findings) < 2 {
			continue
		}
		c.count(from)
		if total > 0 {
			c.Share = c.Score / total
		}
		c.Jobs = using[equipment{c.Kind, c.Name}.id()]
		what := fmt.Sprintf("%d findings at %s", len(c.Findings), counted(float64(c.Sites), "site"))
		switch {
		case c.Kind == habit:
			c.Text = c.Name + ": " + what
			habits = append(habits, c)
		case float64(c.With) < rareCause*float64(c.Jobs):
		default:
			c.Text = fmt.Sprintf("%s %s stands behind %s, in %d of %s", c.Kind, c.Name, what, c.With, counted(float64(max(c.With, c.Jobs)), "job")+" with it")
			types = append(types, c)
		}
	}
	slices.SortStableFunc(types, compareCauses)
	slices.SortStableFunc(habits, compareCauses)
	out := append(types[:min(len(types), mostTypes)], habits[:min(len(habits), mostHabits)]...)
	slices.SortStableFunc(out, compareCauses)
	return out
}

// compareCauses orders by score; of the same findings the type says more than the habit.
func compareCauses(a, b Cause) int {
	late := func(c Cause) int {
		if c.Kind == habit {
			return 1
		}
		return 0
	}
	return cmp.Or(cmp.Compare(b.Score, a.Score), cmp.Compare(late(a), late(b)), cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Name, b.Name))
}

// count counts the sites and jobs of a cause.
func (c *Cause) count(from map[*Finding]*Result) {
	sites, jobs := map[string]bool{}, map[*Result]bool{}
	for _, f := range c.Findings {
		r := from[f]
		sites[folded(siteName(r.Job))], jobs[r] = true, true
	}
	c.Sites, c.With = len(sites), len(jobs)
}
