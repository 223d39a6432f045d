package vocabulary

import (
	"math/bits"
	"math/rand/v2"
	"testing"
)

// Words that are told apart by their letters alone are as far apart as that.
func TestLettersNeverHideAMisspelling(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 7))
	near := 0
	for range 200_000 {
		word := func(n int) string {
			b := make([]byte, n)
			for i := range b {
				b[i] = "aeinrst"[r.IntN(7)]
			}
			return string(b)
		}
		a, b := word(5+r.IntN(3)), word(5+r.IntN(3))
		d := distance(a, b, 2)
		if far := bits.OnesCount32(lettersOf(a) ^ lettersOf(b)); d <= 2 && far > 2*d {
			t.Fatalf("%q and %q: %d letters differ, distance %d", a, b, far, d)
		}
		if d <= 2 {
			near++
		}
	}
	if near < 100 {
		t.Errorf("only %d near pairs", near)
	}
}
