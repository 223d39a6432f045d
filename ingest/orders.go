package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// A sheet may list what is to be bought for the work: "Order list", "Ersatzteile". What
// stands there hangs nowhere yet.

// ordersAside leaves out the rows of such a list where it has no column of taps or outputs
// and another table of the job lists loudspeakers with theirs.
func (b *builder) ordersAside() {
	listed := func(t *table) bool {
		return (t.kind == layout.Loudspeakers || t.kind == layout.Mixed) && t.stated(vocabulary.Tap)
	}
	for _, t := range b.tables {
		if !orderingWords.in(join.Fold(t.Sheet)) || t.stated(vocabulary.Tap) || t.has(vocabulary.Channel) || t.has(vocabulary.Amplifier) || !t.has(vocabulary.Quantity) {
			continue
		}
		if !slices.ContainsFunc(b.tables, func(o *table) bool { return o.Sheet != t.Sheet && listed(o) }) {
			continue
		}
		for _, r := range t.rows {
			if r.out == "" && r.Class == layout.Device {
				r.out, r.reason = schedule.EmptyRow, "a list of what is to be ordered"
			}
		}
	}
}

// stated reports whether a table has a column of a field under a header of its own, rather
// than one made of what its cells say in words.
func (t *table) stated(f vocabulary.Field) bool {
	return slices.ContainsFunc(t.byField[f], func(c *column) bool { return c.Col > 0 })
}
