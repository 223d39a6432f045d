package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
)

// Change orders often fill in only what changes: "Contract | Amendment" over "6 | 5 W | | 10 W" leaves the six as they were,
// and so does "no change".

// keepEarlierStates fills what the last state of such a list leaves blank with what the state before it says, aloud.
func (b *builder) keepEarlierStates() {
	for _, t := range b.tables {
		for _, c := range t.columns {
			var earlier []*column
			for _, col := range c.Earlier {
				if i := slices.IndexFunc(t.columns, func(o *column) bool { return o.Col == col }); i >= 0 {
					earlier = append(earlier, t.columns[i])
				}
			}
			if len(earlier) > 0 {
				b.keepEarlier(t, c, earlier)
			}
		}
	}
}

// keepEarlier does so for one column; those of earlier states come with the latest first.
func (b *builder) keepEarlier(t *table, c *column, earlier []*column) {
	for _, r := range t.rows {
		said := r.Values[c.i].Text
		if r.Class != layout.Device || said != "" && !notation.Unchanged(said) {
			continue
		}
		for _, e := range earlier {
			v := r.Values[e.i]
			if v.Text == "" {
				continue
			}
			v.How, v.Because = schedule.LikelierReading, "“"+short(c.Header)+"” is blank"
			if said != "" {
				v.Because = "“" + short(said) + "”"
			}
			r.Values[c.i], r.wordings[c.i] = v, r.wordings[e.i]
			b.take(r.at(c), c.Field.String(), "what was there before", schedule.LikelierReading, v.Because)
			break
		}
	}
}
