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
