package main

import (
	"lineaudit/samples/book"

	"github.com/xuri/excelize/v2"
)

// rink2 is a sheet that its office was proud of: two rows of headings, row
// totals as formulas, a chart, a plan, colours by value and a note on a cell.
//
// The two cabinets of 8 ohm sit on output 1 of a 100 V amplifier. The typed
// total of 196 W is wrong: 8 x 15 + 6 x 6 + 4 x 5 = 120 + 36 + 20 = 176 W.
// Output 1 carries 120 W and what the cabinets draw, output 2 carries 56 W of
// 120 W; VC-1 36 W of 50 W.
func rink2() *job {
	j := start("rinks/Rink 2 east.xlsx", "xlsx", "LM188", "Larkmere Ice Rink", "3", 100)
	s := j.add("Devices")
	s.Set(1, 1, look("Rink 2, east side: sound", title))
	s.Put(2, 1, "Job LM188", nil, nil, "100 V line", nil, nil, "Issue 3")
	for _, g := range []struct {
		at, to int
		text   string
	}{{1, 5, "Loudspeaker"}, {6, 7, "Where"}, {8, 12, "Feed"}} {
		for c := g.at; c <= g.to; c++ {
			s.Set(5, c, look(nil, dark))
		}
		s.Set(5, g.at, look(g.text, dark))
		s.Merge(5, g.at, 5, g.to)
	}
	for i, h := range []any{"Ref", "Model", "Nos.", "Tap (W)", "Total W", "Room", "Zone", "VC", "VC rating (W)", "Amp", "Ch", "W/ch"} {
		s.Set(6, 1+i, look(h, head))
	}
	for i, r := range []struct {
		ref, model  string
		n           int
		tap         any
		room, zone  string
		vc          string
		ch          string
		rated, ohms float64
	}{
		{"R-01..R-08", "HRN-30", 8, 15.0, "Rink hall", "Ice", "", "1", 240, 0},
		{"R-09..R-10", "CAB-12", 2, "8 Ω direct", "Rink hall", "Ice", "", "1", 240, 8},
		{"R-11..R-16", "CEI-6", 6, 6.0, "Skate hire", "Front", "VC-1", "2", 120, 0},
		{"R-17..R-20", "WAL-20", 4, 5.0, "First aid", "Front", "", "2", 120, 0},
	} {
		row := 7 + i
		s.Put(row, 1, r.ref, r.model, r.n, r.tap)
		tap := unknown
		if w, ok := r.tap.(float64); ok {
			tap = w
			s.Set(row, 5, book.Cell{Value: float64(r.n) * w, Formula: "C" + at(row) + "*D" + at(row)})
		}
		s.Put(row, 6, r.room, r.zone)
		if r.vc != "" {
			s.Put(row, 8, r.vc, 50)
			j.control(r.vc, r.zone, 50, "Devices", book.At(row, 9))
		}
		s.Put(row, 10, "A1", r.ch, r.rated)
		l := j.ls(row, book.At(row, 4), r.zone, r.room, r.ref, r.model, r.n, tap, r.vc, "A1", r.ch)
		if l.LowOhm = r.ohms; r.ohms > 0 {
			l.TapV = 0
		}
	}
	c := s.Get(8, 4)
	c.Note = "taken over from the old rink, no transformer fitted?"
	s.Set(8, 4, c)
	s.Set(11, 1, look("Total", bold))
	s.Set(11, 3, book.Cell{Value: 20, Formula: "SUM(C7:C10)", Style: bold})
	s.Set(11, 5, look(196, bold))
	j.left("Devices", 11, "total", "Total 20 196")
	j.channel("A1", "1", 240, "Devices", "L7")
	j.channel("A1", "2", 120, "Devices", "L9")
	j.amp("A1", "", unknown, "", "")
	for c, w := range []float64{14, 10, 7, 12, 9, 14, 9, 8, 13, 7, 6, 8} {
		s.Widths[c+1] = w
	}
	s.Extra = decorate
	j.expect("low-impedance-on-line", "", "R-09..R-10", "Devices", "D8", unknown, unknown, "")
	j.expect("total-mismatch", "", "Total", "Devices", "E11", 196, 176, "W")
	j.kind("en", "metric", "groups")
	return j
}

// decorate adds a chart, a picture and colours by value to the rink's sheet.
func decorate(f *excelize.File, sheet string) error {
	if err := f.AddChart(sheet, "N5", &excelize.Chart{Type: excelize.Col,
		Series: []excelize.ChartSeries{{Name: "Devices!$E$6", Categories: "Devices!$A$7:$A$10", Values: "Devices!$E$7:$E$10"}},
		Title:  excelize.ChartTitle{Paragraph: []excelize.RichTextRun{{Text: "Watts by row"}}}}); err != nil {
		return err
	}
	picture, err := plan(240, 140)
	if err != nil {
		return err
	}
	if err := f.AddPictureFromBytes(sheet, "A14", &excelize.Picture{Extension: ".png", File: picture,
		Format: &excelize.GraphicOptions{AltText: "plan of the rink"}}); err != nil {
		return err
	}
	red, err := f.NewConditionalStyle(&excelize.Style{Font: &excelize.Font{Color: "9C0006"}})
	if err != nil {
		return err
	}
	return f.SetConditionalFormat(sheet, "D7:D10", []excelize.ConditionalFormatOptions{{Type: "cell", Criteria: ">", Value: "10", Format: &red}})
}

// kwelstede is a Dutch sheet that lies on its side: a column for each zone.
//
// Hal: 20 x 15 W = 300 W on 240 W: 125 %, exactly at the edge, still a fault.
// Kleedkamers: 8 x 3 W = 24 W on 60 W. Kassa: 2 x 6 W = 12 W on 60 W.
// Cable of the hall: 70 m of 4 mm2, loop 0.6034 ohm on 33.33 ohm: 0.156 dB.
func kwelstede() *job {
	j := start("rinks/IJsbaan Kwelstede.xlsx", "xlsx", "LM160", "IJsbaan Kwelstede", "1", 100)
	s := j.add("Installatie")
	s.Set(1, 1, look("Geluidsinstallatie IJsbaan Kwelstede", title))
	s.Put(2, 1, "Opdracht", "LM160")
	s.Put(3, 1, "Lijnspanning", "100 V")
	for i, h := range []string{"Zone", "Type", "Aantal", "Ingesteld vermogen (W)", "Totaal vermogen (W)", "Versterker", "Kanaal", "Vermogen per kanaal (W)", "Kabel", "Lengte (m)"} {
		s.Set(5+i, 1, look(h, head))
	}
	s.Widths[1] = 26
	for i, z := range []struct {
		name, model string
		n           int
		tap, rated  float64
		cable       string
		area, m     float64
	}{
		{"Hal", "HRN-30", 20, 15, 240, "2x4 mm²", 4, 70},
		{"Kleedkamers", "CEI-6", 8, 3, 60, "2x1,5 mm²", 1.5, 55},
		{"Kassa", "WAL-6", 2, 6, 60, "2x1,5 mm²", 1.5, 30},
	} {
		col := 2 + i
		ch := string(rune('1' + i))
		for r, v := range []any{z.name, z.model, z.n, z.tap, float64(z.n) * z.tap, "V1", ch, z.rated, z.cable, z.m} {
			s.Set(5+r, col, book.Cell{Value: v, Style: book.Style{Border: true, Bold: r == 0}})
		}
		s.Widths[col] = 14
		l := j.ls(0, book.At(8, col), z.name, "", "", z.model, z.n, z.tap, "", "V1", ch)
		l.Rows = book.Letter(col)
		j.channel("V1", ch, z.rated, "Installatie", book.At(12, col))
		j.line("", z.name, z.m, z.area, "Installatie", book.At(14, col))
	}
	j.amp("V1", "", unknown, "", "")
	j.expect("channel-overload", "fault", "V1.1", "Installatie", "B12", 300, 240, "W")
	j.kind("nl", "metric", "transposed")
	return j
}
