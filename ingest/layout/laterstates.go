package layout

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/vocabulary"
)

// Lists of what was moved put what was beside what is now, each over the same headers: "before" over "W | Amp | Out" and
// "new" over "W | Amp | Out". Where the second is blank, the first still holds.

// A change is where the columns of such states are among the headings of a table.
type change struct{ was, is, size int }

// changedGroups finds such columns and reads the first of them by their own headers; nil if there are none. What is only
// planned changes nothing.
func (f *finder) changedGroups(cols []*heading) *change {
	heads, subs := make([]string, len(cols)), make([]string, len(cols))
	for i, h := range cols {
		if len(h.parts) > 1 {
			heads[i], subs[i] = h.parts[0], strings.Join(h.parts[1:], " ")
		}
	}
	for was := range cols {
		if heads[was] == "" || was > 0 && heads[was] == heads[was-1] || classWithin(heads[was])&classEarlier == 0 {
			continue
		}
		size := 1
		for was+size < len(cols) && heads[was+size] == heads[was] {
			size++
		}
		is := was + size
		if size < 2 || is+size > len(cols) || classWithin(heads[is])&(classLater|classPlanned) != classLater || !sameFolded(subs[was:is], subs[is:is+size]) {
			continue
		}
		second := heads[is : is+size]
		if slices.ContainsFunc(second, func(s string) bool { return s != second[0] }) || slices.ContainsFunc(cols[was:is+size], func(h *heading) bool { return h.forced != vocabulary.Unknown }) {
			continue
		}
		blanks, places := false, false
		for j := range size {
			blanks = blanks || cols[is+j].cells.cells < cols[was+j].cells.cells
			switch f.s.Header(subs[was+j]).Best().Field {
			case vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit, vocabulary.Zone, vocabulary.Control:
				places = true
			}
		}
		if !blanks || !places {
			continue
		}
		for j := range size {
			cols[was+j].reword(f.s, subs[was+j])
			cols[is+j].forced, cols[is+j].aside = vocabulary.Ignored, "taken where it is filled, in the place of what was before"
		}
		cols[was].replaces = heads[was]
		return &change{was, is, size}
	}
	return nil
}

// apply puts what is now in the place of what was, where it is filled.
func (c *change) apply(t *Table) {
	for i := range t.Records {
		values := t.Records[i].Values
		for j := range c.size {
			if now := values[c.is+j]; now.Text != "" && now.How == schedule.Stated && !isMissing(now.Text) {
				values[c.was+j] = now
			}
		}
	}
}
