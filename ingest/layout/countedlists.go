package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// Lists by output, line or test may count the loudspeakers of each with their watts in a column
// of its own: "Speakers on line" over "16 x 10 W" and "10 x 5 W + 2 x 2.5 W". The list is then one of loudspeakers.

// countedLoudspeakers finds the column of such a list, -1 if there is none: nearly all of its cells count with
// watts, and its header speaks of loudspeakers or their number, or of nothing that gives or carries a power.
func countedLoudspeakers(cols []*heading) int {
	s, at := vocabulary.NewScorer(), -1
	for i, h := range cols {
		if h.forced != vocabulary.Unknown || h.cells.cells == 0 || h.cells.share(lookGauge|lookCableWord) > 0 {
			continue
		}
		counted := 0
		for _, t := range h.cells.texts {
			if countsInWords.Of(t, 0) {
				counted++
			}
		}
		if 10*counted < 8*h.cells.cells {
			continue
		}
		speaks := vocabulary.DeviceIn(h.words) == vocabulary.LoudspeakerDevice || slices.Contains(s.Concepts(h.words), "speaker") || h.score >= headerScore && h.top == vocabulary.Quantity
		if !speaks || at >= 0 {
			return -1
		}
		at = i
	}
	return at
}

// readCounts decides a table anew with such a column as one of taps, each with its count in front,
// where its loudspeakers would be lost: in a list of other things, or under another field.
func readCounts(cols []*heading, kinds map[Kind]float64, dec decision) decision {
	i := countedLoudspeakers(cols)
	if i < 0 || i >= len(dec.fields) || (dec.kind == Loudspeakers || dec.kind == Zones || dec.kind == Mixed) && (worded[dec.fields[i]] && dec.fields[i] != vocabulary.Unknown || dec.fields[i] == vocabulary.Tap) {
		return dec
	}
	if at := slices.Index(dec.fields, vocabulary.Tap); at >= 0 && at != i {
		return dec // the taps stand beside it
	}
	cols[i].forced, cols[i].aside = vocabulary.Tap, "counts of loudspeakers with the watts of each"
	kinds[Loudspeakers] += countedFit
	return decide(cols, kinds, findProducts(cols))
}

// countedFit is how much such a column speaks for a list of loudspeakers: more than all that stands beside it.
const countedFit = 2
