package ingest

import (
	"math"
	"regexp"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// How many loudspeakers a row stands for: its count, a number in front of its description, its
// tags, its total over its tap, else one.

// countCell is the cell that tells how many loudspeakers a row stands for: of the
// column of counts, or without one a description that begins with its count, as
// those of its column do.
func (r *row) countCell() seen {
	if r.t.has(vocabulary.Quantity) {
		return r.own(vocabulary.Quantity)
	}
	for _, f := range describing {
		if s := r.own(f); s.had() && s.col != nil && countAhead(s.text) > 0 && r.t.countsAhead(s.col) {
			return s
		}
	}
	return seen{}
}

// describing are the fields whose texts may begin with a count.
var describing = []vocabulary.Field{vocabulary.Describe, vocabulary.Model, vocabulary.Kind, vocabulary.Tag}

// countWritten is the one number that a row counts, 0 where it writes none.
func (b *builder) countWritten(r *row) int {
	s := r.countCell()
	if s.field != vocabulary.Quantity {
		return countAhead(s.text)
	}
	count, _ := b.pieces(s)
	n, _ := count.Exact()
	return int(n)
}

// count finds how many loudspeakers a row stands for, and returns the spares
// that are written beside the count.
func (b *builder) count(r *row, l *schedule.Loudspeaker, t *tapped) (spare int) {
	s := r.own(vocabulary.Quantity)
	if all, ok := b.countInEach(r, r.countCell()); ok {
		l.Count = all
		return 0
	}
	l.Count, spare = b.pieces(s)
	if l.Count.Had() {
		return spare
	}
	if t.count.Had() {
		l.Count = t.count
		return 0
	}
	if len(l.Tags) > 1 {
		src := l.Tag.Source
		src.How, src.Because = schedule.Computed, "the number of its tags"
		l.Count = schedule.Exactly(schedule.Pieces(len(l.Tags)), src)
		return 0
	}
	if len(t.groups) > 1 {
		return 0 // each of them has its own
	}
	if !r.t.has(vocabulary.Quantity) && b.countItems(r, l) {
		return 0
	}
	var perhaps seen // a description that begins with a number, among others that do not
	for _, f := range describing {
		if n := r.own(f); n.had() {
			if countAhead(n.text) > 1 && !sizeBehind.MatchString(n.text) && !r.t.has(vocabulary.Quantity) {
				perhaps = n
			}
			if c, ok := notation.CountInName(n.text); ok {
				l.Count = schedule.Exactly(schedule.Pieces(c), n.source)
				return 0
			}
			if c := piecesAhead(n.text); c > 0 && !r.t.has(vocabulary.Quantity) {
				l.Count = schedule.Exactly(schedule.Pieces(c), n.source)
				return 0
			}
			if c := countAhead(n.text); c > 0 && n.col != nil && r.t.countsAhead(n.col) {
				b.take(n, "quantity", itoa(c), schedule.LikelierReading, "each description begins with a count")
				l.Count = schedule.Exactly(schedule.Pieces(c), n.source)
				return 0
			}
		}
	}
	if w, ok := l.Tap.Exact(); ok && w > 0 {
		if total, ok := l.RowTotal.Exact(); ok {
			if n := math.Round(float64(total / w)); n >= 1 && math.Abs(n*float64(w)-float64(total)) < 0.005*float64(total) {
				src := l.RowTotal.Source
				src.How, src.Because = schedule.Computed, "the row’s total over its tap"
				l.Count = schedule.Exactly(schedule.Pieces(n), src)
				return 0
			}
		}
	}
	at := seen{t: r.t, source: schedule.Source{At: r.At, Written: r.Text}}
	if s.col != nil {
		at.col, at.source.At = s.col, s.source.At
	}
	switch {
	case len(l.Tags) == 1 && r.t.uniqueTag(l.Tags[0]) && !r.t.has(vocabulary.Quantity):
		src := l.Tag.Source
		src.How, src.Because = schedule.Computed, "one tag, one loudspeaker"
		l.Count = schedule.Exactly[schedule.Pieces](1, src)
	case r.kind == zoneRow, !t.had() && l.RowTotal.Had() && !l.Tag.Had() && !l.Model.Had() && !r.t.has(vocabulary.Tap):
		// a zone or a place with a load but without a count is of unknown size
	case !r.t.has(vocabulary.Quantity) || len(l.Tags) == 1:
		because := "one row, one loudspeaker"
		if r.t.has(vocabulary.Quantity) {
			because = "one tag and a blank count"
		}
		at.source.Written = ""
		if perhaps.had() {
			b.ask(perhaps.source.At, "quantity", "“"+short(perhaps.text)+"”: does the number count loudspeakers? One is counted.", "the load of this row")
		}
		b.take(at, "quantity", "1", schedule.Default, because)
		l.Count = schedule.Exactly[schedule.Pieces](1, schedule.Source{At: r.At, How: schedule.Default, Because: because})
	}
	return 0
}

// aheadOfName finds a small number in front of a word, or of a size and a word: "8
// horns", "6 - 8in ceiling", "4 6½" horns", "4x horn".
var aheadOfName = regexp.MustCompile(`(?i)^(\d{1,3})(?:\s?[x×])?\s+(?:[-–x]?\s*\d+[½¼¾]?(?:[.,/]\d+)?\s*(?:in|inch|inches|zoll|pouces?|pulgadas?|pollici|["”″]|''|cm)[ .-]+)?(?:[aà]\s+)?\pL{2}`)

// numeroAhead finds the Italian and Spanish sign for "number of" in front of a count: "n. 6 da incasso".
var numeroAhead = regexp.MustCompile(`(?i)^n[.º°]\s?(\d)`)

// countAhead is the number with which a description begins, 0 if there is none.
func countAhead(text string) int {
	text = numeroAhead.ReplaceAllString(text, "$1")
	if text == "" || text[0] < '0' || text[0] > '9' {
		return 0
	}
	m := aheadOfName.FindStringSubmatch(text)
	if m == nil {
		return 0
	}
	n, _ := strconv.Atoi(m[1])
	return n
}

// countsAhead reports whether the descriptions in a column of a table without
// counts are counted: "8 horns", "10 ceiling".
func (t *table) countsAhead(c *column) bool {
	return !t.has(vocabulary.Quantity) && t.allCountsAhead(c)
}

// allCountsAhead reports whether all cells of a column begin with a number that is
// no power or size, and not with the same one. Behind "n." they may number the rows unless one comes again.
func (t *table) allCountsAhead(c *column) bool {
	if all, known := t.countedAhead[c]; known {
		return all
	}
	if t.countedAhead == nil {
		t.countedAhead = make(map[*column]bool)
	}
	cells, counted, signs := 0, 0, 0
	numbers := make(map[int]bool)
	t.eachText(c, func(text string) {
		if strings.Trim(text, "0123456789 ") == "" {
			return // a sum of them
		}
		cells++
		if n := countAhead(text); n > 0 && !sizeBehind.MatchString(text) {
			counted++
			numbers[n] = true
			if numeroAhead.MatchString(text) {
				signs++
			}
		}
	})
	t.countedAhead[c] = cells > 1 && cells == counted && len(numbers) > 1 && (signs == 0 || len(numbers) < counted)
	return t.countedAhead[c]
}

// sizeBehind finds a unit of size behind the number ahead: "8 inch ceiling".
var sizeBehind = regexp.MustCompile(`(?i)^\d+\s+(?:in|inch|inches|zoll|pouces?|pulgadas?|pollici|cm|mm|w|watt|watts|v|volt|ohm)\b`)
