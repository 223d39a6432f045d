package ingest

import (
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

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

// goneWhen reports whether a short remark says on what occasion its row went, and nothing else: "bei Umbau demontiert",
// "during the works removed". A figure, a piece or a control in it may be what went.
func goneWhen(text string) bool {
	words := strings.Fields(strings.Trim(text, " ."))
	if n := len(words); n < 3 || n > fewWords || anyDigit(text) || !occasionWords.in(join.Fold(words[0])) || vocabulary.DeviceIn(text) != vocabulary.NoDevice {
		return false
	}
	for _, word := range words {
		if pieceWords.in(join.Fold(word)) {
			return false
		}
	}
	list := notation.Statuses(text)
	return len(list) == 1 && list[0].Sure && !list[0].Negated && list[0].Kind == string(notation.StatusRemoved) && strings.HasSuffix(strings.Join(words, " "), list[0].Text)
}
