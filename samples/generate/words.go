package generate

import (
	_ "embed"
	"strings"
)

//go:embed data/headers.txt
var headersText string

//go:embed data/phrases.txt
var phrasesText string

//go:embed data/places.txt
var placesText string

// Spelling is one way of heading a column. Own spellings are wordings of this
// package, not taken from any list of words seen in the trade.
type Spelling struct {
	Field, Language, Text string
	Own                   bool
}

var languages = []string{"en", "de", "fr", "es", "it", "nl"}

// Languages lists the languages in which hands write.
func Languages() []string { return languages }

type key struct{ what, lang string }

var (
	spellings  = readSpellings(headersText)
	headerOf   = indexSpellings(spellings)
	phraseOf   = readPhrases(phrasesText)
	placeNames = readPlaces(placesText)
)

// HeaderSpellings lists every column heading that a generated schedule may
// bear, before noise is added to it.
func HeaderSpellings() []Spelling { return spellings }

func readSpellings(text string) []Spelling {
	var out []Spelling
	for _, f := range records(text) {
		seen, own, _ := strings.Cut(f[2], "*")
		for _, w := range words(seen) {
			out = append(out, Spelling{f[0], f[1], w, false})
		}
		for _, w := range words(own) {
			out = append(out, Spelling{f[0], f[1], w, true})
		}
	}
	return out
}

func indexSpellings(all []Spelling) map[key][]string {
	out := map[key][]string{}
	for _, s := range all {
		k := key{s.Field, s.Language}
		out[k] = append(out[k], s.Text)
	}
	return out
}

func readPhrases(text string) map[key][]string {
	out := map[key][]string{}
	for _, f := range records(text) {
		for i, lang := range languages {
			out[key{f[0], lang}] = words(f[i+1])
		}
	}
	return out
}

func readPlaces(text string) map[key][]string {
	out := map[key][]string{}
	for _, f := range records(text) {
		out[key{f[0], f[1]}] = words(f[2])
	}
	return out
}

// records splits a data file into its fields, leaving out comments. The ditto
// phrase holds a quotation mark, so the files are no CSV.
func records(text string) [][]string {
	var out [][]string
	for line := range strings.Lines(text) {
		line = strings.TrimSpace(line)
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		out = append(out, strings.Split(line, "|"))
	}
	return out
}

func words(s string) []string {
	var out []string
	for w := range strings.SplitSeq(s, ";") {
		if w = strings.TrimSpace(w); w != "" {
			out = append(out, w)
		}
	}
	return out
}
