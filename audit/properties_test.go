package audit

import (
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

const trials = 80

func eachRandomJob(t *testing.T, f func(t *testing.T, rng *rand.Rand, j *schedule.Job)) {
	t.Helper()
	for seed := range uint64(trials) {
		rng := rand.New(rand.NewPCG(seed, 7))
		j := randomJob(rng, 4+rng.IntN(30), true)
		f(t, rng, j)
		if t.Failed() {
			t.Fatalf("at seed %d", seed)
		}
	}
}

// verdicts lists what was found, without figures, ids and cells.
func verdicts(r *Result) []string {
	var out []string
	for _, f := range r.Findings {
		out = append(out, fmt.Sprintf("%s %s %s %s", f.Rule.Name, f.Place, f.Grade, f.Certainty))
	}
	for _, p := range r.Passed {
		out = append(out, fmt.Sprintf("%s %s passed", p.Rule.Name, p.Place))
	}
	for _, u := range r.Unshown {
		out = append(out, fmt.Sprintf("%s %s not shown", u.Rule.Name, u.Place))
	}
	slices.Sort(out)
	return out
}

// outcomes lists what was found without places, which may name watts.
func outcomes(r *Result) []string {
	var out []string
	for _, f := range r.Findings {
		out = append(out, fmt.Sprintf("%s %s %s", f.Rule.Name, f.Grade, f.Certainty))
	}
	for _, p := range r.Passed {
		out = append(out, p.Rule.Name+" passed")
	}
	for _, u := range r.Unshown {
		out = append(out, u.Rule.Name+" not shown")
	}
	slices.Sort(out)
	return out
}

// told is what findings say and where, down to the cells.
func told(r *Result) []string {
	var out []string
	for _, f := range r.Findings {
		out = append(out, fmt.Sprintf("%s %v %s %v %s", f.ID, f.At, f.Message, f.Cells, f.Ask))
	}
	slices.Sort(out)
	return out
}

func withoutPlaces(r *Result) []string {
	var out []string
	for _, f := range r.Findings {
		out = append(out, fmt.Sprintf("%s %s %s %v", f.Rule.Name, f.Grade, f.Certainty, f.Measured))
	}
	for _, p := range r.Passed {
		out = append(out, p.Rule.Name+" passed")
	}
	for _, u := range r.Unshown {
		out = append(out, u.Rule.Name+" not shown")
	}
	slices.Sort(out)
	return out
}

func TestCheckChangesNothingAndRepeatsItself(t *testing.T) {
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		before := j.Clone()
		a, b := Check(j, DefaultSettings()), Check(j, DefaultSettings())
		if !reflect.DeepEqual(j, before) {
			t.Error("the audit changed its job")
		}
		a.Settings, b.Settings = nil, nil
		if !reflect.DeepEqual(a.Questions, b.Questions) || !reflect.DeepEqual(a.Lines, b.Lines) || len(a.Broken) > 0 {
			t.Errorf("two audits differ, or broke: %v", a.Broken)
		}
		for i := range a.Findings {
			x, y := *a.Findings[i], *b.Findings[i]
			if !reflect.DeepEqual(x, y) {
				t.Errorf("finding %d differs: %+v, %+v", i, x, y)
			}
		}
	})
}

func TestAddingALoudspeakerNeverLowersALoad(t *testing.T) {
	grows := func(t *testing.T, what string, before, after Interval) {
		if after.Low < before.Low || after.High < before.High || after.Known != before.Known {
			t.Errorf("%s: %v became %v", what, before, after)
		}
	}
	shrinks := func(t *testing.T, what string, before, after Interval) {
		if after.Low > before.Low || after.High > before.High {
			t.Errorf("%s free: %v became %v", what, before, after)
		}
	}
	grew := 0
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		before := Check(j, DefaultSettings())
		more := j.Clone()
		l := *more.Loudspeakers[rng.IntN(len(more.Loudspeakers))]
		l.Tag = schedule.Said("LS-new", l.Tag.At)
		l.Status = []schedule.Status{schedule.Installed, schedule.Installed, schedule.Future, schedule.Spare}[rng.IntN(4)]
		more.Loudspeakers = append(more.Loudspeakers, &l)
		after := Check(more, DefaultSettings())
		for i, b := range before.Channels {
			a := after.Channels[i]
			grows(t, "channel "+b.Channel.Name, b.Load.Watts, a.Load.Watts)
			grows(t, "channel with growth "+b.Channel.Name, b.Load.WithGrowth, a.Load.WithGrowth)
			shrinks(t, "channel "+b.Channel.Name, b.FreeW, a.FreeW)
			if a.Load.Watts.Low > b.Load.Watts.Low {
				grew++
			}
		}
		for i, b := range before.Controls {
			grows(t, "control "+b.Control.Name, b.Load.Watts, after.Controls[i].Load.Watts)
			shrinks(t, "control "+b.Control.Name, b.FreeW, after.Controls[i].FreeW)
		}
		for i, b := range before.Zones {
			grows(t, "zone "+b.Zone.Name, b.Load.Watts, after.Zones[i].Load.Watts)
		}
		for i, b := range before.Amplifiers {
			grows(t, "amplifier "+b.Amplifier.Name, b.Load.Watts, after.Amplifiers[i].Load.Watts)
		}
	})
	if grew < trials/4 {
		t.Errorf("only %d loads grew", grew)
	}
}

// simply is the least and the most that one row draws, told again from the
// design: V^2/Z of each loudspeaker, a missing tap between what is offered.
func simply(j *schedule.Job, l *schedule.Loudspeaker, channel *schedule.Channel) (low, high float64) {
	inf := math.Inf(1)
	if l.Status != schedule.Installed || l.LowImpedance.Had() && !l.Tap.Had() && !l.RowTotal.Had() {
		return 0, 0
	}
	class := func(q schedule.Quantity[schedule.Volts]) float64 { // 70.7 V is 100/sqrt(2)
		if v := float64(q.Low); v < 70 || v > 71 {
			return v
		}
		return 100 / math.Sqrt2
	}
	line := j.LineVolts
	if channel != nil {
		line = channel.LineVolts.Or(line)
	}
	k := 1.0
	if l.TapVolts.Had() {
		k = math.Pow(class(line)/class(l.TapVolts), 2)
	}
	nLow, nHigh := 1.0, inf
	if l.Count.Had() {
		nLow, nHigh = float64(l.Count.Low), float64(l.Count.High)
	}
	switch {
	case l.Tap.Had():
		return k * nLow * float64(l.Tap.Low), k * nHigh * float64(l.Tap.High)
	case l.RowTotal.Had() && math.IsInf(nHigh, 1):
		return k * float64(l.RowTotal.Low), k * float64(l.RowTotal.High)
	case l.RowTotal.Had():
		return k * float64(l.RowTotal.Low) * nLow / nHigh, k * float64(l.RowTotal.High) * nHigh / nLow
	case len(l.Offered) > 0:
		low, high = inf, 0
		for _, o := range l.Offered {
			low, high = math.Min(low, float64(o.Watts)), math.Max(high, float64(o.Watts))
		}
		return k * nLow * low, k * nHigh * high
	}
	return 0, inf
}

// feedsOf are the channels of a row in the order of the design: its own, those
// of its zone, else that of its control; standby ones only where nothing else is.
func feedsOf(j *schedule.Job, l *schedule.Loudspeaker) []*schedule.Channel {
	list := l.Split
	if len(list) == 0 {
		for k := l.Control; k != nil && len(list) == 0; k = k.Parent {
			if k.Channel != nil {
				list = []*schedule.Channel{k.Channel}
			}
		}
	}
	if len(list) == 0 {
		if list = l.Zone.Channels; len(list) < 2 {
			list = []*schedule.Channel{l.Zone.Channel}
		}
	}
	var out []*schedule.Channel
	for _, standby := range []bool{false, true} {
		for _, ch := range list {
			for _, first := range j.Channels { // two that name each other are one, the first
				if first == ch {
					break
				}
				if slices.Contains(first.Bridged, ch) && slices.Contains(ch.Bridged, first) {
					ch = first
					break
				}
			}
			if ch.Standby == standby && !slices.Contains(out, ch) && (!standby || len(out) == 0) {
				out = append(out, ch)
			}
		}
	}
	return out
}

// TestLoadsAreThoseOfASimpleSum adds every control and channel up again.
func TestLoadsAreThoseOfASimpleSum(t *testing.T) {
	agree := func(t *testing.T, name string, got Interval, low, high float64) {
		if math.Abs(got.Low-low) > 1e-6*(1+low) || got.High != high && math.Abs(got.High-high) > 1e-6*(1+high) {
			t.Errorf("%s carries %v, want %g to %g", name, got, low, high)
		}
	}
	compared := 0
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		r := Check(j, DefaultSettings())
		for i, k := range j.Controls {
			if k.Count.Had() || k.Stereo.Yes || k.Remote.Yes || k.Status != schedule.Installed {
				continue
			}
			low, high := 0.0, 0.0
			for _, l := range j.Loudspeakers {
				for up := l.Control; up != nil; up = up.Parent {
					if up == k {
						a, b := simply(j, l, feedsOf(j, l)[0])
						low, high = low+a, high+b
						break
					}
				}
			}
			agree(t, "control "+k.Name, r.Controls[i].Load.Watts, low, high)
			compared++
		}
		for i, ch := range j.Channels {
			low, high := 0.0, 0.0
			for _, l := range j.Loudspeakers {
				feeds := feedsOf(j, l)
				if !slices.Contains(feeds, ch) {
					continue
				}
				a, b := simply(j, l, feeds[0])
				switch {
				case len(feeds) > 1 && l.Zone.ABCircuits.Yes:
					a, b = a/float64(len(feeds)), b/float64(len(feeds))
				case len(feeds) > 1:
					a = 0
				}
				low, high = low+a, high+b
			}
			agree(t, "channel "+ch.Name, r.Channels[i].Load.Watts, low, high)
			compared++
		}
	})
	if compared < 200 {
		t.Errorf("only %d loads compared", compared)
	}
}

func TestShuffledRowsAndRenamedTags(t *testing.T) {
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		want := Check(j, DefaultSettings())
		shuffled := j.Clone()
		rng.Shuffle(len(shuffled.Loudspeakers), func(a, b int) {
			s := shuffled.Loudspeakers
			s[a], s[b] = s[b], s[a]
		})
		rng.Shuffle(len(shuffled.Controls), func(a, b int) {
			s := shuffled.Controls
			s[a], s[b] = s[b], s[a]
		})
		rng.Shuffle(len(shuffled.Cables), func(a, b int) { s := shuffled.Cables; s[a], s[b] = s[b], s[a] })
		rng.Shuffle(len(shuffled.Zones), func(a, b int) { s := shuffled.Zones; s[a], s[b] = s[b], s[a] })
		rng.Shuffle(len(shuffled.Channels), func(a, b int) { s := shuffled.Channels; s[a], s[b] = s[b], s[a] })
		got := Check(shuffled, DefaultSettings())
		if a, b := verdicts(want), verdicts(got); !slices.Equal(a, b) {
			t.Errorf("shuffling changes verdicts:\n%v\n%v", a, b)
		}
		a, b := told(want), told(got)
		for _, s := range a {
			if !slices.Contains(b, s) {
				t.Errorf("shuffling changes what is told: %s", s)
			}
		}
		for _, s := range b {
			if !slices.Contains(a, s) {
				t.Errorf("shuffling changes what is told, into: %s", s)
			}
		}
		renamed := j.Clone()
		for i, l := range renamed.Loudspeakers {
			l.Tag.Value = fmt.Sprintf("X%d", i)
		}
		for i, k := range renamed.Controls {
			k.Name, k.Key = fmt.Sprintf("Y%d", i), fmt.Sprintf("y%d", i)
		}
		for i, z := range renamed.Zones {
			z.Name, z.Key = fmt.Sprintf("W%d", i), fmt.Sprintf("w%d", i)
		}
		for i, ch := range renamed.Channels {
			ch.Name, ch.Key = fmt.Sprintf("V%d", i), fmt.Sprintf("v%d", i)
		}
		for i, k := range renamed.Cables {
			k.Name, k.Key = fmt.Sprintf("U%d", i), fmt.Sprintf("u%d", i)
		}
		if a, b := withoutPlaces(want), withoutPlaces(Check(renamed, DefaultSettings())); !slices.Equal(a, b) {
			t.Errorf("renaming changes verdicts:\n%v\n%v", a, b)
		}
	})
}

func ids(r *Result) []string {
	var out []string
	for _, f := range r.Findings {
		out = append(out, f.ID)
	}
	slices.Sort(out)
	return out
}

func TestIDsSurviveAddedRows(t *testing.T) {
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		want := Check(j, DefaultSettings())
		more := j.Clone()
		for _, l := range more.Loudspeakers {
			l.At.Row += 5
			l.Rows.First += 5
			l.Rows.Last += 5
			l.Tap.At.Row += 5
		}
		if a, b := ids(want), ids(Check(more, DefaultSettings())); !slices.Equal(a, b) {
			t.Errorf("rows added above change ids: %v, %v", a, b)
		}
	})
}

// scaleWatts multiplies every power below v by k.
func scaleWatts(v reflect.Value, k float64, seen map[uintptr]bool) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() && !seen[v.Pointer()] {
			seen[v.Pointer()] = true
			scaleWatts(v.Elem(), k, seen)
		}
	case reflect.Slice:
		for i := range v.Len() {
			scaleWatts(v.Index(i), k, seen)
		}
	case reflect.Struct:
		for _, field := range v.Fields() {
			scaleWatts(field, k, seen)
		}
	case reflect.Float64:
		if v.Type() == reflect.TypeFor[schedule.Watts]() {
			v.SetFloat(k * v.Float())
		}
	}
}

func TestScalingTapsAndRatingsChangesNoRatio(t *testing.T) {
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		// Losses do change, and what is compared with watts or ohms that are not scaled.
		j.Cables, j.Measurements = nil, nil
		for _, l := range j.Loudspeakers {
			l.Offered = slices.Clone(l.Offered) // models share one list
		}
		want := Check(j, DefaultSettings())
		k := []float64{0.3, 2, 3.7}[rng.IntN(3)]
		big := j.Clone()
		for _, l := range big.Loudspeakers {
			l.Offered = slices.Clone(l.Offered)
		}
		scaleWatts(reflect.ValueOf(big), k, map[uintptr]bool{})
		// The watts that are rounding in a total are scaled as well.
		set := mustSettings(t, &schedule.HouseBook{Limits: []schedule.LimitRow{limitRow(2, "total-mismatch", "rounding", fmt.Sprint(k*0.5), "W", "")}})
		got := Check(big, set)
		if a, b := outcomes(want), outcomes(got); !slices.Equal(a, b) {
			t.Errorf("scaling by %g changes verdicts:\n%v\n%v", k, a, b)
		}
		for i := range want.Channels {
			a, b := want.Channels[i].Share, got.Channels[i].Share
			if a.Known != b.Known || math.Abs(a.Low-b.Low) > 1e-9 || a.High != b.High && math.Abs(a.High-b.High) > 1e-9 {
				t.Errorf("channel %d: share %v became %v", i, a, b)
			}
		}
		for i := range want.Controls {
			a, b := want.Controls[i].Share, got.Controls[i].Share
			if a.Known != b.Known || math.Abs(a.Low-b.Low) > 1e-9 || a.High != b.High && math.Abs(a.High-b.High) > 1e-9 {
				t.Errorf("control %d: share %v became %v", i, a, b)
			}
		}
	})
}

func TestFeetAndGaugesAreMetresAndSquareMillimetres(t *testing.T) {
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		metric, american := j.Clone(), j.Clone()
		for i := range j.Cables {
			gauge := 12 + 2*rng.IntN(4)
			area, err := line.AWGAreaMM2(gauge)
			if err != nil {
				t.Fatal(err)
			}
			s := j.Cables[i].Area.Source
			metric.Cables[i].Area = schedule.Exactly(schedule.SquareMM(area), s)
			american.Cables[i].Area = schedule.Quantity[schedule.SquareMM]{}
			american.Cables[i].AWG = schedule.Exactly(schedule.Pieces(gauge), s)
			feet := float64(j.Cables[i].Length.Low) / 0.3048
			american.Cables[i].Length.Low = schedule.Metres(feet * 0.3048)
			american.Cables[i].Length.High = american.Cables[i].Length.Low
		}
		a, b := Check(metric, DefaultSettings()), Check(american, DefaultSettings())
		if x, y := outcomes(a), outcomes(b); !slices.Equal(x, y) {
			t.Errorf("verdicts differ:\n%v\n%v", x, y)
		}
		for i := range a.Lines {
			if math.Abs(a.Lines[i].WorstDB.High-b.Lines[i].WorstDB.High) > 1e-9 {
				t.Errorf("line %d: %v and %v", i, a.Lines[i].WorstDB, b.Lines[i].WorstDB)
			}
		}
	})
}

// A cure is a remedy with the change it was examined with.
type cure struct {
	finding *Finding
	remedy  int
	change  func(*trial)
}

// TestRemediesHold applies every remedy by itself and audits the job again.
func TestRemediesHold(t *testing.T) {
	kinds := map[string]int{}
	overloads, cured := 0, 0
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		var cures []cure
		r, x := examine(nil, j, DefaultSettings())
		before := grave(r)
		w := newWorkshop(x)
		w.kept = func(f *Finding, change func(*trial)) { cures = append(cures, cure{f, len(f.Remedies) - 1, change}) }
		w.remedy(triesOf(j))
		for _, f := range r.Findings {
			load := x.circuit.sameNode(f)
			known := load.load.Watts.bounded() && load.lowRows+load.oddRows == 0
			if f.Certainty == Certain && known && (f.Rule == controlOverload || f.Rule == channelOverload || f.Rule == frameOverload) {
				overloads++
				if len(f.Remedies) > 0 {
					cured++
				}
			}
			if len(f.Remedies) == 0 && f.NoRemedy == "" {
				t.Errorf("%s at %s has neither a remedy nor a reason", f.Rule.Name, f.Place)
			}
		}
		for _, c := range cures {
			kinds[c.finding.Remedies[c.remedy].Kind]++
			copied := &trial{}
			copied.job, copied.Counterparts = j.Copy()
			c.change(copied)
			after := Check(copied.job, DefaultSettings())
			for _, f := range after.Findings {
				if f.ID == c.finding.ID {
					t.Errorf("%s: %q does not cure it", f.Place, c.finding.Remedies[c.remedy].Change)
				}
				if k := f.Rule.Name + "\x1f" + f.key; f.Grade >= Fault && f.Grade > before[k] {
					t.Errorf("%q adds %s of %s: %s", c.finding.Remedies[c.remedy].Change, f.Grade, f.Place, f.Message)
				}
			}
		}
	})
	for _, k := range []string{"retap", "next-rating", "cable", "move", "split"} {
		if kinds[k] == 0 {
			t.Errorf("no remedy of kind %s in %d jobs", k, trials)
		}
	}
	t.Logf("remedies: %v; %d of %d certain overloads of known loads have one", kinds, cured, overloads)
	if float64(cured) < 0.95*float64(overloads) {
		t.Errorf("%d of %d certain overloads have a remedy, want 95 %%", cured, overloads)
	}
}
