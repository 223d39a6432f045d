package xlsx

import (
	"bytes"
	"fmt"
	"math"
	"strconv"

	"github.com/xuri/excelize/v2"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/numfmt"
)

// readByLibrary reads, through a general workbook library, what the scanner
// does not understand though nothing is wrong with it. The library ends a
// sheet quietly where its XML breaks off, so every part is first unpacked to
// its checksum and walked to the end of its XML, and the values that the
// sheets store are counted against those that come out.
//
// Strike-through, notes and the reason why a row is hidden are not read here.
func readByLibrary(file string, data []byte, lim grid.Limits) (book *grid.Book, err error) {
	defer func() {
		if p := recover(); p != nil {
			book, err = nil, grid.Damaged("reading it broke off (%v)", p)
		}
	}()
	stored, err := checkParts(data, lim)
	if err != nil {
		return nil, err
	}
	f, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{RawCellValue: true, UnzipSizeLimit: max(lim.MaxInflated, 64<<20), UnzipXMLSizeLimit: max(lim.MaxInflated, 64<<20)})
	if err != nil {
		return nil, grid.Damaged("%v", err)
	}
	defer f.Close()
	book = &grid.Book{File: file, Format: grid.XLSX}
	book.Notes = append(book.Notes, grid.Note{Text: "the workbook is in an unusual form; notes, strike-through and filters in it were not read"})
	cells := 0
	for _, name := range f.GetSheetList() {
		sheet, err := librarySheet(f, name, lim, &cells)
		if err != nil {
			return nil, inSheet(name, err)
		}
		book.Sheets = append(book.Sheets, sheet)
	}
	if cells != stored {
		return nil, &grid.Unreadable{
			Reason: fmt.Sprintf("the workbook is in an unusual form and %d of its %d values could not be read", max(stored-cells, cells-stored), stored),
			Advice: "open it in a spreadsheet program and save it as .xlsx",
		}
	}
	return book, nil
}

// checkParts walks every part and counts the stored values of the sheets.
func checkParts(data []byte, lim grid.Limits) (values int, err error) {
	a, err := openArchive(data, lim)
	if err != nil {
		return 0, err
	}
	for name, f := range a.parts {
		if f == nil {
			return 0, grid.Damaged("there are two parts named %q", name)
		}
		if !bytes.HasSuffix([]byte(name), []byte(".xml")) && !bytes.HasSuffix([]byte(name), []byte(".rels")) {
			continue
		}
		if err := lim.Check(); err != nil {
			return 0, err
		}
		s, err := a.open(name)
		if err != nil {
			return 0, err
		}
		n, err := countValues(s)
		s.release()
		if err != nil {
			return 0, err
		}
		values += n
	}
	return values, nil
}

// countValues counts the cells under sheetData that store a value.
func countValues(s *scanner) (int, error) {
	var path [6]string
	n, full := 0, false
	for {
		if err := s.next(); err != nil {
			return 0, err
		}
		switch s.kind {
		case endOfPart:
			return n, nil
		case startTag:
			if d := s.depth(); d < len(path) {
				path[d] = string(s.name)
			}
			if s.depth() == 4 {
				full = false
			}
		case charData:
			if path[2] == "sheetData" && path[4] == "c" && (s.depth() == 5 && path[5] == "v" || s.depth() > 5 && path[5] == "is") {
				if !full && len(s.raw) > 0 {
					n++
					full = true
				}
			}
		}
	}
}

func librarySheet(f *excelize.File, name string, lim grid.Limits, cells *int) (*grid.Sheet, error) {
	sheet := &grid.Sheet{Name: name}
	if visible, err := f.GetSheetVisible(name); err == nil {
		sheet.Hidden = !visible
	}
	rows, err := f.Rows(name)
	if err != nil {
		return nil, grid.Damaged("%v", err)
	}
	defer rows.Close()
	for number := 1; rows.Next(); number++ {
		if number&0xff == 0 {
			if err := lim.Check(); err != nil {
				return nil, err
			}
		}
		values, err := rows.Columns()
		if err != nil {
			return nil, grid.Damaged("row %d: %v", number, err)
		}
		row := grid.Row{Number: number}
		if rows.GetRowOpts().Hidden {
			row.Hidden = grid.HiddenByHand
		}
		for i, v := range values {
			if v == "" {
				continue
			}
			if *cells++; lim.MaxCells > 0 && *cells > lim.MaxCells {
				return nil, grid.TooLarge("more than %d cells", lim.MaxCells)
			}
			row.Cells = append(row.Cells, libraryCell(f, name, number, i+1, v))
		}
		if len(row.Cells) > 0 {
			sheet.Rows = append(sheet.Rows, row)
		}
	}
	if err := rows.Error(); err != nil {
		return nil, grid.Damaged("%v", err)
	}
	merges, err := f.GetMergeCells(name, true) // reports broken XML that the rows above do not
	if err != nil {
		return nil, grid.Damaged("%v", err)
	}
	for _, m := range merges {
		if area, ok := parseRange(m.GetStartAxis() + ":" + m.GetEndAxis()); ok {
			sheet.Merges = append(sheet.Merges, area)
		}
	}
	return sheet, nil
}

// libraryCell builds a cell from its raw value.
func libraryCell(f *excelize.File, sheet string, row, col int, raw string) grid.Cell {
	c := grid.Cell{Col: col, Kind: grid.String, Text: raw}
	at := grid.A1(row, col)
	kind, err := f.GetCellType(sheet, at)
	if err != nil {
		return c
	}
	if formula, err := f.GetCellFormula(sheet, at); err == nil {
		c.Formula = formula != ""
	}
	switch kind {
	case excelize.CellTypeError:
		c.Kind = grid.Error
	case excelize.CellTypeBool:
		c.Kind, c.Text = grid.Boolean, "FALSE"
		if raw == "1" || raw == "TRUE" {
			c.Number, c.Text = 1, "TRUE"
		}
	case excelize.CellTypeUnset, excelize.CellTypeNumber, excelize.CellTypeFormula:
		v, err := strconv.ParseFloat(raw, 64)
		if err != nil || math.IsInf(v, 0) || math.IsNaN(v) {
			return c
		}
		format := libraryFormat(f, sheet, at)
		c.Kind, c.Number, c.Format, c.Text = grid.Number, v, format.Code(), format.Text(v)
		if format.IsDate() {
			c.Kind = grid.Date
		}
	}
	return c
}

func libraryFormat(f *excelize.File, sheet, at string) *numfmt.Format {
	id, err := f.GetCellStyle(sheet, at)
	if err != nil {
		return numfmt.Compile("")
	}
	st, err := f.GetStyle(id)
	switch {
	case err != nil:
		return numfmt.Compile("")
	case st.CustomNumFmt != nil:
		return numfmt.Compile(*st.CustomNumFmt)
	}
	return numfmt.Compile(numfmt.Builtin(st.NumFmt))
}
