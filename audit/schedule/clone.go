package schedule

import "slices"

// Clone returns a deep copy of a job: its parts are new, and every pointer
// between them leads to a part of the copy, so that the copy can be changed
// without a trace in the original. Pointers to parts that are not in the job's
// own slices become nil.
func (j *Job) Clone() *Job {
	out, _ := j.Copy()
	return out
}

// Copy is Clone, and tells which part of the copy stands for which of the job.
func (j *Job) Copy() (*Job, Counterparts) {
	out := *j
	c := Counterparts{}
	c.amplifiers, out.Amplifiers = copies(j.Amplifiers)
	c.channels, out.Channels = copies(j.Channels)
	c.zones, out.Zones = copies(j.Zones)
	c.controls, out.Controls = copies(j.Controls)
	c.loudspeakers, out.Loudspeakers = copies(j.Loudspeakers)
	c.cables, out.Cables = copies(j.Cables)
	for _, a := range out.Amplifiers {
		a.Channels = moved(c.channels, a.Channels)
		a.LowImpedance = moved(c.loudspeakers, a.LowImpedance)
	}
	for _, ch := range out.Channels {
		ch.Amplifier = c.amplifiers[ch.Amplifier]
		ch.Bridged = moved(c.channels, ch.Bridged)
	}
	for _, z := range out.Zones {
		z.Channel, z.Control = c.channels[z.Channel], c.controls[z.Control]
		z.Channels = moved(c.channels, z.Channels)
	}
	for _, k := range out.Controls {
		k.Zone, k.Channel, k.Parent, k.Run = c.zones[k.Zone], c.channels[k.Channel], c.controls[k.Parent], c.cables[k.Run]
		k.RatedVolts = slices.Clone(k.RatedVolts)
	}
	for _, l := range out.Loudspeakers {
		c.relink(l)
	}
	for _, k := range out.Cables {
		k.Zone, k.Channel, k.Control = c.zones[k.Zone], c.channels[k.Channel], c.controls[k.Control]
		c.end(&k.From)
		c.end(&k.To)
	}
	out.Totals = slices.Clone(j.Totals)
	for i := range out.Totals {
		out.Totals[i].Rows = moved(c.loudspeakers, out.Totals[i].Rows)
	}
	out.Measurements = slices.Clone(j.Measurements)
	for i := range out.Measurements {
		m := &out.Measurements[i]
		m.Channel, m.Control, m.Zone, m.Loudspeaker = c.channels[m.Channel], c.controls[m.Control], c.zones[m.Zone], c.loudspeakers[m.Loudspeaker]
	}
	out.Assumptions, out.Questions, out.Tables = slices.Clone(j.Assumptions), slices.Clone(j.Questions), slices.Clone(j.Tables)
	out.Refused = slices.Clone(j.Refused)
	out.LeftOut = slices.Clone(j.LeftOut)
	for i := range out.LeftOut {
		out.LeftOut[i].Would = c.would(out.LeftOut[i].Would)
	}
	return &out, c
}

// Counterparts lead from the parts of a job to those of its copy; nil, and what
// was not copied, leads to nil.
type Counterparts struct {
	amplifiers   map[*Amplifier]*Amplifier
	channels     map[*Channel]*Channel
	zones        map[*Zone]*Zone
	controls     map[*Control]*Control
	loudspeakers map[*Loudspeaker]*Loudspeaker
	cables       map[*Cable]*Cable
}

// Amplifier is the copy of an amplifier.
func (c *Counterparts) Amplifier(a *Amplifier) *Amplifier { return c.amplifiers[a] }

// Channel is the copy of a channel.
func (c *Counterparts) Channel(ch *Channel) *Channel { return c.channels[ch] }

// Zone is the copy of a zone.
func (c *Counterparts) Zone(z *Zone) *Zone { return c.zones[z] }

// Control is the copy of a control.
func (c *Counterparts) Control(k *Control) *Control { return c.controls[k] }

// Loudspeaker is the copy of a loudspeaker.
func (c *Counterparts) Loudspeaker(l *Loudspeaker) *Loudspeaker { return c.loudspeakers[l] }

// Cable is the copy of a cable.
func (c *Counterparts) Cable(k *Cable) *Cable { return c.cables[k] }

// copies makes a copy of every part, in one piece of memory, and the map to it.
func copies[T any](list []*T) (map[*T]*T, []*T) {
	if list == nil {
		return nil, nil
	}
	to := make(map[*T]*T, len(list))
	out := make([]*T, len(list))
	store := make([]T, len(list))
	for i, p := range list {
		store[i] = *p
		out[i] = &store[i]
		to[p] = out[i]
	}
	return to, out
}

// moved maps a list of pointers, leaving out those that lead nowhere.
func moved[T any](to map[*T]*T, list []*T) []*T {
	if list == nil {
		return nil
	}
	out := make([]*T, 0, len(list))
	for _, p := range list {
		if q := to[p]; q != nil {
			out = append(out, q)
		}
	}
	return out
}

// relink leads the pointers of a copied loudspeaker to the copies.
func (c *Counterparts) relink(l *Loudspeaker) {
	l.Zone, l.Control, l.Channel, l.Run = c.zones[l.Zone], c.controls[l.Control], c.channels[l.Channel], c.cables[l.Run]
	l.Split = moved(c.channels, l.Split)
	l.Tags, l.Offered = slices.Clone(l.Tags), slices.Clone(l.Offered)
}

func (c *Counterparts) end(e *End) {
	e.Amplifier, e.Channel, e.Control = c.amplifiers[e.Amplifier], c.channels[e.Channel], c.controls[e.Control]
	e.Zone, e.Loudspeaker = c.zones[e.Zone], c.loudspeakers[e.Loudspeaker]
}

// would copies the loudspeakers of a row that was left out, which are not
// among those of the job.
func (c *Counterparts) would(list []*Loudspeaker) []*Loudspeaker {
	if list == nil {
		return nil
	}
	out := make([]*Loudspeaker, len(list))
	for i, l := range list {
		if in := c.loudspeakers[l]; in != nil {
			out[i] = in
			continue
		}
		fresh := *l
		c.relink(&fresh)
		out[i] = &fresh
	}
	return out
}
