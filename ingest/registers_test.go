package ingest

import (
	"fmt"
	"testing"

	"lineaudit/ingest/layout"
)

func TestPlacesOfJobsAreSites(t *testing.T) {
	register := "job number | room | zone | quantity | tap[W]\nM1 | %s | Quay | 4 | 15\nM1 | %s | Hangar | 4 | 6\nM2 | Ice rink | Rink | 6 | 30\nM2 | Ice rink | Stand | 8 | 10"
	for _, tt := range []struct {
		name, second, site string
	}{
		{"one place a job", "Boathouse", "Boathouse"},
		{"rooms of a job", "Loft", "M1"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			jobs := jobsOf(&Options{}, draw(layout.Loudspeakers, "Works", fmt.Sprintf(register, "Boathouse", tt.second)))
			if len(jobs) != 2 || jobs[0].Site.Value != tt.site {
				t.Errorf("%d jobs, the first at %q, want %q", len(jobs), jobs[0].Site.Value, tt.site)
			}
		})
	}
}
