package audit

import (
	_ "embed"
	"fmt"
	"math"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

//go:embed doc/tap-not-offered.md
var tapNotOfferedDoc string

// tapNotOffered finds taps that the model's transformer does not have.
var tapNotOffered = &Rule{
	Name:  "tap-not-offered",
	Title: "a loudspeaker is listed at a tap that its transformer does not have",
	Why:   "The installer picks a neighbouring tap: the load and the level are not those on paper, often by half or by double.",
	Doc:   tapNotOfferedDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 4, Unit: "% from the nearest offered tap", Source: "common practice, no source",
			Note: "so that 1.2 for 1.25 W and 0.62 for 0.625 W pass as the rounding they are"},
	},
	Silent: []string{
		"neither the schedule nor the house book lists the taps of the model",
		"the tap is a rounding of an offered one",
		"the tap is written as a position, not in watts",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "read the tap from the transformer",
	Check:    checkTapNotOffered,
}

func checkTapNotOffered(x *Examination) error {
	c := x.circuit
	groups := c.alikeRows(func(r *row) bool { return len(r.offers) > 0 && r.l.TapPosition.Value == "" })
	held := 0
	var taps []float64
	for i := range groups {
		g := &groups[i]
		r := &c.rows[g.rows[0]]
		taps = taps[:0]
		for _, o := range r.offers {
			w := o.watts
			if r.lineV > 0 && r.tapV > 0 {
				w *= powerRatio(r.lineV, r.tapV)
			}
			taps = append(taps, w)
		}
		slices.Sort(taps)
		taps = slices.Compact(taps)
		nearest := taps[0]
		for _, w := range taps {
			if math.Abs(math.Log(w/r.marked.Low)) < math.Abs(math.Log(nearest/r.marked.Low)) {
				nearest = w
			}
		}
		off := Exact(100 * math.Abs(r.marked.Low-nearest) / nearest)
		if x.holds(off, schedule.AnyUse) {
			held++
			continue
		}
		cl := g.claim(c)
		cl.measured, cl.unit = off, "% from the nearest offered tap"
		marked := r.marked
		cl.show = func(float64) (Interval, float64, string) { return marked, nearest, "W" }
		cl.message = fmt.Sprintf("tapped at %s W; offered are %s W, the nearest is %s W", figure(marked.Low), offersText(taps), figure(nearest))
		x.judge(cl)
	}
	x.passAll(held, "kind of loudspeaker", "tapped as its transformer offers")
	return nil
}

func offersText(taps []float64) string {
	var out []string
	for _, w := range taps {
		out = append(out, figure(w))
	}
	return strings.Join(out, ", ")
}
