package ingest

import (
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// Bills in which only some descriptions end with a place: "Ceiling loudspeaker tapped at 3 W, classroom 1" and,
// further down, "Volume control VC1, 24 W, classroom 1".

// servedEnding are the rows of loudspeakers of a bill whose descriptions end with the place that ends the
// control's: some rows of its chapter, not all; nil where rows have a place in a column of their own.
func (b *builder) servedEnding(r *row) *service {
	if !r.t.has(vocabulary.Describe) || r.own(vocabulary.Room).had() || r.own(vocabulary.Zone).had() {
		return nil
	}
	d := r.own(vocabulary.Describe)
	place := join.Key(layout.PlaceAtEnd(d.text))
	if place == "" {
		return nil
	}
	if r.t.endings == nil {
		r.t.endings = make(map[string][]*row)
		for _, o := range r.t.rows {
			if o.kind != loudspeakerRow || o.out != "" || o.own(vocabulary.Room).had() {
				continue
			}
			if k := join.Key(layout.PlaceAtEnd(o.own(vocabulary.Describe).text)); k != "" {
				r.t.endings[k] = append(r.t.endings[k], o)
			}
		}
	}
	v := service{at: d}
	for _, o := range r.t.endings[place] {
		if o.zoneText().key() == r.zoneText().key() {
			v.rows = append(v.rows, o)
		}
	}
	if len(v.rows) == 0 || len(r.t.endings) == 1 {
		return nil
	}
	return &v
}
