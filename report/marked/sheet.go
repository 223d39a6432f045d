package marked

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/ingest/grid"
	"lineaudit/report"
	"lineaudit/report/steady"
)

// firstRow is the row of the first finding on the findings sheet.
const firstRow = 5

// findingsTitle and the headings of the findings sheet.
const findingsTitle = "What an audit found in this workbook"

var headings = []string{"No.", "Grade", "Cell", "Place", "What was found", "Remedy", "Limit from", "Rule", "Cautions"}

var widths = []float64{6, 16, 18, 24, 48, 40, 28, 22, 36}

// row returns the cells of a finding in the order of the headings.
func (f finding) row() []string {
	return []string{"", gradeWords(f), place(f), f.place, f.message, f.remedy, f.source, f.rule, f.caution}
}

// place is sheet and cell as people write them.
func place(f finding) string {
	if f.at.Sheet == "" {
		return f.at.Cell()
	}
	if cell := f.at.Cell(); cell != "" {
		return f.at.Sheet + "!" + cell
	}
	return f.at.Sheet
}

const explanation = "Cells with a fill carry a note: pink danger, orange fault, yellow caution, grey cannot be shown. A schedule is paper: confirm on site; local codes and a licensed practitioner decide."

// findingsSheet writes the worksheet part of the findings; its texts stand in
// the cells themselves, so that no other part has to change.
func findingsSheet(fs []finding, strict bool, sheets []string, l looks) []byte {
	var b strings.Builder
	b.WriteString(xmlHead + `<worksheet xmlns="` + mainNamespace(strict) + `"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews><sheetView tabSelected="1" workbookViewId="0"><pane ySplit="4" topLeftCell="A5" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews><cols>`)
	for i, w := range widths {
		fmt.Fprintf(&b, `<col min="%d" max="%d" width="%g" customWidth="1"/>`, i+1, i+1, w)
	}
	b.WriteString(`</cols><sheetData>`)
	text := func(row, col, style int, s string) {
		if s != "" {
			fmt.Fprintf(&b, `<c r="%s" s="%d" t="inlineStr"><is><t xml:space="preserve">%s</t></is></c>`, cellName(row, col), style, escape(report.Shorten(s, 32000)))
		}
	}
	line := func(row, style int, cells ...string) {
		fmt.Fprintf(&b, `<row r="%d">`, row)
		for i, s := range cells {
			text(row, i+1, style, s)
		}
		b.WriteString(`</row>`)
	}
	line(1, l.bold, findingsTitle)
	line(2, 0, explanation)
	line(4, l.bold, headings...)
	for i, f := range fs {
		row := firstRow + i
		fmt.Fprintf(&b, `<row r="%d"><c r="A%d" s="%d"><v>%d</v></c>`, row, row, l.wrap, f.number)
		for k, s := range f.row()[1:] {
			if k == 1 && linkable(f, sheets) {
				target := "#" + quoteSheet(f.at.Sheet) + "!" + cellName(f.at.Row, max(1, f.at.Col))
				fmt.Fprintf(&b, `<c r="%s" s="%d" t="str"><f>HYPERLINK(%s,%s)</f><v>%s</v></c>`, cellName(row, k+2), l.wrap, escape(quoted(target)), escape(quoted(s)), escape(s))
				continue
			}
			text(row, k+2, l.wrap, s)
		}
		b.WriteString(`</row>`)
	}
	fmt.Fprintf(&b, `</sheetData><autoFilter ref="A4:%s"/><pageMargins left="0.4" right="0.4" top="0.6" bottom="0.6" header="0.3" footer="0.3"/><pageSetup paperSize="9" orientation="landscape" fitToHeight="0"/></worksheet>`,
		cellName(max(firstRow, firstRow+len(fs)-1), len(headings)))
	return []byte(b.String())
}

func linkable(f finding, sheets []string) bool {
	return f.at.Row > 0 && slices.Contains(sheets, f.at.Sheet) && len(place(f)) < 250 && len(f.at.Sheet) < 200
}

// quoted writes a text as a string inside a formula.
func quoted(s string) string { return `"` + strings.ReplaceAll(s, `"`, `""`) + `"` }

func cellName(row, col int) string { return grid.A1(row, col) }

// covers reports whether a reference such as "B3" or "A1:C4" holds a cell.
func covers(ref string, row, col int) bool {
	from, to, isRange := strings.Cut(ref, ":")
	r1, c1, err := grid.ParseA1(from)
	if err != nil {
		return false
	}
	r2, c2 := r1, c1
	if isRange {
		if r2, c2, err = grid.ParseA1(to); err != nil {
			return false
		}
	}
	return grid.Range{Row1: r1, Col1: c1, Row2: r2, Col2: c2}.Contains(row, col)
}

// alone writes a workbook that holds nothing but the findings of a file.
func alone(w io.Writer, book *grid.Book, fs []finding, why string) error {
	f := excelize.NewFile()
	defer f.Close()
	f.SetSheetName("Sheet1", "Findings")
	if err := fillFindings(f, "Findings", fs, why, nil); err != nil {
		return err
	}
	return steady.Write(w, f)
}

// fillFindings writes the findings sheet of a workbook of our own.
func fillFindings(f *excelize.File, name string, fs []finding, note string, sheets map[string]string) error {
	bold, _ := f.NewStyle(&excelize.Style{Font: &excelize.Font{Bold: true}})
	wrap, _ := f.NewStyle(&excelize.Style{Alignment: &excelize.Alignment{Vertical: "top", WrapText: true}})
	s, err := f.NewStreamWriter(name)
	if err != nil {
		return err
	}
	for i, w := range widths {
		if err := s.SetColWidth(i+1, i+1, w); err != nil {
			return err
		}
	}
	if err := s.SetPanes(&excelize.Panes{Freeze: true, YSplit: 4, TopLeftCell: "A5", ActivePane: "bottomLeft"}); err != nil {
		return err
	}
	s.SetRow("A1", []any{excelize.Cell{StyleID: bold, Value: findingsTitle}})
	s.SetRow("A2", []any{explanation})
	s.SetRow("A3", []any{clean(note)})
	head := make([]any, len(headings))
	for i, h := range headings {
		head[i] = excelize.Cell{StyleID: bold, Value: h}
	}
	s.SetRow("A4", head)
	for i, x := range fs {
		cells := []any{excelize.Cell{StyleID: wrap, Value: x.number}}
		for k, text := range x.row()[1:] {
			c := excelize.Cell{StyleID: wrap, Value: clean(text)}
			if target := sheets[x.at.Sheet]; k == 1 && target != "" && x.at.Row > 0 && len(text) < 200 {
				c.Formula = "HYPERLINK(" + quoted("#"+quoteSheet(target)+"!"+cellName(x.at.Row, max(1, x.at.Col))) + "," + quoted(clean(text)) + ")"
			}
			cells = append(cells, c)
		}
		if err := s.SetRow(fmt.Sprintf("A%d", firstRow+i), cells); err != nil {
			return err
		}
	}
	return s.Flush()
}

// clean makes a text fit for a cell.
func clean(s string) string {
	return report.Shorten(strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' && r != '\t' || r == 0xFFFE || r == 0xFFFF {
			return -1
		}
		return r
	}, s), 32767)
}
