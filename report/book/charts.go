package book

import (
	"fmt"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
)

// figuresColumn is where the figures of the charts stand, right of what is printed.
const figuresColumn = 14

// pageRows is how many rows of usual height a page of the summary takes, so
// that no chart is cut in two: measured in LibreOffice, some kept free.
const pageRows = 76

// charts draws the three charts below a row, from a new page on, and returns
// the last row that they cover.
func (b *builder) charts(row int) int {
	a := b.audit
	list := []struct {
		title   string
		series  []string
		bars    []report.Bar
		kind    excelize.ChartType
		colours []string
		format  string
	}{
		{"Sites by risk (score, 0 to 100)", []string{"score"}, a.BySite(10), excelize.Bar, []string{"2D5D62"}, "0.0"},
		{"Findings by rule", []string{"danger", "fault", "caution", "unknown"}, a.ByRule(), excelize.BarStacked, []string{"B3261E", "E08E2B", "D9BE2B", "9AA5B1"}, "0;;"},
		{"Load against rating, fullest first (W)", []string{"load", "rating"}, a.Loads(12), excelize.Bar, []string{"E08E2B", "9AA5B1"}, "0.##"},
	}
	last := row - 1
	top := 0 // the first row of the page
	for _, c := range list {
		if len(c.bars) == 0 || b.err != nil {
			continue
		}
		height := 70 + len(c.bars)*20*min(len(c.series), 2)
		if len(c.series) == 4 { // stacked: one bar each
			height = 90 + len(c.bars)*22
		}
		rows := max(height/20+2, len(c.bars)+3)
		if top == 0 || row+rows-top > pageRows {
			top = row
			b.err = b.file.InsertPageBreak(summarySheet, fmt.Sprintf("A%d", row))
		}
		b.figures(row, c.title, c.series, c.bars)
		b.chart(row, c.title, c.series, len(c.bars), c.kind, c.colours, c.format, height)
		row += rows
		last = row - 1
	}
	return last
}

// figures writes the figures of a chart.
func (b *builder) figures(row int, title string, series []string, bars []report.Bar) {
	set := func(col, row, style int, v any) {
		cell, err := excelize.CoordinatesToCellName(col, row)
		if b.err == nil {
			b.err = err
		}
		if b.err == nil {
			b.err = b.file.SetCellValue(summarySheet, cell, v)
		}
		if b.err == nil {
			b.err = b.file.SetCellStyle(summarySheet, cell, cell, style)
		}
	}
	letters, err := excelize.ColumnNumberToName(figuresColumn)
	if b.err == nil {
		b.err = err
	}
	if b.err == nil {
		b.err = b.file.SetColWidth(summarySheet, letters, letters, 38)
	}
	set(figuresColumn, row, b.styles.header, title)
	for i, s := range series {
		set(figuresColumn+1+i, row, b.styles.header, s)
	}
	for i, bar := range bars {
		set(figuresColumn, row+1+i, b.styles.text, report.Shorten(report.Plain(bar.Label), 44))
		for k, v := range bar.Parts {
			set(figuresColumn+1+k, row+1+i, b.styles.chart, rounded(v))
		}
	}
}

// chart draws horizontal bars with their figures beside them.
func (b *builder) chart(row int, title string, series []string, n int, kind excelize.ChartType, colours []string, format string, height int) {
	ink := &excelize.Font{Size: 8, Color: "1F2933", Family: "Liberation Sans"}
	gap := uint(40)
	chart := &excelize.Chart{
		Type: kind, Title: excelize.ChartTitle{Paragraph: []excelize.RichTextRun{{Text: title, Font: &excelize.Font{Size: 12, Bold: true, Color: "12343B", Family: "Liberation Sans"}}}},
		Dimension: excelize.ChartDimension{Width: 880, Height: uint(height)},
		Legend:    excelize.ChartLegend{Position: "bottom", Font: ink},
		PlotArea:  excelize.ChartPlotArea{ShowVal: true, NumFmt: excelize.ChartNumFmt{CustomNumFmt: format}},
		XAxis:     excelize.ChartAxis{ReverseOrder: true, Font: *ink},
		YAxis:     excelize.ChartAxis{Font: *ink, MajorGridLines: true, NumFmt: excelize.ChartNumFmt{CustomNumFmt: "0"}},
		GapWidth:  &gap,
		Format:    excelize.GraphicOptions{OffsetX: 2, OffsetY: 4},
	}
	if len(series) == 1 {
		chart.Legend.Position = "none"
	}
	at := func(col, row int) string {
		cell, err := excelize.CoordinatesToCellName(col, row, true)
		if b.err == nil {
			b.err = err
		}
		return cell
	}
	for i := range series {
		col := figuresColumn + 1 + i
		chart.Series = append(chart.Series, excelize.ChartSeries{
			Name:       summarySheet + "!" + at(col, row),
			Categories: summarySheet + "!" + at(figuresColumn, row+1) + ":" + at(figuresColumn, row+n),
			Values:     summarySheet + "!" + at(col, row+1) + ":" + at(col, row+n),
			Fill:       solid(colours[i]),
			DataLabel:  excelize.ChartDataLabel{Font: *ink},
		})
	}
	if b.err == nil {
		b.err = b.file.AddChart(summarySheet, fmt.Sprintf("A%d", row), chart)
	}
}
