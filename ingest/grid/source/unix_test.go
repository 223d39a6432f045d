//go:build unix

package source

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"lineaudit/ingest/grid"
)

// Pipes, which nobody writes to, sockets and devices are not waited for, inside
// a folder, behind a link and named outright.
func TestUnusualFiles(t *testing.T) {
	root := t.TempDir()
	if err := syscall.Mkfifo(filepath.Join(root, "pipe.csv"), 0o600); err != nil {
		t.Skip(err)
	}
	socket, err := net.Listen("unix", filepath.Join(root, "socket.csv"))
	if err != nil {
		t.Skip(err)
	}
	defer socket.Close()
	for name, target := range map[string]string{"zero.csv": "/dev/zero", "pipe too.csv": "pipe.csv"} {
		if err := os.Symlink(target, filepath.Join(root, name)); err != nil {
			t.Fatal(err)
		}
	}
	write(t, filepath.Join(root, "a.csv"), []byte(table))
	files, skipped := names(mustFind(t, Options{}, root))
	const why = ": not a file: a device, pipe or socket"
	want(t, "files", files, []string{"a.csv"})
	want(t, "skipped", skipped, []string{"pipe too.csv" + why, "pipe.csv" + why, "socket.csv" + why, "zero.csv" + why})
	for _, start := range []string{filepath.Join(root, "pipe.csv"), filepath.Join(root, "socket.csv"), "/dev/zero"} {
		if files, skipped := names(mustFind(t, Options{}, start)); len(files) != 0 || len(skipped) != 1 {
			t.Errorf("%s: files %q, skipped %q", start, files, skipped)
		}
	}
}

// A pipe or a device that took the place of a file after it was listed, or that
// calls itself a list of results, is not waited for.
func TestPipeInPlaceOfAFile(t *testing.T) {
	root := t.TempDir()
	const list = ".results"
	for _, name := range []string{list, "b/" + list} {
		p := filepath.Join(root, filepath.FromSlash(name))
		write(t, p, nil)
		os.Remove(p)
		if err := syscall.Mkfifo(p, 0o600); err != nil {
			t.Skip(err)
		}
	}
	if err := os.Symlink("/dev/zero", filepath.Join(root, "endless")); err != nil {
		t.Fatal(err)
	}
	asked := 0
	opt := Options{Results: func(read func(string) ([]byte, error)) []string {
		for _, name := range []string{list, "endless"} {
			if b, err := read(name); err == nil {
				t.Errorf("%s: read %d bytes", name, len(b))
			}
			asked++
		}
		return nil
	}}
	for _, name := range []string{"a.csv", "b.csv", "c.zip"} {
		write(t, filepath.Join(root, name), []byte(table))
	}
	write(t, filepath.Join(root, "c.zip"), zipped(t, member{"pier.csv", []byte(table)}))
	l := mustFind(t, opt, root)
	files, _ := names(l)
	if want(t, "files", files, []string{"a.csv", "b.csv", "c.zip/pier.csv"}); asked < 4 {
		t.Errorf("asked %d times", asked)
	}
	for name, put := range map[string]func(string) error{
		"a.csv": func(p string) error { return syscall.Mkfifo(p, 0o600) },
		"b.csv": func(p string) error { return os.Symlink("/dev/zero", p) },
		"c.zip": func(p string) error { return syscall.Mkfifo(p, 0o600) },
	} {
		p := filepath.Join(root, name)
		os.Remove(p)
		if err := put(p); err != nil {
			t.Fatal(err)
		}
	}
	for _, f := range l.Files {
		var bad *grid.Unreadable
		if _, err := f.Read(context.Background(), opt); !errors.As(err, &bad) || bad.Advice != "put a file in its place" {
			t.Errorf("%s: %v", f.Name, err)
		}
	}
}

// Names in another encoding than UTF-8 are shown without what cannot be shown,
// and their files read; two that look the same then are kept apart.
func TestNamesInOtherEncodings(t *testing.T) {
	root := t.TempDir()
	for _, name := range []string{"caf\xe9.csv", "caf\xe8.csv", "\x8fl\x81.csv", "a\x1b[31m\nb.csv", "\u202evsc.csv"} {
		if err := os.WriteFile(filepath.Join(root, name), []byte(table), 0o644); err != nil {
			t.Skip(err) // a system that takes UTF-8 alone
		}
	}
	l := mustFind(t, Options{}, root)
	files, _ := names(l)
	want(t, "files", files, []string{"_l_.csv", "_vsc.csv", "a_[31m_b.csv", "caf_.csv", "caf_ (2).csv"})
	for _, f := range l.Files {
		if _, err := f.Read(context.Background(), Options{}); err != nil {
			t.Errorf("%s: %v", f.Name, err)
		}
	}
}

// What may not be read is one file that cannot be read, with what to do. The
// superuser may read everything, so that the test then goes on as somebody else.
func TestForbidden(t *testing.T) {
	if os.Getuid() == 0 {
		dir := t.TempDir()
		self, err := os.ReadFile(os.Args[0])
		if err != nil {
			t.Fatal(err)
		}
		program := filepath.Join(dir, "test")
		for _, err := range []error{os.WriteFile(program, self, 0o755), os.Chmod(dir, 0o777), os.Chmod(filepath.Dir(dir), 0o755)} {
			if err != nil {
				t.Fatal(err)
			}
		}
		cmd := exec.Command(program, "-test.run", "^TestForbidden$", "-test.v")
		cmd.Dir, cmd.Env = dir, append(os.Environ(), "TMPDIR="+dir)
		cmd.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: 65534, Gid: 65534}}
		out, err := cmd.CombinedOutput()
		if errors.Is(err, fs.ErrPermission) {
			t.Skip("the test cannot become somebody else here: ", err)
		}
		if err != nil || !bytes.Contains(out, []byte("--- PASS: TestForbidden")) {
			t.Fatalf("%v\n%s", err, out)
		}
		return
	}
	root := t.TempDir()
	write(t, filepath.Join(root, "locked", "a.csv"), []byte(table))
	write(t, filepath.Join(root, "secret.csv"), []byte(table))
	write(t, filepath.Join(root, "secret.zip"), zipped(t, member{"pier.csv", []byte(table)}))
	for _, name := range []string{"locked", "secret.csv", "secret.zip"} {
		if err := os.Chmod(filepath.Join(root, name), 0); err != nil {
			t.Fatal(err)
		}
		defer os.Chmod(filepath.Join(root, name), 0o700)
	}
	l := mustFind(t, Options{}, root)
	files, _ := names(l)
	want(t, "files", files, []string{"locked", "secret.csv", "secret.zip"})
	for _, f := range l.Files {
		_, err := f.Read(context.Background(), Options{})
		var u *grid.Unreadable
		if !errors.As(err, &u) || !strings.Contains(u.Reason, "permitted") || u.Advice == "" {
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
