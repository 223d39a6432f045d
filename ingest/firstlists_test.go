package ingest

import "testing"

// What service sheets and walks leave in few words. Common practice, no source.
func TestRemarksOnControlsThatNotesRate(t *testing.T) {
	for _, c := range []struct{ first, second, note string }{
		{"on AT1", "on AT2", "AT1 = 60 W   AT2 = 12 W"},
		{"sur AT1", "sur AT2", "AT1 60 W, AT2 12 W"},
		{"through AT1", "via AT2", "AT1 rated 60 W, AT2 rated 12 W."},
	} {
		j := wholeJob(t, "Depot - 100 V\n|\nRoom | Speakers | Total W | Remark\nRotunda | 8 | 48 | "+c.first+"\nGallery | 10 | 60 |\nShop | 2 | 6 | "+c.second+"\n|\n"+c.note)
		want(t, c.first, describe(j), []string{"8 x 6 W zone Rotunda control AT1", "10 x 6 W zone Gallery", "2 x 3 W zone Shop control AT2"})
		if len(j.Controls) != 2 || show(j.Controls[0].Rated) != "60" || show(j.Controls[1].Rated) != "12" {
			t.Errorf("%s: controls %v", c.first, j.Controls)
		}
	}
}

func TestNotesThatListLoudspeakersOfControls(t *testing.T) {
	for _, note := range []string{"Potentiometer P1 (36 W): S2 and S3", "Volume control P1, 36 W, for S2, S3", "Regler P1 36 W: S2 und S3"} {
		j := wholeJob(t, "Garden - 100 V\n|\nNo | Place | Speakers | W\nS1 | Gate | 2 | 10\nS2 | Ferns | 2 | 6\nS3 | Palms | 4 | 3\n|\n"+note)
		want(t, note, describe(j), []string{"S1 2 x 10 W zone Gate", "S2 2 x 6 W zone Ferns control P1", "S3 4 x 3 W zone Palms control P1"})
	}
}

func TestControlsAtTheFarEndOfCables(t *testing.T) {
	j := wholeJob(t, "Conservatory - 100 V\n|\nLeg | From | To | Metres | Cable | At the far end | Tap W\n1 | Amp X out 1 | S1 | 28 | 2x1.5 | wall speaker | 5\n1 | S1 | S2 | 9 | 2x1.5 | wall speaker | 5\n"+
		"2 | Amp X out 2 | D7 | 12 | 2x1.5 | attenuator 24 W |\n2 | D7 | S3 | 6 | 2x1.5 | ceiling speaker | 3\n2 | S3 | S4 | 5 | 2x1.5 | ceiling speaker | 3\n|\nAmp X 2 x 60 W")
	want(t, "walk", describe(j), []string{"S1 1 x 5 W channel X / 1", "S2 1 x 5 W channel X / 1",
		"S3 1 x 3 W control D7 channel X / 2", "S4 1 x 3 W control D7 channel X / 2"})
	if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "24" {
		t.Errorf("controls %v", j.Controls)
	}
}

func TestFoundInWords(t *testing.T) {
	j := wholeJob(t, "Rink - audit, 100 V\n|\nSr | Location | Found at site | Amp/Ch | Remark\n1 | North | 4 nos. horn, tap 15 W | A/1 |\n2 | Foyer | 4 nos. ceiling, tap 3 W | A/1 | painted over\n3 | Corridor | 5 nos. ceiling, tap not visible | A/2 | ceiling sealed\n4 | Office | 1 no. wall, tap 3 W | A/2 |")
	want(t, "found", describe(j), []string{"4 x 15 W zone North channel A / 1", "4 x 3 W zone Foyer channel A / 1", "5 x ? W zone Corridor channel A / 2", "1 x 3 W zone Office channel A / 2"})
}

func TestTitlesWithoutControl(t *testing.T) {
	j := wholeJob(t, "Museum - loudspeakers, 100 V\n|\nOutput 1\nAttenuator A1, 36 W\nWinding house | wall | 3 | 6 W\nStairs | wall | 1 | 3 W\nLanding | wall | 1 | 3 W\nCellar | wall | 2 | 3 W\nNo attenuator\nLobby | ceiling | 2 | 3 W\nOutput 2\nAttenuator A2, 36 W\nShed | horn | 2 | 15 W\nMill | horn | 1 | 15 W\nNo attenuator\nYard | horn | 3 | 15 W")
	want(t, "ends", describe(j), []string{"3 x 6 W zone Winding house control A1 channel 1", "1 x 3 W zone Stairs control A1 channel 1", "1 x 3 W zone Landing control A1 channel 1", "2 x 3 W zone Cellar control A1 channel 1", "2 x 3 W zone Lobby channel 1",
		"2 x 15 W zone Shed control A2 channel 2", "1 x 15 W zone Mill control A2 channel 2", "3 x 15 W zone Yard channel 2"})
}

// "out" in a column of states is out of service; "in" among other words is no state.
func TestOutOfService(t *testing.T) {
	j := wholeJob(t, "Hall - 100 V\n|\nArea | Speakers | W | State\nArena | 4 | 15 | in\nBox | 1 | 3 | out\nVets | 1 | 1.5 | planned")
	want(t, "states", describe(j), []string{"4 x 15 W zone Arena", "1 x 3 W zone Box removed", "1 x 1.5 W zone Vets future"})
}

// Cables of which length and size stand together, with mm for mm2; one size for all in a sentence among others.
func TestCablesInFewWords(t *testing.T) {
	sizes := func(drawing string) (out []string) {
		for _, c := range wholeJob(t, drawing).Cables {
			out = append(out, show(c.Length)+" m "+show(c.Area)+" mm2")
		}
		return out
	}
	want(t, "together", sizes("Lido - 100 V\n|\nArea | Qty | W each | Fed from | Cable from rack\nFoyer | 2 | 3 | Amp 1 | 22m 1.5mm\nShop | 4 | 3 | Amp 1 | 85m 2.5mm\nYard | 4 | 15 | Amp 1 | 31m 1.5mm"),
		[]string{"22 m 1.5 mm2", "85 m 2.5 mm2", "31 m 1.5 mm2"})
	want(t, "for all", sizes("Arena\nLines at 100 V. Cable 2 x 2.5 mm2 unless noted otherwise.\n|\nArea | Qty | W each | Amp | Cable (m)\nStands | 2 | 20 | Amp A | 60\nHall | 4 | 4 | Amp B | 25\nBaths | 4 | 4 | Amp C | 45"),
		[]string{"60 m 2.5 mm2", "25 m 2.5 mm2", "45 m 2.5 mm2"})
}

// A line of several cells heads the block of each output: its name, what it feeds, and pairs of keys and values.
func TestLinesThatHeadBlocks(t *testing.T) {
	j := wholeJob(t, "Boathouse - visit | | | | Line | 100 V\n|\nLINE 1 | Slipway | Measured @ 1kHz | 133 ohm | Amp rating | 120 W\nQty | Item | Tapping | Total | OK? | Comment\n3 | horn, slipway | 15 W | 45 | ok |\n1 | horn, crane | 15 W | 15 | ok | gland replaced\n| | Line total | 60\n|\n"+
		"LINE 2 | Halls | Measured @ 1kHz | 252 ohm | Amp rating | 60 W\nQty | Item | Tapping | Total | OK? | Comment\n4 | cabinet, hall | 6 W | 24 | ok |\n1 | cabinet, store | 3 W | 3 | ok | on VC-A\n| | Line total | 27\n|\nAttenuators fitted: VC-A 6 W (store)")
	want(t, "blocks", describe(j), []string{"3 x 15 W zone Slipway channel 1", "1 x 15 W zone Slipway channel 1", "4 x 6 W zone Halls channel 2", "1 x 3 W zone Halls control VC-A channel 2"})
	want(t, "rated", channelRatings(j), []string{"1 120 W 100 V", "2 60 W 100 V"})
	if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "6" {
		t.Errorf("controls %v", j.Controls)
	}
}

// Lines told in words: a place before a comma, counts of each and of all, an amplifier called by its name.
func TestListsToldWithCommas(t *testing.T) {
	j := wholeJob(t, "Riding hall - loudspeakers\nIt is a 100 volt system. One amplifier, 240 watts, called A1.\n|\nArena, long sides: 6 horns at 15 W\nRing - 3 horns set to 15 W each\nGallery, 4 cabinets at 6 W\nStables A and B: 2 horns each at 7.5 W (4 in all)")
	want(t, "told", describe(j), []string{"6 x 15 W zone Arena, long sides channel A1 / 1", "3 x 15 W zone Ring channel A1 / 1", "4 x 6 W zone Gallery channel A1 / 1", "4 x 7.5 W zone Stables A and B channel A1 / 1"})
}
