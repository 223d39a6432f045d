package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// groups makes one loudspeaker group for each tap that a cell names.
func (b *builder) groups(l *schedule.Loudspeaker, t *tapped) []*schedule.Loudspeaker {
	var out []*schedule.Loudspeaker
	total := 0
	for _, g := range t.groups {
		total += g.Count
	}
	if n, ok := l.Count.Exact(); ok && int(n) != total && l.Count.At != t.source.At {
		b.ask(t.source.At, "quantity", "the taps add up to "+itoa(total)+" loudspeakers, the quantity says "+plain(float64(n))+": which holds?", "the load of this row")
	}
	at := 0
	for _, g := range t.groups {
		one := *l
		one.Count = schedule.Exactly(schedule.Pieces(g.Count), t.source)
		one.Tap = schedule.Exactly(schedule.Watts(g.W), t.source)
		one.RowTotal, one.Offered, one.Tags = schedule.Quantity[schedule.Watts]{}, nil, nil
		if len(l.Tags) == total {
			one.Tags = l.Tags[at : at+g.Count]
			at += g.Count
		}
		out = append(out, &one)
	}
	return out
}

// moreOf reads the rest of a row: its cable, what was measured, remarks.
func (b *builder) moreOf(r *row, l *schedule.Loudspeaker) {
	for _, f := range []vocabulary.Field{vocabulary.Model, vocabulary.Describe, vocabulary.Kind} {
		if s := r.own(f); s.had() && saysSub.Of(s.text, 0) {
			l.Sub = schedule.Flag{Yes: true, Source: s.source}
			break
		}
	}
	if use, flag := useOf(r); use == schedule.Emergency {
		l.Emergency = flag
	}
	if q, ok := b.metres(r.own(vocabulary.Height)); ok {
		l.Height = q.Quantity
	}
	if r.kind == zoneRow {
		return
	}
	if s := r.own(vocabulary.Measured); s.had() {
		l.Measured = b.ohms(s)
	}
	if !r.saysOfCable() {
		return
	}
	run := &schedule.Cable{Zone: l.Zone, Channel: l.Channel, Control: l.Control, To: schedule.End{Text: l.Tag, Loudspeaker: l}}
	if c := b.runAlong(r, run); c != nil {
		l.Run = c
	}
}

// listedBefore reports whether a loudspeaker stands in another table already.
// The row is left out; what it says beyond the first is added, and what it
// says against it is a question.
func (b *builder) listedBefore(r *row, l *schedule.Loudspeaker) bool {
	if len(l.Tags) != 1 || l.Status != schedule.Installed || !r.t.uniqueTag(l.Tags[0]) {
		return false
	}
	if n, ok := l.Count.Exact(); ok && n != 1 {
		return false
	}
	for _, first := range b.speakers[join.Key(l.Tags[0])] {
		o := b.origin[first]
		if o.t == r.t || len(first.Tags) != 1 || !o.t.uniqueTag(first.Tags[0]) || first.Status != schedule.Installed || !agreePlace(first, l) {
			continue
		}
		if n, ok := first.Count.Exact(); ok && n != 1 {
			continue
		}
		of := "loudspeaker " + l.Tag.Value
		set(b, &first.Tap, l.Tap, "tap", of)
		if !first.TapVolts.Had() {
			first.TapVolts = l.TapVolts
		}
		setText(&first.Room, l.Room)
		setText(&first.Model, l.Model)
		setText(&first.Mounting, l.Mounting)
		if first.Zone == nil {
			first.Zone = l.Zone
		}
		if first.Channel == nil {
			first.Channel, first.Split = l.Channel, l.Split
		}
		if first.Control == nil {
			first.Control = l.Control
		}
		if len(first.Offered) == 0 {
			first.Offered = l.Offered
		}
		first.Rated = first.Rated.Or(l.Rated)
		first.Measured = first.Measured.Or(l.Measured)
		if l.Run != nil {
			l.Run.To.Loudspeaker = first
			if first.Run == nil {
				first.Run = l.Run
			}
		}
		r.out, r.reason = schedule.DuplicateRow, "the loudspeaker of "+o.At.String()+" again"
		return true
	}
	return false
}

// agreePlace reports whether nothing says that two rows stand in different places.
func agreePlace(a, b *schedule.Loudspeaker) bool {
	if a.Zone != nil && b.Zone != nil && a.Zone != b.Zone || a.Channel != nil && b.Channel != nil && a.Channel != b.Channel {
		return false
	}
	x, y := join.Key(a.Room.Value), join.Key(b.Room.Value)
	return x == "" || y == "" || x == y
}
