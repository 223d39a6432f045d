package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit"
)

// onPaper are the rules whose findings are settled at a desk: nobody drives to
// a site for a sum that is wrong or a tag that is there twice.
var onPaper = []string{"total-mismatch", "duplicate-tag", "loose-end", "turned-into-date", "implausible"}

// askedAtDesk are the fields of questions that nobody at the site can answer.
var askedAtDesk = []string{"total", "emergency circuits"}

// OnPaper reports whether a finding is settled at a desk rather than on site.
func OnPaper(f *audit.Finding) bool { return slices.Contains(onPaper, f.Rule.Name) }

// maxAsked is how many questions the visit list adds for one site.
const maxAsked = 5

// VisitsTable is the visit list: one row a stop, sites in rank order, with an
// empty column for the result. The questions that settle most at the site follow its findings.
func (a *Audit) VisitsTable() Table {
	rows := a.visits()
	return Table{
		Name: "visits", Title: "Visit list",
		Note: "Sites in the order of their risk. Measure line impedance at 1 kHz with an impedance meter, the line disconnected from the amplifier; a multimeter reads the winding, not the load. Less than expected means more load than on paper. " +
			"Findings that are settled at a desk (sums, tags, dates) stand among the findings alone.",
		Columns: []Column{counted("stop", "Stop"), text("site", "Site", 24), text("room", "Room", 18), text("place", "Place", 22), text("grade", "Grade", 10),
			long("sheet_says", "The sheet says", 34), long("where", "Where it says so", 22), long("check", "What to check", 34), figure("expected_ohm", "Expected at 1 kHz", "ohm"),
			text("tool", "Tool", 16), long("do", "What to do", 40), long("part", "Part to bring", 26), {Name: "result", Label: "Result", Width: 18, Kind: Blank}},
		Count: len(rows),
		Rows: func(yield func([]Value) bool) {
			for i, row := range rows {
				row[0] = count(i + 1)
				if !yield(row) {
					return
				}
			}
		},
	}
}

func (a *Audit) visits() [][]Value {
	var rows [][]Value
	for _, s := range a.Archive.Sites {
		for _, f := range s.Findings {
			if OnPaper(f) {
				continue
			}
			rows = append(rows, []Value{{}, words(s.Name), words(cmp.Or(f.Room, f.Zone)), words(f.Place), words(gradeText(f)), words(Found(f)),
				words(Where(f)), words(cmp.Or(f.Ask, f.Rule.OnSite)), exact(f.ExpectedOhm), words(f.Rule.Tool), words(doOnSite(f)), words(Part(f)), {}})
		}
		asked, left := a.asked(s)
		rows = append(rows, asked...)
		if left > 0 {
			rows = append(rows, []Value{{}, words(s.Name), {}, {}, words("question"), words(fmt.Sprintf("and %s more of this site among the questions", Plural(left, "question"))),
				{}, {}, {}, {}, {}, {}, {}})
		}
	}
	return rows
}

// asked are the questions to settle while there, and how many are left.
func (a *Audit) asked(s audit.Site) (rows [][]Value, left int) {
	type asked struct {
		audit.Question
		file string
	}
	var all []asked
	for _, r := range s.Results {
		for _, q := range r.Questions {
			if !slices.Contains(askedAtDesk, q.Field) {
				all = append(all, asked{q, r.Job.File})
			}
		}
	}
	slices.SortStableFunc(all, func(x, y asked) int { return cmp.Compare(y.Verdicts, x.Verdicts) })
	for i, q := range all {
		if i == maxAsked {
			return rows, len(all) - i
		}
		where := q.At.String()
		if q.file != "" && where != q.file {
			where = q.file + " " + where
		}
		rows = append(rows, []Value{{}, words(s.Name), {}, {}, words("question"), {}, words(where), words(q.Text), {}, {}, words("settles " + q.Settles), {}, {}})
	}
	return rows, 0
}

// gradeText is the grade of a finding, "possible" in front where it is not certain.
func gradeText(f *audit.Finding) string {
	if f.Certainty == audit.Possible {
		return "possible " + f.Grade.String()
	}
	return f.Grade.String()
}

// Where is the file and cell of a finding, as people write it.
func Where(f *audit.Finding) string {
	at := f.At.String()
	if f.At.File() == "" || f.At.Sheet() == "" {
		return at
	}
	return f.At.File() + " " + at
}

// doOnSite is the remedy; what to check has a column of its own.
func doOnSite(f *audit.Finding) string {
	do, _, _ := strings.Cut(RemedyText(f), audit.OnSite)
	return strings.TrimSpace(do)
}

// Part is the part to bring for the first remedy, which is the one that is shown.
func Part(f *audit.Finding) string {
	if len(f.Remedies) == 0 {
		return ""
	}
	return f.Remedies[0].Part
}
