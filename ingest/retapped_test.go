package ingest

import (
	"strings"
	"testing"

	"lineaudit/ingest/layout"
)

// A tap that is to be changed is the one that was found until the row says that
// the change is done. Common practice, no source.
func TestTapsFoundAndRequired(t *testing.T) {
	for _, tt := range []struct {
		name, table, want string
		asked             int
	}{
		{"each row says it", "room | tap before | tap | status\nSlip | 15 | 10 | done\nLoft | 6 | 3 | not done\nSteps | 6 | 3 | ", "10 6 6", 0},
		{"in a column of ticks", "room | tap before | tap | : Erledigt\nSlip | 15 | 10 | x\nLoft | 6 | 3 | \nSteps | 6 | 3 | nein", "10 6 6", 0},
		{"whether a snag was put right", "room | tap before | tap | : behoben\nSlip | 15 | 10 | ja\nLoft | 6 | 3 | nein\nSteps | 3 | 3 | ", "10 6 3", 0},
		{"a row says something else", "room | tap before | tap | status\nSlip | 15 | 10 | done\nBar | 6 | 5 | open\nHut | 6 | 3 | done\nQuay | 6 | 3 | done\nLoft | 6 | 3 | ask Kim", "10 6 3 3 6", 1},
		{"no row says it", "room | tap before | tap\nSlip | 15 | 10\nLoft | 3 | 3", "15 3", 1},
	} {
		t.Run(tt.name, func(t *testing.T) {
			table := draw(layout.Loudspeakers, "Taps", tt.table)
			table.Columns[2].Planned = true
			j := jobOf(t, table)
			var got []string
			for _, l := range j.Loudspeakers {
				got = append(got, show(l.Tap))
			}
			want(t, "taps", got, strings.Fields(tt.want))
			n := 0
			for _, q := range j.Questions {
				if strings.Contains(q.Text, "found") {
					n++
				}
			}
			if n != tt.asked {
				t.Errorf("asked %v", asked(j))
			}
		})
	}
}

// Where the tap should have been found there may be nothing yet: the word alone says so.
func TestNothingFoundWhereATapIsToBe(t *testing.T) {
	for _, word := range []string{"missing", "fehlt", "absent", "falta", "manca", "ontbreekt"} {
		table := draw(layout.Loudspeakers, "Taps", "room | tap before | tap | : behoben\nSlip | 15 | 10 | ja\nQuay | "+word+" | 15 | nein\nLoft | k.A. | 5 | nein")
		table.Columns[2].Planned = true
		var got []string
		for _, l := range jobOf(t, table).Loudspeakers {
			got = append(got, l.Status.String())
		}
		want(t, word, got, []string{"installed", "future", "installed"})
	}
}
