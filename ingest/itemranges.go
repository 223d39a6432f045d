package ingest

import (
	"regexp"
	"strconv"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// A list that numbers its loudspeakers may put several of them in one row: "5-8"
// between 4 and 9, "1.5 - 1.8" behind 1.4.

// itemRange matches the numbers from one to another, with what both begin with.
var itemRange = regexp.MustCompile(`^((?:\d+[./])*)(\d{1,3})\s*(?:-|–|—|\.\.\.?|…|to|bis|à|a|al|t/m|tot|thru)\s*((?:\d+[./])*)(\d{1,3})$`)

// countOfItems is how many loudspeakers the numbers of a row stand for, where
// they go on behind those of the row before; 0 if they are no such range.
func (b *builder) countOfItems(r *row) int {
	s := r.own(vocabulary.Item)
	if !s.had() {
		return 0
	}
	m := itemRange.FindStringSubmatch(s.text)
	if m == nil || m[3] != "" && m[3] != m[1] {
		return 0
	}
	from, _ := strconv.Atoi(m[2])
	to, _ := strconv.Atoi(m[4])
	if to <= from {
		return 0
	}
	if before := r.t.itemNumbers()[m[1]+strconv.Itoa(from-1)]; !before && from > 1 {
		return 0
	}
	return to - from + 1
}

// itemNumbers are the numbers that the items of a table name, the ends of ranges too.
func (t *table) itemNumbers() map[string]bool {
	if t.numbers == nil {
		t.numbers = make(map[string]bool)
		for _, r := range t.rows {
			s := r.own(vocabulary.Item)
			if !s.had() {
				continue
			}
			t.numbers[s.text] = true
			if m := itemRange.FindStringSubmatch(s.text); m != nil {
				t.numbers[m[1]+m[4]] = true
			}
		}
	}
	return t.numbers
}

// countItems takes the count of a row from the range of its numbers.
func (b *builder) countItems(r *row, l *schedule.Loudspeaker) bool {
	n := b.countOfItems(r)
	if n == 0 {
		return false
	}
	s := r.own(vocabulary.Item)
	src := s.source
	src.How, src.Because = schedule.Computed, "its numbers"
	b.take(s, "quantity", itoa(n), schedule.LikelierReading, "the numbers of the row are as many loudspeakers")
	l.Count = schedule.Exactly(schedule.Pieces(n), src)
	return true
}
