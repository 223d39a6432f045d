package ingest

import (
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Remarks on a row that speak of other pieces than all that it counts.

// anotherSpare reports whether the remark on a row that names its tap and what feeds it
// speaks of a spare loudspeaker, which must be another: "spare horn in store", "spare one in the cupboard".
func anotherSpare(r *row, text string) bool {
	fed := r.own(vocabulary.Amplifier).had() || r.own(vocabulary.Channel).had() || r.own(vocabulary.Circuit).had()
	if !fed || !r.own(vocabulary.Tap).had() {
		return false
	}
	list := notation.Statuses(text)
	if len(list) == 0 || list[0].Kind != string(notation.StatusSpare) || !strings.HasPrefix(join.Fold(text), join.Fold(list[0].Text)+" ") {
		return false
	}
	next, _, _ := strings.Cut(strings.TrimSpace(text[len(list[0].Text):]), " ")
	_, err := notation.ParseQuantity(next, notation.Auto)
	return kindInWords(text) == loudspeakerRow || err == nil
}

// partOfRow reports whether a remark begins with a number smaller than the row counts and says of
// these alone that they are not connected, spare or gone: "una sin conectar" beside 4.
func partOfRow(r *row, text string) bool {
	count := countIn(r)
	if count < 2 {
		return false
	}
	first, rest, found := strings.Cut(tidy(text), " ")
	n, err := notation.ParseQuantity(first, notation.Auto)
	if !found || err != nil || n.Count < 1 || n.Count >= count {
		return false
	}
	for _, m := range notation.Statuses(rest) {
		if _, known := statuses[m.Kind]; known && m.Sure && !m.Negated && m.Kind != string(notation.StatusFaulty) {
			return true
		}
	}
	return false
}
