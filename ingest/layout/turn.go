package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// maxTurned bounds the lines of a transposed table: it has a line for each field.
const maxTurned = 80

// readTurned finds the tables whose headers run down a column.
func (sr *sheetReader) readTurned() {
	var last *placed // the transposed table just above, which a block after a blank line may go on with
	lastKey := 0
	for _, r := range sr.f.withSaid(sr.p.blocks(maxTurned)) {
		sr.watch.Step()
		r = sr.f.dropTitles(r)
		if sr.f.namesOverPowers(r) { // a table of its own, whatever stands above
			if t := sr.turned(r, r.Col1); t != nil {
				sr.tables = append(sr.tables, &placed{t: t, area: r})
			}
			last = nil
			continue
		}
		key, ok := sr.f.keyColumn(r, last != nil && lastKey >= r.Col1 && lastKey <= r.Col2 && r.Row1-last.area.Row2 <= 3)
		if !ok {
			last = nil
			continue
		}
		r = sr.f.dropNotes(r, key)
		area := r
		if last != nil && key == lastKey && r.Row1-last.area.Row2 <= 3 {
			area = grid.Range{Row1: last.area.Row1, Col1: min(last.area.Col1, r.Col1), Row2: r.Row2, Col2: max(last.area.Col2, r.Col2)}
			sr.tables = sr.tables[:len(sr.tables)-1]
		}
		t := sr.turned(area, key)
		if t == nil {
			last = nil
			continue
		}
		last, lastKey = &placed{t: t, area: area}, key
		sr.tables = append(sr.tables, last)
	}
}

// turned reads the area as a table that lies on its side, its header in the column key and those left of it.
func (sr *sheetReader) turned(area grid.Range, key int) *Table {
	f := newFinder(sr.p.turn(area), sr.s, sr.forced, sr.watch)
	d := &draft{units: map[int]bool{}, repeated: map[int]Class{}, from: area.Row1, to: area.Row2, last: area.Col2, words: map[int]map[int]string{}}
	for c := area.Col1; c <= key; c++ {
		d.header = append(d.header, c)
	}
	d.first = key + 1
	if next := f.p.within(key+1, key+1); len(next) > 0 && len(next[0].slots) >= 2 && f.unitsOnly(next[0].slots) {
		d.header = append(d.header, key+1)
		d.units[key+1] = true
		d.first++
	}
	t := f.build(d, area.Row1, area.Row2)
	if t != nil {
		t.SheetHidden = sr.sheet.Hidden
	}
	return t
}

// dropTitles leaves out the lines at the top of a block in which only the first column is filled.
func (f *finder) dropTitles(r grid.Range) grid.Range {
	for _, l := range f.p.within(r.Row1, r.Row2) {
		slots := l.between(r.Col1, r.Col2)
		if len(slots) == 0 {
			continue
		}
		if len(slots) > 1 || slots[0].col != r.Col1 || l.n == r.Row2 {
			break
		}
		r.Row1 = l.n + 1
	}
	return r
}

// dropNotes leaves out the lines at the end of a transposed table that say
// something in its header's column alone, and no header: notes below it.
func (f *finder) dropNotes(r grid.Range, key int) grid.Range {
	lines := f.p.within(r.Row1, r.Row2)
	for n := len(lines) - 1; n > 0; n-- {
		slots := lines[n].between(r.Col1, r.Col2)
		if len(slots) > 1 || len(slots) == 1 && (slots[0].col > key || f.header(slots[0].cell).score >= headerScore) {
			break
		}
		r.Row2 = lines[n-1].n
	}
	return r
}

// placesByOutputs reports whether cells are the header of places across outputs or lines: "Zone | Output 1 | Output 2". Below
// each other in a transposed table, outputs would be the names of zones.
func (f *finder) placesByOutputs(slots []slot) bool {
	if len(slots) < 3 || !crossedPlaces[f.header(slots[0].cell).field] || f.header(slots[0].cell).field == vocabulary.Channel {
		return false
	}
	if corner := f.header(slots[0].cell).field; corner != vocabulary.Circuit && isLine(slots[1].cell) && isLine(slots[2].cell) {
		return true
	}
	return slots[1].cell.says().is(outputLabel) && slots[2].cell.says().is(outputLabel)
}

// isLine reports whether a cell names a line: "Line 1".
func isLine(c cell) bool { return notation.KeyOf(c.line()).Kind == notation.KeyLine }

// placesByPowers reports whether the first line is the header of counts of places by what their
// loudspeakers are set to: "Area | Amplifier | 1.5 W | 3 W | 6 W". The places below it, "Workshop",
// "Offices", may be words of headers too.
func (f *finder) placesByPowers(lines []line, r grid.Range) bool {
	slots := lines[0].between(r.Col1, r.Col2)
	if len(slots) < 3 || !crossedPlaces[f.header(slots[0].cell).field] {
		return false
	}
	from := slices.IndexFunc(slots, func(s slot) bool { return s.cell.says().is(onlyFigure) })
	if from < 1 {
		return false
	}
	powers := slots[from:]
	if to := slices.IndexFunc(powers, func(s slot) bool { return !s.cell.says().is(onlyFigure) }); to >= 0 {
		powers = powers[:to]
	}
	return len(powers) >= 2 && !wattsAlong(powers) && valueLabels(&strip{slots: powers}, lines[1:]) == len(powers)
}

// keyColumn decides whether a block is a transposed table and which column
// holds its header. more is set for a block that may go on with one above.
func (f *finder) keyColumn(r grid.Range, more bool) (int, bool) {
	if r.Row2-r.Row1 < 2 && !more || r.Col2-r.Col1 < 2 {
		return 0, false
	}
	lines := f.p.within(r.Row1, r.Row2)
	if f.placesByOutputs(lines[0].between(r.Col1, r.Col2)) || f.placesByPowers(lines, r) || headsStages(lines[0].between(r.Col1, r.Col2), lines[1:]) {
		return 0, false
	}
	best, bestShare, bestDistinct := 0, 0.0, 0
	zonesAcross := slices.ContainsFunc(lines[0].between(r.Col1, r.Col2), func(s slot) bool { return notation.KeyOf(s.cell.line()).Kind == notation.KeyZone }) // a matrix of models by zones
	for _, col := range []int{r.Col1, r.Col1 + 1} {
		if col == r.Col1+1 && r.Col2-r.Col1 < 3 {
			continue
		}
		cells, matched, again := 0, 0, 0
		values, stray := 0, 0 // cells on lines with a header, and on those without
		var seen []vocabulary.Field
		tapped := false
		above := ""
		for i := range lines {
			c := lines[i].at(col)
			if c.blank() {
				continue
			}
			cells++
			if c.folded() == above {
				again++
				continue // a place that goes on, "Main house" above "Main house", heads no line
			}
			above = c.folded()
			h := f.header(c)
			if strings.HasSuffix(text(c), ":") { // "Tap:" heads a line as well
				h = f.headerOf(wordingOf(strings.TrimRight(c.line(), ": ")))
			}
			if !zonesAcross && f.countsAtTap(c, lines[i].between(col+1, r.Col2)) {
				values += len(lines[i].between(col+1, r.Col2))
				matched++
				tapped = true
				if !slices.Contains(seen, vocabulary.Quantity) {
					seen = append(seen, vocabulary.Quantity)
				}
				continue
			}
			if h.score < headerScore {
				stray += len(lines[i].between(col+1, r.Col2))
			} else {
				values += len(lines[i].between(col+1, r.Col2))
				matched++
				if !h.title && !slices.Contains(seen, h.field) {
					seen = append(seen, h.field)
				}
				tapped = tapped || h.field == vocabulary.Quantity || h.field == vocabulary.Length || slices.Contains(powerFields, h.field) || wattsAlong(lines[i].between(col+1, r.Col2))
			}
		}
		if cells == 0 || stray > values || again > 1 && 3*again >= cells { // kinds of devices, one below the other
			continue
		}
		share := float64(matched) / float64(cells)
		if share >= 0.6 && (len(seen) >= 3 && tapped || more && len(seen) >= 1) && share > bestShare+0.1 {
			best, bestShare, bestDistinct = col, share, len(seen)
		}
	}
	if best == 0 {
		return 0, false
	}
	// The same as an upright table: the better reading wins.
	for i := range lines[:min(3, len(lines))] {
		s := strip{slots: lines[i].between(r.Col1, r.Col2), from: r.Col1, to: r.Col2}
		f.weigh(&s)
		if i == 0 && len(s.slots) >= 4 && s.matched == len(s.slots) && s.distinct >= 3 {
			return 0, false // "Item | Qty | Unit price | Extended" holds no values
		}
		if len(s.slots) > 1 && s.distinct >= bestDistinct && s.distinct >= 3 && float64(s.matched)/float64(len(s.slots)) >= bestShare-0.1 {
			return 0, false
		}
	}
	if wattsDown(lines, best+1, r.Col2) {
		return 0, false
	}
	// A second column of keys makes it a block of keys and values.
	for col := best + 1; col <= r.Col2; col++ {
		if col == best+1 && f.unitColumn(lines, col) {
			continue
		}
		cells, keys := 0, 0
		for i := range lines {
			if c := lines[i].at(col); !c.blank() {
				cells++
				if f.header(c).score >= 0.75 || c.Kind == grid.String && strings.HasSuffix(text(c), ":") {
					keys++
				}
			}
		}
		if cells >= 2 && 2*keys > cells {
			return 0, false
		}
	}
	// A column of devices holds more than one value.
	devices := 0
	for col := best + 1; col <= r.Col2; col++ {
		cells := 0
		for i := range lines {
			if !lines[i].at(col).blank() {
				cells++
			}
		}
		if 2*cells >= len(lines) || cells >= 3 {
			devices++
		}
	}
	return best, devices >= 2
}

// wattsDown reports whether a column holds a power in each of its cells, three at least: a column of an upright table, since
// a device on its side has one power among other things.
func wattsDown(lines []line, from, to int) bool {
	for col := from; col <= to; col++ {
		cells, watts := 0, 0
		for i := range lines {
			if c := lines[i].at(col); !c.blank() {
				cells++
				if lookOf(c)&lookWatts != 0 {
					watts++
				}
			}
		}
		if cells >= 3 && watts == cells {
			return true
		}
	}
	return false
}

// countsAtTap reports whether a line of a transposed table counts the loudspeakers of one tap: "HP 15 W | 6 | 6".
func (f *finder) countsAtTap(label cell, counts []slot) bool {
	if len(counts) > 1 && f.header(counts[0].cell).field == vocabulary.Quantity {
		counts = counts[1:] // the unit: "HP 15 W | nb | 6 | 6"
	}
	if len(counts) == 0 || vocabulary.DeviceIn(label.line()) != vocabulary.LoudspeakerDevice || len(notation.PowersIn(label.line(), notation.Auto)) != 1 {
		return false
	}
	return !slices.ContainsFunc(counts, func(s slot) bool { return lookOf(s.cell)&(lookSmall|lookCount) == 0 })
}

// namedAcross are the fields of which two lines may give each its power.
var namedAcross = [vocabulary.Fields]bool{vocabulary.Channel: true, vocabulary.Circuit: true, vocabulary.Amplifier: true, vocabulary.Control: true}

// namesOverPowers reports whether a block is two lines, one of names of outputs, lines,
// amplifiers or controls, the other of a power below each: "Output | 1 | 2", "W | 60 | 120".
func (f *finder) namesOverPowers(r grid.Range) bool {
	lines := f.p.within(r.Row1, r.Row2)
	if len(lines) != 2 || r.Col2-r.Col1 < 2 {
		return false
	}
	names, powers := lines[0].between(r.Col1, r.Col2), lines[1].between(r.Col1, r.Col2)
	if len(names) < 3 || len(names) != len(powers) || names[0].col != r.Col1 || powers[0].col != r.Col1 {
		return false
	}
	over, under := f.header(names[0].cell), f.s.Header(powers[0].cell.line())
	if over.score < headerScore || !namedAcross[over.field] || under.Unit != "W" && !slices.Contains(powerFields, under.Best().Field) {
		return false
	}
	for i := 1; i < len(names); i++ {
		if names[i].col != powers[i].col || lookOf(names[i].cell)&(lookSmall|lookTag|lookLetter|lookChannel|lookAmp|lookControl|lookModel) == 0 || lookOf(powers[i].cell)&(lookNumber|lookWatts|lookRating) == 0 {
			return false
		}
	}
	return true
}

// wattsAlong reports whether the cells of a line are powers: what rows of loudspeakers
// are set to, whatever its header says. Powers that rise from cell to cell head columns of counts.
func wattsAlong(slots []slot) bool {
	if len(slots) < 2 || slices.ContainsFunc(slots, func(s slot) bool { return lookOf(s.cell)&lookWatts == 0 }) {
		return false
	}
	last := 0.0
	for _, s := range slots {
		p, err := notation.ParseWatts(s.cell.line(), notation.Auto)
		if err != nil || p.W <= last {
			return true
		}
		last = p.W
	}
	return false
}

// unitColumn reports whether the cells of a column are units.
func (f *finder) unitColumn(lines []line, col int) bool {
	var slots []slot
	for i := range lines {
		if c := lines[i].at(col); !c.blank() {
			slots = append(slots, slot{lines[i].n, c})
		}
	}
	return len(slots) > 0 && f.unitsOnly(slots)
}
