package main

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"lineaudit/audit"
)

// The list of rules in DEVELOPERS.md is written from the rules themselves.
func TestRulesInTheGuideAreCurrent(t *testing.T) {
	const guide, begin, end = "../../DEVELOPERS.md", "<!-- rules: begin -->\n", "<!-- rules: end -->\n"
	b, err := os.ReadFile(guide)
	if err != nil {
		t.Fatal(err)
	}
	head, rest, ok1 := strings.Cut(string(b), begin)
	_, tail, ok2 := strings.Cut(rest, end)
	if !ok1 || !ok2 {
		t.Fatalf("%s has lost its marks %q and %q", guide, begin, end)
	}
	var list strings.Builder
	list.WriteString("| rule | finds | limits | source |\n| --- | --- | --- | --- |\n")
	settings := audit.DefaultSettings()
	for _, r := range audit.Rules() {
		limits, sources := settings.Describe(r)
		fmt.Fprintf(&list, "| %s | %s | %s | %s |\n", r.Name, r.Title, strings.ReplaceAll(limits, "|", "/"), strings.ReplaceAll(sources, "|", "/"))
	}
	want := head + begin + list.String() + end + tail
	if want == string(b) {
		return
	}
	if os.Getenv("UPDATE_GOLDEN") == "" {
		t.Errorf("the rules in %s are not those of the code; set UPDATE_GOLDEN to write them", guide)
		return
	}
	if err := os.WriteFile(guide, []byte(want), 0o644); err != nil {
		t.Fatal(err)
	}
}
