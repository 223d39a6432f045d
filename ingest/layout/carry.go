package layout

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// groupFields are the columns whose blank cells can mean "as above", from the
// outermost in. A field with through set runs on when the zone or room beside it changes.
var groupFields = []struct {
	field   vocabulary.Field
	through bool
}{
	{vocabulary.Job, true}, {vocabulary.JobNo, true}, {vocabulary.Site, true}, {vocabulary.Building, true}, {vocabulary.Floor, true},
	{vocabulary.Amplifier, true}, {vocabulary.Channel, true}, {vocabulary.Circuit, true}, {vocabulary.Zone, true},
	{vocabulary.Room, false}, {vocabulary.Control, false}, {vocabulary.CableType, true}, {vocabulary.From, true}, {vocabulary.LineVoltage, true}, {vocabulary.Use, true},
}

// carry fills blank cells of devices from above where the sheet says so: in
// merged areas and at ditto marks in any column, and under a filled cell in
// columns that name the group a row belongs to and are filled once for each group.
func (b *bodyReader) carry() {
	b.carryMerged()
	b.carryDitto()
	b.carryBlank()
}

func (b *bodyReader) carryMerged() {
	for i := range b.lines {
		if c := b.lines[i].class; c != Device && c != Struck && c != Hidden {
			continue
		}
		n := b.lines[i].l.n
		for _, k := range b.f.p.mergedAt[n] {
			m := b.f.p.merges[k]
			if m.Row1 >= n || m.Row1 < b.d.first || m.Col1 < b.d.from || m.Col1 > b.d.to {
				continue
			}
			j := b.index[m.Col1-b.d.from]
			if j < 0 {
				continue
			}
			v := &b.t.Records[i].Values[j]
			if v.Cell != nil {
				continue
			}
			lines := b.f.p.within(m.Row1, m.Row1)
			if len(lines) == 0 {
				continue
			}
			c := lines[0].at(m.Col1)
			if s := text(c); s != "" {
				at := b.f.p.ref(m.Row1, m.Col1)
				v.Cell, v.Text, v.How, v.Because = c.Cell, s, schedule.CarriedDown, "merged with "+at.Cell()
				v.At, v.Merged = at, true
			}
		}
	}
}

func (b *bodyReader) carryDitto() {
	last := make([]int, len(b.cols)) // record+1 that the column was last filled in
	for i := range b.t.Records {
		r := &b.t.Records[i]
		switch r.Class {
		case Title, Total, Header:
			clear(last)
			continue
		case Device, Struck, Hidden:
		default:
			continue
		}
		for j := range r.Values {
			v := &r.Values[j]
			if v.Text == "" {
				continue
			}
			if v.How == schedule.Stated && v.Cell != nil && v.Cell.Kind == grid.String && repeatsAbove(v.Text) {
				if k := last[j]; k > 0 {
					o := &b.t.Records[k-1].Values[j]
					v.Text, v.How = o.Text, schedule.CarriedDown
					v.Because = "ditto mark for " + o.At.Cell()
					v.Cell = o.Cell
				}
				continue
			}
			if r.Class == Device {
				last[j] = i + 1
			}
		}
	}
}

// repeatsAbove reports whether the text of a cell is a ditto mark.
func repeatsAbove(t string) bool {
	if len(t) > longestDitto {
		return isDitto(oneLine(t))
	}
	return wordingOf(t).is(dittoMark)
}

// A blankRule says for one column whether blanks under a filled cell repeat it.
type blankRule struct {
	col     int
	through bool
	own     bool  // it opens groups by itself
	resets  []int // columns in which a new value ends what was carried
}

func (b *bodyReader) carryBlank() {
	var rules []blankRule
	for _, g := range groupFields {
		for j := range b.t.Columns {
			if b.t.Columns[j].Field == g.field {
				rules = append(rules, blankRule{col: j, through: g.through})
			}
		}
	}
	var leaders []int // columns that open groups, the outermost first
	for i := range rules {
		if r := &rules[i]; r.through && b.opensGroups(r.col) {
			r.own = true
			r.resets = leaders[:len(leaders):len(leaders)]
			leaders = append(leaders, r.col)
		}
	}
	carried := rules[:0:0]
	for _, r := range rules {
		if !r.own {
			leader, ok := b.follows(r.col, leaders)
			if !ok {
				continue
			}
			r.resets = []int{leader}
		}
		carried = append(carried, r)
	}
	// What was stated, before anything is carried.
	stated := make([][]bool, len(b.t.Columns))
	for _, r := range carried {
		for _, col := range append([]int{r.col}, r.resets...) {
			if stated[col] == nil {
				stated[col] = make([]bool, len(b.t.Records))
				for i := range b.t.Records {
					stated[col][i] = b.t.Records[i].Values[col].Text != ""
				}
			}
		}
	}
	for _, r := range carried {
		b.carryColumn(r, stated)
	}
}

// otherAmplifier reports whether a column is of outputs and two records name different
// amplifiers: the output of one is not carried down to another.
func (b *bodyReader) otherAmplifier(col, above, at int) bool {
	if b.t.Columns[col].Field != vocabulary.Channel {
		return false
	}
	for j := range b.t.Columns {
		if b.t.Columns[j].Field == vocabulary.Amplifier {
			if t := b.t.Records[at].Values[j].Text; t != "" && t != b.t.Records[above].Values[j].Text {
				return true
			}
		}
	}
	return false
}

func (b *bodyReader) carryColumn(rule blankRule, stated [][]bool) {
	last := -1
	for i := range b.t.Records {
		r := &b.t.Records[i]
		switch r.Class {
		case Title, Total, Header:
			last = -1
			continue
		case Device, Hidden:
		default:
			continue
		}
		v := &r.Values[rule.col]
		if v.Text != "" {
			if r.Class == Device {
				last = i
			}
			continue
		}
		for _, col := range rule.resets {
			if stated[col][i] {
				last = -1
			}
		}
		if last >= 0 && b.otherAmplifier(rule.col, last, i) {
			last = -1
		}
		if v.Cell == nil && last >= 0 {
			o := &b.t.Records[last].Values[rule.col]
			v.Text, v.How, v.Cell = o.Text, schedule.CarriedDown, o.Cell
			v.Because = "blank under " + o.At.Cell()
		}
	}
}

// opensGroups reports whether a column opens groups by itself: filled at the
// first device of a section, blank below, hardly ever twice the same in a row.
func (b *bodyReader) opensGroups(col int) bool {
	if b.t.Columns[col].Field == vocabulary.CableType && !b.lengthsUnder(col) {
		return false // a run said once, not a type for every row
	}
	switch b.t.Columns[col].Field {
	case vocabulary.LineVoltage, vocabulary.Use:
		return false
	}
	filled, blank, repeats, first := b.pattern(col)
	if !first || filled == 0 || blank == 0 || repeats*10 > filled {
		return false
	}
	return blank*5 >= filled || blank >= 2 || repeats == 0 && b.sameLine(col)
}

// sameLine reports whether each device at which the column is blank hangs on the
// same output, circuit or cable as the device above it.
func (b *bodyReader) sameLine(col int) bool {
	above := -1
	for i := range b.t.Records {
		switch r := &b.t.Records[i]; r.Class {
		case Title, Total, Header:
			above = -1
		case Device:
			if r.Values[col].Text == "" {
				same := false
				for j := range b.t.Columns {
					switch b.t.Columns[j].Field {
					case vocabulary.Channel, vocabulary.Circuit, vocabulary.Cable:
						same = same || j != col && above >= 0 && r.Values[j].Text != "" && r.Values[j].Text == b.t.Records[above].Values[j].Text
					}
				}
				if !same {
					return false
				}
			}
			above = i
		}
	}
	return true
}

// follows finds the column that opens the groups in which this one is filled
// where the group opens and nowhere else. The innermost is tried first.
func (b *bodyReader) follows(col int, leaders []int) (int, bool) {
	if b.t.Columns[col].Field == vocabulary.CableType && !b.lengthsUnder(col) {
		return 0, false
	}
	for k := len(leaders) - 1; k >= 0; k-- {
		leader := leaders[k]
		together, apart, blank := 0, 0, 0
		for i := range b.t.Records {
			r := &b.t.Records[i]
			if r.Class != Device {
				continue
			}
			l, v := r.Values[leader].Text != "", r.Values[col].Text != ""
			switch {
			case l && v:
				together++
			case v:
				apart++
			case !l:
				blank++
			}
		}
		if together > 0 && blank > 0 && apart*5 <= together {
			return leader, true
		}
	}
	return 0, false
}

// pattern counts how a column is filled over the devices of each section, and
// whether the first of each has a value.
func (b *bodyReader) pattern(col int) (filled, blank, repeats int, first bool) {
	last, open := "", true
	first = true
	for i := range b.t.Records {
		r := &b.t.Records[i]
		switch r.Class {
		case Title, Total, Header:
			open, last = true, ""
			continue
		case Device:
		default:
			continue
		}
		v := r.Values[col].Text
		if v == "" && r.Values[col].Cell != nil {
			v = "\x00" // written and without meaning: it closes
		}
		switch {
		case v != "":
			filled++
			if v == last {
				repeats++
			}
			last = v
		default:
			blank++
			if open {
				first = false
			}
		}
		open = false
	}
	return filled, blank, repeats, first
}

// lengthsUnder reports whether rows in which the column is blank have a length of their own.
func (b *bodyReader) lengthsUnder(col int) bool {
	for j := range b.t.Columns {
		if b.t.Columns[j].Field != vocabulary.Length {
			continue
		}
		for i := range b.t.Records {
			r := &b.t.Records[i]
			if r.Class == Device && r.Values[col].Text == "" && r.Values[j].Text != "" {
				return true
			}
		}
	}
	return false
}
