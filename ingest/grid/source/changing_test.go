package source

import (
	"context"
	"errors"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"lineaudit/ingest/grid"
)

// A meddled file has somebody write to it after its first bytes were read.
type meddled struct {
	*os.File
	meddle func()
	read   int
}

func (m *meddled) Read(p []byte) (int, error) {
	n, err := m.File.Read(p[:min(len(p), 100)])
	if m.read += n; m.meddle != nil {
		m.meddle()
		m.meddle = nil
	}
	return n, err
}

// A file that grows, shrinks or is written over while it is read is told, never
// read as a mixture or as a shorter one.
func TestFileThatChanges(t *testing.T) {
	long := strings.Repeat(table, 200)
	for name, meddle := range map[string]func(path string) error{
		"left alone":   func(string) error { return nil },
		"grows":        func(p string) error { return os.WriteFile(p, []byte(long+"x,y\n"), 0o644) },
		"shrinks":      func(p string) error { return os.Truncate(p, 500) },
		"is emptied":   func(p string) error { return os.Truncate(p, 0) },
		"written over": func(p string) error { return overwrite(p, strings.ReplaceAll(long, "Pier", "Rink")) },
	} {
		t.Run(name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "a.csv")
			write(t, path, []byte(long))
			old := time.Now().Add(-time.Hour)
			if err := os.Chtimes(path, old, old); err != nil {
				t.Fatal(err)
			}
			f, err := os.Open(path)
			if err != nil {
				t.Fatal(err)
			}
			defer f.Close()
			data, err := readWhole(&meddled{File: f, meddle: func() {
				if err := meddle(path); err != nil {
					t.Fatal(err)
				}
			}}, grid.DefaultLimits())
			var u *grid.Unreadable
			switch {
			case name == "left alone":
				if err != nil || string(data) != long {
					t.Errorf("%d bytes, error %v", len(data), err)
				}
			case !errors.As(err, &u) || !strings.Contains(u.Reason, "changed while it was read") || u.Advice == "":
				t.Errorf("%d bytes, error %v", len(data), err)
			}
		})
	}
}

// overwrite writes other bytes of the same number in place.
func overwrite(path, text string) error {
	f, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	_, err = f.WriteString(text)
	return errors.Join(err, f.Close())
}

// What is gone, or has become something else, when its turn comes is a row.
func TestFileThatIsGone(t *testing.T) {
	root := t.TempDir()
	for _, name := range []string{"a.csv", "b.csv", "c.csv", "d.csv"} {
		write(t, filepath.Join(root, name), []byte(table))
	}
	write(t, filepath.Join(root, "e.zip"), zipped(t, member{"pier.csv", []byte(table)}))
	l := mustFind(t, Options{}, root)
	at := func(name string) string { return filepath.Join(root, name) }
	for _, err := range []error{os.Remove(at("a.csv")), os.Remove(at("b.csv")), os.Mkdir(at("b.csv"), 0o755), os.WriteFile(at("c.csv"), nil, 0o644), os.Remove(at("e.zip"))} {
		if err != nil {
			t.Fatal(err)
		}
	}
	for i, words := range []string{"not there any more", "not a file", "empty", "", "not there any more"} {
		_, err := l.Files[i].Read(context.Background(), Options{})
		var u *grid.Unreadable
		if words == "" && err != nil || words != "" && (!errors.As(err, &u) || !strings.Contains(u.Reason, words) || u.Advice == "") {
			t.Errorf("%s: %v, want %q", l.Files[i].Name, err, words)
		}
	}
}

// The order in which a disk lists its folders changes nothing.
func TestOrderOfTheDisk(t *testing.T) {
	root := t.TempDir()
	for _, name := range []string{"a/rink.csv", "a/pier.csv", "b/rink.csv", "c/d/rink.csv", "c/d/x.csv", "~$x.csv", "z.csv"} {
		write(t, filepath.Join(root, filepath.FromSlash(name)), []byte(table))
	}
	for name, target := range map[string]string{"again": "a", "c/twin.csv": "../a/rink.csv", "b/loop": ".."} {
		if err := os.Symlink(target, filepath.Join(root, filepath.FromSlash(name))); err != nil {
			t.Skip(err)
		}
	}
	list := func(order func([]fs.DirEntry)) (out []string) {
		l, err := find(context.Background(), []string{root}, Options{}, func(p string) ([]fs.DirEntry, error) {
			entries, err := os.ReadDir(p)
			order(entries)
			return entries, err
		})
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range l.Files {
			out = append(out, f.Name+" at "+f.Path)
		}
		for _, s := range l.Skipped {
			out = append(out, s.Name+": "+s.Reason)
		}
		return out
	}
	sorted := list(func([]fs.DirEntry) {})
	for seed := range uint64(20) {
		r := rand.New(rand.NewPCG(seed, 1))
		want(t, "shuffled", list(func(e []fs.DirEntry) { r.Shuffle(len(e), func(i, j int) { e[i], e[j] = e[j], e[i] }) }), sorted)
	}
	if len(sorted) < 8 {
		t.Errorf("only %q", sorted)
	}
}
