package main

import (
	"context"
	"fmt"
	"io"
	"math"
	"slices"
	"testing"

	"lineaudit/audit"
	"lineaudit/samples/answer"
	"lineaudit/samples/generate"
)

// generated writes an archive, audits it, and returns both its truth and its audit.
func generated(t *testing.T, cfg generate.Config) (answer.Archive, *audit.Archive) {
	t.Helper()
	dir := t.TempDir()
	truth, err := generate.Write(dir, cfg)
	if err != nil {
		t.Fatal(err)
	}
	set, text, err := parse([]string{dir, "--workers", "2", "--quiet"}, false)
	if err != nil {
		t.Fatalf("%v: %s", err, text)
	}
	s := screen{out: io.Discard, err: io.Discard}
	p, code := prepare(context.Background(), set, s)
	if p == nil {
		t.Fatalf("exit code %d", code)
	}
	if err := p.readAll(context.Background(), s); err != nil {
		t.Fatal(err)
	}
	return truth, p.audit().Archive
}

// everyHand are archives of all layouts in all languages, one for each noise.
func everyHand(t *testing.T, faults float64, rules []string, seed uint64) []generate.Config {
	t.Helper()
	noises := []int{0, 1, 2}
	jobs := len(generate.Layouts()) * len(generate.Languages())
	if testing.Short() {
		noises, jobs = noises[1:2], len(generate.Layouts())
	}
	var out []generate.Config
	for _, noise := range noises {
		out = append(out, generate.Config{Seed: seed + uint64(noise), Jobs: jobs, Languages: generate.Languages(), Noise: noise, Faults: faults, Rules: rules})
	}
	return out
}

// TestFalseAlarms audits archives without faults: no job may give a danger, a
// fault or a caution, of any rule. The goal is none, the limit 1 % of the jobs.
func TestFalseAlarms(t *testing.T) {
	jobs, alarmed := 0, 0
	for _, cfg := range everyHand(t, 0, nil, 901) {
		_, a := generated(t, cfg)
		for _, r := range a.Results {
			jobs++
			first := slices.IndexFunc(r.Findings, func(f *audit.Finding) bool { return f.Grade >= audit.Caution })
			if first < 0 {
				continue
			}
			alarmed++
			f := r.Findings[first]
			t.Logf("noise %d: %s: %s %s %s: %s", cfg.Noise, r.Job.File, f.Certainty, f.Grade, f.Place, f.Message)
		}
	}
	t.Logf("%d of %d jobs without faults give an alarm", alarmed, jobs)
	if jobs == 0 || 100*alarmed > jobs {
		t.Errorf("%d of %d jobs without faults give an alarm, want at most 1 %%", alarmed, jobs)
	}
}

// An overload is a load past its rating, as the truth has it.
type overload struct {
	file, sheet, cell string
	load, rated       float64
	place             string
}

func (o overload) grade() audit.Grade {
	switch {
	case o.load > 1.25*o.rated*(1+1e-6):
		return audit.Danger
	case o.load > o.rated*(1+1e-6):
		return audit.Fault
	}
	return audit.Unknown
}

// overloads works out, from the truth alone, everything that is rated and what it carries.
func overloads(a answer.Archive) (out []overload) {
	known := func(v float64) bool { return !math.IsNaN(v) && v > 0 }
	for _, k := range a.Controls {
		if known(k.RatedW) {
			out = append(out, overload{k.File, k.Sheet, k.Cell, k.LoadW, k.RatedW, k.Control})
		}
	}
	for _, c := range a.Channels {
		if known(c.RatedW) {
			out = append(out, overload{c.File, c.Sheet, c.Cell, c.LoadW, c.RatedW, c.Amplifier + "." + c.Channel})
		}
	}
	for _, m := range a.Amplifiers {
		if known(m.RatedW) {
			out = append(out, overload{m.File, m.Sheet, m.Cell, m.LoadW, m.RatedW, m.Amplifier})
		}
	}
	return slices.DeleteFunc(out, func(o overload) bool { return o.grade() == audit.Unknown })
}

// TestOverloadsOfGeneratedArchives compares every overload that is certain with
// the loads of the truth, both ways, and counts how many carry a remedy: at
// least 95 %, while the others say why not.
func TestOverloadsOfGeneratedArchives(t *testing.T) {
	rules := []string{"control-overload", "channel-overload", "frame-overload", "control-voltage-mismatch", "controls-in-series"}
	want, found, told, wrong, cured := 0, 0, 0, 0, 0
	for _, cfg := range everyHand(t, 1, rules, 951) {
		truth, a := generated(t, cfg)
		over := overloads(truth)
		matched := make([]bool, len(over))
		for _, f := range certainOverloads(a) {
			told++
			if len(f.Remedies) > 0 {
				cured++
			} else if f.NoRemedy == "" {
				t.Errorf("%s, %s: neither a remedy nor a reason", f.At.File(), f.Place)
			}
			i := slices.IndexFunc(over, func(o overload) bool {
				return o.file == f.At.File() && (o.sheet == f.At.Sheet() || o.sheet == "") && o.grade() == f.Grade && math.Abs(o.load-f.Measured.Low) < 1e-6*o.load && math.Abs(o.rated-f.Limit) < 1e-6*o.rated
			})
			if i < 0 {
				wrong++
				t.Logf("noise %d: %s: the truth has no such overload: %s %s %s", cfg.Noise, f.At.File(), f.Grade, f.Place, f.Message)
				continue
			}
			matched[i] = true
		}
		for i, o := range over {
			want++
			if matched[i] {
				found++
			} else {
				t.Logf("noise %d: %s: %s, %g W of %g W, was not found", cfg.Noise, o.file, o.place, o.load, o.rated)
			}
		}
	}
	share := func(n, of int) float64 { return 100 * float64(n) / math.Max(1, float64(of)) }
	text := fmt.Sprintf("%d overloads told as certain: %.1f %% carry a remedy, %d are none; %d of %d overloads of the truth are told (%.1f %%)",
		told, share(cured, told), wrong, found, want, share(found, want))
	t.Log(text)
	if told < 50 && !testing.Short() || share(cured, told) < 95 || share(wrong, told) > 1 || share(found, want) < 95 {
		t.Error(text)
	}
}

func certainOverloads(a *audit.Archive) (out []*audit.Finding) {
	for _, r := range a.Results {
		for _, f := range r.Findings {
			if f.Certainty == audit.Certain && (f.Rule.Name == "control-overload" || f.Rule.Name == "channel-overload" || f.Rule.Name == "frame-overload") {
				out = append(out, f)
			}
		}
	}
	return out
}
