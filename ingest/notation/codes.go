package notation

import (
	"strconv"
	"strings"
	"unicode"
)

// lexCodes splits cleaned text into runs of letters, runs of digits and marks,
// for names and tags, in which no figure has decimals.
func lexCodes(s string) []token {
	runes := []rune(s)
	var out []token
	gap := false
	for i := 0; i < len(runes); {
		r := runes[i]
		if r == ' ' {
			gap = true
			i++
			continue
		}
		t := token{gap: gap, at: i}
		end := i + 1
		switch {
		case isDigit(r):
			for end < len(runes) && isDigit(runes[end]) {
				end++
			}
			t.kind = figureToken
		case isLetter(r):
			end = wordEnd(runes, i)
			t.kind = wordToken
		default:
			t.kind = markToken
		}
		t.raw = string(runes[i:end])
		t.text = t.raw
		if t.kind == wordToken {
			t.text = fold(strings.ReplaceAll(t.raw, ".", ""))
		}
		gap = false
		i = end
		out = append(out, t)
	}
	return out
}

// textOf returns the text of tokens as they were written.
func textOf(tokens []token) string {
	var b strings.Builder
	for i, t := range tokens {
		if i > 0 && t.gap {
			b.WriteByte(' ')
		}
		b.WriteString(t.raw)
	}
	return b.String()
}

// trimMarks removes marks at both ends of tokens.
func trimMarks(tokens []token) []token {
	for len(tokens) > 0 && tokens[0].kind == markToken {
		tokens = tokens[1:]
	}
	for len(tokens) > 0 && tokens[len(tokens)-1].kind == markToken {
		tokens = tokens[:len(tokens)-1]
	}
	return tokens
}

// numberOf returns the value of a run of digits.
func numberOf(digits string) (int, bool) {
	n, err := strconv.Atoi(digits)
	return n, err == nil
}

// hasAlnum reports whether a text has a letter or a digit.
func hasAlnum(s string) bool {
	return strings.IndexFunc(s, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }) >= 0
}
