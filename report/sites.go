package report

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
)

// SitesTable ranks the sites.
func (a *Audit) SitesTable() Table {
	return Table{
		Name: "sites", Title: "Sites", Note: "Ranked by their worst findings; a site without findings is at the end.",
		Columns: []Column{counted("place", "Place"), text("site", "Site", 30), figure("score", "Score", ""), counted("jobs", "Jobs"), counted("danger", "Danger"),
			counted("fault", "Fault"), counted("caution", "Caution"), counted("unknown", "Unknown"), counted("passed", "Checks passed"),
			counted("unshown", "Not shown"), counted("questions", "Questions"), long("worst", "Worst finding", 60)},
		Rows: func(yield func([]Value) bool) {
			for _, s := range a.Archive.Sites {
				worst := ""
				if len(s.Findings) > 0 {
					worst = s.Findings[0].Place + ": " + s.Findings[0].Message
				}
				if !yield([]Value{count(s.Place), words(s.Name), number(s.Score), count(len(s.Results)), count(s.Counts.Danger), count(s.Counts.Fault),
					count(s.Counts.Caution), count(s.Counts.Unknown), count(s.Counts.Passed), count(s.Counts.Unshown), count(s.Counts.Questions), words(worst)}) {
					return
				}
			}
		},
	}
}

// FirstTable is what to fix first across the archive.
func (a *Audit) FirstTable() Table {
	return Table{
		Name: "first", Title: "What to fix first", Note: "The few equipment types, cables and habits behind most of the risk.",
		Columns: []Column{counted("place", "Place"), text("kind", "Kind", 18), text("name", "Name", 24), long("text", "What it stands behind", 60),
			counted("findings", "Findings"), counted("sites", "Sites"), figure("share_pct", "Share of all risk", "%")},
		Rows: func(yield func([]Value) bool) {
			for i, c := range a.Archive.First {
				if !yield([]Value{count(i + 1), words(c.Kind), words(c.Name), words(c.Text), count(len(c.Findings)), count(c.Sites), number(c.Share * 100)}) {
					return
				}
			}
		},
	}
}

// VisitsTable is the visit list: one row a stop, sites in rank order, with an
// empty column for the result.
func (a *Audit) VisitsTable() Table {
	return Table{
		Name: "visits", Title: "Visit list", Note: "Measure line impedance at 1 kHz with an impedance meter, the line disconnected from the amplifier; a multimeter reads the winding, not the load.",
		Columns: []Column{counted("stop", "Stop"), text("site", "Site", 24), text("room", "Room", 18), text("place", "Place", 22), text("grade", "Grade", 9),
			long("sheet_says", "The sheet says", 34), text("cell", "Where", 22), long("check", "What to check", 34), figure("expected_ohm", "Expected at 1 kHz", "ohm"),
			long("do", "What to do", 40), long("part", "Part to bring", 26), text("result", "Result", 18)},
		Rows: func(yield func([]Value) bool) {
			stop := 0
			for _, s := range a.Archive.Sites {
				for _, f := range s.Findings {
					stop++
					if !yield([]Value{count(stop), words(s.Name), words(cmp.Or(f.Room, f.Zone)), words(f.Place), words(f.Grade.String()), words(f.Message),
						words(f.At.File + " " + f.At.String()), words(cmp.Or(f.Ask, checkOnSite(f))), exact(f.ExpectedOhm), words(RemedyText(f)), words(part(f)), {}}) {
						return
					}
				}
			}
		},
	}
}

func checkOnSite(f *audit.Finding) string {
	if f.ExpectedOhm.Known {
		return "measure the line impedance at " + f.Place + "; lower than expected means more load than on paper"
	}
	return "compare " + f.Place + " with the sheet"
}

func part(f *audit.Finding) string {
	for _, r := range f.Remedies {
		if r.Part != "" {
			return r.Part
		}
	}
	return ""
}

// RegisterTable is every rule against every job: met, not met, or cannot be
// shown, with limit, source and evidence.
func (a *Audit) RegisterTable() Table {
	return Table{
		Name: "register", Title: "Register of requirements", Note: "Every rule against every current job. Not applicable: the schedule lists nothing that the rule could be held against.",
		Columns: []Column{text("site", "Site", 24), text("job", "Job", 22), text("rule", "Rule", 24), long("title", "Requirement", 40), text("outcome", "Outcome", 16),
			counted("met", "Met"), counted("not_met", "Not met"), counted("not_shown", "Cannot be shown"), long("limits", "Limits in force", 40), long("source", "Source", 40),
			text("evidence", "Evidence", 30)},
		Rows: func(yield func([]Value) bool) {
			for _, r := range a.Archive.Results {
				if r.SupersededBy != "" {
					continue
				}
				for _, rule := range audit.Rules() {
					if !yield(registerRow(r, rule)) {
						return
					}
				}
			}
		},
	}
}

func registerRow(r *audit.Result, rule *audit.Rule) []Value {
	var met, failed, unshown int
	var evidence []string
	for _, f := range r.Findings {
		if f.Rule != rule {
			continue
		}
		if f.Certainty == audit.Certain {
			failed++
		} else {
			unshown++
		}
		evidence = append(evidence, f.At.String())
	}
	for _, p := range r.Passed {
		if p.Rule == rule {
			met++
		}
	}
	for _, u := range r.Unshown {
		if u.Rule == rule {
			unshown++
			evidence = append(evidence, u.At.String())
		}
	}
	outcome := "not applicable"
	switch {
	case failed > 0:
		outcome = "not met"
	case unshown > 0:
		outcome = "cannot be shown"
	case met > 0:
		outcome = "met"
	}
	slices.Sort(evidence)
	evidence = slices.Compact(evidence)
	if len(evidence) > 6 {
		evidence = append(evidence[:6], fmt.Sprintf("and %d more", len(evidence)-6))
	}
	limits, sources := r.Settings.Describe(rule)
	return []Value{words(r.Job.Site.Value), words(JobName(r.Job)), words(rule.Name), words(rule.Title), words(outcome), count(met), count(failed),
		count(unshown), words(limits), words(sources), words(strings.Join(evidence, "; "))}
}

// PassedTable lists every check that held, with its figures.
func (a *Audit) PassedTable() Table {
	return Table{
		Name: "passed", Title: "Passed", Note: "Every check that held.",
		Columns: []Column{text("file", "File", 30), text("job", "Job", 22), text("rule", "Rule", 22), text("place", "Place", 26), text("cell", "Cell", 10),
			figure("measured", "Measured", ""), figure("limit", "Limit", ""), text("unit", "Unit", 14), long("message", "Figures", 50)},
		Rows: eachJob(a, func(r *audit.Result, yield func(...Value) bool) bool {
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

// Bar is one bar of a chart.
type Bar struct {
	Label string
	Parts []float64 // one for each series
	At    schedule.Ref
}

// Loads returns the channels and controls that carry most of their rating, the
// fullest first, at most n: load and rating in watts.
func (a *Audit) Loads(n int) []Bar {
	type item struct {
		Bar
		share float64
	}
	var items []item
	add := func(r *audit.Result, place string, share, load, rated audit.Interval, at schedule.Ref) {
		if r.SupersededBy != "" || !share.Known || !load.Known || !rated.Known || math.IsInf(load.High, 0) {
			return
		}
		label := cmp.Or(r.Job.Site.Value, JobName(r.Job)) + ", " + place
		items = append(items, item{Bar{Label: label, Parts: []float64{load.High, rated.Low}, At: at}, share.High})
	}
	for _, r := range a.Archive.Results {
		for _, c := range r.Channels {
			add(r, "channel "+c.Channel.Label(), c.Share, c.Load.Watts, c.Rated, c.Channel.At)
		}
		for _, c := range r.Controls {
			add(r, "control "+c.Control.Name, c.Share, c.Load.Watts, c.Rated, c.Control.At)
		}
	}
	slices.SortStableFunc(items, func(x, y item) int { return cmp.Or(cmp.Compare(y.share, x.share), cmp.Compare(x.Label, y.Label)) })
	var out []Bar
	for _, it := range items[:min(n, len(items))] {
		out = append(out, it.Bar)
	}
	return out
}

// ByRule counts the findings of the current jobs by rule and grade (danger,
// fault, caution, unknown), most first.
func (a *Audit) ByRule() []Bar {
	var out []Bar
	for _, rule := range audit.Rules() {
		b := Bar{Label: rule.Name, Parts: make([]float64, 4)}
		total := 0
		for _, f := range a.Archive.Findings {
			if f.Rule == rule {
				b.Parts[audit.Danger-f.Grade]++
				total++
			}
		}
		if total > 0 {
			out = append(out, b)
		}
	}
	slices.SortStableFunc(out, func(x, y Bar) int { return cmp.Compare(sum(y.Parts), sum(x.Parts)) })
	return out
}

// BySite returns the score of the sites, worst first, at most n.
func (a *Audit) BySite(n int) []Bar {
	var out []Bar
	for _, s := range a.Archive.Sites[:min(n, len(a.Archive.Sites))] {
		out = append(out, Bar{Label: s.Name, Parts: []float64{s.Score}})
	}
	return out
}

func sum(vs []float64) (t float64) {
	for _, v := range vs {
		t += v
	}
	return t
}
