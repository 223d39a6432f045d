// Package layout finds the tables in the sheets of a book and puts them
// upright: what each column means, which rows are devices and which are
// titles, totals and notes, and what a section title or a title block says for
// the rows below it. It reads words; numbers are left to package notation.
package layout

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// A Table is one table, upright: a record for each row, a value for each
// column. A transposed table or a matrix has been turned, and its values keep
// the cells they were written in.
type Table struct {
	Sheet       string
	SheetHidden bool
	Kind        Kind
	Confidence  float64 // of the kind, 0 to 1
	Range       grid.Range
	HeaderRows  []int // sheet rows (columns, when transposed) that hold the header
	Transposed  bool
	Form        bool   // keys and values, filled in once or several times: a record for each filling
	Matrix      bool   // counts in cells: rooms one way, types or zones the other
	Tree        bool   // one of the lists that a list of rows hanging on each other was parted into, all with its range
	Titles      []Fact // what stands above the table and on its sheet's name: a title, key-value pairs
	Columns     []Column
	Records     []Record
}

// A Kind is what the rows of a table are.
type Kind string

// The kinds of tables. Mixed is one list of loudspeakers, controls and amplifiers.
const (
	Loudspeakers Kind = "loudspeakers"
	Zones        Kind = "zones"
	Amplifiers   Kind = "amplifiers"
	Channels     Kind = "channels"
	Controls     Kind = "controls"
	Cables       Kind = "cables"
	Types        Kind = "types" // a type schedule: model or type mark to tap, rating, taps offered
	Measurements Kind = "measurements"
	Mixed        Kind = "mixed"
	TitleBlock   Kind = "title block"
)

// A Column is one column and the field it was taken for.
type Column struct {
	Col        int          // sheet column (row, when transposed); 0 for a column made from a matrix
	At         schedule.Ref // the header cell
	Header     string       // the header words, of up to three rows, joined
	Field      vocabulary.Field
	Unit       string           // from the header: "W", "V", "ft", "m", "AWG", "mm2", "ohm", "%", ...; "" if none
	Volts      float64          // a line voltage that the header names ("tap at 70 V"), else 0
	Confidence float64          // 0 to 1
	Evidence   string           // in words: "header 'Abgriff' (de), 14 of 15 cells are watts"
	RunnerUp   vocabulary.Field // the second-best field, when it was close
	Replaces   string           // the headers of earlier states of what it says, which are left out
	Earlier    []int            // their Col, the latest first: what the last state leaves blank is as before
	Planned    bool             // of two columns of taps the one that is asked for: what was found is in another
}

// A Record is one row.
type Record struct {
	Rows     schedule.Span
	At       schedule.Ref // its first cell
	Values   []Value      // one for each column of the table
	Sections []Fact       // the titles in force, outermost first
	Class    Class
	Reason   string // for a row that is no device: why
	Text     string // the row's text, joined and shortened
}

// A Class is what a row is.
type Class string

// Only Device rows become parts of a job. A Total row is used to check sums. A Struck or HiddenByHand row keeps
// its values, so that its load can be shown.
const (
	Device   Class = "device"
	Title    Class = "title"
	Header   Class = "header" // repeated
	UnitsRow Class = "units"
	Total    Class = "total"
	Note     Class = "note"
	Struck   Class = "struck through"
	Hidden   Class = "hidden"
	NoDevice Class = "no device" // a device-less row of a list, e.g. an accessory
	Unclear  Class = "not understood"
)

// A Value is one cell of a record.
type Value struct {
	Cell    *grid.Cell // nil when nothing is written and nothing was carried down
	At      schedule.Ref
	Text    string       // as shown, struck-out parts left out, space trimmed
	How     schedule.How // Stated or CarriedDown; NotHad for a blank
	Because string       // why it was carried: "merged with B4", "ditto", "blank under B4"
	Merged  bool         // carried from the first cell of a merged area
}

// A Fact is something said for more than one row: a section title, a title
// block's key and value, a sheet's name, words above a table.
type Fact struct {
	Field vocabulary.Field // Unknown for a text of which only the words are known
	Text  string
	Key   string // the key as written, for key-value pairs
	At    schedule.Ref
	Cell  *grid.Cell
}
