package notation

import (
	"strings"
	"sync"
)

// An Answer is what a whole cell says of whether a thing is there.
type Answer uint8

// The answers. A cell that says something else has none.
const (
	NoAnswer Answer = iota
	Yes
	No
)

// answers are the cells that mean yes or no, folded: marks and words of the
// vocabulary in all languages.
var answers = sync.OnceValue(func() map[string]Answer {
	out := map[string]Answer{"✓": Yes, "✔": Yes, "√": Yes, "•": Yes, "●": Yes, "✗": No, "✘": No}
	for _, row := range vocabularyRows("answers.csv") {
		answer := Yes
		if row[1] == "no" {
			answer = No
		}
		for text := range strings.SplitSeq(row[3], "|") {
			out[fold(text)] = answer
		}
	}
	return out
})

// AnswerOf reads a whole cell that says yes or no in a word or by a mark: "ja",
// "✓", "x", "none", in the words of two languages, "ja / oui", or that there is no
// control: "sin regulador", "direct, no VC".
func AnswerOf(s string) Answer { return knownAnswers.Of(s, 0) }

func answerOf(s string) Answer {
	text := strings.TrimSpace(fold(Clean(s)))
	if a := answers()[text]; a != NoAnswer {
		return a
	}
	if deniesControl(text) {
		return No
	}
	one, other, two := strings.Cut(text, "/")
	if one, other = strings.TrimSpace(one), strings.TrimSpace(other); !two || len(one) < 2 || len(other) < 2 {
		return NoAnswer // "y/n", "1/1"
	}
	if a := answers()[one]; a == answers()[other] {
		return a
	}
	return NoAnswer
}

// deniesControl reports whether every part of a text says no: by a word for it
// alone or in front of words for a control.
func deniesControl(text string) bool {
	controls := false
	for part := range strings.SplitSeq(text, ",") {
		part = strings.TrimSpace(part)
		tokens := lex(part, Point)
		switch {
		case answers()[part] == No:
		case len(tokens) > 1 && isNegation(tokens[0]) && isControlWord(string([]rune(Clean(part))[tokens[1].at:])):
			controls = true
		default:
			return false
		}
	}
	return controls
}
