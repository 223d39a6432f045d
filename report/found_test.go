package report

import (
	"testing"

	"lineaudit/audit"
)

func TestFoundNamesTheHigherGrade(t *testing.T) {
	for want, f := range map[string]*audit.Finding{
		"3.47 dB at the far end":                              {Message: "3.47 dB at the far end"},
		"3.47 dB at the far end; possibly fault (above 3 dB)": {Message: "3.47 dB at the far end", Higher: "possibly fault (above 3 dB)"},
	} {
		if got := Found(f); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}
