package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// TestValuesThatCannotBeAreRefused: a cell that was understood and cannot be
// is neither a value nor a question; a column full of them is one question.
func TestValuesThatCannotBeAreRefused(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Devices", `
		tag | zone | tap[W] | quantity | gauge | length[m]
		LS-1 | Pond | -5 W | 1 | 1.5 mm2 | 50 m
		LS-2 | Pond | 5000 W | 1 | 1.5 mm2 | 50 m
		LS-3 | Quay | 5 W | 9000000 | 0 mm2 | 50 m
		LS-4 | Lawn | 0 ohm | 1 | 1500 mm2 | -90 m`))
	var got []string
	for _, r := range j.Refused {
		got = append(got, r.At.Cell()+" "+r.Field+" "+r.Why)
	}
	want(t, "refused", got, []string{"C2 tap negative", "C3 tap too large", "D4 quantity too large", "E4 gauge zero", "C5 tap zero", "E5 gauge too large", "F5 length negative"})
	want(t, "questions", asked(j), nil)
	if l := j.Loudspeakers[0]; l.Tap.Had() {
		t.Errorf("a tap of %s W out of a negative cell", show(l.Tap))
	}

	j = jobOf(t, draw(layout.Loudspeakers, "Devices", `
		tag | tap[W]
		LS-1 | -5
		LS-2 | -5
		LS-3 | -5
		LS-4 | -5
		LS-5 | -5`))
	want(t, "questions", asked(j), []string{"B1 tap"})
	if len(j.Refused) > 0 {
		t.Errorf("refused %+v", j.Refused)
	}
}

// TestLoadsOfZonesOnOneOutput: an output that comes again for another zone
// carries the loads of both.
func TestLoadsOfZonesOnOneOutput(t *testing.T) {
	j := jobOf(t, draw(layout.Channels, "Zones", `
		zone | stated load[W] | amplifier | channel | channel rating
		Lawn | 90 W | A1 | 1 | 120 W
		Quay | 45 W | A1 | 1 | 120 W
		Pond | 60 W | A1 | 2 | 120 W`))
	var got []string
	for _, l := range j.Loudspeakers {
		got = append(got, l.Zone.Name+" "+show(l.RowTotal)+" W on "+l.Channel.Label())
	}
	want(t, "loads", got, []string{"Lawn 90 W on A1 / 1", "Quay 45 W on A1 / 1", "Pond 60 W on A1 / 2"})
	want(t, "questions", asked(j), nil)
}
