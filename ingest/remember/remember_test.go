package remember

import (
	"fmt"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
)

func TestSameAsWithoutMemory(t *testing.T) {
	compute := func(text string, how int) string { return fmt.Sprint(text, "/", how) }
	f := New(compute)
	var wg sync.WaitGroup
	for w := range 4 {
		wg.Go(func() {
			for i := range 40_000 {
				text := fmt.Sprint("LS-", (i*(w+1))%30_000)
				if got, want := f.Of(text, i%3), compute(text, i%3); got != want {
					t.Errorf("Of(%q, %d) = %q, want %q", text, i%3, got, want)
					return
				}
			}
		})
	}
	wg.Wait()
}

func TestComputesOnce(t *testing.T) {
	var calls atomic.Int64
	f := New(func(text string, how int) int { calls.Add(1); return len(text) + how })
	for range 100 {
		for _, text := range []string{"", "Zone 1", "Zone 2"} {
			f.Of(text, 0)
			f.Of(text, 1)
		}
	}
	if calls.Load() != 6 {
		t.Errorf("computed %d times, want 6", calls.Load())
	}
}

// What is remembered is bounded in number, and prose is not remembered at all.
func TestBounded(t *testing.T) {
	f := New(func(text string, _ int) int { return len(text) })
	for i := range 3 * shards * perShard {
		f.Of(fmt.Sprint("VC-", i), 0)
	}
	f.Of(strings.Repeat("word ", 50), 0)
	n := 0
	for i := range f.shards {
		s := &f.shards[i]
		if len(s.young) > perShard || len(s.old) > perShard {
			t.Errorf("shard of %d and %d texts", len(s.young), len(s.old))
		}
		n += len(s.young) + len(s.old)
		for _, m := range []map[key]int{s.young, s.old} {
			for k := range m {
				if len(k.text) > longest {
					t.Errorf("remembers a text of %d bytes", len(k.text))
				}
			}
		}
	}
	if n < shards*perShard {
		t.Errorf("remembers %d texts only", n)
	}
}

// A text that keeps coming survives the many that come once.
func TestKeepsWhatComesBack(t *testing.T) {
	calls := 0
	f := New(func(text string, _ int) int {
		if text == "Tap (W)" {
			calls++
		}
		return 0
	})
	for i := range 3 * shards * perShard {
		f.Of(fmt.Sprint("VC-", i), 0)
		f.Of("Tap (W)", 0)
	}
	if calls != 1 {
		t.Errorf("read %d times, want once", calls)
	}
}

func BenchmarkOf(b *testing.B) {
	f := New(func(text string, _ int) int { return len(text) })
	b.RunParallel(func(pb *testing.PB) {
		for pb.Next() {
			f.Of("Ground floor corridor", 0)
		}
	})
}
