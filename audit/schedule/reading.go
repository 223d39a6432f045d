package schedule

// An Assumption is one value that was taken rather than stated.
type Assumption struct {
	At      Ref
	Field   string // the field's name, such as "line voltage"
	Written string
	TakenAs string
	How     How
	Because string
}

// A LeftOut is a row that is no device: a total, a note, a struck-through or
// hidden row, or one that was not understood.
type LeftOut struct {
	At     Ref // Col may be 0
	Kind   RowKind
	Reason string
	Text   string // the row's text, shortened
	// Load is what the row would add if it counted; zero when it has none.
	Load Quantity[Watts]
	// Would are the loudspeakers that the row would add, when leaving it out is open to doubt.
	Would []*Loudspeaker
}

// A RowKind says what a row that was left out is.
type RowKind string

// The kinds of rows that are left out.
const (
	TitleRow      RowKind = "title"
	HeaderRow     RowKind = "header"
	UnitRow       RowKind = "units"
	TotalRow      RowKind = "total"
	NoteRow       RowKind = "note"
	StruckRow     RowKind = "struck through"
	HiddenRow     RowKind = "hidden"
	SpareRow      RowKind = "spare"
	NotWantedRow  RowKind = "cancelled, removed or by others"
	NotUnderstood RowKind = "not understood"
	EmptyRow      RowKind = "no device"
	DuplicateRow  RowKind = "listed twice"
	OutdatedRow   RowKind = "no longer valid"
)

// A Question is what one answer would settle.
type Question struct {
	At      Ref
	Field   string
	Text    string
	Settles string
}

// A Refusal is a cell that was understood and whose value cannot be: negative,
// zero, or far too large. The value stays unknown.
type Refusal struct {
	At      Ref
	Field   string
	Written string
	Why     string // "negative", "zero", "too large"
}

// A Table is one table as it was understood.
type Table struct {
	Sheet      string
	Kind       string // loudspeakers, zones, amplifiers, channels, controls, cables, matrix, title block
	Range      string // A1:K40
	HeaderRow  int
	Transposed bool
	Columns    []Column
	RowsRead   int
	RowsLeft   int
}

// A Column is a column of a table and the field that it was taken for.
type Column struct {
	Col        int
	Header     string
	Field      string  // "" when it was not understood
	Confidence float64 // 0 to 1
	Evidence   string
	Unit       string
	Samples    []string
	RunnerUp   string // the next best field, when it was close
}

// Outline returns what is told of a job that was only read: how it was understood,
// and how many parts it has. The parts themselves are nil.
func (j *Job) Outline() *Job {
	return &Job{File: j.File, Sheet: j.Sheet, Name: j.Name, Number: j.Number, Site: j.Site, Revision: j.Revision, Date: j.Date, LineVolts: j.LineVolts,
		Amplifiers: make([]*Amplifier, len(j.Amplifiers)), Channels: make([]*Channel, len(j.Channels)), Zones: make([]*Zone, len(j.Zones)),
		Controls: make([]*Control, len(j.Controls)), Loudspeakers: make([]*Loudspeaker, len(j.Loudspeakers)), Cables: make([]*Cable, len(j.Cables)),
		Assumptions: j.Assumptions, LeftOut: j.LeftOut, Questions: j.Questions, Tables: j.Tables, RowsRead: j.RowsRead}
}
