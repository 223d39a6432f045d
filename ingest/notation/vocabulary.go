package notation

import (
	"embed"
	"encoding/csv"
	"fmt"
	"path"
	"strings"
	"sync"
)

// vocabularyFiles holds the words of every notation: rows of class, kind,
// language, words separated by |, and whether the words are sure or have other
// meanings too.
//
//go:embed vocabulary/*.csv
var vocabularyFiles embed.FS

// An entry is what a phrase of the vocabulary means.
type entry struct {
	kind string
	sure bool
}

// A lexicon is one class of the vocabulary: phrases as folded words joined by
// single spaces.
type lexicon struct {
	phrases map[string]entry
	longest int // words in the longest phrase
}

// lexicons reads the vocabulary once. A fault in it is a fault in the program.
var lexicons = sync.OnceValue(func() map[string]*lexicon {
	out := map[string]*lexicon{}
	names, err := vocabularyFiles.ReadDir("vocabulary")
	if err != nil {
		panic(err)
	}
	for _, name := range names {
		for _, row := range vocabularyRows(name.Name()) {
			addRow(out, row)
		}
	}
	return out
})

// vocabularyRows are the rows of one file of the vocabulary below its header.
func vocabularyRows(name string) [][]string {
	file := path.Join("vocabulary", name)
	f, err := vocabularyFiles.Open(file)
	if err != nil {
		panic(err)
	}
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		panic(fmt.Sprintf("%s: %v", file, err))
	}
	return rows[1:]
}

func addRow(out map[string]*lexicon, row []string) {
	class, kind, words, sure := row[0], row[1], row[3], row[4] == "y"
	l := out[class]
	if l == nil {
		l = &lexicon{phrases: map[string]entry{}}
		out[class] = l
	}
	for pattern := range strings.SplitSeq(words, "|") {
		for _, text := range spelledOut(pattern) {
			key, n := phraseKey(text)
			if n == 0 {
				continue // a phrase of marks only, such as "?"
			}
			if _, known := l.phrases[key]; known {
				continue // the first row wins: languages share words
			}
			l.phrases[key] = entry{kind: kind, sure: sure}
			l.longest = max(l.longest, n)
		}
	}
}

// spelledOut are the phrases that a pattern stands for: "to {fit/hang}" is "to fit" and "to hang".
func spelledOut(pattern string) []string {
	before, rest, ok := strings.Cut(pattern, "{")
	choices, after, closed := strings.Cut(rest, "}")
	if !ok || !closed {
		return []string{pattern}
	}
	var out []string
	for choice := range strings.SplitSeq(choices, "/") {
		out = append(out, spelledOut(before+choice+after)...)
	}
	return out
}

// phraseKey returns the folded words of a phrase joined by spaces, and their number.
func phraseKey(text string) (string, int) {
	var words []string
	for _, t := range lex(Clean(text), Point) {
		if t.kind != markToken || isWordMark(t.text) {
			words = append(words, t.text)
		}
	}
	return strings.Join(words, " "), len(words)
}

// isWordMark reports whether a mark counts as a word: a unit sign.
func isWordMark(mark string) bool { return mark == "Ω" || mark == "#" || mark == "°" }

// words returns the lexicon of one or several classes of the vocabulary.
func words(class string) *lexicon {
	l := lexicons()[class]
	if l == nil {
		panic("notation: no vocabulary of class " + class)
	}
	return l
}

// at finds the longest phrase that starts at tokens[i]. It returns the number
// of tokens that it covers: one hyphen, slash, dot or apostrophe may stand
// between two words.
func (l *lexicon) at(tokens []token, i int) (e entry, n int, ok bool) {
	var key strings.Builder
	taken, marks := 0, 0
	for j := i; j < len(tokens) && taken < l.longest; j++ {
		t := tokens[j]
		if t.kind == markToken && !isWordMark(t.text) {
			if taken > 0 && marks == 0 && strings.Contains("-/.'&+", t.text) {
				marks++
				continue
			}
			break
		}
		marks = 0
		if taken > 0 {
			key.WriteString(" ")
		}
		key.WriteString(t.text)
		taken++
		if found, known := l.phrases[key.String()]; known {
			e, n, ok = found, j-i+1, true
		}
	}
	return e, n, ok
}

// whole reports what the whole text means, marks around it aside.
func (l *lexicon) whole(text string) (entry, bool) {
	tokens := lex(text, Point)
	for len(tokens) > 0 && tokens[0].kind == markToken && !isWordMark(tokens[0].text) {
		tokens = tokens[1:]
	}
	for len(tokens) > 0 && tokens[len(tokens)-1].kind == markToken && !isWordMark(tokens[len(tokens)-1].text) {
		tokens = tokens[:len(tokens)-1]
	}
	if len(tokens) == 0 {
		return entry{}, false
	}
	e, n, ok := l.at(tokens, 0)
	return e, ok && n == len(tokens)
}

// A Mention is a word of the vocabulary found in a text.
type Mention struct {
	Kind    string // what it means
	Text    string // as it stood in the text, cleaned
	Sure    bool   // false for words that have other meanings too
	Negated bool   // "no", "ohne", "sans" stands directly before it
}

// mentions finds the phrases of a lexicon in a text, in order, the longest
// first where they overlap.
func (l *lexicon) mentions(s string) []Mention {
	text := Clean(s)
	runes := []rune(text)
	tokens := lex(text, Point)
	var out []Mention
	for i := 0; i < len(tokens); i++ {
		e, n, ok := l.at(tokens, i)
		if !ok {
			continue
		}
		last := tokens[i+n-1]
		out = append(out, Mention{
			Kind:    e.kind,
			Text:    string(runes[tokens[i].at : last.at+len([]rune(last.raw))]),
			Sure:    e.sure,
			Negated: i > 0 && isNegation(tokens[i-1]) && !countsBefore(tokens, i-1),
		})
		i += n - 1
	}
	return out
}

func isNegation(t token) bool {
	_, ok := words("negation").phrases[t.text]
	return ok && t.kind == wordToken
}

// Denies reports whether a word such as "no", "ohne", "sans" stands in a text; the
// "no." behind a count denies nothing.
func Denies(s string) bool { return denies(lex(Clean(s), Point)) }

func denies(tokens []token) bool {
	for i := range tokens {
		if isNegation(tokens[i]) && !countsBefore(tokens, i) {
			return true
		}
	}
	return false
}
