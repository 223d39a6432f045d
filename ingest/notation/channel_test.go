package notation

import (
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

func TestParseChannel(t *testing.T) {
	ref := func(amp string, ch ...string) ChannelRef { return ChannelRef{Amplifier: amp, Channels: ch} }
	doubts := func(c ChannelRef, d Doubts) ChannelRef { c.Doubts |= d; return c }
	bridged := func(c ChannelRef) ChannelRef { c.Bridged = true; return c }
	ab := func(c ChannelRef) ChannelRef { c.AB = true; c.Doubts |= PairOrCircuits; return c }
	for _, tt := range []struct {
		in   string
		want ChannelRef
	}{
		{"A1.2", ref("A1", "2")},
		{"A1-2", ref("A1", "2")},
		{"A1:2", ref("A1", "2")},
		{"A1/2", ref("A1", "2")},
		{"A1/CH3", ref("A1", "3")},
		{"A1 CH3", ref("A1", "3")},
		{"A1-B", ref("A1", "B")},
		{"AMP 1 CH B", ref("1", "B")},
		{"A1 3", ref("A1", "3")}, {"A1 B", ref("A1", "B")}, {"V1 K1", ref("V1", "K1")}, {"A2C3", ref("A2", "3")}, {"A1 [2]", ref("A1", "2")},
		{"A1 1-4", ref("A1", "1", "2", "3", "4")}, {"A1.1-A1.4", ref("A1", "1", "2", "3", "4")}, {"ch 1 to 4", ref("", "1", "2", "3", "4")}, {"Kanal 1 bis 3", ref("", "1", "2", "3")},
		{"A1/A2", doubts(ref("", "A1", "A2"), DateOrPair)}, {"A1.2/A1.3", doubts(ref("A1", "2", "3"), DateOrPair)},
		{"bridged 3/4", bridged(ref("", "3", "4"))}, {"A1.2?", doubts(ref("A1", "2"), Approximate)}, {"III", ref("", "III")},
		{"amp one way three", ref("1", "3")}, {"way two", ref("", "2")}, {"way 3 of A1", ref("A1", "3")}, {"Linie 3 an V1", ref("V1", "3")}, {"100 V line 1", ref("", "1")},
		{"PA line 3", ref("", "3")}, {"ELA Linie 1 und 2", ref("", "1", "2")}, {"Omroep lijn 2", ref("", "2")}, {"PA output 1", ref("PA", "1")},
		{"Verst. 1 Ausg. 2", ref("1", "2")}, {"Ampl. 1 usc. 2", ref("1", "2")}, {"verst. 1 uitg. 2", ref("1", "2")}, {"V1 groep 2", ref("V1", "2")}, {"Amplificateur n°1 voie 2", ref("1", "2")}, {"Amp A/1", ref("A", "1")},
		{"Amp1-Ch2", ref("1", "2")},
		{"AMP-01 CH-02", ref("01", "02")},
		{"Amp 2 / ch 3", ref("2", "3")},
		{"Amp 2 / ch 3+4 bridged", bridged(ref("2", "3", "4"))},
		{"Amp 3 O/P 4", ref("3", "4")},
		{"DSP amp 3, out 2", ref("3", "2")},
		{"Endstufe 2 Kanal 3", ref("2", "3")},
		{"Verstärker 2, Ausgang 1", ref("2", "1")},
		{"Kanal 3 von Endstufe 2", ref("2", "3")},
		{"Ampli 1 sortie 2", ref("1", "2")},
		{"Amp 1 Zone 2", ref("1", "2")},
		{"Amp 2 - zone B", ref("2", "B")},
		{"sortie 2 ampli 1", ref("1", "2")},
		{"Etapa 1 salida 2", ref("1", "2")},
		{"Finale 1 uscita 2", ref("1", "2")},
		{"Versterker 1 kanaal 2", ref("1", "2")},
		{"Amp 2", ref("2")},
		{"Amp A1", ref("A1")},
		{"Amp 1.2", ref("1", "2")},
		{"Amp 1-B", ref("1", "B")},
		{"PA-02:4", ref("PA-02", "4")},
		{"Rack 2 U14 ch3", ref("Rack 2 U14", "3")},
		{"Ch 1+2", ref("", "1", "2")},
		{"Ch 1+2 (BR)", bridged(ref("", "1", "2"))},
		{"Ch 1-4", ref("", "1", "2", "3", "4")},
		{"Ch 1 & 2", ref("", "1", "2")},
		{"Ch. 1 and 2", ref("", "1", "2")},
		{"Ch 1 + Ch 2", ref("", "1", "2")},
		{"Kanal 3", ref("", "3")},
		{"CH-A", ref("", "A")},
		{"CH1", ref("", "1")},
		{"OUT 3", ref("", "3")},
		{"Zone out 3", ref("", "3")},
		{"Linie 2", ref("", "2")},
		{"Amp 1 Line 2", ref("1", "2")},
		{"Amp 1 way 1", ref("1", "1")},
		{"A1 way 2", ref("A1", "2")},
		{"way 3", ref("", "3")},
		{"Endstufe 2 Weg 3", ref("2", "3")},
		{"voie 2", ref("", "2")},
		{"A1 s1", ref("A1", "1")},
		{"V1 k3", ref("V1", "3")},
		{"Amp 2 output 3", ref("2", "3")},
		{"rack 1 amp 2 ch 3", ref("rack 1 / 2", "3")},
		{"X1-1", ref("X1", "1")},
		{"AX4-1+2", ref("AX4", "1", "2")},
		{"A-1-2", ref("A-1", "2")},
		{"A.1", ref("A", "1")},
		{"3", ref("", "3")},
		{"B", ref("", "B")},
		{"#3", ref("", "3")},
		{"1A", ref("", "1A")},
		{"L1A, L1B", ref("", "L1A", "L1B")},
		{"A1.2 & A1.3", ref("A1", "2", "3")},
		{"1+2", ref("", "1", "2")},
		{"1,2", ref("", "1", "2")},
		{"1-3", doubts(ref("1", "3"), DateOrPair)},
		{"1/2", doubts(ref("1", "2"), DateOrPair)},
		{"A-2", doubts(ref("A", "2"), DateOrPair)},
		{"PA-02", ref("", "PA-02")},
		{"1.3", ref("1", "3")},
		{"1:3", ref("1", "3")},
		{"A/B", ab(ref("", "A", "B"))},
		{"A+B", ab(ref("", "A", "B"))},
		{"Amp 1 Ch A/B", ab(ref("1", "A", "B"))},
		{"Amp 1 Ch 1+2 en parallèle", ChannelRef{Amplifier: "1", Channels: []string{"1", "2"}, Parallel: true}},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseChannel(tt.in)
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(tt.want, got, cmpopts.EquateEmpty()); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
	for in, want := range map[string]error{
		"0 / -15": ErrNotUnderstood, "EN 54-24": ErrNotUnderstood, "BS 5839-8": ErrNotUnderstood, "": ErrEmpty, "n/a": ErrMissing, "ditto": ErrDitto, "-3": ErrNotUnderstood, "bridged": ErrNotUnderstood,
		"+44 20 7946 0958": ErrNotUnderstood, "020 7946 0958": ErrNotUnderstood, "12.05.2021": ErrNotUnderstood, "12.05.21": ErrNotUnderstood,
		"£5.00": ErrNotUnderstood, "Orangery": ErrNotUnderstood, "192.168.0.10": ErrNotUnderstood, "5 W": ErrNotUnderstood,
		"8Ω": ErrNotUnderstood, "50%": ErrNotUnderstood, "70V": ErrNotUnderstood, "5W": ErrNotUnderstood, "2x1.5": ErrNotUnderstood, "45.00": ErrNotUnderstood,
		"12:30": ErrNotUnderstood, "1,200": ErrNotUnderstood, "120'": ErrNotUnderstood, "5 W 70.7V": ErrNotUnderstood,
		"A-7.5W-100": ErrNotUnderstood, "Ch": ErrNotUnderstood, "250W @ 70V": ErrNotUnderstood, "zone 1 amp 2 ch 3": ErrNotUnderstood,
	} {
		if got, err := ParseChannel(in); !errors.Is(err, want) {
			t.Errorf("ParseChannel(%q) = %+v, %v; want %v", in, got, err, want)
		}
	}
}

func FuzzParseChannel(f *testing.F) {
	for _, s := range []string{"A1.2", "AMP 1 CH B", "1-3", "Amp 2 / ch 3+4 bridged", "PA-02:4", "A/B", "Kanal 3 von Endstufe 2", "L1A, L1B", "Ch 1-4", "Rack 2 U14 ch3", "Amp 1 Ch 1+2 en parallèle"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		c, err := ParseChannel(s)
		if err != nil {
			return
		}
		if c.Amplifier == "" && len(c.Channels) == 0 || len(c.Channels) > mostChannelRefs {
			t.Fatalf("%q: %+v", s, c)
		}
		again, err := ParseChannel(c.String())
		if err != nil {
			t.Fatalf("%q: %+v prints as %q: %v", s, c, c.String(), err)
		}
		c.Doubts, again.Doubts = 0, 0
		if d := cmp.Diff(c, again, cmpopts.EquateEmpty()); d != "" {
			t.Fatalf("%q prints as %q\n%s", s, c.String(), d)
		}
	})
}
