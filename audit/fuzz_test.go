package audit

import (
	"math"
	"testing"
)

func FuzzLimitValue(f *testing.F) {
	for _, s := range []string{"80 %", "0,9", "1 dB", "off", "-1", "1e400", "0.5 km", "%", "80%%"} {
		f.Add(s, "", "% of rating")
		f.Add(s, "of rating", "% of rating")
		f.Add(s, "km", "m")
	}
	f.Fuzz(func(t *testing.T, text, unit, want string) {
		v, shown, problem := limitValue(text, unit, want)
		if problem == "" && (math.IsNaN(v) || shown != want) {
			t.Fatalf("%q %q: %v %q", text, unit, v, shown)
		}
	})
}

func FuzzRevisionMark(f *testing.F) {
	for _, s := range []string{"rev C", "Rink rev B as built", "J1001_P2", "issue 12", "rev", "rev rev A", "2019-03-01", "indice b"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		series, number := revisionMark(s)
		if (series == 0) != (number == 0) || series < 0 || number < 0 {
			t.Fatalf("%q: series %d, number %d", s, series, number)
		}
		if plain := stripMarks(s); len(plain) > 2*len(s) {
			t.Fatalf("%q became %q", s, plain)
		}
	})
}
