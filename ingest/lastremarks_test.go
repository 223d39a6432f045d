package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// A last column of words under a header that nobody taught holds remarks; the counts of
// descriptions are counts to remarks and to words for each place. Common practice, no source.
func TestRemarksUnderAnUnknownHeader(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Walk", "room | description | tap[W] | : what I saw\n"+
		"North | 4 horns | 15 | all ok\nSouth | 4 horns | 15 | two of them now 7.5 W\nCafe | 6 ceilings | 6 |\n"+
		"Plant | 1 horn | 10 | disconnected\nRooms 1-4 | 2 per room | 3 | blew once, mended"))
	want(t, "walked", describe(j), []string{"4 x 15 W zone North", "2 x 7.5 W zone South", "2 x 15 W zone South", "6 x 6 W zone Cafe",
		"1 x 10 W zone Plant removed", "8 x 3 W zone Rooms 1-4"})

	j = jobOf(t, draw(layout.Loudspeakers, "Walk", "room | quantity | tap[W] | : what I saw\n"+
		"North | 4 | 15 | grey\nSouth | 4 | 15 | disconnected\nCafe | 6 | 6 | white\nPlant | 1 | 10 | grey"))
	if f := j.Tables[0].Columns[3].Field; f != vocabulary.Unknown.String() {
		t.Errorf("a column of colours is taken for %s", f)
	}
}
