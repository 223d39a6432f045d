package layout

import "math"

// An assigner gives rows columns; what it works with is kept from one time to the next.
type assigner struct {
	u, v, least []float64
	owner, way  []int
	used        []bool
	result      []int
}

// assign gives each row of gain a column of its own so that the sum of the
// gains is greatest, and returns the column of each row. There must be at
// least as many columns as rows. (Shortest augmenting paths with potentials,
// the usual O(rows^2 columns) form of the Hungarian method.) The result holds
// until the next call.
func (a *assigner) assign(gain [][]float64) []int {
	n := len(gain)
	if n == 0 {
		return nil
	}
	m := len(gain[0])
	if a.eachItsBest(gain) {
		return a.result
	}
	a.u, a.v, a.least = cleared(a.u, n+1), cleared(a.v, m+1), cleared(a.least, m+1)
	a.owner, a.way, a.used = cleared(a.owner, m+1), cleared(a.way, m+1), cleared(a.used, m+1)
	u, v, owner, way, least, used := a.u, a.v, a.owner, a.way, a.least, a.used
	for i := 1; i <= n; i++ {
		owner[0] = i
		for j := range least {
			least[j], used[j] = math.Inf(1), false
		}
		j0 := 0
		for owner[j0] != 0 {
			used[j0] = true
			i0, j1, delta := owner[j0], 0, math.Inf(1)
			for j := 1; j <= m; j++ {
				if used[j] {
					continue
				}
				if c := -gain[i0-1][j-1] - u[i0] - v[j]; c < least[j] {
					least[j], way[j] = c, j0
				}
				if least[j] < delta {
					delta, j1 = least[j], j
				}
			}
			for j := 0; j <= m; j++ {
				if used[j] {
					u[owner[j]] += delta
					v[j] -= delta
				} else {
					least[j] -= delta
				}
			}
			j0 = j1
		}
		for j0 != 0 {
			j1 := way[j0]
			owner[j0] = owner[j1]
			j0 = j1
		}
	}
	a.result = cleared(a.result, n)
	result := a.result
	for j := 1; j <= m; j++ {
		if owner[j] > 0 {
			result[owner[j]-1] = j - 1
		}
	}
	return result
}

// plainly is how much more than all others the best column of a row must gain
// to be plainly the best: more than sums of gains are rounded by.
const plainly = 1e-9

// eachItsBest reports whether each row can have the column that is plainly its
// best, as the rows want different ones, and leaves these in the result.
func (a *assigner) eachItsBest(gain [][]float64) bool {
	a.result, a.used = cleared(a.result, len(gain)), cleared(a.used, len(gain[0]))
	for i, row := range gain {
		best, second, at := math.Inf(-1), math.Inf(-1), 0
		for j, g := range row {
			switch {
			case g > best:
				best, second, at = g, best, j
			case g > second:
				second = g
			}
		}
		if best-second < plainly || a.used[at] {
			return false
		}
		a.result[i], a.used[at] = at, true
	}
	return true
}

// cleared is list with n zeros.
func cleared[T any](list []T, n int) []T {
	if cap(list) < n {
		return make([]T, n)
	}
	list = list[:n]
	clear(list)
	return list
}
