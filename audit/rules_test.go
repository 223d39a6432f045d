package audit

import (
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// TestRuleCases runs the case files of every rule.
func TestRuleCases(t *testing.T) {
	for _, rule := range Rules() {
		files, err := filepath.Glob(filepath.Join("testdata", rule.Name, "*.csv"))
		if err != nil || len(files) == 0 {
			t.Errorf("%s: no case files", rule.Name)
			continue
		}
		for _, file := range files {
			t.Run(rule.Name+"/"+filepath.Base(file), func(t *testing.T) { loadCase(t, file).check(t) })
		}
	}
}

// TestPublishedExamples runs examples that were published, each with its source.
func TestPublishedExamples(t *testing.T) {
	files, err := filepath.Glob(filepath.Join("testdata", "published", "*.csv"))
	if err != nil || len(files) == 0 {
		t.Fatal("no published examples")
	}
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) { loadCase(t, file).check(t) })
	}
}

// TestRegistry holds every rule to the form that a rule has.
func TestRegistry(t *testing.T) {
	name := regexp.MustCompile(`^[a-z]+(-[a-z]+)*$`)
	seen := map[string]bool{}
	for _, r := range Rules() {
		if !name.MatchString(r.Name) || seen[r.Name] {
			t.Errorf("%q is no kebab-case name, or used twice", r.Name)
		}
		seen[r.Name] = true
		if r.Title == "" || r.Why == "" || r.Check == nil || len(r.Silent) == 0 || len(r.Limits) == 0 {
			t.Errorf("%s: title, why, check, limits or silent cases are missing", r.Name)
		}
		for _, part := range []string{"## What to do", "## Worked example", "```csv"} {
			if !strings.Contains(r.Doc, part) {
				t.Errorf("%s: documentation lacks %q", r.Name, part)
			}
		}
		for _, l := range r.Limits {
			if l.Name == "" || l.Unit == "" || l.Source == "" {
				t.Errorf("%s: limit %+v lacks a name, unit or source", r.Name, l)
			}
			if l.Grade != Unknown && l.Name != l.Grade.String() && l.Name != "lowest" && l.Name != "highest" {
				t.Errorf("%s: limit %q grades %v", r.Name, l.Name, l.Grade)
			}
		}
	}
}

var example = regexp.MustCompile("(?s)```csv\n(.*?)```")

// TestWorkedExamples runs the example of every rule's documentation.
func TestWorkedExamples(t *testing.T) {
	for _, r := range Rules() {
		t.Run(r.Name, func(t *testing.T) {
			m := example.FindStringSubmatch(r.Doc)
			if m == nil {
				t.Fatal("no worked example")
			}
			if !strings.Contains(m[1], r.Name) && r.Name != "cannot-check" {
				t.Error("the example never shows the rule")
			}
			parseCase(t, r.Name+".md", m[1]).check(t)
		})
	}
}
