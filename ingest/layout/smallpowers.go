package layout

import (
	"slices"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// smallestOutput is the least that outputs of amplifiers are made for, in W: common practice, no source.
const smallestOutput = 10

// smallPowers takes the only column of powers for taps where most of them are less than any output gives and no header
// speaks of amplifiers: "Tag | Room | Output (W)" over "K1 | Store | 6" and "K2 | Passage | 1.5". Whatever the tags look
// like and the header calls the powers, the rows are loudspeakers.
func smallPowers(cols []*heading, base []worth) {
	powers := -1
	for i, h := range cols {
		switch {
		case h.of(vocabulary.Amplifier) >= headerScore || h.of(vocabulary.Control) >= headerScore:
			return
		case h.unit == "W" || slices.Contains(powerFields, h.top) && h.score >= headerScore:
			if powers >= 0 {
				return
			}
			powers = i
		}
	}
	if powers < 0 || cols[powers].forced != vocabulary.Unknown || !mostlySmall(cols[powers].cells) {
		return
	}
	base[powers][vocabulary.ChannelWatts], base[powers][vocabulary.FrameWatts] = barred, barred
	base[powers][vocabulary.Tap] = max(base[powers][vocabulary.Tap], headerScore)
}

// mostlySmall reports whether most powers of a column are less than any output gives. Counts with powers, "4 x 3 W", say by
// themselves what they are.
func mostlySmall(s *sample) bool {
	if s.share(lookCountWatts) > 0 {
		return false
	}
	small, powers := 0, 0
	for _, text := range s.texts {
		v, ok := factor(text)
		if !ok {
			list := notation.PowersIn(text, notation.Auto)
			if len(list) != 1 {
				continue
			}
			v = list[0].W
		}
		if powers++; v < smallestOutput {
			small++
		}
	}
	return powers >= 2 && 2*small > powers
}
