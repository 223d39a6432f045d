package notation

import "slices"

// AmplifiersNamed are the names and numbers that stand behind words for amplifiers in a text, each once: "1" and "2"
// of "Amp 1 feeds the nave, amp 2 the tower".
func AmplifiersNamed(s string) []string {
	tokens := lex(Clean(s), Point)
	var out []string
	for i := 0; i < len(tokens); i++ {
		e, n, ok := words("name").at(tokens, i)
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
