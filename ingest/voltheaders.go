package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// voltsInHeaders hands to do what headers say of the lines of a list of what feeds them: "100 V line to".
func (t *table) voltsInHeaders(do func(seen)) {
	if t.kind != layout.Amplifiers && t.kind != layout.Channels && t.kind != layout.Cables || t.outdated || t.SheetHidden {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Zone, vocabulary.To, vocabulary.Room, vocabulary.Circuit, vocabulary.Channel} {
		for _, c := range t.byField[f] {
			do(seen{text: c.Header, source: schedule.Source{At: c.At, Written: c.Header}})
		}
	}
}
