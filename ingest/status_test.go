package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// The words are common practice, no source.
func TestStatesOfRows(t *testing.T) {
	for _, tt := range []struct {
		name, columns, row string
		want               schedule.Status
		asked              bool
	}{
		{"in brackets behind a place", "room | tap[W] | channel", "Pier (réserve) | 5 | A1.1", schedule.Spare, false},
		{"in brackets in a description", "description | tap[W] | channel", "Horn in its box (spare) | 5 | A1.1", schedule.Spare, false},
		{"in brackets behind an output", "room | tap[W] | channel", "Pier | 5 | A1.1 (à venir)", schedule.Future, false},
		{"a count of spares", "room | quantity | tap[W]", "Pier | 2 reserve | 5", schedule.Spare, false},
		{"a count", "room | quantity | tap[W]", "Pier | 2 | 5", schedule.Installed, false},
		{"a tap", "tag | room | tap | channel", "LS-1 | Pier | removed | A1.1", schedule.Removed, false},
		{"two states in a column", "room | status | tap[W]", "Pier | existing, taken down | 5", schedule.Removed, false},
		{"a room of that name", "room | tap[W] | channel", "Lager | 5 | A1.1", schedule.Installed, false},
		{"a sentence is asked about", "room | tap[W] | notes", "Pier | 5 | stands where the removed horn stood before", schedule.Installed, true},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.columns+"\n"+tt.row))
			if len(j.Loudspeakers) != 1 || j.Loudspeakers[0].Status != tt.want {
				t.Fatalf("%v, want %v", describe(j), tt.want)
			}
			isAsked := false
			for _, q := range j.Questions {
				isAsked = isAsked || q.Field == "status"
			}
			if isAsked != tt.asked {
				t.Errorf("questions %v", asked(j))
			}
		})
	}
}

func TestLegendOfStates(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Plan", "title : (E) EXISTING TO REMAIN  (N) NEW  (R) REMOVE  (F) FUTURE\ntag | room | tap[W]\n(E)S1 | Hall | 5\n(R)S2 | Hall | 5\n(N)S3 | Hall | 5\n(F)S4 | Hall | 5"))
	var got []string
	for _, l := range j.Loudspeakers {
		got = append(got, l.Status.String())
	}
	want(t, "states", got, []string{"installed", "removed", "installed", "future"})
}

func TestColumnOfStatesUnderAnyHeader(t *testing.T) {
	for _, field := range []string{"job: Measure", ": Action", "from: Findings"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Plan", "tag | room | tap[W] | "+field+"\nS1 | Hall | 5 | existing\nS2 | Hall | 5 | removed\nS3 | Hall | 5 | new\nS4 | Bar | 5 | future"))
		var got []string
		for _, l := range j.Loudspeakers {
			got = append(got, l.Status.String())
		}
		want(t, field, got, []string{"installed", "removed", "installed", "future"})
	}
}
