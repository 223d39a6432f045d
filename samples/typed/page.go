package typed

import (
	"strconv"
	"strings"
	"time"
	"unicode/utf16"

	"github.com/xuri/excelize/v2"
	"golang.org/x/text/encoding/charmap"
)

// Page is one sheet being written.
type Page struct {
	File *excelize.File
	Name string
}

// NewBook starts a workbook whose first sheet has the given name.
func NewBook(first string) Page {
	f := excelize.NewFile()
	Must(f.SetSheetName("Sheet1", first))
	return Page{f, first}
}

// Sheet adds a sheet to the workbook of p.
func (p Page) Sheet(name string) Page {
	_, err := p.File.NewSheet(name)
	Must(err)
	return Page{p.File, name}
}

// Marks stand for characters that would not be seen in this source.
var Marks = strings.NewReplacer("⏎", "\n", "⍽", "\u00a0", "␠", " ")

// Put writes a block from the given cell on: a line a row, cells parted by bars, an empty line an empty row, a leading apostrophe for text.
// Blanks around a cell are dropped (␠ keeps one); what looks like a plain number becomes one.
func (p Page) Put(cell, block string) {
	col, row, err := excelize.CellNameToCoordinates(cell)
	Must(err)
	for i, line := range strings.Split(strings.Trim(block, "\n"), "\n") {
		for j, text := range strings.Split(line, "|") {
			text = strings.TrimSpace(text)
			if text == "" {
				continue
			}
			at, err := excelize.CoordinatesToCellName(col+j, row+i)
			Must(err)
			Must(p.File.SetCellValue(p.Name, at, Value(text)))
		}
	}
}

// Value is what a hand typed: a plain number is a number, the rest text.
func Value(text string) any {
	if rest, ok := strings.CutPrefix(text, "'"); ok {
		return Marks.Replace(rest)
	}
	if n, err := strconv.ParseFloat(text, 64); err == nil && strings.Trim(text, "0123456789.-") == "" {
		return n
	}
	return Marks.Replace(text)
}

// Merge joins areas such as "A5:C5".
func (p Page) Merge(areas ...string) {
	for _, a := range areas {
		from, to, _ := strings.Cut(a, ":")
		Must(p.File.MergeCell(p.Name, from, to))
	}
}

// Dress gives areas one style.
func (p Page) Dress(style excelize.Style, areas ...string) {
	id, err := p.File.NewStyle(&style)
	Must(err)
	for _, a := range areas {
		from, to, ok := strings.Cut(a, ":")
		if !ok {
			to = from
		}
		Must(p.File.SetCellStyle(p.Name, from, to, id))
	}
}

// Strike draws a line through whole cells.
func (p Page) Strike(areas ...string) {
	p.Dress(excelize.Style{Font: &excelize.Font{Strike: true}}, areas...)
}

// Bold Marks headings, as a hand would.
func (p Page) Bold(areas ...string) {
	p.Dress(excelize.Style{Font: &excelize.Font{Bold: true}}, areas...)
}

// Colour fills cells.
func (p Page) Colour(rgb string, areas ...string) {
	p.Dress(excelize.Style{Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{rgb}}}, areas...)
}

// Corrected writes a cell whose first part is struck out and whose second part was typed behind it.
func (p Page) Corrected(cell, old, now string) {
	Must(p.File.SetCellRichText(p.Name, cell, []excelize.RichTextRun{
		{Text: Marks.Replace(old), Font: &excelize.Font{Strike: true}},
		{Text: Marks.Replace(now), Font: &excelize.Font{Bold: true}},
	}))
}

// Format gives areas a number format.
func (p Page) Format(format string, areas ...string) {
	p.Dress(excelize.Style{CustomNumFmt: &format}, areas...)
}

// Date writes the calendar day that a spreadsheet made of something like 1/2.
func (p Page) Date(cell string, year int, month time.Month, day int, format string) {
	Must(p.File.SetCellValue(p.Name, cell, time.Date(year, month, day, 0, 0, 0, 0, time.UTC)))
	p.Format(format, cell)
}

// Formula writes a formula without a stored value.
func (p Page) Formula(cell, text string) {
	Must(p.File.SetCellFormula(p.Name, cell, text))
}

// Hide hides rows by hand.
func (p Page) Hide(rows ...int) {
	for _, r := range rows {
		Must(p.File.SetRowVisible(p.Name, r, false))
	}
}

// Filtered leaves a filter on: the area, its column and the value shown, and the rows that the filter hides.
func (p Page) Filtered(area, column, shown string, rows ...int) {
	Must(p.File.AutoFilter(p.Name, area, []excelize.AutoFilterOptions{{Column: column, Expression: "x == " + shown}}))
	p.Hide(rows...)
}

// Note puts a comment on a cell.
func (p Page) Note(cell, text string) {
	Must(p.File.AddComment(p.Name, excelize.Comment{Cell: cell, Author: "site", Paragraph: []excelize.RichTextRun{{Text: text}}}))
}

// DOS returns text with the line ends of a DOS file.
func DOS(text string) string {
	return strings.ReplaceAll(Marks.Replace(strings.TrimPrefix(text, "\n")), "\n", "\r\n")
}

// Windows1252 encodes text as western Windows programs do.
func Windows1252(text string) []byte {
	data, err := charmap.Windows1252.NewEncoder().Bytes([]byte(text))
	Must(err)
	return data
}

// Latin1 encodes text in ISO-8859-1.
func Latin1(text string) []byte {
	data, err := charmap.ISO8859_1.NewEncoder().Bytes([]byte(text))
	Must(err)
	return data
}

// Unicode16 encodes text as little-endian UTF-16 with its mark, as "Unicode text" is saved.
func Unicode16(text string) []byte {
	data := []byte{0xff, 0xfe}
	for _, u := range utf16.Encode([]rune(text)) {
		data = append(data, byte(u), byte(u>>8))
	}
	return data
}
