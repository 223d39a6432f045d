// Package grid turns the bytes of any spreadsheet or text table into plain
// cells: one grid for every format. It knows nothing of loudspeakers.
package grid

import (
	"fmt"
	"strconv"
	"strings"
	"unique"
)

// A Book is one file as plain cells.
type Book struct {
	File      string // slash-separated path as people should see it; a zip member reads "jobs.zip/rink.xlsx"
	Format    Format // decided by the bytes, never by the name
	Converted bool   // read through another spreadsheet program, which recalculates
	Size      int64  // bytes
	SHA256    string // hex digest of the bytes
	Sheets    []*Sheet
	Notes     []Note // what was taken for granted or lost while reading, e.g. the encoding of a text file
}

// A Format names a kind of file.
type Format string

// The formats that grid tells apart by their bytes.
const (
	XLSX      Format = "xlsx"
	XLSM      Format = "xlsm"
	XLSB      Format = "xlsb"
	XLS       Format = "xls"
	ODS       Format = "ods"
	FODS      Format = "fods"
	XML2003   Format = "xml-2003"
	HTML      Format = "html"
	Text      Format = "text" // delimited text: csv, tsv and the like
	Zip       Format = "zip"
	Encrypted Format = "encrypted"
	Other     Format = "other"
)

// A Note is a remark of the reader about a place in a file.
// Row and Col are 0 when it concerns the whole sheet, Sheet is "" when it
// concerns the whole file.
type Note struct {
	Sheet    string
	Row, Col int
	Text     string
}

// A Sheet is one table of cells. Rows are in ascending order and only rows
// that hold something are present.
type Sheet struct {
	Name       string
	Hidden     bool
	Rows       []Row
	Merges     []Range
	HiddenCols []Span // columns hidden by hand
	Filtered   Range  // the area of an automatic filter; zero if there is none
}

// Hiding says whether and how a row is hidden.
type Hiding uint8

// A row hidden by a filter that was left on, or folded away in a collapsed
// outline group, is still part of the schedule; one hidden by hand is not.
const (
	Shown Hiding = iota
	HiddenByHand
	HiddenByFilter
	HiddenByOutline
)

// A Cell is what one non-empty cell holds, wherever it stands: of a long register
// most hold what others do, and are one. So nobody changes a cell that is in a row.
// What few have is kept apart.
type Cell struct {
	Text    string  // as a person sees it, number format applied, space-trimmed of nothing; "" if the format hides a number
	Number  float64 // value of Number, Date (days of the 1900 system, whatever the file uses) and Boolean (0 or 1) cells; finite
	Extra   Shared  // format, note, text that is not struck out
	Kind    Kind    // what is stored
	Formula bool    // the value is the stored result of a formula
	Struck  Strike  // strike-through
	id      uint32  // its number in the table that it lies in
}

// Equal reports whether two cells hold the same.
func (c Cell) Equal(o Cell) bool {
	c.id = o.id
	return c == o
}

// An Extra is what few cells have beside their value.
type Extra struct {
	Format string // number format code, "" for General
	Kept   string // the part that stands out: of a PartStruck text what is not struck out, of a NotStruck one what is bold or underlined; "" if all is alike
	Note   string // text of the cell's note or comment, "" if none
}

// Shared is an Extra, held once for all cells that have the same. The zero
// Shared is the empty Extra.
type Shared struct{ of unique.Handle[Extra] }

// Share returns the Extra as cells hold it.
func (e Extra) Share() Shared {
	if e == (Extra{}) {
		return Shared{}
	}
	return Shared{unique.Make(e)}
}

// Get returns the Extra.
func (s Shared) Get() Extra {
	if s == (Shared{}) {
		return Extra{}
	}
	return s.of.Value()
}

// Format is the number format code of the cell, "" for General.
func (c *Cell) Format() string { return c.Extra.Get().Format }

// Kept is the text that is not struck out, of a cell with a part that is; else
// the part that is bold or underlined, of a text that is not all so.
func (c *Cell) Kept() string { return c.Extra.Get().Kept }

// Note is the text of the cell's note or comment, "" if none.
func (c *Cell) Note() string { return c.Extra.Get().Note }

// SetFormat gives a cell that is in no row yet a number format code.
func (c *Cell) SetFormat(code string) {
	if e := c.Extra.Get(); e.Format != code {
		e.Format = code
		c.Extra = e.Share()
	}
}

// SetKept gives a cell that is in no row yet the text that is not struck out.
func (c *Cell) SetKept(text string) {
	if e := c.Extra.Get(); e.Kept != text {
		e.Kept = text
		c.Extra = e.Share()
	}
}

// SetNote gives a cell that is in no row yet a note.
func (c *Cell) SetNote(text string) {
	if e := c.Extra.Get(); e.Note != text {
		e.Note = text
		c.Extra = e.Share()
	}
}

// Strike says of a cell that is in no row yet how much of it is struck through,
// and what is not.
func (c *Cell) Strike(how Strike, kept string) {
	c.Struck = how
	c.SetKept(kept)
}

// A Kind says what a cell stores.
type Kind uint8

// NoValue is a formula without a stored result: it looks empty and is not.
const (
	Blank Kind = iota // a cell kept only for its note
	String
	Number
	Date
	Boolean
	Error
	NoValue
)

// Strike says how much of a cell's text is struck through.
type Strike uint8

// How much of a cell is struck through.
const (
	NotStruck Strike = iota
	PartStruck
	WholeStruck
)

// A Range is a rectangle of cells, both corners included, counted from 1.
type Range struct{ Row1, Col1, Row2, Col2 int }

// A Span is a run of columns (or rows), both ends included, counted from 1.
type Span struct{ First, Last int }

// Contains reports whether the range holds the cell.
func (r Range) Contains(row, col int) bool {
	return r.Row1 <= row && row <= r.Row2 && r.Col1 <= col && col <= r.Col2
}

// Column returns the letters of a column counted from 1: 1 is A, 28 is AB.
func Column(col int) string {
	var b []byte
	for ; col > 0; col = (col - 1) / 26 {
		b = append(b, byte('A'+(col-1)%26))
	}
	for i, j := 0, len(b)-1; i < j; i, j = i+1, j-1 {
		b[i], b[j] = b[j], b[i]
	}
	return string(b)
}

// A1 returns the name of a cell: row 3, column 2 is B3.
func A1(row, col int) string { return Column(col) + strconv.Itoa(row) }

// ParseA1 reads a cell name such as "B3" or "$B$3" and returns its row and
// column, counted from 1, at most 1,048,576 and 16,384.
func ParseA1(s string) (row, col int, err error) {
	t := strings.ReplaceAll(strings.ToUpper(s), "$", "")
	i := 0
	for ; i < len(t) && t[i] >= 'A' && t[i] <= 'Z' && col <= 16384; i++ {
		col = col*26 + int(t[i]-'A') + 1
	}
	row, err = strconv.Atoi(t[i:])
	if i == 0 || err != nil || row < 1 || row > 1048576 || col > 16384 || t[i] == '+' {
		return 0, 0, fmt.Errorf("%q is not a cell name such as B3", s)
	}
	return row, col, nil
}
