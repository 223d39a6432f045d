package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// A row of equipment is known by the name that rows of other things use,
// wherever it stands, and its rating may stand in any of its cells.
func TestEquipmentByTheNamesInUse(t *testing.T) {
	for _, tt := range []struct {
		name, rows string
		want       []string
	}{
		{"a serial number and a description", "G-11 | Amplifier 1 - 60 W 100 V mixer amp | |\nG-12 | Amplifier 2 - 120 W | |\nP1 | ceiling speaker | 3 | Amp 1\nP2 | horn | 15 | Amp 2",
			[]string{"Amplifier 1 / 1 60 W 100 V", "Amplifier 2 / 1 120 W 100 V"}},
		{"a code in brackets", "| 60 W booster amplifier (M1) | |\n | 2 x 30 W amplifier (M2) | |\nP1 | horn | 5 | M1\nP2 | horn | 5 | M2 ch 1",
			[]string{"M1 / 1 60 W ? V", "M2 / 1 30 W ? V", "M2 / 2 30 W ? V"}},
		{"a count is no name", "| Amplifier 3 x 60 W | |\nP1 | horn | 15 | C3\nP2 | horn | 15 | C3",
			[]string{"C3 / 1 60 W ? V"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Mixed, "Kit", "tag | description | tap[W] | amplifier\n"+tt.rows))
			want(t, "channels", channelRatings(j), tt.want)
		})
	}
}

func TestEquipmentRatedAmongRemarks(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "Kit", `
		tag | description | tap | channel | notes
		AX-1 | Amplifier | | | 2 x 120 W 100 V
		VC-1 | Volume control | | AX-1/2 | 35 W
		P1 | Loudspeaker | 15 W | AX-1/1 |
		P2 | Loudspeaker | 6 W | VC-1 |`))
	want(t, "channels", channelRatings(j), []string{"AX-1 / 2 120 W 100 V", "AX-1 / 1 120 W 100 V"})
	if got := show(j.Controls[0].Rated); got != "35" {
		t.Errorf("control rated %s W", got)
	}
}

// Amplifiers without a name that say which lines they feed are the outputs of
// these lines.
func TestEquipmentOnLines(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "Kit", `
		description | room | quantity | tap | circuit
		Ceiling speaker | Foyer | 4 | 3 W | 1
		Horn | Yard | 2 | 15 W | 2
		Amplifier 60 W | Rack, line 1 | 1 | |
		Amplifier 120 W | Rack, line 2 | 1 | |`))
	want(t, "channels", channelRatings(j), []string{"1 60 W ? V", "2 120 W ? V"})
}

// Ratings stand in columns of counts, in models and in remarks beside loudspeakers.
func TestRatingsInOddPlaces(t *testing.T) {
	heads := "tag | tap[W] | channel | notes\nP1 | 5 | 1/1 |\nP2 | 5 | 1/2 |\nP3 | 5 | 2/1 |"
	for _, tt := range []struct {
		name, heads, rack string
		want              []string
	}{
		{"beside the count", heads, "item | model | channels of the amplifier\n1 | Dual | 2 x 240W\n2 | Solo | 1 x 60 W", []string{"1 / 1 240 W ? V", "1 / 2 240 W ? V", "2 / 1 60 W ? V"}},
		{"a model", heads, "item | model | description\n1 | 2X60 | amplifier\n2 | 1x120 | amplifier", []string{"1 / 1 60 W ? V", "1 / 2 60 W ? V", "2 / 1 120 W ? V"}},
		{"a remark", "tag | tap[W] | channel | notes\nP1 | 5 | 1/1 | amp is a 60W\nP2 | 5 | 1/1 |", "", []string{"1 / 1 60 W ? V"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			tables := []*layout.Table{draw(layout.Loudspeakers, "Heads", tt.heads)}
			if tt.rack != "" {
				tables = append([]*layout.Table{draw(layout.Amplifiers, "Rack", tt.rack)}, tables...)
			}
			want(t, "channels", channelRatings(jobOf(t, tables...)), tt.want)
		})
	}
}

// A list of outputs may name its amplifier in its title alone.
func TestAmplifierInTheTitleOfItsOutputs(t *testing.T) {
	heads := draw(layout.Loudspeakers, "Heads", "tag | tap[W] | channel\nP1 | 5 | Z1.1\nP2 | 5 | Z1.2")
	rack := draw(layout.Channels, "Rack", "title : Zentrale Z1\nchannel | channel rating\n1 | 60 W\n2 | 120 W\n3 | 60 W")
	want(t, "channels", channelRatings(jobOf(t, heads, rack)), []string{"Z1 / 1 60 W ? V", "Z1 / 2 120 W ? V", "Z1 / 3 60 W ? V"})
}

// A list of lines with their cables may rate the outputs that feed them, and a
// column of outputs whose cells are ratings is one of ratings.
func TestRatingsBesideLines(t *testing.T) {
	heads := draw(layout.Loudspeakers, "Heads", "tag | tap[W] | circuit\nP1 | 5 | L1\nP2 | 5 | L2")
	lines := draw(layout.Cables, "Lines", "circuit | amplifier | channel rating | line voltage | length[m]\nL1 | X1-1 | 60 W | 100 V | 85\nL2 | X1-2 | 30 W | 100 V | 120")
	want(t, "channels", channelRatings(jobOf(t, heads, lines)), []string{"X1 / 1 60 W 100 V", "X1 / 2 30 W 100 V"})
	able := draw(layout.Loudspeakers, "Heads", "circuit | room | quantity | tap[W] | channel: Kan\nI | Hal | 4 | 5 | 60 W, 100 V\nII | Kas | 2 | 15 | 30 W, 100 V")
	want(t, "channels", channelRatings(jobOf(t, able)), []string{"I 60 W 100 V", "II 30 W 100 V"})
}
