package marked

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/report"
)

// headingRow is the row of the headings of the findings sheet; the first
// finding stands below it.
const headingRow = 4

const findingsTitle = "What an audit found in this workbook"

// WithoutFindings returns a book without the findings sheets that earlier
// audits put into it, for a marked copy may come back as the schedule itself.
func WithoutFindings(b *grid.Book) *grid.Book {
	ours := func(s *grid.Sheet) bool {
		return len(s.Rows) > 0 && s.Rows[0].Number == 1 && s.Rows[0].Len() > 0 && s.Rows[0].At(0).Text == findingsTitle
	}
	if !slices.ContainsFunc(b.Sheets, ours) {
		return b
	}
	out := *b
	out.Sheets = slices.DeleteFunc(slices.Clone(b.Sheets), ours)
	return &out
}

// findingColumns are the columns of the findings sheet. The last one is for
// whoever answers.
var findingColumns = []struct {
	heading string
	width   float64 // in digits
	text    func(finding) string
}{
	{"No.", 5, nil},
	{"Grade", 11, gradeWords},
	{"Cell", 18, place},
	{"Place", 20, func(f finding) string { return f.place }},
	{"What was found", 44, func(f finding) string { return f.message }},
	{"Remedy", 36, func(f finding) string { return f.remedy }},
	{"Limit from", 30, func(f finding) string { return f.source }},
	{"Rule", 18, func(f finding) string { return f.rule }},
	{"Answer", 20, func(finding) string { return "" }},
}

// The columns that are written in a way of their own.
const (
	gradeColumn = 1
	cellColumn  = 2
)

// place is sheet and cell as people write them.
func place(f finding) string {
	if f.at.Sheet() == "" {
		return cmp.Or(f.at.Cell(), "the whole file")
	}
	if cell := f.at.Cell(); cell != "" {
		return f.at.Sheet() + "!" + cell
	}
	return f.at.Sheet()
}

const explanation = "Marked cells carry a note: red danger, orange fault, yellow caution, grey cannot be shown. Nothing else in the workbook was changed. " +
	"A schedule is paper: confirm on site; local codes and a licensed practitioner decide."

const lineHeight = 13.5 // points

// A sheetWriter writes the rows of a worksheet; its texts stand in the cells
// themselves, so that no other part has to change.
type sheetWriter struct {
	b strings.Builder
}

func (w *sheetWriter) open(row int, height float64) {
	fmt.Fprintf(&w.b, `<row r="%d" ht="%g" customHeight="1">`, row, min(height, 409))
}

func (w *sheetWriter) text(row, col, style int, s string) {
	if s == "" {
		fmt.Fprintf(&w.b, `<c r="%s" s="%d"/>`, cellName(row, col), style)
		return
	}
	fmt.Fprintf(&w.b, `<c r="%s" s="%d" t="inlineStr"><is><t xml:space="preserve">%s</t></is></c>`, cellName(row, col), style, cellText(s))
}

func (w *sheetWriter) close() { w.b.WriteString(`</row>`) }

// band writes one text over the whole width.
func (w *sheetWriter) band(row, style int, s string, width float64) {
	w.open(row, float64(report.Lines(s, width))*lineHeight+4)
	w.text(row, 1, style, s)
	w.close()
}

// findingsSheet writes the worksheet part of the findings.
func findingsSheet(fs []finding, b *workbook, l looks, names map[string]string, note string, windows int) []byte {
	var w sheetWriter
	w.b.WriteString(xmlHead + `<worksheet xmlns="` + mainNamespace(b.strict) + `"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews>`)
	for i := range windows {
		fmt.Fprintf(&w.b, `<sheetView showGridLines="0" tabSelected="1" workbookViewId="%[1]d"><pane ySplit="%[2]d" topLeftCell="A%[3]d" activePane="bottomLeft" state="frozen"/></sheetView>`, i, headingRow, headingRow+1)
	}
	w.b.WriteString(`</sheetViews><cols>`)
	total := 0.0
	for i, c := range findingColumns {
		fmt.Fprintf(&w.b, `<col min="%d" max="%d" width="%g" customWidth="1"/>`, i+1, i+1, c.width)
		total += c.width
	}
	w.b.WriteString(`</cols><sheetData>`)
	w.open(1, 24)
	w.text(1, 1, l.title, findingsTitle)
	w.close()
	w.band(2, l.note, explanation, total)
	merged := []int{2}
	if note = strings.TrimSpace(note); note != "" {
		w.band(3, l.note, note, total)
		merged = append(merged, 3)
	}
	w.open(headingRow, 20)
	for i, c := range findingColumns {
		w.text(headingRow, i+1, l.head, c.heading)
	}
	w.close()
	sheets := b.sheetNames()
	for i, f := range fs {
		w.finding(headingRow+1+i, f, l, sheets, names)
	}
	last := headingRow + len(fs)
	for _, caution := range cautions(fs) {
		last++
		w.band(last, l.note, caution, total)
		merged = append(merged, last)
	}
	fmt.Fprintf(&w.b, `</sheetData><autoFilter ref="A%d:%s"/><mergeCells count="%d">`, headingRow, cellName(headingRow+max(1, len(fs)), len(findingColumns)), len(merged))
	for _, row := range merged {
		fmt.Fprintf(&w.b, `<mergeCell ref="A%d:%s"/>`, row, cellName(row, len(findingColumns)))
	}
	w.b.WriteString(`</mergeCells><pageMargins left="0.4" right="0.4" top="0.6" bottom="0.6" header="0.3" footer="0.3"/><pageSetup paperSize="9" orientation="landscape" fitToHeight="0"/>` +
		`<headerFooter><oddFooter>&amp;LPaper audit: confirm on site&amp;RPage &amp;P of &amp;N</oddFooter></headerFooter></worksheet>`)
	return []byte(w.b.String())
}

// finding writes one row.
func (w *sheetWriter) finding(row int, f finding, l looks, sheets []string, names map[string]string) {
	lines := 1
	for _, c := range findingColumns {
		if c.text != nil {
			lines = max(lines, report.Lines(c.text(f), c.width-1))
		}
	}
	w.open(row, float64(lines)*lineHeight+3)
	fmt.Fprintf(&w.b, `<c r="A%d" s="%d"><v>%d</v></c>`, row, l.number, f.number)
	for k, c := range findingColumns[1:] {
		col := k + 2
		s := report.CellText(c.text(f))
		target := linkTarget(f, sheets, names)
		switch {
		case col-1 == gradeColumn:
			w.text(row, col, l.grade[f.grade], s)
		case col-1 == cellColumn && target != "" && len(s) < 250:
			fmt.Fprintf(&w.b, `<c r="%s" s="%d" t="str"><f>HYPERLINK(%s,%s)</f><v>%s</v></c>`, cellName(row, col), l.link, escape(quoted(target)), escape(quoted(s)), escape(s))
		case col == len(findingColumns):
			w.text(row, col, l.answer, s)
		default:
			w.text(row, col, l.wrap, s)
		}
	}
	w.close()
}

// linkTarget is where the cell of a finding leads, "" when no link can.
func linkTarget(f finding, sheets []string, names map[string]string) string {
	name := f.at.Sheet()
	if names != nil {
		name = names[name]
	}
	if f.at.Row == 0 || f.at.Row > maxSheetRows || name == "" || !slices.Contains(sheets, name) || len(name) > 200 {
		return ""
	}
	return "#" + quoteSheet(name) + "!" + cellName(int(f.at.Row), max(1, int(f.at.Col)))
}

// cautions are the cautions of all findings, each once.
func cautions(fs []finding) []string {
	var out []string
	for _, f := range fs {
		for _, c := range f.caution {
			if !slices.Contains(out, c) {
				out = append(out, c)
			}
		}
	}
	return out
}

// quoted writes a text as a string inside a formula.
func quoted(s string) string { return `"` + strings.ReplaceAll(s, `"`, `""`) + `"` }
