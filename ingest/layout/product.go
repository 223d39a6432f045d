package layout

import (
	"math"
	"strings"

	"lineaudit/ingest/vocabulary"
)

// A product says that in most rows the number in one column is that of two
// others multiplied: quantity, tap and total.
type product struct{ a, b, result int }

// findProducts looks for products among the number columns.
func findProducts(cols []*heading) []product {
	var numeric []int
	values := map[int]map[int]float64{}
	for i, h := range cols {
		if i >= 40 || h.cells.cells < 3 {
			continue
		}
		m := map[int]float64{}
		for j, t := range h.cells.texts {
			if h.cells.looks[j]&(lookNumber|lookWatts|lookCount) != 0 {
				if v, ok := factor(t); ok {
					m[h.cells.lines[j]] = v
				}
			}
		}
		if len(m)*10 >= h.cells.cells*7 {
			numeric = append(numeric, i)
			values[i] = m
		}
	}
	if len(numeric) > 12 {
		numeric = numeric[:12]
	}
	var found []product
	for x, a := range numeric {
		for _, b := range numeric[x+1:] {
			for _, r := range numeric {
				if r == a || r == b {
					continue
				}
				hit, miss := 0, 0
				for n, v := range values[r] {
					p, ok1 := values[a][n]
					q, ok2 := values[b][n]
					switch {
					case !ok1 || !ok2 || p == 1 || q == 1 || v == 0:
					case math.Abs(p*q-v) <= 0.011*math.Abs(v):
						hit++
					default:
						miss++
					}
				}
				if hit >= 2 && hit > 4*miss {
					found = append(found, product{a, b, r})
				}
			}
		}
	}
	return found
}

// factor reads the number of a cell, with whatever stands around it: "(3)",
// "x3", "@6W". Of taps and the one that is set, it is the last: "6/3 -> 3 W".
func factor(t string) (float64, bool) {
	read := factors.Of(t, 0)
	return read.value, read.ok
}

// factorRead is what factor returns.
type factorRead struct {
	value float64
	ok    bool
}

func readFactor(t string) factorRead {
	if reTapSet.MatchString(t) {
		t = t[strings.LastIndexFunc(strings.TrimRight(t, " wW"), func(r rune) bool { return (r < '0' || r > '9') && r != '.' && r != ',' })+1:]
	}
	i := strings.IndexAny(t, "0123456789")
	if i < 0 || i > 6 {
		return factorRead{}
	}
	value, ok := leadingNumber(t[i:])
	return factorRead{value, ok}
}

// apply adds what the product says to the gains.
func (p product) apply(cols []*heading, base []worth) {
	add := func(i int, f vocabulary.Field, w float64) {
		if i < len(base) && base[i][f] > 0.15 {
			base[i][f] += w
		}
	}
	if p.a < len(cols) && p.b < len(cols) && (cols[p.a].top == vocabulary.Price || cols[p.b].top == vocabulary.Price) {
		add(p.result, vocabulary.Price, 0.3)
		add(p.result, vocabulary.TotalWatts, -0.7)
		add(p.result, vocabulary.Load, -0.7)
		return
	}
	add(p.result, vocabulary.TotalWatts, 0.3)
	add(p.result, vocabulary.Load, 0.15)
	for _, i := range []int{p.a, p.b} {
		add(i, vocabulary.Tap, 0.15)
		add(i, vocabulary.Quantity, 0.15)
		add(i, vocabulary.TotalWatts, -0.2)
	}
	add(p.result, vocabulary.Tap, -0.3)
	add(p.result, vocabulary.ChannelWatts, -0.3)
	add(p.result, vocabulary.ControlWatts, -0.3)
}
