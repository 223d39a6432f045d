package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// The far ends of a cable book are its loudspeakers; what feeds each is found
// by following the cables back, over joints and controls.
func TestCableBooks(t *testing.T) {
	j := jobOf(t, draw(layout.Cables, "C", `
		cable | from | to | tap[W] | length[m] | gauge[mm2]
		C1 | A1.1 | D1 | 6 | 28 | 1.5
		C2 | D1 | D2 | 6 | 10 | 1.5
		C3 | D1 | D3 | 3 | 12 | 1.5
		C4 | A1.2 | D4 | 15 | 75 | 2.5`))
	want(t, "loudspeakers", describe(j), []string{
		"D1 1 x 6 W channel A1 / 1", "D2 1 x 6 W channel A1 / 1", "D3 1 x 3 W channel A1 / 1", "D4 1 x 15 W channel A1 / 2"})
	for i, from := range []string{"A1.1", "D1", "D1", "A1.2"} {
		if run := j.Loudspeakers[i].Run; run == nil || run.From.Text.Value != from || !run.From.Resolved() {
			t.Errorf("run %d: %+v, want one from %s", i, run, from)
		}
	}

	j = jobOf(t, draw(layout.Cables, "C", `
		cable | from | to | length[m] | stated load[W]
		C1 | AMP1/CH1 | JB-01 | 45 | 180
		C2 | JB-01 | SP-01 to SP-06 | 60 | 90
		C3 | JB-01 | SP-07 to SP-12 | 75 | 90
		C4 | AMP1/CH2 | VC-01 | 30 | 36
		C5 | VC-01 | SP-20 to SP-25 | 25 | 36`))
	want(t, "loudspeakers", describe(j), []string{
		"SP-01 to SP-06 6 x 15 W channel AMP1 / 1", "SP-07 to SP-12 6 x 15 W channel AMP1 / 1",
		"SP-20 to SP-25 6 x 6 W control VC-01 channel AMP1 / 2"})
	if len(j.Controls) != 1 || j.Controls[0].Run == nil {
		t.Errorf("controls %+v", j.Controls)
	}
	if len(j.Cables) != 5 {
		t.Errorf("%d cables, want 5", len(j.Cables))
	}
}

// A cable list of places states what feeds what, and lists no loudspeakers.
func TestCableListsAreNoCableBooks(t *testing.T) {
	for _, table := range []string{
		"cable | from | to | length[m] | stated load[W]\nC1 | A1.1 | Zone 1 | 45 | 80\nC2 | A1.2 | Zone 2 | 60 | 90",
		"cable | from | to | length[m]\nC1 | A1.1 | SP-1 | 45\nC2 | SP-1 | SP-2 | 60",
	} {
		if j := jobOf(t, draw(layout.Cables, "C", table)); len(j.Loudspeakers) != 0 || len(j.Cables) != 2 {
			t.Errorf("%d loudspeakers, %d cables", len(j.Loudspeakers), len(j.Cables))
		}
	}
}

// A cable list may name the rack before the output, and rate the control that a
// cable leads to beside it. Common practice, no source.
func TestRacksAndControlsInCableLists(t *testing.T) {
	j := wholeJob(t, `
Cable schedule - loudspeaker lines 100 V
Cable | From | To | Size | Length m | Load at end W | Notes
LC1 | Rack A1/1 | VC1 | 2 x 2.5 mm² | 12 | | VC1 36 W at desk
LC2 | VC1 | LS1 | 2 x 1.5 mm² | 8 | 6 |
LC3 | LS1 | LS2 | 2 x 1.5 mm² | 6 | 6 |
LC4 | Rack A1/2 | LS3 | 2 x 2.5 mm² | 60 | 15 |
LC5 | LS3 | LS4 | 2 x 2.5 mm² | 25 | 15 |

A1: 2 x 120 W`)
	if got := controlsOf(j); got != "VC1 36 W x2" {
		t.Errorf("controls %s", got)
	}
	want(t, "outputs", channelRatings(j), []string{"A1 / 1 120 W 100 V", "A1 / 2 120 W 100 V"})
}

// Each device with the one before it, the first of a line from the rack: its line is that of its row. Common practice, no source.
func TestLinesOfDevicesFromTheRack(t *testing.T) {
	for _, c := range []struct{ line, from, rack string }{
		{"Line", "Comes from", "rack"}, {"Linie", "Kommt von", "Schrank"}, {"Départ", "Arrive de", "baie"},
		{"Línea", "Llega de", "armario"}, {"Linea", "Arriva da", "armadio"}, {"Lijn", "Komt van", "kast"},
	} {
		j := wholeJob(t, "Ice rink\n|\nTag | Where | Tap W | "+c.line+" | "+c.from+" | m | mm²\nS1-01 | Hall | 15 | D1 | "+c.rack+" | 48 | 2x2,5\nS1-02 | Hall | 15 | D1 | S1-01 | 12 | 2x2,5\n"+
			"S2-01 | Yard | 10 | D2 | "+c.rack+" | 36 | 2x2,5\nS2-02 | Yard | 10 | D2 | S2-01 | 9 | 2x2,5\nS2-03 | Gate | 10 | D2 | S2-02 | 14 | 2x2,5\n")
		want(t, c.from, describe(j), []string{"S1-01 1 x 15 W zone Hall channel D1", "S1-02 1 x 15 W zone Hall channel D1", "S2-01 1 x 10 W zone Yard channel D2",
			"S2-02 1 x 10 W zone Yard channel D2", "S2-03 1 x 10 W zone Gate channel D2"})
	}
}

// The far ends of the cables may be the places of the loudspeakers: each hangs on the output that its chain begins with.
func TestPlacesAtTheFarEnds(t *testing.T) {
	for _, head := range []string{"Tratta | Da | A | Metri | Sezione | Diffusori in A | Presa", "Run | From | To | Metres | Size | Loudspeakers at far end | Tap", "Strecke | Von | Nach | Meter | Querschnitt | Lautsprecher am Ende | Abgriff"} {
		j := wholeJob(t, "## S\nSpecchio Stables\nAmplifier LX, 100 V: output 1 120 W, output 2 60 W\n\n"+head+"\n"+
			"T1 | LX output 1 | Riding school | 40 | 2.5 mm² | 6 | 10 W\nT2 | Riding school | Small stand | 18 | 2.5 mm² | 2 | 6 W\n"+
			"T3 | LX output 2 | Secretary | 12 | 1.5 mm² | 2 | 3 W\nT4 | Secretary | Members | 9 | 1.5 mm² | 4 | 3 W\nT5 | Members | Saddlery | 6 | 1.5 mm² | 1 | 1.5 W")
		var got []string
		for _, l := range j.Loudspeakers {
			if l.Channel == nil {
				got = append(got, "-")
				continue
			}
			got = append(got, l.Channel.Label())
		}
		want(t, head, got, []string{"LX / 1", "LX / 1", "LX / 2", "LX / 2", "LX / 2"})
	}
}
