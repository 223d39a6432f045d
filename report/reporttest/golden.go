package reporttest

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Golden compares a whole output with testdata/NAME.golden, which is rewritten
// when UPDATE_GOLDEN is set.
func Golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name+".golden")
	if os.Getenv("UPDATE_GOLDEN") != "" {
		if err := os.MkdirAll("testdata", 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	want := string(b)
	if got == want {
		return
	}
	g, w := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range max(len(g), len(w)) {
		if i >= len(g) || i >= len(w) || g[i] != w[i] {
			t.Errorf("%s, line %d: UPDATE_GOLDEN=1 rewrites it\n got %.300s\nwant %.300s", path, i+1, line(g, i), line(w, i))
			return
		}
	}
}

func line(lines []string, i int) string {
	if i < len(lines) {
		return lines[i]
	}
	return "(nothing more)"
}
