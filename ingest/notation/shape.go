package notation

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

// The value parsers work in two steps: a text becomes items, each with a code
// of one letter, and the string of codes, the shape, is matched against a
// short list of patterns. Item i of a text is byte i of its shape.

// An item is one or several tokens that mean one thing.
type item struct {
	code   byte
	value  float64 // of a figure, in the base unit of its dimension
	factor float64 // what value was multiplied by for its unit
	figure figure
	token  token // the first token
	doubts Doubts
}

// Codes shared by all parsers. Marks keep their own character.
const (
	codeNumber    = 'N' // bare figure
	codeFraction  = 'F' // bare fraction: 1/2, ½
	codePower     = 'P'
	codeVolts     = 'V'
	codeOhms      = 'O'
	codeFrequency = 'f'
	codeMetres    = 'M'
	codeFeet      = 'T'
	codeTimes     = 'x'
	codeAt        = '@'
	codeRange     = 'B' // "to", "bis"
	codeOr        = 'o'
	codeAnd       = 'a'
	codeApprox    = '~'
	codeEach      = 'e'
	codeArrow     = '>'
	codeUnit      = 'u' // a unit word without a figure before it
)

// jointCodes are the codes of the joining words.
var jointCodes = map[string]byte{
	"range": codeRange, "and": codeAnd, "or": codeOr, "approx": codeApprox, "each": codeEach, "at": codeAt,
}

// A dimension is a class of units and the code of a figure that has one.
type dimension struct {
	class string
	code  byte
}

var (
	powerUnits      = dimension{"power", codePower}
	voltageUnits    = dimension{"voltage", codeVolts}
	resistanceUnits = dimension{"resistance", codeOhms}
	frequencyUnits  = dimension{"frequency", codeFrequency}
	metreUnits      = dimension{"metre", codeMetres}
	footUnits       = dimension{"foot", codeFeet}
)

// An itemiser turns tokens into items.
type itemiser struct {
	dimensions []dimension
	// classes are vocabulary classes whose kinds have a code here, in order
	// of precedence.
	classes []string
	codes   map[string]byte
	// fractions reads 1/2 and the like as one figure.
	fractions bool
	// padded accepts bare figures with zeros in front, as in "02 nos".
	padded bool
	// prepare changes the tokens before they become items.
	prepare func([]token) []token
}

// items returns the items of a text, or the reason why a token means nothing
// here.
func (z *itemiser) items(what, text string, style Style) ([]item, error) {
	tokens := lex(text, style)
	if z.prepare != nil {
		tokens = z.prepare(tokens)
	}
	var out []item
	for i := 0; i < len(tokens); {
		t := tokens[i]
		switch t.kind {
		case figureToken:
			it, n := z.figureItem(tokens, i, out)
			if t.figure.bad || isPadded(t.raw) && !z.padded && it.factor == 0 {
				return nil, failBecause(what, text, strconv.Quote(t.raw)+" is no figure", ErrNotUnderstood)
			}
			out = append(out, it)
			i += n
		case markToken:
			c, ok := markCode(t, text)
			if !ok {
				return nil, failBecause(what, text, strconv.Quote(t.raw)+" has no meaning here", ErrNotUnderstood)
			}
			if c == '-' && len(out) == 0 && i+1 < len(tokens) && tokens[i+1].kind == figureToken && !tokens[i+1].gap {
				return nil, fail(what, text, ErrNegative)
			}
			out = append(out, item{code: c, token: t})
			i++
		default:
			code, n, ok := z.wordCode(tokens, i)
			if !ok {
				return nil, failBecause(what, text, strconv.Quote(t.raw)+" is not a known word", ErrNotUnderstood)
			}
			out = append(out, item{code: code, token: t})
			i += n
		}
	}
	return out, nil
}

// isPadded reports whether a figure has a zero in front that figures rarely
// have: a bare "05" belongs to a code or a date.
func isPadded(raw string) bool {
	return len(raw) > 1 && raw[0] == '0' && isDigit(rune(raw[1]))
}

// markCode returns the code of a mark.
func markCode(t token, text string) (byte, bool) {
	switch t.text {
	case "→":
		return codeArrow, true
	case "*":
		return codeTimes, true
	case "≈", "±", "~", "?":
		return codeApprox, true
	case "|", ";":
		return ';', true
	case "≤", "<", "=", "·", "•", "[", "]":
		return map[string]byte{"≤": '<', "<": '<', "=": '=', "·": ';', "•": ';', "[": '(', "]": ')'}[t.text], true
	}
	if len(t.text) == 1 && strings.Contains(`-/,()@+:.%#'"&!`, t.text) {
		if t.text == "&" {
			return codeAnd, true
		}
		return t.text[0], true
	}
	if t.text == "Ω" || t.text == "Ø" {
		return codeUnit, true
	}
	return 0, false
}

// figureItem reads the figure at tokens[i] with its fraction and unit, and
// returns the number of tokens it took. before are the items so far.
func (z *itemiser) figureItem(tokens []token, i int, before []item) (item, int) {
	t := tokens[i]
	it := item{code: codeNumber, value: t.figure.value, figure: t.figure, token: t, doubts: t.figure.doubts}
	n := 1
	if strings.ContainsRune(t.raw, fractionSlash) {
		it.code = codeFraction
	} else if z.fractions && t.figure.whole && simpleFraction(tokens, i) &&
		!(len(before) > 0 && before[len(before)-1].code == '/') {
		it.value = t.figure.value / tokens[i+2].figure.value
		it.figure = figure{value: it.value, other: it.value}
		it.code = codeFraction
		n = 3
	}
	// A whole number before a fraction of one character: 1 ½.
	if it.code == codeNumber && t.figure.whole && i+1 < len(tokens) && tokens[i+1].kind == figureToken &&
		strings.ContainsRune(tokens[i+1].raw, fractionSlash) && tokens[i+1].figure.value < 1 {
		it.value += tokens[i+1].figure.value
		it.figure = figure{value: it.value, other: it.value}
		n = 2
	}
	for _, d := range z.dimensions {
		factor, taken, ok := unitAt(tokens, i+n, d.class)
		if !ok {
			continue
		}
		it.code = d.code
		it.value *= factor
		it.factor = factor
		if factor == 0.001 && d.code == codePower && strings.HasPrefix(tokens[i+n].raw, "M") {
			it.doubts |= UnitLetterCase
		}
		return it, n + taken
	}
	return it, n
}

// plainFractions are the fractions that schedules write for one figure; others
// such as 5/10 are two figures.
var plainFractions = map[[2]float64]bool{
	{1, 2}: true, {1, 4}: true, {3, 4}: true, {1, 8}: true, {3, 8}: true, {5, 8}: true, {1, 16}: true, {1, 1}: true,
}

// simpleFraction reports whether tokens[i] starts a fraction that is not part
// of a longer chain of slashes.
func simpleFraction(tokens []token, i int) bool {
	if i+2 >= len(tokens) || !tokens[i+1].is("/") || tokens[i+2].kind != figureToken || tokens[i+1].gap || tokens[i+2].gap {
		return false
	}
	if !plainFractions[[2]float64{tokens[i].figure.value, tokens[i+2].figure.value}] || !tokens[i+2].figure.whole {
		return false
	}
	return i+3 >= len(tokens) || !tokens[i+3].is("/") || i+4 >= len(tokens) || tokens[i+4].kind != figureToken
}

// unitAt reads a unit of a class at tokens[i]; a hyphen may stand before it
// ("100-V").
func unitAt(tokens []token, i int, class string) (factor float64, n int, ok bool) {
	hyphen := 0
	if i+1 < len(tokens) && tokens[i].is("-") && !tokens[i].gap && tokens[i+1].kind == wordToken && !tokens[i+1].gap {
		hyphen = 1
	}
	e, n, ok := words(class).at(tokens, i+hyphen)
	if !ok {
		return 0, 0, false
	}
	factor, err := strconv.ParseFloat(e.kind, 64)
	if err != nil {
		panic("notation: unit factor " + e.kind)
	}
	return factor, n + hyphen, true
}

// wordCode returns the code of the longest phrase at tokens[i].
func (z *itemiser) wordCode(tokens []token, i int) (code byte, n int, ok bool) {
	for _, class := range z.classes {
		e, taken, found := words(class).at(tokens, i)
		if !found || taken <= n {
			continue
		}
		if class == "joint" {
			if i > 0 && tokens[i-1].kind == figureToken && !tokens[i].gap && len(tokens[i].text) == 1 {
				continue // 1e400
			}
			code, n, ok = jointCodes[e.kind], taken, true
			continue
		}
		if c, known := z.codes[e.kind]; known {
			code, n, ok = c, taken, true
		}
	}
	if ok {
		return code, n, true
	}
	if tokens[i].text == "x" {
		return codeTimes, 1, true
	}
	for _, d := range z.dimensions {
		if _, n, ok := words(d.class).at(tokens, i); ok {
			return codeUnit, n, true
		}
	}
	return 0, 0, false
}

// shapeOf returns the codes of items.
func shapeOf(items []item) string {
	b := make([]byte, len(items))
	for i, it := range items {
		b[i] = it.code
	}
	return string(b)
}

// without returns the items whose codes are not among drop.
func without(items []item, drop string) []item {
	out := items[:0:0]
	for _, it := range items {
		if strings.IndexByte(drop, it.code) < 0 {
			out = append(out, it)
		}
	}
	return out
}

// allDoubts joins the doubts of items.
func allDoubts(items []item) Doubts {
	var d Doubts
	for _, it := range items {
		d |= it.doubts
		if it.code == codeApprox {
			d |= Approximate
		}
	}
	return d
}

// plainFigure writes a figure the way Point reads it.
func plainFigure(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// isCount reports whether a figure can count things.
func isCount(it item) bool {
	return it.code == codeNumber && it.figure.whole && it.value >= 1 && it.value < 1e5
}

// lineVoltages are the nominal voltages of lines in use, with the ways they are
// written. Source: public schedules survey (100, 70.7 and 25 V; 50, 140 and
// 200 V in older European and large systems).
var lineVoltages = []float64{25, 35, 50, 70, 70.7, 71, 100, 140, 141, 141.4, 200}

func isLineVoltage(v float64) bool {
	for _, l := range lineVoltages {
		if math.Abs(l-v) < 0.02 {
			return true
		}
	}
	return false
}

// withoutEmptyBrackets removes brackets whose words were removed.
func withoutEmptyBrackets(items []item) []item {
	for i := 0; i+1 < len(items); i++ {
		if items[i].code == '(' && items[i+1].code == ')' {
			return withoutEmptyBrackets(slices.Delete(slices.Clone(items), i, i+2))
		}
	}
	return items
}
