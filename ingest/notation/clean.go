package notation

import (
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"
)

// fractionSlash joins the two figures of a fraction that was one character,
// so that "½" is never taken for the two figures 1 and 2.
const fractionSlash = '\u2044'

// oneToOne replaces characters by the plain ones that schedules mean by them.
// It works on composed text.
var oneToOne = strings.NewReplacer(
	"\r\n", "\n", "\r", "\n", "\v", "\n", "\f", "\n", "\u0085", "\n", "\u2028", "\n", "\u2029", "\n",
	"\t", " ",
	"\u2032", "'", "\u2019", "'", "\u2018", "'", "\u201b", "'", "\u02b9", "'", "\u00b4", "'", "`", "'", "\u02bc", "'",
	"\u2033", `"`, "\u201d", `"`, "\u201c", `"`, "\u201e", `"`, "\u201f", `"`, "\u3003", `"`, "''", `"`,
	"\u00d7", "x", "\u2715", "x", "\u2a2f", "x", "\u2a09", "x", "\u2716", "x",
	"\u2013", "-", "\u2014", "-", "\u2012", "-", "\u2015", "-", "\u2212", "-", "\u2010", "-", "\u2011", "-", "\u2043", "-",
	"\u27a1", "→", "\u2794", "→", "\u21d2", "→", "\u279c", "→", "\u25ba", "→", "\u25b6", "→", "->", "→", "=>", "→", ">>", "→",
	"\u2026", "..",
	"\u2126", "Ω", "\u00b5", "μ",
	"\u2300", "Ø", "\u2205", "Ø",
	"^2", "²",
	"\u201a", ",",
)

// Clean returns the text of a cell with its characters made plain: every kind
// of space becomes one space (line breaks stay, as one line feed), and
// zero-width characters, byte-order and direction marks and other controls go;
// digits and letters of full width become ordinary; primes and curly quotes
// become ' and ", multiplication signs x, dashes and minus signs a hyphen,
// arrows →, Ohm and micro signs the Greek letters. A fraction of one character
// becomes its two figures joined by U+2044, with a space before it where a
// whole number precedes. A raised 2 after a letter becomes 2 ("mm²" to "mm2"),
// elsewhere it stays. An õ behind a figure is
// a damaged Ω. Letter case stays. Clean(Clean(s)) equals Clean(s).
func Clean(s string) string {
	if isPlain(s) {
		return s
	}
	s = strings.ToValidUTF8(s, "")
	for range 8 { // replacements may meet: "' '" or "=>>"; settles in two rounds on any real text
		next := cleanOnce(s)
		if next == s {
			break
		}
		s = next
	}
	return s
}

// isPlain reports whether s is already clean ASCII, as most cells are.
func isPlain(s string) bool {
	last := byte(' ')
	for i := range len(s) {
		c := s[i]
		switch {
		case c < ' ' || c > '~' || c == '`' || c == '>' || c == '^',
			c == ' ' && last == ' ', c == '\'' && last == '\'':
			return false
		}
		last = c
	}
	return s == "" || last != ' '
}

func cleanOnce(s string) string {
	s = oneToOne.Replace(norm.NFC.String(s))
	var b strings.Builder
	b.Grow(len(s))
	var last rune // last rune written, 0 at the start
	space, newline := false, false
	write := func(r rune) {
		if (space || newline) && last != 0 {
			if newline {
				b.WriteByte('\n')
			} else {
				b.WriteByte(' ')
			}
		}
		space, newline = false, false
		b.WriteRune(r)
		last = r
	}
	for _, r := range s {
		switch {
		case r == '\n':
			newline = true
		case unicode.IsSpace(r) || unicode.Is(unicode.Zs, r):
			space = true
		case r == '²':
			if unicode.IsLetter(last) && !space && !newline {
				r = '2'
			}
			write(r)
		case r == 'õ' && isDigit(last) && !space && !newline: // 4õ: a damaged Ω
			write('Ω')
		case unicode.Is(unicode.Cf, r) || unicode.IsControl(r) || unicode.Is(unicode.Variation_Selector, r):
			// invisible: byte-order, direction and joining marks, soft hyphens
		case r >= 0xbc && r <= 0xbe, r >= 0x2150 && r <= 0x215e: // ¼ ½ ¾ and the like
			if unicode.IsDigit(last) && !newline {
				space = true
			}
			for _, p := range norm.NFKC.String(string(r)) {
				write(p)
			}
		case r >= 0xff01 && r <= 0xff5e, r >= 0x3380 && r <= 0x33df, r == 0x2116, r >= 0xfb00 && r <= 0xfb06: // full width, squared units, №, ligatures
			for _, p := range norm.NFKC.String(string(r)) {
				if p == '²' && unicode.IsLetter(last) {
					p = '2'
				}
				write(p)
			}
		default:
			write(r)
		}
	}
	return b.String()
}

// fold returns cleaned text for comparison: lower case, no accents, ß as ss.
func fold(s string) string {
	if isASCII(s) {
		return strings.ToLower(s)
	}
	var b strings.Builder
	b.Grow(len(s))
	for _, r := range norm.NFD.String(s) {
		switch {
		case unicode.Is(unicode.Mn, r):
		case r == 'ß', r == 'ẞ':
			b.WriteString("ss")
		case r == 'ł':
			b.WriteByte('l')
		case r == 'œ', r == 'Œ':
			b.WriteString("oe")
		default:
			b.WriteRune(unicode.ToLower(r))
		}
	}
	return b.String()
}

func isASCII(s string) bool {
	for i := range len(s) {
		if s[i] >= 0x80 {
			return false
		}
	}
	return true
}
