package terminal

import (
	"cmp"
	"fmt"
	"reflect"
	"strings"

	"github.com/jedib0t/go-pretty/v6/table"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/report"
)

// Reading shows how a file was understood: its jobs, tables, columns with the
// field each was taken for and why, rows left out, assumptions and questions.
func Reading(f report.File, width int, brief bool) string {
	o := Options{Width: screenWidth(width)}
	var b strings.Builder
	line := f.Name + ": " + string(f.Kind)
	if f.Format != "" {
		line += " (" + f.Format + ")"
	}
	if f.Reason != "" {
		line += ": " + f.Reason
	}
	b.WriteString(fold(report.Plain(line), o.Width))
	for _, r := range f.Results {
		job(&b, r.Job, o, brief)
	}
	leftOut(&b, f.NotTables, o, brief)
	return b.String()
}

func job(b *strings.Builder, j *schedule.Job, o Options, brief bool) {
	var what strings.Builder
	what.WriteString(fmt.Sprintf("job %q at %q", report.JobName(j), j.Site.Value))
	for _, t := range []struct {
		name string
		text schedule.Text
	}{{"number", j.Number}, {"revision", j.Revision}, {"date", j.Date}} {
		if t.text.Value != "" {
			what.WriteString(", " + t.name + " " + t.text.Value)
		}
	}
	if v, ok := j.LineVolts.Exact(); ok {
		what.WriteString(", line " + report.Figure(float64(v)) + " V")
	}
	b.WriteString("\n" + fold(report.Plain(what.String()), o.Width))
	b.WriteString(fold(strings.Join([]string{report.Plural(len(j.Loudspeakers), "loudspeaker row"), report.Plural(len(j.Zones), "zone"), report.Plural(len(j.Controls), "control"),
		report.Plural(len(j.Amplifiers), "amplifier"), report.Plural(len(j.Channels), "channel"), report.Plural(len(j.Cables), "cable")}, ", ")+
		fmt.Sprintf("; %s read, %d left out.", report.Plural(j.RowsRead, "row"), len(j.LeftOut)), o.Width))
	if brief {
		return
	}
	for _, t := range j.Tables {
		columns(b, t, o)
	}
	leftOut(b, j.LeftOut, o, brief)
	assumptions(b, j.Assumptions, o)
	questions(b, j.Questions, o)
}

func columns(b *strings.Builder, t schedule.Table, o Options) {
	turned := ""
	if t.Transposed {
		turned = ", turned"
	}
	b.WriteString("\n" + fold(report.Plain(fmt.Sprintf("%s %s: %s%s; %d rows read, %d left out", t.Sheet, t.Range, t.Kind, turned, t.RowsRead, t.RowsLeft)), o.Width))
	w := newTable(o)
	rest := o.Width - 34
	w.SetColumnConfigs([]table.ColumnConfig{{Number: 1}, {Number: 2, WidthMax: rest / 4, WidthMaxEnforcer: wrap}, {Number: 3, WidthMax: 16, WidthMaxEnforcer: wrap}, right(4),
		{Number: 5, WidthMax: rest * 5 / 12, WidthMaxEnforcer: wrap}, {Number: 6, WidthMax: rest / 3, WidthMaxEnforcer: wrap}})
	w.AppendHeader(table.Row{"Col", "Header", "Field", "Sure", "Why", "Samples"})
	for _, c := range t.Columns {
		field := cmp.Or(c.Field, "-")
		if c.Unit != "" {
			field += " (" + c.Unit + ")"
		}
		if c.RunnerUp != "" {
			field += ", or " + c.RunnerUp + "?"
		}
		sure := ""
		if c.Field != "" {
			sure = fmt.Sprintf("%.0f%%", c.Confidence*100)
		}
		col := schedule.ColumnName(c.Col)
		if t.Transposed {
			col = fmt.Sprint("row ", c.Col)
		}
		w.AppendRow(table.Row{col, report.Plain(c.Header), field, sure, report.Plain(c.Evidence), report.Plain(strings.Join(c.Samples, " | "))})
	}
	b.WriteString(trimmed(w.Render()))
}

// listed is how many lines of a list the reading shows.
const listed = 40

func leftOut(b *strings.Builder, rows []schedule.LeftOut, o Options, brief bool) {
	if len(rows) == 0 || brief {
		return
	}
	heading(b, o, "Rows left out")
	w := newTable(o)
	rest := o.Width - 18
	w.SetColumnConfigs([]table.ColumnConfig{{Number: 1, WidthMax: 16, WidthMaxEnforcer: wrap}, {Number: 2, WidthMax: rest / 2, WidthMaxEnforcer: wrap}, {Number: 3, WidthMax: rest - rest/2, WidthMaxEnforcer: wrap}})
	for i, r := range rows {
		if i < listed {
			w.AppendRow(table.Row{report.Plain(r.At.String()), string(r.Kind) + ": " + report.Plain(r.Reason), report.Plain(report.Shorten(r.Text, 160))})
		}
	}
	b.WriteString(trimmed(w.Render()))
	hidden(b, len(rows)-listed, "row", "rows")
}

func assumptions(b *strings.Builder, as []schedule.Assumption, o Options) {
	if len(as) == 0 {
		return
	}
	heading(b, o, "Taken for granted")
	for i, a := range as {
		if i < listed {
			b.WriteString(fold(report.Plain(assumed(a)), o.Width))
		}
	}
	hidden(b, len(as)-listed, "assumption", "assumptions")
}

// quoted is a text as it was written, in quotes that it does not hold itself.
func quoted(s string) string {
	if strings.Contains(s, `"`) {
		return "“" + s + "”"
	}
	return `"` + s + `"`
}

func assumed(a schedule.Assumption) string {
	s := fmt.Sprintf("- %s, %s: ", a.At, a.Field)
	if a.Written != "" {
		s += quoted(a.Written) + " "
	}
	s += "taken as " + a.TakenAs + " (" + a.How.String()
	if a.Because != "" {
		s += "; " + a.Because
	}
	return s + ")"
}

func questions(b *strings.Builder, qs []schedule.Question, o Options) {
	if len(qs) == 0 {
		return
	}
	heading(b, o, "Questions")
	for i, q := range qs {
		if i < listed {
			b.WriteString(fold(report.Plain(fmt.Sprintf("- %s: %s", q.At, q.Text)), o.Width))
		}
	}
	hidden(b, len(qs)-listed, "question", "questions")
}

// Explain tells the story of one cell: the table and column it stands in, what
// it was taken for and why, the values that came of it, what was taken for
// granted, and the findings that rest on it. It returns "" when the file says
// nothing of the cell.
func Explain(f report.File, at schedule.Ref, width int) string {
	o := Options{Width: screenWidth(width)}
	var lines []string
	say := func(format string, args ...any) { lines = append(lines, report.Plain(fmt.Sprintf(format, args...))) }
	for _, l := range f.NotTables {
		if l.At.Sheet() == at.Sheet() && l.At.Row == at.Row {
			say("Its row was left out: %s, %s.", l.Kind, l.Reason)
		}
	}
	for _, r := range f.Results {
		j := r.Job
		for _, t := range j.Tables {
			for _, c := range t.Columns {
				across, along := c.Col == int(at.Col), int(at.Row)
				if t.Transposed {
					across, along = c.Col == int(at.Row), int(at.Col)
				}
				if t.Sheet != at.Sheet() || !across || !inside(t.Range, at) {
					continue
				}
				say("It stands in the table of %s at %s!%s, under the header %q, read as %s (%.0f %% sure).", t.Kind, t.Sheet, t.Range, c.Header, cmp.Or(c.Field, "a column that was not understood"), c.Confidence*100)
				if c.Evidence != "" {
					say("Why: %s.", c.Evidence)
				}
				if c.RunnerUp != "" {
					say("The next best reading was %s; the house book can settle it.", c.RunnerUp)
				}
				if along == t.HeaderRow {
					say("It is the header itself.")
				}
			}
		}
		for _, v := range valuesAt(j, at) {
			say("%s", v)
		}
		for _, l := range j.LeftOut {
			if l.At.Sheet() == at.Sheet() && l.At.Row == at.Row {
				say("Its row was left out: %s, %s.", l.Kind, l.Reason)
			}
		}
		for _, a := range r.Assumptions {
			if a.At.Sheet() == at.Sheet() && a.At.Row == at.Row && a.At.Col == at.Col {
				say("Taken for granted: %s taken as %s (%s; %s).", a.Field, a.TakenAs, a.How, a.Because)
			}
		}
		for _, q := range r.Questions {
			if q.At.Sheet() == at.Sheet() && q.At.Row == at.Row && q.At.Col == at.Col {
				say("Question: %s", q.Text)
			}
		}
		for _, x := range r.Findings {
			for _, e := range x.Cells {
				if e.At.Sheet() == at.Sheet() && e.At.Row == at.Row && e.At.Col == at.Col {
					say("The finding %s (%s) at %s rests on it: %s", x.Rule.Name, x.Grade, x.Place, x.Message)
					break
				}
			}
		}
	}
	var b strings.Builder
	for _, l := range lines {
		b.WriteString(fold(l, o.Width))
	}
	return b.String()
}

// inside reports whether a range in A1 form holds the cell.
func inside(area string, at schedule.Ref) bool {
	r, ok := parseRange(area)
	return !ok || r.Contains(int(at.Row), int(at.Col))
}

// valuesAt lists the values of a job that were written in a cell.
func valuesAt(j *schedule.Job, at schedule.Ref) []string {
	var out []string
	sourceType := reflect.TypeFor[schedule.Source]()
	var walk func(name string, v reflect.Value)
	walk = func(name string, v reflect.Value) {
		if v.Kind() != reflect.Struct {
			return
		}
		if f := v.FieldByName("Source"); f.IsValid() && f.Type() == sourceType {
			s := f.Interface().(schedule.Source)
			if s.Had() && s.At.Sheet() == at.Sheet() && s.At.Row == at.Row && s.At.Col == at.Col {
				text := fmt.Sprintf("It says %s = %s (%s", name, valueWords(v), s.How)
				if s.Written != "" {
					text += ", written " + quoted(s.Written)
				}
				if s.Because != "" {
					text += ", " + s.Because
				}
				out = append(out, text+").")
			}
			return
		}
		for i := range v.NumField() {
			if field := v.Type().Field(i); field.IsExported() && v.Field(i).Kind() == reflect.Struct && field.Type != reflect.TypeFor[schedule.Ref]() {
				walk(name+" "+words(field.Name), v.Field(i))
			}
		}
	}
	job := reflect.ValueOf(j).Elem()
	walk("job", job)
	for _, field := range job.Fields() {
		if field.Kind() != reflect.Slice || field.Type().Elem().Kind() != reflect.Pointer {
			continue
		}
		for k := range field.Len() {
			part := field.Index(k).Elem()
			walk(strings.ToLower(part.Type().Name())+" "+partName(part), part)
		}
	}
	return out
}

func partName(part reflect.Value) string {
	if f := part.FieldByName("Name"); f.IsValid() && f.Kind() == reflect.String {
		return f.String() + ":"
	}
	if f := part.FieldByName("Tag"); f.IsValid() {
		return f.Interface().(schedule.Text).Value + ":"
	}
	return ""
}

// words splits a field's name: "LineVolts" reads "line volts".
func words(name string) string {
	var b strings.Builder
	for i, r := range name {
		if i > 0 && r >= 'A' && r <= 'Z' && name[i-1] >= 'a' {
			b.WriteByte(' ')
		}
		b.WriteRune(r)
	}
	return strings.ToLower(b.String())
}

func valueWords(v reflect.Value) string {
	if f := v.FieldByName("Value"); f.IsValid() {
		return fmt.Sprintf("%q", f.String())
	}
	if f := v.FieldByName("Yes"); f.IsValid() {
		if f.Bool() {
			return "yes"
		}
		return "no"
	}
	low, high := v.FieldByName("Low"), v.FieldByName("High")
	if !low.IsValid() {
		return "?"
	}
	unit := map[string]string{"Watts": " W", "Volts": " V", "Ohms": " ohm", "Metres": " m", "SquareMM": " mm2", "Decibels": " dB", "Celsius": " degC", "Millimetres": " mm"}[low.Type().Name()]
	if low.Float() == high.Float() {
		return report.Figure(low.Float()) + unit
	}
	return report.Figure(low.Float()) + " to " + report.Figure(high.Float()) + unit
}

func parseRange(area string) (grid.Range, bool) {
	from, to, ok := strings.Cut(area, ":")
	if !ok {
		return grid.Range{}, false
	}
	r1, c1, err1 := grid.ParseA1(from)
	r2, c2, err2 := grid.ParseA1(to)
	return grid.Range{Row1: r1, Col1: c1, Row2: r2, Col2: c2}, err1 == nil && err2 == nil
}
