package ingest

import (
	"strings"
	"testing"
)

// Outputs in a sentence on one sheet lead to lines on another, which rows call by the same words, with the number of
// the output or without. Common practice, no source.
func TestOutputsToLinesCalledByWords(t *testing.T) {
	for _, lines := range []string{"1 Pool|2 Rest", "Pool|Rest", "Pool 1|Rest 2"} {
		pool, rest, _ := strings.Cut(lines, "|")
		list := "\n## Speakers\nLine | No | Place | Tap | State\n" + pool + " | 1.1 | North beach | 10 W | ok\n" + pool + " | 1.2 | South beach | 10 W | ok\n" +
			rest + " | 2.1 | Foyer | 3 W | ok\n" + rest + " | 2.2 | Gym | 6 W | ok"
		for note, amp := range map[string]string{
			"One amplifier of 240 W, two outputs in parallel at 100 V. Output 1: pool. Output 2: rest.":  "amplifier / ",
			"Amplifier 240 W, output 1: pool, output 2: rest":                                            "amplifier / ",
			"Output 1 = pool (120 W), output 2 = rest (120 W)":                                           "",
			"Amp A 240 W. Amp A output 1: pool; amp A output 2: rest":                                    "Amp A / ",
			"Etapa única de 240 W, con dos salidas en paralelo a 100 V. Salida 1: pool. Salida 2: rest.": "amplifier / ",
			"Verstärker 240 W. Ausgang 1: Pool; Ausgang 2: Rest":                                         "amplifier / ",
		} {
			j := wholeJob(t, "## Report\nRevision of the swimming hall\n|\n"+note+list)
			want(t, lines+": "+note, describe(j), []string{"1 x 10 W zone North beach channel " + amp + "1", "1 x 10 W zone South beach channel " + amp + "1",
				"1 x 3 W zone Foyer channel " + amp + "2", "1 x 6 W zone Gym channel " + amp + "2"})
		}
	}
}
