package notation

import "testing"

// The texts are common practice, no source.
func TestConductorIn(t *testing.T) {
	for _, tt := range []struct {
		in, want, rest string
	}{
		{"Leitung 2 x 1,5 mm² verlegen, Linie 1", "2x1.5 mm²", "Leitung verlegen, Linie 1"},
		{"Manguera 2x1,5 mm² para la salida 1", "2x1.5 mm²", "Manguera para la salida 1"},
		{"Two-core cable 1.5 mm², amplifier to furthest loudspeaker", "1.5 mm²", "Two-core cable , amplifier to furthest loudspeaker"},
		{"2x2,5 - 60 m", "2x2.5 mm²", "- 60 m"},
		{"Cable, 16/2, plenum", "16 AWG; 2 cores", "Cable, , plenum"},
		{"2.5mm 85m", "2.5 mm²", "85m"},
		{"60 m / 1,5", "1.5 mm²", "60 m"},
		{"85 ft (2.5 mm)", "2.5 mm²", "85 ft"},
		{"25 m 1.5²", "1.5 mm²", "25 m"},
		{"14-2 120 ft", "14-2", "120 ft"},
		{"0.8 mm 40 m", "", ""},
		{"100 mm 40 m", "", ""},
		{"1.5 m", "", ""},
		{"2.5mm", "", ""},
		{"2 x 120 W amplifier", "", ""},
		{"from 2x1.5 to 2x2.5", "", ""},
		{"", "", ""},
	} {
		got, rest, ok := ConductorIn(tt.in, Auto)
		if ok != (tt.want != "") {
			t.Errorf("%q: found %v", tt.in, ok)
			continue
		}
		if want, err := ParseConductor(tt.want, Point, HintNone); ok && (err != nil || got.AreaMM2 != want.AreaMM2 || (got.AWG == nil) != (want.AWG == nil) || rest != tt.rest) {
			t.Errorf("%q = %v and %q, want %v and %q", tt.in, got, rest, want, tt.rest)
		}
	}
}
