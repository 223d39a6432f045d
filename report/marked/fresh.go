package marked

import (
	"fmt"
	"io"
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/audit"
	"lineaudit/ingest/grid"
	"lineaudit/report/steady"
)

// fresh writes a new workbook with the cells of a file that is no .xlsx:
// values where they stood, findings sheet in front, fills and notes on the cells.
func fresh(w io.Writer, book *grid.Book, fs []finding, marks map[string][]mark, note string) error {
	f := excelize.NewFile()
	defer f.Close()
	var names []string
	for _, s := range book.Sheets {
		names = append(names, s.Name)
	}
	front := freeName(names)
	if err := f.SetSheetName("Sheet1", front); err != nil {
		return err
	}
	sheets := map[string]string{}
	for i, s := range book.Sheets {
		sheets[s.Name] = sheetName(s.Name, i, sheets)
	}
	styles := map[string]int{}
	for _, s := range book.Sheets {
		name := sheets[s.Name]
		if _, err := f.NewSheet(name); err != nil {
			return err
		}
		if err := copySheet(f, name, s, styles); err != nil {
			return fmt.Errorf("sheet %q: %w", s.Name, err)
		}
		if err := markFresh(f, name, marks[s.Name]); err != nil {
			return fmt.Errorf("sheet %q: %w", s.Name, err)
		}
	}
	if err := fillFindings(f, front, fs, note, sheets); err != nil {
		return err
	}
	f.SetActiveSheet(0)
	return steady.Write(w, f)
}

// sheetName makes a name that every spreadsheet program takes.
func sheetName(name string, i int, taken map[string]string) string {
	clean := strings.Map(func(r rune) rune {
		if strings.ContainsRune(`:\/?*[]`, r) || r < ' ' {
			return '-'
		}
		return r
	}, strings.Trim(name, "'"))
	if r := []rune(clean); len(r) > 28 {
		clean = string(r[:28])
	}
	if strings.TrimSpace(clean) == "" {
		clean = fmt.Sprintf("Sheet%d", i+1)
	}
	for _, t := range taken {
		if strings.EqualFold(t, clean) {
			return fmt.Sprintf("%s %d", clean, i+1)
		}
	}
	return clean
}

// copySheet writes the cells of a sheet: numbers as numbers with their format,
// everything else as the text that people saw.
func copySheet(f *excelize.File, name string, s *grid.Sheet, styles map[string]int) error {
	for _, row := range s.Rows {
		for _, c := range row.Cells {
			cell := cellName(row.Number, c.Col)
			var err error
			switch c.Kind {
			case grid.Blank:
				continue
			case grid.Number, grid.Date:
				err = f.SetCellFloat(name, cell, c.Number, -1, 64)
				if id := numberStyle(f, c.Format, styles); err == nil && id != 0 {
					err = f.SetCellStyle(name, cell, cell, id)
				}
			case grid.Boolean:
				err = f.SetCellBool(name, cell, c.Number != 0)
			default:
				err = f.SetCellStr(name, cell, clean(c.Text))
			}
			if err != nil {
				return err
			}
		}
		if row.Hidden != grid.Shown {
			if err := f.SetRowVisible(name, row.Number, false); err != nil {
				return err
			}
		}
	}
	for _, m := range s.Merges {
		if err := f.MergeCell(name, cellName(m.Row1, m.Col1), cellName(m.Row2, m.Col2)); err != nil {
			return err
		}
	}
	if s.Hidden {
		return f.SetSheetVisible(name, false)
	}
	return nil
}

func numberStyle(f *excelize.File, format string, styles map[string]int) int {
	if format == "" || strings.EqualFold(format, "General") {
		return 0
	}
	if id, ok := styles[format]; ok {
		return id
	}
	id, err := f.NewStyle(&excelize.Style{CustomNumFmt: &format})
	if err != nil {
		id = 0
	}
	styles[format] = id
	return id
}

// markFresh puts fills and notes on the cells of a sheet of our own.
func markFresh(f *excelize.File, name string, marks []mark) error {
	formats := map[audit.Grade]int{}
	for _, g := range []audit.Grade{audit.Danger, audit.Fault, audit.Caution, audit.Unknown} {
		colour := fillColours[g]
		id, err := f.NewConditionalStyle(&excelize.Style{Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{colour[2:]}}})
		if err != nil {
			return err
		}
		formats[g] = id
	}
	for _, m := range marks {
		cell := cellName(m.row, m.col)
		id := formats[m.grade]
		if err := f.SetConditionalFormat(name, cell, []excelize.ConditionalFormatOptions{{Type: "formula", Criteria: "TRUE", Format: &id}}); err != nil {
			return err
		}
		if err := f.AddComment(name, excelize.Comment{Cell: cell, Author: noteAuthor, Text: clean(m.text), Width: 320, Height: 120}); err != nil {
			return err
		}
	}
	return nil
}
