package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// withoutRemark cuts a remark with other powers off what a note rates an amplifier at by an
// equals sign: "V1 = 100 W, too much on it now (110 W), with the new taps 68 W". A remark
// that names an output, a place or another amplifier goes on about the rating.
func (b *builder) withoutRemark(text string) string {
	name, rest, ok := strings.Cut(text, "=")
	if !ok || strings.Contains(rest, "=") || !b.dir.ampRefs[join.Key(name)] && !b.namesAmp(tidy(name)) {
		return text
	}
	rest = strings.TrimLeft(rest, " ")
	m := wattsIn.FindStringIndex(rest)
	if m == nil || m[0] != 0 {
		return text
	}
	tail := rest[m[1]:]
	if tail == "" || !strings.ContainsAny(tail[:1], ",;.") || !figureOfWatts.MatchString(tail) {
		return text
	}
	folded := join.Fold(tail)
	speaks := outputWords.in(folded) || outputsWords.in(folded) || notation.SpeaksOfAmplifier(tail) || len(b.placesAmong(seen{text: tail, field: vocabulary.Notes})) > 0
	if speaks || slices.ContainsFunc(wordsAt(tail), func(w [2]int) bool {
		word := tail[w[0]:w[1]]
		return b.dir.ampRefs[join.Key(word)] || b.namesAmp(word) || b.places.lines[join.Key(word)]
	}) {
		return text
	}
	return text[:len(text)-len(tail)]
}
