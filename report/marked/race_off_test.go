//go:build !race

package marked_test

// slow says that the race detector makes everything many times slower.
const slow = false
