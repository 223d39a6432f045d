package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// Amplifiers and lines may bear any names: a note is read by those that rows
// use. The notes are common practice, no source.
func TestNotesByTheNamesInUse(t *testing.T) {
	for _, tt := range []struct {
		name, note, rows string
		want             []string
	}{
		{"a name of two words", "HV 1: 60 W, HV 2: 2 x 120 W", "LS-1 | 5 | HV 1 | 1\nLS-2 | 5 | HV 2 | 2", []string{"HV 1 / 1 60 W ? V", "HV 2 / 2 120 W ? V", "HV 2 / 1 120 W ? V"}},
		{"a plain word", "North rack: 2 outputs of 15 W. South rack: 2 outputs of 60 W.", "LS-1 | 5 | North | 1\nLS-2 | 5 | South | 1",
			[]string{"North / 1 15 W ? V", "South / 1 60 W ? V", "North / 2 15 W ? V", "South / 2 60 W ? V"}},
		{"two names and one rating", "M1 and M2 are 120 W each, M3 is standby", "LS-1 | 5 | M1 | 1\nLS-2 | 5 | M2 | 1", []string{"M1 / 1 120 W ? V", "M2 / 1 120 W ? V"}},
		{"lines", "PA system: HR-1, HR-2: 100 W amp channel", "LS-1 | 5 | | HR-1\nLS-2 | 5 | | HR-2", []string{"HR-1 100 W ? V", "HR-2 100 W ? V"}},
		{"loads of lines", "L1 5 W, L2 10 W", "LS-1 | 5 | | L1\nLS-2 | 10 | | L2", []string{"L1 ? W ? V", "L2 ? W ? V"}},
		{"into a few ohms", "L1: 250 W @ 4 ohm, L2: 120 W", "LS-1 | 5 | | L1\nLS-2 | 10 | | L2", []string{"L1 ? W ? V", "L2 120 W ? V"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+tt.note+"\ntag | tap[W] | amplifier | channel\n"+tt.rows))
			want(t, "channels", channelRatings(j), tt.want)
		})
	}
}

// An amplifier that no row names is known by the outputs or the zones that a
// note says it feeds.
func TestNotesOfWhatAmplifiersFeed(t *testing.T) {
	for _, tt := range []struct {
		name, note, rows string
		want             []string
	}{
		{"lines by number", "Amp A (240 W) feeds lines 1 and 2. Amp B (120 W) feeds line 3.", "LS-1 | 5 | 1 |\nLS-2 | 5 | 2 |\nLS-3 | 5 | 3 |",
			[]string{"A / 1 ? W ? V", "A / 2 ? W ? V", "B / 3 120 W ? V"}},
		{"circuits by letter", "All A circuits are on amplifier 1 (240 W), all B circuits are on amplifier 2 (240 W)", "LS-1 | 5 | A |\nLS-2 | 5 | B |",
			[]string{"Amp 1 / A 240 W ? V", "Amp 2 / B 240 W ? V"}},
		{"circuits by their first letter", "A circuits on amplifier X1, B circuits on amplifier X2, both 250 W a circuit", "LS-1 | 5 | A1 |\nLS-2 | 5 | A2 |\nLS-3 | 5 | B1 |",
			[]string{"X1 / A1 250 W ? V", "X1 / A2 250 W ? V", "X2 / B1 250 W ? V"}},
		{"zones", "Booster B1: zone 1, 2 (80 W). Booster B2: zone 3 (40 W).", "LS-1 | 5 | | 1 Pier\nLS-2 | 5 | | 2 Shed\nLS-3 | 5 | | 3 Crane",
			[]string{"B1 / 1 80 W ? V", "B2 / 1 40 W ? V"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+tt.note+"\ntag | tap[W] | channel | zone\n"+tt.rows))
			want(t, "channels", channelRatings(j), tt.want)
			for _, l := range j.Loudspeakers {
				if l.Channel == nil || l.Channel.Amplifier == nil {
					t.Errorf("%s hangs on no amplifier", l.Tag.Value)
				}
			}
		})
	}
}

// Where each sheet is headed by an amplifier of its own, its list hangs on it.
func TestAmplifierAboveTheListOfItsSheet(t *testing.T) {
	north := draw(layout.Loudspeakers, "North", "title : System 1, amplifier A, 240 W\nroom | quantity | tap\nStand | 6 | 15 W")
	south := draw(layout.Loudspeakers, "South", "title : System 2, amplifier B, 60 W\nroom | quantity | tap\nLocker | 4 | 3 W")
	want(t, "channels", channelRatings(jobOf(t, north, south)), []string{"A / 1 240 W ? V", "B / 1 60 W ? V"})
}
