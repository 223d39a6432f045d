package ingest

import (
	"fmt"
	"slices"

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
		b.ampsPricedAgain(t)
	}
}

// ampsPricedAgain makes types of the amplifiers and controls of a sheet of prices where another table names these
// with their ratings.
func (b *builder) ampsPricedAgain(prices *table) {
	amps, controls := false, false
	for _, t := range b.tables {
		if t == prices || t.has(vocabulary.Price) {
			continue
		}
		amps = amps || t.has(vocabulary.Amplifier) && (t.has(vocabulary.ChannelWatts) || t.has(vocabulary.FrameWatts) || t.has(vocabulary.RatedWatts))
		controls = controls || slices.ContainsFunc(t.rows, func(r *row) bool { return r.kind == controlRow && r.out == "" })
	}
	for _, r := range prices.rows {
		if r.kind == amplifierRow && amps || r.kind == controlRow && controls {
			r.kind = typeRow
		}
	}
}

// counted is how many loudspeakers the rows of a table count, and the first of these counts. Where rows speak of
// loudspeakers, others that count hours and feet do not matter.
func (t *table) counted() (n int, first seen) {
	worded := slices.ContainsFunc(t.rows, (*row).inWords)
	for _, r := range t.rows {
		if r.kind != loudspeakerRow || r.out != "" || worded && t.has(vocabulary.Price) && !r.inWords() {
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

// inWords reports whether a row calls its device a loudspeaker.
func (r *row) inWords() bool {
	return slices.ContainsFunc([]vocabulary.Field{vocabulary.Describe, vocabulary.Item, vocabulary.Kind, vocabulary.Model}, func(f vocabulary.Field) bool {
		return vocabulary.DeviceIn(r.own(f).text) == vocabulary.LoudspeakerDevice
	})
}
