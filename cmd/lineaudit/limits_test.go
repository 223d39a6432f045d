package main

import (
	"context"
	"strings"
	"testing"
	"time"

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
		got := p.one(context.Background(), listing.Files[0])
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
		limited, cancel := p.limited(context.Background())
		if read := p.interpret(limited, book); (string(read.Kind) == "unreadable") != late || late && !strings.Contains(read.Reason, "--time-limit") {
			t.Errorf("with %v it is understood as %s, %s", limit, read.Kind, read.Reason)
		}
		cancel()
	}
}
