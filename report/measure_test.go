package report_test

import (
	"strings"
	"testing"
	"unicode/utf8"

	"lineaudit/report"
)

func TestLines(t *testing.T) {
	for _, tt := range []struct {
		text  string
		width float64
		want  int
	}{
		{"", 10, 1}, {"80 W", 10, 1}, {"one\ntwo\nthree", 40, 3}, {"11111 22222 33333", 6, 3}, {"11111 22222 33333", 12, 2},
		{strings.Repeat("1", 30), 11, 3}, {"a\n", 10, 2}, {"e\u0301e\u0301e\u0301e\u0301", 5, 1},
	} {
		if got := report.Lines(tt.text, tt.width); got != tt.want {
			t.Errorf("Lines(%q, %v) = %d, want %d", tt.text, tt.width, got, tt.want)
		}
	}
}

func TestCellText(t *testing.T) {
	for _, tt := range []struct{ in, want string }{
		{"a\x00b\x1b[31m\r", "ab[31m"}, {"line\nline\tx", "line\nline\tx"}, {"\u202ereversed", "reversed"}, {"\u2067turned\u2069 and \u202bmore", "turned and more"}, {"bad \xff byte", "bad \uFFFD byte"}, {"Kühlhaus 北", "Kühlhaus 北"},
	} {
		if got := report.CellText(tt.in); got != tt.want {
			t.Errorf("CellText(%q) = %q, want %q", tt.in, got, tt.want)
		}
	}
	for _, long := range []string{strings.Repeat("x", 40_000), strings.Repeat("😀", 20_000), strings.Repeat("ä", 33_000)} {
		got := report.CellText(long)
		units := 0
		for _, r := range got {
			if units++; r > 0xFFFF {
				units++
			}
		}
		if units > report.MaxCell || units < report.MaxCell-2 || !utf8.ValidString(got) || !strings.HasSuffix(got, "…") {
			t.Errorf("a text of %d bytes became one of %d UTF-16 units", len(long), units)
		}
	}
}
