package ingest

import "testing"

// A list of the devices of all trades names the lines of the system with a word for it
// in front, and its amplifiers, by a tag before what they give, say which lines they
// feed. Common practice, no source.
func TestLinesOfTheSystem(t *testing.T) {
	for _, c := range []struct {
		name, sheets string
		want, rated  []string
	}{
		{"English", `
Low current devices by room, PA 100 V
Room no. | Room | Device | Qty | Connected to
1 | Lobby | Ceiling speaker 6 W | 4 | PA line 1
1 | Lobby | Slave clock | 1 | Clock line
2 | Gym | Horn speaker 15 W | 2 | PA line 2
3 | Office | Ceiling speaker 3 W | 2 | PA line 3
4 | Plant | Amplifier B1 2 x 60 W, 100 V | 1 | PA line 1 and 2
4 | Plant | Amplifier B2 120 W, 100 V | 1 | PA line 3
4 | Plant | Master clock | 1 | Clock line`,
			[]string{"4 x 6 W zone Lobby channel B1 / 1", "2 x 15 W zone Gym channel B1 / 2", "2 x 3 W zone Office channel B2 / 3"},
			[]string{"B1 / 1 60 W", "B1 / 2 60 W", "B2 / 3 120 W"}},
		{"Dutch, a model is no tag", `
Omroep 100 V, toestellen per ruimte
Ruimte | Toestel | Aantal | Aansluiting
Hal | Plafondluidspreker 6 W | 4 | omroep lijn 1
Bad | Hoornluidspreker 15 W | 2 | omroep lijn 2
Techniek | Versterker QX-480 2 x 120 W | 1 | omroep lijn 1 en 2`,
			[]string{"4 x 6 W zone Hal channel Versterker QX-480 2 x 120 W / 1", "2 x 15 W zone Bad channel Versterker QX-480 2 x 120 W / 2"},
			[]string{"Versterker QX-480 2 x 120 W / 1 120 W", "Versterker QX-480 2 x 120 W / 2 120 W"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, c.sheets)
			want(t, "loudspeakers", describe(j), c.want)
			want(t, "outputs", ratedOutputs(j), c.rated)
		})
	}
}
