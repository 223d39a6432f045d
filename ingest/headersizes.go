package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// sizeInHeader gives a cable the size of its conductors that the header over its length tells: "Wire 16/2 (ft)",
// "Kabel 2x1,5 (m)".
func (b *builder) sizeInHeader(c *schedule.Cable, length seen) bool {
	if length.col == nil {
		return false
	}
	size, _, ok := notation.ConductorIn(length.col.Header, notation.Auto)
	if !ok || size.AWG == nil && size.AreaMM2 == 0 {
		return false
	}
	length.text, length.cell = size.String(), nil
	length.source.Written, length.source.How = length.col.Header, schedule.FromTitle
	return b.readConductor(c, length, vocabulary.Gauge)
}
