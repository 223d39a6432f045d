package ingest

import (
	"regexp"
	"slices"
	"strconv"

	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// aheadOfWord finds a small number in front of a word, perhaps one for pieces, and of more words: "2 no. cabinets".
var aheadOfWord = regexp.MustCompile(`^(\d{1,3})\s*(\pL+)\.?\s+(?:(?:of|de|di)\s+)?(\pL{2}.*)$`)

// piecesAhead is the number of pieces with which the description of a loudspeaker begins, 0 if there is none: "2 no. cabinets"
// are two, even among descriptions that are not counted.
func piecesAhead(text string) int {
	if text == "" || text[0] < '0' || text[0] > '9' {
		return 0
	}
	m := aheadOfWord.FindStringSubmatch(text)
	if m == nil || !slices.Contains(piecesWords, join.Fold(m[2])) {
		return 0
	}
	if d := vocabulary.DeviceIn(m[3]); d != vocabulary.LoudspeakerDevice && d != vocabulary.NoDevice {
		return 0
	}
	n, _ := strconv.Atoi(m[1])
	return n
}
