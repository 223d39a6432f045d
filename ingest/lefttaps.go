package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// Lists of taps that were found, drawn and left: where nothing says how a tap was left, what stands in the other
// columns is not what it is set to.

// askNotLeft asks for the tap of an installed loudspeaker that is told at other times alone.
func (b *builder) askNotLeft(r *row, l *schedule.Loudspeaker) {
	if l.Tap.Had() || l.RowTotal.Had() || l.LowImpedance.Had() || l.Status != schedule.Installed || len(r.t.byField[vocabulary.Tap]) != 1 {
		return
	}
	for _, c := range r.t.byField[vocabulary.Ignored] {
		if s := r.at(c); c.Unit == "W" && s.had() {
			left := r.t.byField[vocabulary.Tap][0]
			s.field = vocabulary.Tap
			b.askCell(s, "“"+short(s.text)+"” below “"+short(c.Header)+"” and nothing below “"+short(left.Header)+"”: what is the tap set to?", "the load of this row")
			return
		}
	}
}
