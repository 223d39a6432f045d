package schedule

import (
	"cmp"
	"strconv"
)

// A Ref is a place in an input file. Rows and columns count from 1; a Row of
// 0 means the whole sheet, an empty Sheet the whole file. In a text file the
// sheet is empty and rows and columns are as a spreadsheet would show them.
type Ref struct {
	File, Sheet string
	Row, Col    int
}

// IsZero reports whether the ref names no place at all.
func (r Ref) IsZero() bool { return r == Ref{} }

// Cell returns the A1 name of the cell ("B3"), "row 3" when the column is not
// known, or "" for a whole sheet.
func (r Ref) Cell() string {
	switch {
	case r.Row == 0:
		return ""
	case r.Col == 0:
		return "row " + strconv.Itoa(r.Row)
	}
	return ColumnName(r.Col) + strconv.Itoa(r.Row)
}

// String returns the place as a person would write it: "Rink!B3" or "rink.csv B3".
func (r Ref) String() string {
	cell := r.Cell()
	switch {
	case r.Sheet != "" && cell != "":
		return r.Sheet + "!" + cell
	case r.Sheet != "":
		return r.Sheet
	case cell != "":
		return r.File + " " + cell
	}
	return r.File
}

// Compare orders places by file, sheet, row and column.
func (r Ref) Compare(o Ref) int {
	return cmp.Or(cmp.Compare(r.File, o.File), cmp.Compare(r.Sheet, o.Sheet),
		cmp.Compare(r.Row, o.Row), cmp.Compare(r.Col, o.Col))
}

// ColumnName returns the letters of a column counted from 1: 1 is A, 28 is AB.
func ColumnName(col int) string {
	var b []byte
	for ; col > 0; col = (col - 1) / 26 {
		b = append([]byte{byte('A' + (col-1)%26)}, b...)
	}
	return string(b)
}

// A Span is the rows that one device or group was read from, or, in a
// transposed table, its columns.
type Span struct {
	First, Last int
	Columns     bool
}

// Holds reports whether a cell of the same sheet stands in one of the rows or columns.
func (s Span) Holds(at Ref) bool {
	n := at.Row
	if s.Columns {
		n = at.Col
	}
	return s.First > 0 && n >= s.First && n <= max(s.First, s.Last)
}

// String returns "12", "12-15", or for columns "C" and "C-E".
func (s Span) String() string {
	name := strconv.Itoa
	if s.Columns {
		name = ColumnName
	}
	switch {
	case s.First == 0:
		return ""
	case s.Last <= s.First:
		return name(s.First)
	}
	return name(s.First) + "-" + name(s.Last)
}
