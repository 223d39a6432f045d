package main

import (
	"os"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"testing"
	"time"

	"lineaudit/ingest/grid/source"
)

// The limit of memory follows what is in use where that is more than was thought,
// falls back, and is what it was before once the run has ended.
func TestPaceFollowsWhatIsInUse(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.csv")
	if err := os.WriteFile(path, make([]byte, 1<<20), 0o644); err != nil {
		t.Fatal(err)
	}
	limit := func() int64 { return debug.SetMemoryLimit(-1) }
	before := limit()
	restore := paceCollection([]source.File{{Path: path}})
	least := limit()
	if least != usualMemory+timesItsSize<<20 {
		t.Errorf("a file of 1 MiB gets %d MiB", least>>20)
	}
	settles := func(what string, as func(int64) bool) {
		t.Helper()
		for range 200 {
			runtime.GC()
			if as(limit()) {
				return
			}
			time.Sleep(5 * time.Millisecond)
		}
		t.Errorf("%s: the limit is %d MiB", what, limit()>>20)
	}
	held := make([]byte, 300<<20)
	settles("with 300 MiB in use", func(now int64) bool { return now > 375<<20 && now < 500<<20 })
	runtime.KeepAlive(held)
	held = nil
	settles("with them gone", func(now int64) bool { return now == least })
	restore()
	runtime.GC()
	time.Sleep(20 * time.Millisecond)
	if limit() != before {
		t.Errorf("after the run the limit is %d, before it was %d", limit(), before)
	}
}
