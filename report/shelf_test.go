package report_test

import (
	"fmt"
	"os"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/report"
	"lineaudit/report/reporttest"
)

// shelve is the audit with all its results on a shelf.
func shelve(t *testing.T, a *report.Audit) *report.Audit {
	t.Helper()
	s, err := report.NewShelf()
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { s.Close() })
	out := *a
	out.Shelf, out.Files = s, slices.Clone(a.Files)
	for i := range out.Files {
		f := &out.Files[i]
		f.Results = slices.Clone(f.Results)
		for j := range f.Results {
			f.Results[j] = s.Keep(f.Results[j])
		}
	}
	out.Archive = audit.Rank(out.Results())
	return &out
}

func rowsOf(a *report.Audit) map[string][][]string {
	all := map[string][][]string{}
	for _, t := range append(a.SheetTables(), a.Tables()...) {
		rows := [][]string{{fmt.Sprint(t.Count)}}
		for row := range t.Rows {
			var cells []string
			for _, v := range row {
				cells = append(cells, v.Text())
			}
			rows = append(rows, cells)
		}
		all[t.Name] = rows
	}
	return all
}

// What reports say does not depend on where the rows of jobs are held.
func TestShelfSaysTheSame(t *testing.T) {
	for _, a := range []*report.Audit{reporttest.Overloaded(), reporttest.Fixed(), reporttest.Hostile()} {
		for _, f := range a.Files {
			for _, r := range f.Results {
				r.Score = 0 // of the ranking, which the shelved ones get anew
			}
		}
		a.Archive = audit.Rank(a.Results())
		kept := shelve(t, a)
		if d := cmp.Diff(rowsOf(a), rowsOf(kept)); d != "" {
			t.Errorf("-whole +shelved\n%s", d)
		}
		if d := cmp.Diff(a.FirstPage(), kept.FirstPage()); d != "" {
			t.Errorf("first page: -whole +shelved\n%s", d)
		}
		if d := cmp.Diff(a.Loads(20), kept.Loads(20), cmp.Comparer(func(a, b schedule.Ref) bool { return a == b })); d != "" {
			t.Errorf("loads: -whole +shelved\n%s", d)
		}
		if d := cmp.Diff(a.Archive.Counts, kept.Archive.Counts); d != "" {
			t.Errorf("counts: -whole +shelved\n%s", d)
		}
		for _, r := range kept.Results() {
			if len(r.Job.Loudspeakers)+len(r.Job.Zones)+len(r.Passed)+len(r.Assumptions)+len(r.Channels) > 0 {
				t.Errorf("%s holds parts that stand on the shelf", r.Job.File)
			}
		}
		if err := kept.Shelf.Err(); err != nil {
			t.Error(err)
		}
	}
}

// A shelf whose file fails says so, whatever the tables then lack.
func TestShelfTellsOfFailure(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("TMPDIR", dir)
	a := shelve(t, reporttest.Overloaded())
	files, _ := os.ReadDir(dir)
	if len(files) != 1 {
		t.Skipf("%d temporary files", len(files))
	}
	if err := os.Truncate(dir+"/"+files[0].Name(), 10); err != nil {
		t.Fatal(err)
	}
	for _, table := range a.Tables() {
		for range table.Rows {
		}
	}
	if a.Shelf.Err() == nil {
		t.Error("no error")
	}
}
