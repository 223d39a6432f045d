package xlsx

import (
	"slices"

	"lineaudit/ingest/grid"
)

// rowsOf reads the rows of the sheet.
func (r *sheetReader) rowsOf() error {
	s := r.s
	number, last := 0, 0
	for d := s.depth(); ; {
		if err := s.compact(); err != nil {
			return err
		}
		if err := s.next(); err != nil {
			return err
		}
		switch s.kind {
		case endTag:
			if s.depth() < d {
				return nil
			}
		case charData:
			if !blankOnly(s.raw) {
				return s.broken("has text between its rows")
			}
		case startTag:
			if string(s.name) != "row" {
				if err := s.skip(); err != nil {
					return err
				}
				continue
			}
			number++
			if v := rawAttr(s, "r"); v != nil {
				n, ok := digits(v)
				if !ok || n < 1 || n > maxRow {
					return s.broken("has a row that is not numbered 1 to 1,048,576")
				}
				number = n
			} else if number > maxRow {
				return s.broken("has more rows than a sheet can have")
			}
			r.mixed = r.mixed || number <= last
			last = number
			r.row = grid.Row{Number: number, Hidden: r.hiding()}
			if err := r.cellsOf(); err != nil {
				return err
			}
			if err := r.endRow(); err != nil {
				return err
			}
		}
	}
}

// hiding reads how the row of the start tag at hand is hidden. Whether a
// filter did it is settled when the filters are known.
func (r *sheetReader) hiding() grid.Hiding {
	s := r.s
	hidden := s.flag("hidden")
	if v := rawAttr(s, "ht"); !hidden && len(v) > 0 && v[0] == '0' {
		hidden = isZero(string(v))
	}
	switch {
	case !hidden:
		return grid.Shown
	case intAttr(s, "outlineLevel") > 0:
		return grid.HiddenByOutline
	}
	return grid.HiddenByHand
}

// endRow files the row that was read, if it holds anything.
func (r *sheetReader) endRow() error {
	if len(r.inRow) == 0 {
		return nil
	}
	r.fileRow()
	if r.rows++; r.lim.MaxRows > 0 && r.rows > r.lim.MaxRows {
		return grid.TooLarge("more than %d rows", r.lim.MaxRows)
	}
	if r.rows&0x3ff == 0 {
		return r.lim.Check()
	}
	return nil
}

// fileRow puts the cells that were read into the row at hand, and that into the sheet.
func (r *sheetReader) fileRow() {
	row := r.maker.Row(r.row.Number, r.inRow)
	row.Hidden = r.row.Hidden
	if len(r.sheet.Rows) == cap(r.sheet.Rows) {
		r.makeRoom()
	}
	r.sheet.Rows = append(r.sheet.Rows, row)
	r.inRow = r.inRow[:0]
}

// makeRoom makes room for as many rows as the part holds if it goes on as it
// began, but for so many times those it had at most: sizes may lie.
func (r *sheetReader) makeRoom() {
	const first, most = 1024, 8
	n := len(r.sheet.Rows)
	all, read := r.s.progress()
	if n < first || read == 0 {
		return
	}
	want := int(min(float64(n)*float64(all)/float64(read)*1.01, most*float64(n)))
	r.sheet.Rows = slices.Grow(r.sheet.Rows, max(want-n, n/8))
}

// cellsOf reads the cells up to the end of the row.
func (r *sheetReader) cellsOf() error {
	s := r.s
	col, last := 0, 0
	r.inRow = r.inRow[:0]
	for d, skipped := s.depth(), 0; ; {
		if r.quick {
			n, err := r.quickCells(&col, &last)
			if err != nil {
				return err
			}
			skipped += n
		}
		if err := s.next(); err != nil {
			return err
		}
		switch s.kind {
		case endTag:
			if s.depth() < d {
				return nil
			}
		case charData:
			if !blankOnly(s.raw) {
				return s.broken("has text between its cells")
			}
		case startTag:
			if string(s.name) != "c" {
				if err := s.skip(); err != nil {
					return err
				}
				continue
			}
			if err := r.cell(&col, &last); err != nil {
				return err
			}
		}
		if skipped++; skipped&0x3fff == 0 {
			if err := r.lim.Check(); err != nil {
				return err
			}
		}
	}
}

// A stored is a cell as the part writes it.
type stored struct {
	row, col int
	style    int
	typ      cellType
	value    []byte // of <v>; entities not decoded
	cdata    bool
	has      bool // there is a <v>
	formula  bool
	inline   bool // the text is inlined and stands in reader.scratch and .runs
}

type cellType uint8

const (
	typeNumber  cellType = iota
	typeShared           // s: index of a shared string
	typeFormula          // str: text, result of a formula
	typeInline           // inlineStr
	typeBool             // b
	typeError            // e
	typeDate             // d: ISO 8601
	typeUnknown
)

func typeOf(v []byte) cellType {
	switch string(v) {
	case "n", "":
		return typeNumber
	case "s":
		return typeShared
	case "str":
		return typeFormula
	case "inlineStr":
		return typeInline
	case "b":
		return typeBool
	case "e":
		return typeError
	case "d":
		return typeDate
	}
	return typeUnknown
}

// cell reads the cell whose start tag was just handed out. A cell without a
// name stands right of the one before.
func (r *sheetReader) cell(col, last *int) error {
	s := r.s
	c := stored{row: r.row.Number, col: *col + 1}
	for _, a := range s.attrs {
		if a.prefix {
			continue
		}
		switch string(a.name) {
		case "r":
			row, cl, ok := reference(a.value)
			switch {
			case ok:
				c.row, c.col = row, cl
			case onlyDigits(a.value): // some exporters number the cells instead
				r.numbered = true
			default:
				return s.broken("has a cell named " + quoted(a.value))
			}
		case "s":
			if n, ok := digits(a.value); ok {
				c.style = n
			} else if len(a.value) > 0 {
				c.style = -1
			}
		case "t":
			c.typ = typeOf(a.value)
		}
	}
	if c.col > maxCol {
		return s.broken("has a row of more than 16,384 cells")
	}
	r.mixed = r.mixed || c.col <= *last
	*col, *last = c.col, max(*last, c.col)
	if err := r.content(&c); err != nil {
		return err
	}
	if c.row != r.row.Number {
		return r.stray(&c)
	}
	return r.keep(&c)
}

// content reads what is inside the cell up to its end.
func (r *sheetReader) content(c *stored) error {
	s := r.s
	inValue := false
	r.scratch, r.runs = r.scratch[:0], r.runs[:0]
	for d := s.depth(); ; {
		if err := s.next(); err != nil {
			return err
		}
		switch s.kind {
		case startTag:
			switch {
			case string(s.name) == "v" && s.depth() == d+1:
				inValue, c.has = true, true
			case string(s.name) == "is" && s.depth() == d+1:
				var err error
				c.inline = true
				if r.scratch, r.runs, err = s.readText(r.scratch[:0], r.runs[:0]); err != nil {
					return err
				}
			default:
				c.formula = c.formula || string(s.name) == "f" && s.depth() == d+1
				if err := s.skip(); err != nil {
					return err
				}
			}
		case charData:
			switch {
			case !inValue:
				if !blankOnly(s.raw) {
					return s.broken("has text between its values")
				}
			case c.value == nil && !s.cdata:
				c.value = s.raw
			default: // a value in several pieces, around a comment or CDATA
				v, ok := appendEntities(append([]byte(nil), c.value...), s.raw)
				if s.cdata {
					v, ok = append(append([]byte(nil), c.value...), s.raw...), true
					c.cdata = true
				}
				if !ok {
					return s.broken("holds an entity that XML does not allow")
				}
				c.value = v
			}
		case endTag:
			inValue = false
			if s.depth() < d {
				return nil
			}
		}
	}
}

// stray files a cell that names another row than the one it stands in: the
// cell's own name counts.
func (r *sheetReader) stray(c *stored) error {
	r.note(r.sheet.Name, c.row, c.col, "the file stores this cell among the cells of row %d", r.row.Number)
	home := r.row
	if len(r.inRow) > 0 {
		r.fileRow()
	}
	r.row = grid.Row{Number: c.row}
	if err := r.keep(c); err != nil {
		return err
	}
	if err := r.endRow(); err != nil {
		return err
	}
	r.row = home
	r.mixed = true
	return nil
}

// rawAttr returns the stored value of an attribute without prefix, nil if there is none.
func rawAttr(s *scanner, name string) []byte {
	for _, a := range s.attrs {
		if string(a.name) == name && !a.prefix {
			return a.value
		}
	}
	return nil
}

func blankOnly(b []byte) bool {
	for _, c := range b {
		if c != ' ' && c != '\n' && c != '\r' && c != '\t' {
			return false
		}
	}
	return true
}

func onlyDigits(b []byte) bool {
	_, ok := digits(b)
	return ok
}

// digits reads a whole number of up to nine digits.
func digits(b []byte) (int, bool) {
	if len(b) == 0 || len(b) > 9 {
		return 0, false
	}
	n := 0
	for _, c := range b {
		if c < '0' || c > '9' {
			return 0, false
		}
		n = n*10 + int(c-'0')
	}
	return n, true
}

// reference reads a cell name such as B3, in either case.
func reference(b []byte) (row, col int, ok bool) {
	i := 0
	for i < len(b) && i < 3 && (b[i]|0x20) >= 'a' && (b[i]|0x20) <= 'z' {
		col = col*26 + int(b[i]|0x20-'a') + 1
		i++
	}
	row, ok = digits(b[i:])
	return row, col, ok && i > 0 && col <= maxCol && row >= 1 && row <= maxRow
}

func quoted(b []byte) string {
	if len(b) > 20 {
		b = b[:20]
	}
	return `"` + string(b) + `"`
}
