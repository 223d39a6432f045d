package ingest

import (
	"regexp"
	"strconv"

	"lineaudit/ingest/vocabulary"
)

// aheadOfPieces finds a small number with a word for pieces in front of more words: "2 no. cabinets", "3 Stk. Decke".
var aheadOfPieces = regexp.MustCompile(`(?i)^(\d{1,3})\s*(?:nos?\.?|off|pcs?\.?|pieces|st\.?|stk\.?|stück|pièces|pces?\.?|uds?\.?|unid\.?|unidades|pzas?\.?|piezas|pz\.?|pezzi|stuks?)\s+(?:of\s+|de\s+|di\s+)?(\pL{2}.*)$`)

// piecesAhead is the number of pieces with which the description of a loudspeaker begins, 0 if there is none: "2 no. cabinets"
// are two, even among descriptions that are not counted.
func piecesAhead(text string) int {
	if text == "" || text[0] < '0' || text[0] > '9' {
		return 0
	}
	m := aheadOfPieces.FindStringSubmatch(text)
	if m == nil {
		return 0
	}
	if d := vocabulary.DeviceIn(m[2]); d != vocabulary.LoudspeakerDevice && d != vocabulary.NoDevice {
		return 0
	}
	n, _ := strconv.Atoi(m[1])
	return n
}
