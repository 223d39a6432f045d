package ingest

import (
	"strings"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// ratingsOfOutputs takes the ratings of a list of outputs for those of its outputs, though it names controls beside some:
// "Output | Zone | Maximum power | Attenuator" over "1 | Hall | 60 W | " and "2 | Gym | 120 W | AT1, 60 W". Rows without
// a control have a rating, or the controls say their own.
func (t *table) ratingsOfOutputs() {
	cols, outputs, controls := t.byField[vocabulary.ControlWatts], t.byField[vocabulary.Channel], t.byField[vocabulary.Control]
	if t.kind != layout.Controls || t.has(vocabulary.ChannelWatts) || len(cols) != 1 || len(outputs) != 1 || len(controls) != 1 || saysControl(cols[0]) {
		return
	}
	rated, without, own := 0, 0, 0
	for i := range t.Records {
		r := &t.Records[i]
		control := r.Values[controls[0].i].Text
		if r.Class != layout.Device || len(notation.PowersIn(r.Values[cols[0].i].Text, notation.Auto)) != 1 && !isWhole(strings.TrimSpace(r.Values[cols[0].i].Text)) {
			continue
		}
		rated++
		if _, missing := notation.Missing(control); missing || control == "" {
			without++
		} else if len(notation.PowersIn(control, notation.Auto)) == 1 {
			own++
		}
	}
	if rated >= 2 && (without+own == rated || 2*without > rated) {
		t.become(cols[0], vocabulary.ChannelWatts, "outputs without a control have it")
		t.kind = layout.Channels
	}
}
