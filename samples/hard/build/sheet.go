package main

import (
	"strconv"
	"strings"
	"time"
	"unicode/utf16"

	"github.com/xuri/excelize/v2"
	"golang.org/x/text/encoding/charmap"
)

// page is one sheet being written.
type page struct {
	f    *excelize.File
	name string
}

// newBook starts a workbook whose first sheet has the given name.
func newBook(first string) page {
	f := excelize.NewFile()
	must(f.SetSheetName("Sheet1", first))
	return page{f, first}
}

// sheet adds a sheet to the workbook of p.
func (p page) sheet(name string) page {
	_, err := p.f.NewSheet(name)
	must(err)
	return page{p.f, name}
}

// marks stand for characters that would not be seen in this source.
var marks = strings.NewReplacer("⏎", "\n", "⍽", "\u00a0", "␠", " ")

// put writes a block from the given cell on: a line a row, cells parted by bars, an empty line an empty row, a leading apostrophe for text.
// Blanks around a cell are dropped (␠ keeps one); what looks like a plain number becomes one.
func (p page) put(cell, block string) {
	col, row, err := excelize.CellNameToCoordinates(cell)
	must(err)
	for i, line := range strings.Split(strings.Trim(block, "\n"), "\n") {
		for j, text := range strings.Split(line, "|") {
			text = strings.TrimSpace(text)
			if text == "" {
				continue
			}
			at, err := excelize.CoordinatesToCellName(col+j, row+i)
			must(err)
			must(p.f.SetCellValue(p.name, at, value(text)))
		}
	}
}

func value(text string) any {
	if rest, ok := strings.CutPrefix(text, "'"); ok {
		return marks.Replace(rest)
	}
	if n, err := strconv.ParseFloat(text, 64); err == nil && strings.Trim(text, "0123456789.-") == "" {
		return n
	}
	return marks.Replace(text)
}

// merge joins areas such as "A5:C5".
func (p page) merge(areas ...string) {
	for _, a := range areas {
		from, to, _ := strings.Cut(a, ":")
		must(p.f.MergeCell(p.name, from, to))
	}
}

// dress gives areas one style.
func (p page) dress(style excelize.Style, areas ...string) {
	id, err := p.f.NewStyle(&style)
	must(err)
	for _, a := range areas {
		from, to, ok := strings.Cut(a, ":")
		if !ok {
			to = from
		}
		must(p.f.SetCellStyle(p.name, from, to, id))
	}
}

// strike draws a line through whole cells.
func (p page) strike(areas ...string) {
	p.dress(excelize.Style{Font: &excelize.Font{Strike: true}}, areas...)
}

// bold marks headings, as a hand would.
func (p page) bold(areas ...string) {
	p.dress(excelize.Style{Font: &excelize.Font{Bold: true}}, areas...)
}

// colour fills cells.
func (p page) colour(rgb string, areas ...string) {
	p.dress(excelize.Style{Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{rgb}}}, areas...)
}

// corrected writes a cell whose first part is struck out and whose second part was typed behind it.
func (p page) corrected(cell, old, now string) {
	must(p.f.SetCellRichText(p.name, cell, []excelize.RichTextRun{
		{Text: marks.Replace(old), Font: &excelize.Font{Strike: true}},
		{Text: marks.Replace(now), Font: &excelize.Font{Bold: true}},
	}))
}

// format gives areas a number format.
func (p page) format(format string, areas ...string) {
	p.dress(excelize.Style{CustomNumFmt: &format}, areas...)
}

// date writes the calendar day that a spreadsheet made of something like 1/2.
func (p page) date(cell string, year int, month time.Month, day int, format string) {
	must(p.f.SetCellValue(p.name, cell, time.Date(year, month, day, 0, 0, 0, 0, time.UTC)))
	p.format(format, cell)
}

// formula writes a formula without a stored value.
func (p page) formula(cell, text string) {
	must(p.f.SetCellFormula(p.name, cell, text))
}

// hide hides rows by hand.
func (p page) hide(rows ...int) {
	for _, r := range rows {
		must(p.f.SetRowVisible(p.name, r, false))
	}
}

// filtered leaves a filter on: the area, its column and the value shown, and the rows that the filter hides.
func (p page) filtered(area, column, shown string, rows ...int) {
	must(p.f.AutoFilter(p.name, area, []excelize.AutoFilterOptions{{Column: column, Expression: "x == " + shown}}))
	p.hide(rows...)
}

// note puts a comment on a cell.
func (p page) note(cell, text string) {
	must(p.f.AddComment(p.name, excelize.Comment{Cell: cell, Author: "site", Paragraph: []excelize.RichTextRun{{Text: text}}}))
}

// dos returns text with the line ends of a DOS file.
func dos(text string) string {
	return strings.ReplaceAll(marks.Replace(strings.TrimPrefix(text, "\n")), "\n", "\r\n")
}

// windows1252 encodes text as western Windows programs do.
func windows1252(text string) []byte {
	data, err := charmap.Windows1252.NewEncoder().Bytes([]byte(text))
	must(err)
	return data
}

// latin1 encodes text in ISO-8859-1.
func latin1(text string) []byte {
	data, err := charmap.ISO8859_1.NewEncoder().Bytes([]byte(text))
	must(err)
	return data
}

// unicode16 encodes text as little-endian UTF-16 with its mark, as "Unicode text" is saved.
func unicode16(text string) []byte {
	data := []byte{0xff, 0xfe}
	for _, u := range utf16.Encode([]rune(text)) {
		data = append(data, byte(u), byte(u>>8))
	}
	return data
}
