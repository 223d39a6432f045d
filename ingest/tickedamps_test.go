package ingest

import "testing"

// Ticks below amplifiers that stand with what they give under a word for amplifiers, beside counts and taps: the powers in
// the headers are those of the amplifiers. Common practice, no source.
func TestTicksBelowRatedAmplifiers(t *testing.T) {
	for _, head := range []string{
		" | | | | Which amplifier |\nZone | Position | Speakers | Set to (W) | WET (240 W) | DRY (120 W)",
		" | | | | Welcher Verstärker |\nZone | Ort | Lautsprecher | Abgriff (W) | WET (240 W) | DRY (120 W)",
		" | | | | Ampli |\nZone | Lieu | HP | Réglage (W) | WET (240 W) | DRY (120 W)",
	} {
		j := wholeJob(t, "Baths, 100 V\n|\n"+head+"\n1 | Deep end | 4 | 15 | x |\n1 | Shallow end | 4 | 15 | x |\n2 | Learner pool | 4 | 10 | x |\n3 | Showers | 4 | 3 | | x\n4 | Reception | 4 | 1.5 | | x")
		want(t, head, ratedOutputs(j), []string{"WET / 1 240 W", "DRY / 1 120 W"})
		want(t, head, describe(j), []string{"4 x 15 W zone 1 channel WET / 1", "4 x 15 W zone 1 channel WET / 1", "4 x 10 W zone 2 channel WET / 1", "4 x 3 W zone 3 channel DRY / 1", "4 x 1.5 W zone 4 channel DRY / 1"})
	}
}
