package ingest

import "testing"

// Numbers of jobs with letters of their own, and those of reports where nothing else numbers the job. Common practice, no source.
func TestLetteredAndReportNumbers(t *testing.T) {
	for _, c := range []struct{ title, want string }{
		{"Wartungsvertrag WV 1187", "WV 1187"}, {"Contract PA 5120, 2023", "PA 5120"}, {"Progetto n. BG 520", "BG 520"}, {"Contrat n° MA 2210/3", "MA 2210/3"},
		{"GZ 17/0342", "17/0342"}, {"Geschäftszahl: 2021-118", "2021-118"},
		{"Rapporto n. 88/2021", "88/2021"}, {"Report no. 4417", "4417"}, {"Prüfbericht Nr. 4417", "4417"}, {"Rapport n° 4417", "4417"}, {"Informe n.º 88/2021", "88/2021"}, {"Keuringsrapport nr. 4417", "4417"},
		{"Projekt ELA 2016", ""}, {"Project PA 100 V", ""}, {"Job no 4417, report no. 12", "4417"},
	} {
		j := wholeJob(t, "Ice hall | | "+c.title+"\n|\nRoom | Qty | Tap\nHall | 4 | 6 W\nYard | 2 | 15 W")
		if j.Number.Value != c.want {
			t.Errorf("%s: number %q, want %q", c.title, j.Number.Value, c.want)
		}
	}
}

// Numbers stand in the cell beside a word for a job too. Common practice, no source.
func TestNumbersBesideWordsForJobs(t *testing.T) {
	for _, c := range []struct{ title, want string }{
		{"Quote no | Q-77/21", "Q-77/21"}, {"Angebot | A-77/21", "A-77/21"}, {"Devis n° | D-77/21", "D-77/21"}, {"Presupuesto: | P-77/21", "P-77/21"}, {"Preventivo | P-77/21 | | Impianto a 100 V", "P-77/21"}, {"Offerte | O-77/21", "O-77/21"},
		{"Quote no | 2021", ""}, {"Preventivo | Sala 3", ""},
	} {
		j := wholeJob(t, "Ice hall\n"+c.title+"\n|\nRoom | Qty | Tap\nHall | 4 | 6 W\nYard | 2 | 15 W")
		if j.Number.Value != c.want {
			t.Errorf("%s: number %q, want %q", c.title, j.Number.Value, c.want)
		}
	}
}

// The number of a document stands behind the word that its title begins with, and a mark behind it. Common practice, no source.
func TestNumbersOfSurveysAheadOfTheirPlaces(t *testing.T) {
	for _, c := range []struct{ title, want string }{
		{"Survey 3381 - Ice hall, loudspeakers found", "3381"}, {"Begehung 3381 - Eishalle", "3381"}, {"Relevé 3381 – Patinoire", "3381"}, {"Inspección 1180/24, pista de hielo", "1180/24"},
		{"Sopralluogo 3381: palaghiaccio", "3381"}, {"Opname OP-3381 - IJshal", "OP-3381"},
		{"Survey 2019 - Ice hall", ""}, {"Survey 14 rooms - Ice hall", ""}, {"Survey 100 V - Ice hall", ""}, {"Hall 3381 - Ice hall", ""},
	} {
		j := wholeJob(t, c.title+"\n|\nRoom | Qty | Tap\nHall | 4 | 6 W\nYard | 2 | 15 W")
		if j.Number.Value != c.want {
			t.Errorf("%s: number %q, want %q", c.title, j.Number.Value, c.want)
		}
	}
}
