package notation

import (
	"regexp"
	"strings"
	"unicode"
)

// maxText is the longest text, in runes, that the value parsers look at. A
// longer one is prose, not a value.
const maxText = 400

// A tokenKind says what a token is.
type tokenKind uint8

const (
	figureToken tokenKind = iota
	wordToken
	markToken
)

// A token is a figure, a word of letters, or one mark.
type token struct {
	kind   tokenKind
	text   string // folded for words
	raw    string // as it stood in the cleaned text
	figure figure // for figureToken
	gap    bool   // a space or line break stood before it
	at     int    // rune index
}

func (t token) is(text string) bool { return t.kind != figureToken && t.text == text }

func isLetter(r rune) bool {
	return unicode.IsLetter(r) && r != 'Ω' && r != 'Ø' && r != 'ø' || unicode.Is(unicode.Mn, r)
}

// lex splits cleaned text into tokens. Letters joined by single dots make one
// word ("N.I.C." is nic), a dot behind a word is dropped, and so is one at the
// end of the text.
func lex(s string, style Style) []token {
	runes := []rune(s)
	out := make([]token, 0, min(len(runes), 12))
	gap := false
	for i := 0; i < len(runes); {
		r := runes[i]
		t := token{gap: gap, at: i}
		switch {
		case r == ' ':
			gap = true
			i++
			continue
		case isDigit(r) || leadingMark(runes, i, style, out):
			f, end := readFigure(runes, i, style)
			t.kind, t.raw, t.figure = figureToken, string(runes[i:end]), f
			t.text = t.raw
			i = end
		case isLetter(r):
			t.kind = wordToken
			i = wordEnd(runes, i)
			if x := i - 1; x > t.at && (runes[x] == 'x' || runes[x] == 'X') && i < len(runes) && isDigit(runes[i]) &&
				!gap && len(out) > 0 && out[len(out)-1].kind == figureToken {
				i = x // 6Wx2: the x stands alone
			}
			t.raw = string(runes[t.at:i])
			t.text = fold(strings.ReplaceAll(t.raw, ".", ""))
			if i < len(runes) && runes[i] == '.' && (i+1 == len(runes) || !isDigit(runes[i+1])) {
				i++
			}
		default:
			t.kind, t.text, t.raw = markToken, string(r), string(r)
			i++
			if r == '.' && i == len(runes) && len(out) > 0 {
				continue
			}
			if r == 'ø' {
				t.text = "Ø"
			}
		}
		gap = false
		out = append(out, t)
	}
	return out
}

// leadingMark reports whether runes[i] is the decimal mark of ".5" or ",5".
func leadingMark(runes []rune, i int, style Style, before []token) bool {
	if i+1 >= len(runes) || !isDigit(runes[i+1]) {
		return false
	}
	afterFigure := len(before) > 0 && before[len(before)-1].kind == figureToken
	switch runes[i] {
	case '.':
		return i == 0 || !isLetter(runes[i-1]) && !isDigit(runes[i-1]) && runes[i-1] != '.'
	case ',':
		return style != Point && !afterFigure && (i == 0 || runes[i-1] == ' ' || runes[i-1] == '(' || runes[i-1] == '@')
	}
	return false
}

// wordEnd returns the end of the word that starts at runes[i].
func wordEnd(runes []rune, i int) int {
	start := i
	for i < len(runes) && isLetter(runes[i]) {
		i++
	}
	single := i-start == 1
	for single && i+1 < len(runes) && runes[i] == '.' && isLetter(runes[i+1]) && (i+2 == len(runes) || !isLetter(runes[i+2])) {
		i += 2
	}
	return i
}

// prepare cleans a cell for a value parser and turns away what holds no value.
func prepare(what, s string) (string, error) {
	text := Clean(s)
	switch kind, missing := Missing(text); {
	case kind == MissingBlank:
		return "", fail(what, s, ErrEmpty)
	case missing:
		return "", failBecause(what, text, kind.String(), ErrMissing)
	case Ditto(text):
		return "", fail(what, text, ErrDitto)
	case len(text) > 4*maxText || len([]rune(text)) > maxText:
		return "", failBecause(what, text, "too long for a value", ErrNotUnderstood)
	}
	if kept := strings.TrimRight(unquoted(text), "*†‡ "); kept != "" { // 5 W*: a footnote
		return kept, nil
	}
	return text, nil
}

// dotted is a range written with dots: "40...50 m".
var dotted = regexp.MustCompile(`\s*(?:\.{2,}|…)\s*`)

// unquoted removes a pair of quotes around a text: "5 W" pasted with them.
func unquoted(text string) string {
	n := len(text)
	if n > 2 && (text[0] == '"' || text[0] == '\'') && text[n-1] == text[0] && strings.Count(text, text[:1]) == 2 {
		if inner := strings.TrimSpace(text[1 : n-1]); inner != "" {
			return inner
		}
	}
	return text
}
