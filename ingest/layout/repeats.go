package layout

import (
	"cmp"
	"slices"
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// A row may list several groups of loudspeakers side by side, with the same
// headers over each: "Amp, Ch, Room, Qty, Tap, Room, Qty, Tap". It becomes a row for each group.

// repeats are headers that come again in the same order.
type repeats struct {
	first, size, times int // the index of the first heading, headings of a group, groups
	cols               []*heading
	labels             []string   // the headings over the groups, nil where they have none
	own                []*heading // what stands below each of them, without it
}

// cutCount takes the last figure off a text that comes several times, "Room 2", "Qty #2";
// "" if it ends in none or has no words.
func cutCount(text string) string {
	last := len(text) - 1
	if last < 0 || text[last] < '0' || text[last] > '9' {
		return ""
	}
	stem := strings.TrimRight(text[:last], " \t\n\f\r.#_-")
	if strings.Contains(stem, "\n") || !strings.ContainsFunc(stem, unicode.IsLetter) {
		return ""
	}
	return stem
}

// stem is the words of a header without a number behind them, folded.
func (h *heading) stem() string {
	if len(strings.Fields(h.words)) == 1 && (lookText(h.words)&(lookDevice|lookMounting) != 0 || vocabulary.DeviceIn(h.words) == vocabulary.LoudspeakerDevice) && h.cells.cells > 0 && h.cells.countShare() >= 0.8 {
		return countedDevices // "Horns, Tap, Ceilings, Tap"
	}
	return vocabulary.Fold(cmp.Or(cutCount(h.words), h.words))
}

// countedDevices stands for the header of a column that counts devices of a kind.
const countedDevices = "counted devices"

// mostInGroup is the most headings of a group.
const mostInGroup = 10

// repeated finds the longest run of headings that comes at least twice, one behind the
// other, says how many loudspeakers or watts, and stands beside headings that are of all groups. nil: none.
func repeated(cols []*heading) *repeats {
	stems := make([]string, len(cols))
	for i, h := range cols {
		if stems[i] = h.stem(); h.forced != vocabulary.Unknown {
			return nil
		}
	}
	for size := min(mostInGroup, len(cols)/2); size >= 2; size-- {
		for first := 1; first+2*size <= len(cols); first++ {
			group := stems[first : first+size]
			if slices.Contains(group, "") || !listsLoads(cols[first:first+size], group) || slices.Contains(group[1:], group[0]) {
				continue
			}
			times := 1
			for end := first + (times+1)*size; end <= len(cols) && slices.Equal(stems[end-size:end], group); end += size {
				times++
			}
			if times > 1 {
				return &repeats{first: first, size: size, times: times, cols: cols}
			}
		}
	}
	return nil
}

// listsLoads reports whether headings, whose stems are given, name a tap, or a count beside something else.
func listsLoads(group []*heading, stems []string) bool {
	return slices.Contains(stems, countedDevices) || slices.ContainsFunc(group, func(h *heading) bool {
		return h.score >= headerScore/2 && (h.top == vocabulary.Tap || h.top == vocabulary.Quantity)
	})
}

// shown are the headings of a row of the first group alone.
func (p *repeats) shown() []*heading {
	if p.own != nil {
		return slices.Concat(p.cols[:p.first], p.own, p.cols[p.first+p.size*p.times:])
	}
	return append(slices.Clone(p.cols[:p.first+p.size]), p.cols[p.first+p.size*p.times:]...)
}

// part makes a record of each group of a row. What the row says of all of them
// together, its total, is no more that of one.
func (f *finder) part(t *Table, p *repeats) {
	t.Matrix = true
	var out []Record
	var of []int // the group of each record, -1 for none
	for i := range t.Records {
		r := t.Records[i]
		lines := f.p.within(r.Rows.First, r.Rows.First)
		if r.Class != Device && r.Class != Struck && r.Class != Hidden || len(lines) == 0 {
			out, of = append(out, r), append(of, -1)
			continue
		}
		var groups []Record
		for g := range p.times {
			if one, ok := f.groupAt(&r, &lines[0], p, g); ok {
				groups, of = append(groups, one), append(of, g)
			}
		}
		if len(groups) > 1 {
			for k := range groups {
				for j := range t.Columns {
					if t.Columns[j].Field == vocabulary.TotalWatts && (j < p.first || j >= p.first+p.size) {
						groups[k].Values[j] = Value{At: groups[k].Values[j].At}
					}
				}
			}
		}
		if len(groups) == 0 {
			groups, of = []Record{r}, append(of, -1)
		}
		out = append(out, groups...)
	}
	t.Records = out
	if p.labels != nil {
		t.Records = f.labelGroups(t, p, out, of)
	}
}

// groupAt is the record of one group of a row; ok is false where nothing stands in it.
func (f *finder) groupAt(r *Record, l *line, p *repeats, g int) (one Record, ok bool) {
	one = *r
	one.Values = slices.Clone(r.Values)
	for j := range p.size {
		at := f.p.ref(r.Rows.First, p.cols[p.first+g*p.size+j].col)
		if j == 0 {
			one.At = at
		}
		v := Value{At: at}
		if c := l.at(p.cols[p.first+g*p.size+j].col); !c.blank() && strings.TrimSpace(text(c)) != "" {
			v.Cell, v.Text, v.How = c.Cell, text(c), schedule.Stated
			ok = ok || !noCount(c)
		}
		one.Values[p.first+j] = v
	}
	return one, ok
}
