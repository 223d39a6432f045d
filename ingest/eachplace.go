package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// One row may stand for several places with as many loudspeakers in each:
// "Cabins 1-4 | 2 per cabin".

// countInEach is such a count, of all places together; ok is false where the
// count says nothing of each, or says so in every row and is a unit.
func (b *builder) countInEach(r *row, s seen) (count schedule.Quantity[schedule.Pieces], ok bool) {
	if !s.had() || isWhole(s.text) {
		return count, false
	}
	each, ok := notation.CountEach(s.text)
	if !ok || s.col == nil || r.t.allCountEach(s.col) {
		return count, false
	}
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Zone, vocabulary.Describe, vocabulary.Tag} {
		place := r.own(f)
		if !place.had() || !anyDigit(place.text) {
			continue
		}
		tags, err := notation.ParseTags(place.text)
		if err != nil || len(tags.List) < 2 {
			continue
		}
		src := s.source
		src.How, src.Because = schedule.Computed, itoa(each)+" in each of "+itoa(len(tags.List))+" places"
		b.take(s, "quantity", itoa(each*len(tags.List)), schedule.LikelierReading, src.Because)
		return schedule.Exactly(schedule.Pieces(each*len(tags.List)), src), true
	}
	return count, false
}

// allCountEach reports whether most cells of a column say "each": then it is their unit.
func (t *table) allCountEach(c *column) bool {
	if all, known := t.eachColumns[c]; known {
		return all
	}
	each, cells := 0, 0
	for _, r := range t.rows {
		if s := r.at(c); r.Class == layout.Device && s.had() {
			cells++
			if _, ok := notation.CountEach(s.text); ok {
				each++
			}
		}
	}
	if t.eachColumns == nil {
		t.eachColumns = make(map[*column]bool)
	}
	t.eachColumns[c] = 2*each > cells && cells > 2
	return t.eachColumns[c]
}
