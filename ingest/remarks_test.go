package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// A list may have several columns of remarks: what was found, what was done.
// Common practice of service reports, no source.
func TestSeveralColumnsOfRemarks(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Report", `
tag | room | tap[W] | notes: found | notes: done
1 | Deck | 15 | distorting | re-tapped
2 | Deck | 15 | torn cone | taken out, not replaced
3 | Store | 6 | too loud | control VC1 (20 W) fitted
`))
	want(t, "states and controls", describe(j), []string{"1 1 x 15 W zone Deck", "2 1 x 15 W zone Deck removed", "3 1 x 6 W zone Store control VC1"})
}

// A description may say what feeds its loudspeakers, where no column does.
// Common practice of bills of quantities, no source.
func TestOutputsInDescriptions(t *testing.T) {
	for _, tt := range []struct{ text, want string }{
		{"Projector IP 66 in the hall on output A of amplifier 1", "4 x 10 W channel amplifier 1 / A"},
		{"Column loudspeaker, fed by amplifier 2 output B", "4 x 10 W channel amplifier 2 / B"},
		{"Ceiling loudspeaker an Verstärker 3, Ausgang 1", "4 x 10 W channel Verstärker 3 / 1"},
		{"Horn, was on amplifier 1 until replaced", "4 x 10 W"},
		{"Horn on bracket", "4 x 10 W"},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Bill", "description | quantity | tap[W]\n"+tt.text+" | 4 | 10"))
		want(t, tt.text, describe(j), []string{tt.want})
	}
	// prose among the items is no loudspeaker
	j := jobOf(t, draw(layout.Loudspeakers, "Bill", "item | description | room | quantity | tap[W]\n1 | The rates of this bill include all brackets, boxes, testing and the removal of rubbish | Hall | |\n2 | Horn | Hall | 4 | 10"))
	want(t, "prose", describe(j), []string{"4 x 10 W zone Hall"})
}

// A number of a room is no amplifier of another table, though both are a letter
// and a figure; an amplifier under a header that says nothing is.
func TestNamesOfAnotherTable(t *testing.T) {
	amps := draw(layout.Amplifiers, "Amps", "amplifier | channel rating[W]\nV1 | 60\nV3 | 120")
	for cells, named := range map[[2]string]bool{{"E.01", "E.03"}: false, {"V1", "V3"}: true, {"Verstärker 1", "Verstärker 3"}: true} {
		heads := draw(layout.Loudspeakers, "Heads", "room | tag | tap[W] | : Nr.\nFoyer | L1 | 6 | "+cells[0]+"\nStore | L2 | 6 | "+cells[1])
		j := jobOf(t, heads, amps)
		if got := len(feeding(j.Loudspeakers[0])) > 0; got != named {
			t.Errorf("%v: fed %v, want %v", cells, got, named)
		}
	}
}

// In a list of controls the tags name them, and what stands under the word for
// controls may say of what sort they are.
func TestNamesOfControls(t *testing.T) {
	controls := draw(layout.Controls, "Controls", "model: Ref | control: Attenuator | control rating[W] | zone: Serves\nWA1 | 10-step, 3 dB | 50 | Ergo room\nWA2 | 10-step, 3 dB | 20 | Shop and Store\nWA3 | stepless | 10 | not used")
	heads := draw(layout.Loudspeakers, "Heads", "zone | quantity | tap[W]\nErgo room | 6 | 6\nShop | 4 | 3\nStore | 4 | 3")
	j := jobOf(t, controls, heads)
	if got, want := controlsOf(j), "WA1 50 W x1, WA2 20 W x2, WA3 10 W x0"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

// A number under amplifiers is that of an amplifier, whatever the loudspeakers are
// numbered.
func TestNumberOfAnAmplifierIsNoLoudspeaker(t *testing.T) {
	for _, head := range []string{"amplifier: Amp", "channel: Output", "circuit: Line"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag: No. | room | tap[W] | "+head+"\n1 | Rack | 10 | 1\n2 | Rack | 10 | 1\n3 | Jetty | 20 | 2\n4 | Jetty | 20 | 2"))
		if a, b := feeding(j.Loudspeakers[0]), feeding(j.Loudspeakers[3]); len(a) != 1 || len(b) != 1 || a[0] == b[0] {
			t.Errorf("%s: %v, %v", head, a, b)
		}
	}
	// looped on from each other, as the header says
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag: No. | room | tap[W] | from: Looped from\n1 | Rack | 10 | Amp A1 ch 1\n2 | Rack | 10 | 1\n3 | Jetty | 20 | 2"))
	if a, b := feeding(j.Loudspeakers[0]), feeding(j.Loudspeakers[2]); len(a) != 1 || len(b) != 1 || a[0] != b[0] {
		t.Errorf("looped: %v, %v", a, b)
	}
}

// In a register each row names what feeds it, the amplifier the mains.
func TestMainsIsNoOutput(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "Register", "tag | description | tap[W] | channel: Fed from\nL-1 | loudspeaker | 15 | AMP-1/CH1\nL-2 | loudspeaker | 5 | AMP-1/CH2\nAMP-1 | amplifier 2 x 80 W, 100 V | | mains"))
	if len(j.Channels) != 2 || j.Channels[0].Rated.Low != 80 || j.Channels[1].Rated.Low != 80 {
		t.Errorf("%d channels", len(j.Channels))
	}
}

// A sentence may rate outputs by their whole names. Common practice, no source.
func TestOutputsRatedByWholeNames(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : Amplifier channels A1.1 and A1.2 are 80 W, A2.1 is 120 W.\nroom | quantity | tap[W] | channel\nHall | 4 | 2 | A1.1\nShop | 2 | 3 | A1.2\nYard | 1 | 3 | A2.1"))
	var got []string
	for _, c := range j.Channels {
		got = append(got, c.Label()+" "+show(c.Rated))
	}
	want(t, "ratings", got, []string{"A1 / 1 80", "A1 / 2 80", "A2 / 1 120"})
}

// Pieces measured from the device before make one line of an output, through all
// rooms, where no zones are named; yards are yards.
func TestChainThroughRooms(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | room | tap[W] | amplifier | length[yd]: Yards to previous | gauge\nL1 | Hall | 5 | A | 40 | 1.5 mm²\nL2 | Shop | 5 | A | 10 | 1.5 mm²"))
	first, second := j.Loudspeakers[0].Run, j.Loudspeakers[1].Run
	if first == nil || second == nil || second.From.Loudspeaker != j.Loudspeakers[0] || first.From.Channel == nil || show(first.Length) != "36.576" {
		t.Fatalf("runs %+v, %+v", first, second)
	}
}

// A note may give an output all that no other has. Common practice, no source.
func TestTheRestOnAnOutput(t *testing.T) {
	for _, note := range []string{
		"Hall and Yard are on amp output 1 (250 W), the rest on output 2 (60 W). 70 volt system.",
		"Hall and Yard on output 1 (250 W), everything else on output 2 (60 W)",
		"Hall und Yard an Ausgang 1 (250 W), der Rest an Ausgang 2 (60 W)",
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+note+"\nroom | quantity | tap[W]\nHall | 4 | 2\nShop | 2 | 3\nYard | 1 | 3"))
		want(t, note, describe(j), []string{"4 x 2 W zone Hall channel 1", "2 x 3 W zone Shop channel 2", "1 x 3 W zone Yard channel 1"})
	}
}

// A word that begins like one for an output, or a place as the key of a title, are
// what they are.
func TestTitlesOfPlaces(t *testing.T) {
	if got := placeIn("Heronsgate Boathouses - amplifier chain"); got != "Heronsgate Boathouses" {
		t.Errorf("got %q", got)
	}
	heads := draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W]\nHall | 4 | 6")
	heads.Titles = []layout.Fact{{Key: "Brackwater Gardens", Text: "PA devices", At: heads.Columns[0].At}}
	heads.Range.Row1 = 2
	if j := jobOf(t, heads); j.Site.Value != "Brackwater Gardens" {
		t.Errorf("site %q", j.Site.Value)
	}
}
