package ingest

import (
	"fmt"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// A quotation prices by article what other sheets of its book list place by place: "Ceiling loudspeakers | 18 |
// 38.50 | 693.00". What it prices is there already, and counts once.

// mostPriced is how many times the loudspeakers listed by place a sheet of prices may count and still be about those.
const mostPriced = 2

// pricesCountAgain makes types of the loudspeakers that sheets of prices count and give no place, where other tables
// of the job list theirs with places and taps. Counts that differ are told.
func (b *builder) pricesCountAgain(lists []*table, shapes []listShape) {
	listed := 0
	for i, t := range lists {
		if !shapes[i].unplaced && !t.has(vocabulary.Price) && (t.has(vocabulary.Tap) || t.has(vocabulary.TotalWatts)) {
			n, _ := t.counted()
			listed += n
		}
	}
	for i, t := range lists {
		if !shapes[i].unplaced || !t.has(vocabulary.Price) || !t.has(vocabulary.Quantity) {
			continue
		}
		priced, first := t.counted()
		if priced == 0 || priced > mostPriced*listed {
			continue
		}
		if priced != listed {
			b.take(first, "loudspeakers", "those of the other lists", schedule.LikelierReading,
				fmt.Sprintf("a sheet of prices counts %d, the lists by place %d", priced, listed))
		}
		demote(t, typeRow)
	}
}

// counted is how many loudspeakers the rows of a table count, and the first of these counts.
func (t *table) counted() (n int, first seen) {
	for _, r := range t.rows {
		if r.kind != loudspeakerRow || r.out != "" {
			continue
		}
		if s := r.own(vocabulary.Quantity); !s.had() {
			n++
		} else if n += countIn(r); !first.had() {
			first = s
		}
	}
	return n, first
}
