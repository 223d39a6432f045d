package notation

import (
	"slices"
	"strconv"
	"strings"
)

// lettered reads an amplifier's code and an output with the first letter of
// its word, "A1 s2", "V1 k3": o, s, w, k, c or v.
func (r *channelReading) lettered(tokens []token) bool {
	n := len(tokens)
	if n < 4 || n > 5 || tokens[0].kind != wordToken || gapped(tokens[:n-2]) || !tokens[n-2].gap || tokens[n-1].gap {
		return false
	}
	letter, figure, code := tokens[n-2], tokens[n-1], tokens[:n-2]
	if !isSingleLetter(letter) || !strings.Contains("oswkcv", letter.raw) || figure.kind != figureToken || code[len(code)-1].kind != figureToken {
		return false
	}
	return r.setAmplifier(code) && r.setChannels(tokens[n-1:])
}

func isSingleLetter(t token) bool { return t.kind == wordToken && len([]rune(t.raw)) == 1 }

// plainCodes makes the marks and words of a channel's cell plain: square
// brackets round, "n°" gone, a question mark a doubt, a line voltage or a word for
// the system in front gone, and a number in words behind a word for an amplifier or an output a figure.
func (r *channelReading) plainCodes(tokens []token) []token {
	for n := len(tokens); n > 1 && tokens[n-1].is("?"); n-- {
		tokens = tokens[:n-1]
		r.c.Doubts |= Approximate
	}
	var out []token
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		switch {
		case t.is("["):
			t.text, t.raw = "(", "("
		case t.is("]"):
			t.text, t.raw = ")", ")"
		case t.is("n") && i+1 < len(tokens) && (tokens[i+1].is("°") || tokens[i+1].is("º")):
			i++
			continue
		case len(out) == 0 && t.kind == figureToken && i+2 < len(tokens) && (tokens[i+1].is("v") || tokens[i+1].is("volt")) && tokens[i+2].kind == wordToken:
			if v, ok := numberOf(t.raw); ok && isLineVoltage(float64(v)) {
				i++ // 100 V line 1
				continue
			}
		case i == 0 && systemLine(tokens):
			continue
		case t.kind == wordToken && (len(out) == 0 || out[len(out)-1].kind == markToken) && (i+1 == len(tokens) || tokens[i+1].kind == markToken):
			if e, known := words("numeral").phrases[t.text]; known {
				t.kind, t.raw, t.text = figureToken, e.kind, e.kind
			}
		case t.kind == wordToken && len(out) > 0 && out[len(out)-1].kind == wordToken && t.gap:
			e, known := words("numeral").phrases[t.text]
			if kind, sure, _, ok := nameAt(out, len(out)-1); known && ok && sure && (kind == KeyAmplifier || kind == KeyChannel || kind == KeyLine) {
				t.kind, t.raw, t.text = figureToken, e.kind, e.kind
			}
		}
		out = append(out, t)
	}
	return out
}

// systemLine reports whether a text begins with a word for the whole system before one
// for its lines: "PA line 1", which names no amplifier.
func systemLine(tokens []token) bool {
	_, n, system := words("system").at(tokens, 0)
	kind, sure, _, line := nameAt(tokens, n)
	return system && line && sure && kind == KeyLine && tokens[n].gap
}

// spaced reads an amplifier's code and its output with nothing but a space
// between them: "A1 3", "A1 B", "V1 K1", "A1 1-4".
func (r *channelReading) spaced(tokens []token) bool {
	n := len(tokens)
	if n == 4 && !gapped(tokens) && tokens[1].kind == figureToken && tokens[3].kind == figureToken && len(tokens[3].raw) < 3 &&
		slices.Contains([]string{"a", "v", "e", "f", "pa", "amp"}, tokens[0].text) && slices.Contains([]string{"c", "k", "s", "u", "o", "ch"}, tokens[2].text) {
		return r.setAmplifier(tokens[:2]) && r.setChannels(tokens[3:]) // A2C3
	}
	at := 0
	for i := 1; i < n; i++ {
		if tokens[i].gap {
			if at > 0 {
				return false
			}
			at = i
		}
	}
	if at != 2 || tokens[0].kind != wordToken || tokens[1].kind != figureToken || len([]rune(tokens[0].raw)) > 3 || tokens[0].raw != strings.ToUpper(tokens[0].raw) {
		return false
	}
	if kind, sure, _, ok := nameAt(tokens, 0); ok && sure && kind != KeyAmplifier {
		return false // VC1 3
	}
	tail := tokens[at:]
	switch {
	case len(tail) == 1 && tail[0].kind == figureToken && len(tail[0].raw) < 3:
	case len(tail) == 1 && isSingleLetter(tail[0]) && tail[0].raw == strings.ToUpper(tail[0].raw):
	case len(tail) == 2 && isSingleLetter(tail[0]) && tail[0].raw == strings.ToUpper(tail[0].raw) && tail[1].kind == figureToken && len(tail[1].raw) < 3:
	case len(tail) == 3 && tail[0].kind == figureToken && tail[2].kind == figureToken && strings.Contains("-+&", tail[1].text):
	default:
		return false
	}
	return r.setAmplifier(tokens[:at]) && r.setChannels(tail)
}

// spread reads the first and the last of an amplifier's outputs: "A1.1-A1.4". Neither of
// them is such a range again: in a chain of outputs every mark could part two chains.
func (r *channelReading) spread(tokens []token) bool {
	if r.end {
		return false
	}
	for i, t := range tokens {
		if !t.is("-") && !(t.kind == wordToken && t.gap && isRangeWord(t.text)) || i == 0 || i+1 == len(tokens) {
			continue
		}
		first, last := channelReading{end: true}, channelReading{end: true}
		if lastMark(tokens[:i]) < 0 && !t.gap && tokens[0].kind == wordToken || !first.coded(tokens[:i]) || !last.coded(tokens[i+1:]) {
			continue
		}
		a, b := first.c, last.c
		if a.Amplifier != b.Amplifier || a.Amplifier == "" && t.is("-") || len(a.Channels) != 1 || len(b.Channels) != 1 {
			continue
		}
		from, ok1 := numberOf(a.Channels[0])
		to, ok2 := numberOf(b.Channels[0])
		if !ok1 || !ok2 || to <= from || to-from >= mostChannelRefs {
			continue
		}
		r.c.Amplifier, r.c.Channels = a.Amplifier, nil
		for n := from; n <= to; n++ {
			r.c.Channels = append(r.c.Channels, strconv.Itoa(n))
		}
		return true
	}
	return false
}

// alike reports whether two texts are codes of one form, such as A1 and A2 or
// A1.2 and A1.3.
func alike(a, b []token) bool {
	if len(a) != len(b) || len(a) < 2 || a[0].kind != wordToken || a[0].raw != b[0].raw {
		return false
	}
	return !slices.ContainsFunc(a, func(t token) bool { return t.kind == wordToken && len([]rune(t.raw)) > 3 }) &&
		slices.EqualFunc(a, b, func(x, y token) bool { return x.kind == y.kind && (x.kind == figureToken || x.text == y.text) })
}

// romans are the numerals of outputs that are no other names.
var romans = []string{"II", "III", "IV", "VI", "VII", "VIII", "IX", "XI", "XII"}

func isRoman(tokens []token) bool { return len(tokens) == 1 && slices.Contains(romans, tokens[0].raw) }

// isOutputWord reports whether a word for an area is one for an output too: groep.
func isOutputWord(word string) bool {
	_, ok := words("output").phrases[word]
	return ok
}

func isRangeWord(word string) bool {
	e, ok := words("joint").phrases[word]
	return ok && e.kind == "range"
}
