package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// servesNotPlaces takes a column of what devices serve, as "Serves" in a register whose amplifiers and controls alone
// fill it, for remarks: its loudspeakers are where another column says, and few rows have anything in this one.
func (t *table) servesNotPlaces() {
	if t.kind != layout.Loudspeakers && t.kind != layout.Mixed {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone} {
		for _, c := range slices.Clone(t.byField[f]) {
			if t.headsServing(c) && t.fewBeside(c) {
				t.notFromAbove(c)
				t.become(c, vocabulary.Notes, "few rows say what they serve, and another column where they are")
			}
		}
	}
}

// headsServing reports whether the header of a column begins with a word for serving: "Serves", "Dessert", "Sirve a".
func (t *table) headsServing(c *column) bool {
	words := strings.Fields(join.Fold(c.Header))
	return len(words) > 0 && slices.Contains(servesWords, words[0])
}

// fewBeside reports whether a column has a text in fewer than half as many rows as another column of places.
func (t *table) fewBeside(c *column) bool {
	few := t.filled(c)
	for _, f := range []vocabulary.Field{vocabulary.Site, vocabulary.Room, vocabulary.Zone} {
		if slices.ContainsFunc(t.byField[f], func(o *column) bool { return o != c && 2*few < t.filled(o) }) {
			return true
		}
	}
	return false
}

// filled is how many devices have a text of their own in a column, not one from above.
func (t *table) filled(c *column) int {
	n := 0
	for i := range t.Records {
		if v := &t.Records[i].Values[c.i]; t.Records[i].Class == layout.Device && v.Text != "" && v.How != schedule.CarriedDown {
			n++
		}
	}
	return n
}

// notFromAbove takes what was carried down a column out of it.
func (t *table) notFromAbove(c *column) {
	for i := range t.Records {
		if v := &t.Records[i].Values[c.i]; v.How == schedule.CarriedDown {
			*v = layout.Value{At: t.Records[i].At}
		}
	}
}
