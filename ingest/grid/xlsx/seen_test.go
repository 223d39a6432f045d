package xlsx

import (
	"fmt"
	"strings"
	"testing"
	"unsafe"
)

// Every text comes back as it is, whatever came before; one that repeats is the same string.
func TestSeen(t *testing.T) {
	s := new(seen)
	for i := range 5000 {
		for _, want := range []string{"", "House 1", fmt.Sprint("LS-", i), strings.Repeat("x", i%200)} {
			if got := s.text([]byte(want)); got != want {
				t.Fatalf("%q comes back as %q", want, got)
			}
		}
	}
	a, b := s.text([]byte("Palm house")), s.text([]byte("Palm house"))
	if unsafe.StringData(a) != unsafe.StringData(b) {
		t.Error("a text is held twice")
	}
}
