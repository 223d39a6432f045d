//go:build race

package xlsx

const raceEnabled = true
