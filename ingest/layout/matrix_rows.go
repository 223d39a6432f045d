package layout

import (
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// buildCrossed turns a table of counts into one record for each count.
func (f *finder) buildCrossed(d *draft, cols []*heading, x *crosstab) *Table {
	in := map[int]int{} // heading index -> place in x
	for k, i := range x.cols {
		in[i] = k
	}
	f.tapRow(x, cols, f.p.within(d.first, d.last))
	// The other columns are decided as ever, with a quantity and a label given.
	var rest []*heading
	watts := -1 // the column of the watts of each row, in rest
	for i, h := range cols {
		if _, ok := in[i]; ok {
			continue
		}
		x.ungroup(f, h, cols)
		switch best, _ := h.best(); {
		case x.marks, x.power != vocabulary.Unknown && best == vocabulary.Quantity: // a count is the count
		case h.forced == vocabulary.Unknown && watts < 0 && x.rowWatts(h, cols):
			h.forced, watts, h.aside = vocabulary.TotalWatts, len(rest), "the watts of the counts beside it"
		case h == x.sum || isTotalText(h.words) || best == vocabulary.Quantity || best == vocabulary.TotalWatts || best == vocabulary.Load:
			if h.forced == vocabulary.Unknown {
				h.forced, h.aside = vocabulary.Ignored, "the sum of the counts beside it"
			}
		}
		if len(h.parts) > 0 {
			corner := strings.NewReplacer("\\", "/", "→", "/").Replace(h.words)
			if a, _, ok := strings.Cut(corner, "/"); ok && i == x.cols[0]-1 {
				if field := placeOrType(f.s.Header(strings.TrimSpace(a)).Best().Field); field != vocabulary.Unknown && field != x.field {
					h.forced = field
				}
			}
		}
		rest = append(rest, h)
	}
	dec := decide(rest, map[Kind]float64{Loudspeakers: 1.5}, nil)
	for i := range rest {
		if dec.fields[i] == vocabulary.Level && i == 0 && rest[i].of(vocabulary.Floor) > 0 {
			dec.fields[i], dec.runners[i] = vocabulary.Floor, vocabulary.Unknown // what stands beside counts is no setting
		}
		if dec.fields[i] == x.field || dec.fields[i] == vocabulary.Quantity && !x.marks && x.power == vocabulary.Unknown {
			dec.fields[i], dec.scores[i] = vocabulary.Unknown, 0
		}
		if dec.fields[i] == vocabulary.Unknown && i == 0 && (len(rest[i].parts) == 0 || x.namesAcross(rest[i])) {
			dec.fields[i], dec.scores[i] = rowLabel(x.field, rest[i]), 0.5
		}
	}
	base := &Table{Sheet: f.p.sheet, Kind: Loudspeakers, Transposed: f.p.turned}
	for i, h := range rest {
		c := h.column(f.p, dec, i)
		base.Columns = append(base.Columns, c)
	}
	f.records(d, base, rest)

	t := &Table{Sheet: base.Sheet, Kind: Loudspeakers, Confidence: 0.9, HeaderRows: d.header, Transposed: base.Transposed, Matrix: true, Columns: base.Columns, Range: base.Range}
	first, last := cols[x.cols[0]], cols[x.cols[len(x.cols)-1]]
	where := f.p.ref(first.at, first.col).Cell() + " to " + f.p.ref(last.at, last.col).Cell()
	t.Columns = append(t.Columns, Column{At: f.p.ref(first.at, first.col), Header: strings.Join(x.labels, ", "), Field: x.field, Confidence: 0.85,
		Evidence: fmt.Sprintf("the headers %s stand over counts", where)})
	tapped := false
	for _, w := range x.taps {
		tapped = tapped || w != ""
	}
	if x.field == vocabulary.Tap {
		c := &t.Columns[len(t.Columns)-1]
		c.Unit, c.Volts, tapped = "W", x.volts(cols), false
	}
	if x.marks && (slices.Contains(dec.fields, vocabulary.Tap) || slices.Contains(dec.fields, vocabulary.Quantity)) {
		tapped = false // what ticked outputs give
	}
	if tapped {
		at, why := f.p.ref(first.at, first.col), fmt.Sprintf("the headers %s name powers", where)
		if x.tapRow > 0 {
			at, why = f.p.ref(x.tapRow, first.col), fmt.Sprintf("the powers under the headers %s", where)
		}
		t.Columns = append(t.Columns, Column{At: at, Header: "watts of the headers", Field: vocabulary.Tap, Unit: "W", Confidence: 0.8, Evidence: why})
	}
	if x.marks {
		t.Columns[len(t.Columns)-1].Evidence = fmt.Sprintf("the headers %s stand over ticks", where)
	}
	if x.marks && slices.Contains(dec.fields, vocabulary.Quantity) {
		f.markedRecords(t, base, cols, x, false)
		return t
	}
	cells := Column{At: f.p.ref(first.at, first.col), Header: "counts", Field: vocabulary.Quantity, Confidence: 0.85,
		Evidence: fmt.Sprintf("whole numbers under the headers %s", where)}
	if x.power != vocabulary.Unknown {
		cells.Header, cells.Field, cells.Unit, cells.RunnerUp, cells.Confidence = "watts", x.power, "W", x.orElse, 0.7
		cells.Evidence = fmt.Sprintf("usual powers under the headers %s, and counts in a column of their own", where)
	}
	if x.grouped {
		cells.Header, cells.Confidence, cells.Evidence = "groups", 0.9, fmt.Sprintf("counts of loudspeakers with their taps under the headers %s", where)
	}
	if x.feeds = x.ticksFeed(cols, dec.fields); x.feeds {
		t.Kind, x.marks = Channels, false
		t.Columns[len(t.Columns)-1].Evidence = fmt.Sprintf("the headers %s stand over ticks", where)
	} else {
		t.Columns = append(t.Columns, cells)
	}
	if x.marks {
		f.markedRecords(t, base, cols, x, true)
		return t
	}
	t.Columns = append(t.Columns, f.saidColumns(x)...)
	f.crossedRecords(t, base, cols, x, tapped, watts)
	setInLabels(t)
	return t
}

// ungroup takes the words that stand over all the labels across off the header of a column
// behind them: "Qty by tap" over "5 W" and "10 W" says nothing of the column "Rated".
func (x *crosstab) ungroup(f *finder, h *heading, cols []*heading) {
	if len(h.parts) < 2 || h.col < cols[x.cols[len(x.cols)-1]].col || h.forced != vocabulary.Unknown {
		return
	}
	for _, i := range x.cols {
		if p := cols[i].parts; len(p) < 2 || p[0] != h.parts[0] {
			return
		}
	}
	h.parts, h.unit, h.volts, h.said = h.parts[1:], "", 0, nil
	h.read(f.s)
	h.own = h.cells.of(h.top)
}

// rowWatts reports whether a column beside counts states the watts of each row:
// its header says total, and watts are named, or its figures are as many watts
// as the headers and the counts make; sums of the counts are none.
func (x *crosstab) rowWatts(h *heading, cols []*heading) bool {
	best, _ := h.best()
	if h == x.sum || h.cells.cells == 0 || h.cells.share(lookNumber|lookWatts) < 0.8 {
		return false
	}
	total := best == vocabulary.TotalWatts || best == vocabulary.Load || isTotalText(h.words)
	if !total && best != vocabulary.Tap { // "Watts" behind counts by tap
		return false
	}
	counts, watts, powers := x.sums(cols)
	asCounts, asWatts := 0, 0
	for j, n := range h.cells.lines {
		v, ok := factor(h.cells.texts[j])
		switch {
		case !ok || v == 0:
		case v == counts[n] && h.unit == "" && h.cells.looks[j]&lookWatts == 0:
			asCounts++
		case powers && v == watts[n]:
			asWatts++
		}
	}
	return 2*asCounts <= h.cells.cells && (total && (h.unit == "W" || h.unit == "kW" || h.cells.share(lookWatts) >= 0.5) || 2*asWatts > h.cells.cells)
}

// volts is the line voltage that all headers across name, with the group above them; 0 if they do not agree.
func (x *crosstab) volts(cols []*heading) float64 {
	v := cols[x.cols[0]].volts
	for _, i := range x.cols {
		if cols[i].volts != v {
			return 0
		}
	}
	return v
}

// sums are the counts of each line together, and the watts that the headers make of them.
func (x *crosstab) sums(cols []*heading) (counts, watts map[int]float64, powers bool) {
	counts, watts = map[int]float64{}, map[int]float64{}
	for k, i := range x.cols {
		w, tapped := 0.0, false
		if x.taps[k] != "" {
			w, tapped = factor(x.taps[k])
		}
		powers = powers || tapped
		c := cols[i].cells
		for j, v := range c.numbers {
			n := c.lines[c.numberAt[j]]
			counts[n] += v
			watts[n] += v * w
		}
	}
	return counts, watts, powers
}

// markedRecords makes a record of each row of a table in which taps are
// ticked; counted adds the tick itself as the count, where no column has one.
func (f *finder) markedRecords(t, base *Table, cols []*heading, x *crosstab, counted bool) {
	for i := range base.Records {
		r := base.Records[i]
		lines := f.p.within(r.Rows.First, r.Rows.First)
		if r.Class == Unclear { // the first columns are blank, the ticks need not be
			r.Class, r.Reason = Device, ""
		}
		if r.Class != Device && r.Class != Struck && r.Class != Hidden || len(lines) == 0 {
			if len(lines) > 0 {
				r.Text = summary(lines[0].slots)
			}
			r.Values = pad(r.Values, len(t.Columns))
			t.Records = append(t.Records, r)
			continue
		}
		tap, k, n := x.ticksAndTap(lines[0], cols)
		v, q := Value{At: r.At}, Value{At: r.At}
		if n > 0 {
			h := cols[x.cols[k]]
			tick := lines[0].at(h.col)
			at := f.p.ref(r.Rows.First, h.col)
			v = Value{Cell: headerCellOf(f, h), At: f.p.ref(h.at, h.col), Text: tap, How: schedule.Stated}
			if n > 1 {
				v.Cell, v.At = tick.Cell, at
			}
			q = Value{Cell: tick.Cell, At: at, Text: text(tick), How: schedule.Stated}
		}
		r.Values = append(append(make([]Value, 0, len(t.Columns)), r.Values...), v)
		if counted {
			r.Values = append(r.Values, q)
		}
		t.Records = append(t.Records, r)
	}
}

// namesAcross reports whether a header speaks of what stands across, as one in
// the corner may: "Type" over zones, beside names of types.
func (x *crosstab) namesAcross(h *heading) bool {
	said := h.of(x.field)
	if x.field == vocabulary.Model {
		said = max(said, h.of(vocabulary.Describe), h.of(vocabulary.Kind))
	}
	return said >= 0.5 && h.cells.share(lookDevice) < 0.5 == (x.field == vocabulary.Model)
}

// rowLabel is what a first column without a header of its own names.
func rowLabel(across vocabulary.Field, h *heading) vocabulary.Field {
	switch {
	case across != vocabulary.Model:
		return vocabulary.Model
	case h.cells.share(lookZone) > 0.5:
		return vocabulary.Zone
	}
	return vocabulary.Room
}

// crossedRecords makes a record of each count. watts is the column that states
// the watts of a whole row, -1 if none does: where the row has several counts,
// a record of its own says what they add up to.
func (f *finder) crossedRecords(t, base *Table, cols []*heading, x *crosstab, tapped bool, watts int) {
	sums := newCountSums(len(x.cols))
	for i := range base.Records {
		r := &base.Records[i]
		n := r.Rows.First
		lines := f.p.within(n, n)
		if x.tapRow == n && x.tapRow > 0 {
			r.Class, r.Reason = Header, "the powers of the types"
		}
		if said, ok := x.saidAt(n); ok {
			r.Class, r.Reason = Header, "the "+said.field.String()+" of the headers"
		}
		if r.Class == Title {
			sums.section()
		}
		if r.Class == Unclear { // the first columns are blank, the counts need not be
			r.Class, r.Reason = Device, ""
		}
		if r.Class != Device && r.Class != Struck && r.Class != Hidden || len(lines) == 0 {
			r.Values = pad(r.Values, len(t.Columns))
			if len(lines) > 0 && r.Class != Device {
				r.Text = summary(lines[0].slots)
			}
			t.Records = append(t.Records, *r)
			continue
		}
		if r.Class == Device && (sums.total(lines[0], cols, x) || loadsOf(&lines[0], x, cols)) {
			r.Class, r.Reason = Total, "the sums of the rows above"
			r.Text = summary(lines[0].slots)
			r.Values = pad(r.Values, len(t.Columns))
			t.Records = append(t.Records, *r)
			continue
		}
		made := 0
		for k, j := range x.cols {
			c := lines[0].at(cols[j].col)
			if c.blank() || noCount(c) {
				continue
			}
			made++
			one := *r
			one.At = f.p.ref(n, cols[j].col)
			one.Values = append(make([]Value, 0, len(t.Columns)), r.Values...)
			head := headerCellOf(f, cols[j])
			label := Value{Cell: head, At: f.p.ref(cols[j].at, cols[j].col), Text: x.labels[k], How: schedule.Stated}
			one.Values = append(one.Values, label)
			if tapped {
				v := Value{At: label.At, Cell: head, Text: x.taps[k]}
				if x.tapRow > 0 {
					v.At, v.Cell = f.p.ref(x.tapRow, cols[j].col), x.tapAt[k].cell.Cell
				}
				if v.Text != "" {
					v.How = schedule.Stated
				}
				one.Values = append(one.Values, v)
			}
			if !x.feeds {
				q := Value{Cell: c.Cell, At: one.At, Text: text(c)}
				if q.Text != "" {
					q.How = schedule.Stated
				}
				one.Values = append(one.Values, q)
			}
			one.Values = append(one.Values, f.saidValues(x, cols[j])...)
			t.Records = append(t.Records, one)
		}
		if watts >= 0 && made > 1 && r.Values[watts].Text != "" {
			for i := len(t.Records) - made; i < len(t.Records); i++ {
				t.Records[i].Values[watts] = Value{At: r.Values[watts].At}
			}
			sum := *r
			sum.Class, sum.Reason, sum.At = Total, "the watts of the counts in the row", r.Values[watts].At
			sum.Text = summary(lines[0].slots)
			sum.Values = pad(r.Values, len(t.Columns))
			t.Records = append(t.Records, sum)
		}
		if made == 0 {
			r.Class, r.Reason = NoDevice, "no counts in the row"
			r.Text = summary(lines[0].slots)
			r.Values = pad(r.Values, len(t.Columns))
			t.Records = append(t.Records, *r)
		}
	}
}

func headerCellOf(f *finder, h *heading) *grid.Cell {
	if l := f.p.within(h.at, h.at); len(l) > 0 {
		return l[0].at(h.col).Cell
	}
	return nil
}

// noCount reports whether a cell of counts says that there is nothing.
func noCount(c cell) bool {
	t := text(c)
	return t == "" && c.Kind != grid.NoValue || isMissing(t) || c.Kind == grid.Number && c.Number == 0 || t == "0"
}

func pad(v []Value, n int) []Value {
	out := make([]Value, n)
	copy(out, v)
	return out
}

// countSums adds up the counts of each column, since the last title and since the beginning.
type countSums struct {
	since, all   []float64
	rows, allRow int
}

func newCountSums(n int) *countSums {
	return &countSums{since: make([]float64, n), all: make([]float64, n)}
}

func (s *countSums) section() {
	clear(s.since)
	s.rows = 0
}

// total reports whether the counts of a line are all the sums of the lines
// above; if not, it adds them up.
func (s *countSums) total(l line, cols []*heading, x *crosstab) bool {
	equal, equalAll, filled := true, true, 0
	values := make([]float64, len(x.cols))
	for k, j := range x.cols {
		if c := l.at(cols[j].col); !c.blank() {
			v, ok := figure(c)
			if !ok && !noCount(c) {
				equal, equalAll = false, false
			}
			values[k] = v
			if v != 0 {
				filled++
			}
		}
		equal = equal && values[k] == s.since[k]
		equalAll = equalAll && values[k] == s.all[k]
	}
	if filled >= 2 && (equal && s.rows >= 2 || equalAll && s.allRow >= 2) {
		s.section()
		return true
	}
	for k, v := range values {
		s.since[k] += v
		s.all[k] += v
	}
	s.rows++
	s.allRow++
	return false
}
