//go:build unix

package main

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"runtime"
	"strings"
	"syscall"
	"testing"

	"lineaudit/ingest/grid/source"
)

// cellsOf is the variable by which TestSpeed names a file to TestCellsAlone.
const cellsOf = "LINEAUDIT_CELLS"

// TestCellsAlone reads a file into cells and tells what they hold. TestSpeed runs it
// in a process of its own, which tells what reading peaks at.
func TestCellsAlone(t *testing.T) {
	path := os.Getenv(cellsOf)
	if path == "" {
		t.Skip(cellsOf + " is not set")
	}
	list, err := source.Find(context.Background(), []string{path}, source.Options{})
	if err != nil {
		t.Fatal(err)
	}
	defer paceCollection(list.Files)()
	before := heapInUse()
	book, err := list.Files[0].Read(context.Background(), source.Options{})
	if err != nil {
		t.Fatal(err)
	}
	fmt.Printf("held: %d\n", heapInUse()-before)
	runtime.KeepAlive(book)
}

// heapInUse is what is in use, in bytes.
func heapInUse() int64 {
	runtime.GC()
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return int64(m.HeapAlloc)
}

// cellsAlone tells what reading the file into cells peaks at, and what they hold, in bytes.
func cellsAlone(t *testing.T, path string) (peak, held int64) {
	cmd := exec.Command(os.Args[0], "-test.run", "^TestCellsAlone$")
	cmd.Env = append(os.Environ(), cellsOf+"="+path)
	text, err := cmd.Output()
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	if _, err := fmt.Sscanf(strings.TrimSpace(string(text)), "held: %d", &held); err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	if u, ok := cmd.ProcessState.SysUsage().(*syscall.Rusage); ok {
		peak = maxResident(u)
	}
	return peak, held
}

// maxResident is the peak of a process that has ended, in bytes.
func maxResident(u *syscall.Rusage) int64 {
	if runtime.GOOS == "linux" {
		return int64(u.Maxrss) << 10
	}
	return int64(u.Maxrss)
}
