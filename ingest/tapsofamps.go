package ingest

import (
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// tapsOfAmplifiers takes a column of taps in a list of types all of which are amplifiers for
// what these give: "Endstufe 1 | 2 x 120 W". An amplifier has no tap.
func (t *table) tapsOfAmplifiers() {
	taps, named := t.byField[vocabulary.Tap], t.byField[vocabulary.Describe]
	if t.kind != layout.Types && t.kind != layout.Mixed || len(taps) != 1 || len(named) != 1 || t.has(vocabulary.ChannelWatts) || t.has(vocabulary.FrameWatts) {
		return
	}
	amps, rated := 0, 0
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		text := r.Values[taps[0].i].Text
		switch amp := notation.SpeaksOfAmplifier(r.Values[named[0].i].Text); {
		case !amp && text != "":
			return
		case amp:
			amps++
			if _, err := notation.ParseRating(text, notation.Auto); err == nil {
				rated++
			}
		}
	}
	if amps > 0 && rated == amps {
		t.become(taps[0], vocabulary.ChannelWatts, "every row that has one is an amplifier")
	}
}
