package layout

import (
	"maps"
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// A filling is how many cells of each column are filled, from a column on.
type filling struct {
	from   int
	counts []int
}

func (f *filling) at(col int) int {
	if i := col - f.from; i >= 0 && i < len(f.counts) {
		return f.counts[i]
	}
	return 0
}

// countFilled counts the filled cells of each column from low to high.
func countFilled(lines []line, low, high int) *filling {
	first, last := high, low
	for i := range lines {
		if slots := lines[i].slots; len(slots) > 0 {
			first, last = min(first, slots[0].col), max(last, slots[len(slots)-1].col)
		}
	}
	first, last = max(first, low), min(last, high)
	f := &filling{first, make([]int, max(0, last-first+1))}
	for i := range lines {
		for _, s := range lines[i].between(first, last) {
			f.counts[s.col-first]++
		}
	}
	return f
}

// headings reads the header of a draft column by column and finds how far its
// columns reach: data beside the header belongs to it where columns touch.
func (f *finder) headings(d *draft, body []line, low, high int) []*heading {
	filled := countFilled(body, low, high)
	for d.from > low && filled.at(d.from-1) > 0 {
		d.from--
	}
	for d.to < high && filled.at(d.to+1) > 0 {
		d.to++
	}
	cells := 0
	for col := d.from; col <= d.to; col++ {
		cells += min(filled.at(col), maxSample)
	}
	room := newSampleRoom(cells)
	merged := map[int]bool{}
	for _, h := range d.header {
		for _, i := range f.p.mergedAt[h] {
			for c := f.p.merges[i].Col1; c <= f.p.merges[i].Col2 && c < f.p.merges[i].Col1+64; c++ {
				merged[c] = true
			}
		}
	}
	var cols []*heading
	for col := d.from; col <= d.to; col++ {
		f.watch.Step()
		h := &heading{col: col, at: d.header[len(d.header)-1]}
		if f.parts(d, h); len(h.parts) == 0 {
			f.partsBelow(d, h)
		}
		if len(h.parts) == 0 && filled.at(col) == 0 {
			continue // a spacer
		}
		if filled.at(col) == 0 && merged[col] && len(cols) > 0 && len(h.parts) == len(cols[len(cols)-1].parts) && h.parts[len(h.parts)-1] == cols[len(cols)-1].parts[len(h.parts)-1] {
			continue // the second half of a wide column
		}
		h.cells, h.rows = take(body, col, filled.at(col), room), len(body)
		h.read(f.s)
		h.own = h.cells.of(h.top)
		h.countsWithWatts()
		if len(f.forced) > 0 {
			h.forced = f.forcedField(h)
		}
		cols = append(cols, h)
	}
	return cols
}

// forcedField is the field that the house book gives to the words of a column,
// all of them or the last.
func (f *finder) forcedField(h *heading) vocabulary.Field {
	field, ok := f.forced[vocabulary.Fold(h.words)]
	if n := len(h.parts); !ok && n > 0 {
		field = f.forced[vocabulary.Fold(h.parts[n-1])]
	}
	return field
}

// What programs write over the rows and columns of a pivot table, whatever
// these are, and the form of what they write of its values: "Sum of Count", "Anzahl - Raum".
var (
	pivotLabels = map[string]bool{"row labels": true, "column labels": true, "zeilenbeschriftungen": true, "spaltenbeschriftungen": true, "etiquettes de lignes": true,
		"etiquettes de colonnes": true, "etiquetas de fila": true, "etiquetas de columna": true, "etichette di riga": true, "etichette di colonna": true,
		"rijlabels": true, "kolomlabels": true}
	rePivotValue = regexp.MustCompile(`(?i)^(?:(?:sum|count|max|min|average) of|(?:summe|anzahl|mittelwert) von|(?:somme|nombre|moyenne) de|(?:suma|cuenta|recuento) de|(?:somma|conteggio) di|(?:som|aantal) van|(?:sum|count|summe|anzahl|somme|nombre|suma|cantidad|somma|conteggio|som|aantal) -)\s+\S`)
)

// isPivotWord reports whether a text is of a pivot table rather than of a schedule.
func isPivotWord(t string) bool { return pivotWords.Of(t, 0) }

var pivotWords = remember.New(4096, func(t string, _ int) bool {
	return pivotLabels[vocabulary.Fold(t)] || rePivotValue.MatchString(t)
})

// parts collects the header words of a column, the outermost group first.
func (f *finder) parts(d *draft, h *heading) {
	unit := ""
	begins := false // a word above begins a group of its own, which those further left do not reach into
	for i, n := range d.header {
		l := f.p.within(n, n)
		if len(l) == 0 {
			continue
		}
		c, at := l[0].at(h.col), h.col
		if c.blank() {
			if m, ok := f.p.merged(n, h.col); ok && slices.Contains(d.header, m.Row1) && m.Col1 <= h.col && (m.Row1 != n || m.Col1 != h.col) {
				if m.Row1 == n {
					c, at = l[0].at(m.Col1), m.Col1
				}
			} else if !ok && i+1 < len(d.header) && !d.units[n] && !begins {
				c, at = f.group(d, &l[0], i, h.col)
			}
		}
		t := c.line()
		if t == "" || pivotLabels[vocabulary.Fold(t)] || i+1 < len(d.header) && at == d.from && rePivotValue.MatchString(t) {
			continue
		}
		if at == h.col {
			h.at, begins = n, !d.units[n]
		}
		if d.units[n] {
			if u := strings.Trim(t, " []()"); u != "-" && u != "–" {
				t = "(" + u + ")"
				if len(h.parts) > 0 {
					h.parts[len(h.parts)-1] += " " + t
				} else {
					unit = " " + t
				}
				continue
			}
		}
		if len(h.parts) == 0 || h.parts[len(h.parts)-1] != t {
			h.parts = append(h.parts, t)
		}
	}
	switch { // units may stand above their words
	case unit != "" && len(h.parts) > 0:
		h.parts[len(h.parts)-1] += unit
	case unit != "":
		h.parts = append(h.parts, strings.TrimSpace(unit))
	}
}

// partsBelow takes the header words of a column from the first line that repeats the header
// and has some there: a block further down may have a column more.
func (f *finder) partsBelow(d *draft, h *heading) {
	for _, n := range slices.Sorted(maps.Keys(d.repeated)) {
		if d.repeated[n] != Header {
			continue
		}
		for _, l := range f.p.within(n, n) {
			if t := l.at(h.col).line(); t != "" && len(h.parts) == 0 {
				h.parts, h.at = []string{t}, n
			}
		}
	}
}

// group finds the group heading, not merged, that reaches over col from the
// left: it stands over a column with a header of its own, as col has one.
func (f *finder) group(d *draft, l *line, i, col int) (cell, int) {
	under := func(c int) bool {
		for _, n := range d.header[i+1:] {
			if d.units[n] {
				continue
			}
			for _, o := range f.p.within(n, n) {
				if !o.at(c).blank() {
					return true
				}
			}
		}
		return false
	}
	for _, j := range f.p.mergedAt[l.n] { // merged groups say themselves how far they reach
		if m := f.p.merges[j]; m.Row1 == l.n && m.Col2 > m.Col1 && m.Col1 >= d.from && m.Col2 <= d.to {
			return cell{}, 0
		}
	}
	if !under(col) {
		return f.groupOverUnits(d, l, i, col)
	}
	for c := col - 1; c >= d.from; c-- {
		if over := l.at(c); !over.blank() {
			if under(c) {
				return over, c
			}
			return cell{}, 0
		}
		if !under(c) {
			return cell{}, 0
		}
	}
	return cell{}, 0
}

// deviceLike are the lines that are worth looking at for what the columns mean: no lone titles, no totals, no
// keys with their values.
func (f *finder) deviceLike(body []line, d *draft) []line {
	width := d.to - d.from + 1
	out := make([]line, 0, min(len(body), 4096))
	for i := range body {
		if d.repeated[body[i].n] != "" {
			continue
		}
		slots := body[i].between(d.from, d.to)
		if len(slots) < 2 && width > 1 {
			continue
		}
		if len(slots) > 0 && slots[0].cell.Kind == grid.String && isTotalText(text(slots[0].cell)) {
			continue
		}
		if allStruck(slots) || f.keyedLine(&body[i]) || f.numbersCard(&body[i]) {
			continue
		}
		out = append(out, body[i])
		if len(out) >= 20000 { // a sample is taken of these anyway
			break
		}
	}
	if len(out) == 0 {
		return body
	}
	return out
}

func allStruck(slots []slot) bool {
	for _, s := range slots {
		if s.cell.Struck != grid.WholeStruck {
			return false
		}
	}
	return len(slots) > 0
}

// build makes the finished table of a draft. low and high are the columns it may reach to.
func (f *finder) build(d *draft, low, high int) *Table {
	body := f.p.within(d.first, d.last)
	sample := f.deviceLike(body, d)
	cols := f.headings(d, sample, low, high)
	if len(cols) == 0 {
		return nil
	}
	if outputs, field := f.patched(cols); outputs != nil && !(field == vocabulary.ChannelWatts && f.titledLoads(d)) {
		return f.buildPatched(d, cols, outputs, field)
	}
	if among, x := f.crossedAmong(d, sample, low, high); x != nil {
		return f.buildCrossed(d, among, x)
	}
	f.contractStates(cols)
	f.surveyed(cols)
	leftCounts(cols)
	moved := f.changedGroups(cols)
	paired, again := f.twins(cols), repeated(cols)
	if paired == nil && again == nil {
		again = f.headedGroups(cols)
	}
	if paired != nil {
		cols = paired.cols(f, cols)
	} else if again != nil {
		cols = again.shown()
	} else if x := f.crossed(cols, sample); x != nil {
		return f.buildCrossed(d, cols, x)
	}
	var titles []string
	for _, n := range d.above {
		for _, l := range f.p.within(n, n) {
			for _, s := range l.between(d.from, d.to) {
				titles = append(titles, s.cell.line())
			}
		}
	}
	titles = append(titles, f.p.sheet)
	kinds := titleKinds(f.s, titles...)
	if paired != nil {
		kinds[Zones] -= 0.5 // a row for each zone and line
		if paired.listsLoudspeakers() {
			kinds[Loudspeakers] += countedFit // whatever was measured of them
		}
	}
	dec := readCounts(cols, kinds, decide(cols, kinds, findProducts(cols)))
	t := &Table{Sheet: f.p.sheet, Kind: dec.kind, Confidence: dec.confidence, HeaderRows: d.header, Transposed: f.p.turned, Form: f.p.laidAt != nil}
	for i, h := range cols {
		t.Columns = append(t.Columns, h.column(f.p, dec, i))
	}
	f.records(d, t, cols)
	if moved != nil && paired == nil && again == nil {
		moved.apply(t)
	}
	switch {
	case paired != nil:
		f.unpair(t, paired)
	case again != nil:
		f.part(t, again)
	}
	placesOfItems(t)
	f.kindsOfTitles(t)
	taggedLists(t)
	ratedNames(t)
	controlsAmongOutputs(t)
	controlsInPlaces(t)
	zonesInDescriptions(t)
	roomsByName(t)
	farEnds(t)
	placedGroups(t)
	f.phrases(t)
	return t
}
