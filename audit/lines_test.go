package audit

import (
	"math"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
)

func near(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	if math.Abs(got-want) > rel*math.Abs(want) {
		t.Errorf("%s: %.9g, want %.9g", what, got, want)
	}
}

// TestLineFromRuns solves a circuit given as runs in any order and direction.
// Volts are those of an independent circuit simulator (ngspice 39.3) for
// reference circuit 06.
func TestLineFromRuns(t *testing.T) {
	r := Check(loadCase(t, "testdata/lines/spice-06.csv").job, DefaultSettings())
	if len(r.Lines) != 1 {
		t.Fatalf("%d lines, want 1", len(r.Lines))
	}
	l := r.Lines[0]
	want := map[string]float64{"n1": 96.108995112, "n2": 95.778921206, "n3": 95.550756073, "n4": 95.373423942, "n5": 95.246830472,
		"n6": 95.170908316, "n7": 95.125364714, "n8": 95.110185129}
	if len(l.Nodes) != 9 || l.Nodes[0].Kind != "amplifier" || l.Nodes[0].Parent != -1 {
		t.Fatalf("nodes %+v", l.Nodes)
	}
	for _, n := range l.Nodes[1:] {
		near(t, n.Place, n.Volts, want[strings.TrimPrefix(n.Place, "loudspeaker ")], 1e-6)
	}
	near(t, "worst dB", l.WorstDB.High, 20*math.Log10(100/95.110185129), 1e-6)
	near(t, "length", l.LengthM.High, 320, 1e-12)
	near(t, "load", l.LoadW.High, 85, 1e-12)
	near(t, "loop", l.LoopOhm.High, 2*0.32*13.3, 1e-9)
	if l.Reading != "segments" || !l.Verdict.Passed {
		t.Errorf("reading %q, verdict %v", l.Reading, l.Verdict)
	}
}

// A line of unknown voltage has no loss, but its length is known all the same.
func TestLengthOfALineOfUnknownVoltage(t *testing.T) {
	j := loadCase(t, "testdata/lines/spice-06.csv").job
	j.LineVolts = schedule.Quantity[schedule.Volts]{}
	for _, c := range j.Channels {
		c.LineVolts = schedule.Quantity[schedule.Volts]{}
	}
	for _, l := range j.Loudspeakers {
		l.TapVolts = schedule.Quantity[schedule.Volts]{}
	}
	l := Check(j, DefaultSettings()).Lines[0]
	near(t, "length", l.LengthM.High, 320, 1e-12)
	if l.WorstDB.Known {
		t.Errorf("a loss of %v dB at an unknown voltage", l.WorstDB)
	}
}

// TestLineReadings works one length out by hand: 200 m of 1.5 mm2 copper at
// 1/58 ohm mm2/m, 10 x 10 W at 70.7 V.
func TestLineReadings(t *testing.T) {
	r := Check(loadCase(t, "testdata/line-loss/fires.csv").job, DefaultSettings())
	l := r.Lines[0]
	loop := 2 * 200.0 / 58 / 1.5
	near(t, "loop", l.LoopOhm.High, loop, 1e-12)
	near(t, "far", l.FarDB.High, 20*math.Log10(1+loop/50), 1e-9)
	// Ten loudspeakers of 500 ohm at every tenth of the loop, from the far end.
	y, ratio := 0.0, 1.0
	for range 10 {
		y += 1.0 / 500
		ratio *= 1 + loop/10*y
		y /= 1 + loop/10*y
	}
	near(t, "even", l.EvenDB.High, 20*math.Log10(ratio), 1e-9)
	near(t, "worst", l.WorstDB.High, l.FarDB.High, 1e-12)
	near(t, "volts", l.LineV.High, 100/math.Sqrt2, 1e-12)
}

// TestLossAtItsLimitPasses sets the limit to the very loss of a line, and just below it.
func TestLossAtItsLimitPasses(t *testing.T) {
	j := loadCase(t, "testdata/lines/spice-06.csv").job
	loss := Check(j, DefaultSettings()).Lines[0].WorstDB.High
	for _, tt := range []struct {
		limit float64
		want  bool
	}{{loss, true}, {loss * (1 - 1e-4), false}, {loss * (1 + 1e-4), true}} {
		s := DefaultSettings()
		for i := range s.limits["line-loss"].named {
			if l := &s.limits["line-loss"].named[i]; l.Name == "caution" && l.Use == schedule.AnyUse {
				l.Value = tt.limit
			}
		}
		s.index()
		if got := Check(j, s).Lines[0].Verdict.Passed; got != tt.want {
			t.Errorf("limit %.12g dB, loss %.12g dB: passed %v, want %v", tt.limit, loss, got, tt.want)
		}
	}
}

// TestInsertionLossOnlyWhereStated: a control adds its insertion loss to the
// line only where the sheet or the house book states one.
func TestInsertionLossOnlyWhereStated(t *testing.T) {
	const job = `kind,name,says,want
channel,A1/1,volts=100; rated=480,
control,VC-1,channel=A1/1; rated=100; model=WK-9 LOSS,
loudspeaker,L1,count=5; tap=10; control=VC-1,
cable,C1,control=VC-1; length=100; area=1.5; reach=whole,
`
	plain := Check(parseCase(t, "plain", strings.Replace(job, " LOSS", "", 1)).job, DefaultSettings())
	sheet := Check(parseCase(t, "sheet", strings.Replace(job, " LOSS", "; loss=0.5", 1)).job, DefaultSettings())
	row := ratingRow(2, "WK-9", "control", 100, 0)
	row.LossDB = schedule.Exactly[schedule.Decibels](0.5, schedule.Source{At: row.At, How: schedule.Stated})
	house := Check(parseCase(t, "house", strings.Replace(job, " LOSS", "", 1)).job, mustSettings(t, &schedule.HouseBook{Ratings: []schedule.RatingRow{row}}))
	a, b, c := plain.Lines[0].WorstDB.High, sheet.Lines[0].WorstDB.High, house.Lines[0].WorstDB.High
	// The load seen through the control is 10^(-0.05) of the taps, so the cable loses a little less.
	loop := 2 * 100.0 / 58 / 1.5
	near(t, "plain", a, 20*math.Log10(1+loop/200), 1e-9)
	near(t, "stated", b, 0.5+20*math.Log10(1+loop/200*math.Pow(10, -0.05)), 1e-9)
	near(t, "house book", c, b, 1e-12)
	if plain.Controls[0].Load.Watts != house.Controls[0].Load.Watts {
		t.Error("insertion loss of a control changed its load")
	}
}

// TestLineShapes: what becomes of runs that branch, of cables that share their
// load, of lengths that may be read two ways.
func TestLineShapes(t *testing.T) {
	for _, tt := range []struct {
		name, rows string
		lines      int
		load       []Interval
	}{
		{"branches of a channel are lines of their own", `cable,C1,from=channel:A1/1; to=loudspeaker:L1; length=10; area=1.5; reach=from-to,
cable,C2,from=channel:A1/1; to=loudspeaker:L2; length=10; area=1.5; reach=from-to,
cable,C3,from=loudspeaker:L2; to=loudspeaker:L3; length=10; area=1.5; reach=from-to,
`, 2, []Interval{Exact(10), Exact(20)}},
		{"two cables to one zone share its load", `cable,C1,zone=Pool; length=10; area=1.5; reach=whole,
cable,C2,zone=Pool; length=20; area=1.5; reach=whole,
`, 2, []Interval{between(0, 30), between(0, 30)}},
		{"equal runs", `cable,C1,zone=Pool; length=10; area=1.5; count=2; reach=whole,
`, 1, []Interval{between(15, 30)}},
		{"a run for each loudspeaker", `cable,C1,zone=Pool; length=10; area=1.5; count=3; reach=whole,
`, 1, []Interval{Exact(10)}},
		{"a cable to a room", `cable,C1,from=channel:A1/1; to=Deck; length=10; area=1.5; reach=from-to,
`, 1, []Interval{Exact(10)}},
		{"from the amplifier to a zone", `cable,C1,from=amplifier:A1; to=zone:Pool; length=10; area=1.5; reach=from-to,
`, 1, []Interval{Exact(30)}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := Check(parseCase(t, tt.name, `kind,name,says,want
channel,A1/1,volts=100; rated=480,
zone,Pool,channel=A1/1,
loudspeaker,L1,tap=10; zone=Pool; room=Deck,
loudspeaker,L2,tap=10; zone=Pool; room=Bank,
loudspeaker,L3,tap=10; zone=Pool; room=Bank,
`+tt.rows).job, DefaultSettings())
			if len(r.Lines) != tt.lines {
				t.Fatalf("%d lines, want %d", len(r.Lines), tt.lines)
			}
			for i, want := range tt.load {
				if got := r.Lines[i].LoadW; got != want {
					t.Errorf("line %d carries %v W, want %v", i, got, want)
				}
			}
		})
	}
}

// TestOnlyChannel: what has no channel hangs on the only one of the job, unless
// another amplifier is there that it may hang on. Common practice, no source.
func TestOnlyChannel(t *testing.T) {
	const job = `kind,name,says,want
channel,A1/1,volts=100; rated=120,
loudspeaker,L1,tap=10; channel=A1/1,
loudspeaker,L2,tap=30,
`
	for _, tt := range []struct {
		name, job string
		unread    bool // where L2 hangs was not understood
		want      float64
	}{
		{"no other amplifier", job, false, 40},
		{"another amplifier", job + "amplifier,A2,,\n", false, 10},
		{"an output that is not understood", job, true, 10},
	} {
		j := parseCase(t, tt.name, tt.job).job
		j.Loudspeakers[1].FeedUnread = tt.unread
		if got := Check(j, DefaultSettings()).Channels[0].Load.Watts; got.High != tt.want {
			t.Errorf("%s: %v W, want %v", tt.name, got, tt.want)
		}
	}
}

// A run from an output to one loudspeaker may carry what hangs on the output and on no cable.
// Plain arithmetic: 10 W alone, 10 + 200 W with what may hang behind it.
func TestRunThatMayCarryMore(t *testing.T) {
	const job = `kind,name,says,want
channel,A1/1,volts=100; rated=240,
loudspeaker,L1,tap=10; channel=A1/1,
loudspeaker,L2,tap=200; channel=A1/1,
cable,C1,from=channel:A1/1; to=loudspeaker:L1; length=400; area=1.5; reach=from-to,
`
	for _, tt := range []struct {
		name, more string
		high       float64
		passed     bool
	}{
		{"another on no cable", "", 210, false},
		{"both on cables", "cable,C2,from=channel:A1/1; to=loudspeaker:L2; length=10; area=2.5; reach=from-to,\n", 10, true},
	} {
		r := Check(parseCase(t, tt.name, job+tt.more).job, DefaultSettings())
		if l := r.Lines[0]; l.LoadW.Low != 10 || l.LoadW.High != tt.high || l.Verdict.Passed != tt.passed {
			t.Errorf("%s: load %v, verdict %+v", tt.name, l.LoadW, l.Verdict)
		}
	}
}

// What keeps a run from being judged goes on doing so beside loudspeakers that may hang behind it.
func TestRunToAKeptOutLoudspeakerMayCarryMore(t *testing.T) {
	r := Check(parseCase(t, "kept out", `kind,name,says,want
channel,A1/1,volts=100; rated=240,
loudspeaker,L1,low=8; channel=A1/1,
loudspeaker,L2,tap=10; channel=A1/1,
cable,C1,from=channel:A1/1; to=loudspeaker:L1; length=20; area=2.5; reach=from-to,
`).job, DefaultSettings())
	if l := r.Lines[0]; l.Verdict.Passed {
		t.Errorf("passed although a loudspeaker on it is kept out: %+v", l)
	}
}
