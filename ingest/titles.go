package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Titles name the job and its place without saying so: "Boathouse 6 - heads
// list | EQ-0606". What follows reads such lines where no key does.

var (
	titleWords = wordClasses["title"] // words for lists and what they list
	ownerWords = wordClasses["owner"] // words for the body that owns the place
)

// jobCode is a job number without a key, at the beginning of a text: letters, a
// dash and figures. The letters are caught.
var jobCode = regexp.MustCompile(`^([A-Z]{1,4})-\d{2,6}(?:$|\s)`)

// plainTitle reports whether a fact is a line of a title block of which only
// the words are known.
func plainTitle(f *layout.Fact) bool {
	return f.Field == vocabulary.Unknown && f.Key == "" && f.At.Row > 0
}

// numberTitles finds job numbers without a key in the titles of sheets that
// have none with one. A code counts where another sheet of the book has a job
// number of the same letters; else one alone does, beside the title of a sheet.
func numberTitles(all []sheetPart) {
	letters := make(map[string]bool)
	for i := range all {
		for k := range all[i].facts {
			if f := &all[i].facts[k]; f.Field == vocabulary.JobNo {
				if m := jobCode.FindStringSubmatch(f.Text); m != nil {
					letters[m[1]] = true
				}
			}
		}
	}
	keyed := len(letters) > 0
	codes := make(map[string]bool)
	for i := range all {
		s := &all[i]
		if s.numbered() {
			keyed = true
			continue
		}
		for k := range s.facts {
			if code := s.codeIn(&s.facts[k], letters); code != "" {
				codes[code] = true
			}
		}
	}
	if !keyed && len(codes) > 1 {
		return // drawings or sheets are numbered like this too
	}
	for i := range all {
		s := &all[i]
		if s.numbered() {
			continue
		}
		for k := range s.facts {
			f := &s.facts[k]
			code := s.codeIn(f, letters)
			if code == "" || keyed && !letters[jobCode.FindStringSubmatch(code)[1]] {
				continue
			}
			title := *f
			title.Text, title.Cell = strings.TrimSpace(strings.TrimPrefix(f.Text, code)), nil
			f.Field, f.Text, f.Cell = vocabulary.JobNo, code, nil
			if title.Text != "" {
				s.facts = append(s.facts, title)
			}
			break
		}
	}
}

// numbered reports whether a fact of a sheet is a job number.
func (s *sheetPart) numbered() bool {
	return slices.ContainsFunc(s.facts, func(f layout.Fact) bool { return f.Field == vocabulary.JobNo })
}

// codeIn is the job number without a key that a fact holds, "" if none.
// Letters are those of the job numbers with a key elsewhere in the book.
func (s *sheetPart) codeIn(f *layout.Fact, letters map[string]bool) string {
	m := jobCode.FindStringSubmatch(f.Text)
	if m == nil || !plainTitle(f) || f.At.Row != s.titleRow() || notation.KeyOf(f.Text).Kind != notation.KeyNone {
		return ""
	}
	code := strings.TrimSpace(m[0])
	if letters[m[1]] || code == f.Text && s.titleBeside(f) {
		return code
	}
	return ""
}

// titleRow is the first row with a plain title, 0 if there is none.
func (s *sheetPart) titleRow() int {
	top := 0
	for i := range s.facts {
		if f := &s.facts[i]; plainTitle(f) && (top == 0 || f.At.Row < top) {
			top = f.At.Row
		}
	}
	return top
}

// titleBeside reports whether another plain title stands on the row of a fact.
func (s *sheetPart) titleBeside(f *layout.Fact) bool {
	return slices.ContainsFunc(s.facts, func(o layout.Fact) bool {
		return plainTitle(&o) && o.At.Row == f.At.Row && o.Text != f.Text
	})
}

// siteInTitle takes the place that the title of the first sheet names for the
// site, where nothing else states a site or names the job.
func (b *builder) siteInTitle() {
	if b.job.Site.Had() || b.job.Name.Had() {
		return
	}
	first := make(map[string]int) // the first row of a table of each sheet
	for _, t := range b.tables {
		if n := t.Range.Row1; first[t.Sheet] == 0 || n < first[t.Sheet] {
			first[t.Sheet] = n
		}
	}
	named := make(map[string]bool) // sheets with a key that only a title block has
	for i := range b.facts {
		switch b.facts[i].Field {
		case vocabulary.JobNo, vocabulary.Date, vocabulary.Revision, vocabulary.Client, vocabulary.Author:
			named[b.facts[i].At.Sheet] = true
		}
	}
	for i := range b.facts {
		f := &b.facts[i]
		top, table := first[f.At.Sheet]
		if !plainTitle(f) || table && f.At.Row >= top || !table && !named[f.At.Sheet] {
			continue
		}
		place := placeIn(f.Text)
		if place == "" {
			continue
		}
		s := factSeen(f)
		s.text = place
		b.job.Site = s.asText()
		b.take(s, "site", place, schedule.LikelierReading, "the title of the sheet")
		return
	}
}

// shortestPlace is the fewest letters of the name of a place.
const shortestPlace = 4

// figureOfWatts is a power inside a text: "60 W", "50 WATT".
var figureOfWatts = regexp.MustCompile(`(?i)\d\s?k?w(?:atts?)?\b`)

// placeIn is the part of a title that may name a place, "" if none does: up to
// words for a list or for what it lists, without the body that owns the place.
// A single word beside such words ("Ceiling loudspeakers") is none.
func placeIn(title string) string {
	if _, _, ok := notation.LineVoltageIn(title); ok || figureOfWatts.MatchString(title) {
		return "" // what the system gives
	}
	if m := jobCode.FindString(title); m != "" {
		title = strings.TrimSpace(strings.TrimPrefix(title, m))
	}
	var parts []string
	for part := range strings.SplitSeq(strings.NewReplacer(" – ", " - ", " — ", " - ").Replace(title), " - ") {
		words := strings.Fields(part)
		isOwner := slices.ContainsFunc(words, func(w string) bool { return ownerWords.in(join.Fold(w)) })
		if isOwner || len(words) == 0 {
			continue
		}
		from := 0
		for from < len(words) && isTitleWord(words[from]) {
			from++
		}
		to := from
		for to < len(words) && !isTitleWord(words[to]) {
			to++
		}
		clean := from == 0 && to == len(words)
		if kept := words[from:to]; clean || len(parts) == 0 && len(kept) > 1 {
			parts = append(parts, strings.Join(kept, " "))
		}
		if !clean {
			break
		}
	}
	place := strings.Trim(strings.Join(parts, " - "), " ,;:-")
	letters := 0
	for _, c := range join.Fold(place) {
		if c >= 'a' && c <= 'z' || c >= 0x80 {
			letters++
		}
	}
	if letters < shortestPlace {
		return ""
	}
	return place
}

// isTitleWord reports whether a word is one for a list or for what it lists,
// compounds that begin or end with one included.
func isTitleWord(word string) bool {
	folded := strings.Trim(join.Fold(word), ".,;:()")
	for _, w := range titleWords {
		if folded == w || len(w) >= 6 && (strings.HasPrefix(folded, w) || strings.HasSuffix(folded, w)) {
			return true
		}
	}
	return false
}
