//go:build race

package layout

// slower is how much longer things may take under the race detector.
const slower = 12
