//go:build !race

package book_test

// slow says that the race detector makes everything many times slower.
const slow = false
