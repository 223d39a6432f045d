package ingest

import "testing"

// A tap that may be one of two is asked, and counted as the one to the other. Common practice, no source.
func TestTapsThatAreNotDecided(t *testing.T) {
	for _, tap := range []string{"5 or 10", "5 oder 10", "5 ou 10 W", "5 o 10", "5 of 10"} {
		j := wholeJob(t, `
Winter garden loudspeakers, 100 V
Room | Qty | Tap W | Amplifier
Grotto | 4 | `+tap+` | A1
Gallery | 3 | 6 | A1`)
		if got := show(j.Loudspeakers[0].Tap); got != "5..10" || len(j.Questions) != 1 {
			t.Errorf("%q: tap %s, questions %v", tap, got, asked(j))
		}
	}
}

// An amplifier whose power is parted among zones has an output for each. Common practice, no source.
func TestPowerPartedAmongZones(t *testing.T) {
	for _, note := range []string{
		"Verstärker 180 W (Zone 1: 120 W, Zone 2: 60 W)",
		"Versterker: 180 W, zone 1 120 W en zone 2 60 W",
		"Amplifier 180 W: zone 1 = 120 W, zone 2 = 60 W",
	} {
		j := wholeJob(t, `
Boothuis, 100 V line, one amplifier
Room | Qty | Tap W | Zone
Quay | 4 | 15 | 1
Shop | 3 | 6 | 2

`+note)
		want(t, note, ratedOutputs(j), []string{"1 120 W", "2 60 W"})
		want(t, "loudspeakers", describe(j), []string{"4 x 15 W zone 1 channel 1", "3 x 6 W zone 2 channel 2"})
	}
	j := wholeJob(t, `
Botanischer Garten, 100 V
Raum | Stk | Watt | Zone
Teich | 4 | 15 | 1
Laden | 3 | 6 | 2

Typenschild Verstärker: 200 W (Zone 1: 100 W, Zone 2: 100 W)`)
	want(t, "equal parts", ratedOutputs(j), []string{"1 100 W", "2 100 W"})
}
