package ingest

import "testing"

// A survey as one walks round: pieces ahead of sizes, remarks behind ratings, a mixer
// amplifier among outputs, both amplifiers in one breath. Common practice, no source.
func TestSurveyWithMixerAmp(t *testing.T) {
	for _, c := range []struct{ title, last string }{
		{"In the store (1) 4x100W amp + (1) 60W mixer amp", "mixer"}, {"Amp 4x100W; mixer amp 60W", "mixer"}, {"amp 4x100W and amp 60W", "B"},
	} {
		j := wholeJob(t, "Rowing club - walk round\n70V system. "+c.title+`
|
Area | Spkrs | Tap | Vol ctl | Amp/ch
Erg room | 6 - 8in ceiling | 5W | 35W att. by door | A ch1
Lockers | 4 ceiling | 2.5W | 10W | A ch2
Boat bays | 8 horns | 15W | none | A ch3
Dock | 2 horns | 30 | none | A-4
Office | 2 ceiling | 1.25 | 10W, stuck | `+c.last)
		want(t, c.title, describe(j), []string{"6 x 5 W zone Erg room control control (Erg room) channel A / 1", "4 x 2.5 W zone Lockers control control (Lockers) channel A / 2",
			"8 x 15 W zone Boat bays channel A / 3", "2 x 30 W zone Dock channel A / 4", "2 x 1.25 W zone Office control control (Office) channel " + c.last + " / 1"})
		want(t, c.title, channelRatings(j), []string{"A / 1 100 W 70 V", "A / 2 100 W 70 V", "A / 3 100 W 70 V", "A / 4 100 W 70 V", c.last + " / 1 60 W 70 V"})
		want(t, c.title, ratedControls(j), []string{"control (Erg room) 35", "control (Lockers) 10", "control (Office) 10"})
	}
}

// A letter is an output where the others are letters too, or where the amplifier stands beside it.
func TestLettersThatAreOutputs(t *testing.T) {
	j := wholeJob(t, "Area | Qty | Tap W | Amp/ch\nHall | 4 | 6 | PA1/A\nYard | 2 | 15 | PA1/B\nStore | 2 | 3 | C")
	if list := j.Amplifiers; len(list) != 1 {
		t.Errorf("%d amplifiers", len(list))
	}
}
