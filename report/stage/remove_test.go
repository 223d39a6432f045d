package stage

import (
	"os"
	"path/filepath"
	"testing"
)

// Where a file system cannot take a folder away at once, what is in it goes first.
func TestRemoveEach(t *testing.T) {
	dir := t.TempDir()
	tree := filepath.Join(dir, "tree")
	for _, name := range []string{"a/b/one", "a/two", "three"} {
		full := filepath.Join(tree, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, nil, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	removeEach(tree)
	left, err := os.ReadDir(dir)
	if err != nil || len(left) > 0 {
		t.Errorf("left: %v, %v", left, err)
	}
	removeEach(filepath.Join(dir, "never there"))
}
