package audit

import (
	"math"
	"testing"

	"lineaudit/audit/schedule"
)

// Several lines start at a rack that the schedule calls by its place; each hangs on the output of its loudspeakers.
// Common practice, no source.
func TestLinesThatStartAtOneRack(t *testing.T) {
	const job = `kind,name,says,want
channel,A1/1,volts=100; rated=120,
channel,A1/2,volts=100; rated=120,
loudspeaker,L1,tap=10; channel=A1/1,
loudspeaker,L2,tap=20; channel=A1/2,
loudspeaker,L3,tap=30; channel=A1/2,
cable,W1,from=cupboard; to=loudspeaker:L1; length=10; area=1.5; reach=from-to,
cable,W2,from=cupboard; to=loudspeaker:L2; length=20; area=1.5; reach=from-to,
cable,W3,from=loudspeaker:L2; to=loudspeaker:L3; length=30; area=1.5; reach=from-to,
`
	r := Check(parseCase(t, "rack", job).job, DefaultSettings())
	if len(r.Lines) != 2 {
		t.Fatalf("%d lines, want 2", len(r.Lines))
	}
	for i, want := range []struct{ load, length float64 }{{10, 10}, {50, 50}} {
		l := r.Lines[i]
		if l.Incomplete != "" || !l.LoadW.Known {
			t.Fatalf("line %d: %q, carries %v", i, l.Incomplete, l.LoadW)
		}
		near(t, "load", l.LoadW.High, want.load, 1e-12)
		near(t, "length", l.LengthM.High, want.length, 1e-12)
	}

	// A branch with loudspeakers of two outputs stays loose.
	r = Check(parseCase(t, "two outputs", job+"cable,W4,from=loudspeaker:L1; to=loudspeaker:L3; length=5; area=1.5; reach=from-to,\n").job, DefaultSettings())
	for _, l := range r.Lines {
		if l.Incomplete == "" {
			t.Errorf("line %s of two outputs is judged", l.Name)
		}
	}
}

// A cable along the loudspeakers of one row: their load hangs at the end of both cables, or is spread along the second.
// Plain arithmetic: 1/58 ohm mm2/m, 10 loudspeakers of 6 W on a 100 V line.
func TestCableAlongTheLoudspeakersOfARow(t *testing.T) {
	const job = `kind,name,says,want
channel,A1/1,volts=100; rated=120,
loudspeaker,L1,count=10; tap=6; channel=A1/1,
cable,W1,from=channel:A1/1; to=loudspeaker:L1; length=100; area=2.5; reach=from-to,
cable,W2,from=loudspeaker:L1; to=loudspeaker:L1; length=150; area=2.5; reach=from-to,
`
	j := parseCase(t, "along", job).job
	tags := []schedule.Text{schedule.Said("HP 201", j.Cables[0].To.Text.Source.At), schedule.Said("HP 201", j.Cables[1].From.Text.Source.At), schedule.Said("HP 210", j.Cables[1].To.Text.Source.At)}
	j.Cables[0].To.Text, j.Cables[1].From.Text, j.Cables[1].To.Text = tags[0], tags[1], tags[2]
	r := Check(j, DefaultSettings())
	if len(r.Lines) != 1 {
		t.Fatalf("%d lines, want 1", len(r.Lines))
	}
	l := r.Lines[0]
	loop := 2 * 250.0 / 58 / 2.5
	near(t, "length", l.LengthM.High, 250, 1e-12)
	near(t, "loop", l.LoopOhm.High, loop, 1e-9)
	near(t, "worst", l.WorstDB.High, 20*math.Log10(1+loop*60/1e4), 1e-9)
	for _, f := range r.Findings {
		if f.Rule.Name == "loose-end" {
			t.Errorf("a loose end: %s", f.Message)
		}
	}
}

// A cable to a loudspeaker in the middle of such a row ends where the row hangs, which is as far as it can be.
func TestCableFromTheMiddleOfARow(t *testing.T) {
	const job = `kind,name,says,want
channel,A1/1,volts=100; rated=120,
loudspeaker,L1,count=10; tap=6; channel=A1/1,
loudspeaker,L2,tap=10; channel=A1/1,
cable,W1,from=channel:A1/1; to=loudspeaker:L1; length=100; area=2.5; reach=from-to,
cable,W2,from=loudspeaker:L1; to=loudspeaker:L1; length=150; area=2.5; reach=from-to,
cable,W3,from=loudspeaker:L1; to=loudspeaker:L2; length=20; area=2.5; reach=from-to,
`
	j := parseCase(t, "middle", job).job
	for i, tags := range [][2]string{{"", "HP 201"}, {"HP 201", "HP 210"}, {"HP 205", "HP 301"}} {
		c := j.Cables[i]
		if i > 0 {
			c.From.Text = schedule.Said(tags[0], c.From.Text.Source.At)
		}
		c.To.Text = schedule.Said(tags[1], c.To.Text.Source.At)
	}
	r := Check(j, DefaultSettings())
	if len(r.Lines) != 1 || r.Lines[0].Incomplete != "" {
		t.Fatalf("lines %+v", r.Lines)
	}
	near(t, "length", r.Lines[0].LengthM.High, 270, 1e-12)
	near(t, "load", r.Lines[0].LoadW.High, 70, 1e-12)
}
