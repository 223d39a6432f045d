package ingest

import "testing"

// Taps as they are beside those proposed: the former count until it is said that they are
// changed; what notes say of loads behind a rating is none. Common practice, no source.
func TestTapsNowAndProposed(t *testing.T) {
	for _, c := range []struct {
		name, sheets string
		want, rated  []string
	}{
		{"German", `
Lautsprecher 100 V, Vorschlag
Nr|Raum|Typ|Anzahl|W jetzt|W Vorschlag|Verstärker
1|Halle|Wand|8|10|6|E1
2|Flur|Decke|6|6|3|E2
3|Büro|Decke|4|3|1.5|E2
4|Saal|Decke|2|6|6|E2

E1 = 60 W, jetzt überlastet (80 W), mit Vorschlag 48 W.
E2 = 60 W, jetzt genau voll, mit Vorschlag 36 W.`,
			[]string{"8 x 10 W zone Halle channel E1 / 1", "6 x 6 W zone Flur channel E2 / 1", "4 x 3 W zone Büro channel E2 / 1", "2 x 6 W zone Saal channel E2 / 1"},
			[]string{"E1 / 1 60 W", "E2 / 1 60 W"}},
		{"English, outputs go on about the rating", `
Loudspeakers 100 V
Room|Type|Qty|Tap W|Amp|Out
Hall|Horn|4|15|P1|1
Yard|Horn|2|15|P1|2

P1 = 180 W, out 1 120 W, out 2 60 W.`,
			[]string{"4 x 15 W zone Hall channel P1 / 1", "2 x 15 W zone Yard channel P1 / 2"}, []string{"P1 / 1 120 W", "P1 / 2 60 W"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "loudspeakers", describe(j), c.want)
			want(t, "outputs", ratedOutputs(j), c.rated)
		})
	}
}
