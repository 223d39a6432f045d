package audit

import (
	"math"
	"math/rand/v2"
	"testing"
)

// exhaustive tries every choice of taps.
func exhaustive(t *retapProblem) (best float64, found bool) {
	options := make([]int, len(t.groups))
	best = math.Inf(1)
	for {
		if db, ok := t.evaluate(options); ok {
			found = true
			best = math.Min(best, db)
		}
		g := 0
		for g < len(options) {
			options[g]++
			if options[g] < len(t.groups[g].options) {
				break
			}
			options[g] = 0
			g++
		}
		if g == len(options) {
			return best, found
		}
	}
}

// evaluate adds a choice up by itself: the level it gives up, and whether every
// place keeps its budget.
func (t *retapProblem) evaluate(options []int) (db float64, ok bool) {
	load := make([]float64, len(t.places))
	for i := range t.places {
		load[i] = t.places[i].fixed
	}
	for g, k := range options {
		o := t.groups[g].options[k]
		load[t.groups[g].place] += o.watts * t.groups[g].count
		db += o.db * t.groups[g].count
	}
	for i := range t.places {
		if past(load[i], t.places[i].budget) {
			return db, false
		}
		if up := t.places[i].parent; up >= 0 {
			load[up] += load[i]
		}
	}
	return db, true
}

func TestRetapAgreesWithExhaustiveSearch(t *testing.T) {
	solved := 0
	for seed := range uint64(600) {
		rng := rand.New(rand.NewPCG(seed, 3))
		p := &retapProblem{}
		n := 1 + rng.IntN(4)
		for i := range n {
			parent := n - 1
			if i < n-1 && rng.IntN(2) == 0 {
				parent = i + 1 + rng.IntN(n-1-i)
			}
			if i == n-1 {
				parent = -1
			}
			p.places = append(p.places, tapPlace{parent: parent, budget: 3 + 80*rng.Float64(), fixed: float64(rng.IntN(3)) * 3.5})
		}
		for range 1 + rng.IntN(6) {
			taps := [][]float64{{20, 10, 5, 2.5}, {6, 3, 1.5, 0.75}, {30, 15, 7.5}, {10, 4}}[rng.IntN(4)]
			g := tapGroup{place: rng.IntN(n), count: float64(1 + rng.IntN(6))}
			for _, w := range taps {
				g.options = append(g.options, tapOption{watts: w, db: 10 * math.Log10(taps[0]/w)})
			}
			p.groups = append(p.groups, g)
		}
		want, possible := exhaustive(p)
		options, ok := p.solve()
		if ok != possible {
			t.Fatalf("seed %d: solved %v, exhaustive search %v", seed, ok, possible)
		}
		if !ok {
			continue
		}
		solved++
		got, keeps := p.evaluate(options)
		if !keeps || math.Abs(got-want) > 1e-9 {
			t.Fatalf("seed %d: gives up %g dB, the best is %g dB (keeps its budgets: %v)", seed, got, want, keeps)
		}
	}
	if solved < 100 {
		t.Errorf("only %d of the problems have an answer", solved)
	}
}

func TestPackTakesTheFewest(t *testing.T) {
	for seed := range uint64(300) {
		rng := rand.New(rand.NewPCG(seed, 5))
		limit := 10 + 30*rng.Float64()
		var items []packItem
		for range 2 + rng.IntN(7) {
			items = append(items, packItem{watts: []float64{2.5, 5, 7.5, 10}[rng.IntN(4)]})
		}
		want := fewest(items, limit)
		bins := pack(items, limit, 9)
		if bins == nil || len(bins) != max(2, want) || past(fullest(bins), limit) {
			t.Fatalf("seed %d: %d bins, want %d, fullest %g of %g", seed, len(bins), want, fullest(bins), limit)
		}
	}
}

// fewest finds the least number of bins by trying every assignment.
func fewest(items []packItem, limit float64) int {
	for n := 1; ; n++ {
		sums := make([]float64, n)
		var try func(i int) bool
		try = func(i int) bool {
			if i == len(items) {
				return true
			}
			for b := range sums {
				if !past(sums[b]+items[i].watts, limit) {
					sums[b] += items[i].watts
					if try(i + 1) {
						return true
					}
					sums[b] -= items[i].watts
				}
			}
			return false
		}
		if try(0) {
			return n
		}
	}
}
