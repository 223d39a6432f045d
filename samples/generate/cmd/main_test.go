package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestRun(t *testing.T) {
	dir := t.TempDir()
	out := filepath.Join(dir, "jobs")
	for _, tt := range []struct {
		args []string
		code int
		says string
	}{
		{[]string{"--out", out, "-n", "3", "--layout", "flat"}, 0, "3 jobs"},
		{[]string{"-n", "3"}, 2, "--out is missing"},
		{[]string{"--out", out, "--layout", "round"}, 3, `unknown layout "round"`},
		{[]string{"--out", out, "--colour"}, 2, "unknown flag"},
	} {
		var stdout, stderr bytes.Buffer
		if code := run(tt.args, &stdout, &stderr); code != tt.code {
			t.Errorf("%v: exit %d, want %d", tt.args, code, tt.code)
		}
		if all := stdout.String() + stderr.String(); !strings.Contains(all, tt.says) {
			t.Errorf("%v: %q does not say %q", tt.args, all, tt.says)
		}
	}
	if files, _ := os.ReadDir(out); len(files) != 3 {
		t.Errorf("%d files written, want 3", len(files))
	}
	if _, err := os.Stat(filepath.Join(out+"-truth", "loudspeakers.csv")); err != nil {
		t.Error(err)
	}
}
