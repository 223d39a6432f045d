//go:build race

package ingest

// slower is how much longer things may take under the race detector.
const slower = 12
