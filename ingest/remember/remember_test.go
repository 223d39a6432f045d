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
	f := New(5000, compute)
	var wg sync.WaitGroup
	for w := range 4 {
		wg.Go(func() {
			for i := range 10_000 {
				text := fmt.Sprint("LS-", (i*(w+1))%7000)
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
	f := New(4000, func(text string, how int) int { calls.Add(1); return len(text) + how })
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
	f := New(4000, func(text string, _ int) int { return len(text) })
	for i := range 20_000 {
		f.Of(fmt.Sprint("VC-", i), 0)
	}
	f.Of(strings.Repeat("word ", 50), 0)
	n := 0
	for i := range f.sets {
		for j := range f.sets[i] {
			if e := f.sets[i][j].Load(); e != nil {
				if n++; len(e.text) > longest {
					t.Errorf("remembers a text of %d bytes", len(e.text))
				}
			}
		}
	}
	if n < 3000 || n > 4096 {
		t.Errorf("remembers %d texts", n)
	}
}

// A text that keeps coming survives the many that come once.
func TestKeepsWhatComesBack(t *testing.T) {
	calls := 0
	f := New(4000, func(text string, _ int) int {
		if text == "Tap (W)" {
			calls++
		}
		return 0
	})
	for i := range 20_000 {
		f.Of(fmt.Sprint("VC-", i), 0)
		f.Of("Tap (W)", 0)
	}
	if calls != 1 {
		t.Errorf("read %d times, want once", calls)
	}
}

// Large results are computed each time.
func TestKeepsOnlySmall(t *testing.T) {
	calls := 0
	f := NewIf(4000, func(text string, n int) []byte { calls++; return make([]byte, n) }, func(b []byte) bool { return len(b) <= 100 })
	for range 5 {
		if len(f.Of("LS-1", 100)) != 100 || len(f.Of("LS-1..LS-9999", 10_000)) != 10_000 {
			t.Fatal("wrong result")
		}
	}
	if calls != 6 {
		t.Errorf("computed %d times, want 6", calls)
	}
}

func BenchmarkOf(b *testing.B) {
	f := New(4000, func(text string, _ int) int { return len(text) })
	b.RunParallel(func(pb *testing.PB) {
		for pb.Next() {
			f.Of("Ground floor corridor", 0)
		}
	})
}

func TestTable(t *testing.T) {
	calls := 0
	square := NewTable(4, func(n uint64) *uint64 { calls++; n *= n; return &n })
	for range 2 {
		for n := range uint64(100) {
			if got := *square.Of(n << 20); got != n*n<<40 {
				t.Errorf("Of(%d) = %d", n<<20, got)
			}
		}
	}
	if square.Of(7); calls > 201 || calls < 100 {
		t.Errorf("computed %d times", calls)
	}
	before := calls
	if square.Of(7); calls != before {
		t.Error("the same number twice is computed twice")
	}
}
