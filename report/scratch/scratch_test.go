package scratch_test

import (
	"io"
	"os"
	"runtime"
	"testing"

	"lineaudit/report/scratch"
)

func TestNothingStays(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("TMPDIR", dir)
	t.Setenv("TMP", dir)
	f, err := scratch.New("lineaudit-*.rows")
	if err != nil {
		t.Fatal(err)
	}
	if left, _ := os.ReadDir(dir); runtime.GOOS != "windows" && len(left) > 0 {
		t.Errorf("a program ended now would leave %v", left)
	}
	if _, err := f.WriteString("rows"); err != nil {
		t.Fatal(err)
	}
	if _, err := f.Seek(0, io.SeekStart); err != nil {
		t.Fatal(err)
	}
	if b, err := io.ReadAll(f); err != nil || string(b) != "rows" {
		t.Errorf("read %q, %v", b, err)
	}
	if err := f.Close(); err != nil {
		t.Error(err)
	}
	if left, _ := os.ReadDir(dir); len(left) > 0 {
		t.Errorf("left: %v", left)
	}
}
