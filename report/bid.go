package report

import (
	"slices"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
)

// disagreements are the rules that hold one number of a document against another.
var disagreements = []string{"count-mismatch", "total-mismatch", "duplicate-tag", "loose-end", "measured-load-differs", "turned-into-date", "implausible", "voltage-mismatch"}

// DisagreementsTable is what does not add up or is written in two ways.
func (a *Audit) DisagreementsTable() Table {
	var fs []*audit.Finding
	for _, f := range a.Archive.Findings {
		if slices.Contains(disagreements, f.Rule.Name) {
			fs = append(fs, f)
		}
	}
	return Table{
		Name: "disagreements", Title: "Does not add up", Note: "Sums, counts, tags and figures of the documents that contradict each other, with the cells side by side.",
		Columns: []Column{counted("rank", "Rank"), text("grade", "Grade", 10), text("site", "Site", 20), text("rule", "Rule", 20), text("place", "Place", 22), long("message", "What disagrees", 50),
			long("one", "One place", 32), long("other", "The others", 40), figure("measured", "Figure", ""), figure("limit", "Against", ""), text("unit", "Unit", 12), text("file", "File", 28), text("id", "Id", 14)},
		Count: len(fs),
		Rows: func(yield func([]Value) bool) {
			sites := a.SiteNames()
			for _, f := range fs {
				one, other := sides(f)
				m := Value{}
				if v, ok := Measured(f); ok {
					m = finite(v)
				}
				limit := finite(f.Limit)
				if f.Limit == 0 && f.Unit == "" {
					limit = Value{}
				}
				if !yield([]Value{count(f.Rank), words(gradeText(f)), words(sites[f]), words(f.Rule.Name), words(f.Place), words(Found(f)), words(one), words(other),
					m, limit, words(f.Unit), words(f.At.File()), words(f.ID)}) {
					return
				}
			}
		},
	}
}

// maxSide is how many cells one side of a disagreement lists.
const maxSide = 6

// sides are the first cell of a finding and the others, each with its text.
func sides(f *audit.Finding) (one, other string) {
	cell := func(e audit.Evidence) string {
		s := e.At.String() + " " + quote(e.Written)
		if e.Role != "" {
			s += " (" + e.Role + ")"
		}
		return s
	}
	one = f.At.String()
	var rest []string
	for _, e := range f.Cells {
		switch {
		case e.At == f.At:
			one = cell(e)
		case len(rest) == maxSide:
			return one, strings.Join(rest, "; ") + "; and " + Plural(len(f.Cells)-1-maxSide, "cell") + " more"
		default:
			rest = append(rest, cell(e))
		}
	}
	return one, strings.Join(rest, "; ")
}

func quote(s string) string { return "\u201c" + Shorten(Plain(s), 40) + "\u201d" }

// UndersizedTable is what is listed too small, with the size that would do.
func (a *Audit) UndersizedTable() Table {
	type item struct {
		f *audit.Finding
		r audit.Remedy
	}
	var items []item
	for _, f := range a.Archive.Findings {
		for _, r := range f.Remedies {
			if r.Part != "" {
				items = append(items, item{f, r})
				break
			}
		}
	}
	return Table{
		Name: "undersized", Title: "Under-sized", Note: "What is listed too small, and the size that would do. Quantities, never prices.",
		Columns: []Column{counted("rank", "Rank"), text("grade", "Grade", 10), text("site", "Site", 20), text("place", "Item", 22), long("listed", "As listed", 26), long("message", "What it carries", 44),
			long("part", "Size that would do", 34), figure("before", "Before", ""), figure("after", "After", ""), text("unit", "Unit", 12), long("source", "Size from", 28), long("where", "Where", 30), text("id", "Id", 14)},
		Count: len(items),
		Rows: func(yield func([]Value) bool) {
			sites := a.SiteNames()
			for _, it := range items {
				if !yield([]Value{count(it.f.Rank), words(gradeText(it.f)), words(sites[it.f]), words(it.f.Place), words(listed(it.f)), words(Found(it.f)), words(it.r.Part),
					finite(it.r.Before), finite(it.r.After), words(it.r.Unit), words(it.r.Source), words(Where(it.f)), words(it.f.ID)}) {
					return
				}
			}
		},
	}
}

// listed is what the document lists: the rating or conductor as written.
func listed(f *audit.Finding) string {
	for _, e := range f.Cells {
		if e.Written != "" && (strings.Contains(e.Role, "rating") || strings.Contains(e.Role, "conductor") || strings.Contains(e.Role, "gauge") || strings.Contains(e.Role, "cable")) {
			return e.Role + " " + quote(e.Written)
		}
	}
	return ""
}

// CompletenessTable is, for each job, how much of the document was understood.
func (a *Audit) CompletenessTable() Table {
	return Table{
		Name: "completeness", Title: "Completeness", Note: "How much of each document was read, and what it leaves open. A superseded revision is named by the one that replaces it.",
		Columns: []Column{text("file", "File", 34), text("job", "Job", 24), text("revision", "Revision", 10), text("superseded", "Superseded by", 24), counted("tables", "Tables"), counted("rows_read", "Rows read"),
			counted("rows_left_out", "Rows left out"), counted("not_understood", "Rows not understood"), long("columns", "Columns not understood", 30), counted("assumptions", "Assumptions"),
			counted("questions", "Questions"), counted("unshown", "Checks not shown"), counted("passed", "Checks passed")},
		Count: len(a.Results()),
		Rows: func(yield func([]Value) bool) {
			for _, r := range a.Results() {
				j := r.Job
				row := []Value{words(j.File), words(JobName(j)), words(j.Revision.Value), words(r.SupersededBy)}
				e := a.extent(r)
				row = append(row, e[extentTables], count(j.RowsRead))
				if !yield(append(row, e[extentLeftOut:]...)) {
					return
				}
			}
		},
	}
}

// The columns of the list "extent", which has one row for each job.
const (
	extentTables = iota
	extentLeftOut
	extentNotUnderstood
)

// extentRows is how much of a document was understood.
func extentRows(r *audit.Result, yield func(...Value) bool) bool {
	j := r.Job
	lost := 0
	for _, l := range j.LeftOut {
		if l.Kind == schedule.NotUnderstood {
			lost++
		}
	}
	return yield(count(len(j.Tables)), count(len(j.LeftOut)), count(lost), words(unknownColumns(j)), count(len(r.Assumptions)), count(len(r.Questions)),
		count(len(r.Unshown)), count(len(r.Passed)))
}

// extent is the row of a job in that list.
func (a *Audit) extent(r *audit.Result) []Value {
	for row := range a.ofJob(r, "extent", extentRows) {
		return row
	}
	return make([]Value, 8) // the shelf failed, which ends the run
}

func unknownColumns(j *schedule.Job) string {
	var out []string
	for _, t := range j.Tables {
		for _, c := range t.Columns {
			if c.Field == "" && c.Header != "" {
				out = append(out, schedule.ColumnName(c.Col)+" "+quote(c.Header))
			}
		}
	}
	if len(out) > 8 {
		out = append(out[:8], "and more")
	}
	return strings.Join(out, ", ")
}

// SiteNames gives every finding of the current jobs the name of its site.
func (a *Audit) SiteNames() map[*audit.Finding]string {
	m := map[*audit.Finding]string{}
	for _, s := range a.Archive.Sites {
		for _, f := range s.Findings {
			m[f] = s.Name
		}
	}
	return m
}
