package audit

import (
	"slices"

	"lineaudit/audit/schedule"
)

// An island is parts of a job that are joined: one feeds the other, a cable
// leads to both, or a rule compares them by the place that they share. What is
// changed on one island changes no verdict on another. Its parts are told by
// their positions in the job, in order.
type island struct {
	amplifiers, channels, zones, controls, rows, cables []int
	refused                                             []int // values refused in its rows
}

// archipelago is all islands of a job.
type archipelago struct {
	c       *circuit
	islands []island
	of      map[any]int // pointer to a part of the job: its island
}

// A union joins parts: each leads, in the end, to the one that stands for all
// that it is joined with.
type union struct {
	at map[any]int
	up []int
}

// A samePlace stands for what joins parts that do not point at each other.
type samePlace struct{ kind, a, b string }

func (u *union) add(part any) int {
	n := len(u.up)
	u.at[part] = n
	u.up = append(u.up, n)
	return n
}

func addAll[T any](u *union, parts []*T) {
	for _, p := range parts {
		u.add(p)
	}
}

func (u *union) top(n int) int {
	for u.up[n] != n {
		u.up[n] = u.up[u.up[n]]
		n = u.up[n]
	}
	return n
}

// join joins two parts of the job; nil and strangers join nothing.
func (u *union) join(a, b any) {
	x, ok := u.at[a]
	y, ok2 := u.at[b]
	if ok && ok2 {
		u.up[u.top(x)] = u.top(y)
	}
}

func joinAll[T any](u *union, a any, parts []*T) {
	for _, p := range parts {
		u.join(a, p)
	}
}

// joinPlace joins a part with all that share a place.
func (u *union) joinPlace(a any, p samePlace) {
	if _, ok := u.at[p]; !ok {
		u.add(p)
	}
	u.join(a, p)
}

// archipelago finds the islands of a job.
func (c *circuit) archipelago() *archipelago {
	j := c.job
	u := &union{at: make(map[any]int, devices(j)), up: make([]int, 0, devices(j))}
	addAll(u, j.Amplifiers)
	addAll(u, j.Channels)
	addAll(u, j.Zones)
	addAll(u, j.Controls)
	addAll(u, j.Loudspeakers)
	addAll(u, j.Cables)
	for _, a := range j.Amplifiers {
		joinAll(u, a, a.Channels)
		joinAll(u, a, a.LowImpedance)
	}
	for _, ch := range j.Channels {
		u.join(ch, ch.Amplifier)
		joinAll(u, ch, ch.Bridged)
	}
	for _, z := range j.Zones {
		u.join(z, z.Channel)
		u.join(z, z.Control)
		joinAll(u, z, z.Channels)
	}
	for _, k := range j.Controls {
		u.join(k, k.Zone)
		u.join(k, k.Channel)
		u.join(k, k.Parent)
		u.join(k, k.Run)
	}
	for i := range c.rows {
		c.joinRow(u, &c.rows[i])
	}
	for _, k := range j.Cables {
		joinCable(u, k)
	}
	return c.gather(u)
}

// joinRow joins a row with what it hangs on, as worked out and as written. What
// has no zone is compared by room and model; without a zone and a channel,
// pieces of cable make one chain, and low-impedance rows of a model one group.
func (c *circuit) joinRow(u *union, r *row) {
	l := r.l
	u.join(l, l.Zone)
	u.join(l, l.Control)
	u.join(l, l.Channel)
	u.join(l, l.Run)
	joinAll(u, l, l.Split)
	for _, ch := range r.channels {
		u.join(l, c.job.Channels[ch])
	}
	if r.control >= 0 {
		u.join(l, c.job.Controls[r.control])
	}
	if r.zone >= 0 {
		return
	}
	if l.Room.Value != "" && l.Model.Value != "" {
		u.joinPlace(l, samePlace{"room", folded(l.Room.Value), modelKey(l.Model.Value)})
	}
	if len(r.channels) > 0 {
		return
	}
	if l.Run != nil {
		u.joinPlace(l, samePlace{kind: "chain"})
	}
	if r.out == lowImpedance {
		u.joinPlace(l, samePlace{"low impedance", folded(l.Model.Value), ""})
	}
}

// joinCable joins a cable with what it leads to, and with the cables that meet
// it at a joint.
func joinCable(u *union, k *schedule.Cable) {
	u.join(k, k.Zone)
	u.join(k, k.Channel)
	u.join(k, k.Control)
	for _, e := range []schedule.End{k.From, k.To} {
		u.join(k, e.Amplifier)
		u.join(k, e.Channel)
		u.join(k, e.Control)
		u.join(k, e.Zone)
		u.join(k, e.Loudspeaker)
		if e.Text.Value != "" && !e.Resolved() && (k.Reach == schedule.FromTo || k.Reach == schedule.ReachUnknown) {
			u.joinPlace(k, samePlace{"joint", folded(e.Text.Value), ""})
		}
	}
}

// gather lists the parts of each island.
func (c *circuit) gather(u *union) *archipelago {
	j := c.job
	out := &archipelago{c: c, of: make(map[any]int, len(u.at))}
	number := make(map[int]int)
	in := func(part any) *island {
		top := u.top(u.at[part])
		n, ok := number[top]
		if !ok {
			n = len(out.islands)
			number[top] = n
			out.islands = append(out.islands, island{})
		}
		out.of[part] = n
		return &out.islands[n]
	}
	for i, a := range j.Amplifiers {
		d := in(a)
		d.amplifiers = append(d.amplifiers, i)
	}
	for i, ch := range j.Channels {
		d := in(ch)
		d.channels = append(d.channels, i)
	}
	for i, z := range j.Zones {
		d := in(z)
		d.zones = append(d.zones, i)
	}
	for i, k := range j.Controls {
		d := in(k)
		d.controls = append(d.controls, i)
	}
	refused := refusalsOf(j)
	for i, l := range j.Loudspeakers {
		d := in(l)
		d.rows = append(d.rows, i)
		d.refused = refused.in(l, d.refused)
	}
	for i, k := range j.Cables {
		d := in(k)
		d.cables = append(d.cables, i)
	}
	return out
}

// around is the islands of some parts of the job as one.
func (a *archipelago) around(parts []any) *island {
	var numbers []int
	for _, p := range parts {
		if n, ok := a.of[p]; ok {
			numbers = append(numbers, n)
		}
	}
	slices.Sort(numbers)
	numbers = slices.Compact(numbers)
	if len(numbers) == 1 {
		return &a.islands[numbers[0]]
	}
	out := &island{}
	for _, n := range numbers {
		d := &a.islands[n]
		out.amplifiers, out.channels, out.zones = append(out.amplifiers, d.amplifiers...), append(out.channels, d.channels...), append(out.zones, d.zones...)
		out.controls, out.rows, out.cables = append(out.controls, d.controls...), append(out.rows, d.rows...), append(out.cables, d.cables...)
		out.refused = append(out.refused, d.refused...)
	}
	for _, list := range [][]int{out.amplifiers, out.channels, out.zones, out.controls, out.rows, out.cables, out.refused} {
		slices.Sort(list)
	}
	return out
}

// job is a job of an island alone, its parts those of the whole job. What was
// measured, and what totals were written, belongs to the state before a change;
// what the reading tells of the whole job has no part in a trial.
func (d *island) job(j *schedule.Job) *schedule.Job {
	out := *j
	out.Amplifiers, out.Channels, out.Zones = picked(j.Amplifiers, d.amplifiers), picked(j.Channels, d.channels), picked(j.Zones, d.zones)
	out.Controls, out.Loudspeakers, out.Cables = picked(j.Controls, d.controls), picked(j.Loudspeakers, d.rows), picked(j.Cables, d.cables)
	out.Refused = picked(j.Refused, d.refused)
	out.Measurements, out.Totals = nil, nil
	out.Assumptions, out.LeftOut, out.Questions, out.Tables = nil, nil, nil, nil
	return &out
}

func picked[T any](list []T, at []int) []T {
	out := make([]T, len(at))
	for i, n := range at {
		out[i] = list[n]
	}
	return out
}
