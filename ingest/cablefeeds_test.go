package ingest

import (
	"strings"
	"testing"
)

// Lists of cables alone say what feeds each loudspeaker, over other loudspeakers and controls; in a
// ring nothing does. Common practice, no source.
func TestFeedsOfCables(t *testing.T) {
	const list = "## List\nPoint museum - 100 V, AMP1 has 2 channels of 120 W\n|\nTag | Location | Type | Tap\nLS1 | Gallery | ceiling | 6W\nLS2 | Gallery | ceiling | 6W\nLS3 | Staff | ceiling | 3W\nLS4 | Office | ceiling | 3W\nLS5 | Yard | horn | 15W\n" +
		"## Cables\nCable | From | To | Length (m) | Size (mm2)\n"
	j := wholeJob(t, list+"C1 | AMP1 ch 1 | LS1 | 32 | 2 x 1.5\nC2 | LS1 | LS2 | 9 | 2 x 1.5\nC3 | AMP1 ch 2 | VC1 | 22 | 2 x 1.5\nC4 | VC1 | LS3 | 6 | 2 x 1.5\nC5 | LS3 | LS4 | 8 | 2 x 1.5\nC6 | AMP1 ch 2 | LS5 | 40 | 2 x 2.5\n|\nVC1 = volume control in the corridor, 10 W")
	want(t, "feeds", describe(j), []string{"LS1 1 x 6 W zone Gallery channel 1 / 1", "LS2 1 x 6 W zone Gallery channel 1 / 1", "LS3 1 x 3 W zone Staff control VC1 channel 1 / 2",
		"LS4 1 x 3 W zone Office control VC1 channel 1 / 2", "LS5 1 x 15 W zone Yard channel 1 / 2"})
	if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "10" || j.Controls[0].Channel == nil {
		t.Errorf("controls %+v", j.Controls)
	}
	j = wholeJob(t, list+"C1 | LS2 | LS1 | 32 | 2 x 1.5\nC2 | LS1 | LS2 | 9 | 2 x 1.5\nC3 | AMP1 ch 2 | LS3 | 22 | 2 x 1.5\nC4 | LS3 | LS4 | 6 | 2 x 1.5\nC5 | LS4 | LS5 | 8 | 2 x 1.5")
	want(t, "a ring", describe(j), []string{"LS1 1 x 6 W zone Gallery", "LS2 1 x 6 W zone Gallery", "LS3 1 x 3 W zone Staff channel 1 / 2", "LS4 1 x 3 W zone Office channel 1 / 2", "LS5 1 x 15 W zone Yard channel 1 / 2"})
}

// Cables may be called by the zones that they lead to, under a word for lines. Common practice, no source.
func TestZonesUnderAWordForLines(t *testing.T) {
	j := wholeJob(t, "Ice house - 100 V\n|\nQty | Description | Tap\nFOYER - amp B (60 W)\n4 | ceiling speaker | 4 W\nRINK - amp A (250 W)\n10 | horn | 15 W\n|\nHome run | Length | Cable\nFoyer | 42 m | 2 x 1.5 mm2\nRink | 94 m | 2 x 2.5 mm2")
	var got []string
	for _, c := range j.Cables {
		got = append(got, c.Zone.Name+" "+show(c.Length)+" "+show(c.Area))
	}
	want(t, "cables", got, []string{"FOYER 42 1.5", "RINK 94 2.5"})
	want(t, "outputs", channelRatings(j), []string{"amp B / 1 60 W 100 V", "amp A / 1 250 W 100 V"})
}

// Cables that begin at outputs whose names are letters behind the amplifier's, as loudspeakers name them too,
// make no amplifiers of these. Common practice, no source.
func TestCablesFromOutputsByLetters(t *testing.T) {
	for _, c := range []struct{ amp, output string }{{"AMP1", "-A"}, {"AMP 1", " / A"}, {"V1", "-A"}, {"END1", "-A"}, {"Ampli1", ".A"}} {
		out := c.amp + c.output
		other := strings.TrimSuffix(out, "A") + "B"
		j := wholeJob(t, "## List\nHall of boats - 70 V\n|\nModel | Zone | Qty | Tap | Output\nhorn | Slip | 4 | 30 W | "+out+"\nceiling | Lobby | 5 | 5 W | "+other+"\n|\n"+c.amp+" = 2 x 200 W\n"+
			"## Cables\nCable | From | To | Size | Length (ft)\nC1 | "+out+" | Slip | 12 AWG | 310\nC2 | "+other+" | Lobby | 16 AWG | 140")
		want(t, out, channelRatings(j), []string{c.amp + " / A 200 W 70 V", c.amp + " / B 200 W 70 V"})
		if len(j.Cables) != 2 || j.Cables[0].From.Channel == nil {
			t.Errorf("%s: cables %v", out, j.Cables)
		}
	}
}
