package notation

import (
	"slices"
	"strings"
)

// A RatedControl is what a text among other words says of a control.
type RatedControl struct {
	Name string  // its tag as written: "VC-1", "T1"; "" if it has none
	W    float64 // its rating; 0 if not written
}

// ParseControls finds the controls that a title or a remark names, with the
// rating beside them: "Volume control VC-1 (10 W), Seed room", "derrière
// atténuateur T1, 12 W", "local att. ATT-1, 6 W", "behind a wall knob of 35 W".
// Controls side by side share the rating behind them: "VC1, VC2: 10 W".
//
// The error wraps ErrNotUnderstood where no control has a tag or a rating, and
// where the text denies.
func ParseControls(s string, style Style) ([]RatedControl, error) {
	const what = "control"
	text, err := prepare(what, s)
	if err != nil {
		return nil, err
	}
	tokens := splitFigures(lex(text, style), style)
	if slices.ContainsFunc(tokens, isNegation) {
		return nil, fail(what, text, ErrNotUnderstood)
	}
	c := &clauseReading{tokens: tokens}
	var out []RatedControl
	open := 0 // the first control that waits for its rating
	var before float64
	for i := 0; i < len(tokens); {
		if w, n := c.power(i); n > 0 {
			i += n
			if open == len(out) {
				before = w
				continue
			}
			for ; open < len(out); open++ {
				out[open].W = w
			}
			continue
		}
		name, n := controlAt(tokens, i)
		if n == 0 {
			i++
			continue
		}
		i += n
		if name == "" && len(out) > 0 {
			continue // 10 W controls, VC1
		}
		if len(out) == 1 && out[0].Name == "" {
			out[0].Name = name
			continue
		}
		if !slices.ContainsFunc(out, func(o RatedControl) bool { return o.Name == name }) {
			out = append(out, RatedControl{Name: name, W: before})
			if before > 0 {
				open = len(out)
			}
		}
		before = 0
	}
	out = slices.DeleteFunc(out, func(c RatedControl) bool { return c == RatedControl{} })
	if len(out) == 0 {
		return nil, fail(what, text, ErrNotUnderstood)
	}
	return out, nil
}

// controlAt reads a control at tokens[i]: a word for one with its tag behind
// it, or a tag that begins with such a word. n is the number of tokens, 0 if
// there is none; the name is blank where no tag follows.
func controlAt(tokens []token, i int) (name string, n int) {
	if i > 0 && !tokens[i].gap && (tokens[i-1].kind != markToken || tokens[i-1].is("-")) {
		return "", 0
	}
	e, n, ok := words("name").at(tokens, i)
	if !ok || !e.sure || e.kind != string(KeyControl) {
		return "", 0
	}
	for next := i + n; next < len(tokens); next++ {
		if code, m := controlCode(tokens, next); m > 0 {
			return code, next + m - i
		}
		if t := tokens[next]; !(t.is(".") || t.is(":") || t.is("-") || t.is("°") || isNumberWord(t.text)) {
			break
		}
	}
	if len([]rune(tokens[i].raw)) <= 4 && n == 1 { // VC-1, LSR 2, VC A
		next := i + 1
		if next < len(tokens) && (tokens[next].is("-") || tokens[next].is("_")) {
			next++
		}
		if next < len(tokens) && (tokens[next].kind == figureToken && tokens[next].figure.whole || isSingleLetter(tokens[next]) && tokens[next].raw == strings.ToUpper(tokens[next].raw)) {
			if _, _, unit := unitAt(tokens, next+1, powerUnits.class); !unit {
				end := next + 1
				if end < len(tokens) && isSingleLetter(tokens[end]) && !tokens[end].gap && tokens[next].kind == figureToken {
					end++ // VC-2A
				}
				return textOf(tokens[i:end]), end - i
			}
		}
	}
	return "", n
}

// controlCode reads a tag at tokens[i]: capitals with a figure or a letter
// behind them, "T1", "VC-1", "ATT-1", "VR-W".
func controlCode(tokens []token, i int) (string, int) {
	t := tokens[i]
	if t.kind != wordToken || t.raw != strings.ToUpper(t.raw) || len([]rune(t.raw)) > 4 {
		return "", 0
	}
	next := i + 1
	if next < len(tokens) && (tokens[next].is("-") || tokens[next].is("_")) && !tokens[next].gap {
		next++
	}
	if next >= len(tokens) || tokens[next].gap && next == i+1 || tokens[next].kind == markToken {
		return "", 0
	}
	if tokens[next].kind == figureToken && !tokens[next].figure.whole || tokens[next].kind == wordToken && (next == i+1 || len([]rune(tokens[next].raw)) > 2 || tokens[next].raw != strings.ToUpper(tokens[next].raw)) {
		return "", 0
	}
	if _, _, unit := unitAt(tokens, next+1, powerUnits.class); unit && tokens[next].kind == figureToken {
		return "", 0
	}
	return textOf(tokens[i : next+1]), next + 1 - i
}
