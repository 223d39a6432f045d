package ingest

import (
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A list that numbers its loudspeakers may put several of them in one row: "5-8"
// between 4 and 9, "1.5 - 1.8" behind 1.4.

// countItems takes the count of a row from the range of its numbers, where they go
// on behind those of another row, and reports whether it could.
func (b *builder) countItems(r *row, l *schedule.Loudspeaker) bool {
	s := r.own(vocabulary.Item)
	list := rangeOfItems(s.text)
	if len(list) < 2 {
		return false
	}
	stem := strings.TrimRight(list[0], "0123456789")
	from, err := strconv.Atoi(list[0][len(stem):])
	if err != nil || from > 1 && !r.t.itemNumbers()[stem+strconv.Itoa(from-1)] {
		return false
	}
	src := s.source
	src.How, src.Because = schedule.Computed, "its numbers"
	b.take(s, "quantity", itoa(len(list)), schedule.LikelierReading, "the numbers of the row are as many loudspeakers")
	l.Count = schedule.Exactly(schedule.Pieces(len(list)), src)
	return true
}

// rangeOfItems are the numbers that a range of them stands for; nil for other texts.
func rangeOfItems(text string) []string {
	if text == "" || text[0] < '0' || text[0] > '9' || isWhole(text) {
		return nil
	}
	tags, err := notation.ParseTags(text)
	if err != nil || !tags.Ranged {
		return nil
	}
	return tags.List
}

// itemNumbers are the numbers that the items of a table name, those in ranges too.
func (t *table) itemNumbers() map[string]bool {
	if t.numbers == nil {
		t.numbers = make(map[string]bool)
		for _, r := range t.rows {
			if s := r.own(vocabulary.Item); s.had() {
				t.numbers[s.text] = true
				for _, n := range rangeOfItems(s.text) {
					t.numbers[n] = true
				}
			}
		}
	}
	return t.numbers
}
