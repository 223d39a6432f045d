package ingest

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
)

// A cell that counts loudspeakers with their watts and of which nothing is made is asked about: a
// loudspeaker that is lost without a word is the worst reading. Common practice, no source.
func TestCountsOfWhichNothingIsMade(t *testing.T) {
	asked := func(j *schedule.Job) (out []string) {
		for _, q := range j.Questions {
			if strings.Contains(q.Text, "counts loudspeakers") || strings.Contains(q.Text, "count loudspeakers") {
				out = append(out, q.At.Cell()+" "+q.Text)
			}
		}
		return out
	}
	for _, c := range []struct{ name, sheet, cell string }{
		{"a column of remarks of a list of outputs", `
Hall rack, 100 V loudspeaker lines
Amplifier | Channel | Rating W | Remarks
A1 | 1 | 120 | 8 x 3 W
A1 | 2 | 120 | 12 @ 3 W + 2 @ 6 W`, "D3"},
		{"a second column", `
Halle, Lautsprecher 100 V
Raum | Stück | Watt | Ausgang | Sonstiges
Saal | 8 | 6 | 1 | 4 à 6 W
Flur | 6 | 3 | 1 |`, "E3"},
		{"beside the table", `
Salle, haut-parleurs 100 V
Local | Nombre | Prise W | Sortie
Hall | 8 | 6 | 1
Quai | 6 | 3 | 1
|
4 x 10 W préau`, "A6"},
		{"a block that is no table", `
Zaal, luidsprekers 100 V
Ruimte | Aantal | Watt | Uitgang
Hal | 8 | 6 | 1
Gang | 6 | 3 | 1
|
|
Erf | 4 x 10 W | zie tekening`, "A7"},
	} {
		if got := asked(wholeJob(t, c.sheet)); len(got) != 1 || !strings.HasPrefix(got[0], c.cell+" ") {
			t.Errorf("%s: %v", c.name, got)
		}
	}
	for _, sheet := range []string{`
Hall rack, 100 V loudspeaker lines
Amplifier | Rating | Zone
Amp 1 | 4 x 60 W | Hall
Amp 2 | 2 x 60 W | Yard`, `
Halle, Lautsprecher 100 V
Raum | Lautsprecher | Ausgang
Saal | 8 x 6 W | 1
Flur | 6 x 3 W + 2 x 6 W | 1`, `
Salle, haut-parleurs 100 V
Local | Nombre | Prise W | Sortie
Hall | 8 | 6 | 1
|
Ampli 4 x 60 W`} {
		for _, j := range wholeJobs(sheet) {
			if got := asked(j); len(got) > 0 {
				t.Errorf("%v", got)
			}
		}
	}
}
