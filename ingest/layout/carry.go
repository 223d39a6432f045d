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
				v.Cell, v.Text, v.How, v.Because = c, s, schedule.CarriedDown, "merged with "+at.Cell()
				v.At = at
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
			if v.How == schedule.Stated && v.Cell != nil && v.Cell.Kind == grid.String && isDitto(oneLine(v.Text)) {
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

// blankRules says for one column whether blanks under a filled cell repeat it.
type blankRule struct {
	col     int
	through bool
	carry   bool
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
	if len(rules) == 0 {
		return
	}
	leader := b.leader(rules)
	for i := range rules {
		rules[i].carry = b.opensGroups(rules[i].col, leader)
	}
	place := -1 // the column whose change ends a room or control
	for _, want := range []vocabulary.Field{vocabulary.Zone, vocabulary.Room} {
		for j := range b.t.Columns {
			if place < 0 && b.t.Columns[j].Field == want {
				place = j
			}
		}
	}
	for _, rule := range rules {
		if !rule.carry {
			continue
		}
		last, at := -1, ""
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
			if !rule.through && place >= 0 && place != rule.col {
				if p := r.Values[place].Text; p != "" && p != at {
					if at != "" && last >= 0 && r.Values[rule.col].Text == "" {
						last = -1
					}
					at = p
				}
			}
			v := &r.Values[rule.col]
			switch {
			case v.Text != "":
				if r.Class == Device {
					last = i
				}
			case v.Cell == nil && last >= 0:
				o := &b.t.Records[last].Values[rule.col]
				v.Text, v.How, v.Cell = o.Text, schedule.CarriedDown, o.Cell
				v.Because = "blank under " + o.At.Cell()
				if o.How == schedule.CarriedDown && o.Because != "" {
					v.Because = "blank under " + o.At.Cell()
				}
			}
		}
	}
}

// leader is the outermost column that opens groups by itself: filled at the
// first device, blank below, never twice the same in a row.
func (b *bodyReader) leader(rules []blankRule) int {
	for _, r := range rules {
		if !r.through {
			continue
		}
		if filled, blank, repeats, first := b.pattern(r.col, -1); first && blank > 0 && filled > 0 && repeats*10 <= filled {
			if blank*5 >= filled || blank >= 2 {
				return r.col
			}
		}
	}
	return -1
}

// pattern counts how a column is filled over the devices of each section.
// With a leader, only blanks in lines on which the leader is filled count as
// loose: the column was left blank at the opening of a group.
func (b *bodyReader) pattern(col, leader int) (filled, blank, repeats int, first bool) {
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

// opensGroups decides whether blanks in a column mean "as above": it opens
// groups by itself, or it is filled just where the leader is.
func (b *bodyReader) opensGroups(col, leader int) bool {
	if col == leader {
		return true
	}
	filled, blank, repeats, first := b.pattern(col, leader)
	if filled == 0 || blank == 0 {
		return false
	}
	if b.t.Columns[col].Field == vocabulary.CableType && !b.lengthsUnder(col) {
		return false // a run said once, not a type for every row
	}
	if leader >= 0 {
		together, apart, loose := 0, 0, 0
		for i := range b.t.Records {
			r := &b.t.Records[i]
			if r.Class != Device {
				continue
			}
			l, v := r.Values[leader].How == schedule.Stated, r.Values[col].Text != ""
			switch {
			case l && v:
				together++
			case v:
				apart++
			case l:
				loose++
			}
		}
		if together > 0 && loose*5 <= together && repeats*10 <= filled {
			return true // filled wherever a group opens, and perhaps inside it
		}
		return false
	}
	field := b.t.Columns[col].Field
	if field == vocabulary.Control || field == vocabulary.Room || field == vocabulary.LineVoltage || field == vocabulary.Use {
		return false
	}
	return first && repeats*10 <= filled && blank*5 >= filled
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
