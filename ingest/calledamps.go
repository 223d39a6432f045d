package ingest

import (
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A list may tell what its loudspeakers hang on below a header that nothing is known of: "Slung off" above "amp stables".

// mostOfAmpName is the most words of the name of an amplifier in a cell.
const mostOfAmpName = 4

// callsAmplifiers reports whether all cells of a column whose header was not understood are names of amplifiers
// with a word for one, of which one comes again.
func (t *table) callsAmplifiers(c *column) bool {
	if c.Field != vocabulary.Unknown && (c.Field != vocabulary.Notes || c.Confidence >= sureHeader) {
		return false
	}
	cells, called := 0, 0
	names := make(map[string]bool)
	t.eachText(c, func(text string) {
		cells++
		if notation.SpeaksOfAmplifier(text) && countWords(text) <= mostOfAmpName && !figureOfWatts.MatchString(text) {
			called++
			names[text] = true
		}
	})
	return cells > 2 && called == cells && len(names) < cells
}
