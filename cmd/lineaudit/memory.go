package main

import (
	"os"
	"runtime/debug"

	"lineaudit/ingest/grid/source"
)

// Garbage may grow to rareCollection per cent of what is in use before it is
// collected, which makes the reading of many small files cheap, but only while
// all memory together stays below a limit: usualMemory, or what the results of
// very many files take, and for the cells of the largest file so many times its size.
const (
	rareCollection = 400
	usualMemory    = 208 << 20
	perFile        = 16 << 10
	timesItsSize   = 30
)

// paceCollection sets that for the files of a run, and returns what puts the
// usual pace back. Where a size is not known, as of files in zips, it changes nothing.
func paceCollection(files []source.File) (restore func()) {
	largest := int64(0)
	for _, f := range files {
		info, err := os.Stat(f.Path)
		if f.Path == "" || err != nil {
			return func() {}
		}
		largest = max(largest, info.Size())
	}
	percent, limit := debug.SetGCPercent(rareCollection), debug.SetMemoryLimit(max(usualMemory, perFile*int64(len(files)))+timesItsSize*largest)
	return func() {
		debug.SetGCPercent(percent)
		debug.SetMemoryLimit(limit)
	}
}
