package ingest

import "testing"

// A list of amplifiers of two columns ends where a list of controls with a title begins in its first column. Common practice, no
// source.
func TestControlsUnderTwoColumnsOfAmplifiers(t *testing.T) {
	for _, c := range []struct{ head, controls string }{
		{"Amplifier | Circuit", "|\nVolume controls outside the rack:\nRA (20 W) meeting\nRB (5 W) desk"},
		{"Verstärker | Linie", "Regler:\nRA, 20 W, meeting\nRB, 5 W, desk"},
		{"Amplificateur | Ligne", "|\nAtténuateurs\nRA : 20 W meeting\nRB : 5 W desk"},
		{"Amplificador | Línea", "|\nReguladores:\nRA (20 W) meeting\nRB (5 W) desk"},
		{"Amplificatore | Linea", "|\nRegolatori:\nRA - 20 W - meeting\nRB - 5 W - desk"},
		{"Versterker | Lijn", "Regelaars\nRA meeting (20 W)\nRB desk (5 W)"},
	} {
		j := wholeJob(t, "Depot, 100 V\n|\nRoom | Speakers | Tap W | Circuit\nmeeting | 4 | 3 | 2\ndesk | 2 | 1.5 | 2\nhall | 4 | 10 | 1\n|\n"+c.head+"\nVA (120 W) | 1\nVB (60 W) | 2\n"+c.controls)
		want(t, c.head, channelRatings(j), []string{"VA / 1 120 W 100 V", "VB / 2 60 W 100 V"})
		if got := controlsOf(j); got != "RA 20 W x1, RB 5 W x1" {
			t.Errorf("%s: %s", c.head, got)
		}
	}
}
