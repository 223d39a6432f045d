package schedule

import (
	"cmp"
	"strconv"
	"unique"
)

// A Ref is a place in an input file. Rows and columns count from 1; a Row of
// 0 means the whole sheet, an empty Sheet the whole file. In a text file the
// sheet is empty and rows and columns are as a spreadsheet would show them.
//
// A job holds a Ref for every value, a long register millions: the names of file
// and sheet are held once, and rows and columns in four bytes.
type Ref struct {
	sheet    Sheet
	Row, Col int32
}

// A Sheet names a sheet of a file in few bytes: equal names are held once.
type Sheet struct{ of unique.Handle[sheetNames] }

type sheetNames struct{ file, sheet string }

// SheetOf returns the sheet of a file; the sheet of a text file is "".
func SheetOf(file, sheet string) Sheet {
	if file == "" && sheet == "" {
		return Sheet{}
	}
	return Sheet{unique.Make(sheetNames{file, sheet})}
}

// Cell is a place on the sheet.
func (s Sheet) Cell(row, col int) Ref { return Ref{s, int32(row), int32(col)} }

func (s Sheet) names() sheetNames {
	if s == (Sheet{}) {
		return sheetNames{}
	}
	return s.of.Value()
}

// At is a place by the names of its file and sheet.
func At(file, sheet string, row, col int) Ref { return SheetOf(file, sheet).Cell(row, col) }

// On is the sheet of the place.
func (r Ref) On() Sheet { return r.sheet }

// File is the name of the file.
func (r Ref) File() string { return r.sheet.names().file }

// Sheet is the name of the sheet, "" in a text file.
func (r Ref) Sheet() string { return r.sheet.names().sheet }

// IsZero reports whether the ref names no place at all.
func (r Ref) IsZero() bool { return r == Ref{} }

// Cell returns the A1 name of the cell ("B3"), "row 3" when the column is not
// known, or "" for a whole sheet.
func (r Ref) Cell() string {
	switch {
	case r.Row == 0:
		return ""
	case r.Col == 0:
		return "row " + strconv.Itoa(int(r.Row))
	}
	return ColumnName(int(r.Col)) + strconv.Itoa(int(r.Row))
}

// String returns the place as a person would write it: "Rink!B3" or "rink.csv B3".
func (r Ref) String() string {
	cell := r.Cell()
	of := r.sheet.names()
	switch {
	case of.sheet != "" && cell != "":
		return of.sheet + "!" + cell
	case of.sheet != "":
		return of.sheet
	case cell != "":
		return of.file + " " + cell
	}
	return of.file
}

// Compare orders places by file, sheet, row and column.
func (r Ref) Compare(o Ref) int {
	if r.sheet != o.sheet {
		a, b := r.sheet.names(), o.sheet.names()
		return cmp.Or(cmp.Compare(a.file, b.file), cmp.Compare(a.sheet, b.sheet))
	}
	return cmp.Or(cmp.Compare(r.Row, o.Row), cmp.Compare(r.Col, o.Col))
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
	n := int(at.Row)
	if s.Columns {
		n = int(at.Col)
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
