package layout

import (
	"cmp"
	"path"
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
	"lineaudit/ingest/watch"
)

// Read finds what the sheets of a book hold. It never fails: what is not
// understood is listed in Outside or as records that are no devices.
func Read(book *grid.Book, opts Options) *Reading {
	forced := map[string]vocabulary.Field{}
	for _, n := range opts.Names {
		if n.matches(book.File) {
			forced[vocabulary.Fold(n.Header)] = n.Field
		}
	}
	s := vocabulary.NewScorer()
	r := &Reading{}
	var found []*sheetReader
	for _, sheet := range book.Sheets {
		sr := &sheetReader{book: book, sheet: sheet, s: s, forced: forced, watch: opts.Watch}
		sr.read()
		found = append(found, sr)
	}
	r.NearestMiss = judge(book, found, s)
	for _, sr := range found {
		r.Sheets = append(r.Sheets, sr.finish(r.NearestMiss))
	}
	return r
}

func (n Name) matches(file string) bool {
	if n.Files == "" {
		return true
	}
	whole, err := path.Match(n.Files, file)
	if err != nil {
		return false
	}
	base, _ := path.Match(n.Files, path.Base(file))
	return whole || base
}

// A sheetReader reads one sheet.
type sheetReader struct {
	book   *grid.Book
	sheet  *grid.Sheet
	s      *vocabulary.Scorer
	forced map[string]vocabulary.Field
	watch  *watch.Watch

	p       *plane
	f       *finder
	tables  []*placed
	facts   []Fact
	outside []Outside
	form    *Table                // the sheet filled in like a form
	inForm  map[schedule.Ref]bool // the cells of its values
}

// A placed is a table and the cells it takes up.
type placed struct {
	t     *Table
	area  grid.Range   // header, body and titles, in sheet rows and columns
	above []int        // title lines over its header, in sheet rows
	drop  string       // why the table is no part of a schedule
	card  *cardsColumn // the column of cards that it was read from, if any
}

func (sr *sheetReader) read() {
	sr.p = newPlane(sr.book.File, sr.sheet)
	if p := sr.p.unglue(); p != nil {
		sr.p = p
	}
	sr.f = newFinder(sr.p, sr.s, sr.forced, sr.watch)
	if p := sr.f.stacked(); p != nil {
		sr.p, sr.f.p = p, p
	}
	if p := sr.f.keyForms(); p != nil {
		sr.p, sr.f.p = p, p
	}
	sr.readCards()
	sr.readTurned()
	sr.readPlan()
	whole := sr.p
	sr.use(sr.p.without(sr.areas()))
	sr.readTables()
	sr.use(whole.without(sr.areas()))
	sr.readRest()
	sr.use(whole)
	sr.forms()
}

// use makes p the plane that the finder looks at.
func (sr *sheetReader) use(p *plane) { sr.p, sr.f.p = p, p }

// areas are the cells that the tables found so far take up.
func (sr *sheetReader) areas() []grid.Range {
	var all []grid.Range
	for _, t := range sr.tables {
		all = append(all, t.area)
	}
	return all
}

// maxRest bounds the lines of a block that is looked at once more.
const maxRest = 3000

// readPlan finds a sheet drawn like a plan, with a loudspeaker in each cell.
func (sr *sheetReader) readPlan() {
	if len(sr.tables) > 0 || len(sr.p.lines) > maxRest {
		return
	}
	t, area := sr.f.plan()
	if t == nil {
		t, area = sr.f.wordedColumns()
	}
	if t != nil {
		t.SheetHidden = sr.sheet.Hidden
		sr.tables = append(sr.tables, &placed{t: t, area: area})
	}
}

// readRest looks at the blocks in which no header row was found: tables of
// counts whose headers are names, and, where the sheet has no table at all,
// tables without a header.
func (sr *sheetReader) readRest() {
	none := len(sr.tables) == 0
	blocks := sr.f.withSaid(sr.p.blocks(maxRest))
	if none {
		for _, run := range sr.f.titledBlocks(blocks) {
			if t, area := sr.f.bare(run.area, run.heads); t != nil {
				t.SheetHidden = sr.sheet.Hidden
				sr.tables = append(sr.tables, &placed{t: t, area: area})
			}
		}
	}
	for _, r := range blocks {
		sr.watch.Step()
		if r.Row2-r.Row1 < 2 || r.Col2-r.Col1 < 2 {
			continue
		}
		if slices.ContainsFunc(sr.areas(), func(a grid.Range) bool {
			return a.Row1 <= r.Row2 && r.Row1 <= a.Row2 && a.Col1 <= r.Col2 && r.Col1 <= a.Col2
		}) {
			continue
		}
		if t, area := sr.f.counts(r); t != nil {
			t.SheetHidden = sr.sheet.Hidden
			sr.tables = append(sr.tables, &placed{t: t, area: area})
		} else if none {
			if t, area := sr.f.bare(r, nil); t != nil {
				t.SheetHidden = sr.sheet.Hidden
				sr.tables = append(sr.tables, &placed{t: t, area: area})
			}
		}
	}
	if len(sr.tables) > 0 {
		return
	}
	if t, area := sr.f.told(); t != nil {
		t.SheetHidden = sr.sheet.Hidden
		sr.tables = append(sr.tables, &placed{t: t, area: area})
	}
}

// readTables finds the tables whose header runs along the rows.
func (sr *sheetReader) readTables() {
	drafts := sr.f.drafts()
	last := 0
	if n := len(sr.p.lines); n > 0 {
		last = sr.p.lines[n-1].n
	}
	for _, d := range drafts {
		d.last = min(d.last, last)
	}
	drafts = sr.stack(drafts)
	for _, d := range drafts {
		if !d.fixed {
			sr.f.trim(d)
		}
	}
	for i, d := range drafts {
		sr.watch.Step()
		if d.fixed {
			continue
		}
		low, high := 1, 1<<20
		// Drafts are in the order of their headers; those far above ended long ago.
		for j := max(0, i-64); j < len(drafts) && (j <= i || drafts[j].top() <= d.end()+maxTop); j++ {
			o := drafts[j]
			if o == d || o.end() < d.top() || d.end() < o.top() {
				continue
			}
			if o.to < d.from {
				low = max(low, o.to+1)
			}
			if o.from > d.to {
				high = min(high, o.from-1)
			}
		}
		t := sr.f.build(d, low, high)
		if t == nil {
			continue
		}
		t.SheetHidden = sr.sheet.Hidden
		sr.tables = append(sr.tables, &placed{t: t, above: d.above, area: grid.Range{Row1: d.top(), Col1: d.from, Row2: d.end(), Col2: d.to}})
	}
}

// maxTop is more than the lines that titles and group rows can put a draft's
// top above the line it was found on.
const maxTop = 40

// top and end are the first and last line of a draft, titles included.
func (d *draft) top() int {
	if len(d.above) > 0 {
		return d.above[0]
	}
	return d.header[0]
}

func (d *draft) end() int { return max(d.last, d.header[len(d.header)-1]) }

// stack lets no draft reach into one that begins further down in the same
// columns, nor into a transposed table, which it puts among the drafts as fixed ones.
func (sr *sheetReader) stack(drafts []*draft) []*draft {
	for _, t := range sr.tables {
		drafts = append(drafts, &draft{fixed: true, header: []int{t.area.Row1}, from: t.area.Col1, to: t.area.Col2, last: t.area.Row2})
	}
	slices.SortStableFunc(drafts, func(a, b *draft) int { return cmp.Compare(a.header[0], b.header[0]) })
	for i, d := range drafts {
		for _, o := range drafts[i+1:] {
			if o.top() > d.end()+maxTop {
				break
			}
			if o.from > d.to || d.from > o.to {
				continue
			}
			o.above = slices.DeleteFunc(o.above, func(n int) bool { return n <= d.header[len(d.header)-1] || d.fixed && n <= d.last })
			switch {
			case !d.fixed:
				d.last = min(d.last, o.top()-1)
			case o.header[0] <= d.last:
				o.skip = true // it reaches across the transposed table
			}
		}
	}
	return slices.DeleteFunc(drafts, func(d *draft) bool { return d.skip })
}

// trim takes off the end of a draft what does not belong to it: blocks after
// a blank line that look unlike its rows.
func (f *finder) trim(d *draft) {
	lines := f.p.within(d.first, d.last)
	var body []int // indexes of lines with cells in the columns
	for i := range lines {
		if len(lines[i].between(d.from, d.to)) > 0 {
			body = append(body, i)
		}
	}
	if len(body) == 0 {
		d.last = d.header[len(d.header)-1]
		return
	}
	body = body[:beforeControls(lines, body, d)]
	var counts []int
	for k, i := range body[:min(len(body), 60)] {
		if k >= 3 && lines[i].n > lines[body[k-1]].n+1 {
			break // what is usual, the first block shows
		}
		counts = append(counts, len(lines[i].between(d.from, d.to)))
	}
	slices.Sort(counts)
	typical := counts[len(counts)/2]
	usual := usualLooks(lines, body, d)
	fits := func(l *line) bool {
		if d.repeated[l.n] != "" {
			return true
		}
		if alike, cells := usual.alike(l.between(d.from, d.to)); cells >= 2 && (2*alike < cells || 2*alike == cells && cells < typical) {
			return len(l.between(d.from, d.to)) >= 2 && isTotalText(l.between(d.from, d.to)[0].cell.line())
		}
		slots := l.between(d.from, d.to)
		if len(slots) < 2 && typical > 1 || 2*len(slots) < typical {
			return len(slots) >= 2 && isTotalText(slots[0].cell.line())
		}
		if typical > 2 && usual.ratingLine(slots) {
			return false
		}
		keys := 0
		for _, sl := range slots {
			if strings.HasSuffix(text(sl.cell), ":") {
				keys++
			}
		}
		if keys > 0 && (len(slots) <= 3 || 3*keys >= len(slots)) {
			return false
		}
		if len(slots) == 2 && typical > 2 && f.isKey(slots[0].cell, false) {
			return false
		}
		return true
	}
	end := len(body)
	for end > 0 {
		// The block that ends at end.
		start := end - 1
		for start > 0 && lines[body[start]].n == lines[body[start-1]].n+1 {
			start--
		}
		fit := false
		for _, i := range body[start:end] {
			fit = fit || fits(&lines[i])
		}
		if fit || start == 0 {
			break
		}
		end = start
	}
	for end > 1 && f.keyLine(lines[body[end-1]].between(d.from, d.to), typical) {
		end--
	}
	if end > 0 {
		d.last = lines[body[end-1]].n
	}
}

// keyLine reports whether a line under a table is a key with its value, such
// as "Prepared by" and a name, rather than a row of it.
func (f *finder) keyLine(slots []slot, typical int) bool {
	if len(slots) != 2 || typical < 3 || slots[0].cell.Kind != grid.String {
		return false
	}
	t := slots[0].cell.line()
	field := f.keyField(t)
	return strings.HasSuffix(t, ":") || (titleFields[field] || field == vocabulary.LineVoltage) && f.isKey(slots[0].cell, false)
}

// covered reports which tables' areas hold a place.
func (sr *sheetReader) covered(row, col int) bool {
	for _, t := range sr.tables {
		if t.area.Contains(row, col) && t.drop == "" {
			return true
		}
	}
	return false
}

// finish collects facts and leftover rows, once it is known which tables stay.
func (sr *sheetReader) finish(miss string) Sheet {
	out := Sheet{Name: sr.sheet.Name, Hidden: sr.sheet.Hidden}
	kept := sr.tables[:0:0]
	for _, t := range sr.tables {
		if t.drop == "" {
			kept = append(kept, t)
		}
	}
	slices.SortStableFunc(kept, func(a, b *placed) int {
		return cmp.Or(cmp.Compare(a.area.Row1, b.area.Row1), cmp.Compare(a.area.Col1, b.area.Col1))
	})
	firstRow := 1 << 30
	for _, t := range kept {
		firstRow = min(firstRow, t.area.Row1+len(t.above))
	}
	sheetFacts := sr.nameFacts()
	sr.leftovers(miss)
	common := slices.Clone(sheetFacts)
	for _, fact := range sr.facts {
		if int(fact.At.Row) < firstRow {
			common = append(common, fact)
		}
	}
	for _, t := range kept {
		t.t.Titles = slices.Clip(common) // shared: tables side by side may be hundreds, with thousands of titles
		for _, n := range t.above {
			for _, l := range sr.planeOf(t).within(n, n) {
				facts := sr.f.titleFacts(&l, t.area.Col1, t.area.Col2)
				if slots := l.between(t.area.Col1, t.area.Col2); len(facts) == 0 && len(slots) > 0 && !sr.f.cardKeys[l.n] {
					sr.outside = append(sr.outside, sr.leave(l.n, slots))
				}
				sr.facts = append(sr.facts, facts...)
				t.t.Titles = append(t.t.Titles, facts...)
			}
		}
		if tr, ok := sr.f.findTree(t.t); ok {
			out.Tables = append(out.Tables, tr.upright(t.t)...)
			continue
		}
		out.Tables = append(out.Tables, t.t)
	}
	if sr.form != nil {
		sr.form.Titles = append(slices.Clone(sheetFacts), sr.facts...)
		out.Tables = append(out.Tables, sr.form)
	}
	slices.SortStableFunc(sr.facts, func(a, b Fact) int { return a.At.Compare(b.At) })
	out.Facts = append(sheetFacts, sr.facts...)
	out.Outside = sr.outside
	return out
}

// plainNames are the names that programs give to sheets.
var plainNames = []string{"sheet", "tabelle", "feuil", "feuille", "hoja", "foglio", "blad", "table", "worksheet", "calc"}

// nameFacts are what the name of the sheet says.
func (sr *sheetReader) nameFacts() []Fact {
	name := strings.TrimSpace(sr.sheet.Name)
	folded := strings.TrimRight(vocabulary.Fold(name), "0123456789 ")
	if name == "" || slices.Contains(plainNames, folded) || rePage.MatchString(name) {
		return nil
	}
	at := schedule.At(sr.book.File, sr.sheet.Name, 0, 0)
	if m := reChapter.FindStringSubmatch(name); m != nil && sectionField(m[1]+" 1") == vocabulary.Unknown {
		return []Fact{{Text: name, At: at}}
	}
	return sr.f.sectionFacts(name, at, nil)
}

// reChapter is the number of a chapter of a bill behind a word: "BOQ 12.4" is no output 4.
var reChapter = regexp.MustCompile(`^(\pL{3,})\s+\d{1,2}(?:\.\d{1,2})+$`)

// columnLooks are what the cells of each column of a body look like, by column.
type columnLooks map[int]look

// usualLooks looks at the first block of a body.
func usualLooks(lines []line, body []int, d *draft) columnLooks {
	m := columnLooks{}
	for k, i := range body {
		if k >= 30 || k > 0 && lines[i].n > lines[body[k-1]].n+1 {
			break
		}
		for _, s := range lines[i].between(d.from, d.to) {
			m[s.col] |= lookOf(s.cell)
		}
	}
	return m
}

// ratingLine reports whether a line names a part of the system that its column
// does not hold otherwise, and its ratings behind: "CH1" and "120 W", "Amp 2" and "way 1 40 W", "way 2 60 W".
func (m columnLooks) ratingLine(slots []slot) bool {
	if len(slots) < 2 || sectionField(slots[0].cell.line()) == vocabulary.Unknown || m[slots[0].col]&lookOf(slots[0].cell)&^(lookWords|lookTag|lookModel|lookRoom) != 0 {
		return false
	}
	for _, s := range slots[1:] {
		if lookOf(s.cell)&(lookRating|lookWatts) == 0 && !reLabelWatts.MatchString(text(s.cell)) {
			return false
		}
	}
	return true
}

// alike counts the cells of a line that look like others of their columns.
func (m columnLooks) alike(slots []slot) (alike, cells int) {
	for _, s := range slots {
		k := lookOf(s.cell)
		if k&(lookMissing|lookDitto|lookStruck) != 0 {
			continue
		}
		cells++
		if m[s.col]&k&^lookWords != 0 || m[s.col]&^lookWords == 0 && m[s.col]&k != 0 {
			alike++
		}
	}
	return alike, cells
}
