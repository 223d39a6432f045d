package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// A row may list several kinds of loudspeakers side by side, each under a heading of its own with the same
// headers below: "Ceiling" over "Pcs" and "W each", "Wall" over "Pcs" and "W each". It becomes a row for each kind.

// reUnitBehind parts a header from the unit behind it: "Decken-LS (W/Stk.)".
var reUnitBehind = regexp.MustCompile(`^(.*\pL[^()]*?)\s*\(([^()]+)\)$`)

// underHead parts the words of a column into the heading over several columns and what stands under it, both "" where
// it has none.
func (h *heading) underHead() (head, sub string) {
	switch len(h.parts) {
	case 0:
		return "", ""
	case 1:
		if !strings.HasSuffix(h.parts[0], ")") {
			return "", ""
		}
		if m := reUnitBehind.FindStringSubmatch(h.parts[0]); m != nil {
			return m[1], m[2]
		}
		return "", ""
	}
	return h.parts[0], strings.Join(h.parts[1:], " ")
}

// headedGroups finds such columns, nil if there are none: headings of kinds of loudspeakers, side by side, each over the
// same headers, which say how many and how many watts.
func (f *finder) headedGroups(cols []*heading) *repeats {
	heads, subs := make([]string, len(cols)), make([]string, len(cols))
	for i, h := range cols {
		if h.forced != vocabulary.Unknown {
			return nil
		}
		heads[i], subs[i] = h.underHead()
	}
	for first := 1; first < len(cols); first++ {
		size := 1
		for first+size < len(cols) && heads[first+size] == heads[first] {
			size++
		}
		if heads[first] == "" || heads[first] == heads[first-1] || size < 2 || size > mostInGroup || !namesKind(heads[first]) {
			continue
		}
		p := &repeats{first: first, size: size, times: 1, cols: cols, labels: []string{heads[first]}}
		for end := first + (p.times+1)*size; end <= len(cols) && namesKind(heads[end-size]) && sameFolded(subs[end-size:end], subs[first:first+size]); end += size {
			if slices.ContainsFunc(heads[end-size:end], func(s string) bool { return s != heads[end-size] }) || slices.Contains(p.labels, heads[end-size]) {
				break
			}
			p.times++
			p.labels = append(p.labels, heads[end-size])
		}
		if p.times > 1 && f.showGroups(p, subs) {
			return p
		}
	}
	return nil
}

// namesKind reports whether a heading names a kind of loudspeaker, or how it is mounted: "Decken-LS", "Wall".
func namesKind(head string) bool {
	const states = classLater | classEarlier | classPlanned | classRevision
	return head != "" && classWithin(head)&states == 0 && (classWithin(head)&(classDevice|classMounting) != 0 || vocabulary.DeviceIn(head) == vocabulary.LoudspeakerDevice || isKindOfSpeaker(head))
}

// isKindOfSpeaker reports whether a heading is an abbreviation for loudspeakers behind what says which: "Decken-LS", "HP mur".
func isKindOfSpeaker(head string) bool {
	return slices.Contains(vocabulary.NewScorer().Concepts(strings.ReplaceAll(head, "-", " ")), "speaker")
}

func sameFolded(a, b []string) bool {
	return slices.EqualFunc(a, b, func(x, y string) bool { return x != "" && vocabulary.Fold(x) == vocabulary.Fold(y) })
}

// showGroups reads the headers under the headings by themselves, with the cells of the group that has the most, and
// reports whether they tell a count and a power.
func (f *finder) showGroups(p *repeats, subs []string) bool {
	counts, watts := false, false
	for j := range p.size {
		h := *p.cols[p.first+j]
		for g := range p.times {
			if o := p.cols[p.first+g*p.size+j]; o.cells.cells > h.cells.cells {
				h.cells = o.cells
			}
		}
		h.reword(f.s, subs[p.first+j])
		if h.score >= named {
			counts = counts || h.top == vocabulary.Quantity
			watts = watts || h.top == vocabulary.Tap || h.top == vocabulary.TotalWatts
		}
		p.own = append(p.own, &h)
	}
	if !counts && watts && p.size == 2 { // "N." alone is the number of a row, but not twice beside watts
		for _, h := range p.own {
			if h.top != vocabulary.Tap && h.top != vocabulary.TotalWatts && h.cells.countShare() >= 0.8 {
				h.forced, h.aside, counts = vocabulary.Quantity, "counts beside the watts of each", true
			}
		}
	}
	return counts && watts
}

// labelGroups adds the heading of its group to each record of a group.
func (f *finder) labelGroups(t *Table, p *repeats, records []Record, groups []int) []Record {
	field := vocabulary.Model
	if slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Model }) {
		field = vocabulary.Kind
	}
	h := p.cols[p.first]
	t.Columns = append(t.Columns, Column{At: f.p.ref(h.at, h.col), Header: strings.Join(p.labels, ", "), Field: field, Confidence: 0.8,
		Evidence: "the same headers stand below each"})
	for i := range records {
		v := Value{At: records[i].At}
		if g := groups[i]; g >= 0 {
			head := p.cols[p.first+g*p.size]
			v = Value{Cell: headerCellOf(f, head), At: f.p.ref(head.at, head.col), Text: p.labels[g], How: schedule.Stated}
		}
		records[i].Values = append(slices.Clip(records[i].Values), v)
	}
	return records
}
