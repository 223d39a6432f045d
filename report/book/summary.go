package book

import (
	"fmt"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
)

// summary fills the first sheet: what was read, the counts, the worst sites,
// what to fix first, three charts.
func (b *builder) summary() error {
	const sheet = "Summary"
	f, a := b.file, b.audit
	if err := b.page(sheet, 0); err != nil {
		return err
	}
	put := func(cell string, style int, v any) {
		if b.err == nil {
			b.err = f.SetCellValue(sheet, cell, v)
		}
		if b.err == nil && style != 0 {
			b.err = f.SetCellStyle(sheet, cell, cell, style)
		}
	}
	for col, w := range map[string]float64{"A": 30, "B": 13, "C": 13, "D": 13, "E": 13, "F": 13, "G": 60} {
		if err := f.SetColWidth(sheet, col, col, w); err != nil {
			return err
		}
	}
	n := a.Archive.Counts
	put("A1", b.styles.title, "Audit of loudspeaker lines")
	put("A2", b.styles.note, fmt.Sprintf("%s at %s, from %s", report.Plural(n.Jobs, "job"), report.Plural(len(a.Archive.Sites), "site"), report.Plural(len(a.Files), "file")))
	date := a.Date
	if date == "" {
		date = "____________"
	}
	put("A3", b.styles.note, "Date: "+date+"    Program: lineaudit "+a.Version+"    Written for: "+string(a.For))
	for i, x := range []struct {
		name string
		n    int
	}{{"danger", n.Danger}, {"fault", n.Fault}, {"caution", n.Caution}, {"unknown", n.Unknown}} {
		col := string(rune('B' + i))
		put(col+"5", b.styles.grade(x.name), x.name)
		put(col+"6", b.styles.big, x.n)
	}
	put("A5", b.styles.label, "Findings")
	put("A6", b.styles.note, "current jobs only")
	row := 8
	line := func(label string, v any) {
		put(fmt.Sprintf("A%d", row), b.styles.label, label)
		put(fmt.Sprintf("B%d", row), b.styles.count, v)
		row++
	}
	line("Checks passed", n.Passed)
	line("Checks that could not be shown", n.Unshown)
	line("Questions", n.Questions)
	line("Jobs superseded", n.Superseded)
	line("Loudspeakers", n.Loudspeakers)
	line("Controls", n.Controls)
	line("Channels", n.Channels)
	line("Lines", n.Lines)
	row++
	put(fmt.Sprintf("A%d", row), b.styles.note, "A schedule is paper: this says what was written, not what was built. Line voltages are hazardous; heat and emergency messages concern")
	row++
	put(fmt.Sprintf("A%d", row), b.styles.note, "people. Local codes and a licensed practitioner decide. A rule of thumb is marked as one; see the sheet Rules and sources.")
	row++
	for _, note := range b.notes {
		put(fmt.Sprintf("A%d", row), b.styles.note, note)
		row++
	}
	row++
	row = b.bars(put, row, "Sites by risk", []string{"Score"}, a.BySite(10), excelize.Bar, []string{"2D5D62"})
	row = b.bars(put, row, "Findings by rule", []string{"danger", "fault", "caution", "unknown"}, a.ByRule(), excelize.BarStacked, []string{"B3261E", "E08E2B", "E6CF4A", "9AA5B1"})
	b.bars(put, row, "Load against rating, fullest first (W)", []string{"Load", "Rated"}, a.Loads(12), excelize.Bar, []string{"E08E2B", "9AA5B1"})
	return b.err
}

// bars writes the figures of a chart and the chart beside them, and returns the next free row.
func (b *builder) bars(put func(string, int, any), row int, title string, series []string, bars []report.Bar, kind excelize.ChartType, colours []string) int {
	if len(bars) == 0 || b.err != nil {
		return row
	}
	const sheet = "Summary"
	put(fmt.Sprintf("A%d", row), b.styles.header, title)
	for i, s := range series {
		put(fmt.Sprintf("%c%d", 'B'+i, row), b.styles.header, s)
	}
	for i, bar := range bars {
		put(fmt.Sprintf("A%d", row+1+i), b.styles.text, clip(bar.Label))
		for k, v := range bar.Parts {
			put(fmt.Sprintf("%c%d", 'B'+k, row+1+i), b.styles.figure, v)
		}
	}
	chart := &excelize.Chart{
		Type: kind, Title: excelize.ChartTitle{Paragraph: []excelize.RichTextRun{{Text: title, Font: &excelize.Font{Size: 12, Bold: true}}}},
		Dimension: excelize.ChartDimension{Width: 640, Height: uint(max(260, 90+len(bars)*26*min(len(series), 2)))},
		Legend:    excelize.ChartLegend{Position: "bottom"},
		YAxis:     excelize.ChartAxis{MajorGridLines: true},
		XAxis:     excelize.ChartAxis{ReverseOrder: true},
	}
	if len(series) == 1 {
		chart.Legend.Position = "none"
	}
	for i := range series {
		col := 'B' + i
		chart.Series = append(chart.Series, excelize.ChartSeries{
			Name:       fmt.Sprintf("%s!$%c$%d", sheet, col, row),
			Categories: fmt.Sprintf("%s!$A$%d:$A$%d", sheet, row+1, row+len(bars)),
			Values:     fmt.Sprintf("%s!$%c$%d:$%c$%d", sheet, col, row+1, col, row+len(bars)),
			Fill:       solid(colours[i]),
		})
	}
	if b.err == nil {
		b.err = b.file.AddChart(sheet, fmt.Sprintf("G%d", row), chart)
	}
	return row + max(len(bars)+3, int(chart.Dimension.Height)/20+2)
}
