package xlsx

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
)

// place is a cell of the sheet.
type place struct{ row, col int }

// notes reads the notes of the sheet and the comments threaded on it, and
// puts them on their cells. Where a cell has both, the note only repeats the
// thread for old programs, and the thread counts.
func (r *sheetReader) notes(rels []rel) error {
	found := map[place]string{}
	for _, x := range rels {
		if x.kind == "comments" {
			if err := r.readNotes(x.target, found); err != nil {
				return err
			}
		}
	}
	threads := map[place]string{}
	for _, x := range rels {
		if x.kind == "threadedComment" {
			if err := r.readThreads(x.target, threads); err != nil {
				return err
			}
		}
	}
	maps.Copy(found, threads)
	if len(found) == 0 {
		return nil
	}
	places := make([]place, 0, len(found))
	for at := range found {
		places = append(places, at)
	}
	slices.SortFunc(places, func(a, b place) int { return cmp.Or(cmp.Compare(a.row, b.row), cmp.Compare(a.col, b.col)) })
	for _, at := range places {
		if err := r.count(len(found[at])); err != nil {
			return err
		}
	}
	r.attach(places, found)
	return nil
}

func (r *sheetReader) readNotes(part string, found map[place]string) error {
	s, err := r.archive.open(part)
	if err != nil {
		return err
	}
	defer s.release()
	var at place
	return s.walk(func() error {
		switch string(s.name) {
		case "comment":
			row, col, ok := reference(rawAttr(s, "ref"))
			if !ok {
				return s.broken("has a note on a cell that does not exist")
			}
			at = place{row, col}
			if r.cells++; r.lim.MaxCells > 0 && r.cells > r.lim.MaxCells {
				return grid.TooLarge("more than %d cells and notes", r.lim.MaxCells)
			}
		case "text":
			if at.row == 0 {
				break
			}
			text, _, err := s.readText(nil, nil)
			if err != nil {
				return err
			}
			found[at] = string(text)
		}
		return nil
	})
}

func (r *sheetReader) readThreads(part string, found map[place]string) error {
	s, err := r.archive.open(part)
	if err != nil {
		return err
	}
	defer s.release()
	var at place
	return s.walk(func() error {
		switch string(s.name) {
		case "threadedComment":
			row, col, ok := reference(rawAttr(s, "ref"))
			if !ok {
				return s.broken("has a comment on a cell that does not exist")
			}
			at = place{row, col}
			if r.cells++; r.lim.MaxCells > 0 && r.cells > r.lim.MaxCells {
				return grid.TooLarge("more than %d cells and comments", r.lim.MaxCells)
			}
		case "text":
			if at.row == 0 || s.empty {
				break
			}
			var text []byte
			for d := s.depth(); s.depth() >= d; {
				if err := s.next(); err != nil {
					return err
				}
				if s.kind == charData {
					var ok bool
					if text, ok = appendText(text, s.raw, s.cdata); !ok {
						return s.broken("holds a character or an entity that XML does not allow")
					}
				}
			}
			if old := found[at]; old != "" {
				found[at] = old + "\n" + string(text)
			} else {
				found[at] = string(text)
			}
		}
		return nil
	})
}

// attach puts notes, which come in reading order, on their cells, adding rows
// and cells that hold nothing else.
func (r *sheetReader) attach(places []place, found map[place]string) {
	rows := r.sheet.Rows
	known := len(rows)
	for len(places) > 0 {
		n := 1 // notes of one row
		for n < len(places) && places[n].row == places[0].row {
			n++
		}
		i, ok := slices.BinarySearchFunc(rows[:known], places[0].row, func(row grid.Row, n int) int { return cmp.Compare(row.Number, n) })
		var row grid.Row
		if ok {
			row = rows[i]
		}
		if noted := r.noted(row, places[:n], found); noted.Len() > 0 {
			noted.Number = places[0].row
			if ok {
				rows[i] = noted
			} else {
				rows = append(rows, noted)
			}
		}
		places = places[n:]
	}
	slices.SortStableFunc(rows, func(a, b grid.Row) int { return cmp.Compare(a.Number, b.Number) })
	r.sheet.Rows = rows
}

// noted is the row with the notes of its places.
func (r *sheetReader) noted(row grid.Row, places []place, found map[place]string) grid.Row {
	cells := slices.Collect(row.Cells())
	for _, at := range places {
		text := strings.TrimRight(found[at], "\n")
		i, ok := slices.BinarySearchFunc(cells, at.col, func(c grid.Placed, col int) int { return cmp.Compare(c.Col, col) })
		switch {
		case text == "":
		case ok:
			v := *cells[i].Cell
			v.SetNote(text)
			cells[i].Cell = r.maker.New(v)
		default:
			v := grid.Cell{Extra: grid.Extra{Note: text}.Share()}
			cells = slices.Insert(cells, i, v.In(at.col))
		}
	}
	out := r.maker.Row(row.Number, cells)
	out.Hidden = row.Hidden
	return out
}
