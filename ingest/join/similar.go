package join

import "strings"

// Which names are spellings of one.

// similar reports whether two folded titles are spellings of one: word by word, or
// written together, one letter apart from five letters on, two from nine on, or one
// the abbreviation of the other. Titles whose numbers differ are never similar, nor
// those that differ in a short word, "hall n" and "hall s", or in one that is the
// opposite of the other, "bowl north" and "bowl south".
func similar(a, b string) bool {
	if a == b {
		return true
	}
	if digitsOf(a) != digitsOf(b) {
		return false
	}
	if abbreviates(a, b) || abbreviates(b, a) {
		return true
	}
	x, y := strings.Fields(a), strings.Fields(b)
	if len(x) != len(y) {
		return misspelt(strings.Join(x, ""), strings.Join(y, ""))
	}
	for i := range x {
		if x[i] != y[i] && !misspelt(x[i], y[i]) {
			return false
		}
	}
	return true
}

// misspelt reports whether one word may be a misspelling of the other.
func misspelt(a, b string) bool {
	x, y := []rune(a), []rune(b)
	switch n := min(len(x), len(y)); {
	case n < 5 || opposite(a, b):
		return false
	case n < 9:
		return distance(x, y, 1) <= 1
	}
	return distance(x, y, 2) <= 2
}

// opposites are words a letter or two apart that are never misspellings of each other.
var opposites = [][2]string{{"east", "west"}, {"north", "south"}, {"ost", "west"}, {"nord", "sud"}, {"est", "ouest"}, {"este", "oeste"}, {"est", "ovest"}, {"oost", "west"},
	{"noord", "zuid"}, {"men", "women"}, {"male", "female"}, {"hommes", "femmes"}, {"upper", "lower"}, {"inner", "outer"}, {"innen", "aussen"}, {"interior", "exterior"},
	{"interieur", "exterieur"}, {"interno", "esterno"}, {"interior", "inferior"}, {"superior", "inferior"}, {"superieur", "inferieur"}, {"superiore", "inferiore"}}

// opposite reports whether one word is the other with an opposite in it: "northeast", "southeast".
func opposite(a, b string) bool {
	for _, p := range opposites {
		if strings.Replace(a, p[0], p[1], 1) == b || strings.Replace(a, p[1], p[0], 1) == b {
			return true
		}
	}
	return false
}

func digitsOf(s string) string {
	return strings.Map(func(r rune) rune {
		if r >= '0' && r <= '9' {
			return r
		}
		return -1
	}, s)
}

// abbreviates reports whether every word of a begins the word of b at the
// same place: "orang hse" no, "bot house" for "botanical house" yes.
func abbreviates(a, b string) bool {
	x, y := strings.Fields(a), strings.Fields(b)
	if len(x) != len(y) || len(x) == 0 {
		return false
	}
	for i := range x {
		if len(x[i]) < 3 && x[i] != y[i] || !strings.HasPrefix(y[i], x[i]) {
			return false
		}
	}
	return true
}

// distance is the number of letters to insert, delete, change or swap with
// their neighbour that turn a into b, or more than most when it is above that.
func distance(a, b []rune, most int) int {
	if d := len(a) - len(b); d > most || -d > most {
		return most + 1
	}
	before, last, this := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		this[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			this[j] = min(last[j]+1, this[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				this[j] = min(this[j], before[j-2]+1)
			}
		}
		before, last, this = last, this, before
	}
	return last[len(b)]
}

// Alike reports whether one folded word may be a misspelling of another: it
// is a little more willing than the matching of names, since it only suggests.
func Alike(a, b string) bool {
	x, y := []rune(a), []rune(b)
	return a != b && (similar(a, b) || min(len(x), len(y)) >= 4 && distance(x, y, 1) <= 1)
}
