// Package terminal writes the audit for one screen: the counts, the worst
// sites, the top findings, what could not be read, and where the rest is.
package terminal

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/jedib0t/go-pretty/v6/table"
	"github.com/jedib0t/go-pretty/v6/text"

	"lineaudit/audit"
	"lineaudit/report"
)

// Options say what the screen is like and how much to show.
type Options struct {
	Width    int    // columns; at least 72 are used
	Colour   bool   // never the only sign of anything
	Quiet    bool   // the summary line alone
	Sites    int    // sites shown; 0 means 8, on a narrow screen 6
	Findings int    // findings shown; 0 means 12, on a narrow screen 6
	Out      string // the output folder, as the user named it
}

// Write writes the audit. The error is that of the writer.
func Write(w io.Writer, a *report.Audit, o Options) error {
	o.Width = max(o.Width, 72)
	sites, findings := 8, 12
	if o.Width < tableFrom {
		sites, findings = 6, 6
	}
	o.Sites, o.Findings = cmp.Or(o.Sites, sites), cmp.Or(o.Findings, findings)
	var b strings.Builder
	b.WriteString(fold(Summary(a), o.Width))
	if !o.Quiet {
		listSites(&b, a, o)
		listFindings(&b, a, o)
		listUnread(&b, a, o)
		rest(&b, a, o)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// Summary is the audit in one line.
func Summary(a *report.Audit) string {
	n := a.Archive.Counts
	var other []string
	kinds := map[report.Kind]int{}
	for _, f := range a.Files {
		kinds[f.Kind]++
	}
	if k := kinds[report.NotSchedule]; k > 0 {
		other = append(other, report.Plural(k, "file")+" no schedule")
	}
	if k := kinds[report.Unreadable]; k > 0 {
		other = append(other, report.Plural(k, "file")+" not readable")
	}
	if n.Superseded > 0 {
		other = append(other, report.Plural(n.Superseded, "job")+" superseded")
	}
	if len(other) == 0 {
		other = append(other, "every file read")
	}
	s := fmt.Sprintf("%s at %s in %s (%s): %d danger, %d fault, %d caution, %d unknown; %s passed, %d could not be shown, %s.",
		report.Plural(n.Jobs, "job"), report.Plural(len(a.Archive.Sites), "site"), report.Plural(len(a.Files), "file"), strings.Join(other, ", "),
		n.Danger, n.Fault, n.Caution, n.Unknown, report.Plural(n.Passed, "check"), n.Unshown, report.Plural(n.Questions, "question"))
	return s
}

func listSites(b *strings.Builder, a *report.Audit, o Options) {
	if len(a.Archive.Sites) == 0 {
		return
	}
	heading(b, o, "Sites, worst first")
	t := newTable(o)
	nameW := max(18, (o.Width-36)*45/100)
	worstW := max(16, o.Width-36-nameW)
	t.SetColumnConfigs([]table.ColumnConfig{right(1), {Number: 2, WidthMax: nameW, WidthMaxEnforcer: wrap}, right(3), right(4), right(5), right(6),
		{Number: 7, WidthMax: worstW, WidthMaxEnforcer: wrap}})
	t.AppendHeader(table.Row{"#", "Site", "Score", "Dang.", "Fault", "Caut.", "Worst"})
	for i, s := range a.Archive.Sites {
		if i == o.Sites {
			break
		}
		worst := "nothing found"
		if len(s.Findings) > 0 {
			worst = s.Findings[0].Rule.Name + ", " + s.Findings[0].Place
		}
		t.AppendRow(table.Row{s.Place, report.Plain(s.Name), report.Figure(s.Score), s.Counts.Danger, s.Counts.Fault, s.Counts.Caution, report.Plain(worst)})
	}
	b.WriteString(trimmed(t.Render()))
	hidden(b, len(a.Archive.Sites)-o.Sites, "site", "sites")
}

func listFindings(b *strings.Builder, a *report.Audit, o Options) {
	var shown []*audit.Finding
	below := 0
	for _, f := range a.Archive.Findings {
		if f.Grade >= a.Shown {
			shown = append(shown, f)
		} else {
			below++
		}
	}
	if len(shown) == 0 {
		if below > 0 {
			fmt.Fprintf(b, "\nNo finding at or above %s; %s below it.\n", a.Shown, report.Plural(below, "finding"))
		} else if len(a.Archive.Results) > 0 {
			b.WriteString("\nNo findings. What could not be shown is in questions.csv.\n")
		}
		return
	}
	heading(b, o, "Findings, worst first")
	sites := a.SiteNames()
	if o.Width >= tableFrom {
		findingsTable(b, shown[:min(len(shown), o.Findings)], sites, o)
	} else {
		findingsList(b, shown[:min(len(shown), o.Findings)], sites, o)
	}
	hidden(b, len(shown)-o.Findings, "finding", "findings")
	if below > 0 {
		fmt.Fprintf(b, "%s below %s: --grade shows them.\n", report.Plural(below, "finding"), a.Shown)
	}
}

// tableFrom is the width from which findings stand in a table; on a narrower
// screen each has lines of its own.
const tableFrom = 110

func findingsTable(b *strings.Builder, shown []*audit.Finding, sites map[*audit.Finding]string, o Options) {
	t := newTable(o)
	rest := o.Width - 17
	whereW, foundW := rest*30/100, rest*40/100
	doW := rest - whereW - foundW
	column := func(n, w int) table.ColumnConfig {
		return table.ColumnConfig{Number: n, WidthMax: w, WidthMaxEnforcer: wrap}
	}
	t.SetColumnConfigs([]table.ColumnConfig{right(1), {Number: 2, WidthMax: 8}, column(3, whereW), column(4, foundW), column(5, doW)})
	t.AppendHeader(table.Row{"#", "Grade", "Where", "Found", "Do"})
	for _, f := range shown {
		where := wrap(placeOf(f, sites), whereW) + "\n" + fileAndCell(f, whereW)
		t.AppendRow(table.Row{f.Rank, colour(o, f.Grade, sign(f)), where, atMost(wrap(report.Plain(report.Found(f)), foundW), 5, foundW), atMost(wrap(report.Plain(todo(f)), doW), 4, doW)})
	}
	b.WriteString(trimmed(t.Render()))
}

// findingsList tells each finding in lines of its own: place, fact, what to do, cell.
func findingsList(b *strings.Builder, shown []*audit.Finding, sites map[*audit.Finding]string, o Options) {
	const indent = 12
	block := func(text string, most int) {
		for line := range strings.SplitSeq(atMost(wrap(text, o.Width-indent), most, o.Width-indent), "\n") {
			b.WriteString(strings.Repeat(" ", indent) + line + "\n")
		}
	}
	for _, f := range shown {
		first, more, _ := strings.Cut(wrap(placeOf(f, sites), o.Width-indent), "\n")
		fmt.Fprintf(b, "%2d %s%s%s\n", f.Rank, colour(o, f.Grade, sign(f)), strings.Repeat(" ", max(1, indent-3-len(sign(f)))), first)
		if more != "" {
			block(more, 2)
		}
		block(report.Plain(report.Found(f)), 3)
		if do := todo(f); do != "" {
			block("> "+report.Plain(do), 2)
		}
		block(fileAndCell(f, o.Width-indent), 2)
	}
}

// cut cuts a line to a width on the screen.
func cut(s string, width int) string { return strings.TrimRight(text.Trim(s, width), " ") }

// sign is the grade, with a question mark where it is possible.
func sign(f *audit.Finding) string {
	if f.Certainty == audit.Possible {
		return f.Grade.String() + "?"
	}
	return f.Grade.String()
}

// placeOf is the site, the room and the place of a finding.
func placeOf(f *audit.Finding, sites map[*audit.Finding]string) string {
	site := sites[f]
	if f.Room != "" && !strings.EqualFold(f.Room, site) {
		site += ", " + f.Room
	}
	return report.Plain(site + ": " + f.Place)
}

// fileAndCell is where a finding stands in its file; of a path that is too
// long, the end.
func fileAndCell(f *audit.Finding, width int) string {
	cell := " " + report.Plain(at(f))
	file := report.Plain(f.At.File())
	room := width - text.StringWidthWithoutEscSequences(cell)
	for text.StringWidthWithoutEscSequences(file) > room {
		_, rest, found := strings.Cut(strings.TrimPrefix(file, "…/"), "/")
		if !found {
			break
		}
		file = "…/" + rest
	}
	return wrap(file+cell, width)
}

// todo is the remedy in a few words.
func todo(f *audit.Finding) string {
	switch {
	case len(f.Remedies) > 0 && f.Remedies[0].Short != "":
		return f.Remedies[0].Short
	case len(f.Remedies) > 0:
		return f.Remedies[0].Change
	case f.NoRemedy != "":
		return f.NoRemedy
	}
	return f.Ask
}

// mostUnread is how many files that were not audited are listed.
const mostUnread = 8

func listUnread(b *strings.Builder, a *report.Audit, o Options) {
	t := newTable(o)
	nameW := max(20, (o.Width-4)*40/100)
	reasonW := o.Width - nameW - 3
	t.SetColumnConfigs([]table.ColumnConfig{{Number: 1, WidthMax: nameW, WidthMaxEnforcer: wrap}, {Number: 2, WidthMax: reasonW, WidthMaxEnforcer: wrap}})
	n := 0
	for _, kind := range []report.Kind{report.Unreadable, report.NotSchedule} {
		for _, f := range a.Files {
			if f.Kind != kind {
				continue
			}
			if n++; n <= mostUnread {
				t.AppendRow(table.Row{report.Plain(f.Name), atMost(wrap(report.Plain(string(f.Kind)+": "+f.Reason), reasonW), 3, reasonW)})
			}
		}
	}
	if n == 0 {
		return
	}
	heading(b, o, "Not audited")
	b.WriteString(trimmed(t.Render()))
	hidden(b, n-mostUnread, "file", "files")
}

// atMost keeps the first lines of a wrapped text and marks a cut.
func atMost(s string, most, width int) string {
	lines := strings.Split(s, "\n")
	if len(lines) <= most {
		return s
	}
	lines = lines[:most]
	lines[most-1] = cut(lines[most-1], width-1) + "…"
	return strings.Join(lines, "\n")
}

func rest(b *strings.Builder, a *report.Audit, o Options) {
	broken := 0
	for _, r := range a.Results() {
		broken += len(r.Broken)
	}
	if broken > 0 {
		fmt.Fprintf(b, "\n%s failed to run and decided nothing; see the sheet Not examined.\n", report.Plural(broken, "check"))
	}
	for i, text := range a.Unwritten {
		if i == 5 {
			hidden(b, len(a.Unwritten)-i, "file", "files")
			break
		}
		b.WriteString("\n" + fold("Not written: "+report.Plain(text), o.Width))
	}
	if n := len(a.Beside); n > 0 {
		b.WriteString("\n" + fold(fmt.Sprintf("%s could not be marked in place; the findings stand in a workbook of their own that says why.", report.Plural(n, "workbook")), o.Width))
	}
	if o.Out != "" {
		marked := ""
		if slices.ContainsFunc(a.Results(), func(r *audit.Result) bool { return len(r.Findings) > 0 }) {
			marked = " marked/ with the findings on their cells,"
		}
		b.WriteString("\n" + fold(fmt.Sprintf("Everything is in %s: audit.html to read, audit.xlsx to work in,%s the tables as CSV.", report.Plain(o.Out), marked), o.Width))
	}
	b.WriteString(fold("This audits paper: it says what was written, not what was built. Confirm on site. Line voltages are hazardous; local codes and a licensed practitioner decide.", o.Width))
}

func newTable(o Options) table.Writer {
	t := table.NewWriter()
	style := table.StyleLight
	style.Options = table.OptionsNoBordersAndSeparators
	style.Options.SeparateHeader = true
	style.Format.Header = text.FormatDefault
	style.Box.PaddingLeft, style.Box.PaddingRight = "", "  "
	style.Box.MiddleHorizontal = "-"
	t.SetStyle(style)
	return t
}

func right(n int) table.ColumnConfig {
	return table.ColumnConfig{Number: n, Align: text.AlignRight, AlignHeader: text.AlignRight}
}

// colour paints a word by its grade; the word itself is the sign.
func colour(o Options, g audit.Grade, s string) string {
	if !o.Colour {
		return s
	}
	code := map[audit.Grade]string{audit.Danger: "1;31", audit.Fault: "31", audit.Caution: "33", audit.Unknown: "36"}[g]
	return "\x1b[" + code + "m" + s + "\x1b[0m"
}

func heading(b *strings.Builder, o Options, s string) {
	b.WriteString("\n")
	if o.Colour {
		s = "\x1b[1m" + s + "\x1b[0m"
	}
	b.WriteString(s + "\n")
}

func hidden(b *strings.Builder, n int, one, many string) {
	switch {
	case n == 1:
		fmt.Fprintf(b, "... and 1 more %s.\n", one)
	case n > 1:
		fmt.Fprintf(b, "... and %d more %s.\n", n, many)
	}
}

// trimmed takes the blanks off the line ends of a rendered table.
func trimmed(s string) string {
	lines := strings.Split(s, "\n")
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " ")
	}
	return strings.Join(lines, "\n") + "\n"
}

// wrap breaks a text between words, and a word that is too long behind a mark
// such as a slash, else anywhere. Lines that are there stay.
func wrap(s string, width int) string {
	if strings.Contains(s, "\n") {
		parts := strings.Split(s, "\n")
		for i := range parts {
			parts[i] = wrap(parts[i], width)
		}
		return strings.Join(parts, "\n")
	}
	var lines []string
	line := ""
	for word := range strings.FieldsSeq(s) {
		for text.StringWidthWithoutEscSequences(word) > width {
			if line != "" {
				lines, line = append(lines, line), ""
			}
			head := text.Trim(word, width)
			if i := strings.LastIndexAny(head, "/_-.,;:!"); i > len(head)/3 {
				head = head[:i+1]
			}
			lines, word = append(lines, head), strings.TrimPrefix(word, head)
		}
		switch {
		case line == "":
			line = word
		case text.StringWidthWithoutEscSequences(line)+1+text.StringWidthWithoutEscSequences(word) <= width:
			line += " " + word
		default:
			lines, line = append(lines, line), word
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	return strings.Join(lines, "\n")
}

// fold breaks a sentence into lines no wider than the screen.
func fold(s string, width int) string { return wrap(s, width) + "\n" }

// at is the sheet and cell of a finding.
func at(f *audit.Finding) string {
	switch cell := f.At.Cell(); {
	case f.At.Sheet() == "":
		return cell
	case cell == "":
		return f.At.Sheet()
	default:
		return f.At.Sheet() + "!" + cell
	}
}
