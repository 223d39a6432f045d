package audit

import (
	_ "embed"
	"fmt"

	"lineaudit/audit/schedule"
)

//go:embed doc/tap-above-rating.md
var tapAboveRatingDoc string

// tapAboveRating finds taps above the rated power of their loudspeaker.
var tapAboveRating = &Rule{
	Name:  "tap-above-rating",
	Title: "a loudspeaker is tapped above its rated power",
	Why:   "The driver is fed more than it is built for: it distorts and fails.",
	Doc:   tapAboveRatingDoc,
	Limits: []Limit{
		{Name: "fault", Grade: Fault, Default: 100, Unit: "% of the loudspeaker's rating", Source: "the tap never exceeds the continuous rating: common practice, no source"},
	},
	Silent: []string{
		"no rated power is stated for the loudspeaker",
		"the tap equals the rating",
		"the tap draws more only because it is meant for another line voltage: that is voltage-mismatch",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "read the rating from the loudspeaker and the tap from its transformer",
	Check:    checkTapAboveRating,
}

func checkTapAboveRating(x *Examination) error {
	c := x.circuit
	groups := c.alikeRows(func(r *row) bool { return c.ratedOf(r).Had() })
	held := 0
	for i := range groups {
		g := &groups[i]
		r := &c.rows[g.rows[0]]
		rated := c.ratedOf(r)
		watts, limit := r.marked, quantity(rated)
		share := watts.over(limit).scaled(100)
		if x.holds(share, schedule.AnyUse) {
			held++
			continue
		}
		cl := g.claim(c)
		cl.measured, cl.unit = share, "% of the loudspeaker's rating"
		cl.message = fmt.Sprintf("tapped at %s W, rated %s W", span(watts), span(limit))
		cl.show = func(float64) (Interval, float64, string) { return watts, limit.High, "W" }
		cells := cl.cells
		cl.cells = func() []Evidence { return appendCell(cells(), rated.Source, "rating") }
		x.judge(cl)
	}
	x.passAll(held, "kind of loudspeaker", "tapped within its rated power")
	return nil
}

// ratedOf is the rated power of a loudspeaker: the schedule's, else the house
// book's for this line.
func (c *circuit) ratedOf(r *row) schedule.Quantity[schedule.Watts] {
	if r.l.Rated.Had() && r.l.Rated.High > 0 {
		return r.l.Rated
	}
	if m := c.set.model(r.l.Model, "loudspeaker"); m != nil {
		w, _ := m.rated(r.lineV)
		return w
	}
	return schedule.Quantity[schedule.Watts]{}
}
