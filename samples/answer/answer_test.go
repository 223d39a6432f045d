package answer

import (
	"math"
	"testing"
)

// The figures of these checks were worked out by hand from the formulas named
// beside them.
func TestPhysics(t *testing.T) {
	for _, tt := range []struct {
		name      string
		got, want float64
	}{
		// 0.005 in x 92^(20/39) = 0.05082 in; ASTM B258 prints 2582 cmil for 16 AWG: 1.308 mm2.
		{"area of 16 AWG", AreaAWG(16), 1.3087},
		// 12 AWG is 3.31 mm2 in the handbook tables.
		{"area of 12 AWG", AreaAWG(12), 3.3088},
		// 2 x 100 m / 58 / 1.5 mm2 = 2.2989 ohm.
		{"loop of 100 m of 1.5 mm2", LoopOhm(100, 1.5, "copper"), 2.2989},
		// (100/70.7107)^2 = 2, so a 6 W tap draws 12 W.
		{"70 V tap on a 100 V line", Draw(6, 70.7, 100), 12},
		{"100 V tap on a 70 V line", Draw(6, 100, 70), 3},
		{"70 and 71 V are one class", Draw(6, 71, 70), 6},
		// 100 W at 100 V is 100 ohm; a loop of 5.9254 ohm is 0.5 dB: 20 log10(1.059254).
		{"half a decibel", LossFar(5.9254, 100, 100), 0.5},
		// Two loads of 200 ohm at 1 and 2 ohm of loop: the pair sees 1/(1/200+1/201) = 100.249 ohm,
		// 1 + 1/100.249 = 1.009975; the last one 1 + 1/200 = 1.005; product 1.015025.
		{"two evenly spaced", LossEven(2, 100, 100, 2), 20 * math.Log10(1.015025)},
	} {
		if math.Abs(tt.got-tt.want) > 1e-4*tt.want {
			t.Errorf("%s: got %v, want %v", tt.name, tt.got, tt.want)
		}
	}
}

func TestWork(t *testing.T) {
	ls := func(zone, room, control, channel string, count int, tap float64) Loudspeaker {
		return Loudspeaker{Job: "1", Zone: zone, Room: room, Control: control, Amplifier: "A", Channel: channel,
			Count: count, TapW: tap, TapV: 100, LineV: 100, Status: "installed"}
	}
	a := Archive{
		Loudspeakers: []Loudspeaker{ls("Palm", "North", "VC1", "1", 12, 5), ls("Palm", "South", "VC2", "1", 4, 10), ls("Fern", "Fern", "", "2", 2, 3)},
		Controls:     []Control{{Job: "1", Control: "VC1", RatedW: 150}, {Job: "1", Control: "VC2", Upstream: "VC1"}},
		Channels:     []Channel{{Job: "1", Amplifier: "A", Channel: "1"}, {Job: "1", Amplifier: "A", Channel: "2"}},
		Amplifiers:   []Amplifier{{Job: "1", Amplifier: "A"}},
		Lines:        []Line{{Job: "1", Zone: "Palm", Feeds: "South", LengthM: 100, AreaMM2: 1.5, Material: "copper", LineV: 100}},
	}
	spare := ls("Fern", "Fern", "", "2", 3, 3)
	spare.Status = "spare"
	low := ls("Fern", "Fern", "", "2", 1, 0)
	low.LowOhm = 8
	a.Loudspeakers = append(a.Loudspeakers, spare, low)
	a.Work()
	for _, tt := range []struct {
		name      string
		got, want float64
	}{
		{"zone", a.Zones[0].LoadW, 100},
		{"spares and low impedance do not count", a.Zones[1].LoadW, 6},
		{"control with another below it", a.Controls[0].LoadW, 100},
		{"control below", a.Controls[1].LoadW, 40},
		{"channel", a.Channels[0].LoadW, 100},
		{"frame", a.Amplifiers[0].LoadW, 106},
		{"line of one room", a.Lines[0].LoadW, 40},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: got %v, want %v", tt.name, tt.got, tt.want)
		}
	}
	if a.Zones[1].Loudspeakers != 3 {
		t.Errorf("loudspeakers in the zone: got %d, want 3", a.Zones[1].Loudspeakers)
	}
}
