package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// controlHeaders notes the ratings that the headers of columns of controls give all
// that are named below them: "Control (6 W each)".
func (b *builder) controlHeaders() {
	for _, t := range b.tables {
		for _, c := range t.byField[vocabulary.Control] {
			powers := notation.PowersIn(c.Header, notation.Auto)
			if len(powers) != 1 {
				continue
			}
			b.controlsAlike(seen{t: t, col: c, field: vocabulary.ControlWatts, text: plain(powers[0].W) + " W",
				source: schedule.Source{At: c.At, Written: c.Header, How: schedule.FromTitle, Because: "said in the header"}})
		}
	}
}
