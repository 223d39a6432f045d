package notation

import (
	"errors"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// The sentences are common practice, no source.
func TestParseRatingSentence(t *testing.T) {
	n := func(name string, outputs int, w float64, at ...float64) RatedAmplifier {
		return RatedAmplifier{Name: name, Outputs: outputs, W: w, PerOutput: true, AtV: at}
	}
	ways := func(name string, at []float64, list ...NamedWatts) RatedAmplifier {
		return RatedAmplifier{Name: name, AtV: at, Ways: list}
	}
	at100 := []float64{100}
	for _, tt := range []struct {
		in   string
		want []RatedAmplifier
	}{
		{"PA1: two outputs, 60W each", []RatedAmplifier{n("PA1", 2, 60)}},
		{"V1: 3 x 120 W, 100 V", []RatedAmplifier{n("V1", 3, 120, 100)}},
		{"G1 4 x 60 W", []RatedAmplifier{n("G1", 4, 60)}},
		{"Verstärker V1 4 x 125 W an 100 V", []RatedAmplifier{n("V1", 4, 125, 100)}},
		{"Netz 100 V, Verstärker V1 mit 4 x 125 W", []RatedAmplifier{n("V1", 4, 125, 100)}},
		{"ampli A: 2 sorties de 60 W", []RatedAmplifier{n("A", 2, 60)}},
		{"A : 3 voies de 120 W", []RatedAmplifier{n("A", 3, 120)}},
		{"Y = ampli du local technique, deux voies de 40 W", []RatedAmplifier{n("Y", 2, 40)}},
		{"Sono 100 V, un ampli 4 x 60 W (A1)", []RatedAmplifier{{Name: "A1", Amplifiers: 1, Outputs: 4, W: 60, PerOutput: true, AtV: at100}}},
		{"70 V, one amp of two ways, 2 x 60 W = A1", []RatedAmplifier{{Name: "A1", Amplifiers: 1, Outputs: 2, W: 60, PerOutput: true, AtV: []float64{70}}}},
		{"Finale F1, 100 V, quattro uscite da 100 W", []RatedAmplifier{n("F1", 4, 100, 100)}},
		{"Etapa E1: 2 salidas de 120 W", []RatedAmplifier{n("E1", 2, 120)}},
		{"M1: 4 groepen van 60 W; samen niet meer dan 180 W", []RatedAmplifier{{Name: "M1", Outputs: 4, W: 60, PerOutput: true, TotalW: 180}}},
		{"X: 30 W each side, 100 V", []RatedAmplifier{n("X", 0, 30, 100)}},
		{"PANEL AMP-P (8 ways, 70 V, 60 W a way)", []RatedAmplifier{n("AMP-P", 8, 60, 70)}},
		{"All 100 V. Two amps, 2 ways each of 40 W.", []RatedAmplifier{{Amplifiers: 2, Outputs: 2, W: 40, PerOutput: true, AtV: at100}}},
		{"Amp 1 = 70 V, 120 W. Amp 2 = 100 V, 120 W.", []RatedAmplifier{{Name: "1", W: 120, AtV: []float64{70}}, {Name: "2", W: 120, AtV: at100}}},
		{"100 V, ch 1 and ch 2 are 60 W each (amp IR)", []RatedAmplifier{ways("IR", at100, NamedWatts{"1", 60}, NamedWatts{"2", 60})}},
		{"Amp EB2 way 1 40 W way 2 60 W", []RatedAmplifier{ways("EB2", nil, NamedWatts{"1", 40}, NamedWatts{"2", 60})}},
		{"Amp DOME: chan. 1 60 W, chan. 2 60 W, both 100 V", []RatedAmplifier{ways("DOME", at100, NamedWatts{"1", 60}, NamedWatts{"2", 60})}},
		{"Verstärker VG;K1: 60 W;K2: 30 W", []RatedAmplifier{ways("VG", nil, NamedWatts{"K1", 60}, NamedWatts{"K2", 30})}},
		{"Uscite U1 e U2 del finale: 60 W ciascuna", []RatedAmplifier{ways("", nil, NamedWatts{"U1", 60}, NamedWatts{"U2", 60})}},
		{"All off amp OP way 1, 70 V, 120 W", []RatedAmplifier{ways("OP", []float64{70}, NamedWatts{"1", 120})}},
		{"Verstärker TR, 1 Ausgang, 100 V, 80 W", []RatedAmplifier{{Name: "TR", Outputs: 1, W: 80, AtV: at100}}},
		{"Verstärker TR, 4 Ausgänge, 240 W", []RatedAmplifier{{Name: "TR", Outputs: 4, W: 240, Doubts: FrameOrOutput}}},
		{"Booster B1: zone 1, 2 (80 W)", []RatedAmplifier{{Name: "B1", W: 80, Zones: []string{"1", "2"}}}},
		{"25 VOLT SYSTEM, ONE 50 WATT BOOSTER, ALL ON ONE PAIR", []RatedAmplifier{{W: 50, AtV: []float64{25}}}},
		{"Amp: 30 watts", []RatedAmplifier{{W: 30}}},
		{"100 V, amp 20 W", []RatedAmplifier{{W: 20, AtV: at100}}},
		{"A circuits on amplifier VA1, B circuits on amplifier VA2, both 250 W a circuit", []RatedAmplifier{n("VA1", 0, 250), n("VA2", 0, 250)}},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseRatingSentence(tt.in, Auto)
			if err != nil {
				t.Fatal(err)
			}
			got = slices.Clone(got)
			for i := range got {
				got[i].Doubts &^= SplitRead
				got[i].Worded = false // see TestRatingSentenceWorded
			}
			if d := cmp.Diff(tt.want, got, cmpopts.EquateEmpty()); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
	for in, want := range map[string]error{
		"": ErrEmpty, "TBC": ErrMissing, "Ceiling loudspeaker 6 W, white": ErrNotUnderstood, "Volume control VC-1 (10 W), Seed room": ErrNotUnderstood,
		"All 100 V": ErrNotUnderstood, "Cable 2 x 2.5 mm²": ErrNotUnderstood, "Amplifier in the store": ErrNotUnderstood, "Boathouse 3 - heads list": ErrNotUnderstood,
		"LS-1: 6 W": ErrNotUnderstood, "Zone A: 4 x 6 W": ErrNotUnderstood, "Z1: 6 W": ErrNotUnderstood, "Note: 4 x 6 W": ErrNotUnderstood, "Line 100 V: 4 x 15 W horns": ErrNotUnderstood,
		"A3: 2 x 6 W ceiling loudspeakers": ErrNotUnderstood,
	} {
		if got, err := ParseRatingSentence(in, Auto); !errors.Is(err, want) {
			t.Errorf("ParseRatingSentence(%q) = %+v, %v; want %v", in, got, err, want)
		}
	}
}

// Without a word for an amplifier the name may be another thing's.
func TestRatingSentenceWorded(t *testing.T) {
	for in, want := range map[string]bool{"X: 30 W each": false, "G1: 2 x 60 W": false, "ampli A: 2 sorties de 60 W": true, "Y = ampli, 40 W": true} {
		got, err := ParseRatingSentence(in, Auto)
		if err != nil || got[0].Worded != want {
			t.Errorf("ParseRatingSentence(%q) = %+v, %v; want Worded %v", in, got, err, want)
		}
	}
}

func FuzzParseRatingSentence(f *testing.F) {
	for _, s := range []string{"PA1: two outputs, 60W each", "Amp 1 = 70 V, 120 W. Amp 2 = 100 V, 120 W.", "Verstärker VG;K1: 60 W;K2: 30 W", "M1: 4 groepen van 60 W; samen niet meer dan 180 W", "ch 1 and ch 2 are 60 W each (amp IR)", "PANEL AMP-P (8 ways"} {
		f.Add(s, byte(0))
	}
	f.Fuzz(func(t *testing.T, s string, b byte) {
		list, err := ParseRatingSentence(s, Style(b%3))
		if (err == nil) != (len(list) > 0) {
			t.Fatalf("%q: %+v, %v", s, list, err)
		}
		for _, a := range list {
			if !finite(append(a.AtV, a.W, a.TotalW)...) || a.W > MaxWatts || a.Outputs < 0 || a.Outputs > mostChannels || a.PerOutput && a.W == 0 {
				t.Fatalf("%q: %+v", s, a)
			}
			for i, v := range a.AtV {
				if !isLineVoltage(v) || i > 0 && v <= a.AtV[i-1] {
					t.Fatalf("%q: %v", s, a.AtV)
				}
			}
			for _, w := range a.Ways {
				if w.Name == "" || !finite(w.W) || w.W > MaxWatts {
					t.Fatalf("%q: %+v", s, w)
				}
			}
		}
	})
}
