package main

import (
	"os"
	"runtime"
	"runtime/debug"
	"runtime/metrics"
	"sync"

	"lineaudit/ingest/grid/source"
)

// Garbage may grow to rareCollection per cent of what is in use before it is
// collected, which makes the reading of many small files cheap, but only while
// all memory together stays below a limit: usualMemory, or what the results of
// very many files take, and for the cells of the largest file so many times its
// size. Where more than that is in use, as by one job of a hundred thousand devices,
// it is a quarter more than what is in use: a limit below that would have everything
// looked through again and again for nothing.
const (
	rareCollection = 400
	usualMemory    = 208 << 20
	perFile        = 16 << 10
	timesItsSize   = 18
	beside         = 24 << 20 // what is no heap
)

// A pace is the limit of a run.
type pace struct {
	mu    sync.Mutex
	least int64
	now   int64
	ended bool
}

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
	p := &pace{least: max(usualMemory, perFile*int64(len(files))) + timesItsSize*largest}
	p.now = p.least
	percent, limit := debug.SetGCPercent(rareCollection), debug.SetMemoryLimit(p.now)
	p.afterCollection()
	return func() {
		p.mu.Lock()
		defer p.mu.Unlock()
		p.ended = true
		debug.SetGCPercent(percent)
		debug.SetMemoryLimit(limit)
	}
}

// afterCollection has the limit follow what is in use after each collection:
// what nobody holds is cleaned up by the next one.
func (p *pace) afterCollection() {
	runtime.AddCleanup(&struct{ held *pace }{p}, func(p *pace) {
		sample := []metrics.Sample{{Name: "/gc/heap/live:bytes"}}
		metrics.Read(sample)
		if p.follow(int64(sample[0].Value.Uint64())) {
			p.afterCollection()
		}
	}, p)
}

// follow sets the limit for what is in use; false once the run has ended.
func (p *pace) follow(inUse int64) bool {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.ended {
		return false
	}
	if limit := p.limit(inUse); limit != p.now {
		p.now = limit
		debug.SetMemoryLimit(limit)
	}
	return true
}

// limit is that for what is in use.
func (p *pace) limit(inUse int64) int64 { return max(p.least, inUse+inUse/4+beside) }
