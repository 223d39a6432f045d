package markup

import (
	"fmt"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/xmltok"
)

// An xmlSheet gathers one ss:Worksheet.
type xmlSheet struct {
	*xmlBook
	sheet      *grid.Sheet
	maker      grid.Maker
	inRow      []grid.Placed // of the row being read
	nextCol    int
	nextRow    int
	colStyles  []colStyle
	style      string // of cells where nothing else says
	filtering  bool   // the automatic filter hides something
	textHidden bool   // a number format hides a text
}

// colStyle is the style of a run of columns.
type colStyle struct {
	span  grid.Span
	style string
}

// readSheet reads the sheet whose start was read last.
func (b *xmlBook) readSheet(name string) error {
	s := &xmlSheet{xmlBook: b, sheet: &grid.Sheet{Name: name}, nextCol: 1, nextRow: 1}
	b.book.Sheets = append(b.book.Sheets, s.sheet)
	err := b.r.Children(func(t xmltok.Token) error {
		switch t.Name {
		case "ss:Table":
			s.style = s.attr(t, "StyleID")
			return b.r.Children(func(t xmltok.Token) error {
				switch t.Name {
				case "ss:Column":
					return s.readColumn(t)
				case "ss:Row":
					return s.readRow(t)
				}
				return b.r.Skip()
			}, nil)
		case "x:WorksheetOptions":
			return b.r.Children(func(t xmltok.Token) error {
				if t.Name != "x:Visible" {
					return b.r.Skip()
				}
				v, err := b.text()
				s.sheet.Hidden = strings.HasPrefix(strings.TrimSpace(v), "Sheet") // SheetHidden, SheetVeryHidden
				return err
			}, nil)
		case "x:AutoFilter":
			return s.readFilter(t)
		}
		return b.r.Skip()
	}, nil)
	if err != nil {
		return err
	}
	if f := s.sheet.Filtered; s.filtering {
		for i := range s.sheet.Rows {
			row := &s.sheet.Rows[i]
			if row.Hidden != grid.Shown && f.Row1 < row.Number && row.Number <= f.Row2 {
				row.Hidden = grid.HiddenByFilter
			}
		}
	}
	return nil
}

// readFilter reads the area of an automatic filter, such as R1C1:R10C4, and
// whether it hides something: one of its columns is set to other than "All".
func (s *xmlSheet) readFilter(t xmltok.Token) error {
	area := s.r.Attr(t, "x:Range")
	if area == "" {
		area = s.r.Attr(t, "Range")
	}
	var f grid.Range
	if n, err := fmt.Sscanf(area, "R%dC%d:R%dC%d", &f.Row1, &f.Col1, &f.Row2, &f.Col2); n == 4 && err == nil &&
		0 < f.Row1 && f.Row1 <= f.Row2 && f.Row2 <= maxRow && 0 < f.Col1 && f.Col1 <= f.Col2 && f.Col2 <= maxCol {
		s.sheet.Filtered = f
	}
	return s.r.Children(func(t xmltok.Token) error {
		if t.Name == "x:AutoFilterColumn" && s.r.Attr(t, "x:Type") != "All" {
			s.filtering = true
		}
		return s.r.Skip()
	}, nil)
}

// readColumn reads one ss:Column, which may stand for several.
func (s *xmlSheet) readColumn(t xmltok.Token) error {
	first, err := s.count(t, "Index", maxCol)
	if err != nil {
		return err
	}
	if first == 0 {
		first = s.nextCol
	}
	more, err := s.count(t, "Span", maxCol)
	if err != nil {
		return err
	}
	span := grid.Span{First: first, Last: first + more}
	if first < s.nextCol || span.Last > maxCol {
		return grid.Damaged("column %d follows column %d", first, s.nextCol-1)
	}
	s.nextCol = span.Last + 1
	if id := s.attr(t, "StyleID"); id != "" {
		s.colStyles = append(s.colStyles, colStyle{span, id})
	}
	if isTrue(s.attr(t, "Hidden")) || s.attr(t, "Width") == "0" {
		h := &s.sheet.HiddenCols
		if n := len(*h); n > 0 && (*h)[n-1].Last+1 == first {
			(*h)[n-1].Last = span.Last
		} else {
			*h = append(*h, span)
		}
	}
	return s.r.Skip()
}

// columnStyle returns the style of a column, else of the table.
func (s *xmlSheet) columnStyle(col int) string {
	i, _ := slices.BinarySearchFunc(s.colStyles, col, func(c colStyle, col int) int { return c.span.Last - col })
	if i < len(s.colStyles) && s.colStyles[i].span.First <= col {
		return s.colStyles[i].style
	}
	return parentOr(s.style, "Default")
}

// readRow reads one ss:Row.
func (s *xmlSheet) readRow(t xmltok.Token) error {
	number, err := s.count(t, "Index", maxRow)
	if err != nil {
		return err
	}
	if number == 0 {
		number = s.nextRow
	}
	more, err := s.count(t, "Span", maxRow)
	if err != nil {
		return err
	}
	if number < s.nextRow {
		return grid.Damaged("row %d follows row %d", number, s.nextRow-1)
	}
	s.nextRow = number + more + 1
	hidden := grid.Shown
	if isTrue(s.attr(t, "Hidden")) || s.attr(t, "Height") == "0" {
		hidden = grid.HiddenByHand
	}
	style := s.attr(t, "StyleID")
	next := 1
	s.inRow = s.inRow[:0]
	err = s.r.Children(func(t xmltok.Token) error {
		if t.Name != "ss:Cell" {
			return s.r.Skip()
		}
		return s.readCell(t, number, &next, style)
	}, nil)
	if err != nil {
		return err
	}
	if len(s.inRow) == 0 {
		return s.spent.Step()
	}
	if number > maxRow {
		return grid.TooLarge("a row with the number %d", number)
	}
	row := s.maker.Row(number, s.inRow)
	row.Hidden = hidden
	s.sheet.Rows = append(s.sheet.Rows, row)
	return s.spent.Row()
}

// readCell reads one ss:Cell and adds it to the row if it holds anything.
func (s *xmlSheet) readCell(t xmltok.Token, row int, next *int, rowStyle string) error {
	col, err := s.count(t, "Index", maxCol)
	if err != nil {
		return err
	}
	if col == 0 {
		col = *next
	}
	if col < *next {
		return grid.Damaged("%s follows column %d", grid.A1(row, col), *next-1)
	}
	across, err := s.count(t, "MergeAcross", maxCol)
	if err != nil {
		return err
	}
	down, err := s.count(t, "MergeDown", maxRow)
	if err != nil {
		return err
	}
	*next = col + across + 1
	if across+down > 0 {
		if err := s.spent.Merge(); err != nil {
			return err
		}
		s.sheet.Merges = append(s.sheet.Merges, grid.Range{Row1: row, Col1: col, Row2: row + down, Col2: col + across})
	}
	style := s.attr(t, "StyleID")
	if style == "" {
		style = rowStyle
	}
	if style == "" {
		style = s.columnStyle(col)
	}
	c, ok, err := s.cell(t, style)
	if err != nil || !ok {
		return err
	}
	if col > maxCol {
		return grid.TooLarge("a cell in column %d of row %d", col, row)
	}
	shared := s.maker.Of(c)
	s.inRow = append(s.inRow, grid.Placed{Cell: shared, Col: col})
	return s.spent.Cell(shared)
}
