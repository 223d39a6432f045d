// Package ingest turns the plain cells of a file into jobs: it has the tables
// found and put upright, reads their cells, and joins what several tables say
// of one thing. It knows no rule of good practice and no electricity.
package ingest

import (
	"fmt"
	"path"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
	"lineaudit/ingest/watch"
)

// A Kind says what a file turned out to be.
type Kind string

// The kinds of files.
const (
	Schedule     Kind = "schedule"
	NotASchedule Kind = "not-a-schedule"
	Unreadable   Kind = "unreadable"
)

// A File is one file as it was understood.
type File struct {
	Name      string // slash-separated path as people see it
	Kind      Kind
	Reason    string // why it is no schedule: the nearest miss
	Format    grid.Format
	Converted bool // read through another spreadsheet program
	Size      int64
	SHA256    string
	Jobs      []*schedule.Job
	// LeftOut are the rows of a file that is no schedule.
	LeftOut []schedule.LeftOut
	// Layout is what was found in the sheets before anything was read.
	Layout *layout.Reading
}

// Options are what a user may settle.
type Options struct {
	House *schedule.HouseBook // names of headers and values; may be nil
	Units string              // unit of lengths where nothing tells: "m", "ft" or ""
	// Stop is asked every few rows; an error from it ends the reading. nil never stops.
	Stop func() error
	// MaxRows bounds the rows of all tables of a file, which cost about 7 KiB of
	// memory each until it is audited; MaxRows of this package if zero.
	MaxRows int
	// Each, where it is not nil, is given every job once it is made and the file is
	// known to be a schedule, in their order. File.Jobs then stays empty, so that the
	// jobs of a long register are not all held at once. An error from it ends the
	// reading: the file is Unreadable, the error its reason.
	Each func(*schedule.Job) error

	watch *watch.Watch
}

// MaxRows is how many rows the tables of one file may have: a quarter more than the
// largest register that this is meant for.
const MaxRows = 250_000

func (o *Options) mostRows() int {
	if o.MaxRows > 0 {
		return o.MaxRows
	}
	return MaxRows
}

// recordsIn is the number of rows of all tables.
func recordsIn(l *layout.Reading) (n int) {
	for _, t := range l.AllTables() {
		n += len(t.Records)
	}
	return n
}

// Read understands one book. It returns the file with every job in it, or with
// the reason why it holds none: a file that opts.Stop ended is Unreadable, the
// reason its error.
func Read(book *grid.Book, opts Options) *File {
	opts.watch = watch.New(opts.Stop)
	var f *File
	var failed error
	if err := watch.Guard(func() { f, failed = read(book, &opts) }); err != nil {
		failed = err
	}
	if failed != nil {
		return &File{Name: book.File, Kind: Unreadable, Reason: failed.Error(), Format: book.Format, Converted: book.Converted, Size: book.Size, SHA256: book.SHA256}
	}
	return f
}

// longestCell is how many bytes of the text of a cell are read, a little more than what
// layout takes for anything but prose: no cell may take for ever.
const longestCell = 4100

// withoutLong returns the book with longer texts cut, and that noted; the book itself
// stays as it is.
func withoutLong(book *grid.Book) *grid.Book {
	out := book
	var maker grid.Maker
	for i, sheet := range book.Sheets {
		for k := range sheet.Rows {
			row := &sheet.Rows[k]
			if !hasLong(row) {
				continue
			}
			if out == book {
				whole := *book
				out = &whole
				out.Sheets, out.Notes = slices.Clone(book.Sheets), slices.Clone(book.Notes)
			}
			if out.Sheets[i] == sheet {
				whole := *sheet
				out.Sheets[i] = &whole
				whole.Rows = slices.Clone(sheet.Rows)
			}
			cells := slices.Collect(row.Cells())
			for n, c := range cells {
				if !isLong(c.Cell) {
					continue
				}
				cells[n] = shortened(c.Cell).In(c.Col)
				out.Notes = append(out.Notes, grid.Note{Sheet: sheet.Name, Row: row.Number, Col: c.Col, Text: "the text is longer than 4 KiB; what follows these is not read"})
			}
			short := maker.Row(row.Number, cells)
			short.Hidden = row.Hidden
			out.Sheets[i].Rows[k] = short
		}
	}
	return out
}

func hasLong(row *grid.Row) bool {
	for c := range row.Cells() {
		if isLong(c.Cell) {
			return true
		}
	}
	return false
}

func isLong(c *grid.Cell) bool {
	return len(c.Text) > longestCell || c.Extra != (grid.Shared{}) && (len(c.Kept()) > longestCell || len(c.Note()) > longestCell)
}

// shortened is the cell with its texts cut.
func shortened(c *grid.Cell) grid.Cell {
	cut := func(s string) string { return strings.ToValidUTF8(s[:min(len(s), longestCell)], "") }
	out := *c
	out.Text = cut(out.Text)
	out.SetKept(cut(out.Kept()))
	out.SetNote(cut(out.Note()))
	return out
}

func read(book *grid.Book, opts *Options) (*File, error) {
	book = withoutLong(namelessIfText(book))
	f := &File{Name: book.File, Format: book.Format, Converted: book.Converted, Size: book.Size, SHA256: book.SHA256}
	f.Layout = layout.Read(book, layout.Options{Names: headerNames(opts.House), Watch: opts.watch})
	if n := recordsIn(f.Layout); n > opts.mostRows() {
		f.Kind, f.Reason, f.Layout = Unreadable, fmt.Sprintf("its tables have %d rows, more than the %d that one file may have; split it into several files", n, opts.mostRows()), nil
		return f, nil
	}
	f.Kind, f.Reason = NotASchedule, notASchedule(f.Layout)
	none, first := f.Reason != "", true
	err := build(f.Name, f.Layout, opts, func(j *schedule.Job) error {
		if first {
			noteReading(j, book)
			first = false
		}
		f.Jobs = append(f.Jobs, j)
		if !none && f.Kind != Schedule && isSchedule(j) {
			f.Kind = Schedule
		}
		if f.Kind != Schedule || opts.Each == nil {
			return nil
		}
		ready := f.Jobs
		f.Jobs = nil
		for _, j := range ready {
			if err := opts.Each(j); err != nil {
				return err
			}
		}
		return nil
	})
	if err != nil || f.Kind == Schedule {
		return f, err
	}
	if !none {
		f.Reason = nearMiss(f)
	}
	for _, j := range f.Jobs {
		f.LeftOut = append(f.LeftOut, j.LeftOut...)
	}
	f.Jobs = nil
	return f, nil
}

// namelessIfText is the book with a blank sheet name for a text table, whose
// cells are named by the file alone.
func namelessIfText(book *grid.Book) *grid.Book {
	if book.Format != grid.Text {
		return book
	}
	b := *book
	b.Sheets = make([]*grid.Sheet, len(book.Sheets))
	for i, s := range book.Sheets {
		c := *s
		c.Name = ""
		b.Sheets[i] = &c
	}
	return &b
}

// noteReading adds what the reader of the file took for granted to its first job.
func noteReading(first *schedule.Job, book *grid.Book) {
	for _, n := range book.Notes {
		first.Assumptions = append(first.Assumptions, schedule.Assumption{
			At:    schedule.At(book.File, n.Sheet, n.Row, n.Col),
			Field: "the file", TakenAs: n.Text, How: schedule.Default, Because: "remark of the reader"})
	}
	if book.Converted {
		first.Assumptions = append(first.Assumptions, schedule.Assumption{At: schedule.At(book.File, "", 0, 0), Field: "the file",
			TakenAs: "values as another spreadsheet program recalculated them", How: schedule.Default, Because: "this format is read through that program"})
	}
}

// headerNames are the rows of a house book that name headers.
func headerNames(h *schedule.HouseBook) []layout.Name {
	if h == nil {
		return nil
	}
	var out []layout.Name
	for _, n := range h.Names {
		if n.Kind.Value != "header" {
			continue
		}
		if field, ok := vocabulary.Named(n.Means.Value); ok {
			out = append(out, layout.Name{Header: n.Written.Value, Field: field, Files: n.Files.Value})
		}
	}
	return out
}

// A valueName is a text of a house book that stands for another.
type valueName struct {
	field vocabulary.Field // "" for any
	means string
}

// valueNames are the rows of a house book that name values, for one file.
func valueNames(h *schedule.HouseBook, file string) map[string][]valueName {
	if h == nil {
		return nil
	}
	var out map[string][]valueName
	for _, n := range h.Names {
		if n.Kind.Value != "value" || !matches(n.Files.Value, file) {
			continue
		}
		field, _ := vocabulary.Named(n.Field.Value)
		if out == nil {
			out = make(map[string][]valueName)
		}
		k := valueKey(n.Written.Value)
		out[k] = append(out[k], valueName{field, n.Means.Value})
	}
	return out
}

func valueKey(s string) string { return tidy(join.Fold(s)) }

// matches reports whether a file pattern, as of path.Match, holds for a path
// or its last part. A blank pattern holds for all.
func matches(pattern, file string) bool {
	if strings.TrimSpace(pattern) == "" {
		return true
	}
	a, _ := path.Match(pattern, file)
	b, _ := path.Match(pattern, path.Base(file))
	return a || b
}

// notASchedule says why a file is no schedule whatever its rows say, "" if that
// depends on its jobs.
func notASchedule(l *layout.Reading) string {
	tables := l.AllTables()
	switch {
	case len(tables) == 0 && l.NearestMiss != "":
		return l.NearestMiss
	case len(tables) == 0:
		return "no table was found"
	case priceList(tables):
		return "a price list: prices, and neither quantities nor places"
	}
	return ""
}

// isSchedule reports whether a job makes its file a schedule: it has a
// loudspeaker or a zone with watts or a tap, or amplifiers, controls or cables
// that carry loudspeaker lines.
func isSchedule(j *schedule.Job) bool {
	for _, l := range j.Loudspeakers {
		if l.Tap.Had() || l.RowTotal.Had() || l.TapPosition.Had() || l.LowImpedance.Had() || len(l.Offered) > 0 || l.Rated.Had() {
			return true
		}
	}
	for _, o := range j.LeftOut {
		if len(o.Would) > 0 {
			return true
		}
	}
	for _, c := range j.Channels {
		if c.Rated.Had() && (j.LineVoltsOf(c).Had() || c.Stated.Had()) {
			return true
		}
	}
	for _, c := range j.Controls {
		if c.Rated.Had() {
			return true
		}
	}
	for _, c := range j.Cables {
		if c.Length.Had() && (c.Zone != nil || c.Channel != nil || c.Control != nil || c.To.Loudspeaker != nil) {
			return true
		}
	}
	// loudspeakers in zones on channels are a schedule, if a thin one
	return len(j.Loudspeakers) > 0 && len(j.Zones) > 0 && len(j.Channels) > 0
}

// nearMiss says what a file whose jobs are none lacks.
func nearMiss(f *File) string {
	if f.Layout.NearestMiss != "" {
		return f.Layout.NearestMiss
	}
	for _, j := range f.Jobs {
		if len(j.Loudspeakers) > 0 {
			return "no column of taps or watts"
		}
	}
	return "no row of a loudspeaker, a zone, an amplifier, a control or a cable"
}

// priceList reports whether all tables list prices and say neither how many
// nor where.
func priceList(tables []*layout.Table) bool {
	for _, t := range tables {
		price, placed := false, false
		for i := range t.Columns {
			switch t.Columns[i].Field {
			case vocabulary.Price:
				price = true
			case vocabulary.Quantity, vocabulary.Zone, vocabulary.Room, vocabulary.Channel, vocabulary.Control, vocabulary.Circuit, vocabulary.TotalWatts:
				placed = true
			}
		}
		if !price || placed {
			return false
		}
	}
	return true
}

// splitPath returns the last folder of a path and the file's name without its
// ending.
func splitPath(file string) (dir, base string) {
	d, f := path.Split(strings.ReplaceAll(file, "\\", "/"))
	d = strings.Trim(d, "/")
	if i := strings.LastIndexByte(d, '/'); i >= 0 {
		d = d[i+1:]
	}
	if d == "." || d == ".." {
		d = ""
	}
	if i := strings.LastIndexByte(f, '.'); i > 0 {
		f = f[:i]
	}
	return d, f
}
