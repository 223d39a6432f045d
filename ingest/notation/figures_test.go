package notation

import (
	"errors"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

func TestParseWatts(t *testing.T) {
	for _, tt := range []struct {
		in     string
		style  Style
		want   float64
		doubts Doubts
		err    error
	}{
		{"5W", Auto, 5, 0, nil},
		{"0.24 kW", Auto, 240, 0, nil},
		{"0,24 kW", Comma, 240, 0, nil},
		{"7500 mW", Auto, 7.5, 0, nil},
		{"7500 MW", Auto, 7.5, UnitLetterCase, nil}, // an upper-case sheet, not megawatts
		{"7,5 W", Auto, 7.5, 0, nil},
		{"60 watts", Auto, 60, 0, nil},
		{"60 Watt", Auto, 60, 0, nil},
		{"½ W", Auto, 0.5, 0, nil},
		{"96", Auto, 96, Bare, nil},
		{"total 96 W", Auto, 96, 0, nil},
		{"Gesamtleistung: 96 W", Auto, 96, 0, nil},
		{"1.200 W", Comma, 1200, 0, nil},
		{"1,200 W", Auto, 1200, DecimalMark, nil},
		{"1 200 W", Auto, 1200, DecimalMark, nil},
		{"ca. 96 W", Auto, 96, Approximate, nil},
		{"100 VA", Auto, 100, 0, nil},
		{"100 W RMS", Auto, 100, 0, nil},
		{"0 W", Auto, 0, 0, nil},
		{"", Auto, 0, 0, ErrEmpty},
		{"TBC", Auto, 0, 0, ErrMissing},
		{"-5 W", Auto, 0, 0, ErrNegative},
		{"5 W 10 W", Auto, 0, 0, ErrAmbiguous},
		{"5/10 W", Auto, 0, 0, ErrNotUnderstood},
		{"70 V", Auto, 0, 0, ErrNotUnderstood},
		{"A-7.5W-100", Auto, 0, 0, ErrNotUnderstood},
		{"99999999 W", Auto, 0, 0, ErrTooLarge},
		{"€ 96", Auto, 0, 0, ErrNotUnderstood},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseWatts(tt.in, tt.style)
			if !errors.Is(err, tt.err) || math.Abs(got.W-tt.want) > 1e-12*tt.want || got.Doubts != tt.doubts {
				t.Errorf("got %+v, %v", got, err)
			}
		})
	}
}

func TestPowersIn(t *testing.T) {
	for _, tt := range []struct {
		in   string
		want []float64
	}{
		{"6 W ceiling loudspeaker, white", []float64{6}}, // public schedules survey: a building-services bill
		{"Power Amplifier 1000W 100V Line", []float64{1000}},
		{"6 W RMS line transformer, taps 1.5W, 3W and 6W", []float64{6, 1.5, 3, 6}},
		{"horn 1/2 W", []float64{0.5}},
		{"A-7.5W-100", nil},
		{"XW-15W2", nil},
		{"5W-tapped", []float64{5}},
		{"Windows 10", nil},
		{"12.05.2021 W", nil},
		{"", nil},
	} {
		t.Run(tt.in, func(t *testing.T) {
			var got []float64
			for _, p := range PowersIn(tt.in, Auto) {
				got = append(got, p.W)
			}
			if d := cmp.Diff(tt.want, got); d != "" {
				t.Error(d)
			}
		})
	}
}

func TestParseLineVoltage(t *testing.T) {
	v := func(d Doubts, v ...float64) LineVoltage { return LineVoltage{Kind: ConstantVoltage, V: v, Doubts: d} }
	for _, tt := range []struct {
		in   string
		want LineVoltage
		err  error
	}{
		{"70V", v(0, 70), nil},
		{"70.7 V", v(0, 70.7), nil},
		{"70,7 V", v(0, 70.7), nil},
		{"70v", v(0, 70), nil},
		{"100V line", v(0, 100), nil},
		{"100 V-Linie", v(0, 100), nil},
		{"100-V-Technik", v(0, 100), nil}, // public schedules survey: a German building encyclopaedia
		{"ligne 100 V", v(0, 100), nil},
		{"Línea 100 V", v(0, 100), nil},
		{"linea a 100 V", v(0, 100), nil},
		{"100V-lijn", v(0, 100), nil},
		{"ELA 100 V", v(0, 100), nil},
		{"100 Vrms", v(0, 100), nil},
		{"100 V for all", v(0, 100), nil},
		{"Line voltage 100 V", v(0, 100), nil},
		{"100 V throughout", v(0, 100), nil},
		{"all on 70 volt line", v(0, 70), nil},
		{"alles 70 V", v(0, 70), nil},
		{"alle an 100 V", v(0, 100), nil},
		{"Sono 100 V", v(0, 100), nil},
		{"tout en 100 V", v(0, 100), nil},
		{"Todo en 100 V", v(0, 100), nil},
		{"tutto a 100 V", v(0, 100), nil},
		{"25/70V", v(0, 25, 70), nil},
		{"25V/70V", v(0, 25, 70), nil},
		{"70V or 100V", v(0, 70, 100), nil},
		{"100/70/50 V", v(0, 50, 70, 100), nil},
		{"70", v(Bare, 70), nil},
		{"100.0", v(Bare, 100), nil},
		{"Hi-Z 70V", v(0, 70), nil},
		{"70V (Hi-Z)", v(0, 70), nil},
		{"V: 100", v(0, 100), nil},
		{"Hi-Z", LineVoltage{Kind: HighImpedance}, nil},
		{"HiZ", LineVoltage{Kind: HighImpedance}, nil},
		{"CV", LineVoltage{Kind: HighImpedance}, nil},
		{"ELA", LineVoltage{Kind: HighImpedance}, nil},
		{"haute impédance", LineVoltage{Kind: HighImpedance}, nil},
		{"Lo-Z", LineVoltage{Kind: LowImpedanceLine}, nil},
		{"8Ω", LineVoltage{Kind: LowImpedanceLine, Ohms: 8}, nil},
		{"4-8 ohm", LineVoltage{Kind: LowImpedanceLine, Ohms: 4}, nil},
		{"niederohmig", LineVoltage{Kind: LowImpedanceLine}, nil},
		{"HiZ/LoZ", LineVoltage{}, ErrAmbiguous},
		{"70V / 8Ω", LineVoltage{}, ErrAmbiguous},
		{"12", LineVoltage{}, ErrNotUnderstood},
		{"0 V", LineVoltage{}, ErrNotUnderstood},
		{"-70 V", LineVoltage{}, ErrNegative},
		{"yes", LineVoltage{}, ErrNotUnderstood},
		{"n/a", LineVoltage{}, ErrMissing},
		{"", LineVoltage{}, ErrEmpty},
		{"11 kV", LineVoltage{}, ErrTooLarge},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseLineVoltage(tt.in, Auto)
			if !errors.Is(err, tt.err) {
				t.Fatal(err)
			}
			if d := cmp.Diff(tt.want, got, cmpopts.EquateEmpty()); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
}

func TestParseOhms(t *testing.T) {
	for _, tt := range []struct {
		in   string
		want Impedance
		err  error
	}{
		{"83 Ω", Impedance{83, 0}, nil},
		{"1.2 kΩ", Impedance{1200, 0}, nil},
		{"1,2 kΩ", Impedance{1200, 0}, nil},
		{"500 ohm", Impedance{500, 0}, nil},
		{"83 Ω @ 1 kHz", Impedance{83, 0}, nil},
		{"8R", Impedance{8, 0}, nil},
		{"~ 83", Impedance{83, Approximate | Bare}, nil},
		{"4õ", Impedance{4, 0}, nil},
		{"2k0", Impedance{2000, 0}, nil}, // IEC 60062
		{"2k", Impedance{2000, 0}, nil},
		{"4K", Impedance{4000, 0}, nil},
		{"1k5 Ω", Impedance{1500, 0}, nil},
		{"2k25", Impedance{2250, 0}, nil},
		{"0k5", Impedance{500, 0}, nil},
		{"0k", Impedance{}, ErrNotUnderstood},
		{"4/8 Ω", Impedance{}, ErrAmbiguous},
		{"0 Ω", Impedance{}, ErrZero},
		{"8 W", Impedance{}, ErrNotUnderstood},
		{"-", Impedance{}, ErrMissing},
	} {
		t.Run(tt.in, func(t *testing.T) {
			if got, err := ParseOhms(tt.in, Auto); got != tt.want || !errors.Is(err, tt.err) {
				t.Errorf("got %+v, %v", got, err)
			}
		})
	}
}

func TestParseQuantity(t *testing.T) {
	q := func(n int) Quantity { return Quantity{Count: n} }
	pieces := func(n int) Quantity { return Quantity{Count: n, Unit: "pieces"} }
	for _, tt := range []struct {
		in   string
		want Quantity
		err  error
	}{
		{"3", q(3), nil},
		{"(3)", q(3), nil},
		{"[3]", q(3), nil},
		{"3 heads", pieces(3), nil}, {"12 Köpfe", pieces(12), nil}, {"4 têtes", pieces(4), nil}, {"4 bocinas", pieces(4), nil}, {"4 casse", pieces(4), nil}, {"4 koppen", pieces(4), nil},
		{"12 (existing)", Quantity{Count: 12}, nil}, {"8 exist", pieces(8), nil}, {"2 L + 2 R", Quantity{Count: 4, Unit: "pieces", Doubts: SumOrSpare}, nil},
		{"a pair", Quantity{Count: 2, Unit: "pairs"}, nil}, {"un paio", Quantity{Count: 2, Unit: "pairs"}, nil},
		{"3 + 1 de réserve", Quantity{Count: 3, Spare: 1}, nil}, {"3 + 1 future", Quantity{Count: 3, Spare: 1}, nil}, {"3 Stk + 1 Res.", Quantity{Count: 3, Spare: 1, Unit: "pieces"}, nil},
		{"2 per bay", Quantity{}, ErrNotUnderstood}, {"3 of 4", Quantity{}, ErrAmbiguous},
		{"2 ea", pieces(2), nil},
		{"4 no.", pieces(4), nil},
		{"4 nos", pieces(4), nil},
		{"4 Nos.", pieces(4), nil},
		{"4No", pieces(4), nil},
		{"6x", q(6), nil},
		{"x6", q(6), nil},
		{"6×", q(6), nil},
		{"(x4)", q(4), nil},
		{"3 pcs", pieces(3), nil},
		{"3 Stk", pieces(3), nil},
		{"3 Stück", pieces(3), nil},
		{"2 u", pieces(2), nil},
		{"2 uds.", pieces(2), nil},
		{"5 pz", pieces(5), nil},
		{"n. 5", pieces(5), nil},
		{"n° 5", pieces(5), nil},
		{"4 stuks", pieces(4), nil},
		{"4 LS", pieces(4), nil},
		{"Qty 4", pieces(4), nil},
		{"Qty: 4", pieces(4), nil},
		{"12 off", pieces(12), nil},
		{"3 + 1 spare", Quantity{Count: 3, Spare: 1}, nil},
		{"3 + 1 Ersatz", Quantity{Count: 3, Spare: 1}, nil},
		{"3 (+1 spare)", Quantity{Count: 3, Spare: 1}, nil},
		{"4 (1 spare)", Quantity{Count: 4, Spare: 1, Doubts: SumOrSpare}, nil},
		{"2 spare", Quantity{Spare: 2}, nil},
		{"3 + 1", Quantity{Count: 4, Doubts: SumOrSpare}, nil},
		{"2x2", Quantity{Count: 4, Doubts: ProductTaken}, nil},
		{"2 pair", Quantity{Count: 4, Unit: "pairs"}, nil},
		{"(2) pr", Quantity{Count: 4, Unit: "pairs"}, nil},
		{"1 Paar", Quantity{Count: 2, Unit: "pairs"}, nil},
		{"2 (two)", q(2), nil},
		{"1 dozen", q(12), nil},
		{"0", q(0), nil},
		{"3.0", q(3), nil},
		{"3,0", q(3), nil},
		{"1.200", Quantity{Count: 1200, Doubts: DecimalMark}, nil}, // 1.2 pieces there are none
		{"1,200", Quantity{Count: 1200, Doubts: DecimalMark}, nil},
		{"one", q(1), nil}, {"zwei", q(2), nil}, {"trois", q(3), nil}, {"cuatro", q(4), nil}, {"cinque", q(5), nil}, {"zes", q(6), nil},
		{"Seven", q(7), nil}, {"acht", q(8), nil}, {"neuf", q(9), nil}, {"diez", q(10), nil}, {"undici", q(11), nil}, {"zwölf", q(12), nil},
		{"twee stuks", pieces(2), nil},
		{"ca. 12", Quantity{Count: 12, Doubts: Approximate}, nil},
		{"", Quantity{}, ErrEmpty},
		{"n/a", Quantity{}, ErrMissing},
		{"-3", Quantity{}, ErrNegative},
		{"2.5", Quantity{}, ErrNotWhole},
		{"½", Quantity{}, ErrNotWhole},
		{"1/2", Quantity{}, ErrNotWhole},
		{"lot", Quantity{}, ErrLump},
		{"1 set", Quantity{}, ErrLump},
		{"Job", Quantity{}, ErrLump},
		{"L.S.", Quantity{}, ErrLump},
		{"1 L.S.", Quantity{}, ErrLump},
		{"psch.", Quantity{}, ErrLump},
		{"1-6", Quantity{}, ErrAmbiguous},
		{"02 Nos", pieces(2), nil},
		{"02", q(2), nil},
		{"4 no's", pieces(4), nil},
		{"Qty-4", pieces(4), nil},
		{"4-off", pieces(4), nil},
		{"4 (2+2)", q(4), nil},
		{"2 x 3 = 6", q(6), nil},
		{"4?", Quantity{Count: 4, Doubts: Approximate}, nil},
		{"2 or 3", Quantity{}, ErrAmbiguous},
		{"12 m", Quantity{}, ErrNotUnderstood},
		{"SP-01 to SP-08", Quantity{}, ErrNotUnderstood},
		{"6 W", Quantity{}, ErrNotUnderstood},
		{"$4", Quantity{}, ErrNotUnderstood},
		{"12.05.2021", Quantity{}, ErrNotUnderstood},
		{"020 7946 0958", Quantity{}, ErrNotUnderstood},
		{"99999999", Quantity{}, ErrTooLarge},
		{"each", Quantity{}, ErrNotUnderstood},
		{"#4", Quantity{}, ErrNotUnderstood},
		{"3\"", Quantity{}, ErrNotUnderstood},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseQuantity(tt.in, Auto)
			if got != tt.want || !errors.Is(err, tt.err) {
				t.Errorf("got %+v, %v; want %+v, %v", got, err, tt.want, tt.err)
			}
		})
	}
}

func TestCountInName(t *testing.T) {
	for _, tt := range []struct {
		in   string
		want int
	}{
		{"ALTAVOCES (X4)", 4},  // public schedules survey: a Spanish inventory
		{"Ceiling (8 Loa)", 8}, // public schedules survey: a factory bill
		{"Horn (x 2)", 2},
		{"Horn (3 nos)", 3},
		{"Horn x 4", 4},
		{"4 x horn", 4},
		{"Zone (2)", 0},
		{"Horn 2x3", 0},
		{"Ceiling 6 W", 0},
		{"VC-35", 0},
		{"", 0},
	} {
		if got, ok := CountInName(tt.in); got != tt.want || ok != (tt.want > 0) {
			t.Errorf("CountInName(%q) = %d, %v", tt.in, got, ok)
		}
	}
}

func TestParseLength(t *testing.T) {
	one := func(v float64, u LengthUnit) Length { return Length{Low: v, High: v, Unit: u, Times: 1} }
	edit := func(l Length, f func(*Length)) Length { f(&l); return l }
	for _, tt := range []struct {
		in     string
		style  Style
		header LengthUnit
		want   Length
	}{
		{"120'", Auto, UnitUnknown, one(120, Foot)},
		{"40...50 m", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.High = 50 })},
		{"40 m NYM above ceiling", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.Doubts = SplitRead })},
		{"40 m to last", Auto, UnitUnknown, one(40, Metre)}, {"40 m einf.", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.OneWay = true })},
		{"120′", Auto, UnitUnknown, one(120, Foot)},
		{"120'-6\"", Auto, UnitUnknown, one(120.5, Foot)},
		{"85'-6\"", Auto, UnitUnknown, one(85.5, Foot)},
		{"85' 6\"", Auto, UnitUnknown, one(85.5, Foot)},
		{"85'6\"", Auto, UnitUnknown, one(85.5, Foot)},
		{"85'6", Auto, UnitUnknown, one(85.5, Foot)},
		{"85 ft 6 in", Auto, UnitUnknown, one(85.5, Foot)},
		{"120 ft", Auto, UnitUnknown, one(120, Foot)},
		{"120 ft.", Auto, UnitUnknown, one(120, Foot)},
		{"150 LF", Auto, UnitUnknown, one(150, Foot)},
		{"150 lin. ft.", Auto, UnitUnknown, one(150, Foot)},
		{"45 Rft", Auto, UnitUnknown, one(45, Foot)},
		{"45 r.ft.", Auto, UnitUnknown, one(45, Foot)},
		{"1,200 ft", Auto, UnitUnknown, edit(one(1200, Foot), func(l *Length) { l.Doubts = DecimalMark })},
		{"1,200 ft", Point, UnitUnknown, one(1200, Foot)},
		{"10 yd", Auto, UnitUnknown, one(30, Foot)},
		{"2-9/16 in", Auto, UnitUnknown, one(2.5625/12, Foot)},
		{"3.5\"", Auto, UnitUnknown, one(3.5/12, Foot)},
		{"2 1/2\"", Auto, UnitUnknown, one(2.5/12, Foot)},
		{"36 m", Auto, UnitUnknown, one(36, Metre)},
		{"36m", Auto, UnitUnknown, one(36, Metre)},
		{"36 M", Auto, UnitUnknown, one(36, Metre)},
		{"36 mtr", Auto, UnitUnknown, one(36, Metre)},
		{"30 ml", Auto, UnitUnknown, one(30, Metre)}, // public schedules survey: mètre linéaire
		{"30 m.l.", Auto, UnitUnknown, one(30, Metre)},
		{"30 lfm", Auto, UnitUnknown, one(30, Metre)},
		{"30 Rmt", Auto, UnitUnknown, one(30, Metre)},
		{"30 m1", Auto, UnitUnknown, one(30, Metre)},
		{"0,12 km", Auto, UnitUnknown, one(120, Metre)},
		{"62 mm", Auto, UnitUnknown, one(0.062, Metre)},
		{"1.200 m", Comma, UnitUnknown, one(1200, Metre)},
		{"1 200 m", Comma, UnitUnknown, edit(one(1200, Metre), func(l *Length) { l.Doubts = DecimalMark })},
		{"36", Auto, UnitUnknown, edit(one(36, UnitUnknown), func(l *Length) { l.Doubts = Bare })},
		{"36", Auto, Metre, edit(one(36, Metre), func(l *Length) { l.Doubts = Bare })},
		{"36", Auto, Foot, edit(one(36, Foot), func(l *Length) { l.Doubts = Bare })},
		{"36 m", Auto, Foot, one(36, Metre)}, // the cell knows better
		{"2 x 40m", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.Times = 2 })},
		{"40m x 2", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.Times = 2 })},
		{"40mx2", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.Times = 2 })},
		{"(2) 40 m", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.Times = 2 })},
		{"2x60", Auto, Foot, edit(one(60, Foot), func(l *Length) { l.Times, l.Doubts = 2, Bare })},
		{"40-50 m", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.High = 50 })},
		{"40 bis 50 m", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.High = 50 })},
		{"40m - 50m", Auto, UnitUnknown, edit(one(40, Metre), func(l *Length) { l.High = 50 })},
		{"100+/-5 m", Auto, UnitUnknown, edit(one(95, Metre), func(l *Length) { l.High, l.Doubts = 105, Approximate })},
		{"100±5 m", Auto, UnitUnknown, edit(one(95, Metre), func(l *Length) { l.High, l.Doubts = 105, Approximate })},
		{"100 ft +/-", Auto, UnitUnknown, edit(one(100, Foot), func(l *Length) { l.Doubts = Approximate })},
		{"12m + 8m + 6m", Auto, UnitUnknown, edit(one(26, Metre), func(l *Length) { l.Doubts = SumOrSpare })},
		{"6'-3 1/2\"", Auto, UnitUnknown, one(6+3.5/12, Foot)},
		{"08 m", Auto, UnitUnknown, one(8, Metre)},
		{"~100 m", Auto, UnitUnknown, edit(one(100, Metre), func(l *Length) { l.Doubts = Approximate })},
		{"approx 100'", Auto, UnitUnknown, edit(one(100, Foot), func(l *Length) { l.Doubts = Approximate })},
		{"env. 30 m", Auto, UnitUnknown, edit(one(30, Metre), func(l *Length) { l.Doubts = Approximate })},
		{"max. 100 m", Auto, UnitUnknown, edit(one(100, Metre), func(l *Length) { l.Doubts = Approximate })},
		{"80/120", Auto, Foot, edit(one(80, Foot), func(l *Length) { l.High, l.Doubts = 120, FirstOrLast|Bare })},
		{"40 m + 10 m", Auto, UnitUnknown, edit(one(50, Metre), func(l *Length) { l.Doubts = SumOrSpare })},
		{"120 m + 5 m slack", Auto, UnitUnknown, edit(one(120, Metre), func(l *Length) { l.Slack = 5 })},
		{"120 m + 10 %", Auto, UnitUnknown, edit(one(120, Metre), func(l *Length) { l.Slack = 12 })},
		{"120 m one way", Auto, UnitUnknown, edit(one(120, Metre), func(l *Length) { l.OneWay = true })},
		{"120 m (one-way)", Auto, UnitUnknown, edit(one(120, Metre), func(l *Length) { l.OneWay = true })},
		{"120 ft loop", Auto, UnitUnknown, edit(one(120, Foot), func(l *Length) { l.Loop = true })},
		{"Schleife 120 m", Auto, UnitUnknown, edit(one(120, Metre), func(l *Length) { l.Loop = true })},
		{"120 m aller-retour", Auto, UnitUnknown, edit(one(120, Metre), func(l *Length) { l.Loop = true })},
		{"120 m A/R", Auto, UnitUnknown, edit(one(120, Metre), func(l *Length) { l.Loop = true })},
		{"120 m ida y vuelta", Auto, UnitUnknown, edit(one(120, Metre), func(l *Length) { l.Loop = true })},
		{"einfache Länge 60 m", Auto, UnitUnknown, edit(one(60, Metre), func(l *Length) { l.OneWay = true })},
		{"120 ft (36.6 m)", Auto, UnitUnknown, one(120, Foot)},
		{"36 m / 118 ft", Auto, UnitUnknown, one(36, Metre)},
		{"50-ft. run", Auto, UnitUnknown, one(50, Foot)}, // public schedules survey: a trade article
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseLength(tt.in, tt.style, tt.header)
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(tt.want, got, sameFigures); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
	for in, want := range map[string]error{
		"": ErrEmpty, "per plan": ErrMissing, "TBC": ErrMissing, "as above": ErrDitto, "-36 m": ErrNegative,
		"Point": ErrNotUnderstood, "2.5 mm²": ErrNotUnderstood, "36 W": ErrNotUnderstood, "£36": ErrNotUnderstood,
		"50-40 m": ErrNotUnderstood, "120 ft (50 m)": ErrAmbiguous, "36 m 40 m": ErrNotUnderstood,
		"020 7946 0958": ErrNotUnderstood, "12.05.2021": ErrNotUnderstood, "C-036": ErrNotUnderstood, "2 ea": ErrNotUnderstood,
		"100 m reel": ErrNotUnderstood, "2 rolls of 100 m": ErrNotUnderstood, "not 40 m": ErrNotUnderstood, "40 m, room 12 north": ErrNotUnderstood,
		"120 m one way loop": ErrAmbiguous, "999999 km": ErrTooLarge, "one way": ErrNotUnderstood,
	} {
		if got, err := ParseLength(in, Auto, UnitUnknown); !errors.Is(err, want) {
			t.Errorf("ParseLength(%q) = %+v, %v; want %v", in, got, err, want)
		}
	}
}

// 1 ft = 0.3048 m: international foot, exact by definition.
func TestMetres(t *testing.T) {
	l, err := ParseLength("100 ft", Auto, UnitUnknown)
	if low, high, ok := l.Metres(); err != nil || !ok || math.Abs(low-30.48) > 1e-9 || low != high {
		t.Errorf("100 ft: %v, %v, %v, %v", low, high, ok, err)
	}
	if _, _, ok := (Length{Low: 5, High: 5}).Metres(); ok {
		t.Error("a length without a unit has metres")
	}
}

func finite(v ...float64) bool {
	for _, x := range v {
		if !(x >= 0) || math.IsInf(x, 0) {
			return false
		}
	}
	return true
}

func FuzzFigures(f *testing.F) {
	for _, s := range []string{
		"5W", "0,24 kW", "½ W", "25/70V", "Lo-Z 8Ω", "Hi-Z", "83 Ω", "3 + 1 spare", "2 pair", "x6", "twelve", "2x2",
		"85'-6\"", "2 x 40m", "40-50 m", "100±5 m", "120 m + 5 m slack", "120 ft (36.6 m)", "1,200 ft", "2-9/16 in", "120 m loop",
	} {
		for style := range byte(3) {
			f.Add(s, style)
		}
	}
	f.Fuzz(func(t *testing.T, s string, b byte) {
		style := Style(b % 3)
		CountInName(s)
		for _, p := range PowersIn(s, style) {
			if !finite(p.W) {
				t.Fatalf("PowersIn(%q): %+v", s, p)
			}
		}
		if p, err := ParseWatts(s, style); err == nil {
			again, err := ParseWatts(p.String(), Point)
			if !finite(p.W) || err != nil || again.W != p.W {
				t.Fatalf("%q: %+v prints as %q: %+v, %v", s, p, p.String(), again, err)
			}
		}
		if z, err := ParseOhms(s, style); err == nil {
			again, err := ParseOhms(z.String(), Point)
			if !finite(z.Ohms) || err != nil || again.Ohms != z.Ohms {
				t.Fatalf("%q: %+v prints as %q: %+v, %v", s, z, z.String(), again, err)
			}
		}
		if v, err := ParseLineVoltage(s, style); err == nil {
			again, err := ParseLineVoltage(v.String(), Point)
			v.Doubts, again.Doubts = 0, 0
			if d := cmp.Diff(v, again, cmpopts.EquateEmpty()); !finite(v.V...) || v.Kind == LineNone || err != nil || d != "" {
				t.Fatalf("%q: %+v prints as %q: %v %s", s, v, v.String(), err, d)
			}
		}
		if q, err := ParseQuantity(s, style); err == nil {
			again, err := ParseQuantity(q.String(), Point)
			q.Doubts, again.Doubts = 0, 0
			if q.Count < 0 || q.Spare < 0 || err != nil || q != again {
				t.Fatalf("%q: %+v prints as %q: %+v, %v", s, q, q.String(), again, err)
			}
		}
		if l, err := ParseLength(s, style, LengthUnit(b%3)); err == nil {
			again, err := ParseLength(l.String(), Point, UnitUnknown)
			l.Doubts, again.Doubts = 0, 0
			if d := cmp.Diff(l, again, sameFigures); !finite(l.Low, l.High, l.Slack) || l.Low > l.High || l.Times < 1 || err != nil || d != "" {
				t.Fatalf("%q: %+v prints as %q: %v %s", s, l, l.String(), err, d)
			}
		}
	})
}
