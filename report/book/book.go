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

// Write writes the workbook. Marked says which files have a marked copy, as
// a path relative to the workbook; findings link to it.
func Write(w io.Writer, a *report.Audit, marked map[string]string) error {
	f := excelize.NewFile()
	defer f.Close()
	b := &builder{file: f, audit: a, marked: marked, rules: map[string]int{}, later: map[string]steady.Rows{}}
	if err := b.build(); err != nil {
		return err
	}
	return steady.Write(w, f, b.later)
}

type builder struct {
	file   *excelize.File
	audit  *report.Audit
	marked map[string]string
	rules  map[string]int // the row of each rule on the sheet of rules
	styles styles
	err    error
	notes  []string               // what did not fit
	later  map[string]steady.Rows // the rows of sheets, by name
}

// lead lists the tables that come first, by reader.
var lead = map[report.Reader][]string{
	report.Service:    {"findings", "visits", "sites", "first", "questions"},
	report.Bid:        {"questions", "findings", "undersized", "disagreements", "completeness"},
	report.Compliance: {"overview", "register", "findings", "not-examined", "files", "rules", "passed"},
}

// rulesSheet is where the links of rules lead.
const rulesSheet = "Rules and sources"

// order returns the tables in the order of the sheets.
func (b *builder) order() []report.Table {
	all := b.audit.SheetTables()
	place := func(name string) int {
		if i := slices.Index(lead[b.audit.For], name); i >= 0 {
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
	row := headerRow
	for r := range b.audit.RulesTable().Rows {
		row++
		b.rules[r[0].Words] = row
	}
	var empty []string
	for _, t := range b.order() {
		if t.Count == 0 && t.Name != "findings" {
			empty = append(empty, t.Title)
			continue
		}
		if err := b.table(t); err != nil {
			return fmt.Errorf("sheet %q: %w", t.Title, err)
		}
	}
	if len(empty) > 0 {
		b.notes = append(b.notes, "Sheets with nothing to list are left out: "+strings.Join(empty, ", ")+".")
	}
	if err := b.summary(); err != nil {
		return fmt.Errorf("sheet \"Summary\": %w", err)
	}
	return b.file.SetDocProps(&excelize.DocProperties{Title: report.Title, Creator: "lineaudit", Created: "2000-01-01T00:00:00Z", Modified: "2000-01-01T00:00:00Z"})
}

// page sets up printing: A4 (a printer fits it to Letter), as wide as the
// paper, the header repeated on every page.
func (b *builder) page(sheet, orientation string, headerRow int) error {
	size, one, zero := 9, 1, 0
	fit := true
	if err := b.file.SetSheetProps(sheet, &excelize.SheetPropsOptions{FitToPage: &fit}); err != nil {
		return err
	}
	if err := b.file.SetPageLayout(sheet, &excelize.PageLayoutOptions{Size: &size, Orientation: &orientation, FitToWidth: &one, FitToHeight: &zero}); err != nil {
		return err
	}
	right := "lineaudit"
	if b.audit.Date != "" {
		right += ", " + b.audit.Date
	}
	if err := b.file.SetHeaderFooter(sheet, &excelize.HeaderFooterOptions{OddHeader: "&L&A&R" + right, OddFooter: "&LPaper audit: confirm on site&RPage &P of &N"}); err != nil {
		return err
	}
	margin, edge, head := 0.4, 0.7, 0.3
	if err := b.file.SetPageMargins(sheet, &excelize.PageLayoutMarginsOptions{Left: &margin, Right: &margin, Top: &edge, Bottom: &edge, Header: &head, Footer: &head}); err != nil {
		return err
	}
	if headerRow == 0 {
		return nil
	}
	return b.file.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Titles", Scope: sheet,
		RefersTo: fmt.Sprintf("'%s'!$%d:$%d", sheet, headerRow, headerRow)})
}
