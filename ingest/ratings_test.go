package ingest

import (
	"slices"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// One power of an amplifier with several outputs is that of all together, and
// asked; in the row of one output it is that of the output.
func TestPowersOfWholeAmplifiers(t *testing.T) {
	heads := "tag | tap[W] | circuit\nP1 | 5 | L1\nP2 | 5 | L2\nP3 | 5 | L3"
	for _, tt := range []struct {
		name   string
		tables []*layout.Table
		frame  string // of the first amplifier
		want   []string
		asked  int
	}{
		{"beside its name", []*layout.Table{draw(layout.Loudspeakers, "Heads", "tag | tap[W] | amplifier | circuit\nP1 | 5 | Amp 1 (240 W) | 1\nP2 | 5 | Amp 1 (240 W) | 2\nP3 | 5 | Amp 2 (60 W) | 3")},
			"240", []string{"Amp 1 / 1 ? W ? V", "Amp 1 / 2 ? W ? V", "Amp 2 / 3 60 W ? V"}, 1},
		{"lines listed in its row", []*layout.Table{draw(layout.Loudspeakers, "Heads", heads), draw(layout.Amplifiers, "Rack", "amplifier | channel rating: Power | circuit\nAmp 1 | 240 W | L1, L2\nAmp 2 | 60 W | L3")},
			"240", []string{"Amp 1 / L1 ? W ? V", "Amp 1 / L2 ? W ? V", "Amp 2 / L3 60 W ? V"}, 1},
		{"a header of amplifiers", []*layout.Table{draw(layout.Channels, "Rack", "amplifier | channel | channel rating[W]: Amp power\nA1 | 1 | 240\nA1 | 2 | 240\nA2 | 1 | 60")},
			"?", []string{"A1 / 1 240 W ? V", "A1 / 2 240 W ? V", "A2 / 1 60 W ? V"}, 0},
		{"such a header with a figure for each output", []*layout.Table{draw(layout.Channels, "Rack", "amplifier | channel | channel rating[W]: Amp power\nA1 | 1 | 120\nA1 | 2 | 60")},
			"?", []string{"A1 / 1 120 W ? V", "A1 / 2 60 W ? V"}, 0},
		{"a header of outputs", []*layout.Table{draw(layout.Channels, "Rack", "amplifier | channel | channel rating[W]: Watts per output\nA1 | 1 | 120\nA1 | 2 | 120")},
			"?", []string{"A1 / 1 120 W ? V", "A1 / 2 120 W ? V"}, 0},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, tt.tables...)
			want(t, "channels", channelRatings(j), tt.want)
			if got := show(j.Amplifiers[0].Rated); got != tt.frame {
				t.Errorf("amplifier rated %s W, want %s", got, tt.frame)
			}
			if len(j.Questions) != tt.asked {
				t.Errorf("asked %v, want %d questions", asked(j), tt.asked)
			}
		})
	}
}

// What differs from room to room on one output is no rating of it.
func TestRatingsThatDifferOnOneOutput(t *testing.T) {
	drawn := draw(layout.Loudspeakers, "List", "room | quantity | tap[W] | channel rating[W]: Pot. | amplifier\nAccueil | 4 | 3 | 20 | A\nPiste | 10 | 15 | - | B\nClub | 4 | 6 | 40 | A")
	drawn.Columns[3].RunnerUp = vocabulary.ControlWatts
	j := jobOf(t, drawn)
	if len(j.Controls) != 2 || show(j.Controls[0].Rated) != "20" || show(j.Controls[1].Rated) != "40" {
		t.Errorf("%d controls", len(j.Controls))
	}
}

// A note may rate the control of a place, and the powers of several things are
// no rating of the only amplifier.
func TestControlOfAPlaceInANote(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "List", "title : Volume control in the library, 50 W\ntitle : Amp ZA: library 60 W, roof 60 W\nroom | quantity | tap[W]\nLibrary | 8 | 5\nRoof | 2 | 15"))
	want(t, "loudspeakers", describe(j), []string{"8 x 5 W zone Library control control (Library)", "2 x 15 W zone Roof"})
	if len(j.Controls) != 1 || show(j.Controls[0].Rated) != "50" {
		t.Errorf("%d controls", len(j.Controls))
	}
}

// One power beside a number of outputs is that of each, aloud, unless the words say so.
func TestPowerBesideANumberOfOutputs(t *testing.T) {
	for header, told := range map[string]bool{"Power": true, "Power per channel": false, "W/ch": false} {
		j := jobOf(t, draw(layout.Amplifiers, "Amps", "amplifier | channels of the amplifier: Outputs | channel rating: "+header+"\nA1 | 4 | 240 W"),
			draw(layout.Loudspeakers, "Heads", "zone | quantity | tap[W] | amplifier | channel\nHall | 4 | 5 | A1 | 1"))
		if got := show(j.Channels[0].Rated); got != "240" {
			t.Errorf("%s: the output has %s W", header, got)
		}
		if got := slices.ContainsFunc(j.Assumptions, func(a schedule.Assumption) bool { return a.TakenAs == "that of each output" }); got != told {
			t.Errorf("%s: told aloud %v, want %v: %v", header, got, told, j.Assumptions)
		}
	}
}

// Outputs of one name in several jobs of a register are not one output.
func TestRatingsOfJobsInARegister(t *testing.T) {
	const head = "job number | room | quantity | tap[W] | amplifier | channel rating: Rating (W)\n"
	drawn := draw(layout.Loudspeakers, "L", head+"J1 | Hall | 4 | 6 | A1 | 60\nJ2 | Shop | 4 | 6 | A1 | 120")
	drawn.Columns[5].RunnerUp = vocabulary.ControlWatts
	for _, j := range jobsOf(&Options{}, drawn) {
		if len(j.Controls) > 0 || len(j.Channels) != 1 || !j.Channels[0].Rated.Had() {
			t.Errorf("%s: %d controls, outputs %v", j.Number.Value, len(j.Controls), channelRatings(j))
		}
	}
}
