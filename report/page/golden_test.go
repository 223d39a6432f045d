package page_test

import (
	"regexp"
	"testing"

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
