package stage_test

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"lineaudit/report/stage"
)

func write(t *testing.T, s *stage.Stage, name, text string) {
	t.Helper()
	full, err := s.Path(name)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// names lists the files below a folder, slash-separated.
func names(t *testing.T, dir string) []string {
	t.Helper()
	var out []string
	filepath.WalkDir(dir, func(p string, d os.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			rel, _ := filepath.Rel(dir, p)
			out = append(out, filepath.ToSlash(rel))
		}
		return nil
	})
	slices.Sort(out)
	return out
}

func TestCommitShowsEverythingAtOnce(t *testing.T) {
	out := filepath.Join(t.TempDir(), "out")
	s, err := stage.New(out, nil)
	if err != nil {
		t.Fatal(err)
	}
	write(t, s, "findings.csv", "a")
	write(t, s, "marked/rink/one.xlsx", "b")
	if _, err := os.Stat(filepath.Join(out, "findings.csv")); err == nil {
		t.Error("a file appeared before Commit")
	}
	if err := s.Commit(); err != nil {
		t.Fatal(err)
	}
	if got, want := names(t, out), []string{".lineaudit", "findings.csv", "marked/rink/one.xlsx"}; !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

func TestNextRunTakesAwayOnlyItsOwn(t *testing.T) {
	out := filepath.Join(t.TempDir(), "out")
	first, _ := stage.New(out, nil)
	write(t, first, "findings.csv", "a")
	write(t, first, "marked/old.xlsx", "b")
	if err := first.Commit(); err != nil {
		t.Fatal(err)
	}
	os.WriteFile(filepath.Join(out, "my notes.txt"), []byte("mine"), 0o644)
	second, _ := stage.New(out, nil)
	write(t, second, "findings.csv", "c")
	if err := second.Commit(); err != nil {
		t.Fatal(err)
	}
	if got, want := names(t, out), []string{".lineaudit", "findings.csv", "my notes.txt"}; !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

func TestDiscardLeavesNothing(t *testing.T) {
	out := filepath.Join(t.TempDir(), "out")
	s, _ := stage.New(out, nil)
	write(t, s, "findings.csv", "a")
	s.Discard()
	if _, err := os.Stat(out); !os.IsNotExist(err) {
		t.Errorf("the output folder is still there: %v", err)
	}
}

func TestNeverWritesOverAnInput(t *testing.T) {
	out := t.TempDir()
	input := filepath.Join(out, "audit.xlsx")
	os.WriteFile(input, []byte("mine"), 0o644)
	s, _ := stage.New(out, []string{input})
	write(t, s, "audit.xlsx", "ours")
	if err := s.Commit(); err == nil {
		t.Error("no error")
	}
	if b, _ := os.ReadFile(input); string(b) != "mine" {
		t.Errorf("the input now reads %q", b)
	}
	if got := names(t, out); !slices.Equal(got, []string{"audit.xlsx"}) {
		t.Errorf("left behind: %v", got)
	}
}

func TestNamesStayInside(t *testing.T) {
	s, _ := stage.New(filepath.Join(t.TempDir(), "out"), nil)
	defer s.Discard()
	for _, name := range []string{"../evil.xlsx", "/etc/evil", "marked/../../evil", ""} {
		if full, err := s.Path(name); err == nil {
			t.Errorf("Path(%q) = %q, want an error", name, full)
		}
	}
}
