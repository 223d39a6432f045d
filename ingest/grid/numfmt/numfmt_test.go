package numfmt

import (
	"math"
	"strings"
	"testing"
)

// What a number looks like under a code. "LO" is what LibreOffice 7.4 shows
// for the same cell; "ECMA" is the text of ECMA-376 part 1, 18.8.31; the rest
// was worked out by hand from those rules.
var shownCases = []struct {
	code string
	v    float64
	want string
	from string
}{
	{`0" W"`, 6, "6 W", "LO"},
	{`0" W"`, 7.5, "8 W", "LO"},
	{`0" W"`, -3, "-3 W", "LO"},
	{`0.0" V";;`, 70.7, "70.7 V", "LO"},
	{`0.0" V";;`, -3, "", "LO"},
	{`0.0" V";;`, 0, "", "LO"},
	{";;;", 42, "", "ECMA"},
	{"0.00", 7.005, "7.01", "LO"},
	{"0", 2.5, "3", "LO"},
	{"0", 0.9999, "1", "LO"},
	{"0.0", 99.96, "100.0", "LO"},
	{"#,##0", 1234.5678, "1,235", "LO"},
	{"#,##0.00", 123456789.987, "123,456,789.99", "LO"},
	{"#,##0", 12, "12", "LO"},
	{"0000", 46, "0046", "LO"},
	{"0%", 0.375, "38%", "LO"},
	{"0.00%", 0.375, "37.50%", "LO"},
	{"0.00E+00", 1234.5678, "1.23E+03", "LO"},
	{"##0.0E+0", 1234.5678, "1.2E+3", "LO"},
	{"##0.0E+0", 12345, "12.3E+3", "ECMA"},
	{"0.00E+00", 0.00012, "1.20E-04", "hand"},
	{"0.00E+00", 9.999e5, "1.00E+06", "hand"},
	{"# ?/?", 0.5, " 1/2", "LO"},
	{"# ?/?", 2.25, "2 1/4", "LO"},
	{"# ?/?", -2.25, "-2 1/4", "LO"},
	{"# ?/?", 3, "3    ", "hand"},
	{"# ??/??", 0.375, "  3/8 ", "LO"},
	{"?/?", 2.5, "5/2", "LO"},
	{"# ?/8", 0.375, " 3/8", "LO"},
	{"# ??/16", 2.25, "2  4/16", "LO"},
	{"# ?/10", 0.5, " 5/10", "LO"},
	{`# ?/?" in"`, 6.5, "6 1/2 in", "LO"},
	{"# ?/?", 0.3333333333, " 1/3", "hand"},
	{"# ?/?", 0.97, "1    ", "hand: 1/1 is closer than 8/9"},
	{`[>=1000]0.0,"k";0`, 1500, "1.5k", "LO"},
	{`[>=1000]0.0,"k";0`, 500, "500", "LO"},
	{"[<1]0.0%;[>=1]0", 0.375, "37.5%", "LO"},
	{"[<1]0.0%;[>=1]0", 70.7, "71", "LO"},
	{`0.0,"k"`, 1234.5678, "1.2k", "LO"},
	{"#.##", 0.5, ".5", "LO"},
	{"#.0#", 1234.5678, "1234.57", "LO"},
	{"0.???", 2.25, "2.25 ", "LO"},
	{"00-000", 1500, "01-500", "LO"},
	{"(000) 000-0000", 123456789, "(012) 345-6789", "LO"},
	{`0;(0);"zero"`, -3, "(3)", "LO"},
	{`0;(0);"zero"`, 0, "zero", "LO"},
	{"0.00;[Red]-0.00", -2.25, "-2.25", "LO"},
	{`_(* #,##0.00_);_(* \(#,##0.00\);_(* "-"??_);_(@_)`, -3, " (3.00)", "LO but for the fill, which has no width here"},
	{"#,##0.00 [$€-1]", 1500, "1,500.00 €", "LO"},
	{`0 \V`, 70.7, "71 V", "LO"},
	{`"T-"0`, 5, "T-5", "LO"},
	{`General" W"`, 7.5, "7.5 W", "LO"},
	{`0"/2"`, 1, "1/2", "LO"},
	{"@", 7.5, "7.5", "LO"},
	{"", 7.5, "7.5", "ECMA"},
	{"General", -1500, "-1500", "LO"},

	{"d-mmm", 46024, "2-Jan", "LO"},
	{"d/m/yyyy", 46024, "2/1/2026", "LO"},
	{"yyyy-mm-dd", 46024.75, "2026-01-02", "LO"},
	{"dd.mm.yy", 46024, "02.01.26", "LO"},
	{"mmm yy", 46024, "Jan 26", "LO"},
	{"dddd d mmmm yyyy", 46024, "Friday 2 January 2026", "LO"},
	{"ddd", 46024, "Fri", "LO"},
	{"mmmmm", 46024, "J", "LO"},
	{"h:mm", 46024.75, "18:00", "LO"},
	{"h:mm AM/PM", 46024.75, "6:00 PM", "LO"},
	{"hh:mm:ss", 0.375, "09:00:00", "LO"},
	{"[h]:mm", 2.25, "54:00", "LO"},
	{"[mm]:ss", 0.5, "720:00", "LO"},
	{"mm:ss.0", 0.000706019, "01:01.0", "hand: 61.00004 s"},
	{"d.m.yy h:mm", 46024.75, "2.1.26 18:00", "LO"},
	{"[$-407]d. mmmm yyyy", 46082, "1. März 2026", "hand"},
	{"[$-40C]d mmmm yyyy", 46024, "2 janvier 2026", "LO"},
	{"[$-C0A]d mmm", 46024, "2 ene", "hand"},
	{"d-mmm", 60, "29-Feb", "the day that never was, as Excel shows it"},
	{"yyyy-mm-dd", 61, "1900-03-01", "LO"},
	{"yyyy-mm-dd", 2958465, "9999-12-31", "ECMA 18.17.4.1"},
	{"yyyy-mm-dd", 2958466, "2958466", "past the last day: the number"},
	{"m/d/yyyy", -5, "-5", "before the first day: the number"},
}

func TestShown(t *testing.T) {
	for _, tt := range shownCases {
		if got := Compile(tt.code).Text(tt.v); got != tt.want {
			t.Errorf("%v under %q shows %q, want %q (%s)", tt.v, tt.code, got, tt.want, tt.from)
		}
	}
}

// General shows at most eleven characters beside the sign, as a wide column of
// Excel does. From memory and the examples of ECMA-376 part 1, 18.8.31.
func TestGeneral(t *testing.T) {
	for _, tt := range []struct {
		v    float64
		want string
	}{
		{0, "0"}, {7.5, "7.5"}, {-0.25, "-0.25"}, {0.1 + 0.2, "0.3"}, {1.0 / 3, "0.333333333"}, {100.0 / 3, "33.33333333"},
		{12345678901, "12345678901"}, {123456789012, "1.23457E+11"}, {1e20, "1E+20"}, {0.0001, "0.0001"}, {0.00001, "0.00001"},
		{0.000123456789, "0.000123457"}, {1e-10, "1E-10"}, {1.23456e-5, "1.23456E-05"}, {99999999999.5, "1E+11"}, {1234567.12345, "1234567.123"},
		{math.MaxFloat64, "1.79769E+308"}, {5e-324, "4.94066E-324"},
	} {
		if got := General(tt.v); got != tt.want {
			t.Errorf("General(%v) = %q, want %q", tt.v, got, tt.want)
		}
	}
}

func TestKinds(t *testing.T) {
	for _, tt := range []struct {
		code                    string
		date, calendar, general bool
	}{
		{"", false, false, true}, {"General", false, false, true}, {"0.0", false, false, false}, {"d-mmm", true, true, false},
		{"[h]:mm", true, false, false}, {"h:mm", true, false, false}, {"mm:ss.0", true, false, false}, {`0" days"`, false, false, false},
		{`0\d`, false, false, false}, {"[Red]0", false, false, false}, {"[$-409]m/d/yy", true, true, false}, {`"m"0`, false, false, false},
		{"@", false, false, true}, {";;;", false, false, false},
	} {
		f := Compile(tt.code)
		if f.IsDate() != tt.date || f.IsCalendar() != tt.calendar || f.IsGeneral() != tt.general {
			t.Errorf("%q: date %v, calendar %v, general %v", tt.code, f.IsDate(), f.IsCalendar(), f.IsGeneral())
		}
	}
	for id := range 50 {
		want := id >= 14 && id <= 22 || id >= 45 && id <= 47 // ECMA-376 part 1, 18.8.30
		if got := Compile(Builtin(id)).IsDate(); got != want {
			t.Errorf("built-in format %d: date %v, want %v", id, got, want)
		}
	}
}

func TestShowText(t *testing.T) {
	for _, tt := range []struct {
		code, in, want string
		hidden         bool
	}{
		{"0.0", "x", "x", false}, {"@", "x", "x", false}, {`@" W"`, "6", "6 W", false}, {`_(* 0_);_(* \(0\);_(* "-"_);_(@_)`, "spare", " spare ", false}, {`0;0;0;"T-"@`, "5", "T-5", false},
		{`[<0]0;[>9]0;0;General" W"`, "6", "6 W", false}, {`General;General;General;General\ `, "6", "6 ", false},
		{"0;0;0;", "x", "x", true}, {`0;0;0;\ `, "x", "x", true}, {`0;0;0;"-"`, "6 W", "6 W", true}, {"0;0;0;0", "6 W", "6 W", true}, {";;;", "", "", false},
	} {
		if got, hidden := Compile(tt.code).ShowText(tt.in); got != tt.want || hidden != tt.hidden {
			t.Errorf("%q under %q shows %q (hidden: %v), want %q (%v)", tt.in, tt.code, got, hidden, tt.want, tt.hidden)
		}
	}
}

// Every day from 1 March 1900 on survives the way to the calendar and back,
// and days follow one another.
func TestCalendarRoundTrip(t *testing.T) {
	month := 3
	for d := 61; d <= lastDay; d++ {
		y, m, day := Civil(d)
		if Serial(y, m, day) != d {
			t.Fatalf("day %d is %d-%d-%d, which is day %d", d, y, m, day, Serial(y, m, day))
		}
		if m != month && (day != 1 || m != month%12+1) {
			t.Fatalf("day %d is %d-%d-%d after month %d", d, y, m, day, month)
		}
		month = m
	}
	if d := Serial(2026, 1, 2); d != 46024 { // Excel and LibreOffice: =DATE(2026,1,2)
		t.Errorf("2 January 2026 is day %d, want 46024", d)
	}
}

func FuzzCompile(f *testing.F) {
	for _, tt := range shownCases {
		f.Add(tt.code, tt.v)
	}
	f.Add(`"`, 1.0)
	f.Add(`[`, -1.0)
	f.Add(`0\`, 0.5)
	f.Fuzz(func(t *testing.T, code string, v float64) {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return
		}
		c := Compile(code)
		if got := c.Text(v); len(got) > 4096+len(code)*330 {
			t.Errorf("%v under %q shows %d bytes", v, code, len(got))
		}
		if once, again := c.Text(v), string(c.Append([]byte("x"), v)); again != "x"+once {
			t.Errorf("%v under %q shows %q, appended %q", v, code, once, again)
		}
		if got, hidden := c.ShowText("7.5 W"); (c.PlainText() || hidden) && got != "7.5 W" || got == "" {
			t.Errorf("%q shows plain text as %q", code, got)
		}
	})
}

// A whole number with digit places alone reads back as itself.
func FuzzWholeNumber(f *testing.F) {
	f.Add(int64(46024))
	f.Add(int64(-7))
	f.Fuzz(func(t *testing.T, n int64) {
		n %= 1e14
		got := strings.ReplaceAll(Compile("#,##0").Text(float64(n)), ",", "")
		if want := Compile("0").Text(float64(n)); got != want {
			t.Errorf("%d reads %q with groups, %q without", n, got, want)
		}
	})
}
