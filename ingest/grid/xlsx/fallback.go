package xlsx

import (
	"bytes"
	"fmt"
	"math"
	"strconv"
	"strings"

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
	if stored.mixed {
		return nil, grid.Damaged("its rows or cells are out of order")
	}
	if stored.padded > mostPadded || stored.merges > mostMerges {
		return nil, grid.TooLarge("the workbook is in an unusual form and wider than can be read so")
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
	if cells != stored.values {
		return nil, &grid.Unreadable{
			Reason: fmt.Sprintf("the workbook is in an unusual form and %d of its %d values could not be read", max(stored.values-cells, cells-stored.values), stored.values),
			Advice: "open it in a spreadsheet program and save it as .xlsx",
		}
	}
	return book, nil
}

// The library takes some 190 bytes for every cell up to the last of each row,
// stored or not, and time that grows with the square of the merged areas.
const (
	mostPadded = 2_000_000
	mostMerges = 2_000
)

// A tally counts what the sheets of a workbook store.
type tally struct {
	values int // cells with a value that is not empty
	padded int // cells up to the last of each row
	merges int
	mixed  bool // rows or cells stand out of order, which the library misplaces

	texts *stringTable // nil if it is the part in an unknown form
}

// checkParts walks every part to its end and counts what the sheets store.
func checkParts(data []byte, lim grid.Limits) (n tally, err error) {
	a, err := openArchive(data, lim)
	if err != nil {
		return n, err
	}
	if w, err := readWorkbook(a); err == nil && w.strings != "" {
		if s, err := a.open(w.strings); err == nil {
			n.texts, _ = readStrings(s) // what is wrong with it shows below
			s.release()
		}
	}
	for name, f := range a.parts {
		if f == nil {
			return n, grid.Damaged("there are two parts named %q", name)
		}
		if !strings.HasSuffix(name, ".xml") && !strings.HasSuffix(name, ".rels") {
			continue
		}
		if err := lim.Check(); err != nil {
			return n, err
		}
		s, err := a.open(name)
		if err != nil {
			return n, err
		}
		err = n.count(s)
		s.release()
		if err != nil {
			return n, err
		}
	}
	return n, nil
}

// count adds what stands under sheetData in one part.
func (n *tally) count(s *scanner) error {
	var path [6]string
	full, shared, row, width := false, false, 0, 0
	inData := func() bool { return path[2] == "sheetData" && path[3] == "row" }
	for {
		if err := s.next(); err != nil {
			return err
		}
		switch s.kind {
		case endOfPart:
			return nil
		case startTag:
			d := s.depth()
			if d < len(path) {
				path[d] = string(s.name)
			}
			switch {
			case d == 3 && inData():
				n.padded += width
				width = 0
				number := row + 1
				if v, ok := digits(rawAttr(s, "r")); ok {
					number = v
				}
				n.mixed = n.mixed || number <= row
				row = number
			case d == 4 && inData() && path[4] == "c":
				col := width + 1
				if r, c, ok := reference(rawAttr(s, "r")); ok {
					n.mixed = n.mixed || r != row || c <= width
					col = c
				}
				full, shared, width = false, string(rawAttr(s, "t")) == "s", col
			case d == 3 && path[3] == "mergeCell":
				n.merges++
			}
		case charData:
			d := s.depth()
			if !inData() || path[4] != "c" || full || len(s.raw) == 0 || !(d == 5 && path[5] == "v" || d > 5 && path[5] == "is") {
				break
			}
			if i, ok := digits(s.raw); shared && ok && n.texts != nil && i < len(n.texts.ends) && n.texts.at(i) == "" {
				break
			}
			n.values++
			full = true
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
