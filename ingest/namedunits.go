package ingest

import (
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
)

// unitSentence reads what a text that begins with a word for a central unit and its name says of
// it, as of an amplifier: "Central CM1 de 4 salidas, 240 W en total", "Zentrale Z1: 2 Linien je 60 W".
// Nothing where it tells of no outputs and watts.
func unitSentence(text string, at schedule.Ref) []said {
	words := strings.Fields(text)
	for n := min(mostUnitWords, len(words)-2); n > 0; n-- {
		name := strings.Trim(words[n], ".,:;()")
		if !isUnit(strings.Join(words[:n], " ")) || !anyDigit(name) || !strings.ContainsFunc(name, isLetter) {
			continue
		}
		list := sentence("amplifier "+strings.Join(words[n:], " "), at)
		if len(list) != 1 || join.Key(list[0].Name) != join.Key(name) || max(list[0].Outputs, len(list[0].Ways)) == 0 || list[0].W+list[0].TotalW == 0 && !waysRated(&list[0]) {
			return nil
		}
		list[0].source.Written = text
		return list
	}
	return nil
}

// mostUnitWords is the most words that call a central unit, with an article in front.
const mostUnitWords = 4

// isUnit reports whether a text is a word for a central unit, with or without an article.
func isUnit(text string) bool {
	folded := join.Fold(text)
	if w := articleWords.ahead(folded); w != "" {
		folded = strings.TrimSpace(folded[len(w):])
	}
	return folded != "" && frameWords.ahead(folded) == folded
}
