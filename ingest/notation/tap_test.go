package notation

import (
	"errors"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// sameFigures compares results whose figures went through text and back.
var sameFigures = cmpopts.EquateApprox(1e-12, 1e-12)

func watts(w float64) Tap { return Tap{Kind: TapWatts, LowW: w, HighW: w} }

func (t Tap) with(change func(*Tap)) Tap {
	change(&t)
	return t
}

func at(v ...float64) func(*Tap)    { return func(t *Tap) { t.AtV = v } }
func count(n int) func(*Tap)        { return func(t *Tap) { t.Count = n } }
func doubt(d Doubts) func(*Tap)     { return func(t *Tap) { t.Doubts |= d } }
func rated(w float64) func(*Tap)    { return func(t *Tap) { t.RatedW = w } }
func offer(w ...float64) func(*Tap) { return func(t *Tap) { t.OfferedW = w } }

func list(w ...float64) Tap {
	t := Tap{Kind: TapList, OfferedW: w, LowW: w[0], HighW: w[0]}
	for _, x := range w {
		t.LowW, t.HighW = math.Min(t.LowW, x), math.Max(t.HighW, x)
	}
	return t
}

// The notations come from a survey of public schedules and manuals; those of
// which the survey has no public example are common practice.
func TestParseTap(t *testing.T) {
	spread := func(low, high float64, d Doubts) Tap {
		return Tap{Kind: TapRange, LowW: low, HighW: high, Doubts: d}
	}
	for _, tt := range []struct {
		in    string
		style Style
		want  Tap
	}{
		// one of several taps, marked; or the last, with the time of the change
		{"5 / *10* / 20 W", Auto, watts(10).with(offer(5, 10, 20)).with(doubt(MarkTaken))},
		{"2.5W/5W*/10W", Auto, watts(5).with(offer(2.5, 5, 10)).with(doubt(MarkTaken))},
		{"7.5W/15W/30W*", Auto, watts(30).with(offer(7.5, 15, 30)).with(doubt(MarkTaken))},
		{"[5] / 10 / 20 W", Auto, watts(5).with(offer(5, 10, 20)).with(doubt(MarkTaken))},
		{"5 / 10 / (20) W", Auto, watts(20).with(offer(5, 10, 20)).with(doubt(MarkTaken))},
		{">5< / 10 / 20 W", Auto, watts(5).with(offer(5, 10, 20)).with(doubt(MarkTaken))},
		{"3 W | 6 W ✓ | 12 W", Auto, watts(6).with(offer(3, 6, 12)).with(doubt(MarkTaken))},
		{"1,5 / →3 / 6 W", Comma, watts(3).with(offer(1.5, 3, 6)).with(doubt(MarkTaken))},
		{"15 W - 10 W seit 2019", Auto, watts(10).with(doubt(LastTaken))},
		{"15/10 W depuis 03/2018", Auto, watts(10).with(doubt(LastTaken))},
		{"15 W, sinds 2019 10 W", Auto, watts(10).with(doubt(LastTaken))},
		{"10 W since May 2019", Auto, watts(10)},
		{"10 W (2019)", Auto, watts(10)},
		// plain watts
		{"5W", Auto, watts(5)},
		{" 5 w ", Auto, watts(5)},
		{"5 Watts", Auto, watts(5)},
		{"7.5", Auto, watts(7.5).with(doubt(Bare))},
		{".5", Auto, watts(0.5).with(doubt(Bare))},
		{"7,5 W", Comma, watts(7.5)},
		{"7,5 W", Auto, watts(7.5)},
		{"0,5W", Auto, watts(0.5)},
		{"½W", Auto, watts(0.5)},
		{"1½ W", Auto, watts(1.5)},
		{"1/2 W", Auto, watts(0.5)},
		{"1 1/2", Auto, watts(1.5).with(doubt(Bare))},
		{"2 1/2", Auto, watts(2.5).with(doubt(Bare))},
		{"2 1/2 W", Auto, watts(2.5)},
		{"2000 mW", Auto, watts(2)},
		{"2k0", Auto, Tap{Kind: TapImpedance, Ohms: 2000}},
		{"mezzo watt", Auto, watts(0.5)},
		{"half a watt", Auto, watts(0.5)},
		{"halbes Watt", Auto, watts(0.5)},
		{"demi-watt", Auto, watts(0.5)},
		{"(8) à 2,5 W", Auto, watts(2.5).with(count(8))},
		{"1 st. 15W", Auto, watts(15).with(count(1))},
		{"¼ W", Auto, watts(0.25)},
		{"5/8 W", Auto, watts(0.625)},
		{"500 mW", Auto, watts(0.5)},
		{"0.03 kW", Auto, watts(30)},
		{"6 VA", Auto, watts(6)},
		{"15 W RMS", Auto, watts(15)},
		{"５Ｗ", Auto, watts(5)},
		{"5\u00a0W", Auto, watts(5)},
		{"5 W.", Auto, watts(5)},
		{"5w ea", Auto, watts(5)},
		{"5 W each", Auto, watts(5)},
		{"je 6 W", Auto, watts(6)},
		{"5 W c/u", Auto, watts(5)},
		{"5 W cad.", Auto, watts(5)},
		{"ca. 5 W", Auto, watts(5).with(doubt(Approximate))},
		{"~5W", Auto, watts(5).with(doubt(Approximate))},
		{"W: 5", Auto, watts(5)},
		{"5 vatios", Auto, watts(5)},
		{"0", Auto, watts(0).with(doubt(Bare))}, // written zero stays zero
		{"6 W ceiling speaker", Auto, watts(6)},
		// tapped at
		{"@5W", Auto, watts(5)},
		{"T5", Auto, watts(5).with(doubt(Bare | WattsOrPosition)).with(func(t *Tap) { t.Position = 5 })},
		{"T-5", Auto, watts(5).with(doubt(Bare | WattsOrPosition)).with(func(t *Tap) { t.Position = 5 })},
		{"tap 3", Auto, watts(3).with(doubt(Bare | WattsOrPosition)).with(func(t *Tap) { t.Position = 3 })},
		{"T-10", Auto, watts(10).with(doubt(Bare))},
		{"T-5W", Auto, watts(5)},
		{"tap: 7.5", Auto, watts(7.5).with(doubt(Bare))},
		{"tapped at 5 W", Auto, watts(5)},
		{"Tap 5W", Auto, watts(5)},
		{"Abgriff 6 W", Auto, watts(6)},
		{"eingestellt auf 6 W", Auto, watts(6)},
		{"réglé à 10 W", Auto, watts(10)},
		{"réglée sur 10 W", Auto, watts(10)},
		{"toma 5W", Auto, watts(5)},
		{"presa 6 W", Auto, watts(6)},
		{"impostato a 6 W", Auto, watts(6)},
		{"ingesteld op 6 W", Auto, watts(6)},
		{"aftakking 3 W", Auto, watts(3)},
		{"tap #3", Auto, Tap{Kind: TapPosition, Position: 3}},
		{"Pos. 2", Auto, Tap{Kind: TapPosition, Position: 2}},
		{"Stufe 3", Auto, Tap{Kind: TapPosition, Position: 3}},
		{"#4", Auto, Tap{Kind: TapPosition, Position: 4}},
		// line voltage beside the watts
		{"7,5 W @100V", Auto, watts(7.5).with(at(100))},
		{"7.5W/70V", Auto, watts(7.5).with(at(70))},
		{"70V/7.5W", Auto, watts(7.5).with(at(70))},
		{"70v .5 watt", Auto, watts(0.5).with(at(70))},
		{"6 W (100 V)", Auto, watts(6).with(at(100))},
		{"5 W @ 70.7 V", Auto, watts(5).with(at(70.7))},
		{"5W@70", Auto, watts(5).with(at(70)).with(doubt(VoltsTaken))},
		{"100V: 6W", Auto, watts(6).with(at(100))},
		{"70V-5W", Auto, watts(5).with(at(70))},
		{"5W, 70V", Auto, watts(5).with(at(70))},
		{"6 W 100 V line", Auto, watts(6).with(at(100))},
		{"6 W / 100-V-Linie", Auto, watts(6).with(at(100))},
		{"6 W sur ligne 100 V", Auto, watts(6).with(at(100))},
		{"7.5/70V", Auto, watts(7.5).with(at(70)).with(doubt(Bare))},
		{"5 W (70/100 V)", Auto, watts(5).with(at(70, 100))},
		{"30W Hi-Z", Auto, watts(30)},
		{"5W@70 / 10W@100", Auto, watts(5).with(at(70)).with(doubt(VoltsTaken | OnePrimary)).with(func(t *Tap) { t.OtherW = []TapAt{{10, 100}} })},
		{"5 W (70 V) / 10 W (100 V)", Auto, watts(5).with(at(70)).with(doubt(OnePrimary)).with(func(t *Tap) { t.OtherW = []TapAt{{10, 100}} })},
		{"70V: 5W, 100V: 10W", Auto, watts(5).with(at(70)).with(doubt(OnePrimary)).with(func(t *Tap) { t.OtherW = []TapAt{{10, 100}} })},
		{"7.5/15 W @ 70/100 V", Auto, watts(7.5).with(at(70)).with(doubt(OnePrimary)).with(func(t *Tap) { t.OtherW = []TapAt{{15, 100}} })},
		{"6 W bei 100 V", Auto, watts(6).with(at(100))},
		{"5W*", Auto, watts(5)},
		{"5W?", Auto, watts(5).with(doubt(Approximate))},
		{"5 W (TBC)", Auto, watts(5).with(doubt(Approximate))},
		{"05 W", Auto, watts(5)},
		{"position 2 - 5W", Auto, watts(5).with(func(t *Tap) { t.Position = 2 })},
		// count and tap
		{"(2) @ 5 W", Auto, watts(5).with(count(2))},
		{"(2) 5W", Auto, watts(5).with(count(2))},
		{"2 x 6W", Auto, watts(6).with(count(2))},
		{"2 x 15 W", Auto, watts(15).with(count(2))},
		{"2×6", Auto, watts(6).with(count(2)).with(doubt(Bare))},
		{"12 @1W", Auto, watts(1).with(count(12))},
		{"6W x 2", Auto, watts(6).with(count(2))},
		{"6 W (x4)", Auto, watts(6).with(count(4))},
		{"4 speakers @ 5W", Auto, watts(5).with(count(4))},
		{"3 Stk. 6 W", Auto, watts(6).with(count(3))},
		{"2 no. 6W", Auto, watts(6).with(count(2))},
		{"2 x 6W @ 100V", Auto, watts(6).with(count(2)).with(at(100))},
		{"2x1/2W", Auto, watts(0.5).with(count(2))},
		{"12 @1W, 6 @ 1/2W", Auto, Tap{Kind: TapWatts, LowW: 0.5, HighW: 1, Groups: []TapGroup{{12, 1}, {6, 0.5}}}},
		{"2x6W + 1x3W", Auto, Tap{Kind: TapWatts, LowW: 3, HighW: 6, Groups: []TapGroup{{2, 6}, {1, 3}}}},
		// taps on offer and the one used
		{"5/10W tapped 5", Auto, watts(5).with(offer(5, 10))},
		{"5/10W (5W)", Auto, watts(5).with(offer(5, 10))},
		{"30/15/7.5 → 15", Auto, watts(15).with(offer(30, 15, 7.5)).with(doubt(Bare))},
		{"30/15/7.5 -> 15W", Auto, watts(15).with(offer(30, 15, 7.5))},
		{"30/15/7.5 W, eingestellt 15 W", Auto, watts(15).with(offer(30, 15, 7.5))},
		{"1.5/3/6 W réglé à 3 W", Auto, watts(3).with(offer(1.5, 3, 6))},
		{"10W (set 5W)", Auto, watts(5).with(rated(10))},
		{"10 W rated, set 5 W", Auto, watts(5).with(rated(10))},
		{"set 5W (10W max)", Auto, watts(5).with(rated(10))},
		{"5 W, max. 10 W", Auto, watts(5).with(rated(10))},
		{"10 W max.", Auto, watts(10).with(rated(10))},
		{"6W RMS / 10W prog.", Auto, watts(6)},
		{"10W (max.)", Auto, watts(10).with(rated(10))},
		{"15W (was 30W)", Auto, watts(15)},
		{"bisher 30 W, jetzt 15 W", Auto, watts(15)},
		{"4x5W=20W", Auto, watts(5).with(count(4))},
		{"20W (4 x 5W)", Auto, watts(5).with(count(4))},
		{"5 W x 4 = 20 W", Auto, watts(5).with(count(4))},
		{"tap 2 = 5W", Auto, watts(5).with(func(t *Tap) { t.Position = 2 })},
		{"Pos 2 (5 W)", Auto, watts(5).with(func(t *Tap) { t.Position = 2 })},
		{"5W (tap 2)", Auto, watts(5).with(func(t *Tap) { t.Position = 2 })},
		{"\"5 W\"", Auto, watts(5)},
		// none chosen
		{"30/15/7.5/3.75", Auto, list(30, 15, 7.5, 3.75).with(doubt(Bare))},
		{"5/10W", Auto, list(5, 10)},
		{"12-6-3 W", Auto, list(12, 6, 3)},
		{"1/8W, 1/4W, 1/2W, 1W, 2.5W", Auto, list(0.125, 0.25, 0.5, 1, 2.5)},
		{"1/4 - 1/2 - 1 or 2W", Auto, list(0.25, 0.5, 1, 2)},
		{"1.5W, 3W and 6W taps", Auto, list(1.5, 3, 6)},
		{"1,5/3/6", Comma, list(1.5, 3, 6).with(doubt(Bare))},
		{"30,15,7.5", Auto, list(30, 15, 7.5).with(doubt(Bare))},
		{"1/2/4 W", Auto, list(1, 2, 4)},
		{"5 oder 10 W", Auto, list(5, 10)},
		{"5 ou 10 W", Auto, list(5, 10)},
		{"5 o 10 W", Auto, list(5, 10)}, // Spanish and Italian "or", once read as a damaged Ω
		{"10W (5W)", Auto, list(10, 5)}, // which of them is the tap is not said
		// undecided
		{"6W - 10W", Auto, spread(6, 10, RangeOrList)},
		{"6W - 10W 100V Line", Auto, spread(6, 10, RangeOrList).with(at(100))},
		{"15W–30W", Auto, spread(15, 30, RangeOrList)},
		{"5 to 10 W", Auto, spread(5, 10, 0)},
		{"5 bis 10 W", Auto, spread(5, 10, 0)},
		{"de 5 a 10 W", Auto, spread(5, 10, 0)},
		// share of the rated power
		{"1/2", Auto, watts(0.5).with(doubt(Bare | FractionOfRated)).with(func(t *Tap) { t.Fraction = 0.5 })},
		{"¾", Auto, watts(0.75).with(doubt(Bare | FractionOfRated)).with(func(t *Tap) { t.Fraction = 0.75 })},
		{"1/1", Auto, Tap{Kind: TapFraction, Fraction: 1}},
		{"50 %", Auto, Tap{Kind: TapFraction, Fraction: 0.5}},
		// impedance
		{"667Ω", Auto, Tap{Kind: TapImpedance, Ohms: 667}},
		{"1.2 kΩ", Auto, Tap{Kind: TapImpedance, Ohms: 1200}},
		{"5000 ohm", Auto, Tap{Kind: TapImpedance, Ohms: 5000}},
		{"5000 ohm = 1 W", Auto, watts(1).with(func(t *Tap) { t.Ohms = 5000 })},
		{"8Ω", Auto, Tap{Kind: TapDirect, Ohms: 8}},
		{"8\u2126", Auto, Tap{Kind: TapDirect, Ohms: 8}},
		{"4õ", Auto, Tap{Kind: TapDirect, Ohms: 4}},
		{"Lo-Z", Auto, Tap{Kind: TapDirect}},
		{"low impedance", Auto, Tap{Kind: TapDirect}},
		{"direct", Auto, Tap{Kind: TapDirect}},
		{"bypass", Auto, Tap{Kind: TapDirect}},
		{"niederohmig 8 Ohm", Auto, Tap{Kind: TapDirect, Ohms: 8}},
		{"basse impédance", Auto, Tap{Kind: TapDirect}},
		{"8Ω 30W", Auto, Tap{Kind: TapDirect, Ohms: 8, RatedW: 30}},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseTap(tt.in, tt.style)
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(tt.want, got, cmpopts.EquateEmpty()); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
}

func TestParseTapErrors(t *testing.T) {
	for _, tt := range []struct {
		in  string
		err error
	}{
		{"", ErrEmpty},
		{"\u00a0", ErrEmpty},
		{"-", ErrMissing},
		{"—", ErrMissing},
		{"n/a", ErrMissing},
		{"TBC", ErrMissing},
		{"TBC?", ErrMissing},
		{"field set", ErrMissing},
		{"by others", ErrMissing},
		{"k. A.", ErrMissing},
		{"à définir", ErrMissing},
		{"nader te bepalen", ErrMissing},
		{"-do-", ErrDitto},
		{"\"", ErrDitto},
		{"wie oben", ErrDitto},
		{"-5 W", ErrNegative},
		{"-5", ErrNegative},
		{"−5 W", ErrNegative},
		{"40 Ω", ErrAmbiguous},
		{"2 (5W)", ErrAmbiguous},
		{"4x5W=25W", ErrAmbiguous},
		{"120'", ErrNotUnderstood},
		{"2 ea", ErrNotUnderstood},
		{"4 speakers", ErrNotUnderstood},
		{"+5", ErrNotUnderstood},
		{"6 x 20 W oder 40 x 3 W", ErrAmbiguous},
		{"1/1, 3/4, 1/2, 1/4", ErrAmbiguous},
		{"5 W @ 70 V / 10 W @ 70 V", ErrAmbiguous},
		{"5000 W", ErrTooLarge},
		{"70V", ErrNotUnderstood},
		{"BRN / ORG", ErrNotUnderstood},
		{"yes", ErrNotUnderstood},
		{"speaker", ErrNotUnderstood},
		{"A-7.5W-100", ErrNotUnderstood},
		{"WK-35", ErrNotUnderstood},
		{"+44 20 7946 0958", ErrNotUnderstood},
		{"020 7946 0958", ErrNotUnderstood},
		{"£5.00", ErrNotUnderstood},
		{"5,00 €", ErrNotUnderstood},
		{"12.05.2021", ErrNotUnderstood},
		{"12-05-21", ErrNotUnderstood},
		{"192.168.0.10", ErrNotUnderstood},
		{"1e400", ErrNotUnderstood},
		{"NaN", ErrNotUnderstood},
		{"Inf", ErrNotUnderstood},
		{"5 m", ErrNotUnderstood},
		{"16/2 AWG", ErrNotUnderstood},
		{"#REF!", ErrNotUnderstood},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseTap(tt.in, Auto)
			if !errors.Is(err, tt.err) {
				t.Errorf("ParseTap(%q) = %+v, %v; want error %v", tt.in, got, err, tt.err)
			}
		})
	}
}

func FuzzParseTap(f *testing.F) {
	for _, s := range []string{"5W", "7,5 W @100V", "(2) @ 5 W", "5/10W tapped 5", "30/15/7.5 → 15", "6W - 10W", "667Ω", "1/2", "tap 3", "5W@70 / 10W@100", "12 @1W, 6 @ 1/2W", "10W (set 5W)", "pos 3", "50 %", "8Ω 30W", "12-6-3 W", "⅒", "0/→ 5515"} {
		for style := range byte(3) {
			f.Add(s, style)
		}
	}
	f.Fuzz(func(t *testing.T, s string, style byte) {
		tap, err := ParseTap(s, Style(style%3))
		if err != nil {
			return
		}
		for _, v := range append([]float64{tap.LowW, tap.HighW, tap.RatedW, tap.Ohms, tap.Fraction}, append(tap.AtV, tap.OfferedW...)...) {
			if !(v >= 0) || math.IsInf(v, 0) {
				t.Fatalf("%q: figure %v in %+v", s, v, tap)
			}
		}
		if tap.Kind == TapNone || tap.LowW > tap.HighW {
			t.Fatalf("%q: %+v", s, tap)
		}
		again, err := ParseTap(tap.String(), Point)
		if err != nil {
			t.Fatalf("%q: %+v prints as %q: %v", s, tap, tap.String(), err)
		}
		again.Doubts, tap.Doubts = 0, 0
		if d := cmp.Diff(tap, again, sameFigures, cmpopts.EquateEmpty()); d != "" {
			t.Fatalf("%q prints as %q\n%s", s, tap.String(), d)
		}
	})
}
