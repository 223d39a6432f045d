package layout

import (
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
	"lineaudit/ingest/watch"
)

// A finder looks for tables on one plane.
type finder struct {
	p        *plane
	s        *vocabulary.Scorer
	forced   map[string]vocabulary.Field // folded header to the field the house book gives it
	known    map[string]headerCell       // nil where neither the house book nor the budget matters
	budget   int                         // header readings left, so that a sheet of prose cannot take for ever
	watch    *watch.Watch
	cardKeys map[int]bool // lines of the plane that are keys and values of a card
}

// reVoltsFirst matches a header that begins with the line voltage: "70 V tap".
var reVoltsFirst = regexp.MustCompile(`(?i)^\d{2,3}(?:[.,]\d)?\s*-?\s*v(?:olts?)?[\s-]+\p{L}{3,}`)

// A headerCell is how much a text looks like a header.
type headerCell struct {
	field vocabulary.Field
	score float64
	title bool // a field of a title block, such as the client
}

// maxReadings bounds the different texts of one sheet that are read as headers.
const maxReadings = 4000

// headerScore is what a header word must score to count as one.
const headerScore = 0.55

// titleFields stand in title blocks rather than over columns.
var titleFields = [vocabulary.Fields]bool{vocabulary.Job: true, vocabulary.JobNo: true, vocabulary.Client: true,
	vocabulary.Author: true, vocabulary.Site: true, vocabulary.Revision: true, vocabulary.Date: true}

func newFinder(p *plane, s *vocabulary.Scorer, forced map[string]vocabulary.Field, w *watch.Watch) *finder {
	f := &finder{p: p, s: s, forced: forced, budget: maxReadings, watch: w}
	cells := 0
	for i := range p.lines {
		cells += len(p.lines[i].slots)
	}
	if cells > maxReadings || len(forced) > 0 {
		f.known = map[string]headerCell{}
	}
	return f
}

// header reads a cell as a header.
func (f *finder) header(c cell) headerCell {
	if c.Kind != grid.String || c.Struck == grid.WholeStruck {
		return headerCell{}
	}
	return f.headerOf(c.says())
}

// headerOf reads a wording as a header; the house book may give it a field.
func (f *finder) headerOf(w *wording) headerCell {
	if f.known == nil {
		return w.header()
	}
	h, ok := f.known[w.line]
	if !ok {
		h = f.readHeader(w)
		f.known[w.line] = h
	}
	return h
}

func (f *finder) readHeader(w *wording) headerCell {
	if !mayBeHeader(w.line) {
		return headerCell{}
	}
	if field, ok := f.forced[w.read().folded]; ok {
		return headerCell{field, 1, false}
	}
	if f.budget <= 0 && !w.is(listedHeader) || isValue(w) {
		return headerCell{}
	}
	f.budget--
	return w.header()
}

// mayBeHeader reports whether a text is short enough for a header, and no key or number.
func mayBeHeader(t string) bool {
	if t == "" || utf8.RuneCountInString(t) > 60 || strings.HasSuffix(t, ":") {
		return false
	}
	_, number := plainNumber(t)
	return !number
}

// isValue reports whether a wording is rather a value than a header: "100 V".
func isValue(w *wording) bool {
	t := w.line
	return t[0] >= '0' && t[0] <= '9' && !reVoltsFirst.MatchString(t) && w.read().look&(lookVolts|lookWatts|lookLength|lookGauge|lookMoney|lookPercent|lookOhm) != 0
}

// readHeaderCell reads a wording as a header, whatever its file.
func readHeaderCell(w *wording) *headerCell {
	if !mayBeHeader(w.line) || isValue(w) {
		return &headerCell{}
	}
	if namesRatedControls(vocabulary.NewScorer(), w.line) {
		return &headerCell{field: vocabulary.Control, score: sureWords}
	}
	r := vocabulary.NewScorer().Header(w.line)
	b := r.Best()
	h := &headerCell{b.Field, b.Score, titleFields[b.Field]}
	if r.Numbered {
		h.score *= 0.55
	}
	if h.title && len(r.Candidates) > 1 && !titleFields[r.Candidates[1].Field] && r.Candidates[1].Score > b.Score-0.15 {
		h.title = false
	}
	return h
}

// A strip is a run of cells of one line that may be a header.
type strip struct {
	slots    []slot
	from, to int
	matched  int // cells that read as headers
	distinct int // different fields among them, title-block fields left out
	data     int // cells that are no words
}

// strips cuts a line where columns are empty and joins what stays a header
// only together.
func (f *finder) strips(l *line) []strip {
	var all []strip
	for i := 0; i < len(l.slots); {
		j := i + 1
		last := f.lastColumn(l.n, l.slots[i].col)
		for j < len(l.slots) && l.slots[j].col <= last+1 {
			last = max(last, f.lastColumn(l.n, l.slots[j].col))
			j++
		}
		all = append(all, strip{slots: l.slots[i:j], from: l.slots[i].col, to: last})
		i = j
	}
	return all
}

// lastColumn is the last column of the merged area that starts at a cell.
func (f *finder) lastColumn(n, col int) int {
	if m, ok := f.p.merged(n, col); ok && m.Col1 == col {
		return m.Col2
	}
	return col
}

// weigh counts what speaks for a strip being a header.
func (f *finder) weigh(s *strip) {
	var fields [48]vocabulary.Field
	seen := fields[:0]
	var series map[string]string
	for _, sl := range s.slots {
		h := f.header(sl.cell)
		if h.score < headerScore && anyDigit(sl.cell.Text) {
			if series == nil {
				series = numberedSeries(s.slots)
			}
			if stem := series[text(sl.cell)]; stem != "" {
				h = f.headerOf(wordingOf(stem))
			}
		}
		if h.score >= headerScore {
			s.matched++
			if !h.title && !slices.Contains(seen, h.field) {
				seen = append(seen, h.field)
				s.distinct++
			}
			continue
		}
		t := text(sl.cell)
		if sl.cell.Kind != grid.String && sl.cell.Kind != grid.Error || anyDigit(t) {
			s.data++
		}
	}
}

// numberedSeries finds the texts that come with several numbers, "Type 1, Qty 1,
// Type 2, Qty 2" or "LS1 qty, LS1 tap, LS2 qty, LS2 tap", and what each is without its number. One such text alone is a
// name of places, "Zone 1, Zone 2".
func numberedSeries(slots []slot) map[string]string {
	stems := map[string]string{}
	times := map[string]int{}
	for _, sl := range slots {
		if sl.cell.Kind != grid.String {
			continue
		}
		stem := cutCount(text(sl.cell))
		if stem == "" {
			_, stem = typeAhead(text(sl.cell))
		}
		if stem != "" {
			stems[text(sl.cell)] = stem
			times[stem]++
		}
	}
	several := 0
	for _, n := range times {
		if n > 1 {
			several++
		}
	}
	for t, stem := range stems {
		if several < 2 || times[stem] < 2 {
			delete(stems, t)
		}
	}
	return stems
}

// promising reports whether a line is worth reading as a header: it holds
// words and no more than a few figures.
func promising(l *line, atBreak bool) bool {
	if len(l.slots) < 2 {
		return false
	}
	words, seen := 0, 0
	for _, s := range l.slots {
		if s.cell.Kind != grid.String {
			continue
		}
		t := s.cell.Text
		if len(t) > 80 {
			continue
		}
		digits := anyDigit(t)
		if !digits || atBreak && wordingOf(t).is(outputAlone) {
			words++
		}
		if !atBreak && !digits && s.cell.wrote().is(listedHeader) {
			seen++
		}
	}
	if atBreak {
		return 2*words >= len(l.slots) || words >= 3 || words > 0 && len(numberedSeries(l.slots)) >= 4
	}
	return seen >= 2 && (2*words >= len(l.slots) || words >= 4)
}

// contrast counts the columns of a strip in which words stand over figures, which is what a header looks like in any language.
func contrast(s *strip, below []line) (columns int) {
	for _, sl := range s.slots {
		if sl.cell.Kind != grid.String || anyDigit(sl.cell.Text) || lookOf(sl.cell)&(lookDitto|lookMissing) != 0 {
			continue
		}
		figures, cells := 0, 0
		for i := range below {
			if c := below[i].at(sl.col); !c.blank() {
				cells++
				if c.Kind == grid.Number || c.Kind == grid.Date || anyDigit(c.Text) {
					figures++
				}
			}
		}
		if cells > 0 && 3*figures >= 2*cells {
			columns++
		}
	}
	return columns
}

// standsOver reports whether most of the n columns of a strip have header words, or words over figures.
func standsOver(s *strip, n int, below []line) bool {
	words := contrast(s, below)
	return words >= 2 && 10*(s.matched+words) >= 8*n && 2*max(s.matched, words) >= n
}

// isHeader decides whether a strip on line at is a header, given the lines below it.
func (f *finder) isHeader(s *strip, at int, below []line, atBreak bool) bool {
	if hasTick(s.slots) {
		return false
	}
	f.weigh(s)
	ticked, stages := tickLabels(s, below), stageLabels(s, below)
	labels := max(valueLabels(s, below), outputLabels(s, below), ticked, groupLabels(s, below), changeLabels(s), stages)
	n := len(s.slots) - labels
	s.data -= min(s.data, labels)
	if n < 2 && labels == 0 || s.distinct == 0 || s.matched < 3 && sentences(s.slots) {
		return false
	}
	var next *line // the line that follows in the strip's columns
	for i := range below {
		if len(below[i].between(s.from, s.to)) > 0 {
			next = &below[i]
			break
		}
	}
	if next == nil || next.n > at+3 || outlines(s.slots, next) {
		return false
	}
	if next.n > at+1 { // after a gap stands another header: this was none
		o := strip{slots: next.slots}
		if f.weigh(&o); o.distinct >= 3 && 2*o.matched >= len(o.slots) && o.data == 0 {
			return false
		}
	}
	if next.n == at+1 && f.unitsOnly(s.slots) { // units above the words that they belong to
		o := strip{slots: next.slots}
		if f.weigh(&o); o.distinct >= 2 && 2*o.matched >= len(o.slots) && o.data == 0 {
			return false
		}
	}
	switch {
	case s.distinct >= 3 && 2*s.matched >= n && 5*s.data <= n:
	case s.distinct >= manyFields && 2*s.matched >= n && 3*s.data <= n: // "Cable | From | To | Core 1 | Core 2 | Size | Length"
	case labels >= 2 && s.matched >= 1 && 2*s.matched >= n && s.data == 0:
	case s.distinct >= 2 && 5*s.matched >= 3*n && s.data == 0:
		// Two words are little: the rows below must not read the same way, as
		// the keys of a title block do.
		if f.keysBelow(s, below) {
			return false
		}
	case atBreak && n >= 3 && s.data == 0 && standsOver(s, n, below):
	default:
		return false
	}
	if 2*ticked > len(s.slots) || stages > 0 {
		return true // neither ticks nor headers under headings are values of keys
	}
	return !f.keysBelow(s, below) || s.matched == n && s.distinct >= 3
}

// manyFields are the fields beside which a few numbered columns make a line no
// less of a header.
const manyFields = 4

// maxHeaderText is more than the bytes of any header; what is longer is a sentence.
const maxHeaderText = 64

// sentences reports whether one of the cells is too long for a header.
func sentences(slots []slot) bool {
	return slices.ContainsFunc(slots, func(s slot) bool { return len(text(s.cell)) > maxHeaderText })
}

// hasTick reports whether a cell is ticked: an "x" without the "y" that stands beside it over coordinates.
func hasTick(slots []slot) bool {
	ticked := false
	for _, s := range slots {
		switch t := text(s.cell); {
		case t == "y", t == "Y":
			return false
		case ticks[t]:
			ticked = true
		}
	}
	return ticked
}

// keysBelow reports whether the cells under the matched words are other header words, line after line: a block of keys and values.
func (f *finder) keysBelow(s *strip, below []line) bool {
	lines, keys := 0, 0
	for i := range below {
		cells, hits := 0, 0
		for _, sl := range s.slots {
			if f.header(sl.cell).score < headerScore {
				continue
			}
			if c := below[i].at(sl.col); !c.blank() {
				cells++
				if f.header(c).score >= headerScore {
					hits++
				}
			}
		}
		if cells > 0 {
			lines++
			if 2*hits > cells {
				keys++
			}
		}
	}
	return lines > 0 && 2*keys > lines && (lines > 2 || s.matched < len(s.slots))
}

// unitsOnly reports whether every cell of a strip is a unit: "[W]", "m", "(pcs)".
func (f *finder) unitsOnly(slots []slot) bool {
	hits := 0
	for _, sl := range slots {
		t := strings.Trim(sl.cell.line(), " []()")
		if t == "" || t == "-" || t == "–" {
			continue
		}
		if sl.cell.Kind != grid.String || len(t) > 8 || strings.ContainsAny(t, "013456789") {
			return false
		}
		if h := f.s.Header(t); h.Unit == "" && !unitish[strings.ToLower(t)] {
			return false
		}
		hits++
	}
	return hits >= 1
}

// unitish are words of a units row that are no units of measure.
var unitish = map[string]bool{"no": true, "no.": true, "nr": true, "nr.": true, "n°": true, "nº": true, "#": true, "text": true, "pcs": true, "pc": true, "stk": true, "stk.": true, "st": true,
	"u": true, "ud": true, "uds": true, "pz": true, "ea": true, "each": true, "y/n": true, "j/n": true, "o/n": true, "s/n": true, "awg": true, "n.": true, "n": true, "nos": true, "nos.": true, "nb": true, "nb.": true, "stuks": true, "[-]": true, "qty": true}
