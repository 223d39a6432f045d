package ingest

import "testing"

// A cable list whose remark says that a cable leads to a control, and what that carries. Common practice, no source.
func TestControlsInChainsOfCables(t *testing.T) {
	for _, word := range []string{"Control", "Regler", "Atténuateur", "Atenuador", "Attenuatore", "Regelaar"} {
		j := wholeJob(t, "Grebe pool, 100 V, amplifier V1 with 2 outputs of 120 W each\n|\nCable | From | To | Length m | Room | Tap W | Remarks\nW01 | V1 out 1 | LS 1 | 45 | Pool | 10 |\nW02 | LS 1 | LS 2 | 12 | Pool | 10 |\nW03 | LS 2 | LS 3 | 12 | Pool | 10 |\n"+
			"W11 | V1 out 2 | LS 7 | 30 | Changing | 3 |\nW13 | LS 7 | R1 | 9 | Office | | "+word+" 12 W\nW14 | R1 | LS 9 | 6 | Office | 1.5 |\nW15 | LS 9 | LS 10 | 5 | First aid | 1.5 |\n")
		want(t, word, []string{controlsOf(j)}, []string{"R1 12 W x2"})
	}
}
