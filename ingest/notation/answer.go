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
// "✓", "x", "none".
func AnswerOf(s string) Answer { return answers()[strings.TrimSpace(fold(Clean(s)))] }
