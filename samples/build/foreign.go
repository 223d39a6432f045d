package main

import (
	"lineaudit/samples/answer"
	"lineaudit/samples/book"
)

// eishalle is a German CSV in Windows-1252 with decimal commas, zones carried
// down under their first row.
//
// Loads: Eisfläche 8 x 15 W = 120 W behind no control, Umkleiden 6 x 1,5 W =
// 9 W behind R1 (12 W), Kasse 2 x 3 W = 6 W. Output 1 of 120 W carries 120 W:
// exactly full, so no overload and no headroom; the share is 100 %, above the
// 80 % of good practice: 96 W. Output 2 of 60 W carries 15 W. Cable of the ice
// field: 60 m of 2,5 mm2, loop 0.8276 ohm on 83.33 ohm: 0.086 dB.
func eishalle() *job {
	j := start("Ausland/Eishalle Quellgrund.csv", "csv", "LM118", "Eishalle Quellgrund", "", 100)
	j.dialect = book.Dialect{Comma: ";", Decimal: ",", Windows: true, CRLF: true}
	s := j.add("Eishalle Quellgrund")
	s.Put(1, 1, "Beschallung Eishalle Quellgrund")
	s.Put(2, 1, "Auftrag", "LM118", nil, "Stand", "03.2009")
	s.Put(3, 1, "Linienspannung", "100 V")
	s.Put(5, 1, "Zone", "Raum", "Typ", "Stk.", "Abgriff W", "Summe W", "Regler", "Regler max. W", "Endstufe", "Ausgang", "Ausgang W", "Kabel", "Länge m")
	for i, r := range []struct {
		zone, written, room, model string
		n                          int
		tap                        float64
		control                    string
		ch                         string
		rated                      float64
	}{
		{"Eisfläche", "Eisfläche", "Bande Nord", "HRN-15", 4, 15, "", "1", 120},
		{"Eisfläche", "", "Bande Süd", "HRN-15", 4, 15, "", "1", 120},
		{"Umkleiden", "Umkleiden", "Umkleide 1", "CEI-6", 3, 1.5, "R1", "2", 60},
		{"Umkleiden", "", "Umkleide 2", "CEI-6", 3, 1.5, "R1", "2", 60},
		{"Kasse", "Kasse", "Kasse", "WAL-6", 2, 3, "", "2", 60},
	} {
		row := 6 + i
		s.Put(row, 1, r.written, r.room, r.model, r.n, r.tap, float64(r.n)*r.tap, r.control)
		if r.control != "" {
			s.Put(row, 8, 12)
		}
		s.Put(row, 9, "E1", r.ch, r.rated)
		switch i {
		case 0:
			s.Put(row, 12, "2x2,5", 60)
			j.line("", r.zone, 60, 2.5, s.Name, book.At(row, 13))
		case 2:
			s.Put(row, 12, "2x1,5", 85.5)
			j.line("", r.zone, 85.5, 1.5, s.Name, book.At(row, 13))
		}
		j.ls(row, book.At(row, 5), r.zone, r.room, "", r.model, r.n, r.tap, r.control, "E1", r.ch)
	}
	s.Put(11, 1, "Summe", nil, nil, 16, nil, 135)
	j.left(s.Name, 11, "total", "Summe 16 135")
	j.control("R1", "Umkleiden", 12, s.Name, "H8")
	j.amp("E1", "", unknown, "", "")
	j.channel("E1", "1", 120, s.Name, "K6")
	j.channel("E1", "2", 60, s.Name, "K8")
	j.expect("headroom-short", "caution", "E1.1", s.Name, "K6", 120, 96, "W")
	j.kind("de", "metric", "groups")
	return j
}

// serre is a French ods with merged zone cells. Its palm house is tapped for
// 70 V on a 100 V line: 8 x 5 W at 70 V draw 8 x 10 W = 80 W. Output 1 of
// 120 W carries those 80 W: 67 %. The fernery, 6 x 6 W = 36 W on output 2 of
// 60 W, is in order; so is AT1, 36 W on 50 W. The stated total of the palm
// house, 40 W, is the sum of its taps as written.
func serre() *job {
	j := start("Ausland/Serre de Valbruyne.ods", "ods", "LM142", "Serre de Valbruyne", "b", 100)
	s := j.add("Sonorisation")
	s.Set(1, 1, look("Carnet de sonorisation", title))
	s.Put(2, 1, "Affaire", "LM142", nil, "Indice", "b")
	s.Put(3, 1, "Site", "Serre de Valbruyne", nil, "Ligne", "100 V")
	for i, h := range []any{"Zone", "Local", "Modèle", "Nb", "Puissance réglée", "P totale (W)", "Atténuateur", "Puissance max (W)", "Ampli", "Sortie", "Puissance de sortie"} {
		s.Set(5, 1+i, look(h, head))
	}
	rows := []struct {
		zone, room, model string
		n                 int
		tap               float64
		tapText           string
		control           string
		ch, rated         string
	}{
		{"Palmarium", "Travée est", "PEN-12", 4, 5, "5 W / 70 V", "", "1", "120 W"},
		{"Palmarium", "Travée ouest", "PEN-12", 4, 5, "5 W / 70 V", "", "1", "120 W"},
		{"Fougeraie", "Fougeraie", "CEI-6", 6, 6, "6 W", "AT1", "2", "60 W"},
	}
	for i, r := range rows {
		row := 6 + i
		s.Put(row, 1, r.zone, r.room, r.model, r.n, r.tapText, float64(r.n)*r.tap, r.control)
		if r.control != "" {
			s.Put(row, 8, 50)
		}
		s.Put(row, 9, "AMP1", r.ch, r.rated)
		l := j.ls(row, book.At(row, 5), r.zone, r.room, "", r.model, r.n, r.tap, r.control, "AMP1", r.ch)
		if i < 2 {
			l.TapV = answer.Class(70)
		}
	}
	s.Set(7, 1, book.Cell{})
	s.Merge(6, 1, 7, 1)
	s.Set(10, 1, look("Remarque : câbles posés par le lot électricité", faint))
	j.left(s.Name, 10, "note", "Remarque")
	j.control("AT1", "Fougeraie", 50, s.Name, "H8")
	j.amp("AMP1", "", unknown, "", "")
	j.channel("AMP1", "1", 120, s.Name, "K6")
	j.channel("AMP1", "2", 60, s.Name, "K8")
	j.expect("voltage-mismatch", "fault", "Palmarium", s.Name, "E6", answer.Class(70), 100, "V")
	j.kind("fr", "metric", "groups")
	for c := range 11 {
		s.Widths[c+1] = 15
	}
	return j
}
