package ingest

import (
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// mostOfTap is the most W that one loudspeaker is tapped at as a rule; outputs of amplifiers give as much and more.
const mostOfTap = 60

// tapsNotRatings takes a list of outputs that counts what each row has, at a place, for one of loudspeakers where the
// header of its powers rather means taps: "Zone | Qty | W each | Output" over "Hall | 8 | 15 | 1/1".
func (t *table) tapsNotRatings() {
	watts := t.byField[vocabulary.ChannelWatts]
	if t.kind != layout.Channels || t.Matrix || len(watts) != 1 || t.has(vocabulary.Tap) || len(t.byField[vocabulary.Quantity]) != 1 ||
		!t.has(vocabulary.Zone) && !t.has(vocabulary.Room) {
		return
	}
	said := vocabulary.NewScorer().Header(watts[0].Header)
	if said.Of(vocabulary.Tap) < ratherTap || said.Of(vocabulary.Tap) < 2*said.Of(vocabulary.ChannelWatts) {
		return
	}
	counted := t.allCells(t.byField[vocabulary.Quantity][0], func(text string) bool { return text != "" })
	small := t.allCells(watts[0], func(text string) bool {
		p, err := notation.ParseWatts(text, notation.Auto)
		return text != "" && err == nil && p.W <= mostOfTap
	})
	if !counted || !small {
		return
	}
	t.kind = layout.Loudspeakers
	t.become(watts[0], vocabulary.Tap, "its header means taps, and each row counts what it has")
}

// ratherTap is the score from which a header means taps where it is twice what it scores as a rating of outputs.
const ratherTap = 0.65
