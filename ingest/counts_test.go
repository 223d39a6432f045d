package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// Descriptions that all begin with a number count their devices, unless it is a size.
func TestCountsAheadOfDescriptions(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "List", "circuit | description | tap\nL1 | 8 Trichter | 15 W\nL2 | 10 Decke | 3 W"))
	want(t, "loudspeakers", describe(j), []string{"8 x 15 W channel L1", "10 x 3 W channel L2"})
	j = jobOf(t, draw(layout.Loudspeakers, "List", "circuit | quantity: Units | tap\nL1 | 12 horns | 15 W\nL2 | 2 ceiling | 3 W"))
	want(t, "loudspeakers", describe(j), []string{"12 x 15 W channel L1", "2 x 3 W channel L2"})
	j = jobOf(t, draw(layout.Loudspeakers, "List", "circuit | description | tap\nL1 | 8 inch ceiling | 15 W\nL2 | 6 inch ceiling | 3 W"))
	want(t, "loudspeakers", describe(j), []string{"1 x 15 W channel L1", "1 x 3 W channel L2"})
}

// A column that was hardly one of outputs gives way to one that names the lines.
func TestLinesBesideAnUnsureColumn(t *testing.T) {
	drawn := draw(layout.Loudspeakers, "Plan", "channel: Symbol | room | quantity | tap | circuit\nT | Hall | 2 | 3 W | C1\nB | Rink | 8 | 15 W | C2")
	drawn.Columns[0].Confidence = 0.3
	want(t, "loudspeakers", describe(jobOf(t, drawn)), []string{"2 x 3 W zone Hall channel C1", "8 x 15 W zone Rink channel C2"})
}

// What each sheet says of its outputs holds for that sheet.
func TestRatingsOfSheets(t *testing.T) {
	one := draw(layout.Loudspeakers, "Z1", "title channel: A1/1\ntitle channel rating: 60 W\nquantity | tap\n4 | 3 W")
	two := draw(layout.Loudspeakers, "Z2", "title channel: A1/2\ntitle channel rating: 120 W\nquantity | tap\n6 | 15 W")
	want(t, "channels", channelRatings(jobOf(t, one, two)), []string{"A1 / 1 60 W ? V", "A1 / 2 120 W ? V"})
	one = draw(layout.Loudspeakers, "Z1", "title : 60 W per output\nquantity | tap | channel\n4 | 3 W | A1/1")
	two = draw(layout.Loudspeakers, "Z2", "title : 120 W per output\nquantity | tap | channel\n6 | 15 W | A1/2")
	want(t, "channels", channelRatings(jobOf(t, one, two)), []string{"A1 / 1 60 W ? V", "A1 / 2 120 W ? V"})
}

// A sum below descriptions that begin with counts does not make them names; a number
// among descriptions without one is asked.
func TestSumsBelowCountsAhead(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "L", "zone | description | tap[W]\nIce | 12 horns | 15\nStand | 8 columns | 10\n | 20 |"))
	if got := show(j.Loudspeakers[0].Count) + " " + show(j.Loudspeakers[1].Count); got != "12 8" {
		t.Errorf("counts %s", got)
	}
	j = jobOf(t, draw(layout.Loudspeakers, "L", "zone | description | tap[W]\nIce | 12 horns | 15\nStand | columns | 10\nGate | horn | 10"))
	if len(asked(j)) != 1 {
		t.Errorf("asked %v", asked(j))
	}
}
