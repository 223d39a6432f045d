package ingest

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
)

// Bills end with a chapter of what may be ordered and is in no total: "Option, not in the total".

// headsOptions reports whether the title of a section begins with a word for options, and numbers or letters
// none: "Option 2" may be the one that was chosen. What is offered may stand behind a mark: "Options not in the total: terrace".
func (b *builder) headsOptions(f *layout.Fact) bool {
	head, _, _ := cutAny(f.Text, ":", " - ", " – ")
	if f.Key != "" {
		head = f.Key
	}
	words := strings.Fields(head)
	if len(words) == 0 || len(f.Text) > longestSpoken || countWords(head) > fewWords || anyDigit(head) || !optionalWords.begins(join.Fold(head)) ||
		slices.ContainsFunc(words, func(w string) bool { return len(w) == 1 && w >= "A" && w <= "H" }) {
		return false
	}
	b.take(factSeen(f), "status", "not installed", schedule.LikelierReading, "what is offered as an option")
	return true
}
