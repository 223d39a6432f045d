//go:build !race

package xlsx

const raceEnabled = false
