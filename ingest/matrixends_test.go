package ingest

import "testing"

// Counts with powers in the first row below the lines are no header; an amplifier below them without
// a name is what each line is given. Common practice, no source.
func TestGroupsBelowLinesBeginAtOnce(t *testing.T) {
	j := wholeJob(t, `Eisbahn Nord | | | | Auftrag 77
Lautsprecher je Linie, 100 V

Raum | Typ | Linie 1 | Linie 2 | Linie 3
Tribüne Süd | Horn | 6 x 10 W | |
Tribüne Nord | Horn | 6 x 10 W | |
Kasse | Decke | | 2 x 6 W |
Kabinen | Decke | | 5 x 3 W |
Garage | Horn | | | 2 x 15 W
Summe | | 120 W | 27 W | 30 W
Verstärker | | 240 W | 60 W | 120 W
Regler | | ohne | R4, 50 W | ohne`)
	want(t, "loudspeakers", describe(j), []string{
		"6 x 10 W zone Tribüne Süd channel 1", "6 x 10 W zone Tribüne Nord channel 1", "2 x 6 W zone Kasse control R4 channel 2",
		"5 x 3 W zone Kabinen control R4 channel 2", "2 x 15 W zone Garage channel 3",
	})
	want(t, "lines", ratedOutputs(j), []string{"1 240 W", "2 60 W", "3 120 W"})
}
