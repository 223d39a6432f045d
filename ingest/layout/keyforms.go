package layout

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A form may have its keys down a column with a value beside each: "Zone | Palm house", "Speakers | 8 x horn", "Tap | 10 W".
// One on a sheet, or several below each other, are a table: the keys its header, and a row for each form. Where a key other
// than that of a place comes twice below itself ("Speakers | 4 x ceiling, 3 W", "Speakers | 2 x wall, 6 W"), there is a row for each.

// fewestKeys and mostKeys are the fewest and the most lines of such a form, and likeForms the share of its keys that another has too.
const (
	fewestKeys = 4
	mostKeys   = 60
	likeForms  = 0.6
)

// A keyForm is the lines of such a form, a key and its value each; a value may be blank.
type keyForm struct{ lines []*line }

// keyForms lays the forms of a plane out as a table; nil where it has none, or a table stands beside them.
func (f *finder) keyForms() *plane {
	p := f.p
	if p.turned || p.glued > 0 || p.stackedCols > 0 || len(p.lines) > maxFormLines {
		return nil
	}
	var forms []keyForm
	taken := map[int]bool{}
	for i := 0; i < len(p.lines); {
		f.watch.Step()
		form := f.keyFormAt(i)
		if len(form.lines) < fewestKeys || !f.formOfDevices(form) || len(forms) > 0 && !likeForm(form, forms[0]) {
			if len(p.lines[i].slots) > 2 {
				return nil
			}
			i++
			continue
		}
		forms = append(forms, form)
		for _, l := range form.lines {
			taken[l.n] = true
		}
		i += len(form.lines)
	}
	if len(forms) == 0 {
		return nil
	}
	return p.asTable(forms, taken)
}

// keyFormAt is the form that begins at line i: lines of a key and a value below each other, as far as no key comes again
// but right below itself.
func (f *finder) keyFormAt(i int) (form keyForm) {
	lines := f.p.lines
	var seen []string
	known := 0
	for ; i < len(lines); i++ {
		l := &lines[i]
		if n := len(form.lines); n > 0 && (l.n != form.lines[n-1].n+1 || l.slots[0].col != form.lines[0].slots[0].col) {
			break
		}
		if len(l.slots) > 2 || l.slots[0].cell.Kind != grid.String || len(l.slots) == 1 && len(form.lines) == 0 {
			break
		}
		if len(form.lines) == mostKeys {
			return keyForm{}
		}
		key := strings.TrimRight(l.slots[0].cell.folded(), ": ")
		h := f.keyHeader(l)
		again := len(seen) > 1 && seen[len(seen)-1] == key && len(l.slots) == 2 && !crossedPlaces[h.field]
		if len(key) > 40 || slices.Contains(seen, key) && !again || h.score < headerScore && (len(l.slots) == 1 || len(form.lines) == 0 || anyDigit(key)) {
			break
		}
		if h.score >= headerScore {
			known++
		}
		seen, form.lines = append(seen, key), append(form.lines, l)
	}
	if 5*known < 3*len(form.lines) {
		return keyForm{}
	}
	return form
}

// keyHeader is what the key of a line of a form says as a header.
func (f *finder) keyHeader(l *line) headerCell {
	return f.headerOf(wordingOf(strings.TrimRight(l.slots[0].cell.line(), ": ")))
}

// formOfDevices reports whether a form says what a list of loudspeakers does: how many, or of what kind, at which power, and
// where they are.
func (f *finder) formOfDevices(form keyForm) bool {
	placed, counted, powered := false, false, false
	for _, l := range form.lines {
		h := f.keyHeader(l)
		if h.score < headerScore || len(l.slots) < 2 {
			continue
		}
		value := l.slots[1].cell.line()
		speakers := vocabulary.DeviceIn(l.slots[0].cell.line()) == vocabulary.LoudspeakerDevice || vocabulary.DeviceIn(value) == vocabulary.LoudspeakerDevice
		placed = placed || crossedPlaces[h.field]
		counted = counted || h.field == vocabulary.Quantity || speakers && anyDigit(value)
		powered = powered || h.field == vocabulary.Tap || h.field == vocabulary.TotalWatts || speakers && len(notation.PowersIn(value, notation.Auto)) > 0
	}
	return placed && counted && powered
}

// likeForm reports whether two forms have most of their keys in common.
func likeForm(a, b keyForm) bool {
	same := 0
	for _, l := range a.lines {
		if slices.ContainsFunc(b.lines, func(o *line) bool { return o.slots[0].cell.folded() == l.slots[0].cell.folded() }) {
			same++
		}
	}
	return float64(same) >= likeForms*float64(len(a.lines)) && float64(same) >= likeForms*float64(len(b.lines))
}

// asTable is the plane with a header of all keys in place of the first of some forms, and a row for each.
func (p *plane) asTable(forms []keyForm, taken map[int]bool) *plane {
	var keys []*line
	at := map[string]int{} // key -> column of the table
	for _, form := range forms {
		for _, l := range form.lines {
			if k := l.slots[0].cell.folded(); at[k] == 0 {
				keys = append(keys, l)
				at[k] = len(keys)
			}
		}
	}
	q := &plane{file: p.file, sheet: p.sheet, on: p.on, hiddenCols: p.hiddenCols, mergedAt: map[int][]int{}, laidAt: map[[2]int]cellAt{}, laidRows: map[int]schedule.Span{}}
	q.laid = grid.Range{Row1: forms[0].lines[0].n, Col1: keys[0].slots[0].col}
	put := func(to *line, col int, s slot, n int) {
		q.laid.Row2, q.laid.Col2 = max(q.laid.Row2, n), max(q.laid.Col2, s.col)
		to.slots = append(to.slots, slot{col, s.cell})
		q.laidAt[[2]int{to.n, col}] = cellAt{n, s.col}
	}
	next := 0
	for i := range p.lines {
		l := &p.lines[i]
		if !taken[l.n] {
			q.lines = append(q.lines, *l)
			continue
		}
		if next == len(forms) || l != forms[next].lines[0] {
			continue
		}
		if next == 0 {
			head := line{n: l.n, hidden: l.hidden}
			for j, k := range keys {
				put(&head, j+1, k.slots[0], k.n)
			}
			q.lines = append(q.lines, head)
		}
		for _, lines := range forms[next].rows() {
			row := line{n: lines[0].n, hidden: l.hidden}
			if row.n == l.n {
				row.n = forms[next].lines[1].n
			}
			all := forms[next].lines
			q.laidRows[row.n] = schedule.Span{First: all[0].n, Last: all[len(all)-1].n}
			for j, k := range keys {
				for _, v := range lines {
					if len(v.slots) > 1 && v.slots[0].cell.folded() == k.slots[0].cell.folded() {
						put(&row, j+1, v.slots[1], v.n)
					}
				}
			}
			q.lines = append(q.lines, row)
		}
		next++
	}
	return q
}

// rows are the lines that make the rows of a form: all of them in a form whose keys come once each; otherwise the one row
// for each line of a key that comes again, that line ahead, with the lines of the other keys.
func (form keyForm) rows() [][]*line {
	key := func(i int) string { return form.lines[i].slots[0].cell.folded() }
	from, to := 0, 0 // lines of the key that comes again
	for i := 1; i < len(form.lines) && to == 0; i++ {
		if key(i) == key(i-1) {
			from, to = i-1, i+1
			for to < len(form.lines) && key(to) == key(from) {
				to++
			}
		}
	}
	if to == 0 {
		return [][]*line{form.lines}
	}
	var rows [][]*line
	for i := from; i < to; i++ {
		rows = append(rows, slices.Concat(form.lines[i:i+1], form.lines[:from], form.lines[to:]))
	}
	return rows
}
