package terminal_test

import (
	"bytes"
	"errors"
	"strings"
	"testing"

	"github.com/jedib0t/go-pretty/v6/text"

	"lineaudit/audit"
	"lineaudit/report"
	"lineaudit/report/reporttest"
	"lineaudit/report/terminal"
)

func screen(t *testing.T, a *report.Audit, o terminal.Options) string {
	t.Helper()
	var b bytes.Buffer
	if err := terminal.Write(&b, a, o); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestFitsTheWidth(t *testing.T) {
	for _, width := range []int{72, 80, 120, 200} {
		for name, a := range map[string]*report.Audit{"overloaded": reporttest.Overloaded(), "hostile": reporttest.Hostile(), "empty": reporttest.Of(), "fixed": reporttest.Fixed()} {
			for line := range strings.Lines(screen(t, a, terminal.Options{Width: width, Out: "out"})) {
				if n := text.StringWidthWithoutEscSequences(strings.TrimRight(line, "\n")); n > width {
					t.Errorf("%s at %d: a line of %d characters: %q", name, width, n, line)
				}
			}
		}
	}
}

func TestSaysWhatMatters(t *testing.T) {
	text := screen(t, reporttest.Overloaded(), terminal.Options{Width: 140})
	for _, want := range []string{"2 jobs at 2 sites in 3 files", "1 file not readable", "Glass gardens", "control-overload", "VC-1", "80 W on a 50 W control: 160 %", "the workbook is cut short"} {
		if !strings.Contains(strings.Join(strings.Fields(text), " "), want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
}

// A rule is told without the marks of its page and without the table of its tests.
func TestRuleReadsAsText(t *testing.T) {
	for _, r := range audit.Rules() {
		got := terminal.Rule(r, audit.DefaultSettings(), 80)
		if strings.Contains(got, "```") || strings.Contains(got, "##") || strings.Contains(got, "kind,name") || !strings.Contains(got, "\nWorked example\n") {
			t.Errorf("%s:\n%s", r.Name, got)
		}
		for line := range strings.Lines(got) {
			if text.StringWidthWithoutEscSequences(line) > 81 && !strings.HasPrefix(line, r.Name+":") {
				t.Errorf("%s: too wide: %q", r.Name, line)
			}
		}
	}
	got := strings.Join(strings.Fields(terminal.Rules(audit.DefaultSettings(), 400)), " ")
	for _, want := range []string{"caution above 100 % of line voltage (a tap for a voltage above this", "fault above 100 % of line voltage (a tap for a voltage below this", "IEC 60228 class 0"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q", want)
		}
	}
}

func TestColourIsNeverTheOnlySign(t *testing.T) {
	plain := screen(t, reporttest.Overloaded(), terminal.Options{Width: 100})
	if strings.Contains(plain, "\x1b") {
		t.Error("escapes without colour")
	}
	painted := screen(t, reporttest.Overloaded(), terminal.Options{Width: 100, Colour: true})
	if !strings.Contains(painted, "\x1b[") || !strings.Contains(plain, "danger") {
		t.Error("the grade is not in words, or colour does nothing")
	}
}

func TestHostileTextStaysText(t *testing.T) {
	text := screen(t, reporttest.Hostile(), terminal.Options{Width: 100})
	if strings.ContainsAny(text, "\x1b\x00\x07\u202e") {
		t.Errorf("control characters reach the terminal: %q", text)
	}
}

func TestQuietIsOneLine(t *testing.T) {
	text := screen(t, reporttest.Overloaded(), terminal.Options{Width: 400, Quiet: true})
	if strings.Count(text, "\n") != 1 {
		t.Errorf("%q", text)
	}
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestAWriteErrorIsReturned(t *testing.T) {
	if err := terminal.Write(full{}, reporttest.Overloaded(), terminal.Options{}); err == nil {
		t.Error("no error")
	}
}
