package ingest

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/text"
)

// A file with more rows in its tables than one may have is refused as a whole,
// with the reason and what to do; one with just as many is read in full.
func TestRowsAreBounded(t *testing.T) {
	book, err := text.Read("a.csv", []byte("Tag,Zone,Tap\n"+strings.Repeat("LS,Pier,5 W\n", 50)), grid.DefaultLimits(), "")
	if err != nil {
		t.Fatal(err)
	}
	if f := Read(book, Options{MaxRows: 49}); f.Kind != Unreadable || len(f.Jobs) > 0 || !strings.Contains(f.Reason, "50 rows, more than the 49") || !strings.Contains(f.Reason, "; split it") {
		t.Errorf("%s: %s", f.Kind, f.Reason)
	}
	if f := Read(book, Options{MaxRows: 50}); f.Kind != Schedule || f.Jobs[0].RowsRead != 50 {
		t.Errorf("%s: %s", f.Kind, f.Reason)
	}
}

// The jobs of a register can be had one by one: the same ones, in their order,
// the first with the remarks of the reader; an error ends the reading.
func TestJobsOneByOne(t *testing.T) {
	const list = "Job no.,Zone,Tag,Tap\nK1,Pier,LS-1,5 W\nK2,Quay,LS-2,5 W\nK3,Dome,LS-3,5 W\n"
	for _, tt := range []struct {
		name, content string
		stop          int // the job at which an error ends it
		want          []string
		kind          Kind
		reason        string
	}{
		{"a register", list, 9, []string{"K1", "K2", "K3"}, Schedule, ""},
		{"ended", list, 2, []string{"K1", "K2"}, Unreadable, "enough of K2"},
		{"the first says too little", strings.Replace(list, "5 W", "", 1), 9, []string{"K1", "K2", "K3"}, Schedule, ""},
		{"no schedule", "Job no.,Zone,Price\nK1,Pier,3.50\nK2,Quay,4.50\n", 9, nil, NotASchedule, "no column of taps or watts (found: job number, price, zone)"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			book, err := text.Read("register.csv", []byte(tt.content), grid.DefaultLimits(), "")
			if err != nil {
				t.Fatal(err)
			}
			var got []string
			remarks := 0
			f := Read(book, Options{Each: func(j *schedule.Job) error {
				got = append(got, j.Number.Value)
				for _, a := range j.Assumptions {
					if a.Because == "remark of the reader" && len(got) == 1 {
						remarks++
					}
				}
				if len(got) == tt.stop {
					return errors.New("enough of " + j.Number.Value)
				}
				return nil
			}})
			if !slices.Equal(got, tt.want) || f.Kind != tt.kind || f.Reason != tt.reason || len(f.Jobs) > 0 {
				t.Errorf("%q, %s: %q, %d jobs kept", got, f.Kind, f.Reason, len(f.Jobs))
			}
			if len(got) > 0 && remarks != len(book.Notes) {
				t.Errorf("%d remarks, want %d", remarks, len(book.Notes))
			}
		})
	}
}
