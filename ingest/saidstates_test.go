package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

func TestStatesSaidOfLinesAndPlaces(t *testing.T) {
	for _, tt := range []struct {
		note string
		want schedule.Status // of the second row, which is of line L4 in the yard
	}{
		{"L4 : prévue en tranche 2, HP non posés.", schedule.Future},
		{"L4: removed 2019", schedule.Installed}, // a figure may count some of them: asked
		{"L4: removed", schedule.Removed},
		{"Yard - not yet installed", schedule.Future},
		{"L4: controls removed", schedule.Installed},
		{"L4: 2 horns removed", schedule.Installed},
		{"L4: horns removed, columns fitted", schedule.Installed},
		{"L9: removed", schedule.Installed},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "L", "title : "+tt.note+"\ncircuit | room | quantity | tap[W]\nL1 | Hall | 4 | 6\nL4 | Yard | 4 | 10"))
		if got := j.Loudspeakers[1].Status; got != tt.want || j.Loudspeakers[0].Status != schedule.Installed {
			t.Errorf("%s: %v and %v, want the first installed and %v", tt.note, j.Loudspeakers[0].Status, got, tt.want)
		}
		if tt.want != schedule.Installed && len(j.Assumptions) == 0 {
			t.Errorf("%s: nothing is said of it", tt.note)
		}
	}
}

// A state in place of a figure is said of the row; "HP déposé" of the loudspeaker.
func TestStatesInPlaceOfFigures(t *testing.T) {
	for _, tt := range []struct {
		rating, remark string
		want           schedule.Status
	}{
		{"not yet installed", "", schedule.Future},
		{"", "HP déposé", schedule.Removed},
		{"", "HP remplacé", schedule.Installed},
		{"10", "", schedule.Installed},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "L", "tag | tap[W] | control rating | notes\nLS1 | 6 | "+tt.rating+" | "+tt.remark))
		if got := j.Loudspeakers[0].Status; got != tt.want {
			t.Errorf("%q, %q: %v, want %v", tt.rating, tt.remark, got, tt.want)
		}
	}
}
