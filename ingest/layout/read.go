package layout

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
	"lineaudit/ingest/watch"
)

// A Reading is what was found in one book: the sheets in order, each with its
// tables, facts and leftover rows.
type Reading struct {
	Sheets []Sheet
	// NearestMiss says, when no table of a schedule was found, what was
	// missing: "no column of taps or watts". It is "" when there is a table.
	NearestMiss string
}

// A Sheet is one sheet as it was understood. Every non-empty row of it is
// accounted for: in a record or header of a table, as a fact, or in Outside.
type Sheet struct {
	Name   string
	Hidden bool
	Tables []*Table
	Facts  []Fact       // key-value pairs and titles outside the tables, in reading order
	Blocks []grid.Range // where the facts stand
	// Outside are the rows (or parts of rows) that belong to no table and
	// state no fact that was understood.
	Outside []Outside
}

// An Outside is a row, or the part of a row, that stands outside all tables.
type Outside struct {
	At     schedule.Ref // its first cell
	Class  Class
	Reason string
	Text   string // joined and shortened
	Facts  bool   // what it says is among the facts too
}

// Options are what a user may settle about the reading.
type Options struct {
	Names []Name
	Watch *watch.Watch // asked at every line; may be nil
}

// A Name is a line of the house book: this header means that field.
type Name struct {
	Header string
	Field  vocabulary.Field
	Files  string // a pattern as of path.Match, on the whole path or its last part; "" for all files
}

// AllTables returns the tables of all sheets in order.
func (r *Reading) AllTables() []*Table {
	var all []*Table
	for i := range r.Sheets {
		all = append(all, r.Sheets[i].Tables...)
	}
	return all
}
