package ingest

import (
	"testing"
)

// Of the revisions of one list on sheets of their own the latest counts; lists of different places are none. Common
// practice, no source.
func TestRevisionsOnSheets(t *testing.T) {
	list := func(sheet, rows string) string { return "## " + sheet + "\nZone | Qty | Tap | Amp\n" + rows }
	const first, second = "Hall | 6 | 6W | 1\nStage | 2 | 10W | 1\n", "Hall | 8 | 6W | 1\nStage | 2 | 10W | 1\nFoyer | 4 | 3W | 2\n"
	wanted := []string{"8 x 6 W zone Hall channel 1 / 1", "2 x 10 W zone Stage channel 1 / 1", "4 x 3 W zone Foyer channel 2 / 1"}
	for _, names := range [][2]string{{"Rev A", "Rev B"}, {"Speakers v1", "Speakers v2"}, {"Stand 2019", "Stand 2023"}, {"HP ind A", "HP ind B"},
		{"Revisión 1", "Revisión 2"}, {"Elenco revisione A", "Elenco revisione B"}, {"versie 1", "versie 2"}, {"Lautsprecher 2018", "Lautsprecher 2021"}} {
		want(t, names[0], describe(wholeJob(t, list(names[0], first)+list(names[1], second))), wanted)
		want(t, names[1]+" first", describe(wholeJob(t, list(names[1], second)+list(names[0], first))), wanted)
	}
	j := wholeJob(t, list("V1", first)+list("V2", second)) // amplifiers
	if n := len(j.Loudspeakers); n != 5 {
		t.Errorf("sheets of amplifiers: %d rows", n)
	}
	j = wholeJob(t, list("v1", "Hall | 6 | 6W | 1\n")+list("v2", "Foyer | 4 | 3W | 2\n"))
	if len(j.Loudspeakers) != 2 {
		t.Errorf("lists of different places: %q", describe(j))
	}
}
