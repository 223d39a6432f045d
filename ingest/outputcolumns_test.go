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

// A rating behind the tag of an amplifier is no part of its name; behind a word it tells two apart.
// A cable that leads a circuit to its output needs no word for either. Common practice, no source.
func TestRatedNamesAndCircuits(t *testing.T) {
	j := wholeJob(t, `## A
Ref | Location | Qty | Tap W | Circuit
LS1 | Gallery | 6 | 6 | C1
LS2 | Fern room | 4 | 3 | C2
LS3 | Ticket hall | 2 | 10 | C3
|
## Amplifiers
Amp | Output | Rated power | Circuits
PA-A (2 x 120 W) | 1 | 120 W | C1
| 2 | 120 W | C2
PA-B | 1 | 60 W | C3
|
## Cables
From | To | Circuit | Cable | Length m
PA-A/1 | LS1 | C1 | 2.5 mm² | 85
PA-A/2 | LS2 | C2 | 2.5 mm² | 60
PA-B/1 | LS3 | C3 | 1.5 mm² | 40`)
	want(t, "outputs", channelRatings(j), []string{"PA-A / 1 120 W ? V", "PA-A / 2 120 W ? V", "PA-B / 1 60 W ? V"})
	want(t, "questions", asked(j), nil)
}

// Amplifiers that a column tells by a word and their watts are each their own. Common practice, no source.
func TestAmplifiersCalledByWatts(t *testing.T) {
	for _, c := range [][2]string{{"Endstufe (120 W)", "Endstufe (60 W)"}, {"ampli 120 W", "ampli 60 W"}, {"120 W amp", "60 W amp"}, {"VERSTERKER 120 W", "VERSTERKER 60 W"}} {
		j := wholeJob(t, "Room | Qty | Tap W | Amplifier\nHall | 4 | 6 | "+c[0]+"\nYard | 2 | 15 | "+c[1]+"\nGate | 2 | 15 | "+c[1])
		want(t, c[0], channelRatings(j), []string{c[0] + " / 1 120 W ? V", c[1] + " / 1 60 W ? V"})
	}
	j := wholeJob(t, "Room | Qty | Tap W | Amplifier\nHall | 4 | 6 | Endstufe (120 W)\nYard | 2 | 15 | Endstufe\nGate | 2 | 15 | Endstufe")
	want(t, "one", channelRatings(j), []string{"Endstufe / 1 120 W ? V"})
}

// A riser lists outputs with what they feed, and rates the amplifier in brackets behind its tag.
// Common practice, no source.
func TestRiserOfRatedAmplifiers(t *testing.T) {
	j := wholeJob(t, `## Riser
Amplifier | Chan | Feeds | Load (W) | Spare (W)
AMP 1 (2-channel, 250W/ch) | A | Bowl east | 220 | 30
| B | Bowl west | 220 | 30
AMP 2 (2-channel, 120W/ch) | A | Concourse | 72 | 48
| B | Lockers | 36 | 84
|
## Loudspeakers
Area | Spkr type | No. | Tapping
Bowl east | Horn | 11 | 20W
Bowl west | Horn | 11 | 20W
Concourse | Ceiling | 12 | 6W
Lockers | Ceiling | 12 | 3W`)
	want(t, "rows", describe(j), []string{"11 x 20 W zone Bowl east channel AMP 1 / A", "11 x 20 W zone Bowl west channel AMP 1 / B",
		"12 x 6 W zone Concourse channel AMP 2 / A", "12 x 3 W zone Lockers channel AMP 2 / B"})
	want(t, "outputs", channelRatings(j), []string{"AMP 1 / A 250 W ? V", "AMP 1 / B 250 W ? V", "AMP 2 / A 120 W ? V", "AMP 2 / B 120 W ? V"})
}
