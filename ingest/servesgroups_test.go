package ingest

import "testing"

// Controls that say which loudspeakers they serve, by tags of rows that have several: what they serve
// counts, not the room in which they stand. Common practice, no source.
func TestControlsOfGroups(t *testing.T) {
	j := wholeJob(t, `
## Speakers
Mill museum - 100 V
|
Tags | Room | Type | Tap | Ch
H1-H4 | Wheel room | horn | 10 W | 1
H5-H6 | Loft | horn | 10 W | 1
H7 | Stair | horn | 5 W | 1
H8-H9 | Store | ceiling | 3 W | 1
## Controls
Control | Controls speakers | Mounted in | Max
K1 | H5 to H7 | Loft | 36 W
K2 | H1..H4 | Stair | 60 W
|
Ch | Amp | W
1 | P1 | 120`)
	want(t, "served", describe(j), []string{"H1-H4 4 x 10 W zone Wheel room control K2 channel P1 / 1", "H5-H6 2 x 10 W zone Loft control K1 channel P1 / 1",
		"H7 1 x 5 W zone Stair control K1 channel P1 / 1", "H8-H9 2 x 3 W zone Store channel P1 / 1"})

	j = wholeJob(t, `
## Speakers
Mill museum - 100 V
|
Tags | Room | Type | Tap
H1-H4 | Wheel room | horn | 10 W
H5-H6 | Loft | horn | 10 W
## Controls
Control | Serves | Max
K1 | H3 to H6 | 36 W`)
	want(t, "some of a row", asked(j), []string{"A4 control"})
}
