package ingest

import (
	"slices"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// zoneAmplifiers takes the power beside the amplifier of each zone for what the amplifier gives, in a list of zones
// that counts nothing where another list sets the taps: "Zone | Amplifier | Power (W)".
func zoneAmplifiers(tables []*table) {
	if !slices.ContainsFunc(tables, func(t *table) bool {
		return t.kind == layout.Loudspeakers && t.has(vocabulary.Tap) && t.has(vocabulary.Quantity)
	}) {
		return
	}
	for _, t := range tables {
		amps, watts := t.byField[vocabulary.Amplifier], t.byField[vocabulary.Tap]
		if t.kind != layout.Zones || len(amps) != 1 || len(watts) != 1 || watts[0].i != amps[0].i+1 || t.has(vocabulary.Quantity) || t.has(vocabulary.ChannelWatts) || t.has(vocabulary.FrameWatts) {
			continue
		}
		if !slices.Contains(vocabulary.NewScorer().Concepts(watts[0].Header), "tap") {
			t.become(watts[0], vocabulary.ChannelWatts, "beside the amplifier of each zone, and another list sets the taps")
		}
	}
}
