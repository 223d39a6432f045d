// Package audit checks one job at a time: rules as values, findings that show
// their working, grades, remedies; and ranks all results together. It opens no
// file, reads no clock and prints nothing.
package audit

import "lineaudit/audit/schedule"

// A Rule is one thing that can be wrong, as a value: what it looks for, why it
// matters, the limits with their sources, when it must stay silent, the usual
// cautions, and the check. Terminal, workbook, page and documentation all read
// the same values.
type Rule struct {
	Name      string // a defect in kebab case, never reused
	Title     string // one line
	Why       string // why it matters, one or two sentences
	Doc       string // what, why, what to do, when silent, a worked example
	Limits    []Limit
	Silent    []string // when it must stay silent
	Cautions  []string // shown with every finding
	OnSite    string   // what to look at or measure on site
	Tool      string   // what that takes beside eyes and a screwdriver; "" for nothing
	Emergency bool     // concerns emergency messages
	OfJob     bool     // speaks of the job as a whole: no remedy changes what it finds
	Check     func(*Examination) error
}

// A Limit is one named limit of a rule.
type Limit struct {
	Name    string       // "caution", "fault", "danger", or the name of a setting that grades nothing by itself
	Grade   Grade        // what passing it is; Unknown for a setting
	Use     schedule.Use // the use it holds for; AnyUse for all others
	Default float64
	Unit    string // "of rating", "dB", "W", ...
	Source  string // standard and clause, handbook and page, or "common practice, no source"
	Note    string
}
