package ingest

import (
	"slices"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// measuredOutputs takes a record of measurements for a list of outputs where it says what each of them gives, "Line |
// Amplifier | Rating | Load | Measured", and nothing else of the book lists loudspeakers.
func measuredOutputs(tables []*table) {
	if slices.ContainsFunc(tables, func(t *table) bool {
		return t.kind == layout.Loudspeakers || t.kind == layout.Mixed || t.kind == layout.Zones || t.kind == layout.Channels || t.kind == layout.Amplifiers
	}) {
		return
	}
	for _, t := range tables {
		if t.kind != layout.Measurements || !t.has(vocabulary.Amplifier) && !t.has(vocabulary.Channel) || t.has(vocabulary.Control) || t.has(vocabulary.Tag) {
			continue
		}
		if cols := t.byField[vocabulary.RatedWatts]; len(cols) == 1 && !t.has(vocabulary.ChannelWatts) && !t.has(vocabulary.FrameWatts) {
			t.become(cols[0], vocabulary.ChannelWatts, "a list of outputs")
		}
		if t.has(vocabulary.ChannelWatts) || t.has(vocabulary.FrameWatts) {
			t.kind = layout.Channels
		}
	}
}
