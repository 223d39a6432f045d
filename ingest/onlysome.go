package ingest

import (
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// askOnlySome asks about remarks that speak of fewer loudspeakers than a row counts:
// "only 1 connected", "nur 1 angeschlossen".
func (b *builder) askOnlySome(r *row, l *schedule.Loudspeaker) {
	n, ok := l.Count.Exact()
	if !ok || n < 2 || l.Status != schedule.Installed || !r.t.has(vocabulary.Notes) {
		return
	}
	for s := range r.every(vocabulary.Notes) {
		if some := onlySome(s.text); some > 0 && some < int(n) {
			b.ask(s.source.At, "quantity", "“"+short(s.text)+"”: how many of the "+plain(float64(n))+" load the line? All are counted.", "the load of this row")
		}
	}
}

// onlySome is the number behind a word for "only" in a short text, 0 if there is none.
func onlySome(text string) int {
	if !anyDigit(text) || countWords(text) > mostOfState {
		return 0
	}
	words := strings.Fields(text)
	for i := 0; i+1 < len(words); i++ {
		if n, err := strconv.Atoi(words[i+1]); err == nil && n > 0 && slices.Contains(onlyWords, join.Fold(words[i])) {
			return n
		}
	}
	return 0
}
