package layout

import (
	"math"
	"slices"
	"strings"

	"lineaudit/ingest/vocabulary"
)

// A product says that in most rows the number in one column is that of two
// others multiplied: quantity, tap and total.
type product struct{ a, b, result int }

// A factorColumn is the figures of a column, by their lines.
type factorColumn struct {
	index  int // of the column
	lines  []int
	values []float64
}

// findProducts looks for products among the number columns.
func findProducts(cols []*heading) []product {
	var numeric []factorColumn
	for i, h := range cols {
		s := h.cells
		if i >= 40 || s.cells < 3 || s.share(lookNumber|lookWatts|lookCount)*10 < 7 {
			continue
		}
		c := factorColumn{i, make([]int, 0, s.cells), make([]float64, 0, s.cells)}
		for j, t := range s.texts {
			if s.looks[j]&(lookNumber|lookWatts|lookCount) != 0 {
				if v, ok := factor(t); ok {
					c.lines, c.values = append(c.lines, s.lines[j]), append(c.values, v)
				}
			}
		}
		if len(c.lines)*10 >= s.cells*7 {
			numeric = append(numeric, c)
		}
	}
	if len(numeric) > 12 {
		numeric = numeric[:12]
	}
	var found []product
	for x := range numeric {
		for y := x + 1; y < len(numeric); y++ {
			for z := range numeric {
				if a, b, r := &numeric[x], &numeric[y], &numeric[z]; z != x && z != y && isProduct(a, b, r) {
					found = append(found, product{a.index, b.index, r.index})
				}
			}
		}
	}
	return found
}

// isProduct reports whether r is a times b on most lines that have all three;
// what is multiplied by 1, or is 0, proves nothing.
func isProduct(a, b, r *factorColumn) bool {
	hit, miss, i, j := 0, 0, 0, 0
	for k, n := range r.lines {
		for i < len(a.lines) && a.lines[i] < n {
			i++
		}
		for j < len(b.lines) && b.lines[j] < n {
			j++
		}
		if i == len(a.lines) || j == len(b.lines) {
			break
		}
		p, q, v := a.values[i], b.values[j], r.values[k]
		switch {
		case a.lines[i] != n || b.lines[j] != n || p == 1 || q == 1 || v == 0:
		case math.Abs(p*q-v) <= 0.011*math.Abs(v):
			hit++
		default:
			miss++
		}
	}
	return hit >= 2 && hit > 4*miss
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
	if p.a < len(cols) && p.b < len(cols) && (priced(cols, p.a) || priced(cols, p.b)) {
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
	if p.a < len(cols) && p.b < len(cols) {
		tapped(cols[p.a], cols[p.b])
		tapped(cols[p.b], cols[p.a])
	}
	add(p.result, vocabulary.Tap, -0.3)
	add(p.result, vocabulary.ChannelWatts, -0.3)
	add(p.result, vocabulary.ControlWatts, -0.3)
}

// priced reports whether a column holds prices. "P unit." may be a price or a
// power: over usual taps, in a table without other taps, it is a power.
func priced(cols []*heading, i int) bool {
	if cols[i].top != vocabulary.Price {
		return false
	}
	if !cols[i].cells.tapNumbers() || cols[i].of(vocabulary.Tap) == 0 {
		return true
	}
	return slices.ContainsFunc(cols, func(h *heading) bool { return h.top == vocabulary.Tap })
}

// mostTapped is the most watts that tell a tap from what an output gives, where
// they are multiplied by counts. Common practice, no source.
const mostTapped = 30

// tapped notes that a column of powers speaks of loudspeakers: small usual taps,
// multiplied by what is counted beside them.
func tapped(watts, counts *heading) {
	if counts.of(vocabulary.Quantity) == 0 || watts.of(vocabulary.Tap) == 0 || watts.cells.share(lookTapUsual|lookTapValue) < 0.9 {
		return
	}
	for _, t := range watts.cells.texts {
		if v, ok := factor(t); ok && v > mostTapped {
			return
		}
	}
	watts.ofLoudspeakers = true
}
