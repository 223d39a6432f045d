package ingest

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// sectioned gives rows the section titles that stand above them, each a whole
// cell of which the layout made one fact.
func sectioned(t *layout.Table, titles map[int]string) *layout.Table {
	var sections []layout.Fact
	for i := range t.Records {
		if text, ok := titles[i]; ok {
			sections = []layout.Fact{{Field: vocabulary.Circuit, Text: text, At: schedule.At("job.xlsx", t.Sheet, 100+i, 1),
				Cell: &grid.Cell{Kind: grid.String, Text: text}}}
		}
		t.Records[i].Sections = sections
	}
	return t
}

// The titles are common practice, no source.
func TestAmplifiersInSectionTitles(t *testing.T) {
	drawn := sectioned(draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W]\nHall | 4 | 3\nBar | 2 | 1.5\nPalms | 6 | 6\nYard | 8 | 10"), map[int]string{
		0: "Kreis 1 (Verstärker 1, Ausgang A, 60 W)", 2: "Kreis 2 (Verstärker 1, Ausgang B, 60 W)", 3: "Kreis 3 (Verstärker 2, 120 W)"})
	j := jobOf(t, drawn)
	want(t, "loudspeakers", describe(j), []string{"4 x 3 W zone Hall channel Verstärker 1 / A", "2 x 1.5 W zone Bar channel Verstärker 1 / A",
		"6 x 6 W zone Palms channel Verstärker 1 / B", "8 x 10 W zone Yard channel Verstärker 2 / 1"})
	want(t, "channels", channelRatings(j), []string{"Verstärker 1 / A 60 W ? V", "Verstärker 1 / B 60 W ? V", "Verstärker 2 / 1 120 W ? V"})
}

// Where no title names an output, the line that an amplifier feeds stands for it. Common practice, no source.
func TestLinesAndAmplifiersInSectionTitles(t *testing.T) {
	for _, c := range []struct{ line, amp string }{
		{"Line", "amplifier"}, {"Linie", "Verstärker"}, {"Ligne", "amplificateur"}, {"Línea", "amplificador"}, {"Linea", "amplificatore"}, {"Lijn", "versterker"},
	} {
		const list = "Room | Qty | Tap W\nHall | 4 | 6 W\nYard | 2 | 3 W\n|\n"
		j := wholeJob(t, "Museum, 100 V loudspeakers\n|\n"+c.line+" 1: "+c.amp+" VS1, 120 W\n"+list+c.line+" 2: "+c.amp+" VS2, 60 W\n"+strings.ReplaceAll(strings.ReplaceAll(list, "Hall", "Shop"), "Yard", "Store"))
		var ids []string
		for _, ch := range j.Channels {
			ids = append(ids, channelID(ch.Name)+" "+show(ch.Rated))
		}
		want(t, c.line, ids, []string{"1 120", "2 60"})
	}
}

func TestTitleOfTheFirstSectionHoldsForItAlone(t *testing.T) {
	drawn := draw(layout.Loudspeakers, "Heads", "tag | tap[W]\nS1 | 5\nS2 | 5")
	first := layout.Fact{Field: vocabulary.Channel, Text: "A1.1", At: schedule.At("job.xlsx", "Heads", 1, 1)}
	drawn.Titles = []layout.Fact{first}
	drawn.Records[0].Sections = []layout.Fact{first}
	drawn.Records[1].Sections = []layout.Fact{{Field: vocabulary.Zone, Text: "Bar", At: schedule.At("job.xlsx", "Heads", 9, 1)}}
	want(t, "loudspeakers", describe(jobOf(t, drawn)), []string{"S1 1 x 5 W channel A1 / 1", "S2 1 x 5 W zone Bar"})
}

// The rating of an amplifier stands behind its name, with the number of its
// outputs; with several, the schedule must say which. Common practice, no source.
func TestOutputsCountedInSectionTitles(t *testing.T) {
	for title, rated := range map[string]string{"Amp A - 1 output of 60 W": "60", "Verstärker A: 1 x 60 W": "60", "Finale A - 1 uscita da 60 W": "60", "Amp A - 2 x 60 W": ""} {
		j := jobOf(t, sectioned(draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W]\nHall | 4 | 3\nBar | 2 | 1.5"), map[int]string{0: title}))
		switch {
		case rated == "" && (len(asked(j)) == 0 || j.Loudspeakers[0].Channel != nil):
			t.Errorf("%s: not asked which output", title)
		case rated != "" && (len(j.Channels) != 1 || show(j.Channels[0].Rated) != rated):
			t.Errorf("%s: %v", title, channelRatings(j))
		}
	}
}

// How many outputs an amplifier has is no part of its name; each has what is said of each. Common practice, no source.
func TestOutputsBehindTheNameOfAnAmplifier(t *testing.T) {
	for _, tt := range []struct{ title, amp, rated string }{
		{"PA1 2 outputs, 160 W each", "PA1", "160"},
		{"Ampli A2 sortie unique, 60 W", "Ampli A2", "60"},
		{"Verstärker V3 2 Ausgänge, 120 W", "Verstärker V3", "120"},
		{"Amp B single output (60 W)", "Amp B", "60"},
		{"Amplifier AMP1, 2 zones, 40 W each", "Amplifier AMP1", "40"},
	} {
		drawn := draw(layout.Loudspeakers, "Heads", "room | channel | quantity | tap[W]\nHall | 1 | 4 | 3\nBar | 1 | 2 | 1.5")
		for i := range drawn.Records {
			drawn.Records[i].Sections = []layout.Fact{{Field: vocabulary.Amplifier, Text: tt.title, At: schedule.At("job.xlsx", "Heads", 100, 1),
				Cell: &grid.Cell{Kind: grid.String, Text: tt.title}}}
		}
		j := jobOf(t, drawn)
		if len(j.Amplifiers) != 1 || j.Amplifiers[0].Name != tt.amp || len(j.Channels) != 1 || show(j.Channels[0].Rated) != tt.rated {
			t.Errorf("%s: amplifiers %v, outputs %v", tt.title, j.Amplifiers[0].Name, channelRatings(j))
		}
	}
}

// An amplifier's title may count its outputs, which then have titles of their own. Common practice, no source.
func TestOutputsBelowAmplifiersThatCountThem(t *testing.T) {
	for _, titles := range [][4]string{
		{"AMP 1, 2 channels of 120W", "Ch. 1", "Ch. 2", "AMP 2, 2 channels of 60W"},
		{"AMPLI 1, 2 canali da 120W", "Can. 1", "Can. 2", "AMPLI 2, 2 canali da 60W"},
		{"Endstufe 1, 2 Kanäle zu 120W", "Kanal 1", "Kanal 2", "Endstufe 2, 2 Kanäle zu 60W"},
	} {
		j := wholeJob(t, "## Rack\nBoat hall\n|\nPlace | Type | Pcs | W\n"+titles[0]+"\n"+titles[1]+"\nPits | horn | 4 | 15\nBenches | horn | 2 | 15\n"+titles[2]+"\nTracks | horn | 3 | 10\n"+
			titles[3]+"\n"+titles[1]+"\nOffices | ceiling | 6 | 3\nStairs | ceiling | 1 | 3\n"+titles[2]+"\nPorch | ceiling | 2 | 3")
		if len(j.Channels) != 4 || show(j.Channels[0].Rated) != "120" || show(j.Channels[3].Rated) != "60" {
			t.Errorf("%s: %v", titles[0], channelRatings(j))
		}
	}
}
