package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
)

// FindingsTable has every finding in rank order; those of superseded jobs follow without a rank.
func (a *Audit) FindingsTable() Table {
	return Table{
		Name: "findings", Title: "Findings", Note: "Ranked over the whole archive: score = 100 x severity x extent x reach x certainty.",
		Columns: []Column{counted("rank", "Rank"), figure("score", "Score", ""), text("grade", "Grade", 9), text("certainty", "Certainty", 12), text("rule", "Rule", 22),
			text("job", "Job", 22), text("site", "Site", 22), text("place", "Place", 24), text("file", "File", 28), text("sheet", "Sheet", 16),
			text("cell", "Cells", 14), figure("measured", "Measured", ""), figure("limit", "Limit", ""), text("unit", "Unit", 12),
			dataOnly(figure("measured_low", "At least", "")), dataOnly(figure("measured_high", "At most", "")), long("remedy", "Remedy", 44), dataOnly(text("id", "Id", 14)),
			long("message", "What was found", 60), figure("severity", "Severity", ""), figure("extent", "Extent", ""), figure("reach", "Reach", ""),
			figure("certainty_factor", "Certainty factor", ""), text("room", "Room", 18), text("zone", "Zone", 18), long("higher", "Possibly worse", 30), long("ask", "To settle it", 36),
			long("source", "Limit from", 40), long("cautions", "Cautions", 60), text("superseded", "Superseded by", 20)},
		Count: len(a.AllFindings()),
		Rows: func(yield func([]Value) bool) {
			superseded := map[*audit.Finding]string{}
			jobs := map[*audit.Finding]*schedule.Job{}
			for _, r := range a.Results() {
				for _, f := range r.Findings {
					jobs[f] = r.Job
					superseded[f] = r.SupersededBy
				}
			}
			for _, f := range a.AllFindings() {
				j := jobs[f]
				if j == nil {
					continue
				}
				m := Value{}
				if v, ok := Measured(f); ok {
					m = finite(v)
				}
				rank := Value{}
				if f.Rank > 0 {
					rank = count(f.Rank)
				}
				found := Found(f)
				if by := superseded[f]; by != "" {
					found += "; superseded by " + by
				}
				limit := finite(f.Limit)
				if f.Limit == 0 && f.Unit == "" { // a rule without a limit
					limit = Value{}
				}
				row := []Value{rank, number(f.Score), words(f.Grade.String()), words(f.Certainty.String()), words(f.Rule.Name),
					words(JobName(j)), words(j.Site.Value), words(f.Place), words(f.At.File()), words(f.At.Sheet()), words(Cells(f)),
					m, limit, words(f.Unit), low(f.Measured), high(f.Measured), words(RemedyText(f)), words(f.ID), words(found),
					number(f.Factors.Severity), number(f.Factors.Extent), number(f.Factors.Reach), number(f.Factors.Certainty),
					words(f.Room), words(f.Zone), words(f.Higher), words(f.Ask), words(f.LimitSource), words(strings.Join(f.Cautions, " ")), words(superseded[f])}
				if !yield(row) {
					return
				}
			}
		},
	}
}

// RemedyText is the first remedy of a finding, or why there is none.
func RemedyText(f *audit.Finding) string {
	if len(f.Remedies) > 0 {
		return f.Remedies[0].Change
	}
	return f.NoRemedy
}

// QuestionsTable is what one answer each would settle. Number and text are for
// a list that is sent: the text says all that its reader needs.
func (a *Audit) QuestionsTable() Table {
	return Table{
		Name: "questions", Title: "Questions", Note: "What the schedules do not say and what an answer would settle, most first within a job. The last column can be pasted into a letter.",
		Columns: []Column{text("file", "File", 30), text("job", "Job", 22), text("sheet", "Sheet", 16), text("cell", "Cell", 8), text("field", "Field", 16),
			long("question", "Question", 60), long("settles", "Settles", 40), counted("verdicts", "Verdicts settled"), counted("number", "No."),
			text("site", "Site", 22), long("text", "To send", 70)},
		Count: total(a, func(r *audit.Result) int { return len(r.Questions) }),
		Rows: func(yield func([]Value) bool) {
			n := 0
			for _, r := range a.currentFirst() {
				for _, q := range r.Questions {
					n++
					if !yield([]Value{words(r.Job.File), words(JobName(r.Job)), words(q.At.Sheet()), words(q.At.Cell()), words(q.Field), words(q.Text),
						words(q.Settles), count(q.Verdicts), count(n), words(r.Job.Site.Value), words(QuestionText(n, r, q))}) {
						return
					}
				}
			}
		},
	}
}

// currentFirst returns the results in input order, those of superseded jobs last.
func (a *Audit) currentFirst() []*audit.Result {
	rs := a.Results()
	slices.SortStableFunc(rs, func(x, y *audit.Result) int {
		switch {
		case (x.SupersededBy == "") == (y.SupersededBy == ""):
			return 0
		case x.SupersededBy == "":
			return -1
		}
		return 1
	})
	return rs
}

// QuestionText is a question with its number and place, as it is sent.
func QuestionText(n int, r *audit.Result, q audit.Question) string {
	where := []string{r.Job.File}
	if q.At.Sheet() != "" {
		where = append(where, "sheet "+q.At.Sheet())
	}
	if cell := q.At.Cell(); cell != "" {
		if q.At.Col > 0 {
			cell = "cell " + cell
		}
		where = append(where, cell)
	}
	s := fmt.Sprintf("%d. %s: %s", n, strings.Join(where, ", "), q.Text)
	if q.Settles != "" {
		s += " (The answer settles: " + q.Settles + ".)"
	}
	return s
}

// RemediesTable has every computed remedy.
func (a *Audit) RemediesTable() Table {
	return Table{
		Name: "remedies", Title: "Remedies", Note: "Computed on the network and audited again before they were written here. Confirm on site before work begins.",
		Columns: []Column{text("finding", "Finding", 14), text("kind", "Kind", 12), long("change", "Change", 60), figure("before", "Before", ""),
			figure("after", "After", ""), text("unit", "Unit", 12), long("effect", "Effect", 50), long("part", "Part", 30), text("source", "Source", 26),
			text("rule", "Rule", 20), text("place", "Place", 24), text("file", "File", 28)},
		Count: a.remedies(),
		Rows: func(yield func([]Value) bool) {
			for _, f := range a.AllFindings() {
				for _, r := range f.Remedies {
					if !yield([]Value{words(f.ID), words(r.Kind), words(r.Change), finite(r.Before), finite(r.After), words(r.Unit), words(r.Effect),
						words(r.Part), words(r.Source), words(f.Rule.Name), words(f.Place), words(f.At.File())}) {
						return
					}
				}
			}
		},
	}
}

// AssumptionsTable is everything taken rather than stated.
func (a *Audit) AssumptionsTable() Table {
	return Table{
		Name: "assumptions", Title: "Assumptions", Note: "Everything that was taken rather than stated.",
		Columns: []Column{text("file", "File", 30), text("sheet", "Sheet", 16), text("cell", "Cell", 8), text("field", "Field", 18), text("written", "Written", 22),
			text("taken_as", "Taken as", 22), text("how", "How", 20), long("because", "Because", 50)},
		Count: a.count("assumptions", func(r *audit.Result) int { return len(r.Assumptions) }),
		Rows: a.eachJob("assumptions", func(r *audit.Result, yield func(...Value) bool) bool {
			for _, s := range r.Assumptions {
				if !yield(words(cmp.Or(s.At.File(), r.Job.File)), words(s.At.Sheet()), words(s.At.Cell()), words(s.Field), words(s.Written), words(s.TakenAs),
					words(s.How.String()), words(s.Because)) {
					return false
				}
			}
			return true
		}),
	}
}

func (a *Audit) remedies() int {
	n := 0
	for _, r := range a.Results() {
		for _, f := range r.Findings {
			n += len(f.Remedies)
		}
	}
	return n
}

func (a *Audit) notTables() int {
	n := 0
	for _, f := range a.Files {
		n += len(f.NotTables)
	}
	return n
}

// RowsTable is every row that was left out or not understood.
func (a *Audit) RowsTable() Table {
	return Table{
		Name: "rows", Title: "Rows left out", Note: "Every row that is no device, was struck out or hidden, or was not understood, with the reason.",
		Columns: []Column{text("file", "File", 30), text("sheet", "Sheet", 16), counted("row", "Row"), text("kind", "Kind", 16), long("reason", "Reason", 40),
			long("text", "Text", 60), figure("load_w", "Load if counted", "W")},
		Count: a.leftOut() + a.notTables(),
		Rows: func(yield func([]Value) bool) {
			for _, f := range a.Files {
				for _, l := range f.NotTables {
					if !yield(leftOutRow(l, f.Name)) {
						return
					}
				}
				for _, r := range f.Results {
					for row := range a.ofJob(r, "left out", leftOutRows) {
						if !yield(row) {
							return
						}
					}
				}
			}
		},
	}
}

// leftOut is the number of rows of jobs that were left out.
func (a *Audit) leftOut() int {
	return a.count("left out", func(r *audit.Result) int { return len(r.Job.LeftOut) })
}

func leftOutRows(r *audit.Result, yield func(...Value) bool) bool {
	for _, l := range r.Job.LeftOut {
		if !yield(leftOutRow(l, r.Job.File)...) {
			return false
		}
	}
	return true
}

func leftOutRow(l schedule.LeftOut, file string) []Value {
	at := Value{}
	if l.At.Row > 0 {
		at = count(int(l.At.Row))
	}
	return []Value{words(cmp.Or(l.At.File(), file)), words(l.At.Sheet()), at, words(string(l.Kind)), words(l.Reason), words(l.Text), quantity(l.Load)}
}
