package ingest

import (
	"fmt"
	"testing"
)

// A take-off refers to a legend by the codes of its items: types of loudspeakers with their taps, controls with their ratings,
// the cable that is laid everywhere. The rows of the legend are no loudspeakers. Common practice, no source.
func TestLegendsOfItems(t *testing.T) {
	for _, c := range []struct{ takeoff, legend string }{
		{"Sheet | Area | Item | Qty | Wire (ft)", `
Item | What | Tap
S1 | 8 in. ceiling speaker | 2.5 W
S2 | Weatherproof horn | 15 W
VC-A | Volume control, 35 W |
Wire | 16 AWG pair |`},
		{"Plan | Raum | Kürzel | Anz. | Kabel (ft)", `
Kürzel | Bedeutung | Anzapfung
S1 | Deckenlautsprecher | 2,5 W
S2 | Hornlautsprecher | 15 W
VC-A | Lautstärkeregler, 35 W |
Kabel | 16 AWG |`},
		{"Plan | Local | Repère | Qté | Câble (ft)", `
Repère | Désignation | Prise
S1 | Haut-parleur de plafond | 2,5 W
S2 | Haut-parleur à pavillon | 15 W
VC-A | Atténuateur, 35 W |
Câble | 16 AWG |`},
	} {
		j := wholeJob(t, `
## Take-off
Lake Rink, bid 24-117
70 V paging
|
`+c.takeoff+`
T1 | Rink bowl | S2 | 8 | 420
T1 | Lobby | S1 | 6 | 180
T1 | Lobby | VC-A | 1 |
T2 | Skates | S1 | 2 | 60
T2 | Drive | S2 | 3 | 380
## Legend`+c.legend)
		want(t, c.takeoff, describe(j), []string{"8 x 15 W zone Rink bowl", "6 x 2.5 W zone Lobby control VC-A", "2 x 2.5 W zone Skates", "3 x 15 W zone Drive"})
		if got, want := controlsOf(j), "VC-A 35 W x1"; got != want {
			t.Errorf("%s: controls %s, want %s", c.takeoff, got, want)
		}
		if len(j.Cables) != 4 {
			t.Fatalf("%s: cables %v", c.takeoff, cablesOf(j))
		}
		for _, k := range j.Cables {
			if got := fmt.Sprintf("%.2f", float64(k.Area.Low)); got != "1.31" { // AWG 16
				t.Errorf("%s: %s mm²", c.takeoff, got)
			}
		}
	}
}

// Loudspeakers that a second list names again, at the same places or once each, are no legend of it.
func TestListsThatAreNoLegend(t *testing.T) {
	const list = "\n## Speakers\nFern House, 100 V\n|\nTag | Room | Type | Tap\nS1 | Hall | ceiling | 6 W\nS2 | Hall | ceiling | 6 W\nS3 | Yard | horn | 15 W"
	for _, again := range []string{"Tag | Room | Type | Qty | Remark\nS1 | Hall | ceiling | 1 | loose\nS3 | Yard | horn | 1 | rusty", "Tag | Area | Remark\nS1 | North | loose\nS3 | South | rusty"} {
		j := wholeJob(t, list+"\n## Visit\n"+again)
		n := 0
		for _, l := range j.Loudspeakers {
			if l.Tap.Had() {
				n++
			}
		}
		if n != 3 {
			t.Errorf("%s: %v", again, describe(j))
		}
	}
}
