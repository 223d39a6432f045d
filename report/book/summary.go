package book

import (
	"cmp"
	"fmt"
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
)

const summarySheet = "Summary"

// The summary is a page upright, of twelve narrow columns: a sign, a head, a
// text and what to do, each over some of them.
const (
	summaryColumns = 12
	columnWidth    = 10.0
)

// bands are the columns of a line of a block, from and to, counted from 1.
var bands = [4][2]int{{1, 1}, {2, 4}, {5, 9}, {10, 12}}

// summary fills the first sheet: the counts, what to do first, what was not
// examined, and on the pages behind it three charts.
func (b *builder) summary() error {
	f, a := b.file, b.audit
	if err := b.page(summarySheet, "portrait", 0); err != nil {
		return err
	}
	if err := f.SetColWidth(summarySheet, "A", "L", columnWidth); err != nil {
		return err
	}
	hide := false
	if err := f.SetSheetView(summarySheet, -1, &excelize.ViewOptions{ShowGridLines: &hide}); err != nil {
		return err
	}
	b.put(1, 1, summaryColumns, b.styles.title, report.Title, 26)
	b.wrapped(2, b.styles.noteWrapped, a.Counted())
	b.wrapped(3, b.styles.noteWrapped, b.colophon())
	b.tiles(5)
	row := 8
	for _, block := range a.FirstPage() {
		row = b.block(row, block)
	}
	if len(b.notes) > 0 {
		items := make([]report.Item, len(b.notes))
		for i, n := range b.notes {
			items[i].Text = n
		}
		row = b.block(row, report.Block{Title: "What this workbook does not hold", Items: items})
	}
	row++
	row = b.wrapped(row, b.styles.noteWrapped, report.PaperCaution)
	if a.For == report.Compliance {
		row = b.signature(row + 1)
	}
	last := b.charts(row + 1)
	if b.err == nil {
		b.err = f.SetDefinedName(&excelize.DefinedName{Name: "_xlnm.Print_Area", Scope: summarySheet,
			RefersTo: fmt.Sprintf("'%s'!$A$1:$L$%d", summarySheet, last)})
	}
	return b.err
}

// colophon says for whom, when and with what the audit was made.
func (b *builder) colophon() string {
	a := b.audit
	parts := []string{"Date: " + cmp.Or(a.Date, "____________"), "lineaudit " + a.Version, "for " + string(a.For)}
	if a.House != "" {
		parts = append(parts, "house book "+a.House)
	}
	if a.For == report.Compliance {
		parts = append(parts, "limits in force and their sources: sheet "+rulesSheet, "input files with their SHA-256: sheet Files")
	}
	return strings.Join(parts, "   ·   ")
}

// put writes a text over columns of a row.
func (b *builder) put(row, from, to, style int, v any, height float64) {
	first, err1 := excelize.CoordinatesToCellName(from, row)
	last, err2 := excelize.CoordinatesToCellName(to, row)
	steps := []func() error{func() error { return err1 }, func() error { return err2 }}
	if s, ok := v.(string); ok {
		v = report.CellText(s)
	}
	if v != "" && v != nil {
		steps = append(steps, func() error { return b.file.SetCellValue(summarySheet, first, v) })
	}
	steps = append(steps, func() error { return b.file.SetCellStyle(summarySheet, first, last, style) })
	if to > from {
		steps = append(steps, func() error { return b.file.MergeCell(summarySheet, first, last) })
	}
	if height > 0 {
		steps = append(steps, func() error { return b.file.SetRowHeight(summarySheet, row, min(height, 409)) })
	}
	for _, step := range steps {
		if b.err == nil {
			b.err = step()
		}
	}
}

// wrapped writes a text over the whole width and returns the next row.
func (b *builder) wrapped(row, style int, text string) int {
	lines := report.Lines(text, summaryColumns*columnWidth-3)
	b.put(row, 1, summaryColumns, style, text, float64(lines)*lineHeight+3)
	return row + 1
}

// tiles shows the counts, two columns each.
func (b *builder) tiles(row int) {
	n := b.audit.Archive.Counts
	for i, x := range []struct {
		name, style string
		n           int
	}{{"danger", "danger", n.Danger}, {"fault", "fault", n.Fault}, {"caution", "caution", n.Caution}, {"unknown", "unknown", n.Unknown},
		{"checks passed", "passed", n.Passed}, {"not shown", "", n.Unshown}} {
		from := 1 + 2*i
		b.put(row, from, from+1, b.styles.tiles[x.style], x.n, 32)
		b.put(row+1, from, from+1, b.styles.tile, x.name, 18)
	}
}

// block writes one part of the first page and returns the row behind it.
func (b *builder) block(row int, block report.Block) int {
	b.put(row, 1, summaryColumns, b.styles.block, block.Title, 24)
	row++
	for _, item := range block.Items {
		row = b.item(row, item)
	}
	if block.More != "" {
		b.put(row, 2, summaryColumns, b.styles.note, block.More, 16)
		row++
	}
	return row
}

// item writes one line; texts take the room that the other parts leave free.
func (b *builder) item(row int, item report.Item) int {
	text := bands[2]
	if item.Do == "" {
		text[1] = bands[3][1]
	}
	if item.Head == "" {
		text[0] = bands[1][0]
		if item.Sign == "" {
			text[0] = bands[0][0]
		}
	}
	lines := 1
	write := func(band [2]int, style int, s string) {
		lines = max(lines, report.Lines(s, float64(band[1]-band[0]+1)*columnWidth-1.5))
		b.put(row, band[0], band[1], style, s, 0)
	}
	if item.Sign != "" || item.Head != "" {
		style := b.styles.sign
		if g := b.styles.grade(item.Sign); g != b.styles.long {
			style = g
		}
		write(bands[0], style, item.Sign)
	}
	if item.Head != "" {
		write(bands[1], b.styles.head, item.Head)
	}
	write(text, b.styles.body, item.Text)
	if item.Do != "" {
		write(bands[3], b.styles.do, item.Do)
	}
	if b.err == nil {
		b.err = b.file.SetRowHeight(summarySheet, row, min(float64(lines)*lineHeight+4, 409))
	}
	return row + 1
}

// signature leaves room for a date, a name and a hand.
func (b *builder) signature(row int) int {
	for _, x := range []struct {
		from, to int
		label    string
	}{{1, 3, "Date: " + b.audit.Date}, {5, 8, "Name:"}, {9, 12, "Signature:"}} {
		b.put(row, x.from, x.to, b.styles.head, x.label, 40)
	}
	return row + 1
}
