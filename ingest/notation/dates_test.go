package notation

import (
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestRecoverFraction(t *testing.T) {
	for _, tt := range []struct {
		name             string
		year, month, day int
		shown            string
		column           Column
		want             Recovered
	}{
		// 46024 is 2 January 2026; measured: 1/2 typed shows 2-Jan in one program
		{"half, month first", 2026, 1, 2, "2-Jan", TapColumn, Recovered{[]string{"1/2", "2/1"}, true}},
		{"half, day first", 2026, 2, 1, "01-Feb", TapColumn, Recovered{[]string{"1/2", "2/1"}, true}},
		{"quarter, month first", 2026, 1, 4, "4-Jan", TapColumn, Recovered{[]string{"1/4"}, false}},
		{"quarter, day first", 2026, 4, 1, "01. Apr", TapColumn, Recovered{[]string{"1/4"}, false}},
		{"three quarters", 2026, 3, 4, "4-Mar", TapColumn, Recovered{[]string{"3/4"}, false}},
		{"tap list, month first", 2026, 5, 10, "10-May", TapColumn, Recovered{[]string{"5/10", "10/5"}, true}},
		{"tap list of three", 2004, 1, 2, "1/2/2004", TapColumn, Recovered{[]string{"1/2", "2/1", "1/2/4", "2/1/4"}, true}},
		{"gauge, month first or not", 2026, 2, 16, "16-Feb", GaugeColumn, Recovered{[]string{"16/2"}, false}},
		{"gauge 14/4", 2026, 4, 14, "14-Apr", GaugeColumn, Recovered{[]string{"14/4"}, false}},
		{"gauge 12/2", 2026, 12, 2, "2-Dec", GaugeColumn, Recovered{[]string{"12/2"}, false}},
		{"channel", 2026, 1, 3, "3-Jan", ChannelColumn, Recovered{[]string{"1-3", "3-1"}, true}},
		{"channel, day first", 2026, 3, 1, "01-Mrz", ChannelColumn, Recovered{[]string{"1-3", "3-1"}, true}},
		{"channel, long", 1932, 1, 1, "Jan-32", ChannelColumn, Recovered{[]string{"1-32", "1-1"}, true}},
		{"quantity", 2026, 1, 6, "6-Jan", QuantityColumn, Recovered{[]string{"1-6"}, false}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			got, err := RecoverFraction(tt.year, tt.month, tt.day, tt.shown, tt.column)
			if err != nil {
				t.Fatal(err)
			}
			if tt.name == "tap list of three" {
				// the order of the long readings is of no consequence
				if !got.Ambiguous || got.Texts[0] != "1/2" || !strings.Contains(strings.Join(got.Texts, " "), "1/2/4") {
					t.Errorf("got %+v", got)
				}
				return
			}
			if d := cmp.Diff(tt.want, got); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
	for _, tt := range []struct {
		name             string
		year, month, day int
		shown            string
		column           Column
	}{
		{"a real date in a gauge column", 2021, 5, 27, "27-May", GaugeColumn},
		{"no tap list", 2021, 1, 31, "31-Jan", TapColumn},
		{"with a time", 2021, 1, 2, "2021-01-02 10:30", TapColumn},
		{"no such day", 2021, 2, 30, "30-Feb", TapColumn},
		{"no such month", 2021, 13, 1, "", TapColumn},
		{"before the system", 1850, 1, 2, "2-Jan", TapColumn},
	} {
		if got, err := RecoverFraction(tt.year, tt.month, tt.day, tt.shown, tt.column); !errors.Is(err, ErrNotUnderstood) {
			t.Errorf("%s: %+v, %v", tt.name, got, err)
		}
	}
}

// Serials: 46024 is 2 January 2026 (measured); 1 is 1 January 1900, 61 is 1
// March 1900 (the system's imaginary 29 February between them).
func TestRecoverSerial(t *testing.T) {
	for _, tt := range []struct {
		serial float64
		shown  string
		want   string
	}{
		{46024, "2-Jan", "1/2"},
		{2, "2-Jan", "1/2"},
		{62, "2-Mar", "3/2"},
	} {
		if got, err := RecoverSerial(tt.serial, tt.shown, TapColumn); err != nil || got.Texts[0] != tt.want {
			t.Errorf("%v: %+v, %v", tt.serial, got, err)
		}
	}
	for _, serial := range []float64{0, -1, 60, 46024.5, 1e9, math.NaN(), math.Inf(1)} {
		if got, err := RecoverSerial(serial, "", TapColumn); err == nil {
			t.Errorf("%v: %+v", serial, got)
		}
	}
}

func FuzzRecover(f *testing.F) {
	f.Add(46024.0, "2-Jan", byte(0))
	f.Add(46069.0, "16-Feb", byte(1))
	f.Add(37988.0, "1/2/2004", byte(0))
	f.Fuzz(func(t *testing.T, serial float64, shown string, b byte) {
		column := Column(b % 4)
		got, err := RecoverSerial(serial, shown, column)
		if err != nil {
			return
		}
		if len(got.Texts) == 0 || got.Ambiguous != (len(got.Texts) > 1) {
			t.Fatalf("%v: %+v", serial, got)
		}
		for _, text := range got.Texts {
			switch column {
			case TapColumn:
				_, err = ParseTap(text, Auto)
			case GaugeColumn:
				_, err = ParseConductor(text, Auto, HintNone)
			case ChannelColumn:
				_, err = ParseChannel(text)
			case QuantityColumn:
				_, err = ParseTags(text)
			}
			if err != nil {
				t.Fatalf("%v: %q is no value of its column: %v", serial, text, err)
			}
		}
	})
}
