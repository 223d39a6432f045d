package ingest

import (
	"strings"
	"testing"

	"lineaudit/ingest/layout"
)

// Where an amplifier has as many zones as outputs and no row names one, each zone
// has an output of its own, aloud; else it is asked. Common practice, no source.
func TestZonesOnAmplifiersInTurn(t *testing.T) {
	const heads = "zone | quantity | tap[W] | amplifier\n1 | 4 | 6 | V1\n2 | 4 | 6 | V1\n3 | 6 | 3 | V2\n4 | 2 | 10 | V2\n4 | 2 | 3 | V2"
	for _, tt := range []struct {
		note, heads, want string
		asked             bool
	}{
		{"V1: 2 x 60 W; V2: 2 x 30 W", heads, "V1 / 1, V1 / 2, V2 / 1, V2 / 2, V2 / 2", false},
		{"V1: 2 x 60 W; V2: 2 x 30 W", "zone | quantity | tap[W] | amplifier\n2 | 4 | 6 | V1\n1 | 4 | 6 | V1\nHall | 6 | 3 | V2\nShop | 2 | 10 | V2", "V1 / 2, V1 / 1, V2 / 1, V2 / 2", false},
		{"V1: 4 x 60 W; V2: 2 x 30 W", heads, "-, -, V2 / 1, V2 / 2, V2 / 2", true},
		{"V1: 2 x 60 W; V2: 2 x 30 W", "zone | quantity | tap[W] | amplifier\n1 | 4 | 6 | V1\n2 | 4 | 6 | V1\n2 | 6 | 3 | V2\n3 | 2 | 10 | V2", "-, -, -, -", true},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "title : "+tt.note+"\n"+tt.heads))
		var got []string
		for _, l := range j.Loudspeakers {
			label := "-"
			if l.Channel != nil {
				label = l.Channel.Label()
			}
			got = append(got, label)
		}
		if strings.Join(got, ", ") != tt.want || len(j.Questions) > 0 != tt.asked {
			t.Errorf("%s: got %s, asked %v; want %s", tt.heads, strings.Join(got, ", "), asked(j), tt.want)
		}
	}
}
