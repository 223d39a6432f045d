package ods

import (
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/xmltok"
)

// readFilter keeps the area of a database range that shows filter buttons.
// Ranges that are not of a sheet of this book are passed over.
func (d *document) readFilter(r *xmltok.Reader, t xmltok.Token) {
	if r.Attr(t, "table:display-filter-buttons") != "true" {
		return
	}
	from, to, ok := splitRange(r.Attr(t, "table:target-range-address"))
	if !ok {
		return
	}
	name, first := splitCell(from)
	_, last := splitCell(to)
	row1, col1, err1 := grid.ParseA1(first)
	row2, col2, err2 := grid.ParseA1(last)
	if err1 != nil || err2 != nil || row2 < row1 || col2 < col1 {
		return
	}
	for _, s := range d.book.Sheets {
		if s.Name == name {
			s.Filtered = grid.Range{Row1: row1, Col1: col1, Row2: row2, Col2: col2}
			return
		}
	}
}

// splitRange parts "'A:B'.A1:'A:B'.C9" at the colon outside quotes.
func splitRange(s string) (from, to string, ok bool) {
	quoted := false
	for i, c := range s {
		switch {
		case c == '\'':
			quoted = !quoted
		case c == ':' && !quoted:
			return s[:i], s[i+1:], true
		}
	}
	return "", "", false
}

// splitCell parts "$'It”s'.$A$1" into sheet and cell.
func splitCell(s string) (sheet, cell string) {
	i := strings.LastIndexByte(s, '.')
	if i < 0 {
		return "", s
	}
	sheet = strings.TrimPrefix(s[:i], "$")
	if n := len(sheet); n >= 2 && sheet[0] == '\'' && sheet[n-1] == '\'' {
		sheet = strings.ReplaceAll(sheet[1:n-1], "''", "'")
	}
	return sheet, s[i+1:]
}
