//go:build !race

package ingest_test

// slower is how much longer things may take than without the race detector.
const slower = 1
