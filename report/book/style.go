package book

import (
	"maps"
	"math"
	"slices"
	"strings"

	"github.com/xuri/excelize/v2"

	"lineaudit/report"
)

// styles are the style numbers of the workbook.
type styles struct {
	title, note, noteWrapped, header, headerCount, headerUpright, text, long, count, link, fill int
	figures                                                                                     [4]int // by decimals
	block, head, body, do, sign, tile, chart                                                    int    // of the summary
	grades, tiles, outcomes                                                                     map[string]int
}

// number is the style of a number: as many decimals as it needs, at most three
// figures that matter; decibels and scores always with theirs.
func (s styles) number(c report.Column, v float64) int {
	switch {
	case c.Kind == report.Count:
		return s.count
	case c.Unit == "dB":
		return s.figures[2]
	case c.Name == "score":
		return s.figures[1]
	}
	_, decimals, _ := strings.Cut(report.Figure(v), ".")
	return s.figures[min(len(decimals), 3)]
}

// grade is the style of a grade's or verdict's word; the word stays the sign.
func (s styles) grade(word string) int {
	for _, g := range []string{"danger", "fault", "caution", "unknown", "not met", "cannot be shown", "not shown", "passed", "met"} {
		if strings.HasSuffix(word, g) {
			return s.grades[g]
		}
	}
	return s.long
}

// outcome is the style of a letter of the overview.
func (s styles) outcome(letter string) int { return s.outcomes[letter] }

// colours are ink and wash of the words that are coloured.
var colours = map[string][2]string{"danger": {"8C1C13", "F6D5D1"}, "fault": {"8A4B08", "FBE3C8"}, "caution": {"6B5900", "FBF3C4"},
	"unknown": {"3E4C59", "E4E7EB"}, "not met": {"8C1C13", "F6D5D1"}, "cannot be shown": {"3E4C59", "E4E7EB"}, "not shown": {"3E4C59", "E4E7EB"},
	"passed": {"1E5631", "DDEFE0"}, "met": {"1E5631", "DDEFE0"}}

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
	right := &excelize.Alignment{Vertical: "top", Horizontal: "right"}
	line := []excelize.Border{{Type: "bottom", Color: "D9DEE3", Style: 1}}
	cell := append([]excelize.Border{{Type: "left", Color: "E9EDF0", Style: 1}}, line...)
	font := func(size float64, bold bool, colour string) *excelize.Font {
		return &excelize.Font{Family: "Liberation Sans", Size: size, Bold: bold, Color: colour}
	}
	body := font(10, false, "1F2933")
	b.styles = styles{
		title:         make(&excelize.Style{Font: font(16, true, "12343B")}),
		note:          make(&excelize.Style{Font: font(10, false, "52606D"), Alignment: top}),
		noteWrapped:   make(&excelize.Style{Font: font(10, false, "52606D"), Alignment: wrap}),
		headerCount:   make(&excelize.Style{Font: font(10, true, "FFFFFF"), Fill: solid("2D5D62"), Alignment: &excelize.Alignment{Horizontal: "center", Vertical: "top", WrapText: true}}),
		headerUpright: make(&excelize.Style{Font: font(10, true, "FFFFFF"), Fill: solid("2D5D62"), Alignment: &excelize.Alignment{Horizontal: "center", Vertical: "bottom", TextRotation: 90}}),
		header:        make(&excelize.Style{Font: font(10, true, "FFFFFF"), Fill: solid("2D5D62"), Alignment: &excelize.Alignment{Vertical: "top", WrapText: true}}),
		text:          make(&excelize.Style{Font: body, Alignment: top, Border: cell}),
		long:          make(&excelize.Style{Font: body, Alignment: wrap, Border: cell}),
		count:         make(&excelize.Style{Font: body, Alignment: right, Border: cell, CustomNumFmt: new("0_)_)")}),
		link:          make(&excelize.Style{Font: &excelize.Font{Family: "Liberation Sans", Size: 10, Color: "0B5C8A", Underline: "single"}, Alignment: wrap, Border: cell}),
		fill:          make(&excelize.Style{Font: body, Alignment: wrap, Border: cell, Fill: solid("FBF7E9")}),
		block:         make(&excelize.Style{Font: font(12, true, "12343B"), Alignment: &excelize.Alignment{Vertical: "bottom"}, Border: []excelize.Border{{Type: "bottom", Color: "2D5D62", Style: 2}}}),
		head:          make(&excelize.Style{Font: font(10, true, "1F2933"), Alignment: wrap, Border: line}),
		body:          make(&excelize.Style{Font: body, Alignment: wrap, Border: line}),
		do:            make(&excelize.Style{Font: body, Alignment: wrap, Border: line}),
		sign:          make(&excelize.Style{Font: font(10, true, "52606D"), Alignment: wrap, Border: line}),
		tile:          make(&excelize.Style{Font: font(10, true, "1F2933"), Fill: solid("E8F0F0"), Alignment: &excelize.Alignment{Horizontal: "center", WrapText: true, Vertical: "center"}}),
		chart:         make(&excelize.Style{Font: body, Alignment: top, CustomNumFmt: new("0.##")}),
		grades:        map[string]int{}, tiles: map[string]int{}, outcomes: map[string]int{},
	}
	for i, format := range []string{"0_)_)", "0.0_)_)", "0.00_)_)", "0.000_)_)"} {
		b.styles.figures[i] = make(&excelize.Style{Font: body, Alignment: right, Border: cell, CustomNumFmt: &format})
	}
	for _, g := range slices.Sorted(maps.Keys(colours)) { // in order: styles are numbered as they come
		c := colours[g]
		b.styles.grades[g] = make(&excelize.Style{Font: font(10, true, c[0]), Fill: solid(c[1]), Alignment: wrap, Border: cell})
		b.styles.tiles[g] = make(&excelize.Style{Font: font(20, true, c[0]), Fill: solid(c[1]), Alignment: &excelize.Alignment{Horizontal: "center", Vertical: "center"}})
	}
	centre := &excelize.Alignment{Horizontal: "center", Vertical: "top"}
	for _, o := range [][2]string{{"M", "met"}, {"N", "not met"}, {"?", "cannot be shown"}} {
		letter, word := o[0], o[1]
		b.styles.outcomes[letter] = make(&excelize.Style{Font: font(10, letter == "N", colours[word][0]), Fill: solid(colours[word][1]), Alignment: centre, Border: cell})
	}
	b.styles.outcomes[""] = make(&excelize.Style{Font: body, Alignment: centre, Border: cell})
	b.styles.tiles[""] = make(&excelize.Style{Font: font(20, true, "12343B"), Fill: solid("E8F0F0"), Alignment: &excelize.Alignment{Horizontal: "center", Vertical: "center"}})
	return b.err
}

func solid(colour string) excelize.Fill {
	return excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{colour}}
}

// rounded drops the decimals of a figure that no chart shows.
func rounded(v float64) float64 { return math.Round(v*100) / 100 }
