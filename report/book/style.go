package book

import (
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
)

// styles are the style numbers of the workbook.
type styles struct {
	title, note, header, headerRight, text, long, count, figure, link, fill, label, big int
	grades                                                                              map[string]int
}

// of is the style of a column's cells.
func (s styles) of(c report.Column) int {
	switch c.Kind {
	case report.Long:
		return s.long
	case report.Count:
		return s.count
	case report.Figures:
		return s.figure
	}
	return s.text
}

// head is the style of a column's heading.
func (s styles) head(c report.Column) int {
	if c.Kind == report.Count || c.Kind == report.Figures {
		return s.headerRight
	}
	return s.header
}

// grade is the style of a grade's or verdict's word; the word stays the sign.
func (s styles) grade(word string) int {
	for _, g := range []string{"danger", "fault", "caution", "unknown", "not met", "cannot be shown", "not shown", "passed", "met"} {
		if strings.HasSuffix(word, g) {
			return s.grades[g]
		}
	}
	return s.text
}

func (b *builder) makeStyles() error {
	make := func(s *excelize.Style) int {
		id, err := b.file.NewStyle(s)
		if err != nil && b.err == nil {
			b.err = err
		}
		return id
	}
	top := &excelize.Alignment{Vertical: "top"}
	wrap := &excelize.Alignment{Vertical: "top", WrapText: true}
	line := []excelize.Border{{Type: "bottom", Color: "D9DEE3", Style: 1}}
	font := func(size float64, bold bool, colour string) *excelize.Font {
		return &excelize.Font{Family: "Liberation Sans", Size: size, Bold: bold, Color: colour}
	}
	body := font(10, false, "1F2933")
	plain := "0.00"
	b.styles = styles{
		title:       make(&excelize.Style{Font: font(16, true, "12343B")}),
		note:        make(&excelize.Style{Font: font(10, false, "52606D")}),
		header:      make(&excelize.Style{Font: font(10, true, "FFFFFF"), Fill: solid("2D5D62"), Alignment: &excelize.Alignment{Vertical: "center", WrapText: true}}),
		headerRight: make(&excelize.Style{Font: font(10, true, "FFFFFF"), Fill: solid("2D5D62"), Alignment: &excelize.Alignment{Horizontal: "right", Vertical: "center", WrapText: true}}),
		text:        make(&excelize.Style{Font: body, Alignment: top, Border: line}),
		long:        make(&excelize.Style{Font: body, Alignment: wrap, Border: line}),
		count:       make(&excelize.Style{Font: body, Alignment: top, Border: line, NumFmt: 1}),
		figure:      make(&excelize.Style{Font: body, Alignment: top, Border: line, CustomNumFmt: &plain}),
		link:        make(&excelize.Style{Font: &excelize.Font{Family: "Liberation Sans", Size: 10, Color: "0B5C8A", Underline: "single"}, Alignment: top, Border: line}),
		fill:        make(&excelize.Style{Font: body, Alignment: wrap, Border: line, Fill: solid("FBF7E9")}),
		label:       make(&excelize.Style{Font: font(10, true, "1F2933"), Alignment: top}),
		big:         make(&excelize.Style{Font: font(20, true, "12343B"), Alignment: &excelize.Alignment{Horizontal: "left"}}),
		grades:      map[string]int{},
	}
	for _, c := range [][3]string{{"danger", "8C1C13", "F6D5D1"}, {"fault", "8A4B08", "FBE3C8"}, {"caution", "6B5900", "FBF3C4"},
		{"unknown", "3E4C59", "E4E7EB"}, {"not met", "8C1C13", "F6D5D1"}, {"cannot be shown", "3E4C59", "E4E7EB"}, {"not shown", "3E4C59", "E4E7EB"},
		{"passed", "1E5631", "DDEFE0"}, {"met", "1E5631", "DDEFE0"}} {
		b.styles.grades[c[0]] = make(&excelize.Style{Font: font(10, true, c[1]), Fill: solid(c[2]), Alignment: top, Border: line})
	}
	return b.err
}

func solid(colour string) excelize.Fill {
	return excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{colour}}
}
