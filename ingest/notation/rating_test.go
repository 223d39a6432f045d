package notation

import (
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// The notations come from a survey of public schedules, manuals and
// specifications; those of which it has no public example are common practice.
func TestParseRating(t *testing.T) {
	one := func(o RatedOutput) Rating { return Rating{Outputs: []RatedOutput{o}} }
	w := func(v float64) RatedOutput { return RatedOutput{W: v} }
	n := func(ch int, v float64, at ...float64) RatedOutput { return RatedOutput{Channels: ch, W: v, AtV: at} }
	doubts := func(r Rating, d Doubts) Rating { r.Doubts |= d; return r }
	for _, tt := range []struct {
		in    string
		style Style
		want  Rating
	}{
		{"4 x 250W @70V", Auto, one(n(4, 250, 70))},
		{"4x250W @70V", Auto, one(n(4, 250, 70))},
		{"4*250 W", Auto, one(n(4, 250))},
		{"(4) 250 W", Auto, one(n(4, 250))},
		{"4-channel 250 W", Auto, one(n(4, 250))},
		{"4 ch x 250 W", Auto, one(n(4, 250))},
		{"4 Kanäle je 250 W", Auto, one(n(4, 250))},
		{"250 W x 4", Auto, one(n(4, 250))},
		{"250Wx4", Auto, one(n(4, 250))},
		{"4x250", Auto, doubts(one(n(4, 250)), Bare)},
		{"200 W/ch", Auto, one(RatedOutput{W: 200, PerChannel: true})},
		{"250W/ch @ 100V", Auto, one(RatedOutput{W: 250, PerChannel: true, AtV: []float64{100}})},
		{"200 W pro Kanal", Auto, one(RatedOutput{W: 200, PerChannel: true})},
		{"200 W par canal", Auto, one(RatedOutput{W: 200, PerChannel: true})},
		{"200 W por canal", Auto, one(RatedOutput{W: 200, PerChannel: true})},
		{"200 W per kanaal", Auto, one(RatedOutput{W: 200, PerChannel: true})},
		{"75 watts per channel output", Auto, Rating{}},
		{"0.24 kW", Auto, one(w(240))},
		{"0,24 kW", Comma, one(w(240))},
		{"240", Auto, doubts(one(w(240)), Bare)},
		{"W: 240", Auto, one(w(240))},
		{"250W @ 4Ω", Auto, one(RatedOutput{W: 250, Ohms: 4, LowImpedance: true})},
		{"250W into 4 ohms", Auto, one(RatedOutput{W: 250, Ohms: 4, LowImpedance: true})},
		{"250W @ 4", Auto, doubts(one(RatedOutput{W: 250, Ohms: 4, LowImpedance: true}), OhmsTaken)},
		{"250 W Lo-Z", Auto, one(RatedOutput{W: 250, LowImpedance: true})},
		{"4x125 W, 2x250 W", Auto, Rating{Outputs: []RatedOutput{n(4, 125), n(2, 250)}}},
		{"4 x 125 W, 2 x 250 W, 8 x 60 W, 1 x 500 W", Auto, Rating{Outputs: []RatedOutput{n(4, 125), n(2, 250), n(8, 60), n(1, 500)}}},
		{"2 x 250 W + 2 x 125 W", Auto, Rating{Outputs: []RatedOutput{n(2, 250), n(2, 125)}, Together: true}},
		{"500W (2x250W)", Auto, one(n(2, 250))},
		{"2 x 250 W = 500 W", Auto, one(n(2, 250))},
		{"2x250W (500W total)", Auto, one(n(2, 250))},
		{"60 W per zone", Auto, one(RatedOutput{W: 60, PerChannel: true})},
		{"250 W/Kanal", Auto, one(RatedOutput{W: 250, PerChannel: true})},
		{"240W RMS @ 100V", Auto, one(RatedOutput{W: 240, AtV: []float64{100}})},
		{"35 W @ 70 V / 17 W @ 25 V", Auto, Rating{Outputs: []RatedOutput{{W: 35, AtV: []float64{70}}, {W: 17, AtV: []float64{25}}}}},
		{"1200W peak", Auto, one(RatedOutput{W: 1200, Peak: true})},
		{"1200 W Spitze", Auto, one(RatedOutput{W: 1200, Peak: true})},
		{"240/120/60", Auto, doubts(Rating{Outputs: []RatedOutput{w(240), w(120), w(60)}}, Bare)},
		{"120, 60, 30 watts (RMS)", Auto, Rating{Outputs: []RatedOutput{w(120), w(60), w(30)}}},
		{"10, 35, 100 watt versions", Auto, Rating{Outputs: []RatedOutput{w(10), w(35), w(100)}}},
		{"500W @ 4Ω / 2000W bridge", Auto, Rating{Outputs: []RatedOutput{{W: 500, Ohms: 4, LowImpedance: true}, {W: 2000, Bridged: true}}}},
		{"500W @ 4Ω / 2000W quad bridge", Auto, Rating{Outputs: []RatedOutput{{W: 500, Ohms: 4, LowImpedance: true}, {W: 2000, Bridged: true}}}},
		{"100W @100V", Auto, one(RatedOutput{W: 100, AtV: []float64{100}})},
		{"100W @ 70", Auto, doubts(one(RatedOutput{W: 100, AtV: []float64{70}}), VoltsTaken)},
		{"100 W 25/70V", Auto, one(RatedOutput{W: 100, AtV: []float64{25, 70}})},
		{"100 W (70/100 V)", Auto, one(RatedOutput{W: 100, AtV: []float64{70, 100}})},
		{"100W @70V / 200W @100V", Auto, Rating{Outputs: []RatedOutput{{W: 100, AtV: []float64{70}}, {W: 200, AtV: []float64{100}}}}},
		{"100 W, 70 V", Auto, one(RatedOutput{W: 100, AtV: []float64{70}})},
		{"70V 250W", Auto, one(RatedOutput{W: 250, AtV: []float64{70}})},
		{"100 watt 25v amp", Auto, one(RatedOutput{W: 100, AtV: []float64{25}})},
		{"Power Amplifier 1000W 100V Line", Auto, one(RatedOutput{W: 1000, AtV: []float64{100}})},
		{"10W (max.)", Auto, one(RatedOutput{W: 10, Max: true})},
		{"speaker loads of up to 35W (max.)", Auto, one(RatedOutput{W: 35, Max: true})},
		{"max. 50 W", Auto, one(RatedOutput{W: 50, Max: true})},
		{"bis zu 50 W", Auto, one(RatedOutput{W: 50, Max: true})},
		{"total power not exceeding 40 W", Auto, one(RatedOutput{W: 40, Max: true, Total: true})},
		{"500 W total", Auto, one(RatedOutput{W: 500, Total: true})},
		{"2x300 (1 kHz)", Auto, doubts(one(RatedOutput{Channels: 2, W: 300, Method: "1000 HZ"}), Bare)},
		{"2x300 (1 kHz) / 2x240 (EIAJ/FTC)", Auto, doubts(Rating{Outputs: []RatedOutput{{Channels: 2, W: 300, Method: "1000 HZ"}, {Channels: 2, W: 240, Method: "EIAJ FTC"}}}, Bare)},
		{"120W booster", Auto, one(w(120))},
		{"1.200 W", Comma, one(w(1200))},
		{"2 × 120 W sur ligne 100 V", Auto, one(n(2, 120, 100))},
		{"Nennleistung 240 W / 100 V", Auto, one(RatedOutput{W: 240, AtV: []float64{100}})},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseRating(tt.in, tt.style)
			if len(tt.want.Outputs) == 0 {
				tt.want = one(RatedOutput{W: 75, PerChannel: true})
			}
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(tt.want, got, cmpopts.EquateEmpty()); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
	for in, want := range map[string]error{
		"": ErrEmpty, "TBC": ErrMissing, "\"": ErrDitto, "-250 W": ErrNegative, "16 x 2": ErrAmbiguous,
		"4 × 4 channel amplifier": ErrNotUnderstood, "WK-35": ErrNotUnderstood, "10 step + off": ErrNotUnderstood,
		"70V": ErrNotUnderstood, "A-7.5W-100": ErrNotUnderstood, "€ 250": ErrNotUnderstood, "+44 20 7946 0958": ErrNotUnderstood,
		"020 7946 0958": ErrNotUnderstood, "12.05.2021": ErrNotUnderstood, "250 W 500 W": ErrNotUnderstood,
		"99999999 W": ErrTooLarge, "250 - 500 W": ErrNotUnderstood, "(250 W": ErrNotUnderstood, "CL3P": ErrNotUnderstood,
		"V1, 120 W": ErrNotUnderstood, "Amplifier 5, 120 W": ErrNotUnderstood, "V2 / 60 W": ErrNotUnderstood, "AMP 1": ErrNotUnderstood, "2 ea": ErrNotUnderstood, "1/2": ErrNotUnderstood, "120'": ErrNotUnderstood, "+5": ErrNotUnderstood,
	} {
		if got, err := ParseRating(in, Auto); !errors.Is(err, want) {
			t.Errorf("ParseRating(%q) = %+v, %v; want %v", in, got, err, want)
		}
	}
}

func FuzzParseRating(f *testing.F) {
	for _, s := range []string{"4 x 250W @70V", "200 W/ch", "0,24 kW", "250W @ 4Ω", "4x125 W, 2x250 W", "240/120/60", "100W @70V / 200W @100V", "2x300 (1 kHz) / 2x240 (EIAJ/FTC)", "total power not exceeding 40 W", "2 x 250 W + 2 x 125 W", "70V 250W", "250 W Lo-Z bridged peak"} {
		for b := range byte(3) {
			f.Add(s, b)
		}
	}
	f.Fuzz(func(t *testing.T, s string, b byte) {
		for _, m := range ModelRatings(s) {
			if !finite(m.W) || m.W == 0 {
				t.Fatalf("ModelRatings(%q): %+v", s, m)
			}
		}
		r, err := ParseRating(s, Style(b%3))
		if err != nil {
			return
		}
		if len(r.Outputs) == 0 {
			t.Fatalf("%q: no outputs", s)
		}
		for _, o := range r.Outputs {
			if !finite(append(o.AtV, o.W, o.Ohms)...) || o.Channels < 0 {
				t.Fatalf("%q: %+v", s, r)
			}
		}
		again, err := ParseRating(r.String(), Point)
		if err != nil {
			t.Fatalf("%q: %+v prints as %q: %v", s, r, r.String(), err)
		}
		r.Doubts, again.Doubts = 0, 0
		if d := cmp.Diff(r, again, sameFigures, cmpopts.EquateEmpty()); d != "" {
			t.Fatalf("%q prints as %q\n%s", s, r.String(), d)
		}
	})
}

func TestModelRatings(t *testing.T) {
	for _, tt := range []struct {
		in   string
		want []ModelRating
	}{
		{"WK-35", []ModelRating{{35, "35", false}}},
		{"WK35", []ModelRating{{35, "35", false}}},
		{"VC100W", []ModelRating{{100, "100W", true}}},
		{"ATT-35", []ModelRating{{35, "35", false}}},
		{"VC 7.5W", []ModelRating{{7.5, "7.5W", true}}},
		{"VC-10R white", []ModelRating{{10, "10", false}}},
		{"PA-2120 240 W", []ModelRating{{240, "240 W", true}}},
		{"MX-120 100V", []ModelRating{{120, "120", false}}}, // 100 V is a line
		{"VC-6 70/100V 10W", []ModelRating{{10, "10W", true}, {6, "6", false}}},
		{"AMP-4", nil},
		{"Volume control", nil},
		{"SR-2021", nil},
		{"", nil},
	} {
		if d := cmp.Diff(tt.want, ModelRatings(tt.in)); d != "" {
			t.Errorf("ModelRatings(%q)\n%s", tt.in, d)
		}
	}
}
