package ingest

import (
	"strings"
	"testing"
)

// A sentence says which amplifier feeds which places, the verb at the first of them alone.
func TestSentencesOfAmplifiersThatFeedPlaces(t *testing.T) {
	const list = "Area | Room | Qty | Tap\nNave | Door | 4 | 6 W\nChoir | Stalls | 2 | 6 W\nTower | Loft | 2 | 10 W"
	for _, tt := range []struct{ name, note, want string }{
		{"codes with ratings", "100 V system. ZK1 (240 W) feeds Nave and Choir, ZK2 (120 W) Tower", "ZK1 ZK1 ZK2"},
		{"a word for amplifiers", "Amplifier ZK1 (240 W, 100 V) supplies the Nave and the Choir; amplifier ZK2, 120 W, feeds the Tower", "ZK1 ZK1 ZK2"},
		{"and between them", "ZK1 (240 W) feeds Nave and Choir and ZK2 (120 W) feeds Tower", "ZK1 ZK1 ZK2"},
		{"the rest", "Verstärker ZK1 (240 W) speist Nave, Verstärker ZK2 (120 W) speist den Rest", "ZK1 ZK2 ZK2"},
		{"in French", "L'ampli ZK1 (240 W) alimente Nave et Choir, l'ampli ZK2 (120 W) alimente Tower", "ZK1 ZK1 ZK2"},
		{"a control that serves", "ZK1 (36 W) serves Nave, ZK2 (36 W) serves Tower", "- - -"},
		{"a place that no row has", "ZK1 (240 W) feeds Nave and Crypt", "- - -"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			j := wholeJob(t, "## S\nChapel of Vorden\n"+tt.note+"\n\n"+list)
			var got []string
			for _, l := range j.Loudspeakers {
				c := l.Channel
				if c == nil && l.Zone != nil {
					c = l.Zone.Channel
				}
				if c == nil || c.Amplifier == nil {
					got = append(got, "-")
					continue
				}
				got = append(got, c.Amplifier.Name)
			}
			want(t, "amplifiers", []string{strings.Join(got, " ")}, []string{tt.want})
		})
	}
}
