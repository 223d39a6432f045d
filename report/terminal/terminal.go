// Package terminal writes the audit for one screen: the counts, the worst
// sites, the top findings, what could not be read, and where the rest is.
package terminal

import (
	"fmt"
	"io"
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
	Sites    int    // sites shown; 0 means 8
	Findings int    // findings shown; 0 means 12
	Out      string // the output folder, as the user named it
}

// Write writes the audit. The error is that of the writer.
func Write(w io.Writer, a *report.Audit, o Options) error {
	o.Width = max(o.Width, 72)
	if o.Sites == 0 {
		o.Sites = 8
	}
	if o.Findings == 0 {
		o.Findings = 12
	}
	var b strings.Builder
	b.WriteString(fold(Summary(a), o.Width))
	if !o.Quiet {
		sites(&b, a, o)
		findings(&b, a, o)
		unread(&b, a, o)
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

func sites(b *strings.Builder, a *report.Audit, o Options) {
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

func findings(b *strings.Builder, a *report.Audit, o Options) {
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
	site := siteOf(a)
	t := newTable(o)
	rest := o.Width - 17
	whereW, foundW := rest*32/100, rest*38/100
	doW := rest - whereW - foundW
	column := func(n, w int) table.ColumnConfig {
		return table.ColumnConfig{Number: n, WidthMax: w, WidthMaxEnforcer: wrap}
	}
	t.SetColumnConfigs([]table.ColumnConfig{right(1), {Number: 2, WidthMax: 8}, column(3, whereW), column(4, foundW), column(5, doW)})
	t.AppendHeader(table.Row{"#", "Grade", "Where", "Found", "Do"})
	for i, f := range shown {
		if i == o.Findings {
			break
		}
		grade := f.Grade.String()
		if f.Certainty == audit.Possible {
			grade += "?"
		}
		where := site[f] + ": " + f.Place + " (" + f.At.File + " " + at(f) + ")"
		t.AppendRow(table.Row{f.Rank, colour(o, f.Grade, grade), report.Plain(where), report.Plain(f.Message), report.Plain(todo(f))})
	}
	b.WriteString(trimmed(t.Render()))
	hidden(b, len(shown)-o.Findings, "finding", "findings")
	if below > 0 {
		fmt.Fprintf(b, "%s below %s: --grade shows them.\n", report.Plural(below, "finding"), a.Shown)
	}
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

func unread(b *strings.Builder, a *report.Audit, o Options) {
	t := newTable(o)
	nameW := max(20, (o.Width-4)*40/100)
	t.SetColumnConfigs([]table.ColumnConfig{{Number: 1, WidthMax: nameW, WidthMaxEnforcer: wrap},
		{Number: 2, WidthMax: o.Width - nameW - 3, WidthMaxEnforcer: wrap}})
	n := 0
	for _, kind := range []report.Kind{report.Unreadable, report.NotSchedule} {
		for _, f := range a.Files {
			if f.Kind == kind {
				n++
				if n <= 12 {
					t.AppendRow(table.Row{report.Plain(f.Name), report.Plain(string(f.Kind) + ": " + f.Reason)})
				}
			}
		}
	}
	if n == 0 {
		return
	}
	heading(b, o, "Not audited")
	b.WriteString(trimmed(t.Render()))
	hidden(b, n-12, "file", "files")
}

func rest(b *strings.Builder, a *report.Audit, o Options) {
	broken := 0
	for _, r := range a.Results() {
		broken += len(r.Broken)
	}
	if broken > 0 {
		fmt.Fprintf(b, "\n%s failed to run and decided nothing; see the rules sheet.\n", report.Plural(broken, "check"))
	}
	for i, text := range a.Unwritten {
		if i == 5 {
			hidden(b, len(a.Unwritten)-i, "file", "files")
			break
		}
		b.WriteString("\n" + fold("Not written: "+report.Plain(text), o.Width))
	}
	if o.Out != "" {
		b.WriteString("\n" + fold(fmt.Sprintf("Everything is in %s: audit.html to read, audit.xlsx to work in, marked/ with the findings on their cells, the tables as CSV.", report.Plain(o.Out)), o.Width))
	}
	b.WriteString(fold("This audits paper: it says what was written, not what was built. Confirm on site. Line voltages are hazardous; local codes and a licensed practitioner decide.", o.Width))
}

// siteOf gives every finding the name of its site.
func siteOf(a *report.Audit) map[*audit.Finding]string {
	m := map[*audit.Finding]string{}
	for _, s := range a.Archive.Sites {
		for _, f := range s.Findings {
			m[f] = s.Name
		}
	}
	return m
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

// wrap breaks a text between words, and a word that is too long anywhere.
func wrap(s string, width int) string {
	var lines []string
	line := ""
	for word := range strings.FieldsSeq(s) {
		for text.StringWidthWithoutEscSequences(word) > width {
			if line != "" {
				lines, line = append(lines, line), ""
			}
			head := text.Trim(word, width)
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
	case f.At.Sheet == "":
		return cell
	case cell == "":
		return f.At.Sheet
	default:
		return f.At.Sheet + "!" + cell
	}
}
