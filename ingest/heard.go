package ingest

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Notes name amplifiers and lines as the rows do, and such names may be any
// words: "Old rack: 2 outputs of 15 W", "EV 1: 60 W", "Foyer line 120 W". Names
// that rows use are put into a form that the reader of sentences knows before
// it reads them.

// A standIn is a text with codes in place of the names that rows use.
type standIn struct {
	text  string
	names []string // what the codes QX1, QX2, ... stand for
	bare  bool     // no word of the text speaks of amplifiers or outputs
}

// codeStem begins the codes; no schedule is likely to use it.
const codeStem = "QX"

// joiners may stand between the names of a list.
var joiners = map[string]bool{"and": true, "und": true, "et": true, "y": true, "e": true, "en": true, "&": true, "+": true, ",": true, "/": true}

// standIns puts codes in place of the names of amplifiers and lines that rows
// use, where they head a part of the text.
func (b *builder) standIns(text string) standIn {
	s := standIn{}
	var out strings.Builder
	words := wordsAt(text)
	end := 0      // of what was copied
	heads := true // a name may stand here
	listed := ""  // kind of the name just before, while only joiners follow it
	before := ""  // the word before
	for i := 0; i < len(words); i++ {
		w := words[i]
		gap := strings.TrimSpace(text[end:w[0]])
		if end == 0 || strings.ContainsAny(gap, ",;:.(=+&/\n") || gap == "-" || gap == "–" {
			heads = true
		}
		if gap != "" && !joiners[gap] {
			listed = ""
		}
		out.WriteString(text[end:w[0]])
		word := text[w[0]:w[1]]
		n, kind := 0, ""
		if heads || listed != "" {
			n, kind = b.nameAtWord(text, words[i:])
		}
		switch {
		case n > 0:
			s.names = append(s.names, text[w[0]:words[i+n-1][1]])
			if listed != kind && !join.HasWord(join.Amplifier, before) && (kind == ampHead || !saysOutput.Of(before, 0)) {
				out.WriteString(kind)
			}
			out.WriteString(codeStem + strconv.Itoa(len(s.names)))
			listed = kind
			i += n - 1
			if kind == ampHead && i+1 < len(words) && join.HasWord(join.Amplifier, text[words[i+1][0]:words[i+1][1]]) && strings.TrimSpace(text[words[i][1]:words[i+1][0]]) == "" {
				i++ // "the rink amp is 120 W"
			}
			end = words[i][1]
		default:
			out.WriteString(word)
			end = w[1]
			if !joiners[join.Fold(word)] {
				listed = ""
			}
		}
		heads = heads && n == 0 && (slices.Contains(articleWords, join.Fold(word)) || slices.Contains(belongsWords, join.Fold(word))) || join.HasWord(join.Amplifier, word) || saysOutput.Of(word, 0) || slices.Contains(outputsWords, join.Fold(word)) || n == 0 && joiners[join.Fold(word)] || strings.ContainsAny(word, "0123456789") && n == 0
		before = word
	}
	if len(s.names) == 0 {
		return s
	}
	out.WriteString(text[end:])
	s.text, s.bare = out.String(), !notation.SpeaksOfAmplifier(text)
	return s
}

// What stands before the code of a name.
const (
	ampHead  = "Amp "
	lineHead = "output "
)

// wordsAt are the words of a text: from where to where.
func wordsAt(text string) [][2]int {
	var out [][2]int
	start := -1
	for i, r := range text {
		inside := unicode.IsLetter(r) || unicode.IsDigit(r) || start >= 0 && strings.ContainsRune("-._", r) && i+1 < len(text) && isAlnum(rune(text[i+1]))
		switch {
		case inside && start < 0:
			start = i
		case !inside && start >= 0:
			out = append(out, [2]int{start, i})
			start = -1
		}
	}
	if start >= 0 {
		out = append(out, [2]int{start, len(text)})
	}
	return out
}

// nameAtWord is the number of words of the longest name of an amplifier or a
// line that begins with the first of the words, and what it is.
func (b *builder) nameAtWord(text string, words [][2]int) (n int, kind string) {
	for n := min(longestAmpName, len(words)); n > 0; n-- {
		name := text[words[0][0]:words[n-1][1]]
		if utf8.RuneCountInString(name) < 2 || !strings.ContainsFunc(name, unicode.IsLetter) || strings.ContainsAny(name, ",;:()=\n") || len(name) > longestName ||
			join.HasWord(join.Amplifier, name) && join.Parse(join.Amplifier, name).Title == "" || anyDigit(name) && twoFigures.MatchString(name) {
			continue // what the reader of sentences knows itself, or a name and a figure
		}
		k := join.Key(name)
		switch {
		case b.dir.ampRefs[k], b.likeFeeder(k):
			return n, ampHead
		case b.places.lines[k]:
			return n, lineHead
		}
	}
	return 0, ""
}

// twoFigures finds two figures with a space between them.
var twoFigures = regexp.MustCompile(`\d\s+\d`)

// likeFeeder reports whether the key of a name differs in its figures alone from
// those of amplifiers that rows name.
func (b *builder) likeFeeder(key string) bool {
	stem := strings.TrimRight(key, "0123456789")
	if stem == key || stem == "" {
		return false
	}
	if b.dir.ampStems == nil {
		b.dir.ampStems = make(map[string]bool)
		for k := range b.dir.ampRefs {
			if of := strings.TrimRight(k, "0123456789"); of != k {
				b.dir.ampStems[of] = true
			}
		}
	}
	return b.dir.ampStems[stem]
}

// hearNames reads the sentences that name amplifiers and lines as rows do.
func (b *builder) hearNames() {
	if len(b.dir.ampRefs) == 0 && len(b.places.lines) == 0 {
		return
	}
	for _, row := range spokenRows(b.spoken) {
		heard := false
		for _, s := range row {
			heard = b.hearNamed(s.text, s.at, s.at) || heard
		}
		if !heard && len(row) > 1 {
			texts := make([]string, len(row))
			for i, s := range row {
				texts[i] = s.text
			}
			for _, between := range []string{"; ", " "} {
				text := strings.Join(texts, between)
				if b.hearNamed(text, row[0].at, row[len(row)-1].at) || namesFirst(sentence(text, row[0].at)) {
					break
				}
			}
		}
	}
}

// spokenRows are the texts outside the tables, row by row.
func spokenRows(list []spoken) [][]spoken {
	var out [][]spoken
	for i, s := range list {
		if i > 0 && list[i-1].at.Sheet() == s.at.Sheet() && list[i-1].at.Row == s.at.Row {
			out[len(out)-1] = append(out[len(out)-1], s)
			continue
		}
		out = append(out, []spoken{s})
	}
	return out
}

// hearNamed reads one text, which stands in the cells from first to last, and
// reports whether it rates something by a name that rows use.
func (b *builder) hearNamed(text string, first, last schedule.Ref) bool {
	if len(text) > longestSpoken {
		return false
	}
	in := b.standIns(b.withoutRemark(text))
	if len(in.names) == 0 {
		return false
	}
	list := sentence(in.text, first)
	named := func(code string) (string, bool) {
		n, err := strconv.Atoi(strings.TrimPrefix(code, codeStem))
		if !strings.HasPrefix(code, codeStem) || err != nil || n > len(in.names) {
			return code, false
		}
		return tidy(in.names[n-1]), true
	}
	rated := false
	for i := range list {
		s := &list[i]
		s.source.Written = text
		var ok bool
		if s.Name, ok = named(s.Name); ok {
			s.Worded = true
			rated = rated || s.W > 0 || s.TotalW > 0
		}
		s.Ways = slices.Clone(s.Ways)
		for k := range s.Ways {
			if s.Ways[k].Name, ok = named(s.Ways[k].Name); ok {
				rated = rated || s.Ways[k].W > 0 || s.Name != "" && s.W > 0 // "PA1: 4 x 125 W (LS1, LS2)"
			}
		}
		s.bare = in.bare && s.Outputs == 0 && !s.PerOutput
		if s.bare && !usualOutput(s.W) || s.bare && slices.ContainsFunc(s.Ways, func(w notation.NamedWatts) bool { return !usualOutput(w.W) }) {
			return false // loads, more likely
		}
	}
	if !rated {
		return false
	}
	b.said = slices.DeleteFunc(b.said, func(s said) bool { // the same, with the names not known
		at := s.source.At
		return at.Sheet() == first.Sheet() && at.Row == first.Row && at.Col >= first.Col && at.Col <= last.Col
	})
	b.said = append(b.said, list...)
	return true
}

// usualOutput reports whether watts are a usual rating of an output, or none.
func usualOutput(w float64) bool { return w == 0 || slices.Contains(usualOutputs, w) }

// A bareRating is the rating of an output by no more than its name and watts.
type bareRating struct {
	channel *schedule.Channel
	watts   float64
	at      seen
}

// loadsNotRatings takes back the ratings of a list of names and watts where all
// of them are the loads of their outputs: then they are claims about these.
func (b *builder) loadsNotRatings() {
	groups := make(map[schedule.Ref][]bareRating)
	var order []schedule.Ref
	for _, r := range b.bare {
		at := r.at.source.At
		at.Col = 0 // what stands in one row is one list
		if groups[at] == nil {
			order = append(order, at)
		}
		groups[at] = append(groups[at], r)
	}
	for _, at := range order {
		list := groups[at]
		if slices.ContainsFunc(list, func(r bareRating) bool { return math.Abs(b.wattsOn(r.channel)-r.watts) > 0.01*r.watts }) {
			b.take(list[0].at, "channel rating", "ratings", schedule.LikelierReading, "watts beside names, usual as ratings")
			continue
		}
		for _, r := range list {
			delete(b.channelRated, r.channel)
			src := r.at.source
			set(b, &r.channel.Stated, schedule.Exactly(schedule.Watts(r.watts), src), "stated load", "channel "+r.channel.Label())
		}
	}
}

// wattsOn is the sum of the taps that hang on a channel, as far as they are known.
func (b *builder) wattsOn(c *schedule.Channel) float64 {
	sum := 0.0
	for _, l := range b.job.Loudspeakers {
		if l.Channel == c && l.Status == schedule.Installed {
			sum += float64(l.Tap.High) * float64(l.Count.High)
		}
	}
	return sum
}

// sheetAmps takes the amplifier that the words above a list speak of for that of
// the list, where each of several sheets has its own and no row names one.
func (b *builder) sheetAmps() {
	own := make(map[*table]*said)
	sheets := make(map[string]bool)
	for _, t := range b.tables {
		if t.kind != layout.Loudspeakers && t.kind != layout.Mixed || t.SheetHidden || len(t.HeaderRows) == 0 || t.Transposed {
			continue
		}
		if t.has(vocabulary.Amplifier) || t.has(vocabulary.Channel) || t.has(vocabulary.Circuit) || t.sectioned(vocabulary.Amplifier) || t.sectioned(vocabulary.Channel) {
			return
		}
		for i := range b.said {
			s := &b.said[i]
			if s.source.At.Sheet() != t.Sheet || int(s.source.At.Row) >= t.HeaderRows[0] || !s.Worded || s.Name == "" {
				continue
			}
			if own[t] != nil && own[t].Name != s.Name {
				return
			}
			own[t] = s
		}
		if own[t] != nil {
			sheets[t.Sheet] = true
		}
	}
	if len(sheets) < 2 {
		return
	}
	for _, t := range b.tables {
		if s := own[t]; s != nil && !t.title(vocabulary.Amplifier).had() {
			t.titles = append(slices.Clip(t.titles), layout.Fact{Field: vocabulary.Amplifier, Text: s.ampText(), At: s.source.At})
		}
	}
}
