package page_test

import (
	"errors"
	"regexp"
	"testing"

	ours "lineaudit/report/page"
	"lineaudit/report/reporttest"
)

// The page without its style, its script and the tables of rules.
func TestWholePage(t *testing.T) {
	text := written(t, reporttest.Fixed())
	for _, r := range []string{`(?s)<style>.*?</style>`, `(?s)<script>.*?</script>`, `\{"name":"(rules|register|overview)".*?"open":(true|false)\},?`} {
		text = regexp.MustCompile(r).ReplaceAllString(text, "")
	}
	text = regexp.MustCompile(`[,{]"|<(g|path|text|rect)`).ReplaceAllStringFunc(text, func(s string) string { return "\n" + s }) // one thing a line
	reporttest.Golden(t, "page", text)
}

func TestAFullDiskIsAnError(t *testing.T) {
	for _, room := range []int{0, 1, 5000} {
		if err := ours.Write(&reporttest.Disk{Room: room}, reporttest.Fixed(), nil); !errors.Is(err, reporttest.ErrFull) {
			t.Errorf("room for %d: %v", room, err)
		}
	}
}
