package audit

import (
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

// uses are all uses in the order of their documentation.
var uses = [...]schedule.Use{schedule.AnyUse, schedule.Music, schedule.Paging, schedule.Emergency}

// Settings are the limits, ratings and waivers in force for one run. They are
// read by many goroutines at once and never change.
type Settings struct {
	House *schedule.HouseBook // nil without one

	limits  map[string]*ruleLimits // by rule name
	models  map[string]*model      // by modelKey
	waivers []schedule.WaiverRow
}

// ruleLimits are the limits of one rule that are in force.
type ruleLimits struct {
	named []LimitInForce // in the order of the rule's own limits, then the house book's
	grade [len(uses)][Danger + 1]*LimitInForce
}

// A LimitInForce is one limit as it stands after the house book was read.
type LimitInForce struct {
	Name   string // "caution", "fault", "danger", or the name of a setting
	Grade  Grade
	Use    schedule.Use
	Value  float64
	Unit   string
	Source string
	Note   string
	At     schedule.Ref // the cell in the house book; the zero Ref for a default
	Off    bool         // the house book switches this limit off
}

// DefaultSettings are the limits of the rules themselves, without a house book.
func DefaultSettings() *Settings {
	s := &Settings{limits: make(map[string]*ruleLimits, len(registry))}
	for _, r := range registry {
		in := &ruleLimits{}
		for _, l := range r.Limits {
			in.named = append(in.named, LimitInForce{Name: l.Name, Grade: l.Grade, Use: l.Use, Value: l.Default,
				Unit: l.Unit, Source: l.Source, Note: l.Note})
		}
		s.limits[r.Name] = in
	}
	s.index()
	return s
}

// index fills the table of graded limits by use: a use without a limit of its
// own has that of all others.
func (s *Settings) index() {
	for _, in := range s.limits {
		for i, use := range uses {
			for g := Caution; g <= Danger; g++ {
				in.grade[i][g] = in.find(g.String(), use)
			}
		}
	}
}

// find returns the limit of that name for a use, nil when there is none or it
// is switched off.
func (in *ruleLimits) find(name string, use schedule.Use) *LimitInForce {
	var found *LimitInForce
	for i := range in.named {
		l := &in.named[i]
		if l.Name == name && (l.Use == use || l.Use == schedule.AnyUse && found == nil) {
			found = l
		}
	}
	if found != nil && found.Off {
		return nil
	}
	return found
}

// Limits returns the limits of a rule that are in force, in a fixed order.
func (s *Settings) Limits(r *Rule) []LimitInForce {
	if in := s.limits[r.Name]; in != nil {
		return in.named
	}
	return nil
}

// value returns a named setting of a rule and where it comes from.
func (s *Settings) value(rule, name string, use schedule.Use) (LimitInForce, bool) {
	if in := s.limits[rule]; in != nil {
		if l := in.find(name, use); l != nil {
			return *l, true
		}
	}
	return LimitInForce{}, false
}

// Describe returns the limits of a rule in force and their sources, each as
// one line of text; both are empty for a rule without limits.
func (s *Settings) Describe(r *Rule) (limits, sources string) {
	var what, from []string
	all := s.Limits(r)
	for _, l := range all {
		text := l.String()
		if l.Note != "" && sameFigure(l, all) {
			text += " (" + l.Note + ")"
		}
		what = append(what, text)
		if src := l.Source; src != "" && (len(from) == 0 || from[len(from)-1] != src) {
			from = append(from, src)
		}
	}
	return strings.Join(what, "; "), strings.Join(from, "; ")
}

// sameFigure reports whether a limit of another grade has the same figure, so that
// its note alone tells them apart.
func sameFigure(l LimitInForce, limits []LimitInForce) bool {
	return slices.ContainsFunc(limits, func(o LimitInForce) bool {
		return o.Name != l.Name && o.Use == l.Use && o.Value == l.Value && o.Unit == l.Unit && !o.Off && !l.Off
	})
}

// String returns the limit as a person would say it: "caution above 80 % of
// rating (emergency use)".
func (l LimitInForce) String() string {
	text := l.Name
	if l.Name == l.Grade.String() {
		text += " above"
	}
	if l.Off {
		return l.Name + " switched off" + useNote(l.Use)
	}
	if strings.HasSuffix(l.Unit, " "+l.Name) { // "IEC 60228 class 2"
		return l.Unit + " " + figure(l.Value) + useNote(l.Use)
	}
	return text + " " + withUnit(l.Value, l.Unit) + useNote(l.Use)
}

func useNote(u schedule.Use) string {
	if u == schedule.AnyUse {
		return ""
	}
	return " (" + u.String() + " use)"
}

// withUnit writes a figure with its unit: "80 % of rating", "0.5 dB".
func withUnit(v float64, unit string) string { return figure(v) + " " + unit }
