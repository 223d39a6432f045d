package ingest

import "testing"

// The line voltage of all lines in a sentence on a sheet of its own.
func TestLineVoltageOnTheFrontSheet(t *testing.T) {
	for _, c := range []string{"System | Public address, all speaker lines 100 V", "Anlage | ELA, alle Lautsprecherlinien 100 V", "System | Paging, 100 V lines throughout"} {
		j := wholeJob(t, "## Front\nAS FITTED RECORD\nSite | Elmfield Baths\nJob no. | P-118\n"+c+"\nDrawn up by | site engineer\nChecked | office\n\n## Speakers\nArea | Qty | Tap (W)\nHall | 4 | 6\nYard | 2 | 3\n\n## Rack\nAmplifier | Output | Area served | Rated output (W)\nAmp 1 | 1 | Hall | 60\nAmp 1 | 2 | Yard | 60")
		want(t, c, []string{show(j.LineVolts)}, []string{"100"})
	}
}
