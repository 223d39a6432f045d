package main

import (
	"runtime"
	"runtime/debug"
)

// slack is how much memory the reading of files may use before its garbage is
// collected, beyond what is in use; writtenTight is how much of what is in use
// may pile up as garbage while the reports are written, in per cent.
const (
	slack        = 64 << 20
	writtenTight = 50
)

// collectRarely lets the reading of many small files pass without collecting
// the garbage of each: memory that is never touched takes none, and counts as
// in use. Done ends that.
func collectRarely() (done func()) {
	unused := make([]byte, slack)
	return func() { runtime.KeepAlive(unused); unused = nil }
}

// collectOften keeps memory low where what is in use is most: the whole
// archive and one large report. It returns what puts the usual pace back.
func collectOften() (restore func()) {
	usual := debug.SetGCPercent(writtenTight)
	return func() { debug.SetGCPercent(usual) }
}
