package notation

import "strings"

// CountEach reads a count that holds for each of several places: "je 2", "2 per
// room", "2 pro Kabine", "chacun 3", "2 each". ok is false for anything else;
// abbreviated units such as "2 ea" count pieces.
func CountEach(s string) (n int, ok bool) {
	tokens := lex(Clean(s), Point)
	if len(tokens) > 6 {
		return 0, false
	}
	each := false
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		if v, isCount := numeralOf(t); isCount {
			if n > 0 {
				return 0, false
			}
			n = v
			continue
		}
		e, taken, known := words("said").at(tokens, i)
		place, more, per := words("foreach").at(tokens, i)
		switch {
		case known && e.kind == "each" && len(t.text) > 1 && t.text != "ea" && !isPieceAbbreviation(t):
			each = true
			i += taken - 1
		case per && place.kind == "place":
			each = true
			i += more - 1
		case t.is("/") && i > 0 && i+1 < len(tokens) && tokens[i+1].kind == wordToken && len(t.raw) > 0 && len([]rune(tokens[i+1].raw)) > 3:
			each = true
		case t.kind == figureToken:
			return 0, false
		}
	}
	return n, each && n > 0
}

// isPieceAbbreviation reports whether a word is a unit of pieces written short: "cad.", "st.".
func isPieceAbbreviation(t token) bool {
	e, ok := words("quantity").phrases[t.text]
	return ok && e.kind == "piece" && len([]rune(t.text)) <= 3
}

// SaysTotal reports whether a text is no more than words for all together: "in all", "zusammen".
func SaysTotal(s string) bool {
	tokens := lex(Clean(s), Point)
	e, n, ok := words("said").at(tokens, 0)
	return ok && e.kind == "total" && n == len(tokens)
}

// BehindEach is what stands behind words for each with which a text begins: "6 W" of
// "je 6 W", "chacun 3 W"; ok is false where it does not begin with such words.
func BehindEach(s string) (rest string, ok bool) {
	clean := Clean(s)
	tokens := lex(clean, Point)
	e, n, ok := words("said").at(tokens, 0)
	if !ok || e.kind != "each" || n >= len(tokens) {
		return "", false
	}
	for range n {
		_, clean, _ = strings.Cut(clean, " ")
		clean = strings.TrimLeft(clean, " ")
	}
	return clean, clean != ""
}
