package notation

import (
	"strconv"
	"strings"
)

// A Power is one plain power.
type Power struct {
	W      float64 // watts, finite and not negative; 0 only where zero was written
	Doubts Doubts
}

// MaxWatts is the largest power that is believed.
const MaxWatts = 1e6

// String returns the power so that ParseWatts reads it again.
func (p Power) String() string { return plainFigure(p.W) + " W" }

var powerItems = &itemiser{
	dimensions: []dimension{powerUnits, voltageUnits, resistanceUnits},
	classes:    []string{"joint", "load", "tap"},
	codes:      map[string]byte{"noise": 'l', "rms": 'R', "rated": 'r', "program": 'p'},
	fractions:  true,
	prepare:    mixedPower,
}

// ParseWatts reads one power: "5W", "0.24 kW", "7500 mW", "60 watts", "½ W",
// "total 96 W". A bare figure is returned with the doubt Bare. It returns an
// error wrapping ErrAmbiguous for several powers, and ErrTooLarge above
// MaxWatts.
func ParseWatts(s string, style Style) (Power, error) {
	return knownWatts.of(s, int(style))
}

func parseWatts(s string, style Style) (Power, error) {
	const what = "power"
	text, err := prepare(what, s)
	if err != nil {
		return Power{}, err
	}
	items, err := powerItems.items(what, text, style)
	if err != nil {
		return Power{}, err
	}
	doubts := allDoubts(items)
	items = withoutEmptyBrackets(without(items, "lRr:=~."))
	if len(items) == 2 && items[0].code == codeUnit && items[1].code == codeNumber {
		items = items[1:]
		items[0].code = codePower
	}
	if n := len(items); n >= 3 && items[0].code == '(' && items[n-1].code == ')' {
		items = items[1 : n-1]
	}
	switch shape := shapeOf(items); {
	case shape == "P":
	case shape == "N" || shape == "F":
		doubts |= Bare
	case strings.Count(shape, "P") > 1:
		return Power{}, fail(what, text, ErrAmbiguous)
	default:
		return Power{}, fail(what, text, ErrNotUnderstood)
	}
	if items[0].value > MaxWatts {
		return Power{}, fail(what, text, ErrTooLarge)
	}
	return Power{W: items[0].value, Doubts: doubts}, nil
}

// PowersIn finds the powers inside a description, in order: "Ceiling
// loudspeaker 6 W, white". Only figures with a unit count, and none that is
// part of a longer code such as "A-7.5W-100".
func PowersIn(s string, style Style) []Power { return knownPowers.Of(s, int(style)) }

func powersIn(s string, style Style) []Power {
	tokens := lex(Clean(s), style)
	var out []Power
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		if t.kind != figureToken || t.figure.bad || isPadded(t.raw) {
			continue
		}
		value, n := t.figure.value, 1
		if simpleFraction(tokens, i) && !(i > 0 && tokens[i-1].is("/")) {
			value /= tokens[i+2].figure.value
			n = 3
		}
		factor, taken, ok := unitAt(tokens, i+n, powerUnits.class)
		if !ok {
			continue
		}
		end := i + n + taken
		if inCode(tokens, i, end) || value*factor > MaxWatts {
			continue
		}
		out = append(out, Power{W: value * factor, Doubts: t.figure.doubts | SplitRead})
		i = end - 1
	}
	return out
}

// inCode reports whether tokens[start:end] is glued by letters, digits or
// hyphens to something that makes it part of a code.
func inCode(tokens []token, start, end int) bool {
	if start > 0 && !tokens[start].gap {
		p := tokens[start-1]
		if p.kind == wordToken && p.text != "x" {
			return true
		}
		if p.is("-") && !p.gap && start > 1 && tokens[start-2].kind == wordToken {
			return true
		}
	}
	if end < len(tokens) && !tokens[end].gap {
		n := tokens[end]
		if n.kind == figureToken {
			return true
		}
		if n.is("-") && end+1 < len(tokens) && !tokens[end+1].gap && tokens[end+1].kind != markToken {
			return tokens[end+1].kind == figureToken || len(tokens[end+1].text) < 3
		}
	}
	return false
}

// mixedPower joins a whole figure and a plain fraction behind it into one
// figure, "2 1/2 W", and turns a word for half before a unit of power into
// one, "mezzo watt". A fraction alone stays: it may be a share.
func mixedPower(tokens []token) []token {
	out := tokens[:0:0]
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		if v, ok := numeralPower(tokens, i); ok {
			t.kind, t.figure = figureToken, figure{value: v, other: v, whole: true}
			t.raw = plainFigure(v)
			t.text = t.raw
			out = append(out, t)
			continue
		}
		if n := halfAt(tokens, i); n > 0 {
			t.kind, t.raw, t.text = figureToken, "0.5", "0.5"
			t.figure = figure{value: 0.5, other: 0.5}
			out = append(out, t)
			i += n - 1
			continue
		}
		if n := joinsFraction(tokens, i); n > 0 {
			f, _, _ := fractionTokens(tokens, i+n-2)
			t.figure.value += f
			t.figure.other, t.figure.whole = t.figure.value, false
			out = append(out, t)
			i += n
			continue
		}
		out = append(out, t)
	}
	return out
}

// joinsFraction returns the length of a plain fraction, with the hyphen before
// it, behind a whole figure at tokens[i] with nothing but a unit or the end
// behind it; 0 if there is none.
func joinsFraction(tokens []token, i int) int {
	if i+4 < len(tokens) && isWholeToken(tokens[i]) && tokens[i].figure.value >= 1 && tokens[i+1].is("-") && !tokens[i+1].gap && !tokens[i+2].gap {
		// 1-1/2 W
		if _, n, ok := fractionTokens(tokens, i+2); ok && n == 3 && simpleFraction(tokens, i+2) {
			return 4
		}
	}
	if !isWholeToken(tokens[i]) || isPadded(tokens[i].raw) || i+3 >= len(tokens) || !tokens[i+1].gap || i > 0 && !tokens[i-1].is("@") && !tokens[i-1].is("x") && !tokens[i-1].is("(") && tokens[i-1].kind != wordToken {
		return 0
	}
	if _, n, ok := fractionTokens(tokens, i+1); !ok || n != 3 || !simpleFraction(tokens, i+1) {
		return 0
	}
	if i+4 < len(tokens) {
		if _, _, ok := unitAt(tokens, i+4, powerUnits.class); !ok {
			return 0
		}
	}
	return 3
}

// numeralPower reads a number in words before a unit of power: "two watts".
func numeralPower(tokens []token, i int) (float64, bool) {
	if tokens[i].kind != wordToken {
		return 0, false
	}
	e, ok := words("numeral").phrases[tokens[i].text]
	if !ok {
		return 0, false
	}
	if _, _, unit := unitAt(tokens, i+1, powerUnits.class); !unit {
		return 0, false
	}
	v, err := strconv.ParseFloat(e.kind, 64)
	return v, err == nil
}

// halfAt returns the length of a word for half that stands before a unit of
// power at tokens[i], 0 if there is none.
func halfAt(tokens []token, i int) int {
	_, n, ok := words("half").at(tokens, i)
	if !ok {
		return 0
	}
	if _, _, unit := unitAt(tokens, i+n, powerUnits.class); !unit {
		return 0
	}
	return n
}
