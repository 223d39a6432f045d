package layout

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

var (
	reLabelWatts = regexp.MustCompile(`(?i)\b\d+(?:[.,]\d+)?\s*(?:w|watts?)\b`)
	reLabelSet   = regexp.MustCompile(`(?i)(?:set|tapped|tap|at|@|auf|gestellt auf|à|a|op|op stand|régl\S* (?:à|sur)|puest\S* a|tarat\S* a|ingesteld op)\s*:?\s*(\d+(?:[.,]\d+)?\s*(?:w|watts?))\b`)
	reOnlyWatts  = regexp.MustCompile(`(?i)^\W*(?:(?:set|tap(?:ped)?|gestellt|eingestellt|régl\S*|puest\S*|tarat\S*|ingesteld)?\s*(?:at|on|@|auf|à|a|op|sur)?\s*)?\d+(?:[.,]\d+)?\s*(?:w|watts?)\W*$`)
	reLabelTag   = regexp.MustCompile(`^\p{L}{1,5}[- ]?\d{1,3}\p{L}?$`)
)

// A crosstab says which columns of a table are the values of one field, with counts in their cells.
type crosstab struct {
	cols   []int // indexes of the headings
	labels []string
	field  vocabulary.Field // what the labels are
	taps   []string         // the watts that each label names, "" where it names none
	tapAt  []slot           // where they are written, for a row of taps
	sum    *heading         // the column of their sums, nil if none
	tapRow int              // line number of that row, 0 when the labels name the taps
}

// crossed looks for columns that are values: their headers are zones, rooms
// or types, their cells counts. body are the lines of the table.
func (f *finder) crossed(cols []*heading, body []line) *crosstab {
	if len(cols) < 3 {
		return nil
	}
	for _, h := range cols {
		if h.top == vocabulary.Tag && h.score >= 0.8 && h.cells.share(lookTag|lookTagRange) >= 0.5 && 10*h.cells.distinct >= 9*h.cells.cells {
			return nil // a row for each device
		}
	}
	x := &crosstab{}
	strong, words, blanks := 0, 0, 0
	votes := map[vocabulary.Field]int{}
	for i, h := range cols {
		if len(h.parts) == 0 || h.cells.cells == 0 {
			continue
		}
		label := h.parts[len(h.parts)-1]
		if isTotalText(label) || h.cells.countShare() < 0.8 || h.forced != vocabulary.Unknown {
			continue
		}
		if h.unit != "" && h.unit != "W" && h.unit != "pcs" {
			continue // lengths and levels are no counts
		}
		named, best := h.best()
		if len(h.parts) > 1 { // a group over the values says what they are of
			own := f.s.Header(label).Best()
			named, best = own.Field, own.Score
		}
		field := sectionField(label)
		watts := reLabelWatts.MatchString(h.words)
		device := classWithin(label)&classDevice != 0
		tag := reLabelTag.MatchString(label) && best < headerScore
		switch {
		case field != vocabulary.Unknown && strings.ContainsAny(label, "0123456789") && field != vocabulary.Control && field != vocabulary.Amplifier:
			votes[field]++
			strong++
		case watts && (device || len(strings.Fields(label)) > 1) || device && best < 0.9 && named != vocabulary.Quantity && len(strings.Fields(label)) > 1, tag:
			votes[vocabulary.Model]++
			strong++
		case device && !hasField(cols, vocabulary.Quantity) && (best < 0.75 || named == vocabulary.Tag || named == vocabulary.Describe || named == vocabulary.Mounting || named == vocabulary.Model):
			votes[vocabulary.Model]++
			strong++
		case named == vocabulary.Mounting && best < 0.8: // "ceiling", "wall" as names of types
			words++
		case best < 0.45 && !strings.ContainsAny(label, "%€$£"):
			words++
		case best < 0.9 && (named == vocabulary.Room || named == vocabulary.Zone || named == vocabulary.Building || named == vocabulary.Floor): // "Lecture Room" over counts is a room
			words++
		case best < headerScore && strings.ContainsAny(label, "0123456789"):
			words++
		default:
			continue
		}
		x.cols = append(x.cols, i)
		blanks += len(body) - h.cells.total
	}
	x.absorb(cols)
	x.dropSums(cols)
	n := len(x.cols)
	if n < 2 || 2*strong < n && (words < 3 || hasField(cols, vocabulary.Quantity) || hasField(cols, vocabulary.Tap) && !typed(cols)) {
		return nil
	}
	if strong == 0 && blanks*8 < n*len(body) && n < 4 {
		return nil
	}
	// The values stand beside each other.
	if x.cols[n-1]-x.cols[0] > n+1 {
		return nil
	}
	for fld, v := range votes {
		if v > votes[x.field] || v == votes[x.field] && fld < x.field {
			x.field = fld
		}
	}
	f.crossedLabels(x, cols)
	if !slices.ContainsFunc(x.labels, func(l string) bool { return !reOnlyWatts.MatchString(l) }) {
		x.field = vocabulary.Tap // the counts are by tap: there is nothing else to a label
	}
	if x.field == vocabulary.Unknown {
		x.field = f.crossedField(x, cols)
	}
	return x
}

// absorb takes in columns between and right and left of the others that hold counts too and
// whose names mean something else than a figure.
func (x *crosstab) absorb(cols []*heading) {
	if len(x.cols) < 2 {
		return
	}
	fits := func(h *heading) bool {
		if len(h.parts) == 0 || h.cells.cells == 0 || h.forced != vocabulary.Unknown || h.cells.countShare() < 0.8 || isTotalText(h.parts[len(h.parts)-1]) {
			return false
		}
		return !figureFields[h.top] && h.top != vocabulary.Item && h.top != vocabulary.Channel && h.score < 0.8
	}
	for i := x.cols[0] - 1; i >= 0 && fits(cols[i]); i-- {
		x.cols = slices.Insert(x.cols, 0, i)
	}
	var all []int
	first, last := x.cols[0], x.cols[len(x.cols)-1]
	for i := first; i < len(cols); i++ {
		switch {
		case slices.Contains(x.cols, i):
		case i < last && !fits(cols[i]):
			continue
		case i > last && !fits(cols[i]):
			x.cols = all
			return
		}
		all = append(all, i)
	}
	x.cols = all
}

// countShare is the share of cells that are counts or ticks; one power among them,
// under the header, is what the type is tapped at.
func (s *sample) countShare() float64 {
	counts, watts := 0, 0
	for _, k := range s.looks {
		switch {
		case k&(lookSmall|lookCount|lookYes) != 0:
			counts++
		case k&lookWatts != 0:
			watts++
		}
	}
	cells := s.cells - min(watts, 1)
	if cells == 0 {
		return 0
	}
	return float64(counts) / float64(cells)
}

// dropSums takes a last column off that holds the sums of the others.
func (x *crosstab) dropSums(cols []*heading) {
	n := len(x.cols)
	if n < 3 {
		return
	}
	at := map[int]float64{}
	for _, i := range x.cols[:n-1] {
		c := cols[i].cells
		for j, v := range c.numbers {
			at[c.lines[c.numberAt[j]]] += v
		}
	}
	last := cols[x.cols[n-1]].cells
	hits, several := 0, 0
	for j, v := range last.numbers {
		if at[last.lines[last.numberAt[j]]] == v {
			hits++
		} else {
			several++
		}
	}
	if hits >= 3 && hits > 4*several {
		x.cols = x.cols[:n-1]
		x.sum = cols[x.cols[len(x.cols)-1]+1]
	}
}

func hasField(cols []*heading, field vocabulary.Field) bool {
	for _, h := range cols {
		if b, s := h.best(); b == field && s >= 0.8 && !isTotalText(h.words) {
			return true
		}
	}
	return false
}

// typed reports whether a column names types of devices.
func typed(cols []*heading) bool {
	return slices.ContainsFunc(cols, func(h *heading) bool {
		return max(h.of(vocabulary.Model), h.of(vocabulary.Describe), h.of(vocabulary.Kind)) >= 0.8 && !isTotalText(h.words)
	})
}

// crossedLabels takes the labels and the taps they name.
func (f *finder) crossedLabels(x *crosstab, cols []*heading) {
	group := cols[x.cols[0]].parts[0]
	for _, i := range x.cols {
		if p := cols[i].parts; len(p) < 2 || p[0] != group {
			group = ""
		}
	}
	for _, i := range x.cols {
		parts := cols[i].parts
		if group != "" {
			parts = parts[1:]
		}
		label := strings.Join(parts, " ")
		x.labels = append(x.labels, label)
		x.taps = append(x.taps, labelTap(label))
	}
	if group != "" && x.field == vocabulary.Unknown {
		x.field = placeOrType(f.s.Header(group).Best().Field)
	}
}

// labelTap is the power that a label says a type is tapped at: the only one it
// names, or the one behind a word for setting.
func labelTap(label string) string {
	if m := reLabelSet.FindStringSubmatch(label); m != nil {
		return m[1]
	}
	if all := reLabelWatts.FindAllString(label, 3); len(all) == 1 {
		return all[0]
	}
	return ""
}

func placeOrType(field vocabulary.Field) vocabulary.Field {
	switch field {
	case vocabulary.Zone, vocabulary.Room, vocabulary.Floor, vocabulary.Building, vocabulary.Circuit, vocabulary.Channel:
		return field
	case vocabulary.Model, vocabulary.Describe, vocabulary.Kind, vocabulary.Tag:
		return vocabulary.Model
	}
	return vocabulary.Unknown
}

// crossedField decides what plain words over counts are: the corner may say
// ("Room \ Type"); else they are types where the lines are places, and places where they are types.
func (f *finder) crossedField(x *crosstab, cols []*heading) vocabulary.Field {
	if x.cols[0] > 0 {
		corner := cols[x.cols[0]-1].words
		if a, b, ok := strings.Cut(strings.NewReplacer("\\", "/", "→", "/").Replace(corner), "/"); ok && a != "" {
			if field := placeOrType(f.s.Header(strings.TrimSpace(b)).Best().Field); field != vocabulary.Unknown {
				return field
			}
		}
	}
	zone := false
	for i, h := range cols {
		if i >= x.cols[0] {
			break
		}
		switch field, score := h.best(); {
		case score < 0.5:
		case typed(cols[i : i+1]):
			return vocabulary.Zone
		case field == vocabulary.Zone:
			zone = true
		case field == vocabulary.Model, field == vocabulary.Describe, field == vocabulary.Tag, field == vocabulary.Kind:
			return vocabulary.Zone
		}
	}
	if !zone {
		for i, h := range cols {
			if i < x.cols[0] && h.cells.share(lookDevice) > 0.4 {
				return vocabulary.Zone
			}
		}
	}
	return vocabulary.Model
}

// tapRow looks for a line under the header that says what each type is tapped at.
func (f *finder) tapRow(x *crosstab, cols []*heading, body []line) {
	if x.field != vocabulary.Model {
		return
	}
	for i := range body[:min(3, len(body))] {
		l := &body[i]
		named := false
		if first := l.slots[0]; first.col < cols[x.cols[0]].col && first.cell.Kind == grid.String {
			fld := f.keyField(oneLine(text(first.cell)))
			named = fld == vocabulary.Tap || fld == vocabulary.RatedWatts
		}
		watts, cells := 0, 0
		taps, at := make([]string, len(x.cols)), make([]slot, len(x.cols))
		for k, j := range x.cols {
			c := l.at(cols[j].col)
			if c == nil {
				continue
			}
			cells++
			if look := lookOf(c); look&lookWatts != 0 || named && look&lookNumber != 0 {
				watts++
				taps[k], at[k] = text(c), slot{cols[j].col, c}
			}
		}
		if watts >= 2 && watts == cells {
			x.taps, x.tapAt, x.tapRow = taps, at, l.n
			return
		}
	}
}

// buildCrossed turns a table of counts into one record for each count.
func (f *finder) buildCrossed(d *draft, cols []*heading, x *crosstab) *Table {
	in := map[int]int{} // heading index -> place in x
	for k, i := range x.cols {
		in[i] = k
	}
	f.tapRow(x, cols, f.p.within(d.first, d.last))
	// The other columns are decided as ever, with a quantity and a label given.
	var rest []*heading
	house := map[int]bool{} // the house book said so
	for i, h := range cols {
		if _, ok := in[i]; ok {
			continue
		}
		if best, _ := h.best(); h == x.sum || isTotalText(h.words) || best == vocabulary.Quantity || best == vocabulary.TotalWatts || best == vocabulary.Load {
			house[len(rest)] = h.forced != vocabulary.Unknown
			h.forced = vocabulary.Ignored
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
		if dec.fields[i] == x.field || dec.fields[i] == vocabulary.Quantity {
			dec.fields[i], dec.scores[i] = vocabulary.Unknown, 0
		}
		if dec.fields[i] == vocabulary.Unknown && i == 0 && len(rest[i].parts) == 0 {
			dec.fields[i], dec.scores[i] = rowLabel(x.field, rest[i]), 0.5
		}
	}
	base := &Table{Sheet: f.p.sheet, Kind: Loudspeakers, Transposed: f.p.turned}
	for i, h := range rest {
		c := h.column(f.p, dec, i)
		if h.forced == vocabulary.Ignored && !house[i] {
			c.Evidence = fmt.Sprintf("header %q: the sum of the counts beside it", h.words)
		}
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
		t.Columns[len(t.Columns)-1].Unit, tapped = "W", false
	}
	if tapped {
		at, why := f.p.ref(first.at, first.col), fmt.Sprintf("the headers %s name powers", where)
		if x.tapRow > 0 {
			at, why = f.p.ref(x.tapRow, first.col), fmt.Sprintf("the powers under the headers %s", where)
		}
		t.Columns = append(t.Columns, Column{At: at, Header: "watts of the headers", Field: vocabulary.Tap, Unit: "W", Confidence: 0.8, Evidence: why})
	}
	t.Columns = append(t.Columns, Column{At: f.p.ref(first.at, first.col), Header: "counts", Field: vocabulary.Quantity, Confidence: 0.85,
		Evidence: fmt.Sprintf("whole numbers under the headers %s", where)})
	f.crossedRecords(t, base, cols, x, tapped)
	return t
}

// rowLabel is what a first column without a header names.
func rowLabel(across vocabulary.Field, h *heading) vocabulary.Field {
	switch {
	case across != vocabulary.Model:
		return vocabulary.Model
	case h.cells.share(lookZone) > 0.5:
		return vocabulary.Zone
	}
	return vocabulary.Room
}

func (f *finder) crossedRecords(t, base *Table, cols []*heading, x *crosstab, tapped bool) {
	sums := newCountSums(len(x.cols))
	for i := range base.Records {
		r := &base.Records[i]
		n := r.Rows.First
		lines := f.p.within(n, n)
		if x.tapRow == n && x.tapRow > 0 {
			r.Class, r.Reason = Header, "the powers of the types"
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
		if r.Class == Device && sums.total(lines[0], cols, x) {
			r.Class, r.Reason = Total, "the sums of the rows above"
			r.Text = summary(lines[0].slots)
			r.Values = pad(r.Values, len(t.Columns))
			t.Records = append(t.Records, *r)
			continue
		}
		made := false
		for k, j := range x.cols {
			c := lines[0].at(cols[j].col)
			if c == nil || noCount(c) {
				continue
			}
			made = true
			one := *r
			one.At = f.p.ref(n, cols[j].col)
			one.Values = append(make([]Value, 0, len(t.Columns)), r.Values...)
			head := headerCellOf(f, cols[j])
			label := Value{Cell: head, At: f.p.ref(cols[j].at, cols[j].col), Text: x.labels[k], How: schedule.Stated}
			one.Values = append(one.Values, label)
			if tapped {
				v := Value{At: label.At, Cell: head, Text: x.taps[k]}
				if x.tapRow > 0 {
					v.At, v.Cell = f.p.ref(x.tapRow, cols[j].col), x.tapAt[k].cell
				}
				if v.Text != "" {
					v.How = schedule.Stated
				}
				one.Values = append(one.Values, v)
			}
			q := Value{Cell: c, At: one.At, Text: text(c)}
			if q.Text != "" {
				q.How = schedule.Stated
			}
			one.Values = append(one.Values, q)
			t.Records = append(t.Records, one)
		}
		if !made {
			r.Class, r.Reason = NoDevice, "no counts in the row"
			r.Text = summary(lines[0].slots)
			r.Values = pad(r.Values, len(t.Columns))
			t.Records = append(t.Records, *r)
		}
	}
}

func headerCellOf(f *finder, h *heading) *grid.Cell {
	if l := f.p.within(h.at, h.at); len(l) > 0 {
		return l[0].at(h.col)
	}
	return nil
}

// noCount reports whether a cell of counts says that there is nothing.
func noCount(c *grid.Cell) bool {
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
		if c := l.at(cols[j].col); c != nil {
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
