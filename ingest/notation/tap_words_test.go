package notation

import (
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// How installers write taps in six languages; common practice, no source.
func TestParseTapWritten(t *testing.T) {
	share := func(f float64) Tap { return Tap{Kind: TapFraction, Fraction: f} }
	groups := func(list ...TapGroup) Tap {
		return Tap{Kind: TapWatts, LowW: 3, HighW: 6, Groups: list}
	}
	passed := doubt(SplitRead)
	two := groups(TapGroup{2, 6}, TapGroup{1, 3})
	for _, tt := range []struct {
		in   string
		want Tap
	}{
		// what it is set to now
		{"now 5 W", watts(5)}, {"jetzt 5 W", watts(5)}, {"maintenant 5 W", watts(5)}, {"ahora 5 W", watts(5)}, {"ora 5 W", watts(5)}, {"nu 5 W", watts(5)},
		{"10 W avant, 5 W maintenant", Tap{}}, {"was 10 nu 5 W", watts(5)},
		{"auf 6 W gestellt", watts(6)}, {"auf 20 W geschaltet", watts(20)}, {"6 W eingestellt", watts(6)}, {"op 6W gezet", watts(6)}, {"afgetakt op 10 W", watts(10)},
		{"tarata 10 W", watts(10)}, {"puesta a 10 W", watts(10)}, {"mis sur 10 W", watts(10)}, {"a 10 W", watts(10)}, {"à 10 W", watts(10)}, {"en 10 W", watts(10)}, {"presa da 10 W", watts(10)},
		// of the rated power
		{"6 W von 10 W", watts(6).with(rated(10))}, {"6W (von 10W)", watts(6).with(rated(10))}, {"3 W sur 6", watts(3).with(rated(6))}, {"3 W su 6 W", watts(3).with(rated(6))},
		{"6 W sur 100 V", watts(6).with(at(100))},
		{"half power", share(0.5)}, {"halbe Leistung", share(0.5)}, {"demi-puissance", share(0.5)}, {"media potencia", share(0.5)}, {"metà potenza", share(0.5)}, {"halve kracht", share(0.5)},
		{"full", share(1)}, {"volle Leistung", share(1)}, {"pleine puissance", share(1)}, {"quarter power", share(0.25)}, {"a full", Tap{}},
		{"-3 dB", share(0.5)}, {"-6dB", share(0.25)}, {"0 dB", share(1)}, {"-4 dB", Tap{}},
		{"off", Tap{Kind: TapWatts, Doubts: OffTaken}}, {"aus", Tap{Kind: TapWatts, Doubts: OffTaken}}, {"spento", Tap{Kind: TapWatts, Doubts: OffTaken}},
		// figures
		{"1-1/2 W", watts(1.5)}, {"two watts", watts(2)}, {"fünf Watt", watts(5)}, {"dix watts", watts(10)}, {"cinco vatios", watts(5)}, {"dieci watt", watts(10)}, {"10 watios", watts(10)},
		{"6W..10W", Tap{Kind: TapRange, LowW: 6, HighW: 10, Doubts: RangeOrList}}, {"10/5/2.5 @5", watts(5).with(offer(10, 5, 2.5)).with(doubt(Bare))},
		{"4-8 Ω", Tap{Kind: TapDirect, Ohms: 4}},
		// with a count
		{"8 st. à 2,5W", watts(2.5).with(count(8))}, {"4 Stk. à 6 W", watts(6).with(count(4))}, {"2 je 6 W", watts(6).with(count(2))}, {"4 HP x 6 W", watts(6).with(count(4))},
		{"4 altavoces de 6 W", watts(6).with(count(4))}, {"4 diffusori da 6 W", watts(6).with(count(4))}, {"4 stuks 6 W", watts(6).with(count(4))}, {"n. 4 da 6 W", watts(6).with(count(4))},
		{"2 à 6 W et 1 à 3 W", two}, {"2 a 6 W y 1 a 3 W", two}, {"2 da 6 W e 1 da 3 W", two}, {"2 op 6 W, 1 op 3 W", two}, {"2 zu 6 W und 1 zu 3 W", two}, {"2 mit 6 W, 1 mit 3 W", two},
		{"6 W pro LS", watts(6)}, {"6W per speaker", watts(6)},
		// among words that say nothing of it
		{"6 W, white", watts(6).with(passed)}, {"blue 6W", watts(6).with(passed)}, {"6 W (weiß)", watts(6).with(passed)}, {"6W blue wire 100V", watts(6).with(at(100)).with(passed)},
		{"P = 6 W", watts(6)}, {"COM-6W", watts(6)},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseTap(tt.in, Auto)
			if tt.want.Kind == TapNone {
				if err == nil {
					t.Errorf("read as %+v", got)
				}
				return
			}
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(tt.want, got, cmpopts.EquateEmpty()); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
}

// A power among words is no tap where a word makes it something else.
func TestParseTapOfOtherThings(t *testing.T) {
	for _, in := range []string{"not 6 W", "no 6 W here", "rated 6 W only", "load 6 W there", "amplifier 6 W", "up to 10 W", "6 W removed", "6 W, room 12", "6 W in 40 % of the hall", "volume control 6 W"} {
		if got, err := ParseTap(in, Auto); err == nil {
			t.Errorf("ParseTap(%q) = %+v", in, got)
		} else if !errors.Is(err, ErrNotUnderstood) {
			t.Errorf("ParseTap(%q): %v", in, err)
		}
	}
}
