package notation

import (
	"slices"
	"strings"
)

// AmplifiersNamed are the names and numbers that stand behind words for amplifiers in a text, each once: "1" and "2"
// of "Amp 1 feeds the nave, amp 2 the tower"; and codes that go on from one of them: "A2" of "Amp A1 feeds the nave, A2
// the tower".
func AmplifiersNamed(s string) []string {
	tokens := lex(Clean(s), Point)
	var out []string
	for i := 0; i < len(tokens); i++ {
		e, n, ok := words("name").at(tokens, i)
		if code, _ := nameCode(tokens, i); !ok && len(out) > 0 && GoesOn(out[0], code) && !slices.Contains(out, code) {
			if _, _, other := words("name").at(tokens, i-1); !other {
				out = append(out, code)
			}
		}
		if !ok || !e.sure || e.kind != string(KeyAmplifier) || i+n >= len(tokens) {
			continue
		}
		name, taken := nameCode(tokens, i+n)
		if t := tokens[i+n]; taken == 0 && t.kind == figureToken && t.figure.whole && t.figure.value <= mostChannels {
			if c := (&clauseReading{tokens: tokens}); c.bareFigure(i + n) {
				name, taken = t.raw, 1
			}
		}
		i += n + taken - 1
		if name != "" && !slices.Contains(out, name) {
			out = append(out, name)
		}
	}
	return out
}

// GoesOn reports whether a code has the letters of another and a number of its own: "A2" behind "A1".
func GoesOn(first, code string) bool {
	letters := strings.TrimRight(first, "0123456789")
	return letters != "" && letters != first && code != letters && code != first && strings.TrimRight(code, "0123456789") == letters
}
