// Package housebook writes the firm's own book as a workbook to fill in: an
// empty one with explanations, and the one that an audit leaves behind, with
// the models and questions that the schedules left open.
package housebook

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
	"lineaudit/report/steady"
)

// A Form is what the sheets of a house book look like; the reader of house
// books says so.
type Form struct {
	Sheets  []string                    // in order
	Columns func(sheet string) []string // of a sheet, in order
	Fields  []string                    // what a header may mean
	Rules   []string
	Uses    []string
}

// A Row is one row of a sheet: the cells that are known, by column, and a
// note for the reader, which stands right of the last column.
type Row struct {
	Cells map[string]string
	Note  string
}

// An Extra is a sheet that the reader of house books passes over: what to ask,
// which schedules disagree.
type Extra struct {
	Name    string
	Columns []string
	Widths  []float64
	Rows    [][]string
}

// about says what each sheet is for.
var about = map[string]string{
	"names":   "What the firm's own words mean. kind header: a column header means a field. kind value: a text in a cell means another text, in one field if one is named. files: a pattern such as rink*.xlsx, blank for all.",
	"limits":  "The firm's own limits. limit is caution, fault, danger or the name of a setting; unit as in the list of rules; use is any, music, paging or emergency. off as a value switches a limit off.",
	"ratings": "What a model carries or offers where schedules do not say. kind is loudspeaker, control or amplifier. taps_w lists the taps, such as 10; 5; 2.5. A column for one line voltage ends in it: rated_w_70v, rated_w_100v, taps_w_70v.",
	"waivers": "Findings that are accepted as they are: the rule, the job or place, the reason, and who decided it.",
}

// examples are rows of our own, to be written over; their models exist nowhere.
var examples = map[string][]Row{
	"names":   {{Cells: map[string]string{"kind": "header", "written": "Setting on site", "means": "tap"}}, {Cells: map[string]string{"kind": "value", "written": "std", "means": "5 W", "field": "tap", "files": "rink*.xlsx"}}},
	"limits":  {{Cells: map[string]string{"rule": "headroom-short", "limit": "caution", "value": "75", "unit": "% of rating", "use": "any", "source": "our own rule"}}},
	"ratings": {{Cells: map[string]string{"model": "EXAMPLE-35", "kind": "control", "rated_w": "35", "box_depth_mm": "60"}}, {Cells: map[string]string{"model": "EXAMPLE-CEIL", "kind": "loudspeaker", "taps_w": "10; 5; 2.5; 1.25"}}},
	"waivers": {{Cells: map[string]string{"rule": "headroom-short", "job": "Example job", "reason": "no growth is planned", "by": "service manager"}}},
}

// Empty writes an empty house book with explanations, drop-down lists and a
// sheet of examples, which is not read.
func Empty(w io.Writer, form Form) error {
	rows := map[string][]Row{}
	return write(w, form, rows, nil, "An empty house book. The green rows of the sheet \"examples\" show how each sheet is filled.")
}

// Filled writes a house book with rows that are partly known, to be answered.
func Filled(w io.Writer, form Form, rows map[string][]Row, extras []Extra, intro string) error {
	return write(w, form, rows, extras, intro)
}

func write(w io.Writer, form Form, rows map[string][]Row, extras []Extra, intro string) error {
	f := excelize.NewFile()
	defer f.Close()
	b := &builder{file: f, form: form, lines: map[string]map[int]int{}}
	b.title = b.style(&excelize.Style{Font: sans(15, true, "12343B")})
	b.head = b.style(&excelize.Style{Font: sans(10, true, "FFFFFF"), Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{"2D5D62"}}})
	b.wrap = b.style(&excelize.Style{Font: sans(10, false, "1F2933"), Alignment: &excelize.Alignment{WrapText: true, Vertical: "top"}})
	b.example = b.style(&excelize.Style{Font: sans(10, false, "1F2933"), Alignment: &excelize.Alignment{WrapText: true, Vertical: "top"}, Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{"DDEFE0"}}})
	b.note = b.style(&excelize.Style{Alignment: &excelize.Alignment{WrapText: true, Vertical: "top"}, Font: sans(10, false, "52606D")})
	b.readMe(intro)
	for _, sheet := range form.Sheets {
		b.sheet(sheet, rows[sheet])
	}
	for _, x := range extras {
		b.extra(x)
	}
	b.exampleSheet()
	b.finish()
	if b.err != nil {
		return fmt.Errorf("house book: %w", b.err)
	}
	return steady.Write(w, f, nil)
}

type builder struct {
	file                             *excelize.File
	form                             Form
	title, head, wrap, example, note int
	lines                            map[string]map[int]int // of text in each row of a sheet
	err                              error
}

func sans(size float64, bold bool, colour string) *excelize.Font {
	return &excelize.Font{Family: "Liberation Sans", Size: size, Bold: bold, Color: colour}
}

// do keeps the first error.
func (b *builder) do(err error) {
	if b.err == nil {
		b.err = err
	}
}

func (b *builder) style(s *excelize.Style) int {
	id, err := b.file.NewStyle(s)
	b.do(err)
	return id
}

func (b *builder) put(sheet string, col, row, style int, text string) {
	cell, err := excelize.CoordinatesToCellName(col, row)
	b.do(err)
	b.do(b.file.SetCellStr(sheet, cell, report.CellText(text)))
	b.do(b.file.SetCellStyle(sheet, cell, cell, style))
	if style == b.title {
		return
	}
	letters, err := excelize.ColumnNumberToName(col)
	b.do(err)
	width, err := b.file.GetColWidth(sheet, letters)
	b.do(err)
	if b.lines[sheet] == nil {
		b.lines[sheet] = map[int]int{}
	}
	b.lines[sheet][row] = max(b.lines[sheet][row], report.Lines(text, width-1))
}

// finish makes rows as high as their texts and fits every sheet to the width of the paper.
func (b *builder) finish() {
	landscape, size, one, zero, fit := "landscape", 9, 1, 0, true
	for _, sheet := range b.file.GetSheetList() {
		for row, n := range b.lines[sheet] {
			if n > 1 {
				b.do(b.file.SetRowHeight(sheet, row, min(float64(n)*13+3, 409)))
			}
		}
		b.do(b.file.SetSheetProps(sheet, &excelize.SheetPropsOptions{FitToPage: &fit}))
		b.do(b.file.SetPageLayout(sheet, &excelize.PageLayoutOptions{Size: &size, Orientation: &landscape, FitToWidth: &one, FitToHeight: &zero}))
	}
}

func (b *builder) readMe(intro string) {
	const sheet = "read me"
	b.do(b.file.SetSheetName("Sheet1", sheet))
	b.do(b.file.SetColWidth(sheet, "A", "A", 18))
	b.do(b.file.SetColWidth(sheet, "B", "B", 110))
	b.put(sheet, 1, 1, b.title, "House book")
	b.put(sheet, 2, 2, b.wrap, intro+" Hand it to the audit with --house. Columns and sheets may stand in any order; this sheet and those with other names are not read.")
	row := 4
	for _, s := range b.form.Sheets {
		b.put(sheet, 1, row, b.wrap, s)
		b.put(sheet, 2, row, b.wrap, about[s])
		row++
	}
	row++
	b.put(sheet, 1, row, b.wrap, "fields")
	b.put(sheet, 2, row, b.wrap, strings.Join(b.form.Fields, ", "))
	b.put(sheet, 1, row+1, b.wrap, "rules")
	b.put(sheet, 2, row+1, b.wrap, strings.Join(b.form.Rules, ", "))
}

// sheet writes one sheet: its columns, what is known, drop-down lists.
func (b *builder) sheet(name string, rows []Row) {
	_, err := b.file.NewSheet(name)
	b.do(err)
	columns := b.form.Columns(name)
	for i, c := range columns {
		letters, err := excelize.ColumnNumberToName(i + 1)
		b.do(err)
		b.do(b.file.SetColWidth(name, letters, letters, max(12, float64(len(c))+4)))
		b.put(name, i+1, 1, b.head, c)
		b.list(name, letters, c)
	}
	last, err := excelize.ColumnNumberToName(len(columns) + 1)
	b.do(err)
	if slices.ContainsFunc(rows, func(r Row) bool { return r.Note != "" }) {
		b.do(b.file.SetColWidth(name, last, last, 70))
		b.put(name, len(columns)+1, 1, b.head, "remark")
	}
	for k, r := range rows {
		for i, c := range columns {
			if v := r.Cells[c]; v != "" {
				b.put(name, i+1, k+2, b.wrap, v)
			}
		}
		if r.Note != "" {
			b.put(name, len(columns)+1, k+2, b.note, r.Note)
		}
	}
	b.do(b.file.SetPanes(name, &excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"}))
}

// extra writes a sheet for the reader alone.
func (b *builder) extra(x Extra) {
	_, err := b.file.NewSheet(x.Name)
	b.do(err)
	for i, c := range x.Columns {
		letters, err := excelize.ColumnNumberToName(i + 1)
		b.do(err)
		b.do(b.file.SetColWidth(x.Name, letters, letters, x.Widths[i]))
		b.put(x.Name, i+1, 1, b.head, c)
	}
	for k, row := range x.Rows {
		for i, v := range row {
			if v != "" {
				b.put(x.Name, i+1, k+2, b.wrap, v)
			}
		}
	}
	b.do(b.file.SetPanes(x.Name, &excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"}))
}

// list offers the words that a column takes.
func (b *builder) list(sheet, letters, column string) {
	var words []string
	switch {
	case sheet == "names" && column == "kind":
		words = []string{"header", "value"}
	case sheet == "ratings" && column == "kind":
		words = []string{"loudspeaker", "control", "amplifier"}
	case column == "use":
		words = b.form.Uses
	case sheet == "limits" && column == "limit":
		words = []string{"caution", "fault", "danger"}
	case column == "rule":
		b.reference(sheet, letters, "rules", b.form.Rules)
		return
	case sheet == "names" && (column == "means" || column == "field"):
		b.reference(sheet, letters, "fields", b.form.Fields)
		return
	default:
		return
	}
	v := b.validation(letters)
	b.do(v.SetDropList(words))
	b.do(b.file.AddDataValidation(sheet, v))
}

// reference offers a list that is too long to stand in the validation itself.
func (b *builder) reference(sheet, letters, list string, words []string) {
	const lists = "lists"
	if i, _ := b.file.GetSheetIndex(lists); i < 0 {
		_, err := b.file.NewSheet(lists)
		b.do(err)
		b.do(b.file.SetSheetVisible(lists, false))
	}
	col := 1
	if list == "fields" {
		col = 2
	}
	for i, w := range words {
		b.put(lists, col, i+1, b.wrap, w)
	}
	letter, err := excelize.ColumnNumberToName(col)
	b.do(err)
	v := b.validation(letters)
	v.SetSqrefDropList(fmt.Sprintf("%s!$%s$1:$%s$%d", lists, letter, letter, len(words)))
	b.do(b.file.AddDataValidation(sheet, v))
}

// validation is a list that suggests and does not forbid.
func (b *builder) validation(letters string) *excelize.DataValidation {
	v := excelize.NewDataValidation(true)
	v.Sqref = letters + "2:" + letters + "2000"
	v.ShowErrorMessage = false
	return v
}

func (b *builder) exampleSheet() {
	const sheet = "examples"
	_, err := b.file.NewSheet(sheet)
	b.do(err)
	b.do(b.file.SetColWidth(sheet, "A", "J", 18))
	row := 1
	for _, s := range b.form.Sheets {
		b.put(sheet, 1, row, b.title, "sheet "+s)
		for i, c := range b.form.Columns(s) {
			b.put(sheet, i+1, row+1, b.head, c)
			for k, r := range examples[s] {
				b.put(sheet, i+1, row+2+k, b.example, r.Cells[c])
			}
		}
		row += 4 + len(examples[s])
	}
}
