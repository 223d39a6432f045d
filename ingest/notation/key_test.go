package notation

import "testing"

func TestKeyOf(t *testing.T) {
	for _, tt := range []struct {
		in   string
		want Key
	}{
		{"Zone 1", Key{Kind: KeyZone, ID: "1"}},
		{"zone 01", Key{Kind: KeyZone, ID: "1"}},
		{"ZONE-01", Key{Kind: KeyZone, ID: "1"}},
		{"Zone1", Key{Kind: KeyZone, ID: "1"}},
		{"Z-01", Key{Kind: KeyZone, ID: "1"}},
		{"Z1", Key{Kind: KeyZone, ID: "1"}},
		{"Z.1", Key{Kind: KeyZone, ID: "1"}},
		{"Zone No. 1", Key{Kind: KeyZone, ID: "1"}},
		{"Zone #1", Key{Kind: KeyZone, ID: "1"}},
		{"Zona 1", Key{Kind: KeyZone, ID: "1"}},
		{"Rufkreis 1", Key{Kind: KeyZone, ID: "1"}},
		{"ZD1", Key{Kind: KeyZone, ID: "1"}},
		{"Groep 1", Key{Kind: KeyZone, ID: "1"}},
		{"Zone A", Key{Kind: KeyZone, ID: "a"}},
		{"Zone 1a", Key{Kind: KeyZone, ID: "1a"}},
		{"Zone 1 A", Key{Kind: KeyZone, ID: "1a"}},
		{"Zone 1.2", Key{Kind: KeyZone, ID: "1.2"}},
		{"Zone II", Key{Kind: KeyZone, ID: "2"}},
		{"Zone two", Key{Kind: KeyZone, ID: "2"}},
		{"Zone 1 - Orangery", Key{Kind: KeyZone, ID: "1", Name: "orangery"}},
		{"Zone 1: Orangery", Key{Kind: KeyZone, ID: "1", Name: "orangery"}},
		{"Zone 1 (Orangery)", Key{Kind: KeyZone, ID: "1", Name: "orangery"}},
		{"Orangery (Zone 1)", Key{Kind: KeyZone, ID: "1", Name: "orangery"}},
		{"Orangery - Z1", Key{Kind: KeyZone, ID: "1", Name: "orangery"}},
		{"Z01 Orangery", Key{Kind: KeyZone, ID: "1", Name: "orangery"}},
		{"1 - Orangery", Key{ID: "1", Name: "orangery"}},
		{"01 Orangery", Key{ID: "1", Name: "orangery"}},
		{"1. Orangery", Key{ID: "1", Name: "orangery"}},
		{"1", Key{ID: "1"}},
		{"001", Key{ID: "1"}},
		{"Orangery", Key{Name: "orangery"}},
		{"ORANGERY ", Key{Name: "orangery"}},
		{"Zone Orangery", Key{Kind: KeyZone, Name: "orangery"}},
		{"Serre Méditerranée", Key{Name: "serre mediterranee"}},
		{"Rink 2", Key{Name: "rink 2"}},
		{"Rink 02", Key{Name: "rink 2"}},
		{"Palm House 2", Key{Name: "palm house 2"}},
		{"Control room", Key{Name: "control room"}},
		{"3D cinema", Key{ID: "3d", Name: "cinema"}},
		{"PH-01", Key{Letters: "ph", ID: "1"}},
		{"PH01", Key{Letters: "ph", ID: "1"}},
		{"VC-3", Key{Kind: KeyControl, ID: "3"}},
		{"VC 03", Key{Kind: KeyControl, ID: "3"}},
		{"Volume control 3", Key{Kind: KeyControl, ID: "3"}},
		{"LSR 3", Key{Kind: KeyControl, ID: "3"}},
		{"Atténuateur 3", Key{Kind: KeyControl, ID: "3"}},
		{"AMP-1", Key{Kind: KeyAmplifier, ID: "1"}},
		{"Endstufe 1", Key{Kind: KeyAmplifier, ID: "1"}},
		{"Linie 4", Key{Kind: KeyLine, ID: "4"}},
		{"LS-01A", Key{Kind: KeyLoudspeaker, ID: "1a"}},
		{"", Key{}}, {"-", Key{}}, {"TBC", Key{}}, {"ditto", Key{}}, {"Zone", Key{}}, {"***", Key{}},
	} {
		if got := KeyOf(tt.in); got != tt.want {
			t.Errorf("KeyOf(%q) = %+v, want %+v", tt.in, got, tt.want)
		}
	}
}

func FuzzKey(f *testing.F) {
	f.Add("Zone 1")
	f.Add("Orangery (Zone 1)")
	f.Add("PH-01")
	f.Fuzz(func(t *testing.T, s string) {
		k := KeyOf(s)
		if KeyOf(Clean(s)) != k {
			t.Fatalf("%q: cleaning changes the key", s)
		}
		if !k.IsZero() && k.String() == "" {
			t.Fatalf("%q: %+v prints as nothing", s, k)
		}
	})
}
