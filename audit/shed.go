package audit

import (
	"hash/maphash"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

// Shed returns what Rank, HouseTodo and the lists of findings and questions
// need of a result, without the job's parts and the checks that held: an
// archive has too many of them to hold. Counts stay what they were. Nothing of
// the result that was shed, and of the texts of its file, is held any more.
func (r *Result) Shed() *Result {
	k := keeper{}
	out := &Result{Job: k.job(r.Job), Settings: r.Settings, Broken: r.Broken, shed: r.counts(), parts: r.partNames()}
	for _, f := range r.Findings {
		out.Findings = append(out.Findings, k.finding(f))
	}
	for i := range r.Lines {
		if l := &r.Lines[i]; l.told(r.Findings) {
			out.Lines = append(out.Lines, k.line(l))
		}
	}
	out.Questions = slices.Clone(r.Questions)
	for i := range out.Questions {
		q := &out.Questions[i]
		k.texts(&q.Field, &q.Text, &q.Settles)
	}
	out.uses = make(map[causeID]bool, len(r.uses))
	for id := range r.uses {
		out.uses[causeID{id.kind, strings.Clone(id.key)}] = true
	}
	out.lacks = slices.Clone(r.lacks)
	for i := range out.lacks {
		l := &out.lacks[i]
		k.texts(&l.kind, &l.model, &l.missing)
	}
	out.said = slices.Clone(r.said)
	for i := range out.said {
		s := &out.said[i]
		k.texts(&s.kind, &s.model, &s.what, &s.text, &s.volts)
	}
	return out
}

// counts are the numbers of one result, its findings aside.
func (r *Result) counts() *Counts {
	if r.shed != nil {
		return r.shed
	}
	return &Counts{Questions: len(r.Questions), Passed: len(r.Passed), Unshown: len(r.Unshown), Loudspeakers: loudspeakers(r.Job), Controls: len(r.Job.Controls),
		Channels: len(r.Job.Channels), Amplifiers: len(r.Job.Amplifiers), Zones: len(r.Job.Zones), Lines: len(r.Lines)}
}

// told reports whether a finding rests on the line.
func (l *Line) told(findings []*Finding) bool {
	return len(l.Nodes) > 1 && slices.ContainsFunc(findings, func(f *Finding) bool { return f.RestsOn(l) })
}

// RestsOn reports whether the finding is one of losses on the line.
func (f *Finding) RestsOn(l *Line) bool {
	if f.Rule != lineLoss {
		return false
	}
	same := func(a, b schedule.Ref) bool {
		return a.File() == b.File() && a.Sheet() == b.Sheet() && a.Row == b.Row
	}
	return same(f.At, l.At) || slices.ContainsFunc(l.Cables, func(c *schedule.Cable) bool {
		return same(f.At, c.At) || slices.ContainsFunc(f.Cells, func(e Evidence) bool { return same(e.At, c.At) })
	})
}

// partSeed makes the numbers that stand for names of parts.
var partSeed = maphash.MakeSeed()

// partNames are numbers that stand for the names of the job's zones and
// controls, in order.
func (r *Result) partNames() []uint64 {
	if r.parts != nil {
		return r.parts
	}
	names := make([]uint64, 0, len(r.Job.Zones)+len(r.Job.Controls))
	for _, z := range r.Job.Zones {
		names = append(names, maphash.String(partSeed, "zone "+modelKey(z.Name)))
	}
	for _, k := range r.Job.Controls {
		names = append(names, maphash.String(partSeed, "control "+modelKey(k.Name)))
	}
	slices.Sort(names)
	return names
}

// A keeper copies texts out of those of a file, equal ones once.
type keeper map[string]string

func (k keeper) texts(list ...*string) {
	for _, s := range list {
		if *s == "" {
			continue
		}
		own, ok := k[*s]
		if !ok {
			own = strings.Clone(*s)
			k[own] = own
		}
		*s = own
	}
}

// job keeps what a job is called and how much of it was read.
func (k keeper) job(j *schedule.Job) *schedule.Job {
	out := &schedule.Job{File: j.File, Sheet: j.Sheet, Name: j.Name, Number: j.Number, Site: j.Site, Revision: j.Revision, Date: j.Date, RowsRead: j.RowsRead}
	k.texts(&out.File, &out.Sheet)
	for _, t := range []*schedule.Text{&out.Name, &out.Number, &out.Site, &out.Revision, &out.Date} {
		k.texts(&t.Value, &t.Written, &t.Because)
	}
	return out
}

func (k keeper) finding(f *Finding) *Finding {
	out := *f
	k.texts(&out.ID, &out.Place, &out.Room, &out.Zone, &out.Unit, &out.LimitSource, &out.Message, &out.Higher, &out.Ask, &out.NoRemedy, &out.key)
	out.Cells = slices.Clip(slices.Clone(f.Cells))
	for i := range out.Cells {
		c := &out.Cells[i]
		k.texts(&c.Written, &c.Role)
	}
	out.Assumed = slices.Clip(slices.Clone(f.Assumed))
	for i := range out.Assumed {
		a := &out.Assumed[i]
		k.texts(&a.Field, &a.Written, &a.TakenAs, &a.Because)
	}
	out.Remedies = slices.Clip(slices.Clone(f.Remedies))
	for i := range out.Remedies {
		m := &out.Remedies[i]
		k.texts(&m.Kind, &m.Change, &m.Short, &m.Part, &m.Unit, &m.Effect, &m.Source)
	}
	out.equipment = slices.Clone(f.equipment)
	for i := range out.equipment {
		k.texts(&out.equipment[i].kind, &out.equipment[i].name)
	}
	return &out
}

// line keeps a solved line without the parts of the job that it joins.
func (k keeper) line(l *Line) Line {
	out := *l
	out.Zone, out.Channel, out.Control = nil, nil, nil
	out.Cables = make([]*schedule.Cable, len(l.Cables))
	for i, c := range l.Cables {
		out.Cables[i] = &schedule.Cable{At: c.At}
	}
	k.texts(&out.Name, &out.Reading, &out.Material, &out.Incomplete)
	out.Nodes = slices.Clone(l.Nodes)
	for i := range out.Nodes {
		n := &out.Nodes[i]
		k.texts(&n.Kind, &n.Place)
	}
	return out
}
