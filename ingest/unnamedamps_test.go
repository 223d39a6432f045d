package ingest

import "testing"

// Titles of sections may rate the amplifier of each without naming it. Common
// practice, no source.
func TestAmplifiersWithoutNamesInTitles(t *testing.T) {
	j := wholeJob(t, `
Larch Mere Gardens - loudspeakers, 100 V
Building: Palm House
Amplifier: 240 W single channel 100 V
Loudspeaker | Tapping | Number
Column in the nave | 10W | 8
Ceiling in the shop | 3W | 4
Building: Orangery
Amplifier: 60 W 100 V
Loudspeaker | Tapping | Number
Wall cabinet | 6W | 6
Horn on the terrace | 15W | 2`)
	want(t, "ratings", channelRatings(j), []string{"amplifier (Palm House) / 1 240 W 100 V", "amplifier (Orangery) / 1 60 W 100 V"})
}
