//go:build unix

package source

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"lineaudit/ingest/grid"
)

// A pipe, which nobody writes to, is not waited for; a folder that may not be
// read is one file that cannot be read.
func TestUnusualFiles(t *testing.T) {
	root := t.TempDir()
	if err := syscall.Mkfifo(filepath.Join(root, "pipe.csv"), 0o600); err != nil {
		t.Skip(err)
	}
	write(t, filepath.Join(root, "locked", "a.csv"), []byte(table))
	write(t, filepath.Join(root, "secret.csv"), []byte(table))
	l := mustFind(t, Options{}, root)
	if files, skipped := names(l); len(files) != 2 || len(skipped) != 1 {
		t.Errorf("files %q, skipped %q", files, skipped)
	}
	if os.Getuid() == 0 {
		t.Skip("the superuser may read everything")
	}
	for _, name := range []string{"locked", "secret.csv"} {
		if err := os.Chmod(filepath.Join(root, name), 0); err != nil {
			t.Fatal(err)
		}
		defer os.Chmod(filepath.Join(root, name), 0o700)
	}
	for _, f := range mustFind(t, Options{}, root).Files {
		_, err := f.Read(context.Background(), Options{})
		var u *grid.Unreadable
		if !errors.As(err, &u) || !strings.Contains(u.Reason, "permitted") {
			t.Errorf("%s: %v", f.Name, err)
		}
	}
}

// A converter that hangs is ended with all that it started.
func TestConverterIsEnded(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("TMPDIR", dir)
	program := filepath.Join(dir, "hang")
	write(t, program, []byte("#!/bin/sh\nsleep 300 &\necho $! > "+filepath.Join(dir, "child")+"\nwait\n"))
	if err := os.Chmod(program, 0o755); err != nil {
		t.Fatal(err)
	}
	start := time.Now()
	_, err := Parse(context.Background(), "a.slk", []byte("ID;PWXL\nE\n"), Options{TimeLimit: time.Second, Soffice: func() string { return program }})
	var u *grid.Unreadable
	if !errors.As(err, &u) || !strings.Contains(u.Reason, "given up") {
		t.Errorf("the error is %v", err)
	}
	if took := time.Since(start); took > 10*time.Second {
		t.Errorf("it took %v", took)
	}
	child, err := os.ReadFile(filepath.Join(dir, "child"))
	if err != nil {
		t.Skip("the program did not start here")
	}
	var pid int
	if _, err := fmt.Sscan(string(child), &pid); err != nil {
		t.Fatal(err)
	}
	for range 50 {
		if state, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid)); err != nil || strings.Contains(string(state), ") Z ") {
			return
		}
		time.Sleep(20 * time.Millisecond)
	}
	t.Errorf("process %d goes on", pid)
}
