package layout

import (
	"math"
	"regexp"
	"strings"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// figureFields hold numbers; a row with nothing in any of them says little of a device.
var figureFields = map[vocabulary.Field]bool{vocabulary.Quantity: true, vocabulary.Tap: true, vocabulary.TotalWatts: true, vocabulary.RatedWatts: true, vocabulary.Length: true,
	vocabulary.Load: true, vocabulary.ChannelWatts: true, vocabulary.FrameWatts: true, vocabulary.ControlWatts: true, vocabulary.Measured: true, vocabulary.MeasuredLoad: true, vocabulary.Gauge: true,
	vocabulary.ChannelCount: true, vocabulary.Headroom: true, vocabulary.Impedance: true, vocabulary.LineVoltage: true, vocabulary.TapList: true}

// summedFields are the columns that a total row may sum.
var summedFields = map[vocabulary.Field]bool{vocabulary.Quantity: true, vocabulary.TotalWatts: true, vocabulary.Load: true, vocabulary.Tap: true, vocabulary.Length: true,
	vocabulary.MeasuredLoad: true, vocabulary.Price: true, vocabulary.Ignored: true}

// silentFields say nothing of what a row is.
var silentFields = map[vocabulary.Field]bool{vocabulary.Item: true, vocabulary.Notes: true, vocabulary.Ignored: true, vocabulary.Price: true, vocabulary.Unknown: true, vocabulary.Date: true}

// records turns the body lines of a draft into the records of its table.
func (f *finder) records(d *draft, t *Table, cols []*heading) {
	body := f.p.within(d.first, d.last)
	b := &bodyReader{f: f, d: d, t: t, cols: cols, index: make([]int, d.to-d.from+1), lonely: map[int]int{}, filled: map[int]int{}}
	for i := range b.index {
		b.index[i] = -1
	}
	for i, h := range cols {
		b.index[h.col-d.from] = i
	}
	for i := range body {
		slots := body[i].between(d.from, d.to)
		if len(slots) > 0 {
			b.lines = append(b.lines, bodyLine{l: &body[i], slots: slots})
			if d.repeated[body[i].n] == "" {
				for _, s := range slots {
					b.filled[s.col]++
				}
				if len(slots) == 1 {
					b.lonely[slots[0].col]++
				}
			}
		}
	}
	b.sums = make([]float64, len(cols))
	b.addends = make([]int, len(cols))
	b.allSums, b.allAddends = make([]float64, len(cols)), make([]int, len(cols))
	b.classify()
	b.settle()
	b.emit()
}

// A bodyReader works through the lines of one table.
type bodyReader struct {
	f       *finder
	d       *draft
	t       *Table
	cols    []*heading
	index   []int // column - from -> index into cols, -1 for a spacer
	lines   []bodyLine
	lonely  map[int]int // column -> lines on which it alone is filled
	filled  map[int]int // column -> lines on which it is filled
	sums    []float64   // since the last title or total, by column
	addends []int

	titles map[string]bool // folded words that stand above the header, nil until asked for

	allSums    []float64 // since the beginning
	allAddends []int
}

// A bodyLine is a line and what it was taken for.
type bodyLine struct {
	l      *line
	slots  []slot
	class  Class
	reason string
}

func (b *bodyReader) field(col int) vocabulary.Field {
	if i := b.index[col-b.d.from]; i >= 0 {
		return b.t.Columns[i].Field
	}
	return vocabulary.Unknown
}

// classify gives every line its class, as far as the line alone tells.
func (b *bodyReader) classify() {
	for i := range b.lines {
		b.f.watch.Step()
		bl := &b.lines[i]
		bl.class, bl.reason = b.classOf(bl, i)
		switch bl.class {
		case Device:
			for _, s := range bl.slots {
				if j := b.index[s.col-b.d.from]; j >= 0 {
					if v, ok := figure(s.cell); ok {
						b.sums[j] += v
						b.addends[j]++
						b.allSums[j] += v
						b.allAddends[j]++
					}
				}
			}
		case Title, Total:
			clear(b.sums)
			clear(b.addends)
		}
	}
}

func figure(c *grid.Cell) (float64, bool) {
	if c.Struck == grid.WholeStruck {
		return 0, false
	}
	if c.Kind == grid.Number {
		return c.Number, true
	}
	if c.Kind != grid.String {
		return 0, false
	}
	t := text(c)
	if t == "" || t[0] < '0' || t[0] > '9' {
		return 0, false
	}
	return leadingNumber(t)
}

func (b *bodyReader) classOf(bl *bodyLine, i int) (Class, string) {
	l, slots := bl.l, bl.slots
	switch class := b.d.repeated[l.n]; class {
	case Header:
		return Header, "repeats the header"
	case UnitsRow:
		return UnitsRow, "repeats the units"
	}
	if len(slots) <= 3 && b.headerFollows(l.n) && b.titlesAbove()[vocabulary.Fold(oneLine(text(slots[0].cell)))] {
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
	if named == 1 && figures >= 1 && figures+named+silent == len(slots) && len(b.cols) >= 3 && b.labelledSum(slots) {
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
// equipment that loads no line, and no power.
func (b *bodyReader) otherEquipment(slots []slot) bool {
	if b.t.Kind != Loudspeakers && b.t.Kind != Mixed {
		return false
	}
	other := false
	for _, s := range slots {
		t := oneLine(text(s.cell))
		switch b.field(s.col) {
		case vocabulary.Tap, vocabulary.TotalWatts, vocabulary.RatedWatts, vocabulary.ChannelWatts, vocabulary.ControlWatts, vocabulary.FrameWatts:
			if !isMissing(t) && t != "0" {
				return false
			}
		case vocabulary.Describe, vocabulary.Kind, vocabulary.Model:
			switch vocabulary.DeviceIn(t) {
			case vocabulary.OtherDevice:
				other = true
			case vocabulary.NoDevice:
			default:
				return false
			}
		}
	}
	return other
}

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
	t := oneLine(text(slots[0].cell))
	if _, ok := figure(slots[1].cell); !ok || strings.ContainsAny(t, "0123456789") || b.field(slots[1].col) == vocabulary.Tap {
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
				b.titles[vocabulary.Fold(oneLine(text(c)))] = true
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
		t := oneLine(text(s.cell))
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
		if c.Field == vocabulary.Tag && len(b.cols) >= 3 && 10*b.filled[b.cols[i].col] >= 8*len(b.lines) {
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
			if t := oneLine(text(s.cell)); t != "" {
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
			if !strings.ContainsAny(t, "0123456789") && !isMissing(t) && !isDitto(t) && len(t) > 3 {
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
// above: two figures must do so, or one over three rows or more. Sums count from the beginning as well.
func (b *bodyReader) labelledSum(slots []slot) bool {
	proven, addends := 0, 0
	for _, s := range slots {
		i := b.index[s.col-b.d.from]
		if i < 0 || !figureFields[b.t.Columns[i].Field] {
			if s.cell.Kind == grid.String && lookText(oneLine(text(s.cell)))&(lookTag|lookTagRange) != 0 {
				return false
			}
			continue
		}
		v, ok := figure(s.cell)
		if !ok {
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
	return proven >= 2 || proven == 1 && addends >= 3
}

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
	t := oneLine(written(s.cell))
	field := b.field(s.col)
	wide := b.f.lastColumn(bl.l.n, s.col) > s.col
	k := lookOf(s.cell)
	if len(bl.slots) == 2 && field == vocabulary.Item && b.numberedTitle(bl.slots[1]) {
		return Title, "a numbered title", true
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
	if isNoteText(t) || reFooter.MatchString(t) {
		return Note, "a note", true
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
	if b.lonely[s.col]*10 >= b.filled[s.col]*8 && b.lonely[s.col] >= 1 && len(b.lines) > b.lonely[s.col] {
		return Title, "a title: its column is filled on lines of their own", true
	}
	switch {
	case naming(field, sect) || sect == vocabulary.Unknown && (field == vocabulary.Zone || field == vocabulary.Room) && b.usual(s, k):
		return "", "", false // a device of which only the place is known
	case field == vocabulary.Tag && k&(lookTag|lookTagRange) != 0 && sect == vocabulary.Unknown:
		return "", "", false
	case field == vocabulary.Tag && b.usual(s, k) && k&(lookTag|lookTagRange) != 0 && b.usual(s, k&(lookZone|lookAmp|lookControl|lookChannel|lookJoint)):
		return "", "", false
	}
	return Title, "a title", true
}

// numberedTitle reports whether the words behind an item's number name a part
// of the system, or are written as titles are.
func (b *bodyReader) numberedTitle(s slot) bool {
	if s.cell.Kind != grid.String {
		return false
	}
	words := oneLine(text(s.cell))
	return sectionField(words) != vocabulary.Unknown || strings.ToUpper(words) == words && lookOf(s.cell)&lookRoom != 0
}

// goesOn is the reason of a line on which the sentence of the row above goes on.
const goesOn = "the description of the row above goes on"

// unfinished reports whether a text of a line ends in the middle of a sentence.
func unfinished(slots []slot) bool {
	for _, s := range slots {
		if t := oneLine(text(s.cell)); len(t) > 20 && strings.ContainsAny(t[len(t)-1:], ",;:-(") {
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
func isNoteText(t string) bool {
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
	list := wordList()
	first := list[words[0]]&classNote != 0 || len(words) > 1 && list[words[0]+" "+words[1]]&classNote != 0
	if first && (len(words) > 3 || len(words) == 1 || strings.Contains(t, ":")) {
		return true
	}
	return strings.HasSuffix(t, ".") && len(words) > 6 || len(words) > 12
}

// settle looks at the lines together: a title with no device after it is a
// note, and a table ends where its rows end.
func (b *bodyReader) settle() {
	last := -1
	for i := range b.lines {
		switch b.lines[i].class {
		case Device, Struck, Hidden, Total:
			last = i
		}
	}
	for i := last + 1; i < len(b.lines); i++ {
		if b.lines[i].class == Title {
			b.lines[i].class, b.lines[i].reason = Note, "words below the table"
		}
	}
}

// emit makes the records: values, what was carried down, the sections in force.
func (b *bodyReader) emit() {
	t := b.t
	t.Range = grid.Range{Row1: b.d.header[0], Col1: b.d.from, Row2: b.d.header[len(b.d.header)-1], Col2: b.d.to}
	var stack []Fact
	for _, n := range b.d.above {
		for _, l := range b.f.p.within(n, n) {
			for _, fact := range b.f.titleFacts(&l, b.d.from, b.d.to) {
				if level[fact.Field] > 1 {
					stack = append(stack, fact)
				}
			}
		}
	}
	plain := b.plainField(stack)
	fresh := true // no device since the last title
	t.Records = make([]Record, 0, len(b.lines))
	values := make([]Value, len(b.lines)*len(b.cols))
	for i := range b.lines {
		bl := &b.lines[i]
		t.Range.Row2 = bl.l.n
		r := Record{Rows: b.f.p.span(bl.l.n, bl.l.n), At: b.f.p.ref(bl.l.n, bl.slots[0].col), Class: bl.class, Reason: bl.reason}
		r.Values, values = values[:len(b.cols):len(b.cols)], values[len(b.cols):]
		b.fill(&r, bl)
		if bl.class != Device {
			r.Text = summary(bl.slots)
		}
		switch bl.class {
		case Title:
			from := b.d.from
			if len(bl.slots) > 1 && b.field(bl.slots[0].col) == vocabulary.Item {
				from = bl.slots[1].col
			}
			facts := b.f.titleFacts(bl.l, from, b.d.to)
			for j := range facts {
				if facts[j].Field == vocabulary.Unknown && facts[j].Key == "" && !b.f.isHeading(facts[j].Text) {
					facts[j].Field = plain
				}
			}
			if reWithout.MatchString(oneLine(text(bl.slots[0].cell))) {
				stack, facts = endControl(stack), nil
			}
			stack = push(stack, facts, fresh)
			fresh = true
			r.Sections = facts
		case Device, Struck, Hidden:
			fresh = fresh && bl.class != Device
			r.Sections = stack
		default:
			r.Sections = stack
		}
		t.Records = append(t.Records, r)
	}
	t.Range = b.f.p.area(t.Range)
	b.carry()
}

// fill takes the cells of a line as values.
func (b *bodyReader) fill(r *Record, bl *bodyLine) {
	for j := range r.Values {
		r.Values[j].At = b.f.p.ref(bl.l.n, b.cols[j].col)
	}
	for _, s := range bl.slots {
		j := b.index[s.col-b.d.from]
		if j < 0 {
			continue
		}
		v := &r.Values[j]
		v.Cell = s.cell
		v.Text = text(s.cell)
		if isBlankWord(v.Text) {
			v.Text, v.Because = "", "written as blank"
			continue
		}
		switch {
		case bl.class == Struck:
			v.Text = clean(s.cell.Text)
			v.How = schedule.Stated
		case v.Text != "":
			v.How = schedule.Stated
		case s.cell.Struck == grid.WholeStruck:
			v.Because = "struck through"
		}
	}
}

// plainField is what a title without a telling word names in this table: the
// room where zones are named otherwise, else the zone.
func (b *bodyReader) plainField(above []Fact) vocabulary.Field {
	zone, room := false, false
	for _, c := range b.t.Columns {
		zone = zone || c.Field == vocabulary.Zone
		room = room || c.Field == vocabulary.Room
	}
	for _, fact := range above {
		zone = zone || fact.Field == vocabulary.Zone
	}
	for i := range b.lines {
		if bl := &b.lines[i]; bl.class == Title {
			switch sectionField(oneLine(text(bl.slots[0].cell))) {
			case vocabulary.Zone:
				zone = true
			case vocabulary.Room:
				room = true
			}
		}
	}
	switch {
	case !zone:
		return vocabulary.Zone
	case !room:
		return vocabulary.Room
	}
	return vocabulary.Unknown
}

// push puts the facts of a title on the stack of sections. A title replaces
// the last one of its own kind and what stood inside it; a title right under another stands inside that.
func push(stack, facts []Fact, fresh bool) []Fact {
	next := append([]Fact(nil), stack...)
	for i, fact := range facts {
		if fact.Field == vocabulary.Unknown && fact.Key == "" && level[fact.Field] == 0 {
			if !fresh && i == 0 {
				next = cut(next, 8)
			}
			next = append(next, fact)
			continue
		}
		same := -1
		for j, s := range next {
			if s.Field == fact.Field {
				same = j
			}
		}
		switch {
		case same >= 0:
			next = next[:same]
		case !fresh && i == 0:
			next = cut(next, level[fact.Field])
		}
		next = append(next, fact)
	}
	return next
}

// cut drops the sections at the level or inside it.
func cut(stack []Fact, at int) []Fact {
	for i, s := range stack {
		if l := level[s.Field]; l >= at || l == 0 {
			return stack[:i]
		}
	}
	return stack
}

// endControl takes the control in force off the stack: a title said that what follows has none.
func endControl(stack []Fact) []Fact {
	for i, s := range stack {
		if s.Field == vocabulary.Control {
			return stack[:i:i]
		}
	}
	return stack
}
