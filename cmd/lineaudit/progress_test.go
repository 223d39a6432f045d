package main

import (
	"bytes"
	"context"
	"strings"
	"testing"
	"time"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/report"
)

func TestProgressLine(t *testing.T) {
	for _, tt := range []struct {
		files, total int
		took         time.Duration
		want         string
	}{
		{0, 9, time.Second, "0 of 9 files, 0 rows, 0 findings"},
		{1, 2, 2 * time.Second, "1 of 2 files, 40 rows, 1 finding, about a few seconds left"},
		{2, 10, 8 * time.Second, "2 of 10 files, 80 rows, 2 findings, about 30 seconds left"},
		{10, 1000, 10 * time.Second, "10 of 1000 files, 400 rows, 10 findings, about 17 minutes left"},
		{3, 30_000, 10 * time.Second, "3 of 30000 files, 120 rows, 3 findings, about 28 hours left"},
		{2, 2, time.Second, "2 of 2 files, 80 rows, 2 findings"},
	} {
		m := &meter{total: tt.total}
		for range tt.files {
			m.add(&report.File{Results: []*audit.Result{{Job: &schedule.Job{RowsRead: 40}, Findings: []*audit.Finding{{}}}}})
		}
		if got := m.line(tt.took); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}

// Progress is told on a terminal, and leaves nothing behind; elsewhere only
// when the flag asks for it.
func TestProgressIsForTerminals(t *testing.T) {
	for _, tt := range []struct {
		name            string
		width           int
		progress, quiet bool
		told            bool
	}{{"terminal", 80, false, false, true}, {"quiet terminal", 80, false, true, false}, {"file", 0, false, false, false}, {"file, asked for", 0, true, false, true}} {
		t.Run(tt.name, func(t *testing.T) {
			t.Parallel()
			var b bytes.Buffer
			m := newMeter(screen{err: &b, errWidth: tt.width}, &settings{progress: tt.progress, quiet: tt.quiet}, 3)
			time.Sleep(quickEnough + 200*time.Millisecond)
			m.stop()
			if told := strings.Contains(b.String(), "0 of 3 files"); told != tt.told {
				t.Errorf("told %v: %q", told, b.String())
			}
			if tt.width > 0 && tt.told && !strings.HasSuffix(b.String(), "\r\x1b[K") {
				t.Errorf("the line stays: %q", b.String())
			}
		})
	}
}

// A run that is stopped on its way ends at once, with nothing written.
func TestStoppedOnItsWay(t *testing.T) {
	dir := folder(t, map[string]string{"a.csv": job, "b.csv": job, "c.csv": job, "d.csv": job})
	set, _, err := parse([]string{dir, "--workers", "1"}, false)
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(context.Background())
	p, _ := prepare(ctx, set, screen{})
	p.outcomes = make([]report.File, len(p.files))
	n := 0
	err = p.each(ctx, len(p.files), func(int) {
		if n++; n == 2 {
			cancel()
		}
	})
	if err == nil || n != 2 {
		t.Errorf("%d files after the stop, error %v", n-2, err)
	}
}
