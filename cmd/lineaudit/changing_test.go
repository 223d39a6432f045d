package main

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"lineaudit/report"
)

// A file that somebody writes to between audit and marking gets no copy with
// findings that are not its own, and the run says so.
func TestFileThatChangesBeforeItIsMarked(t *testing.T) {
	dir := folder(t, map[string]string{"job.csv": job, "other.csv": strings.ReplaceAll(job, "Palm", "Fern")})
	out := filepath.Join(t.TempDir(), "out")
	set, _, err := parse([]string{dir, "--out", out}, false)
	if err != nil {
		t.Fatal(err)
	}
	p, _ := prepare(context.Background(), set, screen{})
	if p.shelf, err = report.NewShelf(); err != nil {
		t.Fatal(err)
	}
	defer p.shelf.Close()
	if err := p.readAll(context.Background(), screen{}); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "job.csv"), []byte(strings.ReplaceAll(job, "LS-1", "LS-7")), 0o644); err != nil {
		t.Fatal(err)
	}
	a := p.audit()
	if err := write(context.Background(), p, a); err != nil {
		t.Fatal(err)
	}
	copies, err := os.ReadDir(filepath.Join(out, "marked"))
	if err != nil || len(copies) != 1 || !strings.HasPrefix(copies[0].Name(), "other") {
		t.Errorf("copies %v, error %v", copies, err)
	}
	if !slices.ContainsFunc(a.Unwritten, func(s string) bool { return strings.HasPrefix(s, "job.csv: ") && strings.Contains(s, "changed") }) || exitCode(set, a) != incomplete {
		t.Errorf("it says %q and ends with %d", a.Unwritten, exitCode(set, a))
	}
}
