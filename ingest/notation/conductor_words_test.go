package notation

import "testing"

// How installers write conductors in six languages; common practice, no source.
func TestParseConductorWritten(t *testing.T) {
	for in, want := range map[string]string{
		"twin & earth 1.5": "1.5 mm²; 2 cores", "T&E 2.5": "2.5 mm²; 2 cores", "figure 8 1.0": "1 mm²; 2 cores", "bipolare 1,5": "1.5 mm²; 2 cores", "bifilar 1,5": "1.5 mm²; 2 cores",
		"1,5 carré": "1.5 mm²", "2x1,5 quadrat": "1.5 mm²; 2 cores", "1,5 mm kw.": "1.5 mm²", "14g": "14 AWG", "2 runs 16/2": "16 AWG; 2 cores; 2 in parallel", "16AWG/1.5mm²": "16 AWG; 1.5 mm²",
		"ca. 1,5 mm²": "1.5 mm²", "1.5 mm²?": "1.5 mm²", "existing 16/2": "16 AWG; 2 cores", "RV-K 0,6/1 kV 2x2,5": "2.5 mm²; 2 cores",
		"7/.029": "7/0.74; stranded", "23/0076": "23/0.19; stranded",
	} {
		c, err := ParseConductor(in, Auto, HintNone)
		if got := c.String(); err != nil || got != want {
			t.Errorf("%q: %q, %v; want %q", in, got, err, want)
		}
	}
	if c, err := ParseConductor("1.5 mm²?", Auto, HintNone); err != nil || !c.Doubts.Has(Approximate) {
		t.Errorf("a question mark is no doubt: %v, %v", c.Doubts, err)
	}
}
