package xlsx

import (
	"cmp"
	"slices"
	"strconv"

	"lineaudit/ingest/grid"
)

// Bounds of a sheet, in every edition since 2007.
const (
	maxRow = 1048576
	maxCol = 16384
)

// A sheetReader fills one sheet.
type sheetReader struct {
	*reader
	s        *scanner
	sheet    *grid.Sheet
	entry    sheetEntry
	filters  []filterArea
	mixed    bool // rows or cells were met out of order
	numbered bool // cells were met that have a number for a name

	mode     bool // the sheet says that a filter hides rows
	folded   bool // hidden rows in an outline group were met
	foldCols bool

	row       grid.Row      // being read
	inRow     []grid.Placed // its cells so far
	shown     []byte        // text of the cell at hand
	runs      []run
	scratch   []byte
	badStyles bool
}

// sheet reads one sheet and what belongs to it.
func (r *reader) sheet(e sheetEntry) error {
	switch e.kind {
	case "worksheet":
	case "chartsheet":
		r.note(e.name, 0, 0, "the sheet is a chart; it holds no cells")
		return nil
	default:
		r.note(e.name, 0, 0, "the sheet is a dialog or macro sheet of an old kind; it was not read")
		return nil
	}
	s, err := r.archive.open(e.part)
	if err != nil {
		return err
	}
	defer s.release()
	sr := &sheetReader{reader: r, s: s, entry: e, sheet: &grid.Sheet{Name: e.name, Hidden: e.hidden}}
	if err := sr.read(); err != nil {
		return err
	}
	if sr.mixed {
		sr.order()
	}
	if sr.numbered {
		r.note(e.name, 0, 0, "cells have no names in the file; each was placed right of the one before")
	}
	rels, err := r.archive.relationships(e.part)
	if err != nil {
		return err
	}
	if err := sr.tables(rels); err != nil {
		return err
	}
	if len(sr.filters) > mostFilters {
		return grid.TooLarge("more than %d filters", mostFilters)
	}
	sr.settleFilters()
	if err := sr.notes(rels); err != nil {
		return err
	}
	r.book.Sheets = append(r.book.Sheets, sr.sheet)
	return nil
}

// read takes the sheet's part from its first tag to its end.
func (r *sheetReader) read() error {
	s := r.s
	if err := s.root(); err != nil {
		return err
	}
	if string(s.name) != "worksheet" {
		return errOdd
	}
	data := false
	for {
		if err := s.next(); err != nil {
			return err
		}
		if s.kind == endOfPart {
			break
		}
		if s.kind != startTag {
			continue
		}
		var err error
		switch string(s.name) {
		case "sheetPr":
			r.mode = s.flag("filterMode")
			err = s.skip()
		case "cols":
			err = r.columns()
		case "sheetData":
			data = true
			err = r.rowsOf()
		case "autoFilter":
			err = r.autoFilter()
		case "mergeCells":
			err = r.mergeCells()
		default:
			err = s.skip()
		}
		if err != nil {
			return err
		}
	}
	if !data {
		return s.broken("holds no rows part")
	}
	return nil
}

// columns notes the columns hidden by hand.
func (r *sheetReader) columns() error {
	s := r.s
	for d := s.depth(); ; {
		if err := s.next(); err != nil {
			return err
		}
		if s.kind == endTag && s.depth() < d {
			return nil
		}
		if s.kind != startTag || string(s.name) != "col" {
			continue
		}
		width, set := s.attribute("width")
		if !s.flag("hidden") && (!set || !isZero(width)) {
			continue
		}
		first, second := intAttr(s, "min"), intAttr(s, "max")
		if first < 1 || second < first || first > maxCol {
			return s.broken("hides columns that do not exist")
		}
		if level := intAttr(s, "outlineLevel"); level > 0 {
			r.foldCols = true
			continue
		}
		if r.sheet.HiddenCols = append(r.sheet.HiddenCols, grid.Span{First: first, Last: min(second, maxCol)}); len(r.sheet.HiddenCols) > maxCol {
			return s.broken("hides more columns than there are")
		}
	}
}

func isZero(v string) bool {
	f, err := strconv.ParseFloat(v, 64)
	return err == nil && f == 0
}

func intAttr(s *scanner, name string) int {
	for _, a := range s.attrs {
		if string(a.name) == name {
			n, _ := strconv.Atoi(string(a.value))
			return n
		}
	}
	return 0
}

func (r *sheetReader) mergeCells() error {
	s := r.s
	for d := s.depth(); ; {
		if err := s.next(); err != nil {
			return err
		}
		if s.kind == endTag && s.depth() < d {
			return nil
		}
		if s.kind != startTag || string(s.name) != "mergeCell" {
			continue
		}
		ref, _ := s.attribute("ref")
		area, ok := parseRange(ref)
		if !ok {
			return s.broken("merges cells that do not exist")
		}
		if r.merges++; r.lim.MaxMerges > 0 && r.merges > r.lim.MaxMerges {
			return grid.TooLarge("more than %d merged areas", r.lim.MaxMerges)
		}
		r.sheet.Merges = append(r.sheet.Merges, area)
	}
}

// order puts rows and cells in order where the part does not, and joins rows
// and cells that it holds twice: the later one counts, as in the programs
// that open such a file.
func (r *sheetReader) order() {
	rows := r.sheet.Rows
	slices.SortStableFunc(rows, func(a, b grid.Row) int { return cmp.Compare(a.Number, b.Number) })
	out := rows[:0]
	for len(rows) > 0 {
		n := 1 // rows of one number
		for n < len(rows) && rows[n].Number == rows[0].Number {
			n++
		}
		out = append(out, r.joined(rows[:n]))
		rows = rows[n:]
	}
	r.sheet.Rows = out
}

// joined makes one row, with its cells in order, of those of one number.
func (r *sheetReader) joined(rows []grid.Row) grid.Row {
	var cells []grid.Placed
	hidden := grid.Shown
	for i := range rows {
		cells = slices.AppendSeq(cells, rows[i].Cells())
		hidden = max(hidden, rows[i].Hidden)
	}
	slices.SortStableFunc(cells, func(a, b grid.Placed) int { return cmp.Compare(a.Col, b.Col) })
	kept := cells[:0]
	for _, c := range cells {
		if n := len(kept); n > 0 && kept[n-1].Col == c.Col {
			r.note(r.sheet.Name, rows[0].Number, c.Col, "the file stores this cell twice, as %q and as %q; the second was taken", kept[n-1].Text, c.Text)
			kept[n-1] = c
			continue
		}
		kept = append(kept, c)
	}
	row := r.maker.Row(rows[0].Number, kept)
	row.Hidden = hidden
	return row
}
