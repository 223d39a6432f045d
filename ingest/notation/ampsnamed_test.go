package notation

import (
	"slices"
	"testing"
)

func TestAmplifiersNamed(t *testing.T) {
	for in, want := range map[string][]string{
		"Amp 1 feeds Nave and Choir and amp 2 feeds Tower": {"1", "2"}, "Verstärker V1 speist Halle, Verstärker V2 Turm": {"V1", "V2"}, "Ampli 1, ampli 1 encore": {"1"}, "Amplifier AMP1, 2 x 40 W": {"AMP1"},
		"Verstärker V1 speist Halle, V2 Turm": {"V1", "V2"}, "Amplifier A1, line A2": {"A1"}, "Amp 2 x 120 W": nil, "Amp 120 W": nil, "Amplificador A: salida 1": {"A"}, "no amplifier here": nil, "": nil,
	} {
		if got := AmplifiersNamed(in); !slices.Equal(got, want) {
			t.Errorf("AmplifiersNamed(%q) = %q, want %q", in, got, want)
		}
	}
}
