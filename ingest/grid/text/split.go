package text

import "strings"

// longest is the most text that a quoted cell may hold, in bytes: what a
// spreadsheet cell takes. A longer one comes of a quote that is not meant to
// open anything.
const longest = 4 * 32767

// maxCol is the number of columns of a sheet.
const maxCol = 16384

// A splitter cuts text into records. Well-formed quotes are read as RFC 4180
// says. This trade also writes inch marks (6.5") and leaves quotes open, so:
// a quote opens only at the start of a cell; one that is not closed right
// before a delimiter or line end opens nothing, and its cell ends at the next
// delimiter or line end.
type splitter struct {
	text      string
	delimiter byte
	dittos    bool // a cell of a single quote is a ditto mark
	pos       int

	wide               bool // a record had more cells than a sheet has columns; they were dropped
	kept               int  // cells whose quotes keep another delimiter in
	row, stray         int  // records cut so far; cells with quotes out of place
	strayRow, strayCol int  // the first of them
}

// next appends the cells of the next record to dst; ok is false at the end.
// Line ends are \n, \r\n and \r.
func (s *splitter) next(dst []string) (fields []string, ok bool) {
	if s.pos >= len(s.text) {
		return dst, false
	}
	s.row++
	for {
		var field string
		if s.text[s.pos:] != "" && s.text[s.pos] == '"' {
			field = s.quoted(len(dst) + 1)
		} else {
			field = s.plain()
		}
		if len(dst) < maxCol {
			dst = append(dst, field)
		} else {
			s.wide = true
		}
		if s.pos >= len(s.text) {
			return dst, true
		}
		c := s.text[s.pos]
		s.pos++
		if c == s.delimiter {
			continue
		}
		if c == '\r' && s.pos < len(s.text) && s.text[s.pos] == '\n' {
			s.pos++
		}
		return dst, true
	}
}

// plain reads up to the next delimiter or line end.
func (s *splitter) plain() string {
	from := s.pos
	for s.pos < len(s.text) && !s.ends(s.text[s.pos]) {
		s.pos++
	}
	return s.text[from:s.pos]
}

func (s *splitter) ends(c byte) bool { return c == s.delimiter || c == '\n' || c == '\r' }

// quoted reads the cell that begins with a quote at pos.
func (s *splitter) quoted(col int) string {
	from := s.pos
	if s.dittos && (from+1 == len(s.text) || s.ends(s.text[from+1])) {
		s.pos++
		return `"`
	}
	doubled := false
	for i := from + 1; i < len(s.text) && i-from <= longest; i++ {
		if s.text[i] != '"' {
			continue
		}
		if i+1 < len(s.text) && s.text[i+1] == '"' {
			doubled = true
			i++
			continue
		}
		after := i + 1
		for after < len(s.text) && s.text[after] == ' ' && s.delimiter != ' ' {
			after++
		}
		if after < len(s.text) && !s.ends(s.text[after]) {
			break
		}
		s.pos = after
		if !isClean(strings.TrimSpace(s.text[from+1 : i])) {
			s.kept++
		}
		return inner(s.text[from+1:i], doubled)
	}
	if s.stray++; s.stray == 1 {
		s.strayRow, s.strayCol = s.row, col
	}
	field := s.plain()
	if n := len(field); n > 2 && field[n-1] == '"' {
		return inner(field[1:n-1], strings.Contains(field[1:n-1], `""`))
	}
	return field
}

// inner undoes doubled quotes and makes line ends inside a cell "\n".
func inner(f string, doubled bool) string {
	if doubled {
		f = strings.ReplaceAll(f, `""`, `"`)
	}
	if strings.IndexByte(f, '\r') >= 0 {
		f = strings.ReplaceAll(f, "\r\n", "\n")
		f = strings.ReplaceAll(f, "\r", "\n")
	}
	return f
}
