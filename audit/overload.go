package audit

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"lineaudit/audit/schedule"
)

// What the rules on loads against ratings share.

// pieces is the number of installed loudspeakers that hang on a node, as far
// as it is known.
func (n *node) pieces() float64 {
	if n.load.Count.bounded() {
		return n.load.Count.High
	}
	return n.load.Count.Low
}

// ratingCell is where the rating is written, else the place itself.
func ratingCell(n *node, at schedule.Ref) schedule.Ref {
	if n.rating.from.Had() && !n.rating.house && n.rating.from.At.Row > 0 {
		return n.rating.from.At
	}
	return at
}

// withRating puts the cell of the rating in front of the cells of a load.
func (n *node) withRating(cells []Evidence, at schedule.Ref) []Evidence {
	e := Evidence{At: ratingCell(n, at), Role: "rating"}
	if n.rating.from.Had() {
		e.Written = n.rating.from.Written
	}
	return slices.Insert(cells, 0, e)
}

// inWatts shows a share of one known rating as watts against watts; nil when
// the rating is not known exactly. Past the rating the rating itself is shown,
// whichever grade was passed: that is the figure on the label.
func (n *node) inWatts() func(float64) (Interval, float64, string) {
	if !n.rating.watts.exact() {
		return nil
	}
	load, rated := n.load.Watts, n.rating.watts.Low
	return func(limit float64) (Interval, float64, string) { return load, math.Min(limit, 100) / 100 * rated, "W" }
}

// ratingText says what the load is held against: "75 W control", or with its
// derating "100 W control for 100 V (70.7 W at 70.7 V)".
func (n *node) ratingText(thing string) string {
	r := &n.rating
	switch {
	case !r.watts.Known:
		return thing + " of unknown rating"
	case r.note != "":
		return thing + " " + r.note + " (" + span(r.nominal) + " W)"
	}
	text := span(r.nominal) + " W " + thing
	if r.fit == derated {
		text += fmt.Sprintf(" for %s (%s W at %s)", volts(r.ratedV), span(r.watts), volts(n.lineV))
	}
	if r.house {
		text += " (house book)"
	}
	return text
}

// causedElsewhere reports that a node is past a limit only because of another
// cause, which has a finding of its own: taps of another line voltage, or a
// control rated for another one.
func (x *Examination) causedElsewhere(n *node, cl *claim) bool {
	certain, possible := x.weigh(cl)
	if certain == nil && possible == nil || !cl.measured.Known {
		return false
	}
	quiet := func(load, rated Interval) bool {
		probe := *cl
		probe.measured = load.over(rated).scaled(100)
		_, possible := x.weigh(&probe)
		return possible == nil
	}
	return n.marked != n.load.Watts && quiet(n.marked, n.rating.watts) ||
		n.rating.fit == derated && quiet(n.load.Watts, n.rating.nominal)
}

// silentVerdict is the verdict of a claim that belongs to another finding.
func (x *Examination) silentVerdict(cl *claim) Verdict {
	certain, possible := x.weigh(cl)
	if certain != nil {
		return Verdict{Checked: true, Grade: certain.Grade, Certainty: Certain}
	}
	if possible == nil {
		return Verdict{Checked: true, Passed: true}
	}
	return Verdict{Checked: true, Grade: possible.Grade, Certainty: Possible}
}

// keptOut opens the upper end of a claim whose sum leaves rows out that belong
// to another cause: it cannot pass, but it can be past a limit all the same.
func (x *Examination) keptOut(n *node, cl *claim) *claim {
	if n.lowRows+n.oddRows > 0 && cl.measured.Known {
		cl.measured = atLeast(cl.measured.Low)
		if cl.show != nil {
			low, rated := n.load.Watts.Low, n.rating.watts.Low
			cl.show = func(limit float64) (Interval, float64, string) {
				return atLeast(low), math.Min(limit, 100) / 100 * rated, "W"
			}
		}
		cl.message += " (" + n.load.Incomplete + ")"
	}
	return cl
}

// rowGaps asks for the taps and counts that a node's load lacks, one question
// for each zone and model.
func (c *circuit) rowGaps(n *node) []gap {
	var out []gap
	seen := map[[3]string]bool{}
	for _, m := range n.members {
		r := &c.rows[m.row]
		if r.part != counts || r.out != notOut {
			continue
		}
		l := r.l
		if !r.each.exact() {
			k := [3]string{"tap", zoneName(l.Zone), l.Model.Value}
			if !seen[k] {
				seen[k] = true
				at := placeOf(l.Tap.Source, l.At)
				if r.doubted != nil {
					at = *r.doubted
				}
				out = append(out, gap{at, "tap", tapQuestion(r)})
			}
		}
		if !r.units.exact() {
			k := [3]string{"count", zoneName(l.Zone), rowName(l)}
			if !seen[k] {
				seen[k] = true
				out = append(out, gap{placeOf(l.Count.Source, l.At), "quantity", "How many are there: " + rowName(l) + "?"})
			}
		}
		if r.split == unknownHalf {
			k := [3]string{"split", zoneName(l.Zone), ""}
			if !seen[k] {
				seen[k] = true
				out = append(out, gap{l.At, "channel", "Which loudspeakers of " + cmpOr(zoneName(l.Zone), rowName(l)) + " hang on which channel?"})
			}
		}
	}
	slices.SortStableFunc(out, func(a, b gap) int {
		return cmp.Or(a.at.Compare(b.at), cmp.Compare(a.field, b.field), cmp.Compare(a.text, b.text))
	})
	return out
}

func cmpOr(a, b string) string {
	if a != "" {
		return a
	}
	return b
}

// placeOf is the cell of a value, else the row.
func placeOf(s schedule.Source, row schedule.Ref) schedule.Ref {
	if s.At.Row > 0 {
		return s.At
	}
	return row
}

func tapQuestion(r *row) string {
	l := r.l
	text := "Which tap are the loudspeakers"
	if l.Model.Value != "" {
		text += " " + l.Model.Value
	}
	if l.Zone != nil {
		text += " in " + l.Zone.Name
	} else if l.Room.Value != "" {
		text += " in " + l.Room.Value
	}
	text += " set to"
	if len(r.offers) > 0 && !r.tapped {
		text += " (offered: " + span(r.each) + " W)"
	}
	return text + "?"
}
