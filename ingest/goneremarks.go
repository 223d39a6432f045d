package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// stateOfSentence is the state that a remark says first of its row, with the time of it, in front of a comma, a bracket or
// a word for the occasion: "taken down when the pool went, hole plated over", "heuer im Jänner demontiert (Wasserschaden)".
// A figure, a piece, a control or some of the loudspeakers may be what it is said of, and what went may be back.
func stateOfSentence(text string) schedule.Status {
	if text == "" || countWords(text) > 3*fewWords || anyDigit(text) || vocabulary.DeviceIn(text) != vocabulary.NoDevice ||
		speaksOfSome(text) || notation.MentionsStatus(text, notation.StatusInstalled) || notation.MentionsStatus(text, notation.StatusRelocated) {
		return schedule.Installed
	}
	if backAgain.in(join.Fold(text)) && !notation.Denies(text) {
		return schedule.Installed
	}
	words := strings.Fields(text)
	for i, word := range words {
		if pieceWords.in(join.Fold(strings.Trim(word, ".,;"))) {
			return schedule.Installed
		}
		if i == 0 {
			continue
		}
		breaks := strings.HasSuffix(words[i-1], ",") || strings.HasSuffix(words[i-1], ";") || strings.HasPrefix(word, "(") || word == "-" || word == "–"
		if !breaks && !causeWords.in(join.Fold(word)) {
			continue
		}
		head := strings.Trim(strings.Join(words[:i], " "), ",; ")
		switch status := statusAlone(withoutDate(head)); {
		case status == schedule.Removed, status == schedule.Future:
			return status
		}
		return schedule.Installed
	}
	return schedule.Installed
}
