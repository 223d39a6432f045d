package ingest

import (
	"strings"
	"testing"

	"lineaudit/ingest/layout"
)

// The tables are invented; what each must come to is common practice, no source.

func TestServedPlaces(t *testing.T) {
	zones := "zone | quantity | tap[W]\n1 Main ice | 8 | 15\n2 Skate hire | 4 | 5\n3 Lockers | 3 | 5\n4 Seats | 6 | 10"
	rooms := "room | quantity | tap[W]\nMain ice | 8 | 15\nSkate hire | 4 | 5\nLockers | 3 | 5\nSeats | 6 | 10"
	outputs := []string{"A1 / 1", "A1 / 2", "A1 / 2", "A1 / 3"}
	for _, tt := range []struct{ name, heads, served string }{
		{"lists of numbers", zones, "zone: Serves\n1\n2, 3\n4"},
		{"lists with a word in front", zones, "zone: Serves\nZone 1\nzones 2 and 3\nZ-04 Seats"},
		{"ranges of numbers", zones, "zone: Serves\nzone 1\nzones 2-3\nzone 4"},
		{"lists of names", zones, "zone: Serves\nMain ice\nSkate hire + Lockers\nSeats"},
		{"lists of names, German", zones, "zone: versorgt\nMain ice\nSkate hire und Lockers\nSeats"},
		{"names under a column of rooms", zones, "room: Serves\n1 - Main ice\n2 Skate hire / 3 lockers\nZone 04"},
		{"rooms, where no zone is named", rooms, "room: Feeds\nMain ice\nSkate hire, Lockers\nSeats"},
		{"rooms named as zones", rooms, "zone: Zone\nMain ice\nSkate hire & Lockers\nSeats"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Zones, "Heads", tt.heads), draw(layout.Channels, "Rack", withOutputs(tt.served)))
			var got []string
			for _, l := range j.Loudspeakers {
				name := "?"
				if l.Channel != nil {
					name = l.Channel.Label()
				}
				got = append(got, name)
			}
			want(t, "outputs", got, outputs)
			if len(j.Zones) != 4 {
				t.Errorf("%d zones, want 4", len(j.Zones))
			}
		})
	}
}

// withOutputs puts the outputs of an amplifier in front of a column.
func withOutputs(column string) string {
	out, n := "", 0
	for line := range strings.SplitSeq(column, "\n") {
		if n == 0 {
			out = "amplifier | channel | channel rating[W] | " + line
		} else {
			out += "\nA1 | " + itoa(n) + " | 150 | " + line
		}
		n++
	}
	return out
}

func TestServedTags(t *testing.T) {
	heads := draw(layout.Loudspeakers, "Heads", "tag | room | tap[W] | control | circuit: Line\nS1 | Hall | 5 | | 1\nS2 | Hall | 5 | VC1 | 1\nS3 | Bar | 3 | VC1 | 2\nS4 | Bar | 3 | | 2")
	j := jobOf(t, heads, draw(layout.Controls, "Controls", "model: Ref | control: Controls | control rating[W]\nVC1 | S2 - S4 | 12"),
		draw(layout.Amplifiers, "Amp", "item: Line | amplifier | channel rating[W] | quantity: Speakers\n1 | P1 | 30 | S1, S2\n2 | P2 | 30 | S3 - S4"))
	want(t, "loudspeakers", describe(j), []string{"S1 1 x 5 W zone Hall channel P1 / 1", "S2 1 x 5 W zone Hall control VC1 channel P1 / 1",
		"S3 1 x 3 W zone Bar control VC1 channel P2 / 2", "S4 1 x 3 W zone Bar control VC1 channel P2 / 2"})
	want(t, "asked", asked(j), nil)
}

func TestAllPlaces(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | zone | tap[W]\nS1 | Hall | 5\nS2 | Bar | 3"),
		draw(layout.Channels, "Rack", "amplifier | channel | channel rating[W] | zone\nA1 | 1 | 60 | all zones"))
	want(t, "loudspeakers", describe(j), []string{"S1 1 x 5 W zone Hall channel A1 / 1", "S2 1 x 3 W zone Bar channel A1 / 1"})
}

func TestZonesWithCodes(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | zone | tap[W]\nS1 | 1 | 5\nS2 | 2 | 3\nS3 | 11 | 3"),
		draw(layout.Controls, "Knobs", "control | zone | control rating[W]\nK1 | 01 Rink (GF) | 10\nK2 | Zone 11 Shop | 10"),
		draw(layout.Channels, "Rack", "amplifier | channel | zone\nA1 | 1 | B1 - Rink, ground floor\nA1 | 2 | B 2 - Lockers\nA1 | 3 | B11 Shop"))
	want(t, "loudspeakers", describe(j), []string{"S1 1 x 5 W zone 1 control K1 channel A1 / 1", "S2 1 x 3 W zone 2 channel A1 / 2",
		"S3 1 x 3 W zone 11 control K2 channel A1 / 3"})
}

func TestListsOfOutputsAreNoLoudspeakers(t *testing.T) {
	for _, tt := range []struct{ name, heads, list string }{
		{"the amplifiers that the loudspeakers name", "room | quantity | tap[W] | zone | amplifier\nHall | 2 | 5 | Z1 | E1\nBar | 3 | 3 | Z2 | E2", "amplifier | tap: Power[W] | zone\nE1 | 120 | Z1\nE2 | 60 | Z2"},
		{"outputs of rooms", "room | quantity | tap[W]\nHall | 2 | 5\nBar | 3 | 3", "amplifier | channel | tap: Watts[W] | room: Feeds\nE1 | 1 | 120 | Hall\nE1 | 2 | 60 | Bar"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", tt.heads), draw(layout.Loudspeakers, "Heads", tt.list))
			if len(j.Loudspeakers) != 2 || len(j.Channels) != 2 {
				t.Fatalf("%d loudspeakers, %d channels: %v", len(j.Loudspeakers), len(j.Channels), describe(j))
			}
			for i, w := range []float64{120, 60} {
				if c := j.Channels[i]; float64(c.Rated.Low) != w || j.Loudspeakers[i].Channel != c {
					t.Errorf("channel %s rated %v W, loudspeaker on %v", c.Label(), c.Rated.Low, j.Loudspeakers[i].Channel)
				}
			}
		})
	}
}

func TestListsOfLoudspeakersAreNoOutputs(t *testing.T) {
	j := jobOf(t, draw(layout.Channels, "Zones", "zone | quantity: Speakers | channel rating: Power[W] | amplifier | channel\nHall | 6 | 3 | F1 | 1\nBar | 4 | 5 | F1 | 2"),
		draw(layout.Amplifiers, "Rack", "amplifier | channels of the amplifier | channel rating[W]\nF1 | 2 | 120"))
	want(t, "loudspeakers", describe(j), []string{"6 x 3 W zone Hall channel F1 / 1", "4 x 5 W zone Bar channel F1 / 2"})
	want(t, "channels", channelRatings(j), []string{"F1 / 1 120 W ? V", "F1 / 2 120 W ? V"})
}

func TestColumnOfPlacesUnderAHeaderThatSaysLittle(t *testing.T) {
	knobs := draw(layout.Controls, "Knobs", "control | floor: For | control rating[W]\nK1 | 01 Rink (GF) | 10\nK2 | 02 Shop (GF) | 10")
	knobs.Columns[1].Confidence = 0.3
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | zone | tap[W]\nS1 | 1 | 5\nS2 | 2 | 3"), knobs)
	want(t, "loudspeakers", describe(j), []string{"S1 1 x 5 W zone 1 control K1", "S2 1 x 3 W zone 2 control K2"})
}

// A control may say what it is for by the item of a list, in its own row or in a
// note, or by a place among other words.
func TestWhatControlsAreForInWords(t *testing.T) {
	for _, tt := range []struct {
		name, text string
		want       []string
	}{
		{"an item", "item | description | room | quantity | tap[W]\nA | Ceiling loudspeaker | Foyer | 4 | 3\nB | Ceiling loudspeaker | Corridor | 6 | 1.5\nC | Volume control 12 W for the loudspeakers of item B | | 1 |",
			[]string{"4 x 3 W zone Foyer", "6 x 1.5 W zone Corridor control control (row 4)"}},
		{"a place", "item | description | room | quantity | tap[W]\n9.1 | Difusor de techo | galería | 4 | 3\n9.2 | Difusor de techo | pasillos | 6 | 1,5\n9.3 | Mando mural de 30 W para los difusores de los pasillos | | 1 |",
			[]string{"4 x 3 W zone galería", "6 x 1.5 W zone pasillos control 9.3"}},
		{"an item in a note", "title : Att. du couloir : 6 W, tous les HP du n° 2\nitem | room | quantity | tap[W]\n1 | Serre | 4 | 3\n2 | Couloir | 6 | 0,5",
			[]string{"4 x 3 W zone Serre", "6 x 0.5 W zone Couloir control Att. du couloir"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			want(t, "loudspeakers", describe(jobOf(t, draw(layout.Mixed, "List", tt.text))), tt.want)
		})
	}
}
