package layout

import (
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// figureFields hold numbers; a row with nothing in any of them says little of a device.
var figureFields = [vocabulary.Fields]bool{vocabulary.Quantity: true, vocabulary.Tap: true, vocabulary.TotalWatts: true, vocabulary.RatedWatts: true, vocabulary.Length: true,
	vocabulary.Load: true, vocabulary.ChannelWatts: true, vocabulary.FrameWatts: true, vocabulary.ControlWatts: true, vocabulary.Measured: true, vocabulary.MeasuredLoad: true, vocabulary.Gauge: true,
	vocabulary.ChannelCount: true, vocabulary.Headroom: true, vocabulary.Impedance: true, vocabulary.LineVoltage: true, vocabulary.TapVoltage: true, vocabulary.TapList: true}

// summedFields are the columns that a total row may sum.
var summedFields = [vocabulary.Fields]bool{vocabulary.Quantity: true, vocabulary.TotalWatts: true, vocabulary.Load: true, vocabulary.Tap: true, vocabulary.Length: true,
	vocabulary.MeasuredLoad: true, vocabulary.Price: true, vocabulary.Ignored: true}

// silentFields say nothing of what a row is.
var silentFields = [vocabulary.Fields]bool{vocabulary.Item: true, vocabulary.Notes: true, vocabulary.Ignored: true, vocabulary.Price: true, vocabulary.Unknown: true, vocabulary.Date: true}

// records turns the body lines of a draft into the records of its table.
func (f *finder) records(d *draft, t *Table, cols []*heading) {
	body := f.p.within(d.first, d.last)
	b := &bodyReader{f: f, d: d, t: t, cols: cols, index: make([]int, d.to-d.from+1), lonely: make([]int, d.to-d.from+1), filled: make([]int, d.to-d.from+1), lines: make([]bodyLine, 0, len(body))}
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
					b.filled[s.col-d.from]++
				}
				if len(slots) == 1 {
					b.lonely[slots[0].col-d.from]++
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
	lonely  []int     // column - from -> lines on which it alone is filled
	filled  []int     // column - from -> lines on which it is filled
	sums    []float64 // since the last title or total, by column
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

func figure(c cell) (float64, bool) {
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

// settle looks at the lines together: a table ends where its rows end. A title
// with no device after it, and a lone cell that states something of the list,
// "F1 = 2x240W", are notes.
func (b *bodyReader) settle() {
	for i := len(b.lines) - 1; i >= 0; i-- {
		switch bl := &b.lines[i]; {
		case bl.class == Title, bl.class == Device && len(bl.slots) == 1 && len(b.cols) >= 3 && b.isStatement(bl.slots[0]):
			bl.class, bl.reason = Note, "words below the table"
		case bl.class == Device, bl.class == Struck, bl.class == Hidden, bl.class == Total:
			return
		}
	}
}

// isStatement reports whether a cell says what something gives or carries: a
// power among other words, where the column holds names.
func (b *bodyReader) isStatement(s slot) bool {
	switch b.field(s.col) {
	case vocabulary.Describe, vocabulary.Model, vocabulary.Kind, vocabulary.Tap, vocabulary.TapList:
		return false // a device of which little is known
	}
	if s.cell.Kind != grid.String || b.usual(s, lookOf(s.cell)&(lookWatts|lookModel)) {
		return false
	}
	t := s.cell.line()
	return strings.ContainsAny(t, " =:") && unicode.IsLetter([]rune(t)[0]) && len(notation.PowersIn(t, notation.Auto)) > 0
}

// emit makes the records: values, what was carried down, the sections in force.
func (b *bodyReader) emit() {
	t := b.t
	t.Range = grid.Range{Row1: b.d.header[0], Col1: b.d.from, Row2: b.d.header[len(b.d.header)-1], Col2: b.d.to}
	var stack []Fact
	for _, n := range b.d.above {
		for _, l := range b.f.p.within(n, n) {
			feeds := false // the line names an output, and behind it the place that it feeds
			for _, fact := range b.fedPlaces(b.f.titleFacts(&l, b.d.from, b.d.to)) {
				if level[fact.Field] > 1 || fact.Key == TitledCable || (feeds || b.f.cardKeys[n]) && fact.Field == vocabulary.Unknown && fact.Key == "" {
					stack = append(stack, fact)
				}
				feeds = feeds || feeders[fact.Field]
			}
		}
	}
	plain := b.plainField(stack)
	for i := range stack {
		if stack[i].Field == vocabulary.Unknown {
			stack[i].Field = plain
		}
	}
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
			if len(bl.slots) > 1 && (b.field(bl.slots[0].col) == vocabulary.Item || bl.reason == letteredTitle) {
				from = bl.slots[1].col
			}
			facts := b.fedPlaces(b.f.titleFacts(bl.l, from, b.d.to))
			for j := range facts {
				if facts[j].Field == vocabulary.Unknown && facts[j].Key == "" && !b.f.isHeading(facts[j].Text) && !b.f.headsThings(facts[j].Text) {
					facts[j].Field = plain
				}
			}
			if notation.WithoutControl(bl.slots[0].cell.line()) {
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
	floorsAsZones(t)
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
		v.Cell = s.cell.Cell
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
