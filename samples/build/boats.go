package main

import (
	"fmt"
	"time"

	"lineaudit/samples/answer"
	"lineaudit/samples/book"
)

// halfAsDay is what a sheet makes of 1/2 typed into it: the second of January.
var halfAsDay = time.Date(2012, 1, 2, 0, 0, 0, 0, time.UTC)

// boathouse5 has its loudspeakers on the left and amplifiers, controls and
// cables on the right of one sheet, saved as xls. Nothing is wrong with it.
//
// Deck 8 x 6 W = 48 W on 60 W: exactly 80 %. Club room 4 x 5 W = 20 W behind
// VC1 of 35 W; two spares lie in the store. Both on outputs of their own; the
// cable is 24/0.2, that is 24 x pi/4 x 0.2 x 0.2 mm2 = 0.754 mm2: 40 m of it
// loop 1.8293 ohm on 208.3 ohm, 0.076 dB.
func boathouse5() *job {
	j := start("2004/Boathouse 5.xls", "xls", "LM109", "Boathouse 5", "", 100)
	s := j.add("Boathouse 5")
	s.Set(1, 1, look("Boathouse 5 - loudspeakers and amplifier, 100 V", title))
	s.Put(2, 1, "Job LM109")
	s.Put(4, 1, "Mark", "Room", "Zone", "Type", "Qty", "Tap", "Status", "VC no.", "Amp output")
	s.Look(4, 1, 9, head)
	for i, r := range []struct {
		mark, room, zone, model string
		n                       int
		tap                     float64
		status, written, vc, ch string
	}{
		{"B1-B8", "Deck", "Deck", "HRN-15", 8, 6, "installed", "in place", "", "1"},
		{"B9-B12", "Club room", "Club", "CEI-10", 4, 5, "installed", "in place", "VC1", "2"},
		{"B13-B14", "Store", "Club", "CEI-10", 2, 5, "spare", "spare, in store", "", "2"},
	} {
		row := 5 + i
		s.Put(row, 1, r.mark, r.room, r.zone, r.model, r.n, fmt.Sprintf("%g W", r.tap), r.written, r.vc, "A1 / "+r.ch)
		l := j.ls(row, book.At(row, 6), r.zone, r.room, r.mark, r.model, r.n, r.tap, r.vc, "A1", r.ch)
		l.Status = r.status
	}
	s.Put(4, 11, "Amp output", "Max load (W)")
	s.Put(5, 11, "A1 / 1", 60)
	s.Put(6, 11, "A1 / 2", 60)
	s.Put(8, 11, "VC no.", "VC rating (W)")
	s.Put(9, 11, "VC1", 35)
	s.Put(11, 11, "Cable to", "Size", "Length m")
	s.Put(12, 11, "Deck", "24/0.2", 40)
	s.Put(13, 11, "Club", "24/0.2", 25)
	for _, row := range []int{4, 8} {
		s.Look(row, 11, 12, head)
	}
	s.Look(11, 11, 13, head)
	area := 24 * 3.141592653589793 / 4 * 0.2 * 0.2
	j.line("", "Deck", 40, area, s.Name, "M12")
	j.line("", "Club", 25, area, s.Name, "M13")
	j.control("VC1", "Club", 35, s.Name, "L9")
	j.channel("A1", "1", 60, s.Name, "L5")
	j.channel("A1", "2", 60, s.Name, "L6")
	j.amp("A1", "", unknown, "", "")
	j.kind("en", "metric", "beside")
	return j
}

// slipway is a CSV with feet and inches: horns on one daisy chain, every piece
// of it listed. 8 x 15 W = 120 W on 240 W. The chain: 1250 ft and seven times
// 60 ft 6 in of 18/2, solved exactly: 3.28 dB at the last horn, a fault.
func slipway() *job {
	j := start("2004/slipway horns.csv", "csv", "LM112", "Slipway", "", 70.7)
	j.dialect = book.Dialect{Comma: ",", Decimal: ".", CRLF: true}
	s := j.add("slipway horns")
	s.Put(1, 1, "Slipway horns, job LM112, 70V line")
	s.Put(3, 1, "Horn", "Location", "Zone", "Tap", "Amp", "Ch", "Amp W")
	area := answer.AreaAWG(18)
	var steps []answer.Step
	for i := range 8 {
		row, tag := 4+i, fmt.Sprintf("H%d", i+1)
		place := fmt.Sprintf("Pole %d, %s bank", i+1, []string{"left", "right"}[i%2])
		s.Put(row, 1, tag, place, "Slipway", "15W", "A1", "1", "240W @70V")
		j.ls(row, book.At(row, 4), "Slipway", place, tag, "", 1, 15, "", "A1", "1")
	}
	s.Put(13, 1, "Run", "From", "To", "Wire", "Length")
	total := 0.0
	for i := range 8 {
		from, ft, text := fmt.Sprintf("H%d", i), 60.5, `60'-6"`
		if i == 0 {
			from, ft, text = "A1", 1250, "1250'"
		}
		s.Put(14+i, 1, fmt.Sprintf("W%d", i+1), from, fmt.Sprintf("H%d", i+1), "18/2", text)
		steps = append(steps, answer.Step{Ohm: answer.LoopOhm(feet(ft), area, "copper"), W: 15})
		total += feet(ft)
	}
	l := j.line("", "Slipway", total, area, s.Name, "E14")
	l.Chain = steps
	j.channel("A1", "1", 240, s.Name, "G4")
	j.amp("A1", "", unknown, "", "")
	j.expect("line-loss", "fault", "Slipway", s.Name, "E14", answer.LossChain(70.7, steps), 3, "dB")
	j.kind("en", "imperial", "flat")
	return j
}

// lagunela is a Spanish matrix: places down, types across, what each type is
// tapped at below. The load typed for the ramp, 42 W, is wrong: 2 x 15 + 1 x 6
// = 36 W. Output 1 carries 6 x 6 + 36 = 72 W, output 2 carries 10 x 3 + 2 x 6
// = 42 W, each of 120 W.
func lagunela() *job {
	j := start("Ausland/Casa de botes de Lagunela.xlsx", "office-xlsx", "LM163", "Casa de botes de Lagunela", "", 100)
	s := j.add("Megafonía")
	s.Set(1, 1, look("Megafonía de la casa de botes, línea 100 V", title))
	s.Put(2, 1, "Obra", "LM163")
	for i, h := range []any{"Ubicación", "Zona", "TEC-6", "PAR-6", "BOC-15", "Carga (W)", "Etapa", "Salida"} {
		s.Set(4, 1+i, look(h, head))
	}
	taps := map[string]float64{"TEC-6": 3, "PAR-6": 6, "BOC-15": 15}
	models := []string{"TEC-6", "PAR-6", "BOC-15"}
	for i, r := range []struct {
		room, zone string
		n          [3]int
		load       float64
		ch         string
	}{
		{"Nave norte", "Nave", [3]int{0, 6, 0}, 36, "1"},
		{"Rampa", "Nave", [3]int{0, 1, 2}, 42, "1"},
		{"Vestuarios", "Social", [3]int{10, 0, 0}, 30, "2"},
		{"Taquilla", "Social", [3]int{0, 2, 0}, 12, "2"},
	} {
		row := 5 + i
		s.Put(row, 1, r.room, r.zone)
		for c, n := range r.n {
			if n > 0 {
				s.Put(row, 3+c, n)
				j.ls(row, book.At(row, 3+c), r.zone, r.room, "", models[c], n, taps[models[c]], "", "E1", r.ch)
			}
		}
		s.Put(row, 6, r.load, "E1", r.ch)
	}
	s.Put(11, 1, "Tipo", "Descripción", "Toma (W)")
	s.Look(11, 1, 3, head)
	s.Put(12, 1, "TEC-6", "altavoz de techo", 3)
	s.Put(13, 1, "PAR-6", "altavoz de pared", 6)
	s.Put(14, 1, "BOC-15", "bocina", 15)
	s.Put(17, 1, "Etapa", "Salida", "Potencia de salida (W)")
	s.Look(17, 1, 3, head)
	s.Put(18, 1, "E1", "1", 120)
	s.Put(19, 1, "E1", "2", 120)
	j.channel("E1", "1", 120, s.Name, "C18")
	j.channel("E1", "2", 120, s.Name, "C19")
	j.amp("E1", "", unknown, "", "")
	j.expect("total-mismatch", "", "Rampa", s.Name, "F6", 42, 36, "W")
	s.Widths[1], s.Widths[2], s.Widths[3] = 16, 18, 22
	j.kind("es", "metric", "matrix-types")
	return j
}

// valmerla is an Italian ods with a sheet for every zone.
//
// Aranciera 6 x 5 W = 30 W behind AT1 of 50 W; Felceto 10 x 3 W = 30 W behind
// AT2 of 25 W: 120 %; Pista 8 x 10 W = 80 W. Outputs of 60, 60 and 120 W.
func valmerla() *job {
	j := start("Ausland/Serra di Valmerla.ods", "ods", "LM149", "Serra di Valmerla", "", 100)
	for i, z := range []struct {
		name, model string
		n           int
		tap         float64
		at          string
		rated       float64
	}{
		{"Aranciera", "CEI-10", 6, 5, "AT1", 50}, {"Felceto", "CEI-6", 10, 3, "AT2", 25}, {"Pista", "HRN-30", 8, 10, "", 0},
	} {
		s := j.add(z.name)
		s.Set(1, 1, look("Zona "+z.name, title))
		s.Put(2, 1, "Commessa LM149", nil, "Tensione di linea", "100 V")
		s.Put(4, 1, "Sigla", "Modello", "Potenza impostata", "Attenuatore", "Potenza attenuatore", "Uscita")
		s.Look(4, 1, 6, head)
		ch := fmt.Sprint(i + 1)
		for k := range z.n {
			row, tag := 5+k, fmt.Sprintf("%s%02d", z.name[:1], k+1)
			s.Put(row, 1, tag, z.model, fmt.Sprintf("%g W", z.tap))
			if z.at != "" {
				s.Put(row, 4, z.at, fmt.Sprintf("%g W", z.rated))
			}
			s.Put(row, 6, "F1."+ch)
			j.ls(row, book.At(row, 3), z.name, "", tag, z.model, 1, z.tap, z.at, "F1", ch)
		}
		if z.at != "" {
			j.control(z.at, z.name, z.rated, z.name, "E5")
		}
		s.Widths[3], s.Widths[5] = 18, 18
	}
	s := j.book.Add("Finali")
	s.Put(1, 1, "Uscita", "Potenza di uscita")
	s.Look(1, 1, 2, head)
	for i, w := range []float64{60, 60, 120} {
		ch := fmt.Sprint(i + 1)
		s.Put(2+i, 1, "F1."+ch, fmt.Sprintf("%g W", w))
		j.channel("F1", ch, w, "Finali", book.At(2+i, 2))
	}
	j.amp("F1", "", unknown, "", "")
	j.expect("control-overload", "fault", "AT2", "Felceto", "E5", 30, 25, "W")
	j.kind("it", "metric", "sheet-a-zone")
	return j
}
