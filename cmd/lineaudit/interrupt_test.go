//go:build unix

package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// asProgram, in the environment of a test, makes it the program itself.
const asProgram = "LINEAUDIT_IS_THE_PROGRAM"

func TestMain(m *testing.M) {
	if os.Getenv(asProgram) != "" {
		main()
	}
	os.Exit(m.Run())
}

// mostToEnd is how long a run may take to end.
const mostToEnd = 5_000 * underRace * time.Millisecond

// Ctrl-C ends a run at once, in the middle of the audit of one huge job too, and
// nothing is left of it.
func TestInterrupted(t *testing.T) {
	var b strings.Builder
	b.WriteString("Tag,Zone,Tap,Control,Control max load\n")
	for i := range 20_000 { // each control overloaded, each with remedies to try: minutes of work, were it not bounded
		fmt.Fprintf(&b, "LS-%d,Zone %d,60 W,VC-%d,50 W\n", i, i, i)
	}
	dir := folder(t, map[string]string{"huge.csv": b.String()})
	for _, wait := range []time.Duration{50 * time.Millisecond, time.Second, 5 * time.Second} {
		temp, out := t.TempDir(), filepath.Join(t.TempDir(), "out")
		cmd := exec.Command(os.Args[0], dir, "--out", out)
		cmd.Env = append(os.Environ(), asProgram+"=1", "TMPDIR="+temp)
		var told bytes.Buffer
		cmd.Stderr = &told
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(wait)
		begin := time.Now()
		if err := cmd.Process.Signal(syscall.SIGINT); err != nil {
			t.Fatalf("after %v: %v", wait, err)
		}
		err := cmd.Wait()
		var ended *exec.ExitError
		if took := time.Since(begin); took > mostToEnd || !errors.As(err, &ended) || wait >= time.Second && (ended.ExitCode() != incomplete || !strings.Contains(told.String(), "stopped; nothing was written")) {
			t.Errorf("after %v it took %v to end with %v:\n%s", wait, took, err, told.String())
		}
		if _, err := os.Stat(out); !errors.Is(err, os.ErrNotExist) {
			t.Errorf("after %v the output folder is there", wait)
		}
		if left, _ := os.ReadDir(temp); len(left) > 0 {
			t.Errorf("after %v temporary files are left, such as %s", wait, left[0].Name())
		}
	}
}
