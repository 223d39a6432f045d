package layout

import (
	"math"
	"slices"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
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
					all = all && s.cell.Kind == grid.String && lookOf(s.cell)&(lookNumber|lookMissing|lookWatts|lookCountWatts) == 0
				}
				if !all {
					continue
				}
				d.header = append(d.header, lines[i+1].n)
				d.first = lines[i+1].n + 1
			}
			sample := f.deviceLike(f.p.within(d.first, d.last), d)
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
// it must show powers, or conductors with lengths, and names beside them. The lines of heads are known as titles.
func (f *finder) bare(r grid.Range, heads map[int]bool) (*Table, grid.Range) {
	if heads == nil {
		r = f.belowTitle(r)
	}
	body := f.p.within(r.Row1, r.Row2)
	if len(body) < 3 {
		return nil, r
	}
	d := &draft{header: []int{0}, units: map[int]bool{}, repeated: map[int]Class{}, heads: heads, from: r.Col1, to: r.Col2, first: r.Row1, last: r.Row2, words: map[int]map[int]string{}}
	cols := f.headings(d, f.deviceLike(body, d), r.Col1, r.Col2)
	selfTold(cols)
	remarksBeside(cols, len(body))
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
		case vocabulary.Quantity:
			sure = sure || c.groupWatts() != nil
		case vocabulary.Length:
			sure = sure || c.share(lookLength) >= 0.7 && dec.kind == Cables
		case vocabulary.Zone, vocabulary.Room, vocabulary.Tag, vocabulary.Channel, vocabulary.Circuit, vocabulary.Control, vocabulary.Amplifier, vocabulary.Cable, vocabulary.From:
			named = true
		}
	}
	if !sure || !named {
		return nil, r
	}
	t := &Table{Sheet: f.p.sheet, Kind: dec.kind, Confidence: 0.3, Transposed: f.p.turned}
	for i, h := range cols {
		h.at = r.Row1
		c := h.column(f.p, dec, i)
		c.Confidence = min(c.Confidence, 0.4)
		t.Columns = append(t.Columns, c)
	}
	f.records(d, t, cols)
	controlsInPlaces(t)
	t.Range = f.p.area(r)
	return t, r
}

// belowTitle leaves out the lines at the top of a block that say one thing
// only and name nothing that feeds or holds the rows: they are titles of the
// whole sheet. The last of them goes with the rows below it where others like it stand further down.
func (f *finder) belowTitle(r grid.Range) grid.Range {
	lines := f.p.within(r.Row1, r.Row2)
	lone := func(l line) bool { return len(l.between(r.Col1, r.Col2)) == 1 }
	lead := slices.IndexFunc(lines, func(l line) bool {
		return !lone(l) || sectionField(l.between(r.Col1, r.Col2)[0].cell.line()) != vocabulary.Unknown
	})
	if lead > 0 && !lone(lines[lead]) && slices.ContainsFunc(lines[lead:], lone) {
		lead--
	}
	if lead > 0 {
		r.Row1 = lines[lead].n
	}
	return r
}

// selfNamed are the fields whose cells may say themselves what they are: "Line 1", "VC-3".
var selfNamed = [vocabulary.Fields]bool{vocabulary.Control: true, vocabulary.Amplifier: true, vocabulary.Channel: true,
	vocabulary.Circuit: true, vocabulary.Zone: true, vocabulary.Floor: true, vocabulary.Building: true}

// selfTold gives columns without a header the fields that their cells tell
// themselves: names with their words, groups of loudspeakers ("12 x 15 W horn"),
// and beside these what they add up to.
func selfTold(cols []*heading) {
	taken := map[vocabulary.Field]bool{}
	for _, h := range cols {
		if h.forced != vocabulary.Unknown || len(h.parts) > 0 {
			continue
		}
		f := h.cells.namedField()
		if f != vocabulary.Unknown && !taken[f] {
			h.forced, h.aside, taken[f] = f, "what its cells call themselves", true
		}
	}
	for _, h := range cols {
		if watts := h.cells.groupWatts(); watts != nil && !taken[vocabulary.Quantity] && h.forced == vocabulary.Unknown {
			h.forced, h.aside, taken[vocabulary.Quantity] = vocabulary.Quantity, "counts of loudspeakers with their taps", true
			for _, o := range cols {
				if o.forced == vocabulary.Unknown && o.cells.equals(watts) && !taken[vocabulary.TotalWatts] {
					o.forced, o.aside, taken[vocabulary.TotalWatts] = vocabulary.TotalWatts, "what the loudspeakers beside it add up to", true
				}
			}
		}
	}
}

// namedField is the field that most cells of a column have a word for, Unknown
// where they have none or say the same everywhere.
func (s *sample) namedField() vocabulary.Field {
	hits := map[vocabulary.Field]int{}
	for _, t := range s.texts {
		f := sectionField(oneLine(t))
		if notation.KeyOf(t).Kind == notation.KeyControl {
			f = vocabulary.Control
		}
		hits[f]++
	}
	for f, n := range hits {
		if selfNamed[f] && s.distinct > 1 && 10*n >= 8*s.cells {
			return f
		}
	}
	return vocabulary.Unknown
}

// groupWatts are the watts of the groups of loudspeakers that each cell tells,
// by line; nil where most cells tell none.
func (s *sample) groupWatts() map[int]float64 {
	watts := map[int]float64{}
	none := 0
	for i, t := range s.texts {
		groups, err := notation.ParseGroups(t, notation.Auto)
		if err != nil {
			if none++; 10*(len(s.texts)-none) < 7*s.cells {
				return nil // too few whatever follows
			}
			continue
		}
		for _, g := range groups {
			watts[s.lines[i]] += float64(g.Count) * g.W
		}
	}
	if len(watts) < 2 || 10*len(watts) < 7*s.cells {
		return nil
	}
	return watts
}

// equals reports whether the powers of a column are mostly those given, by line.
func (s *sample) equals(watts map[int]float64) bool {
	hit, miss := 0, 0
	for i, t := range s.texts {
		v, ok := factor(t)
		want, told := watts[s.lines[i]]
		switch {
		case !ok || !told:
		case math.Abs(v-want) <= 0.011*want:
			hit++
		default:
			miss++
		}
	}
	return hit >= 2 && hit > 4*miss
}
