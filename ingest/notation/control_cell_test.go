package notation

import "testing"

// The texts are common practice, no source.
func TestParseControlCell(t *testing.T) {
	for _, tt := range []struct{ text, name, watts, place string }{
		{"VC-1", "VC-1", "", ""},
		{"VC-1 (10 W) - Seed room", "VC-1", "10 W", "Seed room"},
		{"VC-1 - 10 W - Seed room", "VC-1", "10 W", "Seed room"},
		{"VC-2 rated 40 W - Tunnel", "VC-2", "40 W", "Tunnel"},
		{"VC-3 - Tunnel", "VC-3", "", "Tunnel"},
		{"Volume control VC-1 (10 W), Seed room", "VC-1", "10 W", "Seed room"},
		{"hinter Regler R1, 12 W:", "R1", "12 W", ""},
		{"derrière atténuateur T1, 12 W :", "T1", "12 W", ""},
		{"R1 da 10 W", "R1", "10 W", ""},
		{"AT2 de 35W", "AT2", "35W", ""},
		{"VC 3", "VC 3", "", ""},
		{"Att. du couloir", "Att. du couloir", "", ""},
		{"WK-35", "WK-35", "", ""},
		{"K2 50 W max", "K2", "50 W max", ""},
		{"Knob by the door", "Knob by the door", "", ""},
		{"VC A", "VC A", "", ""},
		{"VC-A (36W)", "VC-A", "36W", ""},
		{"VC-1 (max 36 W)", "VC-1", "36 W", ""},
		{"LR1 (12 W, 24-V-Pflichtruf)", "LR1", "12 W", ""},
		{"35W VC", "", "35W", ""},
		{"Regler 36 W", "", "36 W", ""},
		{"wall knob 35W", "", "35W", ""},
		{"VC 1  35 W  Orchid house", "VC 1", "35 W", "Orchid house"},
		{"Regler 2 35 W max. Halle", "Regler 2", "35 W max. Halle", ""},
		{"yes - AT1, 36W rotary by door", "AT1", "36W rotary by door", ""},
		{"ja, R3", "R3", "", ""},
		{"AT2, same one as the shop", "AT2", "", ""},
		{"VC-1, VC-2", "VC-1, VC-2", "", ""},
		{"potentiomètre mural", "", "", ""},
	} {
		if p := ParseControlCell(tt.text); p.Name != tt.name || p.Watts != tt.watts || p.Place != tt.place {
			t.Errorf("%q: %+v, want %q, %q, %q", tt.text, p, tt.name, tt.watts, tt.place)
		}
	}
}

// The words are common practice, no source.
func TestOneForEach(t *testing.T) {
	for text, want := range map[string]bool{"one 10 W knob per booth": true, "je Kabine ein Regler 10 W": true, "un atténuateur par cabine": true, "uno cada sala": true,
		"par AT1": false, "RV1 per pista": false, "un attenuatore per sala": true, "VC-1": false, "per": false, "VC-1 (10 W) - Seed room": false, "Person 1": false} {
		if got := OneForEach(text); got != want {
			t.Errorf("%s: %v", text, got)
		}
	}
}

func TestWithoutControl(t *testing.T) {
	for text, want := range map[string]bool{"No VC": true, "ohne Regler": true, "sans atténuateur": true, "no volume control": true, "sin atenuador": true, "geen regelaar": true,
		"senza attenuatore": true, "No": false, "VC 1": false, "No. 1": false, "no one in the hall": false} {
		if got := WithoutControl(text); got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}
