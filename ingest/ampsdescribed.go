package ingest

import (
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// describedAmps takes what a list of outputs describes for the amplifiers, where each text is one for
// an amplifier and the outputs are numbered anew in each: "Device | Output | W" over "Power amp 1 | 1 | 120".
func (t *table) describedAmps() {
	if t.kind != layout.Amplifiers && t.kind != layout.Channels || t.has(vocabulary.Amplifier) || !t.has(vocabulary.Channel) || t.Matrix {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Describe, vocabulary.Unknown, vocabulary.Kind, vocabulary.Item} {
		for _, c := range t.byField[f] {
			amps := true
			t.eachText(c, func(text string) { amps = amps && join.HasWord(join.Amplifier, text) && countWords(text) > 1 })
			if amps && t.namesFew(c) && t.numberedAnew(c) {
				t.become(c, vocabulary.Amplifier, "it describes amplifiers, and the outputs are numbered anew in each")
				return
			}
		}
	}
}
