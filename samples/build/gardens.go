package main

import (
	"fmt"

	"lineaudit/samples/answer"
	"lineaudit/samples/book"
)

// summary has one row a zone and was saved by LibreOffice. Its amplifier is
// said to give 300 W in all: 36 + 160 + 75 + 96 = 367 W, 122 %. Output 4 is at
// 96 W of 120 W, exactly 80 %, which passes.
func summary() *job {
	j := start("gardens/Summary of zones 2016.xlsx", "office-xlsx", "LM205", "Larkmere Gardens", "", 70.7)
	s := j.add("Zones")
	s.Set(1, 1, look("Larkmere Gardens - PA zones (70V), job LM205", title))
	for i, h := range []any{"Zone", "Speaker", "Count", "Tapped at", "Zone load W", "Amp", "Ch", "W/ch", "Wire", "Run length (ft)"} {
		s.Set(3, 1+i, look(h, head))
	}
	for i, z := range []struct {
		name, model string
		n           int
		tap         float64
		rated       float64
		wire        string
		awg         int
		ft          float64
	}{
		{"Alpine House", "CEI-6", 12, 3, 120, "14/2", 14, 250},
		{"Palm House", "PEN-12", 20, 8, 240, "12/2", 12, 180},
		{"Herb Walk", "HRN-15", 10, 7.5, 120, "16/2", 16, 240},
		{"Gate", "COL-24", 4, 24, 120, "14/2", 14, 300},
	} {
		row, ch := 4+i, fmt.Sprint(i+1)
		s.Put(row, 1, z.name, z.model, z.n, fmt.Sprintf("%gW", z.tap))
		s.Set(row, 5, book.Cell{Value: float64(z.n) * z.tap, Style: book.Style{Format: "0.0"}})
		s.Put(row, 6, "A1", ch, z.rated, z.wire, z.ft)
		j.ls(row, book.At(row, 4), z.name, "", "", z.model, z.n, z.tap, "", "A1", ch)
		j.channel("A1", ch, z.rated, "Zones", book.At(row, 8))
		j.line("", z.name, feet(z.ft), answer.AreaAWG(z.awg), "Zones", book.At(row, 10))
	}
	s.Put(10, 1, "Amp", "Model", "Frame W")
	s.Look(10, 1, 3, head)
	s.Put(11, 1, "A1", "PA-430", 300)
	j.amp("A1", "PA-430", 300, "Zones", "C11")
	j.expect("frame-overload", "fault", "A1", "Zones", "C11", 367, 300, "W")
	j.kind("en", "imperial", "zones")
	return j
}

// herbarium is cut into sections with a title, headings repeated under each,
// and subtotals; its cables stand in a small table below.
//
// Reading Room 10 x 5 W = 50 W on 120 W. Long Stacks 16 x 10 W = 160 W on
// 240 W; 1200 ft of 18/2: loop 15.324 ohm on 31.25 ohm, 3.466 dB at the far
// end, 2.09 dB if spread: over 1 dB for certain, over 3 dB perhaps. Press Room
// 4 x 2.5 W = 10 W and Lecture Room 12 x 7.5 W = 90 W share output 3: 100 W of
// 120 W is 83 %, more than 96 W. Lecture Room: 600 ft of 18/2, loop 7.662 ohm
// on 55.56 ohm, 1.122 dB at the far end, 0.63 dB if spread: perhaps.
func herbarium() *job {
	j := start("gardens/LM152 Herbarium.xlsx", "xlsx", "LM152", "Larkmere Herbarium", "A", 70.7)
	s := j.add("Herbarium")
	s.Set(1, 1, look("HERBARIUM PUBLIC ADDRESS", title))
	s.Put(2, 1, "Job no.", "LM152", nil, "Line voltage", "70.7 V")
	row, n := 4, 0
	for i, z := range []struct {
		title, name, model string
		n                  int
		tap                float64
		ch                 string
	}{
		{"ZONE 1 - READING ROOM", "READING ROOM", "CEI-10", 10, 5, "1"},
		{"ZONE 2 - LONG STACKS", "LONG STACKS", "COL-20", 16, 10, "2"},
		{"ZONE 3 - PRESS ROOM", "PRESS ROOM", "CEI-10", 4, 2.5, "3"},
		{"ZONE 4 - LECTURE ROOM", "LECTURE ROOM", "HRN-15", 12, 7.5, "3"},
	} {
		s.Set(row, 1, look(z.title, dark))
		s.Merge(row, 1, row, 6)
		j.left("Herbarium", row, "title", z.title)
		row++
		for c, h := range []any{"Tag", "Location", "Model", "Tap W", "Amp", "Output"} {
			s.Set(row, 1+c, look(h, head))
		}
		if i > 0 {
			j.left("Herbarium", row, "header", "Tag Location Model Tap W Amp Output")
		}
		row++
		from := row
		for k := range z.n {
			n++
			tag := fmt.Sprintf("H%02d", n)
			place := fmt.Sprintf("bay %d", k+1)
			s.Put(row, 1, tag, place, z.model, z.tap, "A2", z.ch)
			j.ls(row, book.At(row, 4), z.name, place, tag, z.model, 1, z.tap, "", "A2", z.ch)
			row++
		}
		s.Set(row, 1, look("Sub-total", bold))
		s.Set(row, 4, book.Cell{Value: float64(z.n) * z.tap, Formula: fmt.Sprintf("SUM(D%d:D%d)", from, row-1), Style: bold})
		j.left("Herbarium", row, "subtotal", "Sub-total")
		row += 2
	}
	s.Put(row, 1, "Output", "Rated W", nil, "Zone", "Wire", "Length")
	s.Look(row, 1, 2, head)
	s.Look(row, 4, 6, head)
	for i, w := range []float64{120, 240, 120} {
		ch := fmt.Sprint(i + 1)
		s.Put(row+1+i, 1, "A2-"+ch, w)
		j.channel("A2", ch, w, "Herbarium", book.At(row+1+i, 2))
	}
	j.amp("A2", "", unknown, "", "")
	for i, r := range []struct {
		zone, name, wire string
		awg              int
		ft               float64
	}{
		{"ZONE 1", "READING ROOM", "16/2", 16, 150}, {"ZONE 2", "LONG STACKS", "18/2", 18, 1200},
		{"ZONE 3", "PRESS ROOM", "22/2", 22, 500}, {"ZONE 4", "LECTURE ROOM", "18/2", 18, 600},
	} {
		s.Put(row+1+i, 4, r.zone, r.wire, fmt.Sprintf("%g ft", r.ft))
		j.line("", r.name, feet(r.ft), answer.AreaAWG(r.awg), "Herbarium", book.At(row+1+i, 6))
	}
	j.Names = append(j.Names,
		answer.Name{File: j.path, Job: j.number, Kind: "zone", Name: "READING ROOM", Forms: []string{"ZONE 1 - READING ROOM", "ZONE 1"}},
		answer.Name{File: j.path, Job: j.number, Kind: "zone", Name: "LONG STACKS", Forms: []string{"ZONE 2 - LONG STACKS", "ZONE 2"}},
		answer.Name{File: j.path, Job: j.number, Kind: "zone", Name: "PRESS ROOM", Forms: []string{"ZONE 3 - PRESS ROOM", "ZONE 3"}},
		answer.Name{File: j.path, Job: j.number, Kind: "zone", Name: "LECTURE ROOM", Forms: []string{"ZONE 4 - LECTURE ROOM", "ZONE 4"}})
	f := j.expect("line-loss", "caution", "LONG STACKS", "Herbarium", book.At(row+2, 6), 3.4659, 1, "dB")
	f.Low, f.High = 2.0893, 3.4659
	f = j.expect("line-loss", "caution", "LECTURE ROOM", "Herbarium", book.At(row+4, 6), 1.1222, 1, "dB")
	f.Low, f.High = 0.6332, 1.1222
	j.expect("headroom-short", "caution", "A2.3", "Herbarium", book.At(row+3, 2), 100, 96, "W")
	s.Widths[1], s.Widths[2], s.Widths[3] = 14, 14, 12
	j.kind("en", "imperial", "sections")
	return j
}

// register lists three small jobs in one table, the job in a column.
//
// LM301 Gate lodge 4 x 6 W = 24 W on 60 W. LM302 Pump house, on 70 V, 6 x 5 W =
// 30 W on 60 W. LM303 Seed store 8 x 10 W = 80 W on 60 W: 133 %, danger.
func register() *job {
	j := start("gardens/Small works.xlsx", "xlsx", "LM301", "Gate lodge", "", 100)
	s := j.add("Register")
	s.Set(1, 1, look("Small works register", title))
	for i, h := range []any{"Job", "Site", "Line", "Room", "Qty", "Tap (W)", "Total W", "Amp", "Amp W"} {
		s.Set(3, 1+i, look(h, head))
	}
	for i, r := range []struct {
		job, site, line, room string
		volts                 float64
		n                     int
		tap                   float64
		amp                   string
		rated                 float64
	}{
		{"LM301", "Gate lodge", "100V", "Ticket window", 100, 2, 6, "G1", 60},
		{"LM301", "Gate lodge", "100V", "Turnstiles", 100, 2, 6, "G1", 60},
		{"LM302", "Pump house", "70V", "Pump floor", 70.7, 6, 5, "P1", 60},
		{"LM303", "Seed store", "100V", "Cold room", 100, 5, 10, "S1", 60},
		{"LM303", "Seed store", "100V", "Sorting room", 100, 3, 10, "S1", 60},
	} {
		row := 4 + i
		if r.job != j.number {
			j.also(r.job, r.site, "")
		}
		j.lineV = answer.Class(r.volts)
		s.Put(row, 1, r.job, r.site, r.line, r.room, r.n, r.tap)
		s.Set(row, 7, book.Cell{Value: float64(r.n) * r.tap, Formula: fmt.Sprintf("E%d*F%d", row, row)})
		s.Put(row, 8, r.amp, r.rated)
		j.ls(row, book.At(row, 6), "", r.room, "", "", r.n, r.tap, "", r.amp, "")
		if len(j.Channels) == 0 || j.Channels[len(j.Channels)-1].Job != r.job {
			j.channel(r.amp, "", r.rated, "Register", book.At(row, 9))
			j.amp(r.amp, "", unknown, "", "")
		}
	}
	s.FilterAt = [4]int{3, 1, 8, 9}
	j.expect("channel-overload", "danger", "S1", "Register", "I7", 80, 60, "W")
	for c, w := range []float64{10, 16, 8, 18, 6, 9, 9, 8, 8} {
		s.Widths[c+1] = w
	}
	j.kind("en", "metric", "register")
	return j
}

// survey starts at row 30 of column F, with three rows of headings. A row is
// struck through, another hidden, and half a watt was taken for a day.
//
// Cold frames 6 x 0.5 W = 3 W and Vinery 5 x 2.5 W = 12.5 W on output 1 of
// 60 W; Fig house 4 x 7.5 W = 30 W on output 2 of 60 W, half of it.
func survey() *job {
	j := start("gardens/Survey glasshouses.xlsx", "xlsx", "LM171", "Glasshouses", "", 100)
	s := j.add("Survey")
	s.Put(3, 2, "Survey of the glasshouses, job LM171. Walked with the head gardener; 100 V throughout.")
	for _, g := range []struct {
		at, to int
		text   string
	}{{6, 7, "Place"}, {8, 10, "Loudspeakers"}, {11, 13, "Amplifier"}} {
		s.Set(30, g.at, look(g.text, head))
		s.Merge(30, g.at, 30, g.to)
	}
	for i, h := range []any{"Room", "Zone", "Type", "Pieces", "Tap", "Amp", "Output", "Output power"} {
		s.Set(31, 6+i, look(h, head))
	}
	s.Set(32, 10, look("W", faint))
	s.Set(32, 13, look("W", faint))
	for i, r := range []struct {
		room, zone, model string
		n                 int
		tap               float64
		ch                string
		kind              string
	}{
		{"Cold frames", "North", "CEI-1", 6, 0.5, "1", "date"},
		{"Vinery", "North", "CEI-10", 5, 2.5, "1", ""},
		{"Vinery", "North", "CEI-10", 2, 10, "1", "struck"},
		{"Fig house", "South", "HRN-15", 4, 7.5, "2", ""},
		{"Fig house", "South", "HRN-15", 4, 15, "2", "hidden"},
	} {
		row := 33 + i
		s.Put(row, 6, r.room, r.zone, r.model, r.n, r.tap, "A1", r.ch, 60)
		switch r.kind {
		case "date":
			s.Set(row, 10, book.Cell{Value: halfAsDay, Style: book.Style{Format: "d-mmm"}})
		case "struck":
			s.Look(row, 6, 13, book.Style{Strike: true})
			j.left("Survey", row, "struck", r.room)
			continue
		case "hidden":
			s.Hide[row] = true
			j.left("Survey", row, "hidden", r.room)
			continue
		}
		j.ls(row, book.At(row, 10), r.zone, r.room, "", r.model, r.n, r.tap, "", "A1", r.ch)
	}
	j.channel("A1", "1", 60, "Survey", "M33")
	j.channel("A1", "2", 60, "Survey", "M36")
	j.amp("A1", "", unknown, "", "")
	j.expect("turned-into-date", "", "Cold frames", "Survey", "J33", unknown, unknown, "")
	j.kind("en", "metric", "offset")
	return j
}
