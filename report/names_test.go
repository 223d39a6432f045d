package report_test

import (
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"lineaudit/report"
)

// The names that Windows keeps for devices, the characters that it refuses and
// the blanks and dots that it drops: from memory of its documentation.
func TestMarkedNames(t *testing.T) {
	for _, tt := range []struct{ in, want string }{
		{"rink.xlsx", "marked/rink.xlsx"},
		{"a/b/rink.XLSM", "marked/a/b/rink.xlsm"},
		{"old/list.csv", "marked/old/list.csv.xlsx"},
		{"jobs.zip/rink.xls", "marked/jobs.zip/rink.xls.xlsx"},
		{"../../etc/passwd", "marked/etc/passwd.xlsx"},
		{`C:\jobs\con.xlsx`, "marked/C-/jobs/_con.xlsx"},
		{"aux/COM1.csv", "marked/_aux/_COM1.csv.xlsx"},
		{"what? <is> this|.xlsx", "marked/what- -is- this-.xlsx"},
		{"trailing. /x. .xlsx", "marked/trailing/x.xlsx"},
		{"\x1b[31m\u202ered.xlsx", "marked/[31mred.xlsx"},
		{"/", "marked/unnamed.xlsx"},
		{"Kühlhaus 北.xlsx", "marked/Kühlhaus 北.xlsx"},
	} {
		if got := report.MarkedNames([]string{tt.in})[0]; got != tt.want {
			t.Errorf("%q: %q, want %q", tt.in, got, tt.want)
		}
	}
}

func TestMarkedNamesAreShortAndApart(t *testing.T) {
	long := strings.Repeat("Gewächshaus ", 40)
	files := []string{"Rink.xlsx", "rink.xlsx", "RINK.XLSX", long + "1.xlsx", long + "2.xlsx", strings.Repeat("folder/", 60) + "a.xlsx", strings.Repeat("folder/", 61) + "a.xlsx"}
	seen := map[string]bool{}
	for i, name := range report.MarkedNames(files) {
		if seen[strings.ToLower(name)] || len(name) > 240 || !filepath.IsLocal(name) || !utf8.ValidString(name) || !strings.HasPrefix(name, "marked/") {
			t.Errorf("%.40q: %q", files[i], name)
		}
		for part := range strings.SplitSeq(name, "/") {
			if len(part) > 128 {
				t.Errorf("a name of %d bytes: %q", len(part), part)
			}
		}
		seen[strings.ToLower(name)] = true
	}
}
