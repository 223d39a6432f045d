package main

import (
	"lineaudit/samples/answer"
	"lineaudit/samples/book"
)

// jobs lists the archive in the order of its folders.
func jobs() []*job {
	return []*job{
		orangery(), boathouse4(), boathouse5(), slipway(), planetarium("B"), planetarium("C"),
		eishalle(), serre(), lagunela(), valmerla(),
		summary(), herbarium(), register(), survey(), rink2(), kwelstede(),
	}
}

var (
	bold  = book.Style{Bold: true}
	head  = book.Style{Bold: true, Fill: "DDEBF7", Border: true, Wrap: true}
	dark  = book.Style{Bold: true, Fill: "1F4E78", Color: "FFFFFF", Center: true}
	title = book.Style{Bold: true, Size: 16}
	faint = book.Style{Italic: true, Color: "7F7F7F"}
)

func look(v any, st book.Style) book.Cell { return book.Cell{Value: v, Style: st} }

// orangery is a job of 1998: a row for every loudspeaker, all in capitals, in
// feet and gauge. Nothing is wrong with it.
//
// Loads: Z1 8 x 5 W = 40 W, Z2 6 x 2.5 W = 15 W; outputs of 60 W each, 67 %
// and 25 %. Cable Z1: 210 ft of 16/2, loop 1.686 ohm on 5000/40 = 125 ohm:
// 0.12 dB at the far end.
func orangery() *job {
	j := start("1998/LM017 ORANGERY.xls", "xls", "LM017", "Larkmere Orangery", "", 70.7)
	s := j.add("SPKRS")
	s.Put(1, 1, "LARKMERE TRUST - SOUND SYSTEM RECORD")
	s.Put(2, 1, "JOB", "LM017", nil, "SITE", "LARKMERE ORANGERY")
	s.Put(3, 1, "LINE", "70V", nil, "BY", "A. PELL")
	s.Put(5, 1, "SPKR #", "ROOM", "ZONE", "WATT TAP", "AMP", "OUTPUT", "WIRE", "LF")
	s.Look(5, 1, 8, bold)
	row := 6
	for i := range 14 {
		zone, room, tap, out := "Z1", "MAIN GLASSHOUSE", 5.0, "1"
		if i >= 8 {
			zone, room, tap, out = "Z2", "PROPAGATION", 2.5, "2"
		}
		tag := []string{"S1", "S2", "S3", "S4", "S5", "S6", "S7", "S8", "S9", "S10", "S11", "S12", "S13", "S14"}[i]
		s.Put(row, 1, tag, room, zone, tap, "A1", out)
		j.ls(row, book.At(row, 4), zone, room, tag, "", 1, tap, "", "A1", out)
		switch i {
		case 0:
			s.Put(row, 7, "16/2", "210'")
			s.Set(row, 9, book.Cell{Value: "HOME RUN TO LAST SPKR OF ZONE", Style: faint})
			j.line("", "Z1", feet(210), answer.AreaAWG(16), "SPKRS", book.At(row, 8))
		case 8:
			s.Put(row, 7, "18/2", "160'")
			j.line("", "Z2", feet(160), answer.AreaAWG(18), "SPKRS", book.At(row, 8))
		}
		row++
	}
	s.Put(22, 1, "AMP", "MODEL", "OUTPUT", "WATTS @ 70V")
	s.Look(22, 1, 4, bold)
	s.Put(23, 1, "A1", "PA-260", "1", 60)
	s.Put(24, 1, "A1", "PA-260", "2", 60)
	j.amp("A1", "PA-260", unknown, "", "")
	j.channel("A1", "1", 60, "SPKRS", "D23")
	j.channel("A1", "2", 60, "SPKRS", "D24")
	j.kind("en", "imperial", "flat")
	return j
}

// boathouse4 is a job with one row a group. It holds the two controls at the
// edge: VC-1 carries 20 x 2.5 W = 50.0 W on 50 W and passes, VC-2 carries
// 30 x 1.67 W = 50.1 W on 50 W and does not. VC-3 carries 6 x 7.5 W = 45 W on
// 35 W: 129 %, danger. The outputs: 50 + 50.1 = 100.1 W on 240 W, and 45 + 24
// = 69 W on 120 W.
func boathouse4() *job {
	j := start("2004/Boathouse 4 PA.xlsx", "xlsx", "LM104", "Boathouse 4", "2", 70.7)
	s := j.add("Schedule")
	s.Set(1, 1, look("Loudspeaker schedule", title))
	s.Put(2, 1, "Project", "LM104 Boathouse 4", nil, nil, "Rev", 2)
	s.Put(3, 1, "System", "70.7 V line", nil, nil, "Drawn", "T. Quarle")
	for i, h := range []any{"Location", "Zone", "Speaker type", "Qty", "Tap", "Total W", "Vol. control", "Max. load (W)", "Amp/Ch"} {
		s.Set(5, 1+i, look(h, head))
	}
	for i, r := range []struct {
		room, zone, model string
		n                 int
		tap               float64
		control           string
		rated             any
		ch                string
	}{
		{"Boat hall north", "Boat hall", "CEI-6", 20, 2.5, "VC-1", 50, "1"},
		{"Boat hall south", "Boat hall", "CEI-5", 30, 1.67, "VC-2", 50, "1"},
		{"Rowing tank", "Tank", "HRN-15", 6, 7.5, "VC-3", 35, "2"},
		{"Changing rooms", "Tank", "CEI-6", 8, 3, "", nil, "2"},
	} {
		row := 6 + i
		s.Put(row, 1, r.room, r.zone, r.model, r.n, r.tap)
		s.Set(row, 6, book.Cell{Value: float64(r.n) * r.tap, Formula: "D" + at(row) + "*E" + at(row), Style: book.Style{Format: "0.0"}})
		if r.control != "" {
			s.Put(row, 7, r.control, r.rated)
			j.control(r.control, r.zone, float64(r.rated.(int)), "Schedule", book.At(row, 8))
		}
		s.Put(row, 9, "A1."+r.ch)
		j.ls(row, book.At(row, 5), r.zone, r.room, "", r.model, r.n, r.tap, r.control, "A1", r.ch)
	}
	s.Set(10, 1, look("Total", bold))
	s.Set(10, 4, book.Cell{Value: 64, Formula: "SUM(D6:D9)", Style: bold})
	s.Set(10, 6, book.Cell{Value: 169.1, Formula: "SUM(F6:F9)", Style: book.Style{Bold: true, Format: "0.0"}})
	j.left("Schedule", 10, "total", "Total 64 169.1")
	s.Put(12, 1, "Amplifier", "Channel", "W/ch @70V")
	s.Look(12, 1, 3, head)
	s.Put(13, 1, "A1", "1", "240 W")
	s.Put(14, 1, "A1", "2", "120 W")
	s.Set(16, 1, look("All controls single gang, fitted in the porch.", faint))
	for c, w := range []float64{20, 14, 14, 8, 8, 10, 14, 14, 10} {
		s.Widths[c+1] = w
	}
	j.amp("A1", "", unknown, "", "")
	j.channel("A1", "1", 240, "Schedule", "C13")
	j.channel("A1", "2", 120, "Schedule", "C14")
	j.expect("control-overload", "fault", "VC-2", "Schedule", "H7", 50.1, 50, "W")
	j.expect("control-overload", "danger", "VC-3", "Schedule", "H8", 45, 35, "W")
	j.kind("en", "imperial", "groups")
	return j
}
