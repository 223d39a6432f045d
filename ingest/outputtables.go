package ingest

import (
	"slices"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// zonesAsOutputs takes a column of zones for one of outputs where each of its
// cells is the word and number of an output ("CH 1"), beside a column of
// amplifiers in a table that has no other for their outputs.
func (b *builder) zonesAsOutputs() {
	for _, t := range b.tables {
		cols := t.byField[vocabulary.Zone]
		if len(cols) != 1 || !t.has(vocabulary.Amplifier) || t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) {
			continue
		}
		devices := 0
		other := slices.ContainsFunc(t.rows, func(r *row) bool {
			s := r.at(cols[0])
			if r.Class != layout.Device || !s.had() {
				return false
			}
			devices++
			c := b.channelRef(s.text)
			return !c.ok || c.ref.Amplifier != "" || len(c.ref.Channels) == 0 || notation.KeyOf(s.text).Kind != notation.KeyChannel
		})
		if devices > 1 && !other {
			t.become(cols[0], vocabulary.Channel, "its cells name outputs")
		}
	}
}
