package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// A title that rates an amplifier and bridges two of its outputs names the amplifier of
// the outputs below it; the pair is one output with a rating of its own.
func TestAmplifiersInTitlesOverOutputs(t *testing.T) {
	tb := draw(layout.Loudspeakers, "F", `
		title channel: AMP 6   4 x 125W   CH 1+2 BRIDGED = 250W   100V
		channel | room | quantity | tap[W]
		1+2 | Pool hall | 12 | 15
		3 | Learner pool | 4 | 10`)
	j := jobOf(t, tb)
	want(t, "loudspeakers", describe(j), []string{"12 x 15 W zone Pool hall channel AMP 6 / 1+2", "4 x 10 W zone Learner pool channel AMP 6 / 3"})
	want(t, "channels", channelRatings(j), []string{"AMP 6 / 1+2 250 W 100 V", "AMP 6 / 3 125 W 100 V", "AMP 6 / 4 125 W 100 V"})
}

// What a list of outputs says in another column than that of the outputs bridges them too.
func TestBridgedInAColumnOfItsOwn(t *testing.T) {
	j := jobOf(t, draw(layout.Channels, "A", `
		amplifier | channel | model: Mode | channel rating[W] | circuit
		A1 | 1-2 | Bridged | 400 | C1
		A1 | 3 | Single | 200 | C2`), draw(layout.Loudspeakers, "L", "circuit | tag | tap[W]\nC1 | LS1 | 20\nC2 | LS2 | 10"))
	want(t, "loudspeakers", describe(j), []string{"LS1 1 x 20 W channel A1 / 1+2", "LS2 1 x 10 W channel A1 / 3"})
}

// Of taps stated at two line voltages that counts which a sentence gives the line.
func TestTapsAtTheLineThatASentenceStates(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "C", `
		title : AMP 3: 4 x 60W, 70V LINE
		channel | room | quantity | tap[W]@100: 100 V tap | tap[W]@70: W on 70 V
		1 | Lane | 4 | 20 | 10`))
	want(t, "loudspeakers", describe(j), []string{"4 x 10 W at 70 V zone Lane channel 3 / 1"})
	if len(j.Questions) > 0 {
		t.Errorf("asked %v", asked(j))
	}
}

// Sheets that are named after racks are no zones.
func TestSheetsOfRacksAreNoZones(t *testing.T) {
	list := func(sheet string) *layout.Table {
		return draw(layout.Loudspeakers, sheet, "title : "+sheet+"\nroom | quantity | tap[W]\nHall | 4 | 6\nStair | 2 | 3")
	}
	for _, tt := range []struct {
		first, second, zone string
	}{{"Rack F", "Rack G", "Hall"}, {"Pool", "Stand", "Pool"}} {
		j := jobOf(t, list(tt.first), list(tt.second))
		if got := j.Loudspeakers[0].Zone; got == nil || got.Name != tt.zone {
			t.Errorf("%s: zone %+v, want %s", tt.first, got, tt.zone)
		}
	}
}

// A spare output in the last row of a list has nothing of the row above: the line above
// hangs on its own output alone.
func TestSpareOutputsFeedNothing(t *testing.T) {
	tb := draw(layout.Channels, "A", "amplifier | channel | channel rating[W] | circuit | notes\nV2 | 1 | 120 | 3 |\nV2 | 2 | 120 | 4 |\nV2 | 3 | 120 | 4 | reserve")
	last := &tb.Records[2].Values[3]
	last.How, last.Because = schedule.CarriedDown, "blank under D3"
	j := jobOf(t, tb, draw(layout.Loudspeakers, "L", "circuit | room | quantity | tap[W]\n3 | Hal | 6 | 3\n4 | Bad | 10 | 3"))
	want(t, "loudspeakers", describe(j), []string{"6 x 3 W zone Hal channel V2 / 1", "10 x 3 W zone Bad channel V2 / 2"})
}

// A column whose cells are the controls that loudspeakers name lists controls, though its
// header is a word for taps: "Réglage".
func TestListsOfControlsUnderAWordForTaps(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "HP", "zone | quantity | tap[W] | control\nZ1 | 4 | 6 | POT1\nZ2 | 5 | 3 | POT2"),
		draw(layout.Loudspeakers, "R", "tap: Réglage | room | loudspeaker rating: P. max\nPOT1 | Serre | 50 W\nPOT2 | Bureau | 12 W"))
	if len(j.Loudspeakers) != 2 || len(j.Controls) != 2 || show(j.Controls[0].Rated) != "50" || show(j.Controls[1].Rated) != "12" {
		t.Errorf("%d loudspeakers, controls %+v", len(j.Loudspeakers), j.Controls)
	}
}
