//go:build unix

package main

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"lineaudit/report/stage"
)

// kills is how many times the program is ended by force: most at a random
// moment, the rest in the moment when files are moved to their places.
const kills, killsWhileMoving = 185, 20

// However the program is ended, no original is touched, no mixture of two runs
// looks like the work of one, and the next run is right.
func TestEndedByForce(t *testing.T) {
	if testing.Short() {
		t.Skip("takes half a minute")
	}
	in := folder(t, map[string]string{"a/job.csv": job, "b/other.csv": strings.ReplaceAll(job, "Palm", "Fern"), "c/clean.csv": clean})
	before := sums(t, in)
	program := filepath.Join(t.TempDir(), "lineaudit")
	if out, err := exec.Command("go", "build", "-o", program, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	temp := t.TempDir()
	start := func(out string, i int) *exec.Cmd {
		// Every second run has one file fewer and another date, so that no two in a row write the same.
		args := []string{filepath.Join(in, "a"), filepath.Join(in, "c"), "--out", out, "-q", "--workers", "2", "--date", fmt.Sprintf("2026-01-%02d", 1+i%2)}
		if i%2 == 1 {
			args = append(args, filepath.Join(in, "b"))
		}
		cmd := exec.Command(program, args...)
		cmd.Env = append(os.Environ(), "TMPDIR="+temp)
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		return cmd
	}
	var whole [2]map[string]string // what a run that is left alone writes
	var took time.Duration
	for i := range whole {
		out := filepath.Join(t.TempDir(), "out")
		begin := time.Now()
		if err := start(out, i).Wait(); err != nil {
			t.Fatal(err)
		}
		took = time.Since(begin)
		whole[i] = sums(t, out)
	}
	if maps.Equal(whole[0], whole[1]) {
		t.Fatal("the two kinds of runs write the same")
	}
	out := filepath.Join(t.TempDir(), "out")
	note := filepath.Join(out, stage.Unfinished)
	random := rand.New(rand.NewPCG(1, 2))
	ended, mixed := 0, 0
	for i := 0; ended < kills+killsWhileMoving && i < 4*(kills+killsWhileMoving); i++ {
		_, wasMixed := os.Stat(note)
		cmd := start(out, i)
		done := make(chan error, 1)
		go func() { done <- cmd.Wait() }()
		if ended < kills {
			time.Sleep(time.Duration(random.Int64N(int64(took) * 11 / 10)))
		} else if wasMixed != nil {
			waitFor(note, done)
		}
		cmd.Process.Signal(syscall.SIGKILL)
		if err := <-done; err != nil {
			ended++
		}
		files := map[string]string{} // nothing, where it ended before there was a folder
		if _, err := os.Stat(out); err == nil {
			files = sums(t, out)
		}
		maps.DeleteFunc(files, func(name, _ string) bool { return strings.HasPrefix(name, ".unfinished-") })
		switch _, err := os.Stat(note); {
		case err == nil:
			mixed++
		case len(files) > 0 && !maps.Equal(files, whole[0]) && !maps.Equal(files, whole[1]):
			t.Fatalf("run %d left files of two runs, and no word of it", i)
		}
		if i%15 == 14 {
			if err := start(out, i).Wait(); err != nil {
				t.Fatal(err)
			}
			if files := sums(t, out); !maps.Equal(files, whole[i%2]) {
				t.Fatalf("the run after the kill number %d wrote something else", ended)
			}
		}
	}
	if ended < kills+killsWhileMoving || mixed == 0 {
		t.Errorf("ended by force %d times, %d of them while files were moved", ended, mixed)
	}
	if !maps.Equal(sums(t, in), before) {
		t.Error("an original was touched")
	}
	if left, _ := os.ReadDir(temp); len(left) > 0 {
		t.Errorf("%d temporary files are left, such as %s", len(left), left[0].Name())
	}
	t.Logf("%d kills, %d of them between the first and the last move", ended, mixed)
}

// waitFor waits until a file is there or the program has ended.
func waitFor(name string, done chan error) {
	for {
		if _, err := os.Stat(name); err == nil {
			return
		}
		select {
		case err := <-done:
			done <- err
			return
		default:
		}
	}
}
