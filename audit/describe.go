package audit

import (
	"fmt"
	"strings"
)

// A Description is everything there is to say of a rule, from its values and
// the limits in force. Terminal, workbook and documentation write it, so that
// they cannot disagree with the checks.
type Description struct {
	Name, Title, Why string
	What             string         // what is looked at
	Do               string         // what to do about a finding
	Example          string         // a worked example in words
	ExampleRows      string         // the same as rows, run by a test
	Limits           []LimitInForce // in force, defaults or the house book's
	Silent           []string       // when it must stay silent
	Cautions         []string
	OnSite           string // what to look at or measure on site
}

// DescribeRules describes every rule with the limits in force, in the order of
// the documentation.
func DescribeRules(s *Settings) []Description {
	out := make([]Description, 0, len(registry))
	for _, r := range registry {
		d := Description{Name: r.Name, Title: r.Title, Why: r.Why, Limits: s.Limits(r), Silent: r.Silent, Cautions: r.Cautions, OnSite: r.OnSite}
		var example string
		d.What, example, _ = strings.Cut(r.Doc, "\n## What to do\n")
		d.Do, example, _ = strings.Cut(example, "\n## Worked example\n")
		d.Example, d.ExampleRows, _ = strings.Cut(example, "```csv\n")
		d.ExampleRows, _, _ = strings.Cut(d.ExampleRows, "```")
		d.What, d.Do, d.Example = oneLine(d.What), oneLine(d.Do), oneLine(d.Example)
		out = append(out, d)
	}
	return out
}

// oneLine joins the lines of a paragraph.
func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

// RulesMarkdown is the rules section of the documentation: one entry a rule,
// made of the values of the rules.
func RulesMarkdown(s *Settings) string {
	var b strings.Builder
	for _, d := range DescribeRules(s) {
		fmt.Fprintf(&b, "### %s\n\n%s. %s\n\n%s\n\n", d.Name, upperFirst(d.Title), d.Why, d.What)
		if len(d.Limits) > 0 {
			b.WriteString("| limit | value | use | source |\n| --- | --- | --- | --- |\n")
			for _, l := range d.Limits {
				value := withUnit(l.Value, l.Unit)
				if l.Off {
					value = "off"
				}
				source := l.Source
				if l.Note != "" {
					source += " (" + l.Note + ")"
				}
				fmt.Fprintf(&b, "| %s | %s | %s | %s |\n", l.Name, value, l.Use, source)
			}
			b.WriteString("\n")
		}
		b.WriteString("Silent when:\n\n")
		for _, text := range d.Silent {
			fmt.Fprintf(&b, "- %s\n", text)
		}
		fmt.Fprintf(&b, "\nWhat to do: %s\n\nOn site: %s.\n\nExample: %s\n\n", d.Do, d.OnSite, d.Example)
	}
	return strings.TrimRight(b.String(), "\n") + "\n"
}

func upperFirst(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
