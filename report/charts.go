package report

import (
	"cmp"
	"math"
	"slices"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
)

// Bar is one bar of a chart.
type Bar struct {
	Label string
	Parts []float64 // one for each series
	At    schedule.Ref
}

// Loads returns the channels and controls that carry most of their rating, the
// fullest first, at most n: load and rating in watts.
func (a *Audit) Loads(n int) []Bar {
	type item struct {
		Bar
		share float64
	}
	var items []item
	for _, r := range a.Archive.Results {
		if r.SupersededBy != "" {
			continue
		}
		for v := range a.ofJob(r, "loads", loadRows) {
			label := cmp.Or(r.Job.Site.Value, JobName(r.Job)) + ", " + v[0].Words
			at := schedule.At(v[4].Words, v[5].Words, int(v[6].Number), int(v[7].Number))
			items = append(items, item{Bar{Label: label, Parts: []float64{v[2].Number, v[3].Number}, At: at}, v[1].Number})
		}
	}
	slices.SortStableFunc(items, func(x, y item) int { return cmp.Or(cmp.Compare(y.share, x.share), cmp.Compare(x.Label, y.Label)) })
	var out []Bar
	for _, it := range items[:min(n, len(items))] {
		out = append(out, it.Bar)
	}
	return out
}

// loadRows are the loads of a job's channels and controls that are known:
// place, share of the rating, load and rating in watts, and where they stand.
func loadRows(r *audit.Result, yield func(...Value) bool) bool {
	row := func(place string, share, load, rated audit.Interval, at schedule.Ref) bool {
		if !share.Known || !load.Known || !rated.Known || math.IsInf(load.High, 0) {
			return true
		}
		return yield(words(place), number(share.High), number(load.High), number(rated.Low), words(at.File()), words(at.Sheet()), count(int(at.Row)), count(int(at.Col)))
	}
	for _, c := range r.Channels {
		if !row("channel "+c.Channel.Label(), c.Share, c.Load.Watts, c.Rated, c.Channel.At) {
			return false
		}
	}
	for _, c := range r.Controls {
		if !row(c.Control.Label(), c.Share, c.Load.Watts, c.Rated, c.Control.At) {
			return false
		}
	}
	return true
}

// ByRule counts the findings of the current jobs by rule and grade (danger,
// fault, caution, unknown), most first.
func (a *Audit) ByRule() []Bar {
	var out []Bar
	for _, rule := range audit.Rules() {
		b := Bar{Label: rule.Name, Parts: make([]float64, 4)}
		total := 0
		for _, f := range a.Archive.Findings {
			if f.Rule == rule {
				b.Parts[audit.Danger-f.Grade]++
				total++
			}
		}
		if total > 0 {
			out = append(out, b)
		}
	}
	slices.SortStableFunc(out, func(x, y Bar) int { return cmp.Compare(sum(y.Parts), sum(x.Parts)) })
	return out
}

// BySite returns the score of the sites with findings, worst first, at most n.
func (a *Audit) BySite(n int) []Bar {
	var out []Bar
	for _, s := range a.Archive.Sites[:min(n, len(a.Archive.Sites))] {
		if s.Score == 0 {
			break
		}
		out = append(out, Bar{Label: s.Name, Parts: []float64{s.Score}})
	}
	return out
}

func sum(vs []float64) (t float64) {
	for _, v := range vs {
		t += v
	}
	return t
}
