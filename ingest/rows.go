package ingest

import (
	"iter"
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A table is the part of one layout table that belongs to one job, with what
// was found out about its columns.
type table struct {
	*layout.Table
	kind      layout.Kind // as other tables of the book may have changed it
	number    int         // from 1, over the whole book: names of one table are different things
	columns   []*column
	byField   [][]*column // by field
	rows      []*row
	titles    []layout.Fact // what stands above it, and its sheet's name; shared, never written
	shared    bool          // the table serves several jobs of the book
	again     bool          // it served an earlier job already, which accounts for its rows
	commented bool          // cells of it carry notes
	// outdated: its sheet says that it is no longer valid, and another sheet is.
	outdated bool
	// replaced: another sheet is a later revision of the same list.
	replaced bool
	names    map[string][]valueName
	// controlsAmong are the keys of the controls that it lists among amplifiers; see equipmentOfCables.
	controlsAmong map[string]bool
	// sectionAs is the field of section titles that say nothing but a name.
	sectionAs vocabulary.Field

	shares        bool                       // a note says that its taps are shares of the rated power
	fromColumn    *column                    // near ends of the cables that lead to its loudspeakers; nil if none
	placesFrom    *column                    // such ends where they are the places of loudspeakers, and lines branch at them; nil if none
	numbersRooms  *column                    // the numbers of its rooms or items beside the names of rooms: see rowsByRoomNumber; nil if none
	onLine        map[string]lineCount       // rows and lengths of each line; nil until asked for
	runsRepeat    int                        // how the lengths of its rows repeat: see runsRepeated
	which         []int                      // the places of its records that rows are made for; nil: all
	tagCount      map[string]int             // how often each tag stands in it; nil until asked for
	lettered      bool                       // its items have letters, and are the tags of its loudspeakers: see itemsWithLetters
	tagStems      map[string]bool            // what tags of its loudspeakers begin with; nil until asked for
	items         map[string][]*row          // by number of the item; nil until asked for
	itemLists     *bool                      // whether its items are lists of numbers; nil until asked for
	zoneOutputs   *bool                      // whether its zones are outputs of its amplifiers; nil until asked for
	ampsApart     *bool                      // see ampsStandSomewhere; nil until asked for
	ranges        int                        // whether its tags with hyphens are ranges: 0 not decided, 1 yes, 2 no
	toFit         int8                       // whether few rows are to be fitted: 0 not asked, 1 no, 2 yes
	tapped        int8                       // whether most rows have taps: 0 not asked, 1 no, 2 yes
	described     map[string]map[string]bool // items of amplifiers by what describes them; see describedTwice
	numbers       map[string]bool            // the numbers of its items; nil until asked for
	endings       map[string][]*row          // rows of loudspeakers by the place that ends their descriptions; nil until asked for
	rowsOfPlace   map[string][]*row          // by key of a room, zone or tag; nil until asked for
	noteColumns   map[*column]bool           // columns of remarks that hold numbers of notes; see refersToNotes
	bareColumns   map[*column]bool           // columns of remarks that some loudspeakers have nothing in; see someBare
	titleItems    map[string]map[string]bool // by title, keys of the rows that it speaks of; see concerns
	countedAhead  map[*column]bool           // columns whose cells begin with counts; see allCountsAhead
	eachColumns   map[*column]bool           // columns of counts that say "each"; see allCountEach
	roomControls  map[string]bool            // zones whose rooms have controls of their own; nil until asked for
	knownStates   map[*column]bool           // by column of states: whether most of its cells are known; nil until asked for
	bothCount     int                        // rows with a tap and an impedance, plus one; 0 until asked for
	naming        []*column                  // of feedFields: those with a cell that is the tag of a device; set by gatherDirectory
	hangs         []vocabulary.Field         // their fields, in the order of feedFields
	installed     int                        // whether a row says that it is installed: 0 not asked, 1 no, 2 yes
	titledOutputs *bool                      // see titlesNameOutputs; nil until asked for
}

// A column is a layout column with its decimal mark.
type column struct {
	*layout.Column
	i     int // its place in the records
	style notation.Style
	// before are the amplifiers that its cells name before an output, folded, and whether one surely does;
	// nil until asked for.
	before map[string]bool
	// wattsCalled are the powers by which its cells call amplifiers; nil until asked for.
	wattsCalled map[string]bool
	// outputs is how its cells name outputs; nil until asked for.
	outputs *outputsLook
	// meant is what a note says that its cells mean, by key, and meantBy the note.
	meant   map[string]string
	meantBy string
}

// A row is one record and what became of it.
type row struct {
	*layout.Record
	t        *table
	wordings []*wording // of its values
	kind     deviceKind
	status   schedule.Status
	out      schedule.RowKind // "" for a row that counts
	absent   bool             // what it lists was not found and is still to come
	reason   string
	outlet   *outlet           // nil until asked for
	asked    bool              // its outlet is being found
	line     *lineEntry        // the line of another table that it hangs on
	control  *schedule.Control // the control that it describes, where that has no name
	service  *service          // what the output or control that it describes serves; nil for one zone
	feeds    *service          // what the description of the amplifier says that it feeds; see routesOfAmps
	// isTitle: the row is the title of the rows below it; title is the one in force.
	isTitle bool
	title   *layout.Fact
	partOf  *row  // the row above, of whose loudspeakers this row tells a part
	feed    *feed // in a cable book: where its cable comes from
	passes  bool  // in a cable book: its cable leads to a joint or a control, and to nothing that makes sound
	billed  bool  // it is a cable by the metre of a bill
	used    bool  // it became a part of the job, or added to one
}

// A seen is a text with the place it was seen at, not yet parsed. The zero
// seen is nothing: a blank, or a mark for a missing value.
type seen struct {
	text    string
	said    *wording // of the cell, nil for other texts
	cell    *grid.Cell
	col     *column // nil for a title
	t       *table
	field   vocabulary.Field
	missing notation.MissingKind // why there is nothing, when a mark says so
	source  schedule.Source
}

func (s seen) had() bool { return s.source.Had() }

// saying is the same with another text, that of a part of it.
func (s seen) saying(text string) seen {
	s.text = text
	return s
}

// newTable prepares a layout table; its columns' decimal marks are decided by
// all of its cells.
func newTable(t *layout.Table, number int, titles *titleReader) *table {
	n := &table{Table: t, kind: t.Kind, number: number, byField: make([][]*column, vocabulary.Fields), titles: titles.read(t.Titles), commented: hasComment(t)}
	for i := range t.Columns {
		own := t.Columns[i] // a copy: what other tables say may change it
		c := &column{Column: &own, i: i}
		n.columns = append(n.columns, c)
		n.byField[c.Field] = append(n.byField[c.Field], c)
	}
	return n
}

// mostSamples is the number of cells that decide a column's decimal mark.
const mostSamples = 400

// decideStyles decides the decimal mark of each column from its text cells.
// Columns whose cells do not decide follow those of the table that do, if
// these agree.
func (t *table) decideStyles() {
	var votes [3]int
	samples := make([]string, 0, mostSamples)
	for _, c := range t.columns {
		if !numeric[c.Field] {
			continue
		}
		samples = samples[:0]
		for i := range t.Records {
			if len(samples) == mostSamples {
				break
			}
			if v := &t.Records[i].Values[c.i]; v.Cell != nil && v.Cell.Kind == grid.String {
				samples = append(samples, v.Text)
			}
		}
		if len(samples) > 0 {
			c.style = notation.DetectStyle(samples)
			votes[c.style]++
		}
	}
	most := notation.Auto
	switch {
	case votes[notation.Point] > 0 && votes[notation.Comma] == 0:
		most = notation.Point
	case votes[notation.Comma] > 0 && votes[notation.Point] == 0:
		most = notation.Comma
	}
	for _, c := range t.columns {
		if c.style == notation.Auto {
			c.style = most
		}
	}
}

// numeric are the fields whose cells hold figures.
var numeric = func() map[vocabulary.Field]bool {
	m := make(map[vocabulary.Field]bool)
	for _, f := range []vocabulary.Field{vocabulary.Quantity, vocabulary.Tap, vocabulary.TapList, vocabulary.TotalWatts,
		vocabulary.RatedWatts, vocabulary.Impedance, vocabulary.LineVoltage, vocabulary.TapVoltage, vocabulary.ChannelWatts, vocabulary.FrameWatts,
		vocabulary.ControlWatts, vocabulary.Level, vocabulary.Headroom, vocabulary.Load, vocabulary.Measured,
		vocabulary.MeasuredLoad, vocabulary.BoxDepth, vocabulary.InsertionLoss, vocabulary.Gauge, vocabulary.Length,
		vocabulary.Temperature, vocabulary.AreaNeeded, vocabulary.Height, vocabulary.CableType} {
		m[f] = true
	}
	return m
}()

// has reports whether the table has a column for the field.
func (t *table) has(f vocabulary.Field) bool { return len(t.byField[f]) > 0 }

// own returns what the row's own cells say of a field: the first column of
// that field that is not blank.
func (r *row) own(f vocabulary.Field) (s seen) {
	cols := r.t.byField[f]
	switch {
	case len(cols) == 0:
		return s
	case len(cols) == 1 && r.service == nil:
		r.fill(&s, cols[0])
		return s
	}
	return r.ownOf(f)
}

// ownOf is own for a field with several columns, or of a row that serves others.
func (r *row) ownOf(f vocabulary.Field) seen {
	var missing seen
	for _, c := range r.t.columns { // in their order, which byField loses when a column becomes another
		if c.Field != f {
			continue
		}
		if r.service != nil && r.service.at.col == c && len(r.service.tags) > 0 {
			continue // the tags of what it serves, whatever the header says
		}
		s := r.at(c)
		if s.had() {
			return s
		}
		if s.missing != notation.MissingNone && missing.missing == notation.MissingNone {
			missing = s
		}
	}
	return missing
}

// every yields what the row's own cells say of a field, column by column: a list
// may have several columns of remarks.
func (r *row) every(f vocabulary.Field) iter.Seq[seen] {
	return func(yield func(seen) bool) {
		if r.t.has(f) {
			for _, c := range r.t.columns {
				if c.Field != f {
					continue
				}
				if s := r.at(c); (s.text != "" || s.missing != notation.MissingNone) && !yield(s) {
					return
				}
			}
		}
		if f == vocabulary.Notes && r.t.commented {
			r.comments(yield)
		}
	}
}

// at returns what the row says in one column.
func (r *row) at(c *column) (s seen) {
	r.fill(&s, c)
	return s
}

// fill puts what the row says in one column into an empty s, which is large: no
// cell is asked more often.
func (r *row) fill(s *seen, c *column) {
	said := r.wordings[c.i]
	if said == blankCell {
		return
	}
	v := &r.Values[c.i]
	s.cell, s.col, s.t, s.field = v.Cell, c, r.t, c.Field
	if said == noValueCell {
		s.missing = notation.MissingUnknown
		return
	}
	s.text, s.said = v.Text, said
	s.source = schedule.Source{At: v.At, Written: v.Text, How: v.How, Because: v.Because}
	missing := said.missing
	if r.t.names != nil {
		s.rename(r.t.names)
		missing, _ = notation.Missing(s.text)
	}
	if missing == notation.MissingSeePlan && ofPlaces[c.Field] && countWords(s.text) == 1 {
		missing = notation.MissingNone // stairs go by a word that tells others to measure in the drawing
	}
	if missing != notation.MissingNone {
		s.missing = missing
		s.source.How = schedule.NotHad
	}
	if c.meant != nil {
		s.decode(c)
	}
}

// ofPlaces are the fields of the names of places.
var ofPlaces = [vocabulary.Fields]bool{vocabulary.Zone: true, vocabulary.Room: true, vocabulary.Building: true, vocabulary.Floor: true}

// rename puts what the house book says that a text means in its place.
func (s *seen) rename(names map[string][]valueName) {
	for _, n := range names[valueKey(s.text)] {
		if n.field == vocabulary.Unknown || n.field == s.field {
			s.text = n.means
			s.source.How, s.source.Because = schedule.FromHouseBook, "the house book names this text"
			return
		}
	}
}

// say returns what is said of a field for the row: in its own cells, else in
// the titles in force (innermost first), else above the table or in the name
// of its sheet.
func (r *row) say(f vocabulary.Field) seen {
	s := r.own(f)
	if s.had() || s.missing != notation.MissingNone {
		return s
	}
	if r.title != nil && r.title.Field == f {
		return factSeen(r.title)
	}
	for i := len(r.Sections) - 1; i >= 0; i-- {
		fact := &r.Sections[i]
		if fact.Field == f || fact.Field == vocabulary.Unknown && r.t.sectionAs == f && f != vocabulary.Unknown {
			s := factSeen(fact)
			s.field = f
			return s
		}
	}
	return r.t.title(f)
}

// title returns what stands above the table about a field, else what the name
// of its sheet, which is often a short form of the title, says.
//
// Of several amplifiers that titles name none is that of the table.
func (t *table) title(f vocabulary.Field) seen {
	var name, first seen
	for i := range t.titles {
		switch fact := &t.titles[i]; {
		case fact.Field != f || t.opensSection(fact):
		case fact.At.Row > 0 && f != vocabulary.Amplifier:
			return factSeen(fact)
		case fact.At.Row > 0 && !first.had():
			first = factSeen(fact)
		case fact.At.Row > 0 && !namesOneAmp(fact.Text, first.text):
			return seen{}
		case !name.had():
			name = factSeen(fact)
		}
	}
	if first.had() {
		return first
	}
	return name
}

// opensSection reports whether a title above the table is that of its first
// section, with others below: it holds for the rows of that section alone.
func (t *table) opensSection(f *layout.Fact) bool {
	if f.At.Row == 0 || len(t.Records) == 0 {
		return false
	}
	in := func(r *layout.Record) bool {
		return slices.ContainsFunc(r.Sections, func(s layout.Fact) bool { return s.At == f.At })
	}
	return in(&t.Records[0]) && !in(&t.Records[len(t.Records)-1])
}

func factSeen(f *layout.Fact) seen {
	if _, ok := notation.Missing(f.Text); ok {
		return seen{}
	}
	return seen{text: f.Text, cell: f.Cell, field: f.Field,
		source: schedule.Source{At: f.At, Written: f.Text, How: schedule.FromTitle}}
}
