package layout

import (
	"slices"

	"lineaudit/ingest/grid"
)

// A form for each zone may have its labels in lines with what is filled in below them: "Zone | Type | Qty" over a line of
// values, "Tap | Amp | Rating" over the next. Laid side by side they are one header over a row for each form.

// fewestForms is the fewest forms alike, and fewestPairs the fewest lines of labels in each, that are laid out so.
const (
	fewestForms = 2
	fewestPairs = 2
)

// A stackedForm is where a form begins among the lines of a plane, and its lines of labels with those of values below them.
type stackedForm struct{ labels, values []*line }

// stacked lays the forms of a plane side by side; nil where it has none.
func (f *finder) stacked() *plane {
	p := f.p
	if p.turned || len(p.lines) > maxFormLines {
		return nil
	}
	var forms []stackedForm
	taken := map[int]bool{}
	for i := 0; i < len(p.lines); {
		f.watch.Step()
		form := f.stackedAt(i)
		if len(form.labels) < fewestPairs || len(forms) > 0 && !sameLabels(form.labels, forms[0].labels) {
			i++
			continue
		}
		forms = append(forms, form)
		for range form.labels {
			taken[p.lines[i].n], taken[p.lines[i+1].n] = true, true
			i += 2
		}
	}
	if len(forms) < fewestForms {
		return nil
	}
	width := 0
	for _, form := range forms {
		for k := range form.labels {
			width = max(width, form.labels[k].slots[len(form.labels[k].slots)-1].col, form.values[k].slots[len(form.values[k].slots)-1].col)
		}
	}
	q := &plane{file: p.file, sheet: p.sheet, on: p.on, hiddenCols: p.hiddenCols, mergedAt: map[int][]int{}, stackedAt: map[[2]int]int{}, stackedCols: width}
	next := 0
	for i := range p.lines {
		l := &p.lines[i]
		switch {
		case !taken[l.n]:
			q.lines = append(q.lines, *l)
		case next < len(forms) && l == forms[next].labels[0]:
			if next == 0 {
				q.lines = append(q.lines, q.sideBySide(l.n, forms[0].labels, width))
			}
			q.lines = append(q.lines, q.sideBySide(forms[next].values[0].n, forms[next].values, width))
			next++
		}
	}
	return q
}

// stackedAt reads the form that begins at line i: lines of labels, each with one of values right below it.
func (f *finder) stackedAt(i int) (form stackedForm) {
	lines := f.p.lines
	for ; i+1 < len(lines) && lines[i+1].n == lines[i].n+1; i += 2 {
		if n := len(form.values); n > 0 && lines[i].n != form.values[n-1].n+1 || !f.isLabels(&lines[i]) || f.isLabels(&lines[i+1]) || len(lines[i+1].slots) > len(lines[i].slots) {
			break
		}
		form.labels, form.values = append(form.labels, &lines[i]), append(form.values, &lines[i+1])
	}
	return form
}

// isLabels reports whether a line is two header words or more and nothing else.
func (f *finder) isLabels(l *line) bool {
	return len(l.slots) > 1 && !slices.ContainsFunc(l.slots, func(s slot) bool {
		return s.cell.Kind != grid.String || anyDigit(s.cell.Text) || f.header(s.cell).score < headerScore
	})
}

// sameLabels reports whether two forms have the same labels in their places.
func sameLabels(a, b []*line) bool {
	return slices.EqualFunc(a, b, func(x, y *line) bool {
		return slices.EqualFunc(x.slots, y.slots, func(s, o slot) bool { return s.col == o.col && s.cell.folded() == o.cell.folded() })
	})
}

// sideBySide is a line n of the cells of several, each moved behind the one before.
func (p *plane) sideBySide(n int, lines []*line, width int) line {
	out := line{n: n, hidden: lines[0].hidden}
	for k, l := range lines {
		for _, s := range l.slots {
			col := k*width + s.col
			out.slots = append(out.slots, slot{col, s.cell})
			p.stackedAt[[2]int{n, col}] = l.n
		}
		for col := k*width + 1; col <= (k+1)*width; col++ {
			p.stackedAt[[2]int{n, col}] = l.n
		}
	}
	return out
}
