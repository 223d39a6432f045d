package layout

import (
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Lines of a table in which one or two cells are filled: titles of sections,
// notes, footers of pages, sentences that go on, or devices of which little is known.

// few reports whether a line has so few cells that it may be a title or a note.
func (b *bodyReader) few(slots []slot) bool {
	switch {
	case len(slots) == 1:
		return true
	case len(slots) == 2:
		return len(b.cols) >= 3
	}
	return len(slots) == 3 && len(b.cols) >= 6 && slots[2].col-slots[0].col == 2 && strings.HasSuffix(text(slots[0].cell), ":")
}

// lone decides what a line with one or two cells is; ok is false when it is a
// device like others.
func (b *bodyReader) lone(bl *bodyLine, i int) (class Class, reason string, ok bool) {
	s := bl.slots[0]
	t := oneLine(written(s.cell.Cell))
	field := b.field(s.col)
	wide := b.f.lastColumn(bl.l.n, s.col) > s.col
	k := lookOf(s.cell)
	if len(bl.slots) == 2 && field == vocabulary.Item && (b.numberedTitle(bl.slots[1]) || b.headsChapter(bl.slots, i)) {
		return Title, "a numbered title", true
	}
	if (field == vocabulary.Item || field == vocabulary.Tag) && b.headsOutline(bl.slots, i) {
		return Title, letteredTitle, true
	}
	if s.cell.Kind != grid.String {
		return "", "", false
	}
	if len(bl.slots) > 1 {
		second := bl.slots[1]
		sf := b.field(second.col)
		key := strings.HasSuffix(t, ":")
		switch {
		case key:
			return Title, "a key and its value", true
		case lookOf(second.cell)&lookStatus != 0 && b.usual(s, k&^lookWords):
			return "", "", false // "PA-2/2 | spare", an output like those above it
		case wide && second.cell.Kind == grid.String && !figureFields[sf]:
			return Title, "a title", true
		case figureFields[sf] && b.isFigure(second):
			return "", "", false
		case field == vocabulary.Unknown, sectionField(t) == vocabulary.Unknown, naming(field, sectionField(t)):
			return "", "", false
		case len(b.cols) >= 4 && !naming(sf, vocabulary.Unknown):
			return Title, "a title", true
		}
		return "", "", false
	}
	if field == vocabulary.Describe && i > 0 && b.lines[i-1].class == Device && unfinished(b.lines[i-1].slots) {
		return Note, goesOn, true
	}
	if notation.WithoutControl(t) {
		return Title, "a title: what follows has no control", true
	}
	if isNoteText(t) || reFooter.MatchString(t) {
		return Note, "a note", true
	}
	if b.d.repeated[bl.l.n+1] == Header || i == 0 && b.titlesBelow(s.col) {
		return Title, "a title: the header is repeated below it, or below those like it", true
	}
	if wide {
		return Title, "a title over several columns", true
	}
	if len(b.cols) < 3 {
		if sectionField(t) != vocabulary.Unknown && !naming(field, sectionField(t)) {
			return Title, "a title", true
		}
		return "", "", false
	}
	if k&(lookNumber|lookWatts|lookVolts|lookLength|lookMissing|lookDitto|lookStruck) != 0 {
		return "", "", false
	}
	if figureFields[field] && !b.isFigure(s) {
		return Title, "a title", true
	}
	sect := sectionField(t)
	if silentFields[field] && field != vocabulary.Item && field != vocabulary.Unknown {
		return Note, "only a remark", true
	}
	if alone, filled := b.lonely[s.col-b.d.from], b.filled[s.col-b.d.from]; alone*10 >= filled*8 && alone >= 1 && len(b.lines) > alone {
		return Title, "a title: its column is filled on lines of their own", true
	}
	switch {
	case strings.ContainsAny(t, ":;,(") && anyDigit(t) && notation.SpeaksOfAmplifier(t): // "Foyer: amp 1, one output of 120 W"
	case b.headsOutput(t, i, s.col):
	case naming(field, sect) || sect == vocabulary.Unknown && (field == vocabulary.Zone || field == vocabulary.Room) && b.usual(s, k):
		return "", "", false // a device of which only the place is known
	case field == vocabulary.Tag && k&(lookTag|lookTagRange) != 0 && sect == vocabulary.Unknown:
		return "", "", false
	case field == vocabulary.Tag && b.usual(s, k) && k&(lookTag|lookTagRange) != 0 && b.usual(s, k&(lookZone|lookAmp|lookControl|lookChannel|lookJoint)):
		return "", "", false
	}
	return Title, "a title", true
}

// headsOutput reports whether the words of a lone cell name a place and what feeds it, "Ground floor (output 1)", above
// a line of more cells that names none so.
func (b *bodyReader) headsOutput(t string, i, col int) bool {
	if i+1 >= len(b.lines) || len(b.lines[i+1].slots) < 2 || !namesOutputBehind(t) {
		return false
	}
	below := b.lines[i+1].l.at(col)
	return !below.blank() && !namesOutputBehind(below.line())
}

// namesOutputBehind reports whether a part of a text behind the first names an output or a line by its number, and
// the first does not.
func namesOutputBehind(t string) bool {
	if !anyDigit(t) || !strings.ContainsAny(t, "(,;-–—/|→") {
		return false
	}
	parts := titleParts(t)
	return len(parts) > 1 && !feeders[sectionField(parts[0])] && slices.ContainsFunc(parts[1:], func(part string) bool {
		return anyDigit(part) && feeders[sectionField(part)]
	})
}

// titlesBelow reports whether lone cells of a column stand above repeated headers:
// then one below the first header heads its rows too.
func (b *bodyReader) titlesBelow(col int) bool {
	return slices.ContainsFunc(b.lines, func(o bodyLine) bool {
		return len(o.slots) == 1 && o.slots[0].col == col && b.d.repeated[o.l.n+1] == Header
	})
}

// numberedTitle reports whether the words behind an item's number name a part
// of the system, or are written as titles are.
func (b *bodyReader) numberedTitle(s slot) bool {
	if s.cell.Kind != grid.String {
		return false
	}
	words := s.cell.line()
	return sectionField(words) != vocabulary.Unknown || strings.ToUpper(words) == words && lookOf(s.cell)&lookRoom != 0
}

// headsChapter reports whether the number of an item is that of a chapter, under which the next items are
// numbered, "68.1" above "68.1.1", "70.50" above "70.51", or have letters: "7.1" above "a".
func (b *bodyReader) headsChapter(slots []slot, i int) bool {
	number, words := slots[0].cell.line(), slots[1].cell
	if b.headsLetters(slots, i) {
		return true
	}
	if words.Kind != grid.String || i+1 >= len(b.lines) || reLabelWatts.MatchString(words.line()) && !placeOfAmp(words.line()) {
		return false
	}
	next := b.lines[i+1].l.at(slots[0].col)
	if next.blank() {
		return false
	}
	chapter := strings.TrimRight(number, ".") + "."
	if tens, ok := strings.CutSuffix(number, "0"); ok && strings.ContainsAny(tens, ".-/") && anyDigit(tens[len(tens)-1:]) {
		return strings.HasPrefix(next.line(), tens) && len(next.line()) == len(number) || strings.HasPrefix(next.line(), chapter)
	}
	return strings.HasPrefix(next.line(), chapter) && len(next.line()) > len(number)
}

// headsLetters reports whether a number and its words stand alone above items whose letters begin with "a".
func (b *bodyReader) headsLetters(slots []slot, i int) bool {
	if len(slots) != 2 || i+1 >= len(b.lines) || slots[1].cell.Kind != grid.String || !anyDigit(slots[0].cell.line()) || len(b.lines[i+1].slots) < 4 {
		return false
	}
	next := b.lines[i+1].l.at(slots[0].col)
	return !next.blank() && strings.EqualFold(strings.Trim(next.line(), " .()"), "a")
}

// letteredTitle is the reason of a title that the letter of its items stands before.
const letteredTitle = "a lettered title"

// headsOutline reports whether a letter and words stand alone above items that the letter and a number count: "B | Offices"
// above "B1", "C" above "C.1".
func (b *bodyReader) headsOutline(slots []slot, i int) bool {
	return i+1 < len(b.lines) && outlines(slots, b.lines[i+1].l)
}

// outlines is headsOutline for the slots of a line and the one below it.
func outlines(slots []slot, below *line) bool {
	if len(slots) != 2 || slots[1].cell.Kind != grid.String || len(below.slots) < 4 || below.at(slots[0].col).blank() {
		return false
	}
	letter := strings.TrimRight(slots[0].cell.line(), " .)")
	next, ok := strings.CutPrefix(below.at(slots[0].col).line(), letter)
	return ok && len(letter) == 1 && letter[0] >= 'A' && letter[0] <= 'Z' && strings.TrimLeft(next, ".-") == "1"
}

// placeOfAmp reports whether a title is a place and the amplifier that feeds it: "POOL (amp AB, 240 W)".
func placeOfAmp(t string) bool {
	parts := titleParts(t)
	return len(parts) > 1 && sectionField(parts[0]) != vocabulary.Amplifier && vocabulary.DeviceIn(parts[0]) == vocabulary.NoDevice && !reLabelWatts.MatchString(parts[0]) &&
		slices.ContainsFunc(parts[1:], func(part string) bool { return sectionField(part) == vocabulary.Amplifier })
}

// goesOn is the reason of a line on which the sentence of the row above goes on.
const goesOn = "the description of the row above goes on"

// unfinished reports whether a text of a line ends in the middle of a sentence.
func unfinished(slots []slot) bool {
	for _, s := range slots {
		if t := s.cell.line(); len(t) > 20 && strings.ContainsAny(t[len(t)-1:], ",;:-(") {
			return true
		}
	}
	return false
}

// naming reports whether a section word names what its own column holds.
func naming(column, section vocabulary.Field) bool {
	return section != vocabulary.Unknown && column == section
}

// usual reports whether a cell looks like the others of its column.
func (b *bodyReader) usual(s slot, k look) bool {
	i := b.index[s.col-b.d.from]
	if i < 0 || b.cols[i].cells.cells == 0 || k == 0 {
		return false
	}
	same := 0
	for _, o := range b.cols[i].cells.looks {
		if o&k&^lookWords != 0 || o == k {
			same++
		}
	}
	return 2*same >= b.cols[i].cells.cells
}

// rePage finds the number of a page, as print leaves it between rows.
var rePage = regexp.MustCompile(`(?i)^(?:page|seite|página|pagina|blad|feuille|foglio|sheet|pag\.?|p\.)\s*\d+(?:\s*(?:of|von|/|-|–|de|di|van|sur|to|bis|à|a)\s*\d+)?$`)

// reFooter finds the issue of a drawing or list, as print leaves it under a page.
var reFooter = regexp.MustCompile(`(?i)^(?:rev(?:ision)?|issue|issued|index|version|ausgabe|stand|r[ée]vision|indice|revisi[óo]n|versi[óo]n|revisione|versione|revisie|versie|datum|date|fecha|data)\b[\s.:]*\S{1,12}(?:\s+\S*\d\S*){0,2}$`)

// isNoteText reports whether a text is a remark rather than a title: it
// begins with a word for one, is long, or is a sentence.
func isNoteText(t string) bool { return wordingOf(t).is(noteText) }

func readNote(t string) bool {
	n := utf8.RuneCountInString(t)
	if rePage.MatchString(t) {
		return true
	}
	if n <= 120 && sectionField(t) != vocabulary.Unknown {
		return false
	}
	if n > 90 || strings.HasPrefix(t, "*") || strings.HasPrefix(t, "†") {
		return true
	}
	words := strings.Fields(vocabulary.Fold(t))
	if len(words) == 0 {
		return false
	}
	first := classAhead(words)&classNote != 0
	if first && (len(words) > 3 || len(words) == 1 || strings.Contains(t, ":")) {
		return true
	}
	return strings.HasSuffix(t, ".") && len(words) > 6 || len(words) > 12
}
