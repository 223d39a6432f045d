package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// The sentences are common practice, no source.
func TestListsOfRatings(t *testing.T) {
	for _, tt := range []struct {
		name, title string
		want        []string
	}{
		{"outputs", "Line 1: 60 W, line 2: 120 W", []string{"1 60 W ? V", "2 120 W ? V"}},
		{"one that the table has not", "Line 1: 60 W, line 9: 120 W", []string{"1 60 W ? V", "2 ? W ? V"}},
		{"usual watts that are the loads", "Line 1: 10 W, line 2: 15 W", []string{"1 ? W ? V", "2 ? W ? V"}},
		{"loads, not ratings", "Line 1: 17 W, line 2: 23 W", []string{"1 ? W ? V", "2 ? W ? V"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+tt.title+"\ntag | tap[W] | channel\nLS-1 | 10 | 1\nLS-2 | 15 | 2"))
			want(t, "channels", channelRatings(j), tt.want)
		})
	}
}

func TestZonesThatNameOutputs(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | tap[W] | amplifier | zone\nLS-1 | 5 | PA1 | CH 1\nLS-2 | 5 | PA1 | CH 2"))
	want(t, "channels", channelRatings(j), []string{"PA1 / 1 ? W ? V", "PA1 / 2 ? W ? V"})
	j = jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | tap[W] | amplifier | zone\nLS-1 | 5 | PA1 | Pier\nLS-2 | 5 | PA1 | CH 2"))
	if len(j.Zones) != 2 {
		t.Errorf("%d zones, want 2: one of them is no output", len(j.Zones))
	}
}

func TestAVoltageOfAllLinesBesideAnAmplifier(t *testing.T) {
	for text, all := range map[string]bool{
		"All loudspeakers on 70 V. Amp A: 2 outputs.": true,
		"Amp A: all loudspeakers on 70 V":             false,
		"All loudspeakers on 70 V except the pier":    false,
	} {
		if got := ofAllLines(text); got != all {
			t.Errorf("ofAllLines(%q) = %v, want %v", text, got, all)
		}
	}
}

func TestStateOfSomeOnlyIsNotThatOfTheRow(t *testing.T) {
	for _, text := range []string{"5 W (1 spare)", "5 W, 2 W (removed)", "5 W (100 V)", "5 W (not removed)"} {
		if watts, status := tapWithState(text); status != schedule.Installed || watts != text {
			t.Errorf("tapWithState(%q) = %q, %v: not of the whole row", text, watts, status)
		}
	}
}

// The state in brackets behind a tap counts, and so does a word for a spare in
// place of a room; the tap stays.
func TestStateBesideTapAndPlace(t *testing.T) {
	for _, tt := range []struct {
		row  string
		want schedule.Status
	}{
		{"LS-1 | Pier | 2W (spare - in store)", schedule.Spare},
		{"LS-1 | Pier | 2W (removed)", schedule.Removed},
		{"LS-1 | Pier | 2W (100 V)", schedule.Installed},
		{"LS-1 | SPARE | 2W", schedule.Spare},
		{"LS-1 | Spares hut | 2W", schedule.Installed},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | room | tap\n"+tt.row+"\nLS-2 | Pier | 5W"))
		if l := j.Loudspeakers[0]; l.Status != tt.want || show(l.Tap) != "2" || len(j.Questions) != 0 {
			t.Errorf("%s: %v, tap %s, questions %v; want %v", tt.row, l.Status, show(l.Tap), j.Questions, tt.want)
		}
	}
}

// A note may list the lines of several amplifiers, of which only the first has the
// word; a cell may name the output and its power. Common practice, no source.
func TestLinesOfListedAmplifiers(t *testing.T) {
	const rows = "room | quantity | tap[W] | circuit\nHall | 4 | 5 | LS1\nShop | 2 | 6 | LS2\nYard | 1 | 20 | LS3"
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : Amplifier PA1: 2 x 125 W (LS1, LS2), PA2: 1 x 60 W (LS3)\n"+rows))
	want(t, "listed", channelRatings(j), []string{"PA1 / LS1 125 W ? V", "PA1 / LS2 125 W ? V", "PA2 / LS3 60 W ? V"})
	j = jobOf(t, draw(layout.Loudspeakers, "Heads", "circuit | quantity | tap[W] | amplifier\nLinie 1 | 4 | 5 | V1 Ausg. 1 (60 W)\nLinie 2 | 2 | 6 | V1 Ausg. 2 (30 W)"))
	want(t, "in the cell", channelRatings(j), []string{"V1 / 1 60 W ? V", "V1 / 2 30 W ? V"})
}
