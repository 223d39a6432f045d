package audit

import (
	"strings"
	"testing"
)

// TestWaysOut checks remedies by hand: what each changes, and what is left after it.
func TestWaysOut(t *testing.T) {
	for _, tt := range []struct {
		name, rows string
		rule       string
		want       []string  // parts of the remedies, in their order
		after      []float64 // figures after each
	}{
		{"a thicker cable, or a second run", // 300 m of 1.5 mm2: loop 6.897 ohm on 100 ohm, 0.579 dB; 4.138 ohm with 2.5 mm2, 3.448 ohm doubled
			"channel,A1/1,volts=100; rated=480,\nzone,Pool,channel=A1/1; use=emergency,\nloudspeaker,L1,count=10; tap=10; zone=Pool,\ncable,C1,zone=Pool; length=300; area=1.5; reach=whole,\n",
			"line-loss", []string{"replace 300 m of 1.5 mm2 copper by 2.5 mm2 copper", "second run"}, []float64{0.352, 0.294}},
		{"copper of the same size cures a clad cable", // 9.195 ohm of copper on 100 ohm is 0.764 dB; half of 14.61 ohm clad, 0.613 dB
			"channel,A1/1,volts=100; rated=480,\nloudspeaker,L1,count=10; tap=10; channel=A1/1,\ncable,C1,channel=A1/1; length=400; area=1.5; material=copper-clad aluminium; reach=whole,\n",
			"line-loss", []string{"by 1.5 mm2 copper", "second run"}, []float64{0.7641, 0.6127}},
		{"a clad cable", "channel,A1/1,volts=100; rated=480,\nloudspeaker,L1,count=2; tap=10; channel=A1/1,\ncable,C1,channel=A1/1; length=40; area=1.5; material=copper-clad aluminium; reach=whole,\n",
			"clad-aluminium", []string{"replace 1 cable, 40 m, by 1.5 mm2 copper"}, []float64{0}},
		{"the taps of the model in this job", "channel,A1/1,volts=100; rated=480,\nloudspeaker,L1,count=2; tap=12; rated=6; model=M-6; channel=A1/1,\nloudspeaker,L2,count=2; tap=3; rated=6; model=M-6; channel=A1/1,\nloudspeaker,L3,tap=6; rated=6; model=M-6; channel=A1/1,\n",
			"tap-above-rating", []string{"set 2 loudspeakers from 12 W to 6 W (-3.0 dB)"}, []float64{6}},
		{"the nearest tap overloads, the next does not", "channel,A1/1,volts=100; rated=20,\nloudspeaker,L1,count=4; tap=4.3; offered=6|3|1.5; channel=A1/1,\n",
			"tap-not-offered", []string{"from 4.3 W to 3 W"}, []float64{3}},
		{"a control for a lower voltage is shared out over larger ones", "channel,A1/1,volts=100; rated=1000,\ncontrol,VC-1,channel=A1/1; rated=50; volts=70.7,\nloudspeaker,L1,count=12; tap=30; control=VC-1,\n",
			"control-voltage-mismatch", []string{"split VC-1 over 2 controls of 200 W"}, []float64{90}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := Check(parseCase(t, tt.name, "kind,name,says,want\n"+tt.rows).job, DefaultSettings())
			for _, f := range r.Findings {
				if f.Rule.Name != tt.rule {
					continue
				}
				if len(f.Remedies) != len(tt.want) {
					t.Fatalf("remedies %+v, reason %q", f.Remedies, f.NoRemedy)
				}
				for i, m := range f.Remedies {
					if !strings.Contains(m.Change, tt.want[i]) {
						t.Errorf("remedy %q, want %q", m.Change, tt.want[i])
					}
					if tt.after[i] == 0 && m.After != 0 {
						t.Errorf("after %g, want 0", m.After)
					}
					near(t, m.Change, m.After, tt.after[i], 2e-3)
				}
				return
			}
			t.Fatalf("no finding of %s: %v", tt.rule, verdicts(r))
		})
	}
}

// TestReasonsForNoRemedy: where paper offers none, the reason is the true one.
func TestReasonsForNoRemedy(t *testing.T) {
	for _, tt := range []struct{ name, rows, rule, want string }{
		{"taps that nobody lists", "channel,A1/1,volts=100; rated=480,\nloudspeaker,L1,count=2; tap=12; rated=6; model=M-6; channel=A1/1,\n", "tap-above-rating", "it needs one of at most 6 W"},
		{"another voltage, taps not listed", "channel,A1/1,volts=100; rated=480,\nloudspeaker,L1,tap=5; tapv=70.7; model=M-6; channel=A1/1,\n", "voltage-mismatch", "comes without a list of its taps"},
		{"another voltage, taps listed for that", "channel,A1/1,volts=100; rated=480,\nloudspeaker,L1,tap=5; tapv=70.7; model=M-6; offered=5@70.7; channel=A1/1,\n", "voltage-mismatch", "lists no tap for 100 V"},
		{"taps not listed, no control that large", "channel,A1/1,volts=100; rated=2000,\ncontrol,VC-1,channel=A1/1; rated=100,\nloudspeaker,L1,count=8; tap=250; control=VC-1,\n", "control-overload", "more than 6 controls of 200 W"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := Check(parseCase(t, tt.name, "kind,name,says,want\n"+tt.rows).job, DefaultSettings())
			for _, f := range r.Findings {
				if f.Rule.Name == tt.rule && (len(f.Remedies) > 0 || !strings.Contains(f.NoRemedy, tt.want)) {
					t.Errorf("remedies %v, reason %q, want %q", f.Remedies, f.NoRemedy, tt.want)
				}
			}
			if len(r.Findings) == 0 {
				t.Error("nothing found")
			}
		})
	}
}
