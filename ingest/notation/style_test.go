package notation

import (
	"errors"
	"math"
	"testing"
)

func TestParseNumber(t *testing.T) {
	for _, tt := range []struct {
		in     string
		style  Style
		want   float64
		other  float64
		doubts Doubts
	}{
		{"7.5", Auto, 7.5, 7.5, 0},
		{"7,5", Auto, 7.5, 7.5, 0},
		{"7,5", Comma, 7.5, 7.5, 0},
		{"7.5", Comma, 7.5, 7.5, DecimalMark},
		{"7,5", Point, 7.5, 7.5, DecimalMark},
		{"0,125", Auto, 0.125, 0.125, 0}, // no thousands start with 0
		{"0.125", Comma, 0.125, 0.125, DecimalMark},
		{"1,200", Point, 1200, 1200, 0},
		{"1.200", Comma, 1200, 1200, 0},
		{"1.200", Point, 1.2, 1.2, 0},
		{"1,200", Comma, 1.2, 1.2, 0},
		{"1,200", Auto, 1200, 1.2, DecimalMark},
		{"1.200", Auto, 1.2, 1200, DecimalMark},
		{"1.200,50", Auto, 1200.5, 1200.5, 0},
		{"1,200.50", Auto, 1200.5, 1200.5, 0},
		{"1,200.50", Comma, 1200.5, 1200.5, DecimalMark},
		{"1.200.000", Auto, 1.2e6, 1.2e6, 0},
		{"1,200,000", Auto, 1.2e6, 1.2e6, 0},
		{"12345", Auto, 12345, 12345, 0},
		{"1234,5", Auto, 1234.5, 1234.5, 0},
		{"1 200", Auto, 1200, 1200, DecimalMark},
		{"1\u202f200,5", Comma, 1200.5, 1200.5, DecimalMark},
		{"1'200", Auto, 1200, 1200, 0},
		{"1'200.5", Auto, 1200.5, 1200.5, 0},
		{".5", Auto, 0.5, 0.5, 0},
		{",5", Comma, 0.5, 0.5, 0},
		{"½", Auto, 0.5, 0.5, 0},
		{"1½", Auto, 1.5, 1.5, 0},
		{"1 1/2", Auto, 1.5, 1.5, 0},
		{"2-9/16", Auto, 2.5625, 2.5625, 0},
		{"~12", Auto, 12, 12, Approximate},
		{"ca. 12", Auto, 12, 12, Approximate},
		{"(3)", Auto, 3, 3, 0},
		{"5.", Auto, 5, 5, 0},
	} {
		t.Run(tt.in+" "+tt.style.String(), func(t *testing.T) {
			got, err := ParseNumber(tt.in, tt.style)
			if err != nil {
				t.Fatal(err)
			}
			if want := (Number{tt.want, tt.other, tt.doubts}); got != want {
				t.Errorf("got %+v, want %+v", got, want)
			}
		})
	}
	for in, want := range map[string]error{
		"": ErrEmpty, "n/a": ErrMissing, "-": ErrMissing, "ditto": ErrDitto, "-3": ErrNegative, "−3": ErrNegative,
		"3 4": ErrAmbiguous, "1.2.3": ErrNotUnderstood, "12.05.2021": ErrNotUnderstood, "007": ErrNotUnderstood,
		"5 W": ErrNotUnderstood, "NaN": ErrNotUnderstood, "Infinity": ErrNotUnderstood, "1e5": ErrNotUnderstood,
		"0x10": ErrAmbiguous, "$5": ErrNotUnderstood, "five": ErrNotUnderstood, "+5": ErrNotUnderstood,
	} {
		if got, err := ParseNumber(in, Auto); !errors.Is(err, want) {
			t.Errorf("ParseNumber(%q) = %+v, %v; want %v", in, got, err, want)
		}
	}
}

func TestDetectStyle(t *testing.T) {
	for _, tt := range []struct {
		name string
		in   []string
		want Style
	}{
		{"nothing", nil, Auto},
		{"whole figures", []string{"5", "10", "30"}, Auto},
		{"points", []string{"7.5", "10", "3.75"}, Point},
		{"commas", []string{"7,5", "10", "3,75 W"}, Comma},
		{"leading point", []string{".5 W", "1 W"}, Point},
		{"thousands with decimals", []string{"1.200,50", "900"}, Comma},
		{"millions", []string{"1,200,000"}, Point},
		{"grouped only, nothing beside", []string{"1.200", "1.450"}, Auto},
		{"grouped beside plain hundreds", []string{"850", "1.200", "940", "700"}, Comma},
		{"grouped with comma beside plain hundreds", []string{"850", "1,200", "940", "700"}, Point},
		{"three decimals beside units", []string{"1", "2", "1.250", "3"}, Point},
		{"a list is no evidence", []string{"30,15,7", "5,10,20"}, Auto},
		{"a list of decimals", []string{"30,15,7.5"}, Point},
		{"contradiction", []string{"7,5", "7.5"}, Auto},
		{"one slip in twelve", []string{"7,5", "2,5", "1,5", "0,5", "7,5", "2,5", "1,5", "0,5", "7,5", "2,5", "1,5", "7.5"}, Comma},
		{"figures in codes do not count", []string{"A1.2", "A1.3", "7,5"}, Comma},
		{"lengths with units", []string{"12,5 m", "120 m"}, Comma},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := DetectStyle(tt.in); got != tt.want {
				t.Errorf("got %v, want %v", got, tt.want)
			}
		})
	}
}

func FuzzParseNumber(f *testing.F) {
	for _, s := range []string{"7.5", "7,5", "1 200", "1.200,5", "1'200", "½", "1 1/2", ".5", ",5", "~3"} {
		f.Add(s, byte(0))
		f.Add(s, byte(1))
		f.Add(s, byte(2))
	}
	f.Fuzz(func(t *testing.T, s string, style byte) {
		DetectStyle([]string{s})
		n, err := ParseNumber(s, Style(style%3))
		if err != nil {
			return
		}
		if !(n.Value >= 0) || math.IsInf(n.Value, 0) || !(n.Other >= 0) || math.IsInf(n.Other, 0) {
			t.Fatalf("%q: %+v", s, n)
		}
		again, err := ParseNumber(n.String(), Point)
		if err != nil || again.Value != n.Value {
			t.Fatalf("%q: %+v prints as %q: %+v, %v", s, n, n.String(), again, err)
		}
	})
}
