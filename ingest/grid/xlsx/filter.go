package xlsx

import "lineaudit/ingest/grid"

// A filterArea is the area of an automatic filter and whether it has criteria,
// so that rows may be hidden by it.
type filterArea struct {
	area   grid.Range
	active bool
}

// mostFilters bounds the filters of a sheet, each of which is held against
// every hidden row.
const mostFilters = 500

// autoFilter reads the automatic filter whose start tag was just handed out,
// of a sheet or of a table on it.
func (r *sheetReader) autoFilter() error {
	f, err := readFilter(r.s)
	if err == nil && f.area != (grid.Range{}) {
		r.filters = append(r.filters, f)
	}
	return err
}

func readFilter(s *scanner) (filterArea, error) {
	var f filterArea
	ref, _ := s.attribute("ref")
	f.area, _ = parseRange(ref)
	column := false
	for d := s.depth(); ; {
		if err := s.next(); err != nil {
			return f, err
		}
		switch {
		case s.kind == endTag && s.depth() < d:
			return f, nil
		case s.kind == startTag && s.depth() == d+1:
			column = string(s.name) == "filterColumn"
		case s.kind == startTag && s.depth() == d+2 && column:
			f.active = f.active || string(s.name) != "extLst"
		}
	}
}

// tables reads the filters of the tables that lie on the sheet.
func (r *sheetReader) tables(rels []rel) error {
	for _, x := range rels {
		if x.kind != "table" {
			continue
		}
		s, err := r.archive.open(x.target)
		if err != nil {
			return err
		}
		err = s.walk(func() error {
			if string(s.name) != "autoFilter" || s.depth() != 2 {
				return nil
			}
			f, err := readFilter(s)
			if err == nil && f.area != (grid.Range{}) {
				r.filters = append(r.filters, f)
			}
			return err
		})
		s.release()
		if err != nil {
			return err
		}
	}
	return nil
}

// settleFilters finds which hidden rows a filter hides. The first row of a
// filter's area is its header, which a filter never hides.
func (r *sheetReader) settleFilters() {
	active := r.filters[:0:0]
	for _, f := range r.filters {
		if f.active {
			active = append(active, f)
		}
	}
	if len(active) == 0 && r.mode && r.entry.filtered != (grid.Range{}) { // an advanced filter has no criteria of its own
		active = append(active, filterArea{area: r.entry.filtered, active: true})
	}
	switch {
	case len(active) > 0:
		r.sheet.Filtered = active[0].area
	case len(r.filters) > 0:
		r.sheet.Filtered = r.filters[0].area
	}
	for i := range r.sheet.Rows {
		row := &r.sheet.Rows[i]
		if row.Hidden == grid.Shown {
			continue
		}
		for _, f := range active {
			if row.Number > f.area.Row1 && row.Number <= f.area.Row2 {
				row.Hidden = grid.HiddenByFilter
			}
		}
		r.folded = r.folded || row.Hidden == grid.HiddenByOutline
	}
	if r.folded || r.foldCols {
		r.note(r.sheet.Name, 0, 0, "rows or columns are folded away in an outline group; they were read as if shown")
	}
}
