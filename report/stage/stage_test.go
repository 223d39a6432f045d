package stage_test

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
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

// What somebody else put into the folder, and what somebody changed there, is
// neither written over nor taken away.
func TestWorkOfOthersIsKept(t *testing.T) {
	for _, tt := range []struct {
		name    string
		file    string // that somebody writes into the folder
		changed bool
	}{
		{"a file that was there before", "zones.csv", false},
		{"a result that somebody filled in", "audit.xlsx", true},
		{"a result of no further use that somebody filled in", "marked/old.xlsx", true},
	} {
		t.Run(tt.name, func(t *testing.T) {
			out := filepath.Join(t.TempDir(), "out")
			first, _ := stage.New(out, nil)
			write(t, first, "audit.xlsx", "1")
			write(t, first, "marked/old.xlsx", "1")
			if err := first.Commit(); err != nil {
				t.Fatal(err)
			}
			mine := filepath.Join(out, filepath.FromSlash(tt.file))
			os.WriteFile(mine, []byte("typed by hand"), 0o644)
			second, _ := stage.New(out, nil)
			write(t, second, "audit.xlsx", "2")
			write(t, second, "zones.csv", "2")
			var taken *stage.Taken
			if err := second.Commit(); !errors.As(err, &taken) || taken.Path != mine || taken.Changed != tt.changed {
				t.Errorf("error %v", err)
			}
			if err := stage.Ready(out, []string{"audit.xlsx", "zones.csv"}); !errors.As(err, &taken) || taken.Path != mine {
				t.Errorf("told before the run: %v", err)
			}
			if b, _ := os.ReadFile(mine); string(b) != "typed by hand" {
				t.Errorf("%s now reads %q", tt.file, b)
			}
			if got := names(t, out); slices.Contains(got, stage.Unfinished) {
				t.Errorf("left: %v", got)
			}
			os.Rename(mine, filepath.Join(t.TempDir(), "mine"))
			third, _ := stage.New(out, nil)
			write(t, third, "audit.xlsx", "3")
			if err := third.Commit(); err != nil {
				t.Errorf("after it was moved away: %v", err)
			}
		})
	}
}

func TestDiscardLeavesNothing(t *testing.T) {
	above := filepath.Join(t.TempDir(), "reviews")
	out := filepath.Join(above, "spring", "out")
	s, _ := stage.New(out, nil)
	write(t, s, "findings.csv", "a")
	s.Discard()
	if _, err := os.Stat(above); !os.IsNotExist(err) {
		t.Errorf("a folder that was made is still there: %v", err)
	}
	if err := stage.Ready(out, nil); err != nil {
		t.Error(err)
	}
	if _, err := os.Stat(above); !os.IsNotExist(err) {
		t.Errorf("asking left a folder: %v", err)
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

// A file that cannot be put into its place leaves the folder as it was: here a
// folder of its name stands in the way.
func TestCommitIsAllOrNothing(t *testing.T) {
	out := filepath.Join(t.TempDir(), "out")
	first, _ := stage.New(out, nil)
	write(t, first, "audit.xlsx", "old")
	write(t, first, "findings.csv", "old")
	if err := first.Commit(); err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll(filepath.Join(out, "zones.csv", "mine"), 0o755); err != nil {
		t.Fatal(err)
	}
	second, _ := stage.New(out, nil)
	write(t, second, "audit.xlsx", "new")
	write(t, second, "marked/a/b.xlsx", "new")
	write(t, second, "zones.csv", "new")
	write(t, second, "findings.csv", "new")
	err := second.Commit()
	if err == nil || !strings.Contains(err.Error(), "zones.csv is a folder") || strings.Contains(err.Error(), "\n") {
		t.Errorf("error %v", err)
	}
	if got, want := names(t, out), []string{".lineaudit", "audit.xlsx", "findings.csv"}; !slices.Equal(got, want) {
		t.Errorf("left: %v, want %v", got, want)
	}
	for _, name := range []string{"audit.xlsx", "findings.csv"} {
		if b, _ := os.ReadFile(filepath.Join(out, name)); string(b) != "old" {
			t.Errorf("%s now reads %q", name, b)
		}
	}
	if _, err := os.Stat(filepath.Join(out, "marked")); err == nil {
		t.Error("an empty folder is left")
	}
}

// A place that takes no folder is one clear error.
func TestNoPlaceToWrite(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	readOnly := t.TempDir()
	if err := os.Chmod(readOnly, 0o555); err != nil {
		t.Fatal(err)
	}
	for _, out := range []string{file, filepath.Join(file, "below"), filepath.Join(readOnly, "out")} {
		s, err := stage.New(out, nil)
		switch {
		case err == nil && out == filepath.Join(readOnly, "out"):
			s.Discard() // whoever runs the test may write everywhere
		case err == nil:
			t.Errorf("%s: no error", out)
		case strings.Contains(err.Error(), "\n") || !strings.HasPrefix(err.Error(), "output folder"):
			t.Errorf("%s: %v", out, err)
		}
	}
}

// A link in the output folder leads nothing out of it.
func TestLinksAreNotFollowed(t *testing.T) {
	out, elsewhere := t.TempDir(), t.TempDir()
	if err := os.Symlink(elsewhere, filepath.Join(out, "marked")); err != nil {
		t.Skip("no links here")
	}
	s, _ := stage.New(out, nil)
	write(t, s, "marked/a.xlsx", "x")
	if err := s.Commit(); err == nil || !strings.Contains(err.Error(), "is a link") {
		t.Errorf("error %v", err)
	}
	if got := names(t, elsewhere); len(got) > 0 {
		t.Errorf("written elsewhere: %v", got)
	}
}

// A run that is ended by force between its first and its last move leaves a
// note that its files are of two runs; the next run makes the folder right.
func TestEndedWhileMoving(t *testing.T) {
	out := filepath.Join(t.TempDir(), "out")
	first, _ := stage.New(out, nil)
	write(t, first, "audit.xlsx", "1")
	write(t, first, "marked/old name.xlsx", "1")
	if err := first.Commit(); err != nil {
		t.Fatal(err)
	}
	// What the second run leaves when it is ended: its note, a folder of files
	// on their way, one file in its place.
	const note = stage.Unfinished
	second, _ := stage.New(out, nil)
	write(t, second, "audit.xlsx", "2")
	write(t, second, "second only.csv", "2")
	if err := second.Commit(); err != nil {
		t.Fatal(err)
	}
	os.Remove(filepath.Join(out, ".lineaudit"))
	text := stage.UnfinishedText + "audit.xlsx\nmarked/old name.xlsx\nsecond only.csv\n../mine.txt\n"
	os.WriteFile(filepath.Join(out, note), []byte(text), 0o644)
	os.MkdirAll(filepath.Join(out, ".unfinished-123"), 0o755)
	os.WriteFile(filepath.Join(out, ".unfinished-123", "zones.csv"), nil, 0o644)
	os.MkdirAll(filepath.Join(out, "marked"), 0o755)
	os.WriteFile(filepath.Join(out, "marked", "old name.xlsx"), []byte("1"), 0o644)
	mine := filepath.Join(filepath.Dir(out), "mine.txt")
	os.WriteFile(mine, nil, 0o644)
	third, err := stage.New(out, nil)
	if err != nil {
		t.Fatal(err)
	}
	write(t, third, "audit.xlsx", "3")
	if err := third.Commit(); err != nil {
		t.Fatal(err)
	}
	if got, want := names(t, out), []string{".lineaudit", "audit.xlsx"}; !slices.Equal(got, want) {
		t.Errorf("left: %v, want %v", got, want)
	}
	if _, err := os.Stat(mine); err != nil {
		t.Error("a file outside the folder was taken away")
	}
}

// Two runs at once do not mix their files.
func TestOneRunAtATime(t *testing.T) {
	switch runtime.GOOS {
	case "linux", "darwin", "windows":
	default:
		t.Skip("no lock here")
	}
	out := filepath.Join(t.TempDir(), "out")
	first, err := stage.New(out, nil)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := stage.New(out, nil); err == nil || !strings.Contains(err.Error(), "another run is writing") {
		t.Errorf("error %v", err)
	}
	write(t, first, "a.csv", "1")
	if err := first.Commit(); err != nil {
		t.Fatal(err)
	}
	second, err := stage.New(out, nil)
	if err != nil {
		t.Fatal(err)
	}
	second.Discard()
}
