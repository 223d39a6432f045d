package notation

// DoneOf reads whether work is done: Yes for "done", "erledigt - i.O.", "✓",
// No for "not done", "noch offen", "à faire", "✗". A text that says both, such
// as "ok, noch nicht umgeklemmt", says that it is not; one that says neither has no answer.
func DoneOf(s string) Answer { return knownDones.Of(s, 0) }

func parseDone(s string) Answer {
	out := NoAnswer
	for _, m := range words("done").mentions(s) {
		switch {
		case m.Kind == "no":
			return No
		case m.Negated:
			out = No
		case out == NoAnswer:
			out = Yes
		}
	}
	if out == NoAnswer {
		return AnswerOf(s)
	}
	return out
}

// Unchanged reports whether a text says that something is as it was before, and nothing else: "NC", "no change", "unverändert".
func Unchanged(s string) bool {
	tokens := lex(Clean(s), Point)
	_, n, ok := words("unchanged").at(tokens, 0)
	return ok && n == len(tokens)
}
