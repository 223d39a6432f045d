package ingest

import "testing"

// A column of what each row is wired to names controls, or says that there is none; titles say
// which amplifier feeds a place. Common practice, no source.
func TestWiredToControls(t *testing.T) {
	for _, title := range []string{"Foyer: amp 1, one output of 120 W", "Foyer: amp 1 (120 W)"} {
		j := wholeJob(t, "Museum - 100 V\n|\nSpot | Speakers | W per speaker | Wired to\n"+title+
			"\nEntrance | 4 ceiling | 3 | volume control VC 1\nCloaks | 1 ceiling | 1.5 | direct\nShop | 2 ceiling | 3 | volume control VC 2\n"+
			"Whale hall: amp 2, one output of 60 W\nFloor | 6 wall | 6 | direct\nBalcony | 4 wall | 3 | volume control VC 3\n|\nVC 1 20 W, VC 2 6 W, VC 3 36 W")
		want(t, title, describe(j), []string{"4 x 3 W zone Foyer control VC 1 channel amp 1 / 1", "1 x 1.5 W zone Foyer channel amp 1 / 1", "2 x 3 W zone Foyer control VC 2 channel amp 1 / 1",
			"6 x 6 W zone Whale hall channel amp 2 / 1", "4 x 3 W zone Whale hall control VC 3 channel amp 2 / 1"})
		want(t, title, channelRatings(j), []string{"amp 1 / 1 120 W 100 V", "amp 2 / 1 60 W 100 V"})
	}
}

// Lists of controls own their tags: "L1" beside amplifiers L and R is no output of L. A side of the rack
// is no place of loudspeakers. Common practice, no source.
func TestTagsOfControlsAreNoOutputs(t *testing.T) {
	j := wholeJob(t, "Gardens - 100 V\n|\nLeft side of rack: amp L (120 W)\nHouse | Nr | W each | Control\nPalms | 6 | 6 | L1\nFerns | 4 | 3 | L2\nAlpines | 2 | 3 | none\n|\n"+
		"Controls | W\nL1 | 50\nL2 | 20")
	want(t, "left", describe(j), []string{"6 x 6 W zone Palms control L1 channel L / 1", "4 x 3 W zone Ferns control L2 channel L / 1", "2 x 3 W zone Alpines channel L / 1"})
	want(t, "left", channelRatings(j), []string{"L / 1 120 W 100 V"})
}

// Numbers of jobs stand behind many words, and have letters between strokes. Common practice, no source.
func TestNumbersOfJobs(t *testing.T) {
	for text, number := range map[string]string{
		"Rowing club - paging (W.O. 3361)":            "3361",
		"W.O. NO. NBG/PA/118":                         "NBG/PA/118",
		"Maint. ref: HIR-M-052":                       "HIR-M-052",
		"Natural History Museum. Our ref UM/SND/3":    "UM/SND/3",
		"Visitor Center paging (our no. 0643-C)":      "0643-C",
		"Roeiloods, omroep 100 V, wnr 2240":           "2240",
		"Eishalle - Beschallung 100 V, Proj.-Nr 5518": "5518",
	} {
		j := wholeJob(t, text+"\n|\nWhere | Kind | Qty | W\nHall | ceiling | 4 | 6\nYard | horn | 2 | 15")
		if j.Number.Value != number {
			t.Errorf("%s: number %q", text, j.Number.Value)
		}
	}
}
