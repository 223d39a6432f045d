package ingest

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
)

// Books that keep the list that was there before: it counts nothing, and says so. Common practice, no source.
func TestOutdatedSheets(t *testing.T) {
	const list = "Where | Kind | Qty | W | Amp\nHall | ceiling | 4 | 6 | A\nYard | horn | 2 | 15 | A\n"
	for _, c := range []struct{ sheet, title string }{
		{"Speakers 2016 (superseded)", "Ice hall - speakers"},
		{"Speakers 2016", "Ice hall - speakers 2016, DO NOT USE"},
		{"Lautsprecher alt", "Eishalle - Lautsprecher, Stand 2016, veraltet!"},
		{"Elenco", "Palaghiaccio - elenco 2016 - non usare"},
		{"Vervallen", "IJsbaan - luidsprekers"},
	} {
		j := wholeJob(t, "## Now\nIce hall - as left in 2023, replaces the list of 2016\n|\n"+list+"Amp A: 60 W\n|\n## "+c.sheet+"\n"+c.title+"\n|\n"+
			strings.ReplaceAll(list, "| 4 |", "| 3 |")+"\nAmp A: 240 W")
		want(t, c.sheet, describe(j), []string{"4 x 6 W zone Hall channel A / 1", "2 x 15 W zone Yard channel A / 1"})
		n := 0
		for _, o := range j.LeftOut {
			if o.Kind == schedule.OutdatedRow {
				n++
			}
		}
		if n != 2 {
			t.Errorf("%s: %d rows left out", c.sheet, n)
		}
		want(t, c.sheet, channelRatings(j), []string{"A / 1 60 W ? V"})
	}
}

// What is said of a device or of another list does not make a list outdated, nor is the only list left out.
func TestListsThatAreNotOutdated(t *testing.T) {
	const list = "Where | Kind | Qty | W | Amp\nHall | ceiling | 4 | 6 | A\nYard | horn | 2 | 15 | A\n"
	for _, title := range []string{"Rev C - supersedes rev B", "Do not use output 4", "Ice hall, replaces the list of 2016", "The amplifier is obsolete", "Les haut-parleurs sont obsolètes"} {
		j := wholeJob(t, "## A\nIce hall\n|\n"+list+"\n## B\n"+title+"\n|\n"+strings.ReplaceAll(strings.ReplaceAll(list, "Hall", "Stand"), "Yard", "Quay"))
		if n := len(j.Loudspeakers); n != 4 {
			t.Errorf("%s: %d rows of loudspeakers", title, n)
		}
	}
	if j := wholeJob(t, "Ice hall - superseded\n|\n"+list); len(j.Loudspeakers) != 2 {
		t.Errorf("the only list: %d rows", len(j.Loudspeakers))
	}
}

// The rows of a list that is no longer valid might count where they stand at places of their own; where
// the valid list has one of these, they are an older state of it.
func TestOutdatedRowsAtPlacesOfTheirOwn(t *testing.T) {
	const list = "Where | Kind | Qty | W | Amp\nHall | ceiling | 4 | 6 | A\nYard | horn | 2 | 15 | A\n"
	for _, c := range []struct {
		places string
		would  int
	}{{"Quay", 2}, {"Yard", 0}} {
		j := wholeJob(t, "## Now\nIce hall\n|\n"+list+"\n## Old\nIce hall, obsolete\n|\n"+strings.NewReplacer("Hall", "Stand", "Yard", c.places).Replace(list))
		n := 0
		for _, o := range j.LeftOut {
			n += len(o.Would)
		}
		if n != c.would {
			t.Errorf("%s: %d loudspeakers might count, want %d", c.places, n, c.would)
		}
	}
}
