package source

import (
	"os"
	"path/filepath"
	"testing"
)

// Paths of Windows, and of whoever made a zip, are shown with slashes, without
// drives and without a way out.
func TestShown(t *testing.T) {
	for in, want := range map[string]string{
		`C:\jobs\rink.csv`:           "C_/jobs/rink.csv",
		`\\server\share\rink.csv`:    "server/share/rink.csv",
		`\\?\D:\jobs\rink.csv`:       "?/D_/jobs/rink.csv",
		`..\..\evil.csv`:             "evil.csv",
		"jobs//./a/../rink.csv":      "jobs/a/rink.csv",
		"/abs/rink.csv":              "abs/rink.csv",
		"..":                         "_",
		"":                           "_",
		"rink\x00\x1b.csv":           "rink__.csv",
		"caf\xe9.csv":                "caf_.csv",
		"a\u202evsc.csv":             "a_vsc.csv",
		"rink.csv:stream":            "rink.csv_stream",
		"two\nlines.csv":             "two_lines.csv",
		"Kühlhaus 北 – Süd/Nr. 1.csv": "Kühlhaus 北 – Süd/Nr. 1.csv",
	} {
		if got := shown(in); got != want {
			t.Errorf("%q is shown as %q, want %q", in, got, want)
		}
	}
}

// What is left out is left out under every name that it has: on a disk that
// does not tell OUT from out these differ in letters, here it is another link.
func TestLeftOutUnderAnotherName(t *testing.T) {
	root := t.TempDir()
	write(t, filepath.Join(root, "house.csv"), []byte(table))
	write(t, filepath.Join(root, "job.csv"), []byte(table))
	other := filepath.Join(t.TempDir(), "HOUSE.csv")
	if err := os.Link(filepath.Join(root, "house.csv"), other); err != nil {
		t.Skip(err)
	}
	files, skipped := names(mustFind(t, Options{Exclude: []string{other}}, root))
	want(t, "files", files, []string{"job.csv"})
	want(t, "skipped", skipped, []string{"house.csv: left out as asked"})
}
