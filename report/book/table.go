package book

import (
	"fmt"
	"math"
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
	"lineaudit/report/steady"
)

// headerRow is the row of the column headings.
const headerRow = 4

// lineHeight is the height of one line of text, in points.
const lineHeight = 13.0

// table writes one table to a sheet of its own, row by row.
func (b *builder) table(t report.Table) error {
	if _, err := b.file.NewSheet(t.Title); err != nil {
		return err
	}
	if err := b.page(t.Title, "landscape", headerRow); err != nil {
		return err
	}
	cols, onPaper := b.columns(t)
	rows := t.Count
	if rows > report.MaxSheetRows {
		rows = 0
	}
	if err := b.dress(t, cols, rows); err != nil {
		return err
	}
	s, err := b.file.NewStreamWriter(t.Title)
	if err != nil {
		return err
	}
	total := 0.0
	for i, c := range cols {
		if err := s.SetColWidth(i+1, i+1, c.width); err != nil {
			return err
		}
		if c.onPaper {
			total += c.width
		}
	}
	if err := s.SetPanes(&excelize.Panes{Freeze: true, YSplit: headerRow, TopLeftCell: "A5", ActivePane: "bottomLeft"}); err != nil {
		return err
	}
	if err := b.head(s, t, cols, onPaper, total); err != nil {
		return err
	}
	n := t.Count
	if t.Count > report.MaxSheetRows {
		text := fmt.Sprintf("%d rows are more than a sheet holds; they are in %s.csv.", t.Count, t.Name)
		b.notes = append(b.notes, t.Title+": "+text)
		n = 0
		if err := s.SetRow("A5", []any{excelize.Cell{StyleID: b.styles.note, Value: text}}); err != nil {
			return err
		}
	} else {
		b.later[t.Title] = func(w *steady.RowWriter) error {
			at := headerRow
			cells := make([]steady.Cell, len(cols))
			for row := range t.Rows {
				at++
				if err := w.Row(at, b.cells(cells, t, row, cols), cells); err != nil {
					return err
				}
			}
			return nil
		}
		if n == 0 {
			if err := s.SetRow("A5", []any{excelize.Cell{StyleID: b.styles.note, Value: "Nothing to list."}}); err != nil {
				return err
			}
		}
	}
	if n > 0 {
		last, err := excelize.CoordinatesToCellName(len(cols), headerRow+n)
		if err != nil {
			return err
		}
		name := "t_" + strings.ReplaceAll(t.Name, "-", "_")
		if err := s.AddTable(&excelize.Table{Range: "A4:" + last, Name: name, ShowRowStripes: new(bool)}); err != nil {
			return err
		}
	}
	if err := s.Flush(); err != nil {
		return err
	}
	right, err := excelize.ColumnNumberToName(onPaper)
	if err != nil {
		return err
	}
	return b.file.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Area", Scope: t.Title,
		RefersTo: fmt.Sprintf("'%s'!$A$1:$%s$%d", t.Title, right, headerRow+max(n, 1))})
}

// head writes the title, the note and the headings; below these is room for
// the buttons of the filter.
func (b *builder) head(s *excelize.StreamWriter, t report.Table, cols []sheetColumn, onPaper int, total float64) error {
	header := make([]any, len(cols))
	lines := 1
	for i, c := range cols {
		style := b.styles.header
		switch {
		case c.width == narrow: // written upright
			style = b.styles.headerUpright
			lines = max(lines, 1+int(report.Measure(c.Heading())*0.5))
		case !c.IsText():
			style = b.styles.headerCount
			fallthrough
		default:
			lines = max(lines, report.Lines(c.Heading(), c.width-1))
		}
		header[i] = excelize.Cell{StyleID: style, Value: c.Heading()}
	}
	note := float64(report.Lines(t.Note, total-2))*lineHeight + 3
	last, err := excelize.CoordinatesToCellName(max(onPaper, 2), 2)
	if err != nil {
		return err
	}
	if err := s.MergeCell("A2", last); err != nil {
		return err
	}
	for _, row := range []struct {
		cell   string
		cells  []any
		height float64
	}{
		{"A1", []any{excelize.Cell{StyleID: b.styles.title, Value: t.Title}}, 24},
		{"A2", []any{excelize.Cell{StyleID: b.styles.noteWrapped, Value: t.Note}}, note},
		{"A4", header, float64(lines)*lineHeight + 18},
	} {
		if err := s.SetRow(row.cell, row.cells, excelize.RowOpts{Height: row.height}); err != nil {
			return err
		}
	}
	return nil
}

// cells turns the values of a row into styled cells, and says how high the row
// must be for the wrapped ones.
func (b *builder) cells(out []steady.Cell, t report.Table, row []report.Value, cols []sheetColumn) float64 {
	lines := 1
	for i := range cols {
		c := &cols[i]
		cell, text := b.cell(t, row, c)
		if c.onPaper && text != "" {
			lines = max(lines, report.Lines(text, c.width-1.2))
		}
		out[i] = cell
	}
	return math.Min(float64(lines)*lineHeight+4, 409)
}

// cell is one cell and the text that it shows, "" for a number.
func (b *builder) cell(t report.Table, row []report.Value, c *sheetColumn) (steady.Cell, string) {
	if c.index < 0 {
		d := b.audit.Dispositions[value(t, row, "id").Words]
		text := map[string]string{"disposition": d.Decision, "remark": d.Remark}[c.Name]
		return textCell(b.styles.fill, text), text
	}
	v := row[c.index]
	switch {
	case v.IsNum:
		return steady.Cell{Style: b.styles.number(c.Column, v.Number), Number: v.Number, IsNumber: true}, ""
	case c.Kind == report.Blank:
		return textCell(b.styles.fill, v.Words), v.Words
	case !c.IsText():
		return steady.Cell{Style: b.styles.count}, ""
	}
	text := v.Words
	if c.Name == "cell" || c.Name == "evidence" {
		text = fewCells(text)
	}
	if t.Name == "register" && (c.Name == "source" || c.Name == "limits") {
		text = report.Shorten(text, 100) // in full among the rules
	}
	style := b.styles.text
	switch {
	case c.width == narrow:
		style = b.styles.outcome(text)
	case c.Name == "grade" || c.Name == "verdict" || c.Name == "outcome":
		style = b.styles.grade(text)
	case c.onPaper:
		style = b.styles.long
	}
	if link := b.link(t, c.Column, row, text); link != "" {
		return steady.Cell{Style: b.styles.link, Formula: link, Text: report.CellText(text)}, text
	}
	return textCell(style, text), text
}

func textCell(style int, text string) steady.Cell {
	return steady.Cell{Style: style, Text: report.CellText(text)}
}

// maxCells is how many cells of a finding a sheet lists; all are in findings.csv.
const maxCells = 6

// fewCells shortens a long list of cells.
func fewCells(list string) string {
	cells := strings.Split(list, "; ")
	if len(cells) <= maxCells+1 {
		return list
	}
	return strings.Join(cells[:maxCells], "; ") + fmt.Sprintf("; and %d more", len(cells)-maxCells)
}

func value(t report.Table, row []report.Value, name string) report.Value {
	if i := t.Column(name); i >= 0 {
		return row[i]
	}
	return report.Value{}
}

// answers are those offered in the disposition column.
var answers = []string{"accepted", "fixed", "wrong because ..."}

// dress adds what a sheet needs beside its cells: the list of dispositions, and
// a line between the sites of the visit list.
func (b *builder) dress(t report.Table, cols []sheetColumn, rows int) error {
	for i, c := range cols {
		letters, err := excelize.ColumnNumberToName(i + 1)
		if err != nil {
			return err
		}
		switch {
		case c.Name == "disposition" && rows > 0:
			v := excelize.NewDataValidation(true)
			v.Sqref = fmt.Sprintf("%s%d:%s%d", letters, headerRow+1, letters, headerRow+rows)
			if err := v.SetDropList(answers); err != nil {
				return err
			}
			v.ShowErrorMessage = false // any text may be typed
			if err := b.file.AddDataValidation(t.Title, v); err != nil {
				return err
			}
		case t.Name == "visits" && c.Name == "site" && rows > 1:
			last, err := excelize.CoordinatesToCellName(len(cols), headerRow+rows)
			if err != nil {
				return err
			}
			style, err := b.file.NewConditionalStyle(&excelize.Style{Border: []excelize.Border{{Type: "top", Color: "12343B", Style: 1}}})
			if err != nil {
				return err
			}
			if err := b.file.SetConditionalFormat(t.Title, fmt.Sprintf("A%d:%s", headerRow+2, last), []excelize.ConditionalFormatOptions{
				{Type: "formula", Criteria: fmt.Sprintf("$%[1]s%[2]d<>$%[1]s%[3]d", letters, headerRow+2, headerRow+1), Format: &style}}); err != nil {
				return err
			}
		}
	}
	return nil
}

// link returns a HYPERLINK formula for the cells of a finding and for its rule.
func (b *builder) link(t report.Table, c report.Column, row []report.Value, text string) string {
	switch {
	case t.Name == "findings" && c.Name == "cell":
		file, sheet := value(t, row, "file").Words, value(t, row, "sheet").Words
		copied, ok := b.marked[file]
		first, _, _ := strings.Cut(value(t, row, "cell").Words, ";")
		switch {
		case !ok || first == "" || strings.Contains(first, " "):
			return ""
		case sheet == "": // a text file, whose copy has one sheet behind that of the findings
			return hyperlink(copied, text)
		}
		return hyperlink(copied+"#'"+strings.ReplaceAll(sheet, "'", "''")+"'!"+first, text)
	case c.Name == "rule" && t.Name != "rules":
		if at, ok := b.rules[value(t, row, "rule").Words]; ok {
			return hyperlink(fmt.Sprintf("#'%s'!A%d", rulesSheet, at), text)
		}
	}
	return ""
}

// hyperlink writes the formula; a target or text over 255 characters cannot be one.
func hyperlink(target, text string) string {
	if len(target) > 250 || len(text) > 250 {
		return ""
	}
	quote := func(s string) string { return `"` + strings.ReplaceAll(report.CellText(s), `"`, `""`) + `"` }
	return "HYPERLINK(" + quote(target) + "," + quote(text) + ")"
}
