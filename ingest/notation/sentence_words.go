package notation

import (
	"slices"
	"strconv"
	"strings"
)

// count reads a whole figure or a number in words at the present token.
func (c *clauseReading) count() (count, n int) {
	if v, ok := numeralOf(c.tokens[c.at]); ok && v >= 1 && v <= mostChannels {
		n = 1
		if _, longer, ok := words("numeral").at(c.tokens, c.at); ok {
			n = longer // "una sola"
		}
		return v, n
	}
	return 0, 0
}

// numeralOf returns the number that a token writes in figures or in words.
func numeralOf(t token) (int, bool) {
	switch t.kind {
	case figureToken:
		if t.figure.whole && !t.figure.bad && t.figure.value >= 1 && t.figure.value <= mostChannels {
			return int(t.figure.value), true
		}
	case wordToken:
		if e, ok := words("numeral").phrases[t.text]; ok {
			v, err := strconv.Atoi(e.kind)
			return v, err == nil
		}
	}
	return 0, false
}

// outputWord returns the length of a word for an output at tokens[i], 0 if
// there is none.
func (c *clauseReading) outputWord(i int) int {
	if i < len(c.tokens) && c.tokens[i].is("-") {
		i++ // 4-channel
		if _, n, ok := words("output").at(c.tokens, i); ok {
			return n + 1
		}
		return 0
	}
	if _, n, ok := words("output").at(c.tokens, i); ok {
		return n
	}
	if i < len(c.tokens) && c.tokens[i].kind == wordToken { // Linienausgänge
		for _, end := range []string{"ausgang", "ausgange", "ausgangen", "kanale", "kanalen", "uitgang", "uitgangen"} {
			if len(c.tokens[i].text) > len(end)+2 && strings.HasSuffix(c.tokens[i].text, end) {
				return 1
			}
		}
	}
	return 0
}

func (c *clauseReading) power(i int) (float64, int) { return c.unit(i, powerUnits.class) }

// unit reads a figure with a unit of a class at tokens[i].
func (c *clauseReading) unit(i int, class string) (float64, int) {
	if i >= len(c.tokens) || c.tokens[i].kind != figureToken || c.tokens[i].figure.bad {
		return 0, 0
	}
	factor, n, ok := unitAt(c.tokens, i+1, class)
	v := c.tokens[i].figure.value * factor
	if !ok || !(v > 0 && v <= MaxWatts) {
		return 0, 0
	}
	return v, 1 + n
}

// list reads the short names behind a word: "1", "U1 e U2", "1, 2", "1-4", "1
// and ch 2". A figure with a unit, or one that counts, is none; the number of a
// zone may stand before a word for its output.
func (c *clauseReading) list(zones bool) []string {
	var out []string
	at := c.at
	for at < len(c.tokens) && len(out) < mostChannels {
		if _, _, ok := c.dottedOutput(at); ok {
			break // channels A1.1 and A1.2: each with its amplifier
		}
		name, n := nameCode(c.tokens, at)
		if many, k := c.nameRange(at, name, n); n > 0 && len(many) > 0 {
			out = append(out, many[:len(many)-1]...)
			name, n = many[len(many)-1], k
		}
		if n == 0 && c.tokens[at].kind == figureToken && c.tokens[at].figure.whole && (c.bareFigure(at) || zones && c.outputWord(at+1) > 0) {
			name, n = c.tokens[at].raw, 1
			if to, k := c.rangeEnd(at); k > 0 {
				from, _ := numberOf(name)
				for v := from; v < to; v++ {
					out = append(out, strconv.Itoa(v))
				}
				name, n = strconv.Itoa(to), k
			}
		}
		if n == 0 {
			break
		}
		out = append(out, name)
		at += n
		c.at = at
		for at < len(c.tokens) && (c.tokens[at].is(",") || c.tokens[at].is("+") || c.tokens[at].is("&") || c.tokens[at].is("/") || isAnd(c.tokens[at].text)) {
			at++
		}
		if at == c.at {
			break
		}
		if !zones {
			at += c.outputWord(at)
		}
	}
	return out
}

// rangeEnd reads the end of a range that starts at the figure tokens[i], "1-4",
// "1 to 4", and returns the number of tokens of the range.
func (c *clauseReading) rangeEnd(i int) (to, n int) {
	if i+2 >= len(c.tokens) || !c.tokens[i+1].is("-") && !(c.tokens[i+1].kind == wordToken && isRangeWord(c.tokens[i+1].text)) {
		return 0, 0
	}
	end := c.tokens[i+2]
	if end.kind != figureToken || !end.figure.whole || !c.bareFigure(i+2) {
		return 0, 0
	}
	from, to := int(c.tokens[i].figure.value), int(end.figure.value)
	if from < 1 || to <= from || to > mostChannels {
		return 0, 0
	}
	return to, 3
}

// deviceAt reports whether a word for a loudspeaker stands at tokens[i].
func (c *clauseReading) deviceAt(i int) bool {
	if i < 0 || i >= len(c.tokens) || c.tokens[i].kind != wordToken || len([]rune(c.tokens[i].text)) < 4 && c.tokens[i].text != "hp" {
		return false
	}
	if e, _, ok := words("device").at(c.tokens, i); ok {
		return e.kind == "loudspeaker"
	}
	return false
}

// SpeaksOfAmplifier reports whether a word for an amplifier stands in a text:
// "Amp EB2", "Verstärker VG".
func SpeaksOfAmplifier(s string) bool { return knownAmplifierWords.Of(s, 0) }

// SpeaksOfRack reports whether a word for a rack stands in a text: "left side of rack".
func SpeaksOfRack(s string) bool { return speaksOf(s, KeyRack) }

func speaksOf(s string, kind KeyKind) bool {
	tokens := lex(Clean(s), Point)
	for i := range tokens {
		if e, _, ok := words("name").at(tokens, i); ok && e.sure && e.kind == string(kind) {
			return true
		}
	}
	return false
}

func isAmplifierWord(word string) bool {
	e, ok := words("name").phrases[word]
	return ok && e.sure && e.kind == string(KeyAmplifier)
}

// ratingCompound reports whether a word joins one for an amplifier to one for
// its power: "Verstärkerleistung".
func ratingCompound(word string) bool {
	for _, amp := range []string{"verstarker", "endstufen", "versterker", "amplifier"} {
		rest, ok := strings.CutPrefix(word, amp)
		if !ok || rest == "" {
			continue
		}
		if slices.Contains([]string{"leistung", "nennleistung", "vermogen", "rating", "power"}, rest) {
			return true
		}
	}
	return false
}

// splitFigures takes apart figures that a space joins behind a word for an
// amplifier, an output or a zone: "Amp 1 120 W" is amplifier 1 with 120 W.
func splitFigures(tokens []token, style Style) []token {
	var out []token
	for i, t := range tokens {
		spaced := t.kind == figureToken && strings.Contains(t.raw, " ") && i > 0
		if spaced {
			word := beforeList(tokens, i)
			_, output := words("output").phrases[word.text]
			_, name := words("name").phrases[word.text]
			spaced = output || name || !t.gap && tokens[i-1].kind == wordToken
		}
		if !spaced {
			out = append(out, t)
			continue
		}
		out = append(out, figuresApart(t, style)...)
	}
	return out
}

// figuresApart are the figures between the spaces of one that was read over them: 12 and
// 100 of "ref AL-12 100V".
func figuresApart(t token, style Style) []token {
	var out []token
	at := t.at
	for k, part := range strings.Fields(t.raw) {
		for _, p := range lex(part, style) {
			p.at = at
			p.gap = k > 0 || t.gap
			out = append(out, p)
		}
		at += len([]rune(part)) + 1
	}
	return out
}

// beforeList is the word before the list or range of figures that ends at
// tokens[i]: that for lines of "lines 1-3"; none if something else stands there.
func beforeList(tokens []token, i int) token {
	for i--; i >= 0; i-- {
		t := tokens[i]
		switch {
		case t.kind == figureToken, t.is("-"), t.is("+"), t.is("&"), t.is(","), t.kind == wordToken && (isAnd(t.text) || isRangeWord(t.text)):
		case t.kind == wordToken:
			return t
		default:
			return token{}
		}
	}
	return token{}
}

// longestCode is the longest name that a sentence gives an amplifier or an
// output, in runes.
const longestCode = 8

// nameCode reads a short name at tokens[i]: capitals, with or without figures
// and hyphens, "PA1", "EB2", "X", "PA-02", and no word or unit of the
// vocabulary.
func nameCode(tokens []token, i int) (string, int) {
	if i >= len(tokens) || tokens[i].kind != wordToken || tokens[i].raw != strings.ToUpper(tokens[i].raw) {
		return "", 0
	}
	name, n := tokens[i].raw, 1
	for i+n < len(tokens) && !tokens[i+n].gap {
		t := tokens[i+n]
		hyphen := t.is("-") && i+n+1 < len(tokens) && !tokens[i+n+1].gap && tokens[i+n+1].kind != markToken
		plain := t.kind == figureToken && !strings.ContainsAny(t.raw, ".,⁄ ") || t.kind == wordToken && t.raw == strings.ToUpper(t.raw)
		if !hyphen && !plain {
			break
		}
		name += t.raw
		n++
	}
	if len([]rune(name)) > longestCode {
		return "", 0
	}
	if n == 1 {
		for _, class := range []string{"power", "voltage", "name", "output", "said", "numeral"} {
			e, ok := words(class).phrases[tokens[i].text]
			if ok && (e.sure || class != "name") && len([]rune(name)) > 1 {
				return "", 0
			}
		}
		if i > 0 && tokens[i-1].kind == figureToken {
			return "", 0 // 60 W, 100 V
		}
	}
	return name, n
}
