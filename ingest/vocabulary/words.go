package vocabulary

import (
	"strings"
	"unicode"
)

// folded maps letters with accents and ligatures to plain ones. It covers the
// letters of the six languages and what neighbouring ones lend to names.
var folded = map[rune]string{
	'à': "a", 'á': "a", 'â': "a", 'ã': "a", 'ä': "a", 'å': "a", 'ª': "a", 'æ': "ae",
	'ç': "c", 'è': "e", 'é': "e", 'ê': "e", 'ë': "e", 'ì': "i", 'í': "i", 'î': "i", 'ï': "i",
	'ñ': "n", 'ò': "o", 'ó': "o", 'ô': "o", 'õ': "o", 'ö': "o", 'ø': "o", 'œ': "oe", 'º': "o", '°': "o",
	'ù': "u", 'ú': "u", 'û': "u", 'ü': "u", 'ý': "y", 'ÿ': "y", 'ß': "ss", 'ĳ': "ij",
	'σ': "sum", '²': "2", '³': "3", 'ω': "ohm", 'Ω': "ohm", '№': "no",
}

// Fold lowers the letters of s, takes accents off and makes every run of other
// characters one space: "Nº Câble" is "no cable". A combining accent is dropped.
func Fold(s string) string { return folds.Of(s, 0) }

func fold(s string) string {
	var b strings.Builder
	b.Grow(len(s))
	space := false
	for _, r := range s {
		if unicode.Is(unicode.Mn, r) {
			continue
		}
		r = unicode.ToLower(r)
		plain, ok := "", true
		switch {
		case r < 0x80:
			ok = r >= 'a' && r <= 'z' || r >= '0' && r <= '9'
		default:
			plain, ok = folded[r]
			if !ok && (unicode.IsLetter(r) || unicode.IsDigit(r)) {
				plain, ok = string(r), true
			}
		}
		if !ok {
			space = b.Len() > 0
			continue
		}
		if space {
			b.WriteByte(' ')
			space = false
		}
		if plain != "" {
			b.WriteString(plain)
		} else {
			b.WriteByte(byte(r))
		}
	}
	return b.String()
}

// A word is one word of a header: folded, and whether a full stop followed,
// which marks it as abbreviated.
type word struct {
	text   string
	dotted bool
}

// split cuts a header into words. Case changes inside a word ("LineVoltage"),
// underscores and punctuation part words; dots inside an abbreviation
// ("Q.ty", "S.N.") do not.
func split(s string) []word {
	var words []word
	var b strings.Builder
	flush := func(dotted bool) {
		if b.Len() > 0 {
			if t := strings.ReplaceAll(Fold(b.String()), " ", ""); t != "" {
				words = append(words, word{t, dotted})
			}
			b.Reset()
		}
	}
	runes := []rune(s)
	for i, r := range runes {
		switch {
		case r == '#':
			flush(false)
			words = append(words, word{"no", false})
		case r == '∑':
			flush(false)
			words = append(words, word{"sum", false})
		case r == '%':
			flush(false)
			words = append(words, word{"percent", false})
		case r == '.' && b.Len() > 0:
			if i+1 < len(runes) && unicode.IsLetter(runes[i+1]) && b.Len() == 1 {
				continue // S.N., P.U.
			}
			flush(true)
		case unicode.IsLetter(r) || unicode.IsDigit(r) || unicode.Is(unicode.Mn, r) || r == '²' || r == 'º' || r == '°' || r == 'ª' || r == '№':
			short := b.Len() == 2 && (i+1 == len(runes) || !unicode.IsLetter(runes[i+1])) // "UoM"
			if i > 0 && unicode.IsUpper(r) && unicode.IsLower(runes[i-1]) && !short {
				flush(false)
			}
			if i > 0 && b.Len() > 0 && unicode.IsDigit(r) != unicode.IsDigit(runes[i-1]) && r != '²' && runes[i-1] != '.' {
				flush(false)
			}
			b.WriteRune(r)
		default:
			flush(false)
		}
	}
	flush(false)
	return words
}

// stem takes the endings of number and gender off a folded word, crudely and
// alike in all languages: zones, zonen, zona and zone all give "zon".
func stem(s string) string {
	if len(s) < 4 {
		return s
	}
	t := s
	if n := len(t); n > 4 && (t[n-1] == 's' && t[n-2] != 's' || t[n-1] == 'x') {
		t = t[:n-1]
	}
	if n := len(t); n > 5 && t[n-1] == 'n' && t[n-2] == 'e' {
		t = t[:n-1]
	}
	for range 2 {
		if n := len(t); n > 3 && strings.IndexByte("aeio", t[n-1]) >= 0 {
			t = t[:n-1]
		}
	}
	return t
}

// distance is the number of letters to change, add, drop or swap with their
// neighbour to get from a to b, or limit+1 when it is more than limit.
func distance(a, b string, limit int) int {
	if len(a)-len(b) > limit || len(b)-len(a) > limit {
		return limit + 1
	}
	var rows [3][64]int
	if len(b) >= 63 || len(a) >= 63 {
		return limit + 1
	}
	before, last, now := &rows[0], &rows[1], &rows[2]
	for j := range len(b) + 1 {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		now[0] = i
		least := i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			d := min(last[j]+1, now[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				d = min(d, before[j-2]+1)
			}
			now[j] = d
			least = min(least, d)
		}
		if least > limit {
			return limit + 1
		}
		before, last, now = last, now, before
	}
	return last[len(b)]
}

// lettersOf is the set of letters of a word, a bit each (a few share one). A
// letter that is changed makes two words differ by two of them at most, one that
// is added or dropped by one, two that are swapped by none.
func lettersOf(word string) (set uint32) {
	for i := range len(word) {
		set |= 1 << (word[i] & 31)
	}
	return set
}

// isContraction reports whether short is long with letters left out of its
// middle: the first three and the last are kept ("Leistg", "Bezeichng").
func isContraction(short, long string) bool {
	n := len(short)
	if n < 4 || len(long) < n+2 || 10*n < 6*len(long) || short[:3] != long[:3] || short[n-1] != long[len(long)-1] {
		return false
	}
	j := 0
	for i := 0; i < len(long) && j < n; i++ {
		if long[i] == short[j] {
			j++
		}
	}
	return j == n
}

// isShorthand reports whether short leaves letters out of long the way people
// abbreviate: same first letter, the rest in order, no vowel but the first,
// and at least half of the consonants kept ("spkr", "chnl", "lgth").
func isShorthand(short, long string) bool {
	if len(short) < 3 || len(long) < len(short)+2 || short[0] != long[0] {
		return false
	}
	if strings.ContainsAny(short[1:], "aeiou") {
		return false
	}
	j, consonants := 0, 0
	for i := range len(long) {
		if j < len(short) && long[i] == short[j] {
			j++
		}
		if i == 0 || strings.IndexByte("aeiou", long[i]) < 0 {
			consonants++
		}
	}
	return j == len(short) && 2*len(short) >= consonants
}
