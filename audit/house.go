package audit

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// NewSettings puts the limits, ratings and waivers of a house book in force.
// It returns every error in the book, by sheet and cell, sorted; with any, the
// settings must not be used. A nil book gives DefaultSettings.
func NewSettings(house *schedule.HouseBook) (*Settings, []schedule.HouseError) {
	s := DefaultSettings()
	if house == nil {
		return s, nil
	}
	s.House = house
	h := &houseReader{s: s}
	for i := range house.Limits {
		h.limit(&house.Limits[i])
	}
	h.ordered()
	s.models = make(map[string]*model)
	for i := range house.Ratings {
		h.rating(&house.Ratings[i])
	}
	for i := range house.Waivers {
		h.waiver(&house.Waivers[i])
	}
	s.index()
	slices.SortStableFunc(h.errors, func(a, b schedule.HouseError) int { return a.At.Compare(b.At) })
	return s, h.errors
}

// A houseReader turns the rows of a house book into settings.
type houseReader struct {
	s      *Settings
	errors []schedule.HouseError
	given  map[string]schedule.Ref // limits by rule, name and use
}

func (h *houseReader) fail(at schedule.Ref, format string, args ...any) {
	h.errors = append(h.errors, schedule.HouseError{At: at, Text: fmt.Sprintf(format, args...)})
}

// cellOf is the cell of a text, else its row.
func cellOf(t schedule.Text, row schedule.Ref) schedule.Ref { return placeOf(t.Source, row) }

// limit puts one row of limits in force.
func (h *houseReader) limit(row *schedule.LimitRow) {
	rule := RuleNamed(folded(row.Rule.Value))
	if rule == nil {
		h.fail(cellOf(row.Rule, row.At), "unknown rule %q%s", row.Rule.Value, suggest(folded(row.Rule.Value), ruleNames()))
		return
	}
	name := folded(row.Limit.Value)
	kind := limitNamed(rule, name)
	if kind == nil {
		h.fail(cellOf(row.Limit, row.At), "rule %s has no limit %q; it has %s", rule.Name, row.Limit.Value, listed(limitNames(rule)))
		return
	}
	use, ok := useByName(row.Use.Value)
	if !ok {
		h.fail(cellOf(row.Use, row.At), "unknown use %q: any, music, paging or emergency", row.Use.Value)
		return
	}
	l := *kind
	l.Use, l.At, l.Note = use, row.At, ""
	l.Source = "house book, " + cellOf(row.Value, row.At).String()
	if row.Source.Value != "" {
		l.Source = row.Source.Value + " (" + l.Source + ")"
	}
	switch word := folded(row.Value.Value); {
	case word == "off" || word == "none":
		l.Off = true
	default:
		v, unit, err := limitValue(row.Value.Value, row.Unit.Value, l.Unit)
		if err != "" {
			h.fail(cellOf(row.Value, row.At), "%s", err)
			return
		}
		if least, most := rangeOf(l.Unit); v < least || v > most {
			h.fail(cellOf(row.Value, row.At), "%s is outside %s to %s %s", row.Value.Value, figure(least), figure(most), unit)
			return
		}
		l.Value = v
	}
	key := rule.Name + "\x1f" + name + "\x1f" + use.String()
	if h.given == nil {
		h.given = make(map[string]schedule.Ref)
	}
	if first, twice := h.given[key]; twice {
		h.fail(row.At, "limit %s of rule %s for use %s is given twice, first in %s", name, rule.Name, use, first)
		return
	}
	h.given[key] = row.At
	in := h.s.limits[rule.Name]
	for i := range in.named {
		if in.named[i].Name == name && in.named[i].Use == use {
			in.named[i] = l
			return
		}
	}
	in.named = append(in.named, l)
}

// limitNamed is the pattern of a limit: one that the rule has, or, for a rule
// with graded limits of one unit, another grade of the same unit.
func limitNamed(rule *Rule, name string) *LimitInForce {
	var graded *Limit
	for i := range rule.Limits {
		l := &rule.Limits[i]
		if l.Name == name {
			return &LimitInForce{Name: l.Name, Grade: l.Grade, Unit: l.Unit}
		}
		if l.Name == l.Grade.String() && l.Grade != Unknown && graded == nil {
			graded = l
		}
	}
	if graded == nil {
		return nil
	}
	for g := Caution; g <= Danger; g++ {
		if g.String() == name {
			return &LimitInForce{Name: name, Grade: g, Unit: graded.Unit}
		}
	}
	return nil
}

func limitNames(rule *Rule) []string {
	var out []string
	graded := false
	for _, l := range rule.Limits {
		graded = graded || l.Name == l.Grade.String()
		if !slices.Contains(out, l.Name) {
			out = append(out, l.Name)
		}
	}
	if graded {
		for _, g := range []Grade{Caution, Fault, Danger} {
			if !slices.Contains(out, g.String()) {
				out = append(out, g.String())
			}
		}
	}
	return out
}

func ruleNames() []string {
	var out []string
	for _, r := range registry {
		out = append(out, r.Name)
	}
	return out
}

func useByName(name string) (schedule.Use, bool) {
	name = folded(name)
	if name == "" {
		return schedule.AnyUse, true
	}
	for _, u := range uses {
		if u.String() == name {
			return u, true
		}
	}
	return schedule.AnyUse, false
}

// limitValue reads a number with its unit and returns it in the unit of the
// limit. A percentage may be written as 80 %, 80 with the unit %, or 0.8 with
// the unit "of rating"; lengths and powers in m, ft, km, W, kW.
func limitValue(text, unit, want string) (v float64, shown, problem string) {
	text = strings.TrimSpace(strings.ReplaceAll(text, ",", "."))
	number := strings.TrimRight(text, "%abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ²° ")
	written := strings.TrimSpace(strings.TrimPrefix(text, number))
	if strings.TrimSpace(number) == "" {
		written = ""
	}
	if unit == "" {
		unit = written
	} else if written != "" && !sameUnit(written, unit) {
		return 0, "", fmt.Sprintf("%q has another unit than the %q beside it", text, unit)
	}
	v, err := strconv.ParseFloat(strings.TrimSpace(number), 64)
	if err != nil || math.IsNaN(v) || math.IsInf(v, 0) {
		return 0, "", fmt.Sprintf("%q is not a number (or \"off\")", text)
	}
	factor, ok := unitFactor(unit, want)
	if !ok {
		return 0, "", fmt.Sprintf("unit %q: this limit is in %s", unit, want)
	}
	return v * factor, want, ""
}

func sameUnit(a, b string) bool {
	return strings.EqualFold(strings.ReplaceAll(a, " ", ""), strings.ReplaceAll(b, " ", ""))
}

// unitFactor converts a written unit into that of a limit.
func unitFactor(unit, want string) (float64, bool) {
	u := folded(unit)
	switch {
	case u == "" || sameUnit(u, want):
		return 1, true
	case strings.HasPrefix(want, "%"):
		switch {
		case u == "%", sameUnit(u, "percent"):
			return 1, true
		case sameUnit("% "+u, want): // "of rating": a fraction
			return 100, true
		}
	case want == "W":
		switch u {
		case "w", "watt", "watts":
			return 1, true
		case "kw":
			return 1000, true
		case "mw":
			return 0.001, true
		}
	case want == "m":
		switch u {
		case "metre", "metres", "meter", "meters":
			return 1, true
		case "km":
			return 1000, true
		case "ft", "feet", "'":
			return 0.3048, true
		}
	case want == "dB" && u == "db", want == "V" && (u == "v" || u == "volt" || u == "volts"):
		return 1, true
	case want == "mm2" && (u == "mm²" || u == "sqmm"):
		return 1, true
	case want == "degC" && (u == "°c" || u == "c" || u == "degc"):
		return 1, true
	}
	return 0, false
}

// rangeOf bounds what a limit may be set to, by its unit.
func rangeOf(unit string) (least, most float64) {
	switch {
	case strings.HasPrefix(unit, "%"):
		return 0, 1000
	case unit == "dB":
		return 0, 40
	case unit == "degC":
		return -40, 120
	case unit == "IEC 60228 class":
		return 0, 6
	}
	return 0, 1e6
}

// ordered checks that a graver grade has no lower limit than a milder one.
func (h *houseReader) ordered() {
	for _, rule := range registry {
		in := h.s.limits[rule.Name]
		said := map[schedule.Ref]bool{}
		for _, use := range uses {
			var below *LimitInForce
			for g := Caution; g <= Danger; g++ {
				l := in.find(g.String(), use)
				if l == nil || rule == voltageMismatch || rule == measuredLoadDiffers { // their grades measure different things
					continue
				}
				if below != nil && l.Value < below.Value && (!l.At.IsZero() || !below.At.IsZero()) {
					at := l.At
					if at.IsZero() {
						at = below.At
					}
					if said[at] {
						break
					}
					said[at] = true
					h.fail(at, "rule %s, use %s: the limit of %s (%s %s) is below that of %s (%s %s)", rule.Name, use,
						l.Name, figure(l.Value), l.Unit, below.Name, figure(below.Value), below.Unit)
					break
				}
				below = l
			}
		}
	}
}

// rating puts one model in force.
func (h *houseReader) rating(row *schedule.RatingRow) {
	if strings.TrimSpace(row.Model.Value) == "" {
		h.fail(row.At, "a model is missing")
		return
	}
	kind := folded(row.Kind.Value)
	if kind != "loudspeaker" && kind != "control" && kind != "amplifier" {
		h.fail(cellOf(row.Kind, row.At), "kind %q of model %s: loudspeaker, control or amplifier", row.Kind.Value, row.Model.Value)
		return
	}
	m := &model{row: row, kind: kind}
	for _, name := range append([]string{row.Model.Value}, row.OtherNames...) {
		key := modelKey(name)
		if key == "" {
			continue
		}
		if first := h.s.models[key]; first != nil && first != m {
			h.fail(cellOf(row.Model, row.At), "model %s is given twice, first in %s", name, first.row.At)
			continue
		}
		h.s.models[key] = m
	}
	const mostW = 100_000
	for _, r := range row.Rated {
		h.number(r.Watts.Source, row.At, float64(r.Watts.Low), float64(r.Watts.High), 0, mostW, "a rating", "W")
		if r.Volts < 0 || r.Volts > 0 && !lineVoltage(float64(r.Volts)) {
			h.fail(placeOf(r.Watts.Source, row.At), "%s V is no line voltage", figure(float64(r.Volts)))
		}
	}
	for i, t := range row.Taps {
		if !(t.Watts > 0) || t.Watts > mostW || t.Volts < 0 {
			h.fail(row.At, "tap %s W of model %s is out of range", figure(float64(t.Watts)), row.Model.Value)
		}
		for _, o := range row.Taps[:i] {
			if o == t {
				h.fail(row.At, "tap %s W of model %s is given twice", figure(float64(t.Watts)), row.Model.Value)
			}
		}
	}
	h.quantity(row.Impedance.Source, row.At, float64(row.Impedance.Low), 0.5, 1e6, "an impedance", "ohm")
	h.quantity(row.Channels.Source, row.At, float64(row.Channels.Low), 1, 1000, "a number of channels", "")
	h.quantity(row.Frame.Source, row.At, float64(row.Frame.Low), 0, mostW, "a frame total", "W")
	h.quantity(row.BoxDepth.Source, row.At, float64(row.BoxDepth.Low), 0, 1000, "a box depth", "mm")
	h.quantity(row.LossDB.Source, row.At, float64(row.LossDB.Low), -1e-9, 10, "an insertion loss", "dB")
}

func lineVoltage(v float64) bool {
	_, ok := line.Class(v)
	return ok
}

func (h *houseReader) quantity(s schedule.Source, row schedule.Ref, v, least, most float64, what, unit string) {
	if s.Had() {
		h.number(s, row, v, v, least, most, what, unit)
	}
}

// number checks that a value lies above least and is at most most.
func (h *houseReader) number(s schedule.Source, row schedule.Ref, low, high, least, most float64, what, unit string) {
	if !(low > least) || !(high <= most) {
		h.fail(placeOf(s, row), "%s of %s %s is out of range", what, figure(low), unit)
	}
}

// waiver puts one waiver in force.
func (h *houseReader) waiver(row *schedule.WaiverRow) {
	switch name := folded(row.Rule.Value); {
	case name == "":
		h.fail(row.At, "a waiver names the rule it waives")
		return
	case RuleNamed(name) == nil:
		h.fail(cellOf(row.Rule, row.At), "unknown rule %q%s", row.Rule.Value, suggest(name, ruleNames()))
		return
	}
	if strings.TrimSpace(row.Reason.Value) == "" {
		h.fail(cellOf(row.Reason, row.At), "a waiver gives its reason")
		return
	}
	h.s.waivers = append(h.s.waivers, *row)
}

// suggest names the nearest of the known words, "" when none is near.
func suggest(word string, known []string) string {
	best, bestD := "", len(word)/3+1
	for _, k := range known {
		if d := distance(word, k); d < bestD {
			best, bestD = k, d
		}
	}
	if best == "" {
		return ""
	}
	return fmt.Sprintf("; did you mean %s?", best)
}

// distance is the number of single-letter changes between two words.
func distance(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		diagonal := row[0]
		row[0] = i
		for j := 1; j <= len(b); j++ {
			change := diagonal
			if a[i-1] != b[j-1] {
				change++
			}
			diagonal = row[j]
			row[j] = min(change, row[j]+1, row[j-1]+1)
		}
	}
	return row[len(b)]
}
