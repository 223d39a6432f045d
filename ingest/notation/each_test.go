package notation

import "testing"

// Counts for each of several places, in six languages; common practice, no source.
func TestCountEach(t *testing.T) {
	for in, want := range map[string]int{"je 2": 2, "2 each": 2, "2 pro Kabine": 2, "2 chacun": 2, "2 cada uno": 2, "2 per room": 2, "elk 2": 2, "2/Kabine": 2, "2 par vestiaire": 2, "two per cabin": 2,
		"2 ea": 0, "2": 0, "2 cad.": 0, "2 x 4": 0, "2 each of 4": 0, "each": 0, "": 0} {
		if n, ok := CountEach(in); ok != (want > 0) || ok && n != want {
			t.Errorf("%q: %d, %v; want %d", in, n, ok, want)
		}
	}
}

// Words for each in front of what each has; common practice, no source.
func TestBehindEach(t *testing.T) {
	for in, want := range map[string]string{"je 6 W": "6 W", "jeweils 3 W": "3 W", "chacun 1,5 W": "1,5 W", "cada uno 6 W": "6 W", "elk 10 W": "10 W",
		"6 W each": "", "je": "", "": "", "6 W": ""} {
		if rest, ok := BehindEach(in); rest != want || ok != (want != "") {
			t.Errorf("%q: %q, %v; want %q", in, rest, ok, want)
		}
	}
}
