package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// The site of a job is the place that a title names, without the words for the
// list, the work and the firm around it; else the place in the name of the
// file; else the folder.

var (
	titleWords = wordClasses["title"] // words for lists and what they list
	ownerWords = wordClasses["owner"] // words for the body that owns the place, or works there
	workWords  = wordClasses["work"]  // words for the work that a job is
	placeWords = wordClasses["place"] // words for kinds of places
	asOfWords  = wordClasses["as of"] // words in front of the date of a list
)

// siteInTitle takes the place that a title of the first sheets names for the
// site, where nothing else states a site or names the job. A title with a word
// for a kind of place goes first.
func (b *builder) siteInTitle() {
	if b.job.Site.Had() || b.job.Name.Had() {
		return
	}
	var first, kind *layout.Fact
	for _, f := range b.titlesAbove() {
		place := placeIn(f.Text)
		switch {
		case place == "", b.namesZone(place, f.At.Sheet()), wordClasses["reference"].begins(join.Fold(f.Text)): // "Our ref T-905"
		case isPlace(place) && kind == nil:
			kind = f
		case first == nil:
			first = f
		}
	}
	f := kind
	if f == nil {
		f = first
	}
	if f == nil {
		return
	}
	s := factSeen(f)
	s.text = placeIn(f.Text)
	because := "the title of the sheet"
	if at, place := b.placeOfSheets(); place != "" {
		s, because = factSeen(at), "a part of the titles of several sheets"
		s.text = place
	}
	if fuller := placeOfFile(b.job.File); len(join.Fold(fuller)) > len(join.Fold(s.text)) && isPlace(fuller) && strings.Contains(join.Fold(fuller), join.Fold(s.text)) {
		s.text, because = fuller, "the title of the sheet, in full in the file's name"
	}
	b.job.Site = s.asText()
	b.take(s, "site", s.text, schedule.LikelierReading, because)
}

// placeOfSheets is the part that names a kind of place in the titles of several sheets
// which differ otherwise: "Rack A plant room - Holm Lane Ice Rink", "Rack B box - Holm
// Lane Ice Rink".
func (b *builder) placeOfSheets() (*layout.Fact, string) {
	sheets := make(map[string]map[string]bool) // by part
	whole := make(map[string]bool)
	type part struct {
		of   *layout.Fact
		text string
	}
	var parts []part
	for _, f := range b.titlesAbove() {
		whole[join.Fold(f.Text)] = true
		split := titleBreaks.Split(f.Text, -1)
		for _, text := range split {
			place, k := placeIn(text), join.Fold(text)
			if len(split) < 2 || place == "" || !isPlace(place) {
				continue
			}
			if sheets[k] == nil {
				sheets[k] = make(map[string]bool)
				parts = append(parts, part{f, text})
			}
			sheets[k][f.At.Sheet()] = true
		}
	}
	for _, p := range parts {
		if len(sheets[join.Fold(p.text)]) > 1 && len(whole) > 1 {
			return p.of, placeIn(p.text)
		}
	}
	return nil, ""
}

// namesZone reports whether a title is the name of one of several zones of its
// sheet, or of the room of a rack.
func (b *builder) namesZone(title string, sheet string) bool {
	if b.zoneKeys == nil {
		b.zoneKeys = make(map[string]map[string]bool)
		for _, t := range b.tables {
			keys := b.zoneKeys[t.Sheet]
			if keys == nil {
				keys = make(map[string]bool)
				b.zoneKeys[t.Sheet] = keys
			}
			for _, r := range t.rows {
				if z := r.zoneText(); z.had() {
					keys[z.key()] = true
				}
			}
		}
	}
	keys := b.zoneKeys[sheet]
	return len(keys) > 1 && keys[join.Key(title)] || slices.Contains(rackEnds, join.Fold(title))
}

// titlesAbove are the plain titles above the first table of each sheet, and of
// sheets without a table that have a key only title blocks have.
func (b *builder) titlesAbove() []*layout.Fact {
	first := b.firstRows()
	named := make(map[string]bool)
	for i := range b.facts {
		switch b.facts[i].Field {
		case vocabulary.JobNo, vocabulary.Date, vocabulary.Revision, vocabulary.Client, vocabulary.Author:
			named[b.facts[i].At.Sheet()] = true
		}
	}
	var out []*layout.Fact
	for i := range b.facts {
		f := &b.facts[i]
		top, table := first[f.At.Sheet()]
		if i > 0 && f.Field == vocabulary.Unknown && b.facts[i-1].Field == vocabulary.Amplifier && b.facts[i-1].At == f.At {
			continue // "Amp 1 = 250 W (pitch)": what it feeds
		}
		if (plainTitle(f) || subjectWords.in(join.Fold(f.Key)) && f.Field == vocabulary.Unknown || f.Field == vocabulary.LineVoltage && f.Key == "" && f.At.Row > 0) && (table && int(f.At.Row) < top || !table && named[f.At.Sheet()]) {
			out = append(out, f)
		} else if f.Field == vocabulary.Unknown && f.At.Row > 0 && table && int(f.At.Row) < top && isPlace(f.Key) { // "Fern Gardens: PA devices"
			out = append(out, &layout.Fact{Text: f.Key + ": " + f.Text, At: f.At})
		} else if f.Field == vocabulary.Unknown && f.At.Row > 0 && table && int(f.At.Row) < top && onlyTitleWords(f.Key) && isPlace(f.Text) { // "Speaker survey | Fern Gardens"
			out = append(out, &layout.Fact{Text: f.Text, At: f.At})
		}
	}
	for _, s := range b.spoken { // a title that reads like a sentence
		other := func(f layout.Fact) bool { return f.At == s.at && f.Field != vocabulary.LineVoltage } // "Lido, everything is 100 V"
		if top, table := first[s.at.Sheet()]; table && s.at.Row == 1 && int(s.at.Row) < top && !slices.ContainsFunc(b.facts, other) {
			out = append(out, &layout.Fact{Text: s.text, At: s.at})
		}
	}
	return out
}

// firstRows are the first rows of tables, by sheet.
func (b *builder) firstRows() map[string]int {
	first := make(map[string]int)
	for _, t := range b.tables {
		if n := t.Range.Row1; first[t.Sheet] == 0 || n < first[t.Sheet] {
			first[t.Sheet] = n
		}
	}
	return first
}

// columnsOfJob takes what columns for the site and the number of the job say the
// same in all rows: a list of one job that repeats its name.
func (b *builder) columnsOfJob() {
	for _, x := range []struct {
		field vocabulary.Field
		to    *schedule.Text
	}{{vocabulary.Site, &b.job.Site}, {vocabulary.JobNo, &b.job.Number}, {vocabulary.Job, &b.job.Name}} {
		var only seen
		same := true
		for _, t := range b.tables {
			for _, r := range t.rows {
				s := r.own(x.field)
				if r.Class != layout.Device || !s.had() || x.field == vocabulary.Site && strings.IndexFunc(s.text, isLetter) < 0 { // an address in a network
					continue
				}
				same = same && (!only.had() || s.key() == only.key())
				only = s
			}
		}
		if only.had() && same && !x.to.Had() {
			*x.to = only.asText()
		}
	}
	if name := b.job.Name; name.Had() && !b.job.Number.Had() && anyDigit(name.Value) && countWords(name.Value) == 1 {
		b.job.Number = name
	}
	b.siteOfBuilding()
}

// siteOfBuilding takes for the site what a column of buildings says the same in all rows, where
// no title names a place.
func (b *builder) siteOfBuilding() {
	if b.job.Site.Had() || b.job.Name.Had() || len(b.titlesAbove()) > 0 {
		return
	}
	var only seen
	n := 0
	for _, t := range b.tables {
		for _, r := range t.rows {
			s := r.own(vocabulary.Building)
			if r.Class != layout.Device || !s.had() {
				continue
			}
			if only.had() && s.key() != only.key() {
				return
			}
			only, n = s, n+1
		}
	}
	if n > 1 && isPlace(only.text) && !anyDigit(only.text) {
		b.job.Site = only.asText()
		b.take(only, "site", only.text, schedule.LikelierReading, "the only building of the list")
	}
}

// shortestPlace is the fewest letters of the name of a place.
const shortestPlace = 4

var (
	figureOfWatts = regexp.MustCompile(`(?i)\d\s?k?w(?:atts?)?\b`)                                    // a power inside a text: "60 W", "50 WATT"
	figureOfVolts = regexp.MustCompile(`(?i)\(?\b(?:25|50|70|70[.,]7|100)\s?-?\s?V(?:olts?)?\b-?\)?`) // a line voltage: "100V", "(70 V)"
	titleBreaks   = regexp.MustCompile(`\s+[-–—|/]\s+|\s*[:;,]\s+|\s*[()]\s*|\n`)
	onSitePhrase  = regexp.MustCompile(`(?i)\b(?:on site|sur site|sur place|vor ort|in loco|in situ|ter plaatse)\b`)
	dayWord       = regexp.MustCompile(`^\d{1,4}[./-]\d{1,2}[./-]\d{2,4}$`)
	addressPhrase = regexp.MustCompile(`(?i)\bpublic\s+address\b`)
	numberBehind  = regexp.MustCompile(`(?i)^(?:no|nr|n°|nº|n|num|ref|#)?[.:º°]*\s*[A-Z]{0,3}[-/]?\d[\d/.-]*[A-Z]?$`) // of a document, behind the word for it
	numberAtEnd   = regexp.MustCompile(`(?i)\s(?:no|nr|n°|nº|n|num|ref|#)[.:º°]*\s*[A-Z]{0,3}[-/]?\d[\d/.-]*[A-Z]?$`)
	codeFirst     = regexp.MustCompile(`^(?:[A-Z]{1,4}-?\d{2,6}|\d{3,6})[ _:–-]+`)
)

// linkWords stand between a word for a list and the place.
var linkWords = wordsSet("of the in at for from to de la le les du des d' l' del della dei di da al el los las dello der die das des dem den im am in von vom zu zur fur van het aan op te voor and und et y e ed en")

func wordsSet(list string) map[string]bool {
	m := make(map[string]bool)
	for w := range strings.FieldsSeq(list) {
		m[w] = true
	}
	return m
}

// placeIn is the part of a title that may name a place, "" if none does: up to
// words for a list, for what it lists or for the work, without the body that
// owns the place. A single word beside such words, "Ceiling loudspeakers", is a
// place where it is a word for one.
func placeIn(title string) string { return placesInTitles.Of(title, 0) }

var placesInTitles = remember.New(2048, func(title string, _ int) string { return findPlace(title) })

func findPlace(title string) string {
	if strings.HasPrefix(title, "[") {
		return "" // a picture
	}
	if figureOfWatts.MatchString(title) {
		return placeBeforeWatts(title)
	}
	title = codeFirst.ReplaceAllString(strings.TrimSpace(figureOfVolts.ReplaceAllString(title, " ")), "")
	title = onSitePhrase.ReplaceAllString(addressPhrase.ReplaceAllString(title, "PA"), " ")
	var parts []string
	for _, part := range titleBreaks.Split(title, -1) {
		words := strings.Fields(part)
		if len(words) == 0 || slices.ContainsFunc(words, func(w string) bool { return ownerWords.in(join.Fold(w)) }) {
			continue
		}
		kept, clean := placeWordsOf(words)
		if asOfWords.ahead(join.Fold(part)) != "" && anyDigit(part) {
			kept = nil // "as of May 2009"
		}
		if said := strings.Join(kept, " "); !clean && (numberBehind.MatchString(said) || numberAtEnd.MatchString(said) && !isPlace(said)) {
			kept = nil // "Proposal no. 3341", "Record of periodic service no. 3306"
		}
		switch {
		case len(kept) == 0 && len(parts) > 0:
			return asPlace(parts)
		case len(kept) == 0:
			continue
		case clean || len(parts) == 0 && (len(kept) > 1 || isPlace(kept[0])):
			parts = append(parts, strings.Join(kept, " "))
		}
		if !clean && len(parts) > 0 {
			break // else the place may stand behind the words for the list: "Site survey - Fern Lodge"
		}
	}
	return asPlace(parts)
}

// placeBeforeWatts is the place in front of what a title says of the system: "Fern Hall, job 4412,
// one amplifier 240 W". Without a word for a place the words may be those of the system.
func placeBeforeWatts(title string) string {
	var before []string
	for _, part := range titleBreaks.Split(title, -1) {
		if figureOfWatts.MatchString(part) {
			break
		}
		before = append(before, part)
	}
	if place := findPlace(strings.Join(before, " - ")); isPlace(place) {
		return place
	}
	return ""
}

// placeWordsOf are the words of a part of a title between those for a list.
// clean reports whether there were none of these.
func placeWordsOf(words []string) (kept []string, clean bool) {
	from := 0
	for from < len(words) && (isTitleWord(words[from]) || from > 0 && linkWords[join.Fold(words[from])]) {
		from++
	}
	to := from
	for to < len(words) && !isTitleWord(words[to]) {
		to++
	}
	clean = from == 0 && to == len(words)
	kept = words[from:to]
	for to < len(words) && len(kept) > 0 && linkWords[join.Fold(kept[len(kept)-1])] {
		kept = kept[:len(kept)-1]
	}
	return kept, clean
}

// onlyTitleWords reports whether all words of a text are words for lists or for what they list.
func onlyTitleWords(text string) bool {
	words := strings.Fields(text)
	kept, _ := placeWordsOf(words)
	return len(words) > 0 && len(kept) == 0
}

// asPlace joins the parts of the name of a place, "" if it has too few letters.
func asPlace(parts []string) string {
	place := strings.Trim(strings.Join(parts, " - "), " .,;:-–&+")
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

// isTitleWord reports whether a word is one for a list, for what it lists or
// for the work, compounds that begin or end with one included.
func isTitleWord(word string) bool { return wordsOfTitles.Of(word, 0) }

var wordsOfTitles = remember.New(8192, func(word string, _ int) bool {
	folded := strings.Trim(join.Fold(word), ".,;:()&+'\"")
	if folded == "" || dayWord.MatchString(folded) {
		return true
	}
	if slices.Contains(placeWords, folded) {
		return false // "Reitanlage", beside "Anlage"
	}
	for _, list := range []wordList{titleWords, workWords} {
		for _, w := range list {
			if folded == w || len(w) >= 6 && (strings.HasPrefix(folded, w) || strings.HasSuffix(folded, w)) {
				return true
			}
		}
	}
	return false
})

// isPlace reports whether a text has a word for a kind of place, alone or
// at the end of a compound: "Eissporthalle".
func isPlace(text string) bool {
	for w := range strings.FieldsSeq(join.Fold(text)) {
		w = strings.Trim(w, ".,;:()-")
		for _, p := range placeWords {
			if w == p || len(p) >= 4 && len(w) > len(p)+2 && strings.HasSuffix(w, p) {
				return true
			}
		}
	}
	return false
}

// versionBehind is what is written behind the name of a file for its version.
var versionBehind = regexp.MustCompile(`(?i)(?:[\s_.,-]+|\b)(?:\(?(?:rev(?:ision)?|ver(?:sion)?|v|issue|iss|ind(?:ice|ex)?|stand)\.?[\s_]*[a-z0-9.]{1,4}\)?|\(\d+\)|\(copy\)|copy|kopie|copie|copia|final|draft|as[\s_-]?(?:built|fitted)|updated?|corrected|latest|bestand|neu|alt|\d{2,4}[-._]\d{2}[-._]\d{2,4}|(?:19|20)\d\d)$`)

// placeOfFile is the place that the name of a file may name, "" if none does.
func placeOfFile(file string) string {
	_, base := splitPath(file)
	base = strings.ReplaceAll(base, "_", " ")
	if m := numberInName.FindString(base); m != "" {
		base = base[len(m):]
	}
	for {
		cut := versionBehind.ReplaceAllString(base, "")
		if cut == base || strings.TrimSpace(cut) == "" {
			break
		}
		base = cut
	}
	return placeIn(base)
}

// plainFolder reports whether the name of a folder may name a place: it is no
// year or number.
func plainFolder(dir string) bool { return strings.Trim(dir, "0123456789-. ") != "" }

// properFolder reports whether the folder names a place better than the name of
// a file that has a word for a place: in several words of which one is such a
// word, or in a name of its own beside a single common word.
func properFolder(dir, file string) bool {
	if !plainFolder(dir) {
		return false
	}
	own := dir[0] >= 'A' && dir[0] <= 'Z' || dir[0] >= 0x80
	return isPlace(dir) && countWords(dir) > 1 || own && countWords(file) == 1
}

// siteByDefault gives a job without a site the place in its file's name where
// that has a word for one, else its folder, else its own name.
func siteByDefault(j *schedule.Job, at schedule.Ref, dir string, named bool) {
	file := placeOfFile(at.File())
	said := schedule.Source{At: at, How: schedule.Default}
	switch {
	case at.Sheet() != "" && placeIn(at.Sheet()) != "" && isPlace(placeIn(at.Sheet())):
		said.Because = "the name of the sheet"
		j.Site = schedule.Text{Value: placeIn(at.Sheet()), Source: said}
	case named:
		said = j.Name.Source
		said.Because = "the job's name stands for the site"
		said.How = schedule.Computed
		place := j.Name.Value
		if p := placeIn(place); isPlace(p) {
			place = p
		}
		j.Site = schedule.Text{Value: place, Source: said}
	case isPlace(file) && !properFolder(dir, file):
		said.Because = "the file's name"
		j.Site = schedule.Text{Value: file, Source: said}
	case plainFolder(dir):
		said.Because = "the folder of the file"
		j.Site = schedule.Text{Value: dir, Source: said}
	case file != "":
		said.Because = "the file's name"
		j.Site = schedule.Text{Value: file, Source: said}
	case dir != "":
		said.Because = "the folder of the file"
		j.Site = schedule.Text{Value: dir, Source: said}
	default:
		said = j.Name.Source
		said.Because = "the job's name stands for the site"
		j.Site = schedule.Text{Value: j.Name.Value, Source: said}
	}
}
