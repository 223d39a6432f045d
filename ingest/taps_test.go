package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// A transformer draws less at a lower line voltage: with a tap for each and no
// word of the line, the load lies between, and the line voltage is asked.
func TestTapsForSeveralLines(t *testing.T) {
	table := "tag | tap[W]@100 | tap[W]@70 | channel\nLS-1 | 5 | 2.5 | 1\nLS-2 | 10 | 5 | 1"
	j := jobOf(t, draw(layout.Loudspeakers, "L", table))
	want(t, "loudspeakers", describe(j), []string{"LS-1 1 x 2.5..5 W channel 1", "LS-2 1 x 5..10 W channel 1"})
	want(t, "questions", asked(j), []string{"B1 line voltage"})
	j = jobOf(t, draw(layout.Loudspeakers, "L", "title line voltage: 70 V\n"+table))
	want(t, "loudspeakers", describe(j), []string{"LS-1 1 x 2.5 W at 70 V channel 1", "LS-2 1 x 5 W at 70 V channel 1"})
	j = jobOf(t, draw(layout.Loudspeakers, "L", "tag | tap[W]@70 | tap[W]@25 | channel\nLS-1 | 5 | | 1\nLS-2 | | 2 | 2"))
	want(t, "loudspeakers", describe(j), []string{"LS-1 1 x 5 W at 70 V channel 1", "LS-2 1 x 2 W at 25 V channel 2"})
}

// One of several taps in bold or underlined is the one that is set; common practice, no source.
func TestTapInBold(t *testing.T) {
	table := draw(layout.Loudspeakers, "L", "tag | room | tap\nLS-1 | Dock | 5/10/20 W\nLS-2 | Dock | 5/10/20 W\nLS-3 | Dock | 5/10/20 W")
	table.Records[0].Values[2].Cell.SetKept("10")
	table.Records[1].Values[2].Cell.SetKept("W")
	j := jobOf(t, table)
	var got []string
	for _, l := range j.Loudspeakers {
		got = append(got, show(l.Tap))
	}
	want(t, "taps", got, []string{"10", "5..20", "5..20"})
}

// A matrix or a list may put the word before the mark of a type schedule.
func TestTypeBehindAWord(t *testing.T) {
	for _, written := range []string{"L1", "Type L1", "Typ L1", "tipo L1"} {
		j := jobOf(t, draw(layout.Types, "Types", "tag | tap[W]\nL1 | 3\nL2 | 6"),
			draw(layout.Loudspeakers, "Rooms", "room | model | quantity\nHall | "+written+" | 4"))
		if got := show(j.Loudspeakers[0].Tap); got != "3" {
			t.Errorf("%s: tap %s", written, got)
		}
	}
}
