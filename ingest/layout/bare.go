package layout

import (
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// counts reads a block whose first lines are names over counts. It returns
// nil when the block is no such table.
func (f *finder) counts(r grid.Range) (*Table, grid.Range) {
	lines := f.p.within(r.Row1, r.Row2)
	for i := range lines[:min(3, len(lines)-1)] {
		slots := lines[i].between(r.Col1, r.Col2)
		if len(slots) < 3 && !(len(slots) == 2 && slots[0].col > r.Col1) {
			continue
		}
		words := true
		for _, s := range slots {
			words = words && s.cell.Kind == grid.String
		}
		if !words {
			return nil, r
		}
		for _, more := range []int{1, 0} { // two header rows, then one
			if i+more+1 >= len(lines) {
				continue
			}
			d := &draft{header: []int{lines[i].n}, units: map[int]bool{}, repeated: map[int]Class{}, from: r.Col1, to: r.Col2, first: lines[i].n + 1, last: r.Row2, words: map[int]map[int]string{}}
			if more == 1 {
				sub := lines[i+1].between(r.Col1, r.Col2)
				all := len(sub) >= 2
				for _, s := range sub {
					all = all && s.cell.Kind == grid.String && lookOf(s.cell)&(lookNumber|lookMissing|lookWatts) == 0
				}
				if !all {
					continue
				}
				d.header = append(d.header, lines[i+1].n)
				d.first = lines[i+1].n + 1
			}
			sample := deviceLike(f.p.within(d.first, d.last), d)
			where := grid.Range{Row1: lines[i].n, Col1: r.Col1, Row2: r.Row2, Col2: r.Col2}
			if cols, x := f.crossedAmong(d, sample, r.Col1, r.Col2); x != nil {
				return f.buildCrossed(d, cols, x), where
			}
			cols := f.headings(d, sample, r.Col1, r.Col2)
			if x := f.crossed(cols, sample); x != nil {
				return f.buildCrossed(d, cols, x), where
			}
		}
	}
	return nil, r
}

// bare reads a block without a header by its cells alone, the last resort:
// it must show powers, or conductors with lengths, and names beside them.
func (f *finder) bare(r grid.Range) *Table {
	body := f.p.within(r.Row1, r.Row2)
	if len(body) < 3 {
		return nil
	}
	d := &draft{header: []int{r.Row1 - 1}, units: map[int]bool{}, repeated: map[int]Class{}, from: r.Col1, to: r.Col2, first: r.Row1, last: r.Row2, words: map[int]map[int]string{}}
	cols := f.headings(d, deviceLike(body, d), r.Col1, r.Col2)
	dec := decide(cols, titleKinds(f.s, f.p.sheet), findProducts(cols))
	sure, named := false, false
	for i, field := range dec.fields {
		c := cols[i].cells
		if 2*c.total < len(body) {
			continue
		}
		switch field {
		case vocabulary.Tap, vocabulary.ChannelWatts, vocabulary.ControlWatts:
			sure = sure || c.share(anyPower) >= 0.7
		case vocabulary.Length:
			sure = sure || c.share(lookLength) >= 0.7 && dec.kind == Cables
		case vocabulary.Zone, vocabulary.Room, vocabulary.Tag, vocabulary.Channel, vocabulary.Control, vocabulary.Amplifier, vocabulary.Cable, vocabulary.From:
			named = true
		}
	}
	if !sure || !named {
		return nil
	}
	t := &Table{Sheet: f.p.sheet, Kind: dec.kind, Confidence: 0.3, Transposed: f.p.turned}
	for i, h := range cols {
		h.at = r.Row1
		c := h.column(f.p, dec, i)
		c.Confidence = min(c.Confidence, 0.4)
		t.Columns = append(t.Columns, c)
	}
	f.records(d, t, cols)
	t.Range = f.p.area(r)
	return t
}
