package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// titledCables enters the cables that titles of sections end in, "Output 1 - Classrooms | 16 AWG, 340 ft to the last
// loudspeaker": each is that of the whole line of the loudspeakers below its title.
func (b *builder) titledCables() {
	cables := make(map[schedule.Ref]*schedule.Cable) // by the place of the title; nil where it was not understood
	for _, l := range b.job.Loudspeakers {
		f := cableInTitle(b.origin[l])
		if f == nil || l.Run != nil || l.Status != schedule.Installed {
			continue
		}
		c, met := cables[f.At]
		if !met {
			c = b.titledCable(f)
			cables[f.At] = c
			if c != nil {
				c.Zone, c.Channel = l.Zone, l.Channel
				b.enterCable(c)
			}
		}
		if c == nil {
			continue
		}
		l.Run = c
		if c.Zone != l.Zone {
			c.Zone = nil
		}
		if c.Channel != l.Channel {
			c.Channel = nil
		}
	}
}

// cableInTitle is the cable of the innermost title in force for a row, nil if none has one.
func cableInTitle(r *row) *layout.Fact {
	if r == nil {
		return nil
	}
	for i := len(r.Sections) - 1; i >= 0; i-- {
		if f := &r.Sections[i]; f.Key == layout.TitledCable {
			return f
		}
	}
	return nil
}

// titledCable reads such a cable; nil where its length is not understood.
func (b *builder) titledCable(f *layout.Fact) *schedule.Cable {
	c := &schedule.Cable{At: f.At, Reach: schedule.WholeLine}
	s := seen{text: f.Text, field: vocabulary.Gauge, source: schedule.Source{At: f.At, Written: f.Text, How: schedule.FromTitle}}
	for _, part := range cableParts.Split(f.Text, -1) {
		if _, rest, ok := notation.ConductorIn(part, notation.Auto); ok {
			size := s
			size.text = part
			b.readConductor(c, size, vocabulary.Gauge)
			part = rest
		}
		if text, ok := notation.LengthAhead(part); ok {
			length := s
			length.text, length.field = text, vocabulary.Length
			if l, ok := b.metres(length); ok {
				c.Length = l.Quantity
			}
		}
	}
	if !c.Length.Had() {
		return nil
	}
	return c
}
