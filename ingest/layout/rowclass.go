package layout

import (
	"math"
	"strings"
	"unicode/utf8"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// What the cells of a line of a table say of it: a device, a total, a header
// that print repeats, or nothing that loads a line.

// classOf decides what line i is, and why where it is no device.
func (b *bodyReader) classOf(bl *bodyLine, i int) (Class, string) {
	l, slots := bl.l, bl.slots
	switch class := b.d.repeated[l.n]; class {
	case Header:
		return Header, "repeats the header"
	case UnitsRow:
		return UnitsRow, "repeats the units"
	}
	if b.d.heads[l.n] || b.f.cardKeys[l.n] {
		return Title, "heads a block"
	}
	if len(slots) <= 3 && b.headerFollows(l.n) && b.titlesAbove()[slots[0].cell.folded()] && !b.f.keyedLine(l) {
		return Header, "repeats the title of the page"
	}
	if l.hidden == grid.HiddenByHand {
		if b.f.p.turned {
			return Hidden, "column hidden by hand"
		}
		return Hidden, "row hidden by hand"
	}
	if allStruck(slots) {
		return Struck, "struck through"
	}
	if i == 0 && b.numbersRow(slots) {
		return Header, "numbers of the columns"
	}
	if i > 0 && b.lines[i-1].class == Header && b.f.unitsOnly(slots) && len(slots) >= 2 {
		return UnitsRow, "units"
	}
	if _, cable := cableBeside(slots); b.d.repeated[l.n+1] == Header && (cable || headsBlock(slots) || placeAndFeed(slots)) || b.f.keyedLine(l) || b.f.numbersCard(l) {
		return Title, "heads a block"
	}
	if label := b.label(slots); label != "" && isTotalText(label) && b.totalShape(slots) {
		return Total, "a total: " + quote(label)
	}
	if b.countOfList(slots, i) {
		return Total, "a count of the list"
	}
	if b.nothingNamed(slots) {
		return NoDevice, "figures of nothing that is named"
	}
	named, figures, silent := 0, 0, 0
	for _, s := range slots {
		field := b.field(s.col)
		switch {
		case silentFields[field]:
			silent++
		case figureFields[field] && b.isFigure(s):
			figures++
		default:
			named++
		}
	}
	if named == 1 && figures >= 1 && figures+named+silent == len(slots) && len(b.cols) >= 3 && b.labelledSum(slots) && !(b.remarked(slots) && i+1 < len(b.lines) && !b.gapAfter(i)) {
		return Total, "the sums of the rows above"
	}
	if b.few(slots) {
		if class, reason, ok := b.lone(bl, i); ok {
			return class, reason
		}
	}
	if named == 0 && figures > 0 && len(b.cols) >= 3 {
		if b.sumsUp(slots) {
			return Total, "nothing but sums of the rows above"
		}
		if len(slots) == 1 && b.namesRows() && (i+1 == len(b.lines) || b.gapAfter(i)) {
			return Total, "a figure alone at the end of a block"
		}
		if figures+silent <= 2 && figures < b.usualFigures() && (i+1 == len(b.lines) || b.gapAfter(i)) && !b.has(slots, vocabulary.Tap) {
			return Total, "figures without a name at the end of a block"
		}
	}
	if named == 0 && figures == 0 {
		if silent > 0 && len(slots) == 1 {
			return Note, "only a remark"
		}
		return Unclear, "nothing in a column that was understood"
	}
	if b.otherEquipment(slots) {
		return NoDevice, "names other equipment"
	}
	return Device, ""
}

// otherEquipment reports whether a line of a list of loudspeakers names
// equipment that loads no line, and no power but its own ("Power supply | 150 W"), or a device of another trade.
func (b *bodyReader) otherEquipment(slots []slot) bool {
	if b.t.Kind != Loudspeakers && b.t.Kind != Mixed {
		return false
	}
	other := false
	for _, s := range slots {
		switch b.field(s.col) {
		case vocabulary.Describe, vocabulary.Kind, vocabulary.Model:
			if classesAhead.Of(s.cell.line(), 0)&classDitto != 0 {
				return false // "Ditto, showers" is what the row above is
			}
			k, others := lookOf(s.cell), b.cols[b.index[s.col-b.d.from]].cells
			if k&lookForeign != 0 && k&lookDevice == 0 && others.share(lookDevice) >= 0.4 {
				return true // a luminaire among loudspeakers
			}
		}
	}
	for _, s := range slots {
		t := s.cell.line()
		switch b.field(s.col) {
		case vocabulary.Tap, vocabulary.TotalWatts, vocabulary.ControlWatts:
			if !isMissing(t) && t != "0" {
				return false
			}
		case vocabulary.Describe, vocabulary.Kind, vocabulary.Model:
			switch vocabulary.DeviceIn(t) {
			case vocabulary.OtherDevice:
				other = len(strings.Fields(t)) <= wordsOfName // "I could not read the switch" names none
			case vocabulary.NoDevice:
				if k := lookOf(s.cell); b.t.Kind == Mixed && k&lookForeign != 0 && k&lookDevice == 0 && len(strings.Fields(t)) <= wordsOfName {
					other = true // the ventilation of a rack
				}
			default:
				return false
			}
		}
	}
	return other
}

// wordsOfName is the most words that name equipment; more of them are a remark.
const wordsOfName = 5

func quote(s string) string {
	if utf8.RuneCountInString(s) > 40 {
		s = string([]rune(s)[:40]) + "…"
	}
	return "“" + s + "”"
}

// countOfList reports whether a line near the end is words for a count, such as
// "Heads fitted", and a number beside them.
func (b *bodyReader) countOfList(slots []slot, i int) bool {
	if len(slots) != 2 || i+3 < len(b.lines) || slots[0].cell.Kind != grid.String || len(b.cols) < 3 {
		return false
	}
	t := slots[0].cell.line()
	if _, ok := figure(slots[1].cell); !ok || anyDigit(t) || b.field(slots[1].col) == vocabulary.Tap {
		return false
	}
	best := b.f.s.Header(strings.TrimRight(t, ": ")).Best()
	return best.Field == vocabulary.Quantity && best.Score >= 0.7
}

// headerFollows reports whether the header is repeated in the next few lines.
func (b *bodyReader) headerFollows(n int) bool {
	for next := n + 1; next <= n+4; next++ {
		if b.d.repeated[next] == Header {
			return true
		}
	}
	return false
}

// headLines is how far above a header its page's titles stand at most.
const headLines = 12

// titlesAbove are the first words of the lines above the header, which print
// repeats on every page; short ones and numbers are none.
func (b *bodyReader) titlesAbove() map[string]bool {
	if b.titles == nil {
		b.titles = map[string]bool{}
		top := b.d.header[0]
		for _, l := range b.f.p.within(top-headLines, top-1) {
			if c := l.slots[0].cell; c.Kind == grid.String && lookOf(c)&lookRoom != 0 && len(text(c)) >= 8 {
				b.titles[c.folded()] = true
			}
		}
	}
	return b.titles
}

// nothingNamed reports whether every name of a line says in so many words that it is
// blank, as a pivot table does for rows without a value, and no power stands in it.
func (b *bodyReader) nothingNamed(slots []slot) bool {
	blank := 0
	for _, s := range slots {
		t := s.cell.line()
		field := b.field(s.col)
		switch {
		case isBlankWord(t):
			blank++
		case !figureFields[field] && !silentFields[field], field != vocabulary.Quantity && figureFields[field] && b.isFigure(s):
			return false
		}
	}
	return blank >= 2
}

// isFigure reports whether a cell of a number column really holds a figure or a mark for none.
func (b *bodyReader) isFigure(s slot) bool {
	if s.cell.Kind != grid.String {
		return true
	}
	t := text(s.cell)
	return strings.ContainsAny(t, "0123456789½¼¾") || isMissing(t) || isDitto(t)
}

func (b *bodyReader) has(slots []slot, f vocabulary.Field) bool {
	for _, s := range slots {
		if b.field(s.col) == f {
			return true
		}
	}
	return false
}

func (b *bodyReader) usualFigures() int {
	n := 0
	for i := range b.cols {
		if figureFields[b.t.Columns[i].Field] {
			n++
		}
	}
	return n
}

// namesRows reports whether the table has a column of tags, which every row of a device fills.
func (b *bodyReader) namesRows() bool {
	for i, c := range b.t.Columns {
		if c.Field == vocabulary.Tag && len(b.cols) >= 3 && 10*b.filled[b.cols[i].col-b.d.from] >= 8*len(b.lines) {
			return true
		}
	}
	return false
}

// gapAfter reports whether a line is the last before a gap, a title or a repeated header.
func (b *bodyReader) gapAfter(i int) bool {
	next := &b.lines[i+1]
	return next.l.n > b.lines[i].l.n+1 || len(next.slots) == 1 || b.d.repeated[next.l.n] != ""
}

// label is the first words of a line, struck-out ones aside.
func (b *bodyReader) label(slots []slot) string {
	for _, s := range slots {
		if s.cell.Kind == grid.String {
			if t := s.cell.line(); t != "" {
				if _, ok := plainNumber(t); !ok && b.field(s.col) != vocabulary.Notes {
					return t
				}
			}
		}
	}
	return ""
}

// totalShape reports whether a line with a word for a total looks like one: few names beside it.
func (b *bodyReader) totalShape(slots []slot) bool {
	words := 0
	for _, s := range slots {
		if s.cell.Kind == grid.String {
			t := text(s.cell)
			if !anyDigit(t) && !isMissing(t) && !isDitto(t) && len(t) > 3 {
				words++
			}
			if b.field(s.col) == vocabulary.Tag && lookText(oneLine(t))&lookTag != 0 {
				return false
			}
		}
	}
	return words <= 2
}

// numbersRow reports whether a line numbers the columns: 1, 2, 3 ...
func (b *bodyReader) numbersRow(slots []slot) bool {
	if len(slots) < 4 || len(slots)*10 < len(b.cols)*7 {
		return false
	}
	for i, s := range slots {
		v, ok := figure(s.cell)
		if !ok || v != float64(i+1) {
			return false
		}
	}
	return true
}

// sumsUp reports whether every figure of the line is the sum of the rows above it since the last title or total, at least one of two or more.
func (b *bodyReader) sumsUp(slots []slot) bool {
	proven := false
	for _, s := range slots {
		i := b.index[s.col-b.d.from]
		if i < 0 || !figureFields[b.t.Columns[i].Field] {
			continue
		}
		v, ok := figure(s.cell)
		if !ok {
			continue
		}
		since := b.addends[i] >= 2 && math.Abs(v-b.sums[i]) <= 0.005*math.Abs(v)+0.01
		all := b.allAddends[i] >= 2 && math.Abs(v-b.allSums[i]) <= 0.005*math.Abs(v)+0.01
		if !summedFields[b.t.Columns[i].Field] || !since && !all {
			return false
		}
		proven = true
	}
	return proven
}

// labelledSum reports whether a line of one name and figures sums the rows
// above: two figures must do so, or one over three rows or more, or over two where the name stands among
// figures, as "Load" below taps. Sums count from the beginning as well.
func (b *bodyReader) labelledSum(slots []slot) bool {
	if b.sumsOfEach(slots) {
		return false
	}
	proven, addends, least := 0, 0, 3
	for _, s := range slots {
		i := b.index[s.col-b.d.from]
		if i < 0 || !figureFields[b.t.Columns[i].Field] {
			if s.cell.Kind == grid.String && lookText(s.cell.line())&(lookTag|lookTagRange) != 0 {
				return false
			}
			continue
		}
		v, ok := figure(s.cell)
		if !ok {
			least = 2
			continue
		}
		near := func(sum float64, n int) bool { return n >= 2 && math.Abs(v-sum) <= 0.005*math.Abs(v)+0.01 }
		switch {
		case !summedFields[b.t.Columns[i].Field]:
			return false
		case near(b.sums[i], b.addends[i]):
			addends = max(addends, b.addends[i])
		case near(b.allSums[i], b.allAddends[i]):
			addends = max(addends, b.allAddends[i])
		default:
			return false
		}
		proven++
	}
	return proven >= 2 || proven == 1 && addends >= least
}
