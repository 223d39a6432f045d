package notation

import (
	"slices"
	"strings"
)

// A RatedControl is what a text among other words says of a control.
type RatedControl struct {
	Name string  // its tag as written: "VC-1", "T1"; "" if it has none
	W    float64 // its rating; 0 if not written
	// Place is what it is said to stand at or to control, behind a word such as
	// "on", "in", "für", "pour": "VIEWING" of "VC-V (35 W) on VIEWING".
	Place string
}

// ParseControls finds the controls that a title or a remark names, with the
// rating beside them: "Volume control VC-1 (10 W), Seed room", "derrière
// atténuateur T1, 12 W", "local att. ATT-1, 6 W", "behind a wall knob of 35 W".
// Controls side by side share the rating behind them: "VC1, VC2: 10 W".
//
// The error wraps ErrNotUnderstood where no control has a tag or a rating, and
// where the text denies.
func ParseControls(s string, style Style) ([]RatedControl, error) {
	return knownRatedControls.of(s, int(style))
}

func parseControls(s string, style Style) ([]RatedControl, error) {
	const what = "control"
	text, err := prepare(what, s)
	if err != nil {
		return nil, err
	}
	tokens := splitFigures(lex(text, style), style)
	if denies(tokens) {
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
			if place, n := placeBehind(tokens, i, text); n > 0 {
				out[len(out)-1].Place = place
				i += n
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
		for letters := lettersOf(name); letters != ""; { // LSR 1, 3
			figure, n := furtherFigure(tokens, i)
			if n == 0 {
				break
			}
			out = append(out, RatedControl{Name: letters + figure})
			i += n
		}
	}
	out = slices.DeleteFunc(out, func(c RatedControl) bool { return c == RatedControl{} })
	if len(out) == 0 {
		return nil, fail(what, text, ErrNotUnderstood)
	}
	return out, nil
}

// placeWords stand between a control and its place.
var placeWords = []string{"on", "in", "at", "for", "im", "am", "fur", "auf", "dans", "pour", "sur", "en", "para", "per", "nel", "nella", "voor", "op"}

// placeBehind reads the place of a control behind its rating at tokens[i]: up
// to a comma, a bracket or the end.
func placeBehind(tokens []token, i int, text string) (string, int) {
	from := i
	for from < len(tokens) && tokens[from].is(")") {
		from++
	}
	if from+1 >= len(tokens) || !slices.Contains(placeWords, tokens[from].text) {
		return "", 0
	}
	end := from + 1
	for end < len(tokens) && !strings.Contains(",(;:/", tokens[end].text) {
		if _, n := controlAt(tokens, end); n > 0 {
			break
		}
		end++
	}
	if end == from+1 {
		return "", 0
	}
	runes := []rune(text)
	stop := len(runes)
	if end < len(tokens) {
		stop = tokens[end].at
	}
	return strings.Trim(string(runes[tokens[from+1].at:stop]), " .,;-"), end - i
}

// lettersOf is a tag without the figure at its end, "" if it ends in none.
func lettersOf(name string) string {
	letters := strings.TrimRight(name, "0123456789")
	if letters == name {
		return ""
	}
	return letters
}

// furtherFigure reads ", 3" or "and 3" at tokens[i]: a figure without a unit.
func furtherFigure(tokens []token, i int) (string, int) {
	if i+1 >= len(tokens) || !(tokens[i].is(",") || tokens[i].is("+") || tokens[i].is("&") || tokens[i].is("/") || isAnd(tokens[i].text)) {
		return "", 0
	}
	t := tokens[i+1]
	if t.kind != figureToken || !t.figure.whole || len(t.raw) > 2 {
		return "", 0
	}
	if i+2 < len(tokens) && !(tokens[i+2].kind == markToken && tokens[i+2].text != "*" || isAnd(tokens[i+2].text)) {
		return "", 0
	}
	return t.raw, 2
}

// controlAt reads a control at tokens[i]: a word for one with its tag behind
// it, or a tag that begins with such a word. n is the number of tokens, 0 if
// there is none; the name is blank where no tag follows.
func controlAt(tokens []token, i int) (name string, n int) {
	if i > 0 && !tokens[i].gap && (tokens[i-1].kind != markToken || tokens[i-1].is("-")) {
		return "", 0
	}
	e, n, ok := words("name").at(tokens, i)
	if !ok || e.kind != string(KeyControl) || !e.sure && !powerAt(tokens, i+n) {
		return "", 0
	}
	for next := i + n; next < len(tokens); next++ {
		if code, m := controlCode(tokens, next); m > 0 {
			return code, next + m - i
		}
		if end := next + 1; next == i+n && isControlLetters(tokens[next]) && (end == len(tokens) || tokens[end].kind == markToken && !tokens[end].is("-") && !tokens[end].is(".")) { // volume control VC
			return tokens[next].raw, next + 1 - i
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

// powerAt reports whether a figure with a unit of power stands at tokens[i]: "LR 5 W" is a
// control, where "LR" alone may be left and right.
func powerAt(tokens []token, i int) bool {
	if i >= len(tokens) || tokens[i].kind != figureToken {
		return false
	}
	_, _, unit := unitAt(tokens, i+1, powerUnits.class)
	return unit
}

// isControlLetters reports whether a word is capitals that stand for a control, "VC".
func isControlLetters(t token) bool {
	e, ok := words("name").phrases[t.text]
	return ok && e.sure && e.kind == string(KeyControl) && t.raw == strings.ToUpper(t.raw) && len([]rune(t.raw)) >= 2 && len([]rune(t.raw)) <= 3
}

// controlCode reads a tag at tokens[i]: capitals with a figure or a letter
// behind them, "T1", "VC-1", "ATT-1", "VR-W", "LB-R1".
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
	if last := next + 1; tokens[next].kind == wordToken && last < len(tokens) && tokens[last].kind == figureToken && tokens[last].figure.whole && !tokens[last].gap {
		if _, _, unit := unitAt(tokens, last+1, powerUnits.class); !unit {
			next = last // "LB-R1": the control of a building
		}
	}
	return textOf(tokens[i : next+1]), next + 1 - i
}
