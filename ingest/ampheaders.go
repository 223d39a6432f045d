package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
)

// ampHeaderVolts notes the line voltage that the header over the name of an amplifier tells: "Amplifier (100 V)".
func (b *builder) ampHeaderVolts(name seen, a *schedule.Amplifier) {
	if name.col == nil {
		return
	}
	if v, _, ok := notation.LineVoltageIn(name.col.Header); ok {
		src := name.source
		src.Written, src.How = name.col.Header, schedule.FromTitle
		b.ampLineV(a, schedule.Exactly(schedule.Volts(v), src))
	}
}
