package notation

import "strings"

// A Number is a plain figure.
type Number struct {
	Value  float64 // finite, not negative
	Other  float64 // the second reading where Doubts has DecimalMark, else equal to Value
	Doubts Doubts
}

// String returns the number so that ParseNumber reads it again with Point.
func (n Number) String() string { return plainFigure(n.Value) }

// ParseNumber reads a figure without a unit: "7.5", "7,5", "1 200", "½",
// "1 1/2", ".5", "~12". It returns an error wrapping ErrNegative for negative
// figures.
func ParseNumber(s string, style Style) (Number, error) {
	return knownNumbers.of(s, int(style))
}

func parseNumber(s string, style Style) (Number, error) {
	const what = "number"
	text, err := prepare(what, s)
	if err != nil {
		return Number{}, err
	}
	items, err := numberItems.items(what, text, style)
	if err != nil {
		return Number{}, err
	}
	out := Number{Doubts: allDoubts(items)}
	rest := without(items, "~=:")
	if n := len(rest); n == 3 && rest[0].code == '(' && rest[2].code == ')' {
		rest = rest[1:2]
	}
	if shape := shapeOf(rest); shape != "N" && shape != "F" {
		reason := ErrNotUnderstood
		if strings.Count(shape, "N") > 1 {
			reason = ErrAmbiguous
		}
		return Number{}, fail(what, text, reason)
	}
	out.Value, out.Other = rest[0].value, rest[0].value
	if out.Doubts.Has(DecimalMark) {
		out.Other = rest[0].figure.other
	}
	return out, nil
}

var numberItems = &itemiser{
	classes: []string{"joint"}, fractions: true,
	prepare: func(tokens []token) []token { return mixedFractions(tokens, func(int) bool { return true }) },
}

// mixedFractions joins a whole figure and a fraction of halves to
// sixty-fourths behind it into one figure, "2 9/16" or "2-9/16", where the
// tokens behind the fraction are wanted.
func mixedFractions(tokens []token, wanted func(next int) bool) []token {
	var out []token
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		if f, n, ok := fractionTokens(tokens, i); ok && wanted(i+n) {
			whole := 0.0
			at := len(out)
			switch {
			case at > 0 && t.gap && isWholeToken(out[at-1]):
				at--
			case at > 1 && out[at-1].is("-") && !out[at-1].gap && !t.gap && isWholeToken(out[at-2]):
				at -= 2
			}
			if at < len(out) {
				whole = out[at].figure.value
				t = out[at]
				out = out[:at]
			}
			t.figure = figure{value: whole + f, other: whole + f, doubts: t.figure.doubts}
			out = append(out, t)
			i += n - 1
			continue
		}
		out = append(out, t)
	}
	return out
}

func isWholeToken(t token) bool { return t.kind == figureToken && t.figure.whole && !t.figure.bad }

// fractionTokens reads 9/16 at tokens[i].
func fractionTokens(tokens []token, i int) (value float64, n int, ok bool) {
	if i+2 >= len(tokens) || !isWholeToken(tokens[i]) || !tokens[i+1].is("/") || !isWholeToken(tokens[i+2]) ||
		tokens[i+1].gap || tokens[i+2].gap || i > 0 && tokens[i-1].is("/") || i+3 < len(tokens) && tokens[i+3].is("/") {
		return 0, 0, false
	}
	num, den := tokens[i].figure.value, tokens[i+2].figure.value
	for _, d := range []float64{2, 4, 8, 16, 32, 64} {
		if den == d && num >= 1 && num < den {
			return num / den, 3, true
		}
	}
	return 0, 0, false
}
