package ingest

import (
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// The tables are invented; what each must come to is common practice, no source.
func TestCableBook(t *testing.T) {
	rows := `
		C1 | Amplifier output 1 | H1 | ceiling | 6 | 20
		C2 | H1 | H2 | ceiling | 6 | 8
		C3 | H2 | H3 | ceiling | 3 | 8
		C4 | H2 | H4 | horn | 10 | 30
		C5 | Amplifier output 2 | H5 | horn | 20 | 90`
	wanted := []string{"H1 1 x 6 W channel 1", "H2 1 x 6 W channel 1", "H3 1 x 3 W channel 1", "H4 1 x 10 W channel 1", "H5 1 x 20 W channel 2"}
	for _, columns := range []string{
		"cable | from | to | description | tap[W] | length[m]",
		"cable | channel: Near end | to: Far end | tag: Speaker | tap[W] | length[m]",
		"item: No. | : Start | : End | kind | tap[W] | length[m]",
	} {
		t.Run(columns, func(t *testing.T) {
			j := jobOf(t, draw(layout.Loudspeakers, "Cables", columns+rows))
			want(t, "loudspeakers", describe(j), wanted)
			var from []string
			for _, l := range j.Loudspeakers {
				if l.Run == nil || l.Run.Reach != schedule.FromTo {
					t.Fatalf("%s: no run from one end to the other", l.Tag.Value)
				}
				switch {
				case l.Run.From.Loudspeaker != nil:
					from = append(from, l.Run.From.Loudspeaker.Tag.Value)
				case l.Run.From.Channel != nil:
					from = append(from, l.Run.From.Channel.Label())
				}
			}
			want(t, "near ends", from, []string{"1", "H1", "H2", "H2", "2"})
		})
	}
}

func TestOutputsOfTheOneAmplifier(t *testing.T) {
	j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : Ampli 2 sorties 100 V - 60 W par sortie\ntag | tap[W] | from\nH1 | 6 | Ampli S1\nH2 | 6 | H1\nH3 | 6 | Ampli S2"))
	want(t, "loudspeakers", describe(j), []string{"H1 1 x 6 W channel S1", "H2 1 x 6 W channel S1", "H3 1 x 6 W channel S2"})
	want(t, "channels", channelRatings(j), []string{"S1 60 W 100 V", "S2 60 W 100 V"})
}
