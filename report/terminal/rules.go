package terminal

import (
	"cmp"
	"path"
	"strings"

	"github.com/jedib0t/go-pretty/v6/table"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/report"
)

// Rules lists every rule with the limits in force. A width of 0 is taken as 100.
func Rules(s *audit.Settings, width int) string {
	o := Options{Width: screenWidth(width)}
	t := newTable(o)
	rest := o.Width - 28
	t.SetColumnConfigs([]table.ColumnConfig{{Number: 1}, {Number: 2, WidthMax: rest / 2, WidthMaxEnforcer: wrap},
		{Number: 3, WidthMax: rest - rest/2, WidthMaxEnforcer: wrap}})
	t.AppendHeader(table.Row{"Rule", "Finds", "Limits"})
	for _, r := range audit.Rules() {
		limits, _ := s.Describe(r)
		t.AppendRow(table.Row{r.Name, r.Title, limits})
	}
	return trimmed(t.Render()) + "\nlineaudit rules NAME tells one in full. A limit met exactly passes.\n"
}

// Rule tells one rule in full.
func Rule(r *audit.Rule, s *audit.Settings, width int) string {
	o := Options{Width: min(screenWidth(width), 100)}
	var b strings.Builder
	para := func(title, words string) {
		if words != "" {
			b.WriteString("\n" + title + "\n" + fold(words, o.Width))
		}
	}
	b.WriteString(r.Name + ": " + r.Title + "\n")
	para("Why it matters", r.Why)
	if limits := s.Limits(r); len(limits) > 0 {
		b.WriteString("\nLimits\n")
		for _, l := range limits {
			text := "- " + l.String()
			if l.Note != "" {
				text += " (" + l.Note + ")"
			}
			b.WriteString(fold(text+"; source: "+l.Source, o.Width))
		}
	}
	if len(r.Silent) > 0 {
		b.WriteString("\nSilent when\n")
		for _, w := range r.Silent {
			b.WriteString(fold("- "+w, o.Width))
		}
	}
	para("Cautions", strings.Join(r.Cautions, " "))
	b.WriteString("\nWhat is compared\n" + told(r.Doc, o.Width))
	return b.String()
}

// told is the page of a rule for a screen: headings bare, paragraphs folded. The
// table of its worked example is for the tests alone.
func told(doc string, width int) string {
	var b strings.Builder
	for part := range strings.SplitSeq(strings.TrimSpace(doc), "\n\n") {
		title, heading := strings.CutPrefix(part, "## ")
		switch {
		case strings.HasPrefix(part, "```") || part == "":
		case heading:
			b.WriteString("\n" + title + "\n")
		default:
			b.WriteString(fold(strings.ReplaceAll(part, "\n", " "), width))
		}
	}
	return b.String()
}

func screenWidth(width int) int {
	if width == 0 {
		return 100
	}
	return max(width, 72)
}

// HouseProblems tells every error of a house book by sheet and cell.
func HouseProblems(name string, problems []schedule.HouseError) string {
	t := newTable(Options{})
	t.SetColumnConfigs([]table.ColumnConfig{{Number: 1}, {Number: 2}, {Number: 3, WidthMax: 90, WidthMaxEnforcer: wrap}})
	t.AppendHeader(table.Row{"Sheet", "Cell", "What is wrong"})
	for _, p := range problems {
		t.AppendRow(table.Row{report.Plain(cmp.Or(p.At.Sheet(), path.Base(p.At.File()))), p.At.Cell(), report.Plain(p.Text)})
	}
	return "lineaudit: the house book " + report.Plain(name) + " has " + report.Plural(len(problems), "error") + "; nothing was read.\n" + trimmed(t.Render())
}
