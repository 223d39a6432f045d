package ingest

import "testing"

// Numbered groups that a note rates as outputs of the amplifier are these, and no zones. Common practice, no source.
func TestGroupsThatTheAmplifierRates(t *testing.T) {
	const list = "Zwembad, omroep 100 V\n|\nWaar | Hoeveel luidsprekers | Aftakking (W) | Groep\nBad | 6 | 20 | 1\nHal | 4 | 6 | 2\nKassa | 1 | 3 | 2\n|\n"
	j := wholeJob(t, list+"De versterker heeft twee uitgangen: groep 1 is 240 W, groep 2 is 60 W.")
	want(t, "rated", describe(j), []string{"6 x 20 W zone Bad channel 1", "4 x 6 W zone Hal channel 2", "1 x 3 W zone Kassa channel 2"})
	want(t, "outputs", channelRatings(j), []string{"1 240 W 100 V", "2 60 W 100 V"})
	j = wholeJob(t, list)
	want(t, "not said", describe(j), []string{"6 x 20 W zone 1", "4 x 6 W zone 2", "1 x 3 W zone 2"})
}
