package main

import (
	"fmt"
	"strconv"

	"lineaudit/samples/book"
)

func at(row int) string { return strconv.Itoa(row) }

// planetarium is one job in two revisions, a sheet for each kind of thing,
// saved by LibreOffice. In both, 100 V.
//
// Revision B: Dome 24 x 10 W = 240 W on output 1 of 200 W: 120 %, a fault.
// Foyer 12 x 5 W = 60 W behind VC-1 (100 W) on output 2 of 120 W.
// Workshops 10 x 3 W = 30 W on output 3 of 120 W. The cable of the dome, 80 m
// of 2.5 mm2 on 240 W: loop 1.1034 ohm, load 41.667 ohm, 0.227 dB.
//
// Revision C: the dome is retapped to 6 W, 24 x 6 W = 144 W: 72 % of 200 W.
func planetarium(rev string) *job {
	tap := map[string]float64{"B": 10, "C": 6}[rev]
	j := start("2013/LM231 Planetarium rev "+rev+".xlsx", "office-xlsx", "LM231", "Larkmere Planetarium", rev, 100)
	cover := j.add("Cover")
	cover.Set(2, 2, look("Public address, Larkmere Planetarium", title))
	for i, kv := range [][2]string{{"Job no.", "LM231"}, {"Revision", rev}, {"Status", map[string]string{"B": "For construction", "C": "As built"}[rev]},
		{"Line voltage", "100 V"}, {"Prepared by", "M. Vennick"}} {
		cover.Set(4+i, 2, look(kv[0], bold))
		cover.Put(4+i, 3, kv[1])
	}
	cover.Widths[2], cover.Widths[3] = 20, 30

	s := j.add("Loudspeakers")
	for i, h := range []any{"Ref", "Model", "Room", "Zone", "Tapping (W)", "Control", "Fed from"} {
		s.Set(1, 1+i, look(h, dark))
	}
	s.FreezeRow = 1
	row := 2
	place := func(n int, zone, room, model, control, amp, ch string, w float64) {
		for range n {
			tag := fmt.Sprintf("L%03d", row-1)
			s.Put(row, 1, tag, model, room, zone, w, nil, amp+"/"+ch)
			if control != "" {
				s.Put(row, 6, control)
			}
			j.ls(row, book.At(row, 5), zone, room, tag, model, 1, w, control, amp, ch)
			row++
		}
	}
	place(24, "Dome", "Auditorium", "COL-24", "", "PA1", "1", tap)
	place(12, "Foyer", "Foyer", "CEI-6", "VC-1", "PA1", "2", 5)
	place(10, "Workshops", "Lens workshop", "CEI-6", "", "PA1", "3", 3)

	a := j.book.Add("Amplifiers")
	for i, h := range []any{"Amplifier", "Output", "Rated power at 100 V", "Serves"} {
		a.Set(1, 1+i, look(h, dark))
	}
	for i, r := range []struct {
		ch     string
		w      float64
		serves string
	}{{"1", 200, "Dome"}, {"2", 120, "Foyer"}, {"3", 120, "Workshops"}} {
		a.Put(2+i, 1, "PA1", r.ch, r.w, r.serves)
		a.Set(2+i, 3, book.Cell{Value: r.w, Style: book.Style{Format: `0" W"`}})
		j.channel("PA1", r.ch, r.w, "Amplifiers", book.At(2+i, 3))
	}
	j.amp("PA1", "", unknown, "", "")

	c := j.book.Add("Controls")
	c.Put(1, 1, "Control", "Position", "Rating")
	c.Look(1, 1, 3, dark)
	c.Put(2, 1, "VC-1", "Foyer, ticket desk", "100 W")
	j.control("VC-1", "Foyer", 100, "Controls", "C2")

	k := j.book.Add("Cables")
	k.Put(1, 1, "Cable", "From", "To", "Type", "Length m")
	k.Look(1, 1, 5, dark)
	for i, r := range []struct {
		tag, from, to, kind string
		m, area             float64
	}{{"K1", "PA1/1", "Dome", "2x2.5 mm²", 80, 2.5}, {"K2", "PA1/2", "Foyer", "2x1.5 mm²", 45, 1.5}, {"K3", "PA1/3", "Workshops", "2x1.5 mm²", 110, 1.5}} {
		k.Put(2+i, 1, r.tag, r.from, r.to, r.kind, r.m)
		j.line(r.tag, r.to, r.m, r.area, "Cables", book.At(2+i, 5))
	}
	if rev == "B" {
		j.Files[0].Superseded = true
		j.expect("channel-overload", "fault", "PA1.1", "Amplifiers", "C2", 240, 200, "W")
	}
	j.kind("en", "metric", "sheets")
	return j
}
