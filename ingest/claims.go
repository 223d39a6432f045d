package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Some schedules list no loudspeakers behind a control or a channel, only the
// load that somebody added up. Such a claim is then all that is known of it: it
// stands for the loudspeakers, as a row of unknown count.

// claims remembers the rows of controls and channels that state a load.
type claims struct {
	controls map[*schedule.Control]*row
	channels map[*schedule.Channel]*row
}

func (c *claims) ofControl(k *schedule.Control, r *row) {
	if c.controls == nil {
		c.controls = make(map[*schedule.Control]*row)
	}
	c.controls[k] = r
}

func (c *claims) ofChannel(ch *schedule.Channel, r *row) {
	if c.channels == nil {
		c.channels = make(map[*schedule.Channel]*row)
	}
	c.channels[ch] = r
}

// claimedLoads makes loudspeakers of the claims that no listed loudspeaker can
// be part of. A control's claim comes before that of its channel, that of the
// last control on a path before those ahead of it.
func (b *builder) claimedLoads() {
	control, zone, channel := make(map[*schedule.Control]bool), make(map[*schedule.Zone]bool), make(map[*schedule.Channel]bool)
	enter := func(l *schedule.Loudspeaker) {
		for k := l.Control; k != nil && !control[k]; k = k.Parent {
			control[k] = true
		}
		zone[l.Zone] = true
		for _, c := range feeding(l) {
			channel[c] = true
		}
	}
	for _, l := range b.job.Loudspeakers {
		enter(l)
	}
	listed := len(b.job.Loudspeakers) > 0
	feeds := make(map[*schedule.Control]bool) // a control with a load of its own behind it
	for k := range b.claims.controls {
		if k.Parent != nil {
			feeds[k.Parent] = true
		}
	}
	var made []*schedule.Loudspeaker
	for _, k := range b.job.Controls {
		r := b.claims.controls[k]
		if r == nil || k.Stated.Had() && k.Stated.High == 0 || k.Status != schedule.Installed || control[k] || feeds[k] {
			continue
		}
		if k.Zone != nil && zone[k.Zone] || k.Channel != nil && channel[k.Channel] || k.Channel == nil && listed {
			continue // the loudspeakers behind it may be among those listed
		}
		made = append(made, b.claimed(r, k)...)
	}
	for _, l := range made {
		enter(l)
	}
	for _, c := range b.job.Channels {
		if r := b.claims.channels[c]; r != nil && (!c.Stated.Had() || c.Stated.High > 0) && !channel[c] && !c.Standby && len(c.Bridged) == 0 && (c.Amplifier != nil || !listed) {
			l := b.claim(r, c.Stated, &schedule.Loudspeaker{Zone: b.onlyZoneOf(c), Room: r.said(vocabulary.Room), Channel: c})
			l.Control = b.controlNamedOn(c)
			made = append(made, l)
		}
	}
	b.job.Loudspeakers = append(b.job.Loudspeakers, made...)
}

// controlNamedOn is the control that the only row naming any on an output names there.
func (b *builder) controlNamedOn(c *schedule.Channel) *schedule.Control {
	var only *schedule.Control
	for _, x := range b.onChannel {
		if x.channel != c {
			continue
		}
		if only != nil && only != x.control {
			return nil
		}
		only = x.control
	}
	return only
}

// told are the loudspeakers that the row of a control tells of in words: "8 x
// ceiling @ 4 W".
func (b *builder) told(r *row) (list []notation.TapGroup, s seen) {
	for _, f := range []vocabulary.Field{vocabulary.To, vocabulary.Describe, vocabulary.Notes, vocabulary.Quantity} {
		if s := r.own(f); s.had() {
			text, style := b.readable(&s, notDate)
			if list := groupsIn(text, style); len(list) > 0 {
				return list, s
			}
		}
	}
	return nil, seen{}
}

// claimed are the loudspeakers behind a control: those that its row tells of,
// else those that its load stands for.
func (b *builder) claimed(r *row, k *schedule.Control) []*schedule.Loudspeaker {
	groups, s := b.told(r)
	if len(groups) == 0 {
		return []*schedule.Loudspeaker{b.claim(r, k.Stated, &schedule.Loudspeaker{Zone: k.Zone, Room: k.Room, Channel: k.Channel, Control: k})}
	}
	var out []*schedule.Loudspeaker
	for _, g := range groups {
		l := &schedule.Loudspeaker{At: s.source.At, Rows: r.Rows, Zone: k.Zone, Room: k.Room, Channel: k.Channel, Control: k,
			Count: schedule.Exactly(schedule.Pieces(g.Count), s.source), Tap: schedule.Exactly(schedule.Watts(g.W), s.source)}
		b.origin[l] = r
		out = append(out, l)
	}
	return out
}

// claim completes the loudspeakers that a claimed load stands for. The row of a
// channel may say how many there are and what their taps are: it is then the
// group of them.
func (b *builder) claim(r *row, load schedule.Quantity[schedule.Watts], l *schedule.Loudspeaker) *schedule.Loudspeaker {
	l.At, l.Rows, l.RowTotal = r.At, r.Rows, load
	b.origin[l] = r
	if l.Control == nil {
		t := b.tap(r, b.lineVoltsAt(l))
		b.askTapsAtVolts(&t)
		l.Tap, l.TapVolts = t.watts, t.volts
		if l.Count, _ = b.pieces(r.own(vocabulary.Quantity)); l.Count.Had() && l.Tap.Had() {
			return l
		}
	}
	s := r.first(vocabulary.Load, vocabulary.TotalWatts)
	b.take(s, "load", "the load as written", schedule.LikelierReading, "no loudspeakers are listed for it")
	return l
}

// onlyZoneOf is the zone that hangs on a channel, nil if none or several do.
func (b *builder) onlyZoneOf(c *schedule.Channel) *schedule.Zone {
	var only *schedule.Zone
	for _, z := range b.job.Zones {
		if z.Channel == c {
			if only != nil {
				return nil
			}
			only = z
		}
	}
	return only
}
