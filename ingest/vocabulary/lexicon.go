package vocabulary

import (
	"embed"
	"encoding/csv"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"
)

//go:embed headers.csv concepts.csv meanings.csv devices.csv
var data embed.FS

// A phrase is one field that a whole header may mean.
type phrase struct {
	field  Field
	lang   string
	weight float64
}

// A sense is one concept that a word may stand for.
type sense struct {
	concept int
	lang    string
}

// A meaning says which field a set of concepts makes.
type meaning struct {
	field    Field
	weight   float64
	concepts []int
}

// A lexicon is the three data files, indexed.
type lexicon struct {
	phrases  map[string][]phrase // folded header
	stemmed  map[string][]phrase // stems in the order of the phrase
	sorted   map[string][]phrase // stems in alphabetical order
	words    map[string][]sense  // folded word
	stems    map[string][]sense
	single   map[string][]phrase // one-word headers that are no concept
	meanings []meaning
	names    []string // of the concepts

	total, number, count, tap, channel int              // the concepts of these names
	byLength                           [32][]string     // every word that may be misspelt, by length
	letters                            [32][]uint32     // and the letters of each; see lettersOf
	fields                             map[string]Field // folded name of a field
}

// lex is the lexicon, read once. The data is part of the program: an error in
// it is a broken invariant, which a test finds.
var lex = sync.OnceValue(func() *lexicon {
	l, err := loadLexicon()
	if err != nil {
		panic(err)
	}
	return l
})

func records(name string, columns int) ([][]string, error) {
	f, err := data.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.FieldsPerRecord = columns
	rows, err := r.ReadAll()
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return rows[1:], nil
}

func loadLexicon() (*lexicon, error) {
	l := &lexicon{phrases: map[string][]phrase{}, stemmed: map[string][]phrase{}, sorted: map[string][]phrase{}, words: map[string][]sense{},
		stems: map[string][]sense{}, single: map[string][]phrase{}, fields: map[string]Field{}}
	for f, name := range fieldNames[1:] {
		l.fields[Fold(name)] = Field(f + 1)
	}
	ids := map[string]int{}
	rows, err := records("concepts.csv", 3)
	if err != nil {
		return nil, err
	}
	for _, row := range rows {
		id, ok := ids[row[0]]
		if !ok {
			id = len(l.names)
			ids[row[0]] = id
			l.names = append(l.names, row[0])
		}
		for w := range strings.SplitSeq(row[2], ";") {
			w = strings.ReplaceAll(Fold(w), " ", "")
			l.words[w] = addSense(l.words[w], sense{id, row[1]})
			l.stems[stem(w)] = addSense(l.stems[stem(w)], sense{id, row[1]})
		}
	}
	l.total, l.number, l.count = slices.Index(l.names, "total"), slices.Index(l.names, "number"), slices.Index(l.names, "count")
	l.tap, l.channel = slices.Index(l.names, "tap"), slices.Index(l.names, "channel")
	if rows, err = records("meanings.csv", 3); err != nil {
		return nil, err
	}
	for _, row := range rows {
		var m meaning
		if m.field, err = fieldOf(row[0]); err != nil {
			return nil, fmt.Errorf("meanings.csv: %w", err)
		}
		if m.weight, err = strconv.ParseFloat(row[1], 64); err != nil {
			return nil, fmt.Errorf("meanings.csv: %w", err)
		}
		for c := range strings.FieldsSeq(row[2]) {
			id, ok := ids[c]
			if !ok {
				return nil, fmt.Errorf("meanings.csv: no concept %q", c)
			}
			m.concepts = append(m.concepts, id)
		}
		l.meanings = append(l.meanings, m)
	}
	if rows, err = records("headers.csv", 4); err != nil {
		return nil, err
	}
	for _, row := range rows {
		weight, err := strconv.ParseFloat(row[2], 64)
		if err != nil {
			return nil, fmt.Errorf("headers.csv: %w", err)
		}
		field, err := fieldOf(row[0])
		if err != nil {
			return nil, fmt.Errorf("headers.csv: %w", err)
		}
		p := phrase{field, row[1], weight}
		for text := range strings.SplitSeq(row[3], ";") {
			l.addPhrase(strings.TrimSpace(text), p)
		}
	}
	for w := range l.words {
		l.addSpelling(w)
	}
	for w := range l.single {
		if l.words[w] == nil {
			l.addSpelling(w)
		}
	}
	for i := range l.byLength {
		slices.Sort(l.byLength[i])
		for _, w := range l.byLength[i] {
			l.letters[i] = append(l.letters[i], lettersOf(w))
		}
	}
	return l, nil
}

func (l *lexicon) addSpelling(w string) {
	if n := len(w); n < len(l.byLength) {
		l.byLength[n] = append(l.byLength[n], w)
	}
}

func (l *lexicon) addPhrase(text string, p phrase) {
	words := split(text)
	if len(words) == 0 { // a sign such as €: kept as it is
		l.phrases[text] = append(l.phrases[text], p)
		return
	}
	key := joined(words)
	l.phrases[key] = append(l.phrases[key], p)
	if len(words) > 1 {
		if stems := stemsOf(words); len(stems) > 1 && !l.isNumber(words[0].text) { // "no. of channels" is not "channel no."
			l.stemmed[strings.Join(stems, " ")] = append(l.stemmed[strings.Join(stems, " ")], p)
			slices.Sort(stems)
			l.sorted[strings.Join(stems, " ")] = append(l.sorted[strings.Join(stems, " ")], p)
		}
	} else if len(key) > 3 {
		l.single[key] = append(l.single[key], p)
	}
}

func addSense(list []sense, s sense) []sense {
	for _, o := range list {
		if o.concept == s.concept {
			return list
		}
	}
	return append(list, s)
}

func joined(words []word) string {
	var b strings.Builder
	for i, w := range words {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(w.text)
	}
	return b.String()
}

// stemsOf are the stems of the words that say something.
func stemsOf(words []word) []string {
	s := make([]string, 0, len(words))
	for _, w := range words {
		if !little[w.text] {
			s = append(s, stem(w.text))
		}
	}
	return s
}

// isNumber reports whether a word is one for a number or a count: "no.", "Anzahl".
func (l *lexicon) isNumber(word string) bool {
	return slices.ContainsFunc(l.words[word], func(s sense) bool { return s.concept == l.number || s.concept == l.count })
}

// little are the words that join others and say nothing of a field when they
// are not alone.
var little = set("of the at in on and or for with a an is as incl by de du des la le les l d el los las del der die das den dem im am und mit y e o di della dei delle degli il lo i gli het van voor op met en et ou pour sur au aux da al von zu approx ca circa env environ aprox est estimated geschatzt ungefahr estime estimee estimado estimada stimato stimata ongeveer geschat expected")

func set(words string) map[string]bool {
	m := map[string]bool{}
	for w := range strings.FieldsSeq(words) {
		m[w] = true
	}
	return m
}

// Named returns the field with that name, as it is written in this package's
// constants, whatever the case ("Line voltage"), and whether there is one.
func Named(name string) (Field, bool) {
	f, ok := lex().fields[Fold(name)]
	return f, ok
}

// Known reports whether the very words of the header, case, accents and
// punctuation aside, stand in the vocabulary's list of headers.
func Known(header string) bool {
	_, ok := lex().phrases[joined(split(header))]
	return ok
}
