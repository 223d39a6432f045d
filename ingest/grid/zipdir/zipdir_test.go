package zipdir

import (
	"archive/zip"
	"bytes"
	"errors"
	"fmt"
	"runtime"
	"testing"
)

func made(t *testing.T, n int) []byte {
	t.Helper()
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	for i := range n {
		if _, err := z.CreateRaw(&zip.FileHeader{Name: fmt.Sprint("../", i)}); err != nil {
			t.Fatal(err)
		}
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

func TestOpen(t *testing.T) {
	for _, tt := range []struct {
		members, most int
		err           error
	}{{0, 10, nil}, {10, 10, nil}, {11, 10, ErrTooMany}, {70_000, 0, nil}, {70_000, 100, ErrTooMany}} {
		data := made(t, tt.members)
		z, err := Open(bytes.NewReader(data), int64(len(data)), tt.most)
		if !errors.Is(err, tt.err) {
			t.Errorf("%d members, %d allowed: %v", tt.members, tt.most, err)
		}
		if err == nil && len(z.File) != tt.members {
			t.Errorf("%d members of %d", len(z.File), tt.members)
		}
	}
	if _, err := Open(bytes.NewReader([]byte("no zip")), 6, 10); err == nil || errors.Is(err, ErrTooMany) {
		t.Errorf("no zip gives %v", err)
	}
}

// A directory of 150,000 entries is left unread.
func TestLargeDirectoryIsCheap(t *testing.T) {
	data := made(t, 150_000)
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	if _, err := Open(bytes.NewReader(data), int64(len(data)), 1000); !errors.Is(err, ErrTooMany) {
		t.Errorf("it gives %v", err)
	}
	runtime.ReadMemStats(&after)
	if used := (after.TotalAlloc - before.TotalAlloc) >> 20; used > 20 {
		t.Errorf("it took %d MiB", used)
	}
}
