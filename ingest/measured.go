package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// measure enters what a row says was measured on site of the part that m names.
func (b *builder) measure(r *row, m schedule.Measurement) bool {
	ohms, watts := r.own(vocabulary.Measured), r.own(vocabulary.MeasuredLoad)
	m.Ohms, m.Watts = b.ohms(ohms), b.watts(watts)
	switch {
	case m.Ohms.Had():
		m.At = m.Ohms.At
	case m.Watts.Had():
		m.At = m.Watts.At
	default:
		return false
	}
	b.job.Measurements = append(b.job.Measurements, m)
	return true
}

// addMeasurement enters a row of a list of measurements. It belongs to the
// narrowest part that the row names.
func (b *builder) addMeasurement(r *row) {
	m := schedule.Measurement{}
	if tag := r.own(vocabulary.Tag); tag.had() {
		e := b.end(r, tag)
		m.Loudspeaker, m.Control, m.Channel, m.Zone = e.Loudspeaker, e.Control, e.Channel, e.Zone
	}
	if m == (schedule.Measurement{}) {
		if c := b.controlText(r); c.name != "" {
			m.Control = b.control(c.at, c.name)
		} else if list := b.channelsOf(r); len(list) == 1 {
			m.Channel = list[0]
			b.fillChannel(r, list[0])
		} else if z := b.zoneOf(r); z != nil {
			m.Zone = z
		}
	}
	if m == (schedule.Measurement{}) {
		r.out, r.reason = schedule.NotUnderstood, "what was measured is not in the schedule"
		return
	}
	if !b.measure(r, m) {
		r.out, r.reason = schedule.EmptyRow, "no measured value"
		return
	}
	r.used = true
}

// lineAhead sets the outlet of a measured line that is written with what it feeds, "1.1 Stand
// east", where only its first word is what loudspeakers name.
func (b *builder) lineAhead(r *row) {
	for _, f := range []vocabulary.Field{vocabulary.Circuit, vocabulary.Channel} {
		s := r.own(f)
		name, rest, found := strings.Cut(tidy(s.text), " ")
		name = strings.TrimRight(name, ":,-–")
		if !s.had() || !found || rest == "" || !anyDigit(name) || b.dir.circuits[s.key()] || !b.dir.circuits[join.Key(name)] {
			continue
		}
		s.text = name
		o := &outlet{}
		if line := b.dir.lines[s.key()]; line != nil && !line.several {
			r.line, o = line, line.outlet
		} else {
			b.readChannel(o, s, r.say(vocabulary.Amplifier))
		}
		r.outlet = o
		return
	}
}
