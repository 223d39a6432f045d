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
		{"\x1b[31m\u202ered.xlsx", "marked/-31mred.xlsx"},
		{"50 %41 #2 [old].csv", "marked/50 -41 -2 -old-.csv.xlsx"},
		{"/", "marked/unnamed.xlsx"},
		{`\\server\share\rink.xlsx`, "marked/server/share/rink.xlsx"},
		{`\\?\D:\jobs\rink.xlsx`, "marked/-/D-/jobs/rink.xlsx"},
		{"nul.tar.csv", "marked/_nul.tar.csv.xlsx"},
		{"COM¹.xlsx", "marked/_COM¹.xlsx"},
		{"conin$.xlsx", "marked/_conin$.xlsx"},
		{"Console.xlsx", "marked/Console.xlsx"},
		{"LPT10.xlsx", "marked/LPT10.xlsx"},
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

// Copies whose names some system takes for one are kept apart, and none needs a
// folder where another has its file.
func TestMarkedNamesOnEverySystem(t *testing.T) {
	got := report.MarkedNames([]string{"K\u00fchlhaus.csv", "Ku\u0308hlhaus.csv", "x-.xlsx", "x?.xlsx/job.csv", "y?.xlsx/job.csv", "y-.xlsx", "Z.xlsx", "z.xlsx/a.xlsx"})
	want := []string{"marked/K\u00fchlhaus.csv.xlsx", "marked/Ku\u0308hlhaus.csv 2.xlsx", "marked/x-.xlsx", "", "marked/y-.xlsx/job.csv.xlsx", "marked/y- 2.xlsx", "marked/Z.xlsx", ""}
	for i, name := range got {
		if want[i] != "" && name != want[i] {
			t.Errorf("%q, want %q", name, want[i])
		}
		for _, other := range got {
			if strings.HasPrefix(strings.ToLower(name), strings.ToLower(other)+"/") {
				t.Errorf("%q lies in the file %q", name, other)
			}
		}
	}
}
