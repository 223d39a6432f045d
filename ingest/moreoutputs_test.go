package ingest

import "testing"

// Three lines on an amplifier of two outputs: two of them share one, and the schedule need not say which. Common practice, no source.
func TestMoreLinesThanOutputs(t *testing.T) {
	const list = "Item | Room | Qty | Tap | Line\nCeiling loudspeaker | Hall | 6 | 6 W | L1\nHorn | Ice | 8 | 30 W | L2\nCeiling loudspeaker | Booth | 1 | 3 W | L3\n|\n"
	want(t, "two outputs", asked(wholeJob(t, list+"Amplifier 1: 2 x 250 W")), []string{"A6 channel"})
	want(t, "four outputs", asked(wholeJob(t, list+"Amplifier 1: 4 x 250 W")), nil)
}
