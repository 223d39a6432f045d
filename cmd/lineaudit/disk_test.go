//go:build unix

package main

import (
	"errors"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"lineaudit/report/stage"
)

// However early the disk is full, a run is one line that says what to do, and
// leaves nothing behind. A limit on the size of files stands for the full disk.
func TestDiskIsFull(t *testing.T) {
	in := folder(t, map[string]string{"a/job.csv": job, "b/other.csv": strings.ReplaceAll(job, "Palm", "Fern")})
	before := sums(t, in)
	program := filepath.Join(t.TempDir(), "lineaudit")
	if out, err := exec.Command("go", "build", "-o", program, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	temp := t.TempDir()
	met := map[string]int{}
	for blocks := 1; ; blocks = blocks + 1 + blocks/4 { // of 512 or 1,024 bytes
		if blocks > 2000 {
			t.Fatal("the run never comes to its end")
		}
		top := t.TempDir()
		cmd := exec.Command("sh", "-c", fmt.Sprintf(`ulimit -f %d && exec "$0" "$@"`, blocks), program, in, "-q", "--out", filepath.Join(top, "reviews", "out"))
		cmd.Env = append(os.Environ(), "TMPDIR="+temp)
		var stdout, stderr strings.Builder
		cmd.Stdout, cmd.Stderr = &stdout, &stderr
		err := cmd.Run()
		if err == nil {
			break
		}
		var exit *exec.ExitError
		if text := stderr.String(); !errors.As(err, &exit) || exit.ExitCode() != incomplete || strings.Count(text, "\n") != 1 {
			t.Fatalf("%d blocks: %v\n%s", blocks, err, text)
		}
		for _, advice := range []string{"TMPDIR", "--out"} {
			if strings.Contains(stderr.String(), advice) {
				met[advice]++
			}
		}
		if left := sums(t, top); len(left) > 0 {
			t.Errorf("%d blocks: left %v", blocks, left)
		}
		for _, dir := range []string{top, temp} {
			if left, _ := os.ReadDir(dir); len(left) > 0 {
				t.Errorf("%d blocks: left %v", blocks, left)
			}
		}
	}
	if met["TMPDIR"] == 0 || met["--out"] == 0 {
		t.Errorf("what was met: %v", met)
	}
	if !maps.Equal(before, sums(t, in)) {
		t.Error("an original was changed")
	}
}

// A place that takes no results, or no temporary files, is one line that says what
// to do, and nothing is left of the attempt.
func TestNoPlaceForResults(t *testing.T) {
	in := folder(t, map[string]string{"job.csv": job})
	dir := folder(t, map[string]string{"file": "mine"})
	link := filepath.Join(dir, "link")
	if err := os.Symlink("nowhere", link); err != nil {
		t.Skip("no links here")
	}
	readOnly := filepath.Join(dir, "read only")
	if err := os.Mkdir(readOnly, 0o555); err != nil {
		t.Fatal(err)
	}
	places := map[string]string{
		filepath.Join(dir, "file"):      "is a file; name a folder with --out",
		filepath.Join(dir, "file", "x"): "name a folder with --out that may be written to",
		link:                            "is a link that leads nowhere",
		filepath.Join(dir, strings.Repeat("long", 100)): "name a folder with --out that may be written to",
	}
	if os.Geteuid() != 0 { // who may write everywhere
		places[readOnly] = "name a folder with --out that may be written to"
		places[filepath.Join(readOnly, "x")] = "name a folder with --out that may be written to"
	}
	here := func() string {
		entries, err := os.ReadDir(dir)
		if err != nil {
			t.Fatal(err)
		}
		return fmt.Sprint(entries)
	}
	before := here()
	for out, want := range places {
		code, stdout, stderr := called(in, "-q", "--out", out)
		if code != incomplete || stdout != "" || !strings.Contains(stderr, want) || strings.Count(stderr, "\n") != 1 {
			t.Errorf("%s: exit code %d\n%s%s", out, code, stdout, stderr)
		}
	}
	t.Setenv("TMPDIR", filepath.Join(dir, "no folder"))
	out := filepath.Join(dir, "new", "out")
	if code, stdout, stderr := called(in, "-q", "--out", out); code != incomplete || stdout != "" || !strings.Contains(stderr, "TMPDIR") || strings.Count(stderr, "\n") != 1 {
		t.Errorf("exit code %d\n%s%s", code, stdout, stderr)
	}
	if here() != before {
		t.Errorf("left: %s", here())
	}
}

// A pipe where the output folder keeps its list is not waited for.
func TestPipesInTheOutputFolder(t *testing.T) {
	in := folder(t, map[string]string{"job.csv": job})
	out := filepath.Join(in, "out")
	for _, name := range []string{stage.Manifest, stage.Unfinished} {
		if err := os.MkdirAll(out, 0o755); err != nil {
			t.Fatal(err)
		}
		if err := syscall.Mkfifo(filepath.Join(out, name), 0o600); err != nil {
			t.Skip(err)
		}
		if code, stdout, stderr := called(in, "-q", "--out", out); code != done {
			t.Errorf("%s: exit code %d\n%s%s", name, code, stdout, stderr)
		}
		if err := os.RemoveAll(out); err != nil {
			t.Fatal(err)
		}
	}
}
