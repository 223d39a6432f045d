package layout

import "math"

// assign gives each row of gain a column of its own so that the sum of the
// gains is greatest, and returns the column of each row. There must be at
// least as many columns as rows. (Shortest augmenting paths with potentials,
// the usual O(rows^2 columns) form of the Hungarian method.)
func assign(gain [][]float64) []int {
	n := len(gain)
	if n == 0 {
		return nil
	}
	m := len(gain[0])
	u, v := make([]float64, n+1), make([]float64, m+1)
	owner, way := make([]int, m+1), make([]int, m+1)
	least, used := make([]float64, m+1), make([]bool, m+1)
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
	result := make([]int, n)
	for j := 1; j <= m; j++ {
		if owner[j] > 0 {
			result[owner[j]-1] = j - 1
		}
	}
	return result
}
