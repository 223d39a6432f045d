package ingest

import "testing"

// Amplifiers that rows name in a column of outputs are rated by sentences about them.
func TestAmplifiersNamedAsOutputs(t *testing.T) {
	for note, rated := range map[string][]string{
		"G1 and G2 are 100 watt amplifiers, G3 is a 60 watt amplifier.":       {"G1 100 W", "G2 100 W", "G3 60 W"},
		"G1 ist ein Verstärker mit 100 W, G2 und G3 sind Verstärker mit 60 W": {"G1 100 W", "G2 60 W", "G3 60 W"},
	} {
		j := wholeJob(t, `
Lily house, line 70.7 V
Position | Loudspeaker | Quantity | Setting | Output
Ring | 12 in. column | 4 | 15 W | G1
Zenith | 8 in. ceiling | 2 | 8 W | G2
Aisle | 4 in. step | 6 | 1 W | G3

`+note)
		want(t, note, ratedOutputs(j), rated)
	}
}
