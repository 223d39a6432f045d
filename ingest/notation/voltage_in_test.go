package notation

import "testing"

// Common practice, no source.
func TestLineVoltageIn(t *testing.T) {
	for _, tt := range []struct {
		in      string
		want    float64
		general bool
	}{
		{"All speakers 70.7 V", 70.7, true},
		{"Lignes en 100 V. Chaque atténuateur a un relais de priorité", 100, true},
		{"Tutte le linee a 100 V, un finale per zona", 100, true},
		{"100V line, 1 no. amp", 100, false},
		{"100 V, not the shop", 0, false},
		{"Lines 100 V, the shop 70 V", 0, false},
	} {
		v, general, ok := LineVoltageIn(tt.in)
		if v != tt.want || ok != (tt.want > 0) || ok && general != tt.general {
			t.Errorf("%q: %v, general %v, %v; want %v, %v", tt.in, v, general, ok, tt.want, tt.general)
		}
	}
}
