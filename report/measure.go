package report

import (
	"math"
	"strings"
	"unicode"
)

// MaxCell is how many characters a cell of a spreadsheet holds.
const MaxCell = 32767

// CellText makes a text fit for a cell of a spreadsheet: characters that its
// format cannot hold go, what is too long is cut and marked with "…".
func CellText(s string) string {
	clean := func(r rune) rune {
		if r < ' ' && r != '\n' && r != '\t' || r == 0xFFFE || r == 0xFFFF || r >= '\u202a' && r <= '\u202e' || r >= '\u2066' && r <= '\u2069' {
			return -1
		}
		return r
	}
	if strings.IndexFunc(s, func(r rune) bool { return clean(r) != r || r == unicode.ReplacementChar }) >= 0 {
		s = strings.Map(clean, strings.ToValidUTF8(s, "\uFFFD"))
	}
	if len(s) <= MaxCell {
		return s
	}
	units, cut := 0, 0 // the limit counts UTF-16 units
	for i, r := range s {
		if units < MaxCell {
			cut = i
		}
		if units++; r > 0xFFFF {
			units++
		}
		if units > MaxCell {
			return s[:cut] + "…"
		}
	}
	return s
}

// Measure is the width of a text in a proportional sans-serif type, in widths
// of a digit. It is an estimate to lay out tables by, on the safe side.
func Measure(s string) float64 {
	w := 0.0
	for _, r := range s {
		if r < 0x80 {
			w += asciiWidths[r]
		} else {
			w += runeWidth(r)
		}
	}
	return w
}

var asciiWidths = func() (list [0x80]float64) {
	for r := range list {
		list[r] = runeWidth(rune(r))
	}
	return list
}()

// runeWidth follows the proportions of the usual sans-serif types, in which a
// digit takes 0.556 of the size: from memory, four per cent added.
func runeWidth(r rune) float64 {
	const safe = 1.04
	switch {
	case strings.ContainsRune("ijl'|", r):
		return 0.42 * safe
	case r == ' ' || strings.ContainsRune(".,;:ftI!/\\[]", r):
		return 0.5 * safe
	case strings.ContainsRune("r-()\"*", r):
		return 0.62 * safe
	case strings.ContainsRune("ckJsvxyz", r):
		return 0.9 * safe
	case strings.ContainsRune("mM", r):
		return 1.5 * safe
	case strings.ContainsRune("W%@\u2014\u2026", r):
		return 1.8 * safe
	case unicode.Is(unicode.Mn, r):
		return 0
	case r >= 0x1100 && (unicode.Is(unicode.Han, r) || unicode.Is(unicode.Hangul, r) || unicode.Is(unicode.Hiragana, r) || unicode.Is(unicode.Katakana, r) || r > 0xFF00):
		return 1.8 * safe
	case r == 'w' || unicode.IsUpper(r):
		return 1.3 * safe
	}
	return safe
}

// Lines is how many lines a text takes when it is wrapped in a column of a
// width in digits, at least 1.
func Lines(s string, width float64) int {
	n := 0
	for part := range strings.SplitSeq(s, "\n") {
		lines, at := 1, 0.0
		for word := range strings.FieldsSeq(part) {
			w := Measure(word)
			switch {
			case at == 0:
			case at+runeWidth(' ')+w <= width:
				at += runeWidth(' ') + w
				continue
			default:
				lines++
				at = 0
			}
			extra := int(math.Ceil(w/width)) - 1 // a word longer than the column
			if extra > 0 {
				lines += extra
				w -= float64(extra) * width
			}
			at = w
		}
		n += lines
	}
	return max(1, n)
}
