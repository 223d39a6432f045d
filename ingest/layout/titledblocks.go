package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// A list without a header may have a blank line before each title: "HALL, output 2" over the rows of the hall. Its blocks
// are one table, whose columns all of them tell, and the titles are its sections.

// A titledRun is the range of such blocks, and the lines of their titles.
type titledRun struct {
	area  grid.Range
	heads map[int]bool
}

// titledBlocks returns the runs of two blocks or more below each other that begin in the same column, each with a
// title alone on its line over rows of more, where one title at least names a place or an output.
func (f *finder) titledBlocks(blocks []grid.Range) (runs []titledRun) {
	var run titledRun
	telling := false
	end := func() {
		if len(run.heads) > 1 && telling {
			runs = append(runs, run)
		}
		run, telling = titledRun{}, false
	}
	for _, r := range blocks {
		title, ok := f.titleOver(r)
		if !ok || len(run.heads) > 0 && (r.Col1 != run.area.Col1 || r.Row1 <= run.area.Row2) {
			end()
		}
		if !ok {
			continue
		}
		if len(run.heads) == 0 {
			run = titledRun{r, map[int]bool{}}
		}
		run.area.Row2, run.area.Col2 = r.Row2, max(run.area.Col2, r.Col2)
		run.heads[r.Row1] = true
		telling = telling || slices.ContainsFunc(f.readTitle(title), func(fact Fact) bool { return fact.Field != vocabulary.Unknown })
	}
	end()
	return runs
}

// titleOver is the title of a block: words alone on its first line, with a row of two cells or more below them.
func (f *finder) titleOver(r grid.Range) (string, bool) {
	lines := f.p.within(r.Row1, r.Row2)
	if len(lines) < 2 || len(lines[0].slots) != 1 || len(lines[1].between(r.Col1, r.Col2)) < 2 {
		return "", false
	}
	s := lines[0].slots[0]
	return s.cell.line(), s.col == r.Col1 && s.cell.Kind == grid.String && lookOf(s.cell)&(lookNumber|lookWatts) == 0
}

// remarksBeside takes the last of several columns without headers for remarks, where few of the rows have words in it and
// none a name or a figure alone: "on the control by the door".
func remarksBeside(cols []*heading, rows int) {
	if len(cols) < 3 {
		return
	}
	h := cols[len(cols)-1]
	if h.forced != vocabulary.Unknown || len(h.parts) > 0 || h.cells.cells == 0 || 2*h.cells.cells > rows {
		return
	}
	for i, t := range h.cells.texts {
		if h.cells.looks[i]&lookWords == 0 || h.cells.looks[i]&(lookNumber|lookTag|lookWatts|lookCountWatts) != 0 || len(strings.Fields(t)) < 3 {
			return
		}
	}
	h.forced, h.aside = vocabulary.Notes, "remarks on a few of the rows"
}
