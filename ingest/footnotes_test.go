package ingest

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// noted builds a list of loudspeakers whose rows refer to the notes above it.
func noted(t *testing.T, notes, remarks string) *schedule.Job {
	t.Helper()
	var s strings.Builder
	for n := range strings.SplitSeq(notes, "\n") {
		s.WriteString("title : " + n + "\n")
	}
	return jobOf(t, draw(layout.Loudspeakers, "L", s.String()+"tag | tap[W] | control | notes\nLS1 | 6 | ATT-1 | 1\nLS2 | 6 | ATT-2 | "+remarks+"\nLS3 | 6 | ATT-3 | 1"))
}

func TestRowsReferToNumberedNotes(t *testing.T) {
	const notes = "1. Fix to soffit.\n2. Future; wire only, loudspeakers by others.\n3. Do not scale."
	for _, tt := range []struct {
		notes, remarks string
		want           schedule.Status
	}{
		{notes, "2", schedule.Future},
		{notes, "1, 2", schedule.Future},
		{notes, "3", schedule.Installed},
		{notes, "bracket by others? see note 2", schedule.Future},
		{"2. Future; wire only", "2", schedule.Installed}, // alone it is no list of notes: a second floor, perhaps
		{notes, "2 off", schedule.Installed},
	} {
		if j := noted(t, tt.notes, tt.remarks); j.Loudspeakers[1].Status != tt.want {
			t.Errorf("%q under %q: %v, want %v", tt.remarks, tt.notes, j.Loudspeakers[1].Status, tt.want)
		}
	}
}

func TestNumberedNotesRateRangesOfControls(t *testing.T) {
	j := noted(t, "1. Fix to soffit.\n2. Attenuators ATT-1 to ATT-3 are rated 40 W, all with 24 V relay.", "1")
	for _, c := range j.Controls {
		if show(c.Rated) != "40" {
			t.Errorf("%s rated %s, want 40", c.Name, show(c.Rated))
		}
	}
}

// Numbered notes name the control of the rows that refer to them. Common practice, no source.
func TestNumberedNotesNameControls(t *testing.T) {
	for _, tt := range []struct{ first, second, want string }{
		{"(1) on volume control VC7, 30 W", "(2) not seen", "VC7 30 W x2"},
		{"(1) mit Regler LR7 30 W", "(2) am Mast", "LR7 30 W x2"},
		{"(1) con attenuatore AT7 da 30 W", "(2) con attenuatore AT8 da 10 W", "AT7 30 W x2, AT8 10 W x1"},
		{"(1) bracket by the builder", "(2) not seen", ""},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "L", "title : "+tt.first+"\ntitle : "+tt.second+"\nroom | quantity | tap[W] | notes\nQuay | 2 | 6 | (1)\nShed | 2 | 3 | (1)\nShop | 1 | 3 | (2)\nYard | 1 | 10 | "))
		if got := controlsOf(j); got != tt.want {
			t.Errorf("%s, %s: got %s, want %s", tt.first, tt.second, got, tt.want)
		}
	}
}
