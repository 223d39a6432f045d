package ingest

import "testing"

// Two lines for each place, each with its number, count and tap: the number below the word for the line names it, as
// several rows have it. The list of outputs numbers the slots of the frame beside amplifiers that are called like controls.
// Common practice, no source.
func TestNumbersBelowLines(t *testing.T) {
	for _, c := range []struct{ name, head, amps string }{
		{"German", "Bereich | Raum | Linie A | | | Linie B | | | Bemerkung\n | | Nr. | St. | Abgriff | Nr. | St. | Abgriff", "Einschub | Verstärker | Ausgang | Nennleistung | Linie"},
		{"English", "Zone | Room | Line A | | | Line B | | | Remark\n | | No. | Qty | Tap | No. | Qty | Tap", "Module | Amplifier | Output | Rated power | Line"},
		{"French", "Zone | Local | Ligne A | | | Ligne B | | | Remarque\n | | N° | Qté | Prise | N° | Qté | Prise", "Module | Amplificateur | Sortie | Puissance nominale | Ligne"},
	} {
		t.Run(c.name, func(t *testing.T) {
			j := wholeJob(t, "## List\nElmfield, PA, 100 V\n|\n"+c.head+`
Quay 1 | North | 11A | 5 | 10 W | 11B | 5 | 10 W
Quay 1 | South | 11A | 4 | 10 W | 11B | 4 | 10 W
Quay 2 | North | 21A | 6 | 10 W | 21B | 5 | 10 W
Quay 2 | South | 21A | 6 | 3 W | | |
## Frame
`+c.amps+`
3 | LV1 | 1 | 250 W | 11A
3 | LV1 | 2 | 250 W | 21A
5 | LV2 | 1 | 120 W | 11B
5 | LV2 | 2 | 120 W | 21B`)
			want(t, "loudspeakers", describe(j), []string{
				"5 x 10 W zone Quay 1 channel LV1 / 1", "5 x 10 W zone Quay 1 channel LV2 / 1", "4 x 10 W zone Quay 1 channel LV1 / 1", "4 x 10 W zone Quay 1 channel LV2 / 1",
				"6 x 10 W zone Quay 2 channel LV1 / 2", "5 x 10 W zone Quay 2 channel LV2 / 2", "6 x 3 W zone Quay 2 channel LV1 / 2",
			})
			want(t, "outputs", channelRatings(j), []string{"LV1 / 1 250 W 100 V", "LV1 / 2 250 W 100 V", "LV2 / 1 120 W 100 V", "LV2 / 2 120 W 100 V"})
		})
	}
}

// Numbers that come once each below two lines are those of loudspeakers.
func TestNumbersOfLoudspeakersBelowLines(t *testing.T) {
	j := wholeJob(t, `
Elmfield, PA, 100 V
|
Area | Line A | | | Line B | |
 | No. | Qty | Tap | No. | Qty | Tap
Quay 1 | H1 | 1 | 10 W | H2 | 1 | 10 W
Quay 2 | H3 | 1 | 10 W | H4 | 1 | 10 W
Quay 3 | H5 | 1 | 10 W | H6 | 1 | 10 W`)
	want(t, "loudspeakers", describe(j), []string{"H1 1 x 10 W zone Quay 1 channel A", "H2 1 x 10 W zone Quay 1 channel B", "H3 1 x 10 W zone Quay 2 channel A",
		"H4 1 x 10 W zone Quay 2 channel B", "H5 1 x 10 W zone Quay 3 channel A", "H6 1 x 10 W zone Quay 3 channel B"})
}
