package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// NumbersSpeakers reports whether a header speaks of the numbers that loudspeakers have, "for speaker no.", rather
// than of how many there are, "no. of speakers".
func NumbersSpeakers(header string) bool {
	list := vocabulary.NewScorer().Concepts(header)
	speaker, number := slices.Index(list, "speaker"), slices.Index(list, "number")
	return speaker >= 0 && number > speaker && !slices.Contains(list, "count")
}

// numbersBehindControls takes a column of numbers of loudspeakers for items where the first column names another
// control in each row: "Control | for speaker no. | W" over "K1 | 11 | 6 W". It reports whether it does; the
// table lists controls then.
func numbersBehindControls(cols []*heading, base []worth) bool {
	first := cols[0]
	if first.top != vocabulary.Control || first.score < 0.8 || first.cells.cells < max(2, first.rows) || first.cells.distinct < first.cells.cells {
		return false
	}
	for i, h := range cols[1:] {
		if h.forced == vocabulary.Unknown && h.cells.cells > 0 && NumbersSpeakers(h.words) {
			base[i+1][vocabulary.Item] = max(base[i+1][vocabulary.Item], sureWords)
			for _, f := range []vocabulary.Field{vocabulary.Quantity, vocabulary.Tag} {
				base[i+1][f] = barred
			}
			return true
		}
	}
	return false
}
