package ingest

import "testing"

// A title block that names an output rates it, sheet by sheet; what it says of a
// control, or was measured, is neither a rating of an output nor a zone. Common practice, no source.
func TestRatingsInTitleBlocks(t *testing.T) {
	block := func(sheet, output, rated, measured string) string {
		return "## " + sheet + "\nOrchid house - test sheet|||Job|OC 66-2\nAmplifier|PA-1|Output|" + output + "\nRated|" + rated + "|Line volts|100 V\nMeasured at 1 kHz|" + measured + "\n|\n" +
			"Room|Speaker|Qty|Tap set\nHall|cabinet|6|6 W\nLobby|cabinet|2|3 W\n"
	}
	j := wholeJob(t, block("Line 1", "1", "120 W", "152 ohm")+block("Line 2", "2", "60 W", "104 ohm"))
	want(t, "outputs", ratedOutputs(j), []string{"PA-1 / 1 120 W", "PA-1 / 2 60 W"})
	for i, z := range zoned(j) {
		if z != "Hall" && z != "Lobby" {
			t.Errorf("loudspeaker %d is in zone %q", i, z)
		}
	}

	j = wholeJob(t, "Job|GH-220|Line|100V\nAmp|GH-A|Output|250W\n|\nHouse|Spkr type|Qty|Tap W|Vol ctrl\nCactus|5in surface|4|6|\nFern|5in surface|6|6|VC1")
	want(t, "one amplifier", ratedOutputs(j), []string{"GH-A / 1 250 W"})

	j = wholeJob(t, "Amplifier|PA-1|Output|1\nAttenuators rated|36 W|Line volts|100 V\n|\nRoom|Qty|Tap|Attenuator\nHall|4|6 W|AT1\nLobby|2|3 W|")
	want(t, "of the controls", ratedOutputs(j), []string{"PA-1 / 1 ? W"})
}
