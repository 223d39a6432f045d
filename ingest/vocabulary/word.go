package vocabulary

import (
	"math/bits"
	"slices"
	"strings"
)

// A reading is what one word of a header may stand for.
type reading struct {
	senses   []graded
	compound bool // the senses are the parts of one compound word
	fields   []phrase
	quality  float64 // of fields
	as       string  // the word of the vocabulary it was read as
}

// A graded is a concept and how surely the word stands for it, 0 to 1.
type graded struct {
	sense
	quality float64
}

func weigh(list []sense, q float64) []graded {
	g := make([]graded, len(list))
	for i, s := range list {
		g[i] = graded{s, q}
	}
	return g
}

// word reads one word: as it stands, by its stem, as the parts of a compound,
// as an abbreviation or as a misspelling, in that order.
func (s *Scorer) word(w word) reading {
	dotted := 0
	if w.dotted {
		dotted = 1
	}
	return words.Of(w.text, dotted)
}

func (l *lexicon) read(w word) reading {
	if list := l.words[w.text]; list != nil {
		return reading{senses: weigh(list, 1), fields: l.single[w.text], quality: 0.98, as: w.text}
	}
	single := reading{fields: l.single[w.text], quality: 0.98, as: w.text}
	if list := l.stems[stem(w.text)]; list != nil && len(w.text) > 3 {
		single.senses = weigh(list, 0.97)
		return single
	}
	if r, ok := l.compound(w.text); ok {
		single.senses, single.compound = r.senses, true
		return single
	}
	if single.fields != nil {
		return single
	}
	if r, ok := l.clipped(w.text); ok {
		return r
	}
	if r, ok := l.shortened(w); ok {
		return r
	}
	if r, ok := l.misspelt(w.text); ok {
		return r
	}
	return l.tail(w.text)
}

// compound reads a word that is made of two to four others: "Lautsprecherleistung",
// "kabellengte", "BackboxDepth" without its case.
func (l *lexicon) compound(text string) (reading, bool) {
	if len(text) < 6 || len(text) > 60 {
		return reading{}, false
	}
	var parts []graded
	var walk func(rest string, depth int) bool
	walk = func(rest string, depth int) bool {
		if rest == "" {
			return depth > 1
		}
		if depth == 4 {
			return false
		}
		for n := len(rest); n >= 2; n-- {
			list := l.part(rest[:n])
			if list == nil || n == len(text) || n == 2 && depth > 0 { // "ls" and "nr" begin a word, or stand alone
				continue
			}
			before := len(parts)
			parts = append(parts, weigh(list[:1], 0.93)...)
			for _, link := range []string{"", "s", "n", "en", "es", "e"} {
				if after, ok := strings.CutPrefix(rest[n:], link); ok && (link == "" || after != "") && walk(after, depth+1) {
					return true
				}
			}
			parts = parts[:before]
		}
		return false
	}
	if !walk(text, 0) {
		return reading{}, false
	}
	return reading{senses: parts, compound: true}, true
}

// clipParts are the short words that names of a drawing program's columns are
// run together from: SPKRTAG, TAPW, LINEV, PAZN, AMPOUT.
var clipParts = set("tap amp spkr spk zn vc pa ch out ref no id nr tag type line len cbl wire qty rm lvl mdl model bldg flr ckt cct zone room ls w v m")

// clipped reads such a name: two or three of the short words and nothing else,
// one of them of three letters at least; a single letter is a unit and stands last.
func (l *lexicon) clipped(text string) (reading, bool) {
	if len(text) < 4 || len(text) > 16 {
		return reading{}, false
	}
	var parts []graded
	long := false
	for rest := text; rest != ""; {
		n := min(len(rest), 5)
		for ; n > 0; n-- {
			if clipParts[rest[:n]] && (n > 1 || len(rest) == 1) && l.words[rest[:n]] != nil {
				break
			}
		}
		if n == 0 || len(parts) == 3 {
			return reading{}, false
		}
		long = long || n >= 3 || rest == "zn" || rest == "vc" || rest == "ch"
		list := l.words[rest[:n]]
		first := list[:1]
		for i := range list { // these names are English
			if list[i].lang == "en" {
				first = list[i : i+1]
				break
			}
		}
		parts = append(parts, weigh(first, 0.9)...)
		rest = rest[n:]
	}
	return reading{senses: parts, compound: true}, long && len(parts) > 1
}

// part returns the senses of a word as a part of a compound: at least four
// letters, or three that are commonly joined, or two at most for "ls" and "hp".
func (l *lexicon) part(text string) []sense {
	switch {
	case len(text) >= 4:
		if list := l.words[text]; list != nil {
			return list
		}
		if len(text) >= 5 {
			return l.stems[stem(text)]
		}
	case shortParts[text]:
		return l.words[text]
	}
	return nil
}

var shortParts = set("amp tap box lsp bmk spk max nom tot min vol qty ref num typ art ort ls nr")

// shortened reads an abbreviation: the beginning of a word ("Quersch.",
// "Ampl") or its consonants ("Spkr").
func (l *lexicon) shortened(w word) (reading, bool) {
	n := len(w.text)
	if n < 3 && !w.dotted || n < 2 || n > 12 {
		return reading{}, false
	}
	var r reading
	seen := map[int]bool{}
	quality := 0.78
	if w.dotted {
		quality = 0.88
	}
	if n == 2 {
		quality = 0.6
	}
	add := func(long string, q float64) {
		for _, g := range l.words[long] {
			if !seen[g.concept] {
				seen[g.concept] = true
				r.senses = append(r.senses, graded{g, q})
			}
		}
		for _, f := range l.single[long] {
			r.fields = append(r.fields, f)
			r.quality = max(r.quality, q)
			r.as = long
		}
	}
	for length := n + 2; length < len(l.byLength); length++ {
		for _, long := range l.byLength[length] {
			switch {
			case strings.HasPrefix(long, w.text):
				add(long, quality)
			case isShorthand(w.text, long), (w.dotted || n >= 5) && isContraction(w.text, long):
				add(long, quality-0.05)
			}
		}
	}
	// A beginning that many words share says little of any of them.
	if len(r.senses) > 2 {
		for i := range r.senses {
			r.senses[i].quality *= 2.4 / float64(len(r.senses))
		}
		r.quality *= 0.8
	}
	return r, len(r.senses) > 0 || len(r.fields) > 0
}

// misspelt reads a word that is one or two letters away from a known one.
func (l *lexicon) misspelt(text string) (reading, bool) {
	n := len(text)
	limit := 0
	switch {
	case n >= 9:
		limit = 2
	case n >= 5:
		limit = 1
	case n == 4:
		limit = 1
	}
	if limit == 0 || n >= len(l.byLength)-2 {
		return reading{}, false
	}
	best := limit + 1
	letters := lettersOf(text)
	var words []string
	for length := max(3, n-limit); length <= n+limit; length++ {
		for i, known := range l.byLength[length] {
			if bits.OnesCount32(letters^l.letters[length][i]) > 2*limit {
				continue // too many other letters, however they stand
			}
			if n <= 5 && known[0] != text[0] {
				continue
			}
			dropped := n == 5 && length == 6 && known[length-1] == text[n-1] // "ouput"
			if n <= 5 && length != n && !dropped {                           // short words: letters changed or swapped, none dropped or added
				continue
			}
			d := distance(text, known, min(limit, best))
			if n == 4 && d == 1 && !swapped(text, known) {
				continue
			}
			if d < best {
				best, words = d, words[:0]
			}
			if d == best && d <= limit {
				words = append(words, known)
			}
		}
	}
	if len(words) == 0 {
		return reading{}, false
	}
	r := reading{quality: 0.9 - 0.07*float64(best), as: words[0]}
	for _, known := range words {
		for _, g := range l.words[known] {
			if !slices.ContainsFunc(r.senses, func(o graded) bool { return o.concept == g.concept }) {
				r.senses = append(r.senses, graded{g, r.quality})
			}
		}
		r.fields = append(r.fields, l.single[known]...)
	}
	return r, true
}

// swapped reports whether the two words of equal length differ by two
// neighbouring letters changing places.
func swapped(a, b string) bool {
	for i := 0; i+1 < len(a) && i+1 < len(b); i++ {
		if a[i] != b[i] {
			return a[i] == b[i+1] && a[i+1] == b[i] && a[i+2:] == b[i+2:]
		}
	}
	return false
}

// tail reads the last part of a compound whose first part is unknown: the
// head of a German or Dutch word is its end ("Hauptverstärker").
func (l *lexicon) tail(text string) reading {
	for i := 3; i+5 <= len(text) && i < 20; i++ {
		if list := l.part(text[i:]); list != nil {
			return reading{senses: weigh(list[:1], 0.72)}
		}
		if len(text)-i >= 7 {
			if r, ok := l.misspelt(text[i:]); ok && l.part(text[:i]) != nil {
				g := append(weigh(l.part(text[:i])[:1], 0.8), r.senses...)
				return reading{senses: g, compound: true}
			}
		}
	}
	// Only the beginning is known: "Zonenbezeichner".
	for i := len(text) - 4; i >= 4; i-- {
		if list := l.part(text[:i]); list != nil {
			return reading{senses: weigh(list[:1], 0.55)}
		}
	}
	return reading{}
}
