package ingest

import (
	"strings"
	"testing"
)

// Surveys of what hangs where: a row without a tap says why there is none. Common practice, no source.
func TestStatesOfRowsWithoutTaps(t *testing.T) {
	const list = "Yard\n100 V\n|\nNo. | Where | What | Tap | Works?\n1 | Arena | horn | 10 W | yes\n2 | Aisle | box | 3 W | yes\n3 | Office | ceiling speaker | 3 W | yes\n4 | Gate | horn | 15 W | yes\n"
	all := []string{"1 x 10 W zone Arena", "1 x 3 W zone Aisle", "1 x 3 W zone Office", "1 x 15 W zone Gate"}
	for _, c := range []struct {
		what  string
		state string
	}{
		{"bocina retirada, queda el cable", "removed"},
		{"horn removed, cable left behind", "removed"},
		{"Trichter abgebaut, Kabel liegt noch", "removed"},
		{"HP déposé, câble resté en place", "removed"},
		{"altoparlante smontato, resta il cavo", "removed"},
		{"hoorn verwijderd, kabel ligt er nog", "removed"},
		{"caja de repuesto, sin montar", "spare"},
	} {
		j := wholeJob(t, list+"5 | Store | "+c.what+" | |")
		want(t, c.what, describe(j), append(append([]string(nil), all...), "1 x ? W zone Store "+c.state))
		if len(asked(j)) > 0 || !strings.Contains(strings.Join(takenAs(j), "; "), c.state) {
			t.Errorf("%s: asked %q, taken %q", c.what, asked(j), takenAs(j))
		}
	}
	for _, what := range []string{"horn removed, replaced by a new one", "2 horns removed of 3, cable there"} {
		j := wholeJob(t, list+"5 | Store | "+what+" | |")
		if len(j.LeftOut) > 0 {
			t.Errorf("%s: left out %v", what, j.LeftOut)
		}
	}
	// one that has a tap is asked about
	j := wholeJob(t, list+"5 | Store | horn removed, cable left behind | 10 W |")
	if len(asked(j)) == 0 {
		t.Error("nothing is asked")
	}
}

// Volts that a meter shows are no impedance.
func TestMeasuredVolts(t *testing.T) {
	for _, head := range []string{"V mesurés", "Measured (V)", "Gemessene Spannung", "Tensión medida", "Tensione misurata", "Gemeten spanning"} {
		j := wholeJob(t, "Site\n100 V\n|\nOutput | Line | W output | "+head+"\n1 | L1 | 120 | 98\n2 | L2 | 60 | 99\n3 | L3 | 240 | 98\n|\nLine | Room | Qty | Tap\nL1 | Hall | 4 | 10 W\nL2 | Gym | 4 | 6 W\nL3 | Yard | 4 | 15 W")
		want(t, head, channelRatings(j), []string{"1 120 W 100 V", "2 60 W 100 V", "3 240 W 100 V"})
		if len(j.Measurements) > 0 {
			t.Errorf("%s: measured %v", head, j.Measurements)
		}
	}
}

// A loudspeaker that does not sound may still load its line. Common practice, no source.
func TestLoudspeakersThatDoNotSound(t *testing.T) {
	for _, c := range []struct{ head, yes, no string }{
		{"Working?", "yes", "no"}, {"Funktioniert?", "ja", "nein"}, {"Fonctionne ?", "oui", "non"}, {"¿Suena?", "sí", "no"}, {"Suona?", "sì", "no"}, {"Werkt?", "ja", "nee"},
	} {
		j := wholeJob(t, "Yard\n100 V\n|\nNo. | Where | What | Tap | "+c.head+"\n1 | Arena | horn | 10 W | "+c.yes+"\n2 | Aisle | box | 3 W | "+c.no+"\n3 | Office | ceiling speaker | 3 W | "+c.yes)
		want(t, c.head, describe(j), []string{"1 x 10 W zone Arena", "1 x 3 W zone Aisle", "1 x 3 W zone Office"})
		if got := strings.Join(asked(j), "; "); got != "E6 status" {
			t.Errorf("%s: asked %q", c.head, got)
		}
	}
}
