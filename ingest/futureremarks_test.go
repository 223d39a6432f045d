package ingest

import "testing"

// A remark that says when loudspeakers are meant to come and that they are not there yet leaves their row
// out. Common practice, no source.
func TestRemarksOfWhatIsMeantToCome(t *testing.T) {
	for _, remark := range []string{"planned for 2026, not yet fitted", "geplant für 2026, noch nicht montiert", "prévus en 2026, pas encore posés", "prévue en 2026, pas encore posée",
		"previstos en 2026, aún no montados", "previsti nel 2026, non ancora montati", "gepland voor 2026, nog niet geplaatst"} {
		j := wholeJob(t, "Tram depot 100 V\n|\nWhere | Qty | Tap (W) | Amp | Remarks\nHall | 4 | 6 | A1 | fitted in 2019\nYard | 2 | 10 | A1 | "+remark)
		want(t, remark, describe(j)[:1], []string{"4 x 6 W zone Hall channel A1 / 1"})
		if len(j.Questions) > 0 {
			t.Errorf("%s: %v", remark, asked(j))
		}
		if n := len(j.Loudspeakers); n > 1 && j.Loudspeakers[1].Status == 0 {
			t.Errorf("%s: counts", remark)
		}
	}
}

// Words over a matrix of taps that begin like the value of a pivot table may state the line voltage.
func TestLineVoltageOverAMatrix(t *testing.T) {
	for _, title := range []string{"Nombre de haut-parleurs par réglage, lignes 100 V", "Anzahl - Lautsprecher je Anzapfung, Linien 100 V", "Aantal van luidsprekers per tap, 100 V lijnen", "Count of heads by tap, 100 V lines"} {
		j := wholeJob(t, "Hothouse, job 4110\n"+title+"\n|\nRoom | Zone | 1.5 W | 3 W | 6 W | Total\nDoor | Z1 | | 4 | 2 | 6\nTill | Z1 | 1 | | | 1\nPalms | Z2 | | | 8 | 8\n|\nZone | Amp | Output | Power\nZ1 | AM1 | 1 | 60 W\nZ2 | AM1 | 2 | 120 W")
		want(t, title, channelRatings(j), []string{"AM1 / 1 60 W 100 V", "AM1 / 2 120 W 100 V"})
	}
}
