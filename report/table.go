package report

import (
	"iter"
	"math"
	"slices"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
)

// A Table is one table of the audit, told once: the data file, the workbook's
// sheet and the page's table are written from the same rows.
type Table struct {
	Name    string // of the data file, without ".csv"
	Title   string // for people
	Note    string // one line above the table
	Columns []Column
	Count   int               // of rows
	Rows    iter.Seq[[]Value] // each holds until the next one
}

// A Column is one column of a table.
type Column struct {
	Name  string // in data files, as other programs rely on it
	Label string // for people, without the unit
	Unit  string // "W", "V", "ohm", "m", "mm2", "dB", "%"; "" for text and counts
	Kind  ColumnKind
	Width int  // characters on paper
	Data  bool // only in data files
}

// ColumnKind says how a column is written.
type ColumnKind uint8

// The kinds of columns.
const (
	Words ColumnKind = iota
	Long             // words that need wrapping
	Count
	Figures
	Blank // for the reader to fill in
)

// Column returns the place of a column by its name, -1 if there is none.
func (t Table) Column(name string) int {
	return slices.IndexFunc(t.Columns, func(c Column) bool { return c.Name == name })
}

// Heading is the words above a column, with its unit.
func (c Column) Heading() string {
	if c.Unit == "" {
		return c.Label
	}
	return c.Label + " (" + c.Unit + ")"
}

// IsText reports whether a column holds words.
func (c Column) IsText() bool { return c.Kind != Count && c.Kind != Figures }

// A Value is one cell of a table: words, or a number, or blank.
type Value struct {
	Words  string
	Number float64
	IsNum  bool
}

func words(s string) Value   { return Value{Words: s} }
func number(v float64) Value { return Value{Number: v, IsNum: true} }
func count(n int) Value      { return number(float64(n)) }

// exact is the number of an interval without width, else blank.
func exact(i audit.Interval) Value {
	if v, ok := i.Exactly(); ok {
		return finite(v)
	}
	return Value{}
}

// low and high are the ends of an interval, blank when unknown.
func low(i audit.Interval) Value  { return end(i, i.Low) }
func high(i audit.Interval) Value { return end(i, i.High) }

func end(i audit.Interval, v float64) Value {
	if !i.Known {
		return Value{}
	}
	return finite(v)
}

func finite(v float64) Value {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return Value{}
	}
	return number(v)
}

func quantity[T ~float64](q schedule.Quantity[T]) Value {
	if v, ok := q.Exact(); ok {
		return number(float64(v))
	}
	return Value{}
}

// Text returns the value as a data file writes it.
func (v Value) Text() string {
	if v.IsNum {
		return Number(v.Number)
	}
	return v.Words
}
