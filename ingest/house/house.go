// Package house reads the firm's own book - names, limits, ratings, waivers -
// from a workbook or a folder of text tables into plain rows with positions.
// It finds every error in one go, each with its cell; what a limit may be is
// for the audit to judge.
package house

import (
	"path"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
)

// The sheets of a house book. In a folder of text tables each is a file of that name.
const (
	Names   = "names"
	Limits  = "limits"
	Ratings = "ratings"
	Waivers = "waivers"
)

// sheetNames are the sheets in the order of their documentation.
var sheetNames = []string{Names, Limits, Ratings, Waivers}

// columnsOf are the columns of each sheet. Ratings have further columns for a
// line voltage: "rated_w_70v", "taps_w_100v".
var columnsOf = map[string][]string{
	Names:   {"kind", "written", "means", "field", "files"},
	Limits:  {"rule", "limit", "value", "unit", "use", "source"},
	Ratings: {"model", "other_names", "kind", "rated_w", "taps_w", "impedance_ohm", "channels", "frame_w", "box_depth_mm", "insertion_loss_db"},
	Waivers: {"rule", "job", "place", "reason", "by"},
}

// remarks are the columns, on any sheet, for the people who keep the book.
var remarks = map[string]bool{"remark": true, "remarks": true, "note": true, "notes": true, "comment": true, "comments": true}

// needed is the column without which a row of a sheet says nothing.
var needed = map[string]string{Names: "written", Limits: "rule", Ratings: "model", Waivers: "rule"}

// Columns returns the columns of a sheet of the house book, nil for a sheet it
// does not have.
func Columns(sheet string) []string { return slices.Clone(columnsOf[sheet]) }

// Sheets returns the names of the sheets of a house book.
func Sheets() []string { return slices.Clone(sheetNames) }

// Read reads a house book: one workbook, or the text tables of a folder. name
// is what people call it. The errors are in the order of their cells.
func Read(name string, books []*grid.Book) (*schedule.HouseBook, []schedule.HouseError) {
	r := &reader{book: &schedule.HouseBook{File: name}}
	found := false
	for _, b := range books {
		for _, s := range b.Sheets {
			sheet := s.Name
			if b.Format == grid.Text {
				sheet = strings.TrimSuffix(path.Base(b.File), path.Ext(b.File))
			}
			which, near := sheetNamed(sheet)
			switch {
			case which != "":
				found = true
				r.sheet(b, s, which)
			case near != "":
				r.fail(r.at(b, s, 0, 0), "the sheet “"+sheet+"” is not known; did you mean “"+near+"”?")
			}
		}
	}
	if !found && len(r.errors) == 0 {
		r.fail(schedule.At(name, "", 0, 0), "no sheet of a house book: it has sheets named "+strings.Join(sheetNames, ", "))
	}
	r.crossCheck()
	slices.SortStableFunc(r.errors, func(a, b schedule.HouseError) int { return a.At.Compare(b.At) })
	return r.book, r.errors
}

// IsBook reports whether a book that nobody named as one is a house book: two of
// its sheets have the name and columns of ours, or one has a column that no
// schedule would call so.
func IsBook(b *grid.Book) bool {
	sheets := 0
	for _, s := range b.Sheets {
		name := s.Name
		if b.Format == grid.Text {
			name = strings.TrimSuffix(path.Base(b.File), path.Ext(b.File))
		}
		columns := columnsOf[join.Key(name)]
		for i := range s.Rows[:min(len(s.Rows), headerWithin)] {
			ours, plain := 0, true
			for c := range s.Rows[i].Cells() {
				if slices.Contains(columns, c.Text) {
					ours++
					plain = plain && !strings.Contains(c.Text, "_")
				}
			}
			if ours < 3 {
				continue
			}
			if sheets++; sheets == 2 || !plain {
				return true
			}
			break
		}
	}
	return false
}

// headerWithin is how many rows IsBook looks at for a header.
const headerWithin = 20

// sheetNamed returns the sheet that a name means, or one that it resembles.
func sheetNamed(name string) (exact, near string) {
	k := join.Key(name)
	for _, s := range sheetNames {
		if k == s {
			return s, ""
		}
		if k == strings.TrimSuffix(s, "s") || join.Alike(k, s) {
			near = s
		}
	}
	return "", near
}

type reader struct {
	book   *schedule.HouseBook
	errors []schedule.HouseError
}

func (r *reader) fail(at schedule.Ref, text string) {
	r.errors = append(r.errors, schedule.HouseError{At: at, Text: text})
}

func (r *reader) at(b *grid.Book, s *grid.Sheet, row, col int) schedule.Ref {
	if b.Format == grid.Text {
		return schedule.At(b.File, "", row, col)
	}
	return schedule.At(b.File, s.Name, row, col)
}

// A line is one row of a sheet, by column name.
type line struct {
	r     *reader
	at    schedule.Ref // column 0
	cells map[string]*grid.Cell
	cols  map[string]int
}

// sheet reads one sheet. The header is the first row that holds the column
// without which nothing can be said and one more; rows above it are
// explanations, and so are rows that begin with #.
func (r *reader) sheet(b *grid.Book, s *grid.Sheet, which string) {
	var cols map[string]int
	for i := range s.Rows {
		row := &s.Rows[i]
		if cols == nil {
			cols = r.header(b, s, row, which)
			continue
		}
		l := line{r: r, at: r.at(b, s, row.Number, 0), cells: make(map[string]*grid.Cell), cols: cols}
		comment := false
		filled := false
		for k := range row.Len() {
			c := row.At(k)
			if k == 0 && strings.HasPrefix(strings.TrimSpace(c.Text), "#") {
				comment = true
			}
			for name, col := range cols {
				if col == c.Col && strings.TrimSpace(c.Text) != "" {
					l.cells[name] = c.Cell
					filled = true
				}
			}
		}
		if comment || !filled {
			continue
		}
		switch which {
		case Names:
			r.nameRow(l)
		case Limits:
			r.limitRow(l)
		case Ratings:
			r.ratingRow(l)
		case Waivers:
			r.waiverRow(l)
		}
	}
	if cols == nil && len(s.Rows) > 0 {
		r.fail(r.at(b, s, s.Rows[0].Number, 0), "no header: the sheet “"+which+"” has the columns "+strings.Join(columnsOf[which], ", "))
	}
}

// header returns the columns of a header row, nil if the row is none. A column
// that is not known is an error: what stands below it would be lost in silence.
func (r *reader) header(b *grid.Book, s *grid.Sheet, row *grid.Row, which string) map[string]int {
	cols := make(map[string]int)
	type miss struct {
		col  int
		said string
	}
	var misses []miss
	for c := range row.Cells() {
		name, near := columnNamed(which, c.Text)
		switch {
		case strings.TrimSpace(c.Text) == "" || remarks[strings.Join(headerWords(c.Text), "")]:
		case name == "" && near == "":
			misses = append(misses, miss{c.Col, "the column “" + c.Text + "” is not known; the sheet “" + which + "” has the columns " +
				strings.Join(columnsOf[which], ", ") + ", and may have remarks"})
		case name == "":
			misses = append(misses, miss{c.Col, "the column “" + c.Text + "” is not known; did you mean “" + near + "”?"})
		case cols[name] != 0:
			misses = append(misses, miss{c.Col, "the column “" + c.Text + "” is there twice"})
		default:
			cols[name] = c.Col
		}
	}
	if cols[needed[which]] == 0 || len(cols) < 2 {
		return nil
	}
	for _, m := range misses {
		r.fail(r.at(b, s, row.Number, m.col), m.said)
	}
	return cols
}

// columnNamed returns the column that a header means, or one that it resembles.
func columnNamed(which, header string) (exact, near string) {
	words := headerWords(header)
	if len(words) == 0 {
		return "", ""
	}
	if which == Ratings && (words[0] == "rated" || words[0] == "taps" || words[0] == "tap") {
		base := map[string]string{"rated": "rated_w", "taps": "taps_w", "tap": "taps_w"}[words[0]]
		volts, ok := voltsIn(words[1:])
		switch {
		case ok && volts == "":
			return base, ""
		case ok:
			return base + "_" + volts + "v", ""
		}
		return "", base
	}
	k := strings.Join(words, "")
	for _, c := range columnsOf[which] {
		full := strings.ReplaceAll(c, "_", "")
		short := full
		for _, unit := range []string{"ohm", "mm", "db", "w"} {
			if strings.HasSuffix(c, "_"+unit) {
				short = strings.TrimSuffix(full, unit)
			}
		}
		if k == full || k == short {
			return c, ""
		}
		if join.Alike(k, full) || join.Alike(k, short) {
			near = c
		}
	}
	return "", near
}

// headerWords takes a header apart into folded words and numbers.
func headerWords(s string) []string {
	return strings.FieldsFunc(join.Fold(s), func(r rune) bool {
		return !(r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == '.')
	})
}

// voltsIn finds the line voltage among the words behind "rated" or "taps",
// "" for any; ok is false when there are words that say something else.
func voltsIn(words []string) (volts string, ok bool) {
	for _, w := range words {
		switch w {
		case "w", "watts", "at", "v", "volts", "offered", "any", "line":
			continue
		}
		n := strings.TrimSuffix(w, "v")
		v, err := parseFigure(n)
		if err != nil || v < 10 || v > 250 || volts != "" {
			return "", false
		}
		volts = n
	}
	return volts, true
}
