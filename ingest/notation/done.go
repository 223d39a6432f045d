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
