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
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		before := Check(j, DefaultSettings())
		more := j.Clone()
		l := *more.Loudspeakers[rng.IntN(len(more.Loudspeakers))]
		l.Tag = schedule.Said("LS-new", l.Tag.At)
		l.Status = schedule.Installed
		more.Loudspeakers = append(more.Loudspeakers, &l)
		after := Check(more, DefaultSettings())
		for i := range before.Channels {
			b, a := before.Channels[i], after.Channels[i]
			if a.Load.Watts.Low < b.Load.Watts.Low || a.Load.Watts.High < b.Load.Watts.High || a.FreeW.Low > b.FreeW.Low {
				t.Errorf("channel %s: load %v became %v, free %v became %v", b.Channel.Name, b.Load.Watts, a.Load.Watts, b.FreeW, a.FreeW)
			}
		}
		for i := range before.Controls {
			b, a := before.Controls[i], after.Controls[i]
			if a.Load.Watts.Low < b.Load.Watts.Low || a.Load.Watts.High < b.Load.Watts.High {
				t.Errorf("control %s: load %v became %v", b.Control.Name, b.Load.Watts, a.Load.Watts)
			}
		}
	})
}

func TestLoadsAreThoseOfASimpleSum(t *testing.T) {
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		r := Check(j, DefaultSettings())
		for i, k := range j.Controls {
			want, known := 0.0, true
			for _, l := range j.Loudspeakers {
				behind := false
				for up := l.Control; up != nil; up = up.Parent {
					behind = behind || up == k
				}
				if !behind || l.Status != schedule.Installed || l.LowImpedance.Had() {
					continue
				}
				v := float64(j.LineVolts.Low)
				tapV := v
				if l.TapVolts.Had() {
					tapV = float64(l.TapVolts.Low)
				}
				if !l.Tap.Had() {
					known = false
					continue
				}
				// P (V/Vt)^2, with 70.7 V as 100/sqrt(2).
				class := func(x float64) float64 {
					if x > 70 && x < 71 {
						return 100 / math.Sqrt2
					}
					return x
				}
				want += float64(l.Count.Low) * float64(l.Tap.Low) * math.Pow(class(v)/class(tapV), 2)
			}
			got := r.Controls[i].Load.Watts
			if known && (math.Abs(got.Low-want) > 1e-6 || got.Low != got.High) {
				t.Errorf("control %s carries %v, want %g", k.Name, got, want)
			}
		}
	})
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
		got := Check(shuffled, DefaultSettings())
		if a, b := verdicts(want), verdicts(got); !slices.Equal(a, b) {
			t.Errorf("shuffling changes verdicts:\n%v\n%v", a, b)
		}
		if a, b := ids(want), ids(got); !slices.Equal(a, b) {
			t.Errorf("shuffling changes ids: %v, %v", a, b)
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

func TestScalingTapsAndRatingsChangesNoRatio(t *testing.T) {
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		j.Cables = nil // losses do change
		want := Check(j, DefaultSettings())
		const k = 2
		big := j.Clone()
		scale := func(q *schedule.Quantity[schedule.Watts]) { q.Low, q.High = k*q.Low, k*q.High }
		for _, l := range big.Loudspeakers {
			scale(&l.Tap)
			l.Offered = slices.Clone(l.Offered)
			for i := range l.Offered {
				l.Offered[i].Watts *= k
			}
		}
		for _, c := range big.Controls {
			scale(&c.Rated)
		}
		for _, c := range big.Channels {
			scale(&c.Rated)
		}
		for _, a := range big.Amplifiers {
			scale(&a.Rated)
		}
		got := Check(big, DefaultSettings())
		if a, b := outcomes(want), outcomes(got); !slices.Equal(a, b) {
			t.Errorf("scaling changes verdicts:\n%v\n%v", a, b)
		}
		for i := range want.Channels {
			if a, b := want.Channels[i].Share, got.Channels[i].Share; a.Known && (math.Abs(a.Low-b.Low) > 1e-9) {
				t.Errorf("channel %d: share %v became %v", i, a, b)
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
		if x, y := verdicts(a), verdicts(b); !slices.Equal(x, y) {
			t.Errorf("verdicts differ:\n%v\n%v", x, y)
		}
		for i := range a.Lines {
			if math.Abs(a.Lines[i].WorstDB.High-b.Lines[i].WorstDB.High) > 1e-9 {
				t.Errorf("line %d: %v and %v", i, a.Lines[i].WorstDB, b.Lines[i].WorstDB)
			}
		}
	})
}

// TestRemediesHold applies every remedy by itself and audits the job again.
func TestRemediesHold(t *testing.T) {
	kinds := map[string]int{}
	overloads, cured := 0, 0
	eachRandomJob(t, func(t *testing.T, rng *rand.Rand, j *schedule.Job) {
		r, x := examine(j, DefaultSettings())
		before := grave(r)
		x.remedy(r)
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
		for _, c := range x.cures {
			kinds[c.finding.Remedies[c.remedy].Kind]++
			job := j.Clone()
			c.change(job)
			after := Check(job, DefaultSettings())
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
