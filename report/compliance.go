package report

import (
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
)

// RegisterTable is every rule against every job: met, not met, or cannot be
// shown, with limit, source and evidence.
func (a *Audit) RegisterTable() Table {
	rules := audit.Rules()
	var current []*audit.Result
	for _, r := range a.Archive.Results {
		if r.SupersededBy == "" {
			current = append(current, r)
		}
	}
	return Table{
		Name: "register", Title: "Register of requirements", Note: "Every rule against every current job. Not applicable: the schedule lists nothing that the rule could be held against.",
		Columns: []Column{text("site", "Site", 24), text("job", "Job", 22), text("rule", "Rule", 24), long("title", "What must not be", 40), text("outcome", "Outcome", 16),
			counted("met", "Met"), counted("not_met", "Not met"), counted("not_shown", "Cannot be shown"), long("limits", "Limits in force", 40), long("source", "Source", 40),
			long("evidence", "Evidence", 30), text("file", "File", 28)},
		Count: len(current) * len(rules),
		Rows: func(yield func([]Value) bool) {
			outcomes := make([][]Outcome, len(current))
			for i, r := range current {
				outcomes[i] = a.outcomes(r)
			}
			for k, rule := range rules { // by requirement, then job
				var limits, sources string
				for i, r := range current {
					if i == 0 || r.Settings != current[i-1].Settings {
						limits, sources = r.Settings.Describe(rule)
					}
					o := outcomes[i][k]
					if !yield([]Value{words(r.Job.Site.Value), words(JobName(r.Job)), words(rule.Name), words(rule.Title), words(o.Outcome), count(o.Met), count(o.NotMet),
						count(o.NotShown), words(limits), words(sources), words(o.Evidence), words(r.Job.File)}) {
						return
					}
				}
			}
		},
	}
}

// marks are the outcomes in one letter.
var marks = map[string]string{"met": "M", "not met": "N", "cannot be shown": "?", "not applicable": ""}

// OverviewTable is the register in one view: a row for each current job, a
// column for each rule.
func (a *Audit) OverviewTable() Table {
	var current []*audit.Result
	for _, r := range a.Archive.Results {
		if r.SupersededBy == "" {
			current = append(current, r)
		}
	}
	columns := []Column{text("site", "Site", 22), text("job", "Job", 24)}
	for _, rule := range audit.Rules() {
		columns = append(columns, text(rule.Name, rule.Name, 4))
	}
	return Table{
		Name: "overview", Title: "Overview", Note: "N not met, M met, ? cannot be shown; blank where the schedule lists nothing that the rule could be held against. Cells and limits are in the register.",
		Columns: append(columns, text("file", "File", 30)),
		Count:   len(current),
		Rows: func(yield func([]Value) bool) {
			for _, r := range current {
				row := []Value{words(r.Job.Site.Value), words(JobName(r.Job))}
				for _, o := range a.outcomes(r) {
					row = append(row, words(marks[o.Outcome]))
				}
				if !yield(append(row, words(r.Job.File))) {
					return
				}
			}
		},
	}
}

// An Outcome is how one job stands against one rule.
type Outcome struct {
	Outcome               string // met, not met, cannot be shown, not applicable
	Met, NotMet, NotShown int    // places
	Evidence              string // the cells of what is not met or not shown
}

// maxEvidence is how many cells the register lists for one rule and job.
const maxEvidence = 6

// Outcomes returns how a job stands against every rule, in the order of audit.Rules.
func Outcomes(r *audit.Result) []Outcome {
	rules := audit.Rules()
	place := make(map[*audit.Rule]int, len(rules))
	for i, rule := range rules {
		place[rule] = i
	}
	out := make([]Outcome, len(rules))
	refs := make([][]schedule.Ref, len(rules))
	for _, f := range r.Findings {
		i, ok := place[f.Rule]
		if !ok {
			continue
		}
		if f.Certainty == audit.Certain {
			out[i].NotMet++
		} else {
			out[i].NotShown++
		}
		refs[i] = append(refs[i], f.At)
	}
	for _, p := range r.Passed {
		if i, ok := place[p.Rule]; ok {
			out[i].Met++
		}
	}
	for _, u := range r.Unshown {
		if i, ok := place[u.Rule]; ok {
			out[i].NotShown++
			refs[i] = append(refs[i], u.At)
		}
	}
	for i := range out {
		o := &out[i]
		switch {
		case o.NotMet > 0:
			o.Outcome = "not met"
		case o.NotShown > 0:
			o.Outcome = "cannot be shown"
		case o.Met > 0:
			o.Outcome = "met"
		default:
			o.Outcome = "not applicable"
		}
		o.Evidence = evidence(refs[i])
	}
	return out
}

// outcomeRows are the outcomes of a job, as rows of a list.
func outcomeRows(r *audit.Result, yield func(...Value) bool) bool {
	for _, o := range Outcomes(r) {
		if !yield(words(o.Outcome), count(o.Met), count(o.NotMet), count(o.NotShown), words(o.Evidence)) {
			return false
		}
	}
	return true
}

// outcomes are the outcomes of a job, in the order of audit.Rules.
func (a *Audit) outcomes(r *audit.Result) []Outcome {
	out := make([]Outcome, 0, len(audit.Rules()))
	for v := range a.ofJob(r, "outcomes", outcomeRows) {
		out = append(out, Outcome{Outcome: v[0].Words, Met: int(v[1].Number), NotMet: int(v[2].Number), NotShown: int(v[3].Number), Evidence: v[4].Words})
	}
	return out
}

// unshownRows are the checks of a job that could not be decided: place, cell,
// rule and why.
func unshownRows(r *audit.Result, yield func(...Value) bool) bool {
	for _, u := range r.Unshown {
		if !yield(words(u.Place), words(u.At.String()), words(u.Rule.Name), words(u.Why)) {
			return false
		}
	}
	return true
}

// evidence lists cells in reading order, each once.
func evidence(refs []schedule.Ref) string {
	slices.SortFunc(refs, schedule.Ref.Compare)
	refs = slices.Compact(refs)
	var out []string
	for i, at := range refs {
		if i == maxEvidence {
			out = append(out, fmt.Sprintf("and %d more", len(refs)-i))
			break
		}
		out = append(out, at.String())
	}
	return strings.Join(out, "; ")
}

// NotExaminedTable is what the audit says nothing of, and why.
func (a *Audit) NotExaminedTable() Table {
	n := 0
	for _, r := range a.Results() {
		if r.SupersededBy != "" {
			n++
			continue
		}
		n += len(r.Broken)
		for range a.ofJob(r, "unshown", unshownRows) {
			n++
		}
	}
	for _, f := range a.Files {
		if f.Kind != Schedule {
			n++
		}
	}
	return Table{
		Name: "not-examined", Title: "Not examined", Note: "Files that could not be read or are no schedules, revisions that a newer one replaces, and checks that could not be decided. Rows left out have a sheet of their own.",
		Columns: []Column{text("kind", "What", 14), text("site", "Site", 22), text("file", "File", 34), text("place", "Place", 24), text("where", "Cell", 20), text("rule", "Rule", 24), long("why", "Why", 60)},
		Count:   n + len(a.Unwritten) + len(a.Beside),
		Rows: func(yield func([]Value) bool) {
			for _, f := range a.Files {
				if f.Kind != Schedule && !yield([]Value{words("file"), {}, words(f.Name), {}, {}, {}, words(string(f.Kind) + ": " + f.Reason)}) {
					return
				}
			}
			for _, text := range slices.Concat(a.Unwritten, a.Beside) {
				if !yield([]Value{words("marked copy"), {}, {}, {}, {}, {}, words(text)}) {
					return
				}
			}
			for _, r := range a.currentFirst() {
				site, file := words(r.Job.Site.Value), words(r.Job.File)
				if r.SupersededBy != "" {
					if !yield([]Value{words("revision"), site, file, words(JobName(r.Job)), {}, {}, words("superseded by " + r.SupersededBy)}) {
						return
					}
					continue
				}
				for _, b := range r.Broken {
					if !yield([]Value{words("check"), site, file, {}, {}, {}, words("failed to run: " + b)}) {
						return
					}
				}
				for u := range a.ofJob(r, "unshown", unshownRows) {
					if !yield(append([]Value{words("check"), site, file}, u...)) {
						return
					}
				}
			}
		},
	}
}

// PassedTable lists every check that held, with its figures.
func (a *Audit) PassedTable() Table {
	return Table{
		Name: "passed", Title: "Passed", Note: "Every check that held.",
		Columns: []Column{text("file", "File", 30), text("job", "Job", 22), text("rule", "Rule", 22), text("place", "Place", 26), text("cell", "Cell", 10),
			figure("measured", "Measured", ""), figure("limit", "Limit", ""), text("unit", "Unit", 14), long("message", "Figures", 50)},
		Count: a.count("passed", func(r *audit.Result) int { return len(r.Passed) }),
		Rows: a.eachJob("passed", func(r *audit.Result, yield func(...Value) bool) bool {
			for _, p := range r.Passed {
				if !yield(words(r.Job.File), words(JobName(r.Job)), words(p.Rule.Name), words(p.Place), words(p.At.Cell()), exact(p.Measured), finite(p.Limit),
					words(p.Unit), words(p.Message)) {
					return false
				}
			}
			return true
		}),
	}
}

// RulesTable describes every rule with the limits in force and their sources.
func (a *Audit) RulesTable() Table {
	settings := audit.DefaultSettings()
	if len(a.Archive.Results) > 0 {
		settings = a.Archive.Results[0].Settings
	}
	return Table{
		Name: "rules", Title: "Rules and sources", Note: "What is checked, with which limits, and where they come from. A limit met exactly passes.",
		Columns: []Column{text("rule", "Rule", 26), long("title", "What it finds", 44), long("why", "Why it matters", 60), long("limits", "Limits in force", 44),
			long("source", "Source", 50), long("silent", "Silent when", 50), long("cautions", "Cautions", 50)},
		Count: len(audit.Rules()),
		Rows: func(yield func([]Value) bool) {
			for _, rule := range audit.Rules() {
				limits, sources := settings.Describe(rule)
				if !yield([]Value{words(rule.Name), words(rule.Title), words(rule.Why), words(limits), words(sources), words(strings.Join(rule.Silent, "; ")),
					words(strings.Join(rule.Cautions, " "))}) {
					return
				}
			}
		},
	}
}
