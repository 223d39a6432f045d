package notation

import (
	"fmt"
	"strings"
	"testing"
)

// How installers write it in six languages; common practice, no source.
func TestParseControls(t *testing.T) {
	for in, want := range map[string]string{
		"Volume control VC-1 (10 W), Seed room - carries all that is indented": "VC-1 10W",
		"derrière atténuateur T1, 12 W :":                                      "T1 12W", "local att. ATT-1, 6 W": "ATT-1 6W", "behind a wall knob of 35W": "35W", "regelaar VR-W 15 W": "VR-W 15W",
		"Regler R1 (10 W)": "R1 10W", "LR 5 W": "5W", "LR": "err", "2 no. volume controls of 10 W": "10W", "Lautstärkeregler LSR 2, 12 W": "LSR 2 12W", "Atenuador AT-3 de 6 W": "AT-3 6W", "attenuatore n° R2 da 10 W": "R2 10W", "VC1 10W": "VC1 10W",
		"VC A and VC B are 6 W controls": "VC A 6W; VC B 6W", "VC-2, VC-3, VC-4: 35W ATTENUATOR, 1-GANG": "VC-2 35W; VC-3 35W; VC-4 35W", "LSR 1: 6 W; LSR 2: 12 W": "LSR 1 6W; LSR 2 12W", "LSR 1, 3: 6 W": "LSR 1 6W; LSR 3 6W",
		"10 W volume control in lobby": "10W", "2 - VOLUME CONTROL VC-V (35 W) ON VIEWING, VC-C (35 W) ON LEAGUE ROOM": "VC-V 35W [VIEWING]; VC-C 35W [LEAGUE ROOM]", "Regler R1 10 W im Flur": "R1 10W [Flur]", "via VC-2A": "VC-2A", "on VC 3": "VC 3", "volume control": "err",
		"not behind VC-1": "err", "Ceiling loudspeaker 6 W": "err", "Volume 3 of the manual": "err", "": "err", "loud": "err",
	} {
		list, err := ParseControls(in, Auto)
		var parts []string
		for _, c := range list {
			text := c.Name
			if c.W > 0 {
				text += fmt.Sprintf(" %vW", c.W)
			}
			if c.Place != "" {
				text += " [" + c.Place + "]"
			}
			parts = append(parts, strings.TrimSpace(text))
		}
		got := strings.Join(parts, "; ")
		if err != nil {
			got = "err"
		}
		if got != want {
			t.Errorf("%q: %q, %v; want %q", in, got, err, want)
		}
	}
}

func FuzzParseControls(f *testing.F) {
	for _, s := range []string{"Volume control VC-1 (10 W)", "VC A and VC B are 6 W controls", "LSR 1: 6 W; LSR 2: 12 W"} {
		f.Add(s, byte(0))
	}
	f.Fuzz(func(t *testing.T, s string, b byte) {
		list, err := ParseControls(s, Style(b%3))
		if (err == nil) != (len(list) > 0) {
			t.Fatalf("%q: %+v, %v", s, list, err)
		}
		for _, c := range list {
			if !finite(c.W) || c.W > MaxWatts {
				t.Fatalf("%q: %+v", s, c)
			}
		}
	})
}
