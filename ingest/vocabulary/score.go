package vocabulary

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/ingest/notation"
)

// A Candidate is a field that a header may mean.
type Candidate struct {
	Field    Field
	Score    float64 // 0 to 1
	Evidence string  // in words: "header 'Abgriff' (de)"
	Language string  // of the words: en, de, fr, es, it, nl; "" when not told
}

// A Header is what the words of a header say by themselves.
type Header struct {
	Candidates []Candidate // best first
	Unit       string      // "W", "V", "ft", "m", "AWG", "mm2", "ohm", "%", "money", ...; "" if none
	Volts      float64     // the line voltage named, else 0
	Numbered   bool        // it holds a number that is no voltage: "Zone 3" is rather a value than a header
	Words      int         // number of words
	Explained  float64     // share of the words that were understood
}

// Best returns the best candidate, or the zero Candidate.
func (h *Header) Best() Candidate {
	if len(h.Candidates) == 0 {
		return Candidate{}
	}
	return h.Candidates[0]
}

// Of returns the score of one field.
func (h *Header) Of(f Field) float64 {
	for _, c := range h.Candidates {
		if c.Field == f {
			return c.Score
		}
	}
	return 0
}

// Score returns the fields that a header may mean, best first.
func Score(header string) []Candidate {
	h := NewScorer().Header(header)
	return h.Candidates
}

// A Scorer reads headers. What any of them has read is remembered for all, so
// that the headers of an archive are read once.
type Scorer struct{}

// NewScorer returns a Scorer.
func NewScorer() *Scorer { return &Scorer{} }

// maxHeader bounds the text of a header; what is longer is prose.
const maxHeader = 120

// Header reads the words of a header.
func (s *Scorer) Header(text string) *Header { return headers.Of(text, 0) }

func (s *Scorer) read(text string) *Header {
	h := &Header{}
	if len(text) > maxHeader || strings.TrimSpace(text) == "" {
		return h
	}
	l := lex()
	said := s.ofEachPiece(withoutDay(text))
	var rest string
	rest, h.Unit, h.Volts = measure(said)
	if h.Volts == 0 {
		rest, h.Volts = s.tapAtLine(rest)
	}
	rest, asked := cutYesNo(rest)
	full := split(said)
	best := map[Field]Candidate{}
	offer := func(c Candidate) {
		if c.Score > best[c.Field].Score {
			best[c.Field] = c
		}
	}
	exact := func(list []phrase, factor float64, how string) {
		for _, p := range list {
			offer(Candidate{p.field, p.weight * factor, fmt.Sprintf("header %q (%s)%s", text, p.lang, how), p.lang})
		}
	}
	exact(l.phrases[joined(full)], 1, "")
	if len(full) == 0 {
		exact(l.phrases[strings.TrimSpace(text)], 1, "")
	}
	words := split(rest)
	if len(words) > 0 {
		exact(l.phrases[joined(words)], 0.98, "")
		stems := stemsOf(words)
		exact(l.stemmed[strings.Join(stems, " ")], 0.95, ", words in another form")
		if len(stems) > 1 && !l.isNumber(words[0].text) {
			slices.Sort(stems)
			exact(l.sorted[strings.Join(stems, " ")], otherOrder, ", words in another order or form")
		}
	}
	if corrected, quality := s.corrected(words); quality > 0 {
		exact(l.phrases[corrected], quality, fmt.Sprintf(", read as %q", corrected))
	}
	if reVoltages.MatchString(text) {
		h.Volts = 0
		offer(Candidate{LineVoltage, 0.75, fmt.Sprintf("header %q names voltages", text), ""})
	}
	if len(words) == 0 && h.Volts > 0 {
		offer(Candidate{LineVoltage, 0.6, fmt.Sprintf("header %q names a voltage", text), ""})
		offer(Candidate{Tap, 0.45, fmt.Sprintf("header %q names a voltage", text), ""})
	}
	if len(words) == 0 {
		words = full
	}
	s.understand(h, text, words, offer)
	if h.Unit != "" && len(full) > len(words) { // "Amplifier W": the unit is one of the words
		numbered := h.Numbered
		s.understand(h, text, full, offer)
		h.Numbered = numbered
	}
	if asked && best[Mounting].Score >= 0.5 { // "Fitted (Y/N)"
		offer(Candidate{Status, 0.92, fmt.Sprintf("header %q asks for yes or no", text), ""})
	}
	if h.Unit == "m" || h.Unit == "ft" { // "Cable route, m" is as long as it says, unless it is a height
		said := best[Route].Score
		for _, f := range []Field{Cable, CableType, Circuit} {
			said = max(said, best[f].Score)
		}
		offer(Candidate{Length, 0.9 * said, fmt.Sprintf("header %q names a cable and a length", text), ""})
	}
	if length := sizedLength(text, h.Unit); length != "" {
		offer(Candidate{Length, 0.95 * s.read(length).Of(Length), fmt.Sprintf("header %q names a cable with its size and a length", text), ""})
	}
	if h.Unit == "mm2" || h.Unit == "AWG" { // "Cable mm2"
		offer(Candidate{Gauge, max(best[Cable].Score, best[CableType].Score), fmt.Sprintf("header %q names a cable and a size", text), ""})
	}
	if h.Unit == "m2" {
		offer(Candidate{Ignored, 0.9, fmt.Sprintf("header %q is an area of floor", text), ""})
	}
	if c, ok := s.inTwoLanguages(text); ok {
		offer(c)
	}
	for _, c := range best {
		c.Score *= Fits(c.Field, h.Unit)
		h.Candidates = append(h.Candidates, c)
	}
	slices.SortFunc(h.Candidates, func(a, b Candidate) int {
		return cmp.Or(cmp.Compare(b.Score, a.Score), cmp.Compare(a.Field, b.Field))
	})
	return h
}

// dayBehind finds a day at the end of a header, with the word that leads to it: "Constat du 02/03", "Befund vom 02.03.2021".
var dayBehind = regexp.MustCompile(`(?i)^(.*\p{L}.*?)\s+(?:(?:of|on|from|vom|am|du|le|au|del|al|di|il|van|op|d\.d\.)\s+)?(?:0[1-9]|[12]\d|3[01])[./](?:0[1-9]|1[0-2])(?:\.|[./](?:20)?\d\d)?$`)

// withoutDay is a header without the day at its end.
func withoutDay(header string) string {
	if m := dayBehind.FindStringSubmatch(strings.TrimSpace(header)); m != nil {
		return m[1]
	}
	return header
}

// sizedLength is a header of lengths without the size of the cable in it: "Cable (m)" of "Cable 2x1,5 (m)"; ""
// where it has none.
func sizedLength(header, unit string) string {
	if unit != "m" && unit != "ft" {
		return ""
	}
	size, rest, ok := notation.ConductorIn(header, notation.Auto)
	if !ok || size.AWG == nil && size.AreaMM2 == 0 || rest == header {
		return ""
	}
	return rest
}

// inTwoLanguages is the field that both halves of a header mean, each in its language:
// "van / von", "Nombre / Anzahl".
func (s *Scorer) inTwoLanguages(header string) (Candidate, bool) {
	one, two, ok := strings.Cut(header, " / ")
	if !ok || strings.Contains(two, "/") {
		return Candidate{}, false
	}
	x, y := s.read(one).Candidates, s.read(two).Candidates
	if len(x) == 0 || len(y) == 0 || x[0].Score < 0.7 || y[0].Score < 0.7 || x[0].Field != y[0].Field {
		return Candidate{}, false
	}
	return Candidate{x[0].Field, min(1, max(x[0].Score, y[0].Score)), fmt.Sprintf("header %q says it twice", header), x[0].Language}, true
}

// eachPiece finds a stroke and a word or an abbreviation for a piece or a loudspeaker at the
// end of a header.
var eachPiece = regexp.MustCompile(`(?i)^(.*\S)\s*/\s*(?:` + pieceWords + `|each|cad|unit|unité|unidad|ls|lsp|spkr|speaker|loudspeaker|hp|altavoz|diffusore|luidspreker|head)\.?$`)

// ofEachPiece is a header of powers "W/pc" as "W each"; others stay as they are.
func (s *Scorer) ofEachPiece(header string) string {
	m := eachPiece.FindStringSubmatch(header)
	if m == nil {
		return header
	}
	if c := s.Concepts(m[1]); !slices.Contains(c, "power") && !slices.Contains(c, "tap") {
		return header
	}
	return m[1] + " each"
}

// bareLine finds a line voltage without its unit at the end of a header. 25 and 50
// would rather be watts.
var bareLine = regexp.MustCompile(`^(\D+?)\s*[@(]?\s*(70(?:[.,]7)?|100)\)?$`)

// tapAtLine takes the line voltage off "Tap 70" and "Tap 100": no tap is one of 70 W.
func (s *Scorer) tapAtLine(header string) (rest string, volts float64) {
	m := bareLine.FindStringSubmatch(strings.TrimSpace(header))
	if m == nil || !slices.Contains(s.Concepts(m[1]), "tap") {
		return header, 0
	}
	volts, err := strconv.ParseFloat(strings.Replace(m[2], ",", ".", 1), 64)
	if err != nil {
		return header, 0
	}
	return m[1], volts
}

// otherOrder is what a phrase is worth whose words stand in another order:
// "voltage, line", but also "potencia etapa" where "etapa de potencia" was meant.
const otherOrder = 0.87

// understand reads the words one by one and offers the fields that their
// concepts make together.
func (s *Scorer) understand(h *Header, text string, words []word, offer func(Candidate)) {
	l := lex()
	var parts []reading
	counted := 0
	quality := map[int]float64{}
	owner := map[int]int{} // concept -> word
	for i := 0; i < len(words); i++ {
		w := words[i]
		if w.text[0] >= '0' && w.text[0] <= '9' {
			h.Numbered = true
			counted++
			parts = append(parts, reading{})
			continue
		}
		if little[w.text] && len(words) > 1 {
			continue
		}
		r := s.word(w)
		if both := l.together(words[i:]); both != nil {
			r = reading{senses: weigh(both, 0.98)}
			i++
		}
		for _, g := range r.senses {
			if g.quality > quality[g.concept] {
				quality[g.concept] = g.quality
				owner[g.concept] = len(parts)
			}
		}
		parts = append(parts, r)
		counted++
	}
	s.countOf(words, quality, owner)
	h.Words = counted
	if counted == 0 {
		return
	}
	understood := 0
	for _, p := range parts {
		if len(p.senses) > 0 || len(p.fields) > 0 {
			understood++
		}
	}
	h.Explained = float64(understood) / float64(counted)
	if counted == 1 {
		for _, f := range parts[0].fields {
			offer(Candidate{f.field, f.weight * parts[0].quality, fmt.Sprintf("header %q read as %q (%s)", text, parts[0].as, f.lang), f.lang})
		}
	}
	summed := quality[l.total] >= 0.9
	ofOutput := quality[l.channel] >= 0.9
	for _, m := range l.meanings {
		q, words := 1.0, 0
		var used [16]bool
		lang := ""
		for _, c := range m.concepts {
			cq, ok := quality[c]
			if !ok {
				q = 0
				break
			}
			q = min(q, cq)
			o := owner[c]
			if o < len(used) && !used[o] {
				used[o] = true
				words++
			}
			for _, g := range parts[o].senses {
				if g.concept == c && (lang == "" || lang == "en") {
					lang = g.lang
				}
			}
		}
		if q == 0 {
			continue
		}
		// Several concepts may come out of one compound word; what they do not
		// use of it counts as not understood.
		covered := float64(words)
		for o := range parts {
			if o < len(used) && used[o] && parts[o].compound {
				n := 0
				for _, c := range m.concepts {
					if owner[c] == o {
						n++
					}
				}
				covered -= 1 - float64(n)/float64(max(n, len(parts[o].senses)))
			}
		}
		score := 0.96 * m.weight * q * (0.5 + 0.5*covered/float64(counted)) * (1 - 0.36*(1-h.Explained))
		if summed && apiece[m.field] && !slices.Contains(m.concepts, l.total) {
			score *= 0.75 // the sum of something is no figure of one device
		}
		if ofOutput && m.field == Tap && !slices.Contains(m.concepts, l.tap) {
			score *= 0.75 // "Power per output" is the output's
		}
		offer(Candidate{m.field, score, fmt.Sprintf("header %q understood as %s", text, l.conceptNames(m.concepts)), lang})
	}
}

// apiece are the fields that state something of one device.
var apiece = [Fields]bool{Tap: true, TapList: true, RatedWatts: true}

// corrected puts misspelt words right. The quality is 0 when there are none.
func (s *Scorer) corrected(words []word) (string, float64) {
	if len(words) < 2 || len(words) > 5 {
		return "", 0 // a single word is read with its fields
	}
	q := 1.0
	right := slices.Clone(words)
	for i, w := range words {
		if r := s.word(w); r.as != "" && r.as != w.text {
			q = min(q, r.quality)
			right[i].text = r.as
		}
	}
	if q == 1 {
		return "", 0
	}
	return joined(right), q
}

// pluralSpeakers are words for more than one loudspeaker: beside a word for
// "number" or "fitted" they make it a count.
var pluralSpeakers = set("speakers loudspeakers spkrs altavoces diffusori altoparlanti luidsprekers weergevers parleurs hautparleurs enceintes heads horns sounders kopfe koppen tetes casse cabezas parlantes difusores")

// countOf lets "number of", "number ... loudspeakers" and "loudspeakers fitted" mean a count.
func (s *Scorer) countOf(words []word, quality map[int]float64, owner map[int]int) {
	l := lex()
	if quality[l.count] > 0 {
		return
	}
	number := l.number
	q, numbered := quality[number]
	if !numbered {
		number = slices.Index(l.names, "mounting")
		if q = quality[number]; q == 0 || len(quality) > 3 {
			return
		}
	}
	for i, w := range words {
		if pluralSpeakers[w.text] || numbered && w.text == "of" && i == 1 {
			quality[l.count], owner[l.count] = q, owner[number]
			delete(quality, number)
			return
		}
	}
}

func (l *lexicon) conceptNames(ids []int) string {
	var b strings.Builder
	for i, id := range ids {
		if i > 0 {
			b.WriteString(" + ")
		}
		b.WriteString(l.names[id])
	}
	return b.String()
}

// Concepts returns the names of the concepts that the words of a text stand
// for ("amplifier", "zone", "total"), each once, in the order of the words, and only where
// the word is written out or is a usual abbreviation.
func (s *Scorer) Concepts(text string) []string { return conceptLists.Of(text, 0) }

// together is what two words mean that make one, "haut parleur" or "cross section", nil if they make none.
func (l *lexicon) together(words []word) []sense {
	if len(words) < 2 || len(words[0].text)+len(words[1].text) <= 4 {
		return nil
	}
	both := l.words[words[0].text+words[1].text]
	if both == nil && len(words[1].text) > 3 {
		both = l.stems[stem(words[0].text+words[1].text)]
	}
	return both
}

func (s *Scorer) concepts(text string) []string {
	var names []string
	l := lex()
	if len(text) > maxHeader {
		return nil
	}
	words := split(text)
	for i := 0; i < len(words); i++ {
		senses := s.word(words[i]).senses
		if both := l.together(words[i:]); both != nil {
			senses = weigh(both, 0.98)
			i++
		}
		for _, g := range senses {
			if g.quality >= 0.9 && !slices.Contains(names, l.names[g.concept]) {
				names = append(names, l.names[g.concept])
			}
		}
	}
	return names
}
