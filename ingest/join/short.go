package join

import "strings"

// Shortens reports whether a text is a name with words cut short: "Blk A" for
// "Block A", "Bstg. 1" for "Bahnsteig 1". Word by word one is the other or is
// short of it, and numbers are the same. whole tells the words, folded, that are
// said in full ("hall"): these are short of nothing ("hallway").
func Shortens(text, name string, whole func(word string) bool) bool {
	x, y := tokens(Fold(text)), tokens(Fold(name))
	if len(x) != len(y) {
		return false
	}
	shorter := false
	for i := range x {
		if x[i].text == y[i].text {
			continue
		}
		if kindWords[Room][x[i].text] && kindWords[Room][y[i].text] {
			shorter = true // "Training rm" for "Training room"
			continue
		}
		if x[i].digits || y[i].digits || whole(x[i].text) || !shortWord(x[i].text, y[i].text) {
			return false
		}
		shorter = true
	}
	return shorter
}

// Initials are the first letters of the words of a text and its numbers: the
// same for a name and whatever is short of it.
func Initials(text string) string {
	var b strings.Builder
	for _, t := range tokens(Fold(text)) {
		word := t.text
		if !t.digits {
			for i := range word {
				if i > 0 {
					word = word[:i]
					break
				}
			}
		}
		b.WriteString(word)
		b.WriteByte(' ')
	}
	return b.String()
}

// fewestOfShort is the fewest letters of a word cut short: "N" may be north,
// "EG" another thing altogether.
const fewestOfShort = 3

// shortWord reports whether a word of plain letters is short of another: its
// beginning ("betriebsr"), or its first letter and consonants of it in their
// order ("bstg", "blk").
func shortWord(short, word string) bool {
	if len(short) < fewestOfShort || len(short) >= len(word) || short[0] != word[0] || strings.Trim(short, "abcdefghijklmnopqrstuvwxyz") != "" {
		return false
	}
	if strings.HasPrefix(word, short) {
		return true
	}
	if strings.ContainsAny(short[1:], "aeiou") {
		return false
	}
	at := 0
	for i := range len(short) {
		k := strings.IndexByte(word[at:], short[i])
		if k < 0 {
			return false
		}
		at += k + 1
	}
	return true
}
