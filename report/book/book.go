// Package book writes audit.xlsx, the audit for people who live in spreadsheets.
package book

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
	"lineaudit/report/steady"
)

// maxRows is how many rows of a table fit on a sheet; a longer table stays a data file.
const maxRows = 1_000_000

// maxText is how many characters a cell may hold.
const maxText = 32767

// Write writes the workbook. Marked says which files have a marked copy, as
// a path relative to the workbook; findings link to it.
func Write(w io.Writer, a *report.Audit, marked map[string]string) error {
	f := excelize.NewFile()
	defer f.Close()
	b := &builder{file: f, audit: a, marked: marked}
	if err := b.build(); err != nil {
		return fmt.Errorf("audit.xlsx: %w", err)
	}
	if err := steady.Write(w, f); err != nil {
		return fmt.Errorf("audit.xlsx: %w", err)
	}
	return nil
}

type builder struct {
	file   *excelize.File
	audit  *report.Audit
	marked map[string]string
	styles styles
	err    error
	notes  []string // what did not fit
}

// lead lists the tables that come first, by reader.
var lead = map[report.Reader][]string{
	report.Service:    {"findings", "sites", "visits", "first"},
	report.Bid:        {"findings", "questions", "remedies", "first"},
	report.Compliance: {"register", "findings", "passed", "files"},
}

// order returns the tables in the order of the sheets.
func (b *builder) order() []report.Table {
	a := b.audit
	all := []report.Table{a.FindingsTable(), a.SitesTable(), a.VisitsTable(), a.FirstTable(), a.QuestionsTable(), a.ChannelsTable(), a.ControlsTable(),
		a.AmplifiersTable(), a.LinesTable(), a.ZonesTable(), a.LoudspeakersTable(), a.RemediesTable(), a.RegisterTable(), a.PassedTable(),
		a.AssumptionsTable(), a.RowsTable(), a.FilesTable(), a.RulesTable()}
	place := func(name string) int {
		if i := slices.Index(lead[a.For], name); i >= 0 {
			return i
		}
		return len(all) + slices.IndexFunc(all, func(t report.Table) bool { return t.Name == name })
	}
	slices.SortStableFunc(all, func(x, y report.Table) int { return place(x.Name) - place(y.Name) })
	return all
}

func (b *builder) build() error {
	if err := b.makeStyles(); err != nil {
		return err
	}
	if err := b.file.SetSheetName("Sheet1", "Summary"); err != nil {
		return err
	}
	for _, t := range b.order() {
		if err := b.table(t); err != nil {
			return fmt.Errorf("sheet %q: %w", t.Title, err)
		}
	}
	if err := b.summary(); err != nil {
		return fmt.Errorf("sheet \"Summary\": %w", err)
	}
	b.file.SetActiveSheet(0)
	return b.file.SetDocProps(&excelize.DocProperties{Title: "Audit of loudspeaker lines", Creator: "lineaudit", Created: "2000-01-01T00:00:00Z", Modified: "2000-01-01T00:00:00Z"})
}

// A sheetColumn is a column of a sheet: one of the table's, or one that the reader fills.
type sheetColumn struct {
	report.Column
	index int // into the table's columns; -1 for a column that the reader fills
}

// printed lists the columns that go on paper, in order; the others stand to
// their right. Tables that are not listed are printed whole.
var printed = map[string][]string{
	"findings":     {"rank", "grade", "site", "place", "file", "cell", "message", "remedy", "disposition", "remark"},
	"channels":     {"job", "amplifier", "channel", "line_v", "rated_w", "load_w", "load_pct", "free_w", "expected_ohm", "verdict", "sum"},
	"controls":     {"job", "control", "zone", "rated_w", "load_w", "load_pct", "free_w", "expected_ohm", "verdict", "sum"},
	"lines":        {"job", "line", "zone", "length_m", "area_mm2", "material", "load_w", "line_v", "loop_ohm", "loss_far_db", "loss_even_db", "loss_worst_db", "verdict"},
	"zones":        {"job", "zone", "loudspeakers", "load_w", "expected_ohm", "sum"},
	"remedies":     {"kind", "place", "change", "before", "after", "unit", "effect", "part"},
	"rules":        {"rule", "title", "limits", "source", "silent"},
	"files":        {"file", "kind", "job", "site", "revision", "superseded", "rows_read", "rows_left_out", "reason"},
	"loudspeakers": {"job", "zone", "room", "tag", "model", "count", "tap_w", "tap_v", "line_v", "control", "amplifier", "channel", "status", "rows"},
}

// columns returns the columns of a sheet in order, and how many are printed.
func columns(t report.Table) (cols []sheetColumn, onPaper int) {
	for i, c := range t.Columns {
		if !c.Data {
			cols = append(cols, sheetColumn{c, i})
		}
	}
	if t.Name == "findings" {
		cols = append(cols, sheetColumn{report.Column{Name: "disposition", Label: "Disposition", Width: 16}, -1},
			sheetColumn{report.Column{Name: "remark", Label: "Remark", Width: 24, Kind: report.Long}, -1},
			sheetColumn{report.Column{Name: "id", Label: "Id", Width: 14}, slices.IndexFunc(t.Columns, func(c report.Column) bool { return c.Name == "id" })})
	}
	first := printed[t.Name]
	if first == nil {
		return cols, len(cols)
	}
	place := func(c sheetColumn) int {
		if i := slices.Index(first, c.Name); i >= 0 {
			return i
		}
		return len(first)
	}
	slices.SortStableFunc(cols, func(x, y sheetColumn) int { return place(x) - place(y) })
	return cols, len(first)
}

// table writes one table to a sheet of its own, row by row.
func (b *builder) table(t report.Table) error {
	if _, err := b.file.NewSheet(t.Title); err != nil {
		return err
	}
	if err := b.page(t.Title, headerRow); err != nil {
		return err
	}
	cols, onPaper := columns(t)
	if err := b.dispositionList(t, cols); err != nil {
		return err
	}
	s, err := b.file.NewStreamWriter(t.Title)
	if err != nil {
		return err
	}
	for i, c := range cols {
		if err := s.SetColWidth(i+1, i+1, width(c.Column)); err != nil {
			return err
		}
	}
	if err := s.SetPanes(&excelize.Panes{Freeze: true, YSplit: headerRow, TopLeftCell: "A5", ActivePane: "bottomLeft"}); err != nil {
		return err
	}
	header := make([]any, len(cols))
	for i, c := range cols {
		header[i] = excelize.Cell{StyleID: b.styles.head(c.Column), Value: heading(c.Column)}
	}
	for _, row := range []struct {
		cell  string
		cells []any
		opts  excelize.RowOpts
	}{
		{"A1", []any{excelize.Cell{StyleID: b.styles.title, Value: t.Title}}, excelize.RowOpts{Height: 24}},
		{"A2", []any{excelize.Cell{StyleID: b.styles.note, Value: t.Note}}, excelize.RowOpts{}},
		{"A4", header, excelize.RowOpts{Height: 30}},
	} {
		if err := s.SetRow(row.cell, row.cells, row.opts); err != nil {
			return err
		}
	}
	n := 0
	for row := range t.Rows {
		if n == maxRows {
			b.notes = append(b.notes, fmt.Sprintf("%s has more than %d rows; the rest is in %s.csv.", t.Title, maxRows, t.Name))
			break
		}
		n++
		if err := s.SetRow(fmt.Sprintf("A%d", headerRow+n), b.cells(t, row, cols)); err != nil {
			return err
		}
	}
	if n == 0 {
		if err := s.SetRow("A5", []any{excelize.Cell{StyleID: b.styles.note, Value: "Nothing to list."}}); err != nil {
			return err
		}
	} else {
		last, err := excelize.CoordinatesToCellName(len(cols), headerRow+n)
		if err != nil {
			return err
		}
		if err := s.AddTable(&excelize.Table{Range: "A4:" + last, Name: "t_" + t.Name, ShowRowStripes: new(bool)}); err != nil {
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

// headerRow is the row of the column headings.
const headerRow = 4

// heading is the words above a column, with its unit.
func heading(c report.Column) string {
	if c.Unit == "" {
		return c.Label
	}
	return c.Label + " (" + c.Unit + ")"
}

func width(c report.Column) float64 { return float64(max(c.Width, min(len(heading(c)), 12)) + 2) }

// cells turns the values of a row into styled cells.
func (b *builder) cells(t report.Table, row []report.Value, cols []sheetColumn) []any {
	out := make([]any, len(cols))
	for i, c := range cols {
		if c.index < 0 {
			d := b.audit.Dispositions[value(t, row, "id").Words]
			text := d.Decision
			if c.Name == "remark" {
				text = d.Remark
			}
			out[i] = excelize.Cell{StyleID: b.styles.fill, Value: filled(text)}
			continue
		}
		v := row[c.index]
		cell := excelize.Cell{StyleID: b.styles.of(c.Column)}
		switch {
		case v.IsNum:
			cell.Value = v.Number
		case v.Words != "":
			cell.Value = clip(v.Words)
		}
		if c.Name == "grade" || c.Name == "verdict" || c.Name == "outcome" {
			cell.StyleID = b.styles.grade(v.Words)
		}
		if link := b.link(t, c.Column, row); link != "" {
			cell.Formula, cell.StyleID = link, b.styles.link
		}
		out[i] = cell
	}
	return out
}

// filled is a text for a cell, nothing for none.
func filled(s string) any {
	if s == "" {
		return nil
	}
	return clip(s)
}

// clip cuts a text to what a cell can hold and drops what XML cannot.
func clip(s string) string {
	s = strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' && r != '\t' || r == 0xFFFE || r == 0xFFFF {
			return -1
		}
		return r
	}, s)
	return report.Shorten(s, maxText)
}

func value(t report.Table, row []report.Value, name string) report.Value {
	if i := slices.IndexFunc(t.Columns, func(c report.Column) bool { return c.Name == name }); i >= 0 {
		return row[i]
	}
	return report.Value{}
}

// answers are those offered in the disposition column.
var answers = []string{"accepted", "fixed", "wrong because ..."}

// dispositionList offers the usual answers as a drop-down list; any text may be typed.
func (b *builder) dispositionList(t report.Table, cols []sheetColumn) error {
	at := slices.IndexFunc(cols, func(c sheetColumn) bool { return c.Name == "disposition" })
	if at < 0 {
		return nil
	}
	col, err := excelize.ColumnNumberToName(at + 1)
	if err != nil {
		return err
	}
	v := excelize.NewDataValidation(true)
	v.Sqref = fmt.Sprintf("%s5:%s%d", col, col, maxRows+4)
	if err := v.SetDropList(answers); err != nil {
		return err
	}
	v.SetError(excelize.DataValidationErrorStyleInformation, "Disposition", "accepted, fixed, or wrong because ...")
	return b.file.AddDataValidation(t.Title, v)
}

// link returns a HYPERLINK formula for the cells of a finding and for its rule.
func (b *builder) link(t report.Table, c report.Column, row []report.Value) string {
	if t.Name != "findings" {
		return ""
	}
	switch c.Name {
	case "cell":
		file, sheet := value(t, row, "file").Words, value(t, row, "sheet").Words
		copied, ok := b.marked[file]
		cells := value(t, row, "cell").Words
		first, _, _ := strings.Cut(cells, ";")
		if !ok || first == "" || strings.Contains(first, " ") {
			return ""
		}
		if sheet == "" {
			sheet = "Sheet1"
		}
		return hyperlink(copied+"#'"+strings.ReplaceAll(sheet, "'", "''")+"'!"+first, cells)
	case "rule":
		i := slices.IndexFunc(b.ruleNames(), func(n string) bool { return n == value(t, row, "rule").Words })
		if i < 0 {
			return ""
		}
		return hyperlink(fmt.Sprintf("#'Rules and sources'!A%d", i+5), value(t, row, "rule").Words)
	}
	return ""
}

func (b *builder) ruleNames() []string {
	var names []string
	for row := range b.audit.RulesTable().Rows {
		names = append(names, row[0].Words)
	}
	return names
}

// hyperlink writes the formula; a target or text over 255 characters cannot be one.
func hyperlink(target, text string) string {
	if len(target) > 250 || len(text) > 250 {
		return ""
	}
	quote := func(s string) string { return `"` + strings.ReplaceAll(clip(s), `"`, `""`) + `"` }
	return "HYPERLINK(" + quote(target) + "," + quote(text) + ")"
}

// page sets up printing: landscape A4, as wide as the paper, the header repeated on every page.
func (b *builder) page(sheet string, headerRows int) error {
	landscape, size, one, zero := "landscape", 9, 1, 0
	fit := true
	if err := b.file.SetSheetProps(sheet, &excelize.SheetPropsOptions{FitToPage: &fit}); err != nil {
		return err
	}
	if err := b.file.SetPageLayout(sheet, &excelize.PageLayoutOptions{Size: &size, Orientation: &landscape, FitToWidth: &one, FitToHeight: &zero}); err != nil {
		return err
	}
	if err := b.file.SetHeaderFooter(sheet, &excelize.HeaderFooterOptions{OddHeader: "&L&A&Rlineaudit", OddFooter: "&LPaper audit: confirm on site&RPage &P of &N"}); err != nil {
		return err
	}
	margin, edge := 0.4, 0.6
	if err := b.file.SetPageMargins(sheet, &excelize.PageLayoutMarginsOptions{Left: &margin, Right: &margin, Top: &edge, Bottom: &edge}); err != nil {
		return err
	}
	if headerRows == 0 {
		return nil
	}
	return b.file.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", Scope: sheet,
		RefersTo: fmt.Sprintf("'%s'!$%d:$%d", sheet, headerRows, headerRows)})
}
