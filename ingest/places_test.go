package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// The tables are invented; what each must come to is common practice, no source.

func TestZonesOfBuildings(t *testing.T) {
	for _, tt := range []struct {
		name, rows string
		want       []string
	}{
		{"other outputs", "North | 1 | 4 | 5 | A1.1\nSouth | 1 | 2 | 10 | A2.1", []string{"4 x 5 W zone 1 (North) channel A1 / 1", "2 x 10 W zone 1 (South) channel A2 / 1"}},
		{"the same output", "North | 1 | 4 | 5 | A1.1\nSouth | 1 | 2 | 10 | A1.1", []string{"4 x 5 W zone 1 channel A1 / 1", "2 x 10 W zone 1 channel A1 / 1"}},
		{"numbers that begin anew", "North | 1 | 4 | 5 |\nSouth | 1 | 2 | 10 |", []string{"4 x 5 W zone 1 (North)", "2 x 10 W zone 1 (South)"}},
		{"a name in both", "North | Public | 4 | 5 |\nSouth | Public | 2 | 10 |", []string{"4 x 5 W zone Public", "2 x 10 W zone Public"}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Heads", "building | zone | quantity | tap[W] | channel\n"+tt.rows))
			want(t, "loudspeakers", describe(j), tt.want)
		})
	}
}

func TestBuildingForAPlace(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "item | building: House | tap[W]\n1 | Entrance | 5\n2 | Tropics | 3"))
	want(t, "loudspeakers", describe(j), []string{"1 x 5 W zone Entrance", "1 x 3 W zone Tropics"})
	want(t, "assumed", takenAs(j), []string{"B1 zone = the building", "A2 quantity = 1"})
}

func TestTapsThatAreOff(t *testing.T) {
	for _, word := range []string{"off", "aus", "éteint", "apagado", "spento", "uit"} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | room | tap\nS1 | Hall | 5 W\nS2 | Hall | "+word))
		want(t, word, describe(j), []string{"S1 1 x 5 W zone Hall", "S2 1 x 0 W zone Hall"})
	}
}

func TestAmplifierColumns(t *testing.T) {
	for _, tt := range []struct {
		columns string
		want    []string
	}{
		{"model: Amp ref | channel", []string{"A / 1", "B / 1"}},
		{": Rack | channel: Output", []string{"A / 1", "B / 1"}},
		{"model: Amp model | channel", []string{"1", "1"}},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | tap[W] | "+tt.columns+"\nS1 | 5 | A | 1\nS2 | 5 | A | 1\nS3 | 3 | B | 1"))
		want(t, tt.columns, []string{j.Loudspeakers[0].Channel.Label(), j.Loudspeakers[2].Channel.Label()}, tt.want)
	}
}

func TestAmplifierInItsDescription(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | tap[W] | amplifier | channel\nS1 | 5 | AMP1 | 1\nS2 | 5 | AMP1 | 2"),
		draw(layout.Mixed, "Rack", "item | description\n1 | Mixer amplifier AMP1, 2 outputs of 60 W at 100 V"))
	want(t, "loudspeakers", describe(j), []string{"S1 1 x 5 W channel AMP1 / 1", "S2 1 x 5 W channel AMP1 / 2"})
}

func TestItemsOfAControl(t *testing.T) {
	j := jobOf(t, draw(layout.Mixed, "List", "item | room | description | quantity | tap[W] | channel\n1 | Hall | Wall loudspeaker | 4 | 6 | A1.1\n2 | Club | Volume control 24 W | | | A1.1\n2a | Club | Ceiling loudspeaker | 6 | 3 | A1.1"))
	if j.Loudspeakers[0].Control != nil || j.Loudspeakers[1].Control == nil {
		t.Errorf("%v", describe(j))
	}
}

func TestControlOfAWholeOutput(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "tag | tap[W] | channel\nS1 | 5 | A1.1\nS2 | 5 | A1.2"),
		draw(layout.Channels, "Outputs", "amplifier | channel | channel rating[W] | control\nA1 | 1 | 60 | -\nA1 | 2 | 60 | VC-B 35W"))
	want(t, "loudspeakers", describe(j), []string{"S1 1 x 5 W channel A1 / 1", "S2 1 x 5 W control VC-B channel A1 / 2"})
	if k := j.Controls[0]; k.Rated.Low != 35 {
		t.Errorf("%s rated %v", k.Name, k.Rated)
	}
}
