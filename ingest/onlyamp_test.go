package ingest

import "testing"

// Registers of the assets of several sites tell the kinds of devices in one column and what each is rated or set to in
// another; the only amplifier of a site feeds its loudspeakers, which is said aloud. Common practice, no source.
func TestRegistersOfKinds(t *testing.T) {
	for _, c := range []struct{ head, amp, speaker, control, fan, set string }{
		{"Site code | Site | Asset ref | Asset type | Location | Qty | Detail", "PA amplifier", "Loudspeaker ceiling", "Volume control", "Extract fan", "3 W tap"},
		{"Obj.-Nr. | Objekt | Kennung | Typ | Raum | Anz. | Detail", "Verstärker", "Lautsprecher Decke", "Lautstärkeregler", "Pumpe", "3 W"},
	} {
		jobs := wholeJobs(c.head + `
L1 | Fern Library | L1/01 | ` + c.amp + ` | Cupboard | 1 | 120 W, 100 V
L1 | Fern Library | L1/02 | ` + c.speaker + ` | Lending | 6 | ` + c.set + `
L1 | Fern Library | L1/03 | ` + c.speaker + ` | Reading room | 2 | ` + c.set + `
L1 | Fern Library | L1/04 | ` + c.control + ` | Reading room | 1 | 12 W
L1 | Fern Library | L1/05 | ` + c.fan + ` | Toilets | 2 | 40 W
H2 | Mill Hall | H2/01 | ` + c.amp + ` | Stage | 1 | 60 W, 100 V
H2 | Mill Hall | H2/02 | ` + c.speaker + ` | Main hall | 4 | ` + c.set + `
H2 | Mill Hall | H2/03 | ` + c.speaker + ` | Foyer | 2 | ` + c.set)
		if len(jobs) != 2 {
			t.Fatalf("%s: %d jobs", c.head, len(jobs))
		}
		want(t, c.head, describe(jobs[0]), []string{"L1/02 6 x 3 W zone Lending channel L1/01 / 1", "L1/03 2 x 3 W zone Reading room control L1/04 channel L1/01 / 1"})
		want(t, c.head, describe(jobs[1]), []string{"H2/02 4 x 3 W zone Main hall channel H2/01 / 1", "H2/03 2 x 3 W zone Foyer channel H2/01 / 1"})
		want(t, c.head, ratedOutputs(jobs[0]), []string{"L1/01 / 1 120 W"})
		want(t, c.head, ratedOutputs(jobs[1]), []string{"H2/01 / 1 60 W"})
	}
}
