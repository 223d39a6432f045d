package main

import (
	"context"
	"strings"
	"testing"
	"time"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/source"
	"lineaudit/report"
)

// A file that takes longer than a file may is one row with a reason, whatever
// it was that took so long.
func TestAFileHasItsTime(t *testing.T) {
	dir := folder(t, map[string]string{"job.csv": job + strings.Repeat("LS-9,Palm house,10 W,VC-1,50 W,4\n", 500)})
	listing, err := source.Find(context.Background(), []string{dir}, source.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, limit := range []time.Duration{time.Nanosecond, time.Minute} {
		p := &pipeline{set: &settings{timeLimit: limit}}
		got, _ := p.one(context.Background(), listing.Files[0])
		late := limit < time.Second
		if (got.Kind == report.Unreadable) != late || late && !strings.Contains(got.Reason, "given up after 1ns; ") {
			t.Errorf("with %v: %s, %s", limit, got.Kind, got.Reason)
		}
		if got.SHA256 == "" {
			t.Errorf("with %v: nobody knows which file it was", limit)
		}
		book, err := listing.Files[0].Read(context.Background(), source.Options{})
		if err != nil {
			t.Fatal(err)
		}
		limited, cancel := p.limited(context.Background(), time.Now(), 0)
		if read := p.interpret(limited, book, func(*schedule.Job) error { return nil }); (string(read.Kind) == "unreadable") != late || late && !strings.Contains(read.Reason, "--time-limit") {
			t.Errorf("with %v it is understood as %s, %s", limit, read.Kind, read.Reason)
		}
		cancel()
	}
}

// A register gets time for what it holds, and no file has time without end: the
// rows that one may hold are bounded.
func TestTimeGrowsWithRows(t *testing.T) {
	s := &settings{timeLimit: time.Minute}
	for _, tt := range []struct {
		rows int
		want time.Duration
	}{{0, time.Minute}, {500, 60*time.Second + 500*time.Millisecond}, {200_000, 260 * time.Second}, {grid.DefaultLimits().MaxRows, 26 * time.Minute}} {
		if got := s.allowed(tt.rows); got != tt.want {
			t.Errorf("%d rows may take %v, want %v", tt.rows, got, tt.want)
		}
	}
	p := &pipeline{set: s}
	start := time.Now().Add(-2 * time.Minute) // what waiting for a busy machine has taken so far
	for rows, late := range map[int]bool{0: true, 1000: true, 200_000: false} {
		ctx, cancel := p.limited(context.Background(), start, rows)
		if (ctx.Err() != nil) != late {
			t.Errorf("%d rows after two minutes: %v", rows, ctx.Err())
		}
		cancel()
	}
	book := &grid.Book{Sheets: []*grid.Sheet{{Rows: make([]grid.Row, 3)}, {Rows: make([]grid.Row, 4)}}}
	if n := rowsOf(book); n != 7 {
		t.Errorf("%d rows on two sheets of 3 and 4", n)
	}
}
