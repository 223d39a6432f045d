package ingest

import (
	"strings"

	"lineaudit/ingest/join"
)

var pieceWords = wordClasses["piece"]

// ofAPiece reports whether a few words on the state of a device are said of a piece of it, without which it still
// works: "Knob missing", "Abdeckung fehlt".
func ofAPiece(text string) bool {
	if countWords(text) > 3 {
		return false
	}
	for word := range strings.FieldsSeq(text) {
		if pieceWords.in(join.Fold(strings.Trim(word, ".,;"))) {
			return true
		}
	}
	return false
}
