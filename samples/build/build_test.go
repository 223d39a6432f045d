package main

import (
	"archive/zip"
	"bytes"
	"cmp"
	"io"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"lineaudit/samples/answer"

	"github.com/xuri/excelize/v2"
)

// TestFindingsByHand works the findings out from the facts and compares them
// with those written beside each job by hand.
func TestFindingsByHand(t *testing.T) {
	all := truthOf(jobs())
	got := findings(all)
	var want []answer.Fault
	for _, f := range all.Faults {
		if f.Rule != "total-mismatch" && f.Rule != "turned-into-date" {
			want = append(want, f)
		}
	}
	order := func(a, b answer.Fault) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Rule, b.Rule), cmp.Compare(a.Cell, b.Cell))
	}
	slices.SortFunc(got, order)
	slices.SortFunc(want, order)
	for i := range max(len(got), len(want)) {
		if i >= len(got) || i >= len(want) {
			t.Fatalf("%d findings worked out, %d by hand:\n%v\n%v", len(got), len(want), got, want)
		}
		g, w := got[i], want[i]
		if g.File != w.File || g.Rule != w.Rule || g.Grade != w.Grade || g.Cell != w.Cell || g.Sheet != w.Sheet ||
			!near(g.Measured, w.Measured) || !near(g.Limit, w.Limit) || !near(g.Low, w.Low) || !near(g.High, w.High) {
			t.Errorf("worked out %+v\nby hand    %+v", g, w)
		}
	}
}

// near allows for the four figures of a hand calculation.
func near(a, b float64) bool {
	return math.IsNaN(a) && math.IsNaN(b) || math.Abs(a-b) <= 1e-3*math.Abs(b)
}

// findings applies the eight basic rules with their default limits.
func findings(all answer.Archive) []answer.Fault {
	var out []answer.Fault
	add := func(file, rule, grade, sheet, cell string, measured, limit, low, high float64) {
		out = append(out, answer.Fault{File: file, Rule: rule, Grade: grade, Sheet: sheet, Cell: cell,
			Measured: measured, Limit: limit, Low: low, High: high})
	}
	over := func(file, rule, sheet, cell string, load, rated float64) bool {
		switch {
		case load > 1.25*rated*(1+1e-9):
			add(file, rule, "danger", sheet, cell, load, rated, unknown, unknown)
		case load > rated*(1+1e-9):
			add(file, rule, "fault", sheet, cell, load, rated, unknown, unknown)
		default:
			return false
		}
		return true
	}
	for _, c := range all.Controls {
		over(c.File, "control-overload", c.Sheet, c.Cell, c.LoadW, c.RatedW)
	}
	for _, c := range all.Channels {
		if !over(c.File, "channel-overload", c.Sheet, c.Cell, c.LoadW, c.RatedW) && c.LoadW > 0.8*c.RatedW*(1+1e-9) {
			add(c.File, "headroom-short", "caution", c.Sheet, c.Cell, c.LoadW, 0.8*c.RatedW, unknown, unknown)
		}
	}
	for _, a := range all.Amplifiers {
		over(a.File, "frame-overload", a.Sheet, a.Cell, a.LoadW, a.RatedW)
	}
	for _, l := range all.Lines {
		low, high := min(l.FarDB, l.EvenDB), l.WorstDB
		if len(l.Chain) > 0 {
			low = high
		}
		for _, limit := range []struct {
			db    float64
			grade string
		}{{3, "fault"}, {1, "caution"}} {
			if low > limit.db || high > limit.db && limit.db == 1 {
				if len(l.Chain) > 0 {
					low, high = unknown, unknown
				}
				add(l.File, "line-loss", limit.grade, l.Sheet, l.Cell, l.WorstDB, limit.db, low, high)
				break
			}
		}
	}
	zone := map[string]bool{}
	for _, l := range all.Loudspeakers {
		switch {
		case l.LowOhm > 0:
			add(l.File, "low-impedance-on-line", "", l.Sheet, l.Cell, unknown, unknown, unknown, unknown)
		case l.TapV != l.LineV && !zone[l.File+l.Zone]:
			zone[l.File+l.Zone] = true
			add(l.File, "voltage-mismatch", "fault", l.Sheet, l.Cell, l.TapV, l.LineV, unknown, unknown)
		}
	}
	return out
}

// TestCheckedIn builds everything anew and compares it with what is checked
// in: the truth byte by byte, and the workbooks that need no LibreOffice.
func TestCheckedIn(t *testing.T) {
	all := truthOf(jobs())
	dir := t.TempDir()
	if err := all.Write(dir); err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob(filepath.Join(dir, "*.csv"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no truth: %v", err)
	}
	for _, f := range files {
		same(t, f, filepath.Join("..", "truth", filepath.Base(f)))
	}
	for _, j := range jobs() {
		if j.how == "xlsx" || j.how == "csv" {
			if err := j.save(dir); err != nil {
				t.Fatal(err)
			}
			same(t, filepath.Join(dir, j.path), filepath.Join("..", "archive", j.path))
		}
	}
}

func same(t *testing.T, built, kept string) {
	t.Helper()
	a, b := parts(t, built), parts(t, kept)
	if len(a) != len(b) {
		t.Errorf("%s has %d parts, the builder writes %d", kept, len(b), len(a))
	}
	for name, data := range a {
		if !bytes.Equal(data, b[name]) {
			t.Errorf("%s %s is not what the builder writes: run it again", kept, name)
		}
	}
}

// parts returns the members of a workbook by name, or a plain file as one.
// The list of content types comes in random order and is left out.
func parts(t *testing.T, path string) map[string][]byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if filepath.Ext(path) != ".xlsx" {
		return map[string][]byte{"": data}
	}
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		t.Fatal(err)
	}
	out := map[string][]byte{}
	for _, m := range z.File {
		r, err := m.Open()
		if err != nil {
			t.Fatal(err)
		}
		if out[m.Name], err = io.ReadAll(r); err != nil {
			t.Fatal(err)
		}
		r.Close()
	}
	delete(out, "[Content_Types].xml")
	return out
}

// TestTotalsHaveValues looks at the stored results of formulas.
func TestTotalsHaveValues(t *testing.T) {
	seen := 0
	for _, j := range jobs() {
		if !strings.HasSuffix(j.path, ".xlsx") {
			continue
		}
		f, err := excelize.OpenFile(filepath.Join("..", "archive", j.path))
		if err != nil {
			t.Fatal(err)
		}
		for _, s := range j.book.Sheets {
			for r, row := range s.Rows {
				for c, cell := range row {
					if cell.Formula == "" {
						continue
					}
					name, err := excelize.CoordinatesToCellName(c+1, r+1)
					if err != nil {
						t.Fatal(err)
					}
					seen++
					if v, err := f.GetCellValue(s.Name, name, excelize.Options{RawCellValue: true}); err != nil || v == "" {
						t.Errorf("%s %s!%s has no stored value: %v", j.path, s.Name, name, err)
					}
				}
			}
		}
		f.Close()
	}
	if seen < 10 {
		t.Errorf("only %d formulas in the archive", seen)
	}
}
