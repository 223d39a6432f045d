package line

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

func TestClass(t *testing.T) {
	exact := 100 / math.Sqrt2
	for _, tt := range []struct {
		volts, want float64 // want 0: no class
	}{
		{70, exact}, {70.7, exact}, {71, exact}, {70.71, exact}, {exact, exact},
		{25, 25}, {35, 35}, {35.4, 35}, {50, 50}, {100, 100}, {140, 140}, {141.4, 140}, {200, 200},
		{4, 0}, {8, 0}, {16, 0}, {24, 0}, {48, 0}, {69, 0}, {72, 0}, {110, 0}, {120, 0}, {230, 0},
		{0, 0}, {-70.7, 0}, {math.NaN(), 0}, {math.Inf(1), 0},
	} {
		got, ok := Class(tt.volts)
		if got != tt.want || ok != (tt.want != 0) {
			t.Errorf("Class(%v) = %v, %v; want %v", tt.volts, got, ok, tt.want)
		}
	}
}

func TestSameClass(t *testing.T) {
	for _, tt := range []struct {
		a, b float64
		want bool
	}{
		{70, 70.7, true}, {70.7, 71, true}, {70, 71, true}, {100, 100, true},
		{70, 100, false}, {25, 35, false}, {140, 141.4, true}, {48, 48, true}, {48, 50, false},
		{math.NaN(), 70, false}, {math.NaN(), math.NaN(), false},
	} {
		if got := SameClass(tt.a, tt.b); got != tt.want {
			t.Errorf("SameClass(%v, %v) = %v", tt.a, tt.b, got)
		}
	}
}

func TestTapWatts(t *testing.T) {
	for _, tt := range []struct {
		tapW, tapV, lineV, want, share float64
	}{
		{10, 70, 70.7, 10, 0},      // one class: exactly the tap
		{10, 70.7, 100, 20, 1e-15}, // 100^2 / 5000
		{10, 100, 70, 5, 1e-15},
		{2.5, 70, 50, 1.25, 1e-15},
		{10, 70.7, 25, 1.25, 1e-15}, // 625/5000
		{10, 48, 96, 40, 1e-15},     // outside every class: as written
	} {
		if got := TapWatts(tt.tapW, tt.tapV, tt.lineV); !near(got, tt.want, tt.share) {
			t.Errorf("TapWatts(%v, %v, %v) = %v, want %v", tt.tapW, tt.tapV, tt.lineV, got, tt.want)
		}
	}
}

// TestPublishedLines checks the identities, currents and cross-voltage draws of
// testdata/lines.csv; sources in the file. Printed figures are rounded, 1 %.
func TestPublishedLines(t *testing.T) {
	checked := map[string]int{}
	for _, row := range readReference(t, "testdata/lines.csv") {
		volts := row.number(t, "line_v")
		checked[row["kind"]]++
		switch row["kind"] {
		case "nominal voltage":
			if got, ok := Class(volts); !ok || !near(got, volts, 0.0002) {
				t.Errorf("Class(%v) = %v, %v (%s)", volts, got, ok, row["source"])
			}
		case "origin":
			if got, _ := Class(volts); !near(got, row.number(t, "recomputed"), 1e-6) {
				t.Errorf("Class(%v) = %v (%s)", volts, got, row["source"])
			}
		case "identity P=V^2/Z":
			watts, ohms := row.number(t, "power_w"), row.number(t, "impedance_ohm")
			got := Impedance(volts, watts)
			if !near(got, ohms, 0.0102) || !near(got, row.number(t, "recomputed"), 1e-5) {
				t.Errorf("%v W at %v V: %v ohm, printed %v (%s)", watts, volts, got, ohms, row["source"])
			}
			if back := Watts(volts, got); !near(back, watts, 1e-15) {
				t.Errorf("%v W at %v V goes to %v ohm and back to %v W", watts, volts, got, back)
			}
			if y := Siemens(volts, watts); !near(y*got, 1, 1e-15) {
				t.Errorf("%v W at %v V: %v S, %v ohm", watts, volts, y, got)
			}
			if got := volts / got; !near(got, row.number(t, "current_a"), 0.0102) {
				t.Errorf("%v W at %v V: %v A (%s)", watts, volts, got, row["source"])
			}
		case "current":
			sol := must(Solve(volts, []Node{{Parent: Source, LoadSiemens: 1 / row.number(t, "impedance_ohm")}}))(t)
			if !near(sol.Amps, row.number(t, "current_a"), 0.01) {
				t.Errorf("%v A at %v V (%s)", sol.Amps, volts, row["source"])
			}
		case "cross-voltage":
			_, marked, _ := strings.Cut(row["statement"], "marked for ")
			written, _, _ := strings.Cut(marked, " V")
			tapV := must(strconv.ParseFloat(written, 64))(t)
			if got := TapWatts(1, tapV, volts); !near(got, row.number(t, "recomputed"), 0.0005) {
				t.Errorf("%s: %v (%s)", row["statement"], got, row["source"])
			}
		default:
			t.Errorf("row of kind %q not checked", row["kind"])
		}
	}
	if checked["identity P=V^2/Z"] != 41 || checked["nominal voltage"] != 16 || checked["cross-voltage"] != 4 {
		t.Errorf("rows checked: %v", checked)
	}
}
