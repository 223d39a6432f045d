//go:build !race

package main

// underRace is how much more things may take under the race detector.
const underRace = 1
