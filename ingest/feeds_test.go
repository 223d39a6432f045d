package ingest

import (
	"fmt"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// The tables are invented; what each must come to is common practice, no source.

func TestOutputsOfNamedAmplifiers(t *testing.T) {
	const rows = "tag | tap[W] | channel\n"
	for _, tt := range []struct {
		name, list, amps string
		want             []string
	}{
		{"glued to a name that a list has", "LS-1 | 5 | AMP-01A\nLS-2 | 5 | AMP-02A",
			"amplifier | channels of the amplifier | channel rating[W]\nAMP-01 | 2 | 60\nAMP-02 | 2 | 60",
			[]string{"LS-1 1 x 5 W channel AMP-01 / A", "LS-2 1 x 5 W channel AMP-02 / A"}},
		{"glued to a name that a sentence has", "LS-1 | 5 | MA1\nLS-2 | 5 | MA2", "", []string{"LS-1 1 x 5 W channel MA / 1", "LS-2 1 x 5 W channel MA / 2"}},
		{"behind a dash", "LS-1 | 5 | MA-1\nLS-2 | 5 | MA-2", "", []string{"LS-1 1 x 5 W channel MA / 1", "LS-2 1 x 5 W channel MA / 2"}},
		{"a letter for the output", "LS-1 | 5 | MA s1\nLS-2 | 5 | MA s2", "", []string{"LS-1 1 x 5 W channel MA / 1", "LS-2 1 x 5 W channel MA / 2"}},
		{"a longer number is another name", "LS-1 | 5 | P11\nLS-2 | 5 | P12", "amplifier | channel rating[W]\nP1 | 60\nP3 | 60",
			[]string{"LS-1 1 x 5 W channel P11", "LS-2 1 x 5 W channel P12"}},
		{"one letter before all is a name", "LS-1 | 5 | E-1\nLS-2 | 5 | E-2", "-", []string{"LS-1 1 x 5 W channel E-1", "LS-2 1 x 5 W channel E-2"}},
		{"several letters are amplifiers", "LS-1 | 5 | E-1\nLS-2 | 5 | F-1", "-", []string{"LS-1 1 x 5 W channel E / 1", "LS-2 1 x 5 W channel F / 1"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			tables := []*layout.Table{draw(layout.Loudspeakers, "Heads", rows+tt.list)}
			switch tt.amps {
			case "-":
			case "":
				tables[0] = draw(layout.Loudspeakers, "Heads", "title : MA: 2 x 60 W\n"+rows+tt.list)
			default:
				tables = append(tables, draw(layout.Amplifiers, "Rack", tt.amps))
			}
			want(t, "loudspeakers", describe(jobOf(t, tables...)), tt.want)
		})
	}
}

func TestLinesLeadToOutputs(t *testing.T) {
	heads := "tag | tap[W] | circuit: Line\nLS-1 | 5 | L1\nLS-2 | 5 | L1\nLS-3 | 10 | L2\nLS-4 | 10 | L3"
	wanted := []string{"LS-1 1 x 5 W channel A1 / 1", "LS-2 1 x 5 W channel A1 / 1", "LS-3 1 x 10 W channel A1 / 2", "LS-4 1 x 10 W channel A1 / 2"}
	for _, tt := range []struct {
		name  string
		kind  layout.Kind
		lines string
		runs  string
	}{
		{"a list of cables", layout.Cables, "circuit: Line | channel | length[m]\nL1 | A1.1 | 45\nL2 | A1.2 | 80\nL3 | A1.2 | 30", "45 45 80 30"},
		{"a list of outputs", layout.Channels, "circuit: Line | amplifier | channel | channel rating[W]\nL1 | A1 | 1 | 60\nL2 | A1 | 2 | 60\nL3 | A1 | 2 | 60", "0 0 0 0"},
		{"outputs under the amplifier", layout.Amplifiers, "circuit: Line | amplifier | channel rating[W]\nL1 | A1-1 | 60\nL2 | A1-2 | 60\nL3 | A1-2 | 60", "0 0 0 0"},
		{"cables by name and their near end", layout.Cables, "cable | from | length[m]\nL1 | A1 ch 1 | 45\nL2 | A1 ch 2 | 80\nL3 | A1 ch 2 | 30", "45 45 80 30"},
		{"lengths beside outputs", layout.Channels, "circuit: Line | channel | channel rating[W] | length[m]\nLine 1 | A1.1 | 60 | 45\nLine 2 | A1.2 | 60 | 80\nLine 3 | A1.2 | 60 | 30", "45 45 80 30"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", heads), draw(tt.kind, "Lines", tt.lines))
			want(t, "loudspeakers", describe(j), wanted)
			var runs strings.Builder
			for i, l := range j.Loudspeakers {
				m := 0.0
				if l.Run != nil {
					m = float64(l.Run.Length.Low)
					if l.Run.Reach != schedule.WholeLine {
						t.Errorf("%s: the cable of its line reaches %v", l.Tag.Value, l.Run.Reach)
					}
				}
				if i > 0 {
					runs.WriteString(" ")
				}
				runs.WriteString(fmt.Sprint(m))
			}
			if runs.String() != tt.runs {
				t.Errorf("lengths of the lines %s, want %s", runs.String(), tt.runs)
			}
		})
	}
}

func TestHangsOn(t *testing.T) {
	for _, head := range []string{"from: Fed from", "control: Behind", "to: Connected to", "channel: Hangs on", "amplifier: Supplied by"} {
		t.Run(head, func(t *testing.T) {
			j := jobOf(t, draw(layout.Mixed, "List", "tag | description | tap[W] | "+head+`
				R1 | Wall volume control | 35 | A1.1
				R2 | Wall volume control | 10 | R1
				S1 | Loudspeaker | 5 | R1
				S2 | Loudspeaker | 3 | R2
				S3 | Loudspeaker | 10 | A1.2`))
			want(t, "loudspeakers", describe(j), []string{"S1 1 x 5 W control R1 channel A1 / 1", "S2 1 x 3 W control R2 channel A1 / 1", "S3 1 x 10 W channel A1 / 2"})
			if len(j.Controls) != 2 || j.Controls[1].Parent != j.Controls[0] || j.Controls[0].Rated.Low != 35 {
				t.Errorf("controls %+v", j.Controls)
			}
		})
	}
}

func TestTagsThatOthersHangOnAreControls(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "List", `
		tag | room | tap[W] | from: Fed from
		K1 | Hall | 20 | A1.1
		S1 | Hall | 5 | K1
		S2 | Hall | 5 | S1`))
	want(t, "loudspeakers", describe(j), []string{"S1 1 x 5 W zone Hall control K1 channel A1 / 1", "S2 1 x 5 W zone Hall control K1 channel A1 / 1"})
}

// In a voice alarm each zone has its circuits A and B: the zone says which is meant.
func TestCircuitsOfEachZone(t *testing.T) {
	amps := draw(layout.Amplifiers, "A", `
		amplifier | circuit | zone | channel rating[W]
		VA1 | A | 1 | 100
		VA2 | B | 1 | 100
		VA3 | A | 2 | 50
		VA4 | B | 2 | 50`)
	j := jobOf(t, draw(layout.Loudspeakers, "L", `
		zone | quantity | tap[W] | circuit
		1 | 4 | 6 | Circuit A
		1 | 4 | 6 | Circuit B
		2 | 6 | 3 | Circuit A
		2 | 6 | 3 | Circuit B`), amps)
	want(t, "loudspeakers", describe(j), []string{"4 x 6 W zone 1 channel VA1 / A", "4 x 6 W zone 1 channel VA2 / B",
		"6 x 3 W zone 2 channel VA3 / A", "6 x 3 W zone 2 channel VA4 / B"})
	j = jobOf(t, draw(layout.Loudspeakers, "L", `
		room | quantity | tap[W] | circuit
		Foyer | 4 | 6 | Circuit A`), amps)
	for _, l := range j.Loudspeakers {
		if l.Channel != nil && l.Channel.Amplifier != nil {
			t.Errorf("a circuit A of no zone hangs on %s", l.Channel.Label())
		}
	}
}
