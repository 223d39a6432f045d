package audit

import (
	"cmp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

// A Todo is what the house book should be asked to say: models met without
// what an audit needs of them, models of which schedules say different things,
// and questions, each list by how many verdicts an answer settles.
type Todo struct {
	Models         []TodoModel
	Contradictions []Contradiction
	Questions      []TodoQuestion
}

// A TodoModel is a model that schedules name without saying enough of it.
type TodoModel struct {
	Model    string
	Kind     string   // "loudspeaker", "control", "amplifier"
	Missing  []string // "rating", "taps"
	Met      int      // how many rows name it
	Jobs     int
	Sites    []string
	Where    []schedule.Ref // where it is named, in order; at most mostPlaces of them
	Claims   []string       // what schedules say of it elsewhere: "35 W at 100 V"
	Verdicts int            // verdicts that an answer would settle
}

// A Contradiction is one model of which schedules say different things.
type Contradiction struct {
	Model  string
	Kind   string
	What   string // "rating", "taps offered", "loudspeaker rating"
	Claims []Claim
}

// A Claim is what schedules say of a model, and where.
type Claim struct {
	Text  string
	Volts string         // the line voltage it holds for, "" where none is said
	Where []schedule.Ref // at most mostPlaces of them
	Count int
}

// A TodoQuestion is a question of one job.
type TodoQuestion struct {
	Job *schedule.Job
	Question
}

// mostPlaces is how many places of one thing are listed.
const mostPlaces = 8

// A lack is one row that names a model without saying enough of it.
type lack struct {
	kind, model, missing string
	at                   schedule.Ref
	verdicts             int
}

// A said is what one row says of a model.
type said struct {
	kind, model, what, text string
	volts                   string // the line voltage that it holds for, "" where none is said
	at                      schedule.Ref
}

// HouseTodo gathers what a house book should say, over the current results.
// Call it after Rank.
func HouseTodo(results []*Result) *Todo {
	t := &Todo{}
	models := newTodoModels()
	for _, r := range results {
		if r.SupersededBy != "" {
			continue
		}
		for _, l := range r.lacks {
			models.lack(r, l)
		}
		for _, s := range r.said {
			models.say(s)
		}
		for _, q := range r.Questions {
			t.Questions = append(t.Questions, TodoQuestion{Job: r.Job, Question: q})
		}
	}
	t.Models, t.Contradictions = models.finish()
	slices.SortStableFunc(t.Questions, func(a, b TodoQuestion) int {
		return cmp.Or(cmp.Compare(b.Verdicts, a.Verdicts), cmp.Compare(a.Job.File, b.Job.File), a.At.Compare(b.At), cmp.Compare(a.Text, b.Text))
	})
	return t
}

type modelID struct{ kind, key string }

type claimID struct {
	modelID
	what string
}

type todoModels struct {
	lacking map[modelID]*TodoModel
	order   []modelID
	jobs    map[modelID]map[*schedule.Job]bool
	claims  map[claimID][]Claim
	claimed []claimID
	names   map[modelID]string
}

func newTodoModels() *todoModels {
	return &todoModels{lacking: map[modelID]*TodoModel{}, jobs: map[modelID]map[*schedule.Job]bool{}, claims: map[claimID][]Claim{}, names: map[modelID]string{}}
}

func (m *todoModels) lack(r *Result, l lack) {
	id := modelID{l.kind, modelKey(l.model)}
	t := m.lacking[id]
	if t == nil {
		t = &TodoModel{Model: l.model, Kind: l.kind}
		m.lacking[id], m.jobs[id] = t, map[*schedule.Job]bool{}
		m.order = append(m.order, id)
	}
	t.Met++
	t.Verdicts += l.verdicts
	m.jobs[id][r.Job] = true
	t.Jobs = len(m.jobs[id])
	if site := siteName(r.Job); !slices.Contains(t.Sites, site) {
		t.Sites = append(t.Sites, site)
	}
	if !slices.Contains(t.Missing, l.missing) {
		t.Missing = append(t.Missing, l.missing)
	}
	if len(t.Where) < mostPlaces {
		t.Where = append(t.Where, l.at)
	}
}

func (m *todoModels) say(s said) {
	id := claimID{modelID{s.kind, modelKey(s.model)}, s.what}
	if _, ok := m.claims[id]; !ok {
		m.claimed = append(m.claimed, id)
	}
	if m.names[id.modelID] == "" {
		m.names[id.modelID] = s.model
	}
	list := m.claims[id]
	for i := range list {
		if list[i].Text == s.text {
			list[i].Count++
			if len(list[i].Where) < mostPlaces {
				list[i].Where = append(list[i].Where, s.at)
			}
			return
		}
	}
	m.claims[id] = append(list, Claim{Text: s.text, Volts: s.volts, Where: []schedule.Ref{s.at}, Count: 1})
}

func (m *todoModels) finish() ([]TodoModel, []Contradiction) {
	var models []TodoModel
	for _, id := range m.order {
		t := m.lacking[id]
		for _, c := range m.claimed {
			if c.modelID == id {
				for _, k := range m.claims[c] {
					t.Claims = append(t.Claims, c.what+" "+k.Text)
				}
			}
		}
		models = append(models, *t)
	}
	slices.SortStableFunc(models, func(a, b TodoModel) int {
		return cmp.Or(cmp.Compare(b.Verdicts, a.Verdicts), cmp.Compare(b.Met, a.Met), cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Model, b.Model))
	})
	var against []Contradiction
	for _, c := range m.claimed {
		if list := contradicting(m.claims[c]); len(list) > 1 {
			slices.SortStableFunc(list, func(a, b Claim) int { return cmp.Or(cmp.Compare(b.Count, a.Count), cmp.Compare(a.Text, b.Text)) })
			against = append(against, Contradiction{Model: m.names[c.modelID], Kind: c.kind, What: c.what, Claims: list})
		}
	}
	slices.SortStableFunc(against, func(a, b Contradiction) int {
		return cmp.Or(cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Model, b.Model), cmp.Compare(a.What, b.What))
	})
	return models, against
}

// contradicting returns the claims that some other claim denies: what holds for
// one line voltage denies nothing that holds for another, and 35 W without a
// voltage does not deny 35 W at 100 V.
func contradicting(claims []Claim) []Claim {
	var out []Claim
	for i, a := range claims {
		for k, b := range claims {
			differ := a.Volts == b.Volts || (a.Volts == "" || b.Volts == "") && strings.TrimSuffix(a.Text, a.Volts) != strings.TrimSuffix(b.Text, b.Volts)
			if i != k && differ {
				out = append(out, a)
				break
			}
		}
	}
	return out
}

// What a claim is about.
const (
	claimedRating = "rating"
	claimedTaps   = "taps offered"
	claimedPower  = "loudspeaker rating"
)

// models notes, for the house book, what the job's models lack and what its
// rows say of them.
func (x *Examination) models(r *Result) {
	c := x.circuit
	open := func(v Verdict) int {
		if !v.Checked || !v.Passed && v.Certainty != Certain {
			return 1
		}
		return 0
	}
	for i, k := range c.job.Controls {
		n := &c.controls[i]
		if k.Model.Value == "" || k.Remote.Yes {
			continue
		}
		if !n.rating.watts.Known && len(n.members) > 0 {
			r.lacks = append(r.lacks, lack{"control", k.Model.Value, "rating", k.At, open(n.verdict)})
		}
		if k.Rated.Had() && !weaker(k.Rated.How) {
			at := ""
			if n.rating.volts != nil && !n.rating.house {
				at = " at " + voltsList(n.rating.volts)
			}
			r.said = append(r.said, said{"control", k.Model.Value, claimedRating, span(quantity(k.Rated)) + " W" + at, at, placeOf(k.Rated.Source, k.At)})
		}
	}
	for i, ch := range c.job.Channels {
		n := &c.channels[i]
		if ch.Amplifier == nil || ch.Amplifier.Model.Value == "" || ch.Pair || len(ch.Bridged) > 0 { // the rating of one output is none of a pair
			continue
		}
		model := ch.Amplifier.Model.Value
		if (!n.rating.watts.Known || n.rating.note != "") && len(n.members) > 0 {
			r.lacks = append(r.lacks, lack{"amplifier", model, "rating", ch.At, open(n.verdict)})
		}
		if ch.Rated.Had() && !weaker(ch.Rated.How) && ch.RatedBasis.Value == "" {
			r.said = append(r.said, said{"amplifier", model, claimedRating, span(quantity(ch.Rated)) + " W" + atVolts(n.lineV), atVolts(n.lineV), placeOf(ch.Rated.Source, ch.At)})
		}
	}
	undecided := c.undecided()
	first := make(map[int]*schedule.Loudspeaker) // of each model
	for i := range c.rows {
		row := &c.rows[i]
		l := row.l
		if l.Model.Value == "" || row.part == notCounted {
			continue
		}
		if k := first[row.model]; k != nil && k.Rated.Low == l.Rated.Low && k.Rated.High == l.Rated.High && slices.Equal(k.Offered, l.Offered) && (len(row.offers) > 0 || l.Tap.Had()) {
			continue
		}
		first[row.model] = l
		if len(row.offers) == 0 && !l.Tap.Had() && !l.RowTotal.Had() && row.out == notOut {
			r.lacks = append(r.lacks, lack{"loudspeaker", l.Model.Value, "taps", l.At, undecided[i]})
		}
		if len(l.Offered) > 0 {
			r.said = append(r.said, said{"loudspeaker", l.Model.Value, claimedTaps, offeredText(l.Offered), "", l.At})
		}
		if l.Rated.Had() {
			r.said = append(r.said, said{"loudspeaker", l.Model.Value, claimedPower, span(quantity(l.Rated)) + " W", "", placeOf(l.Rated.Source, l.At)})
		}
	}
}

// undecided counts, for each row, the controls and channels above it whose
// verdict is open.
func (c *circuit) undecided() []int {
	out := make([]int, len(c.rows))
	for _, nodes := range [][]node{c.controls, c.channels} {
		for i := range nodes {
			n := &nodes[i]
			if n.verdict.Checked && (n.verdict.Passed || n.verdict.Certainty == Certain) {
				continue
			}
			for _, m := range n.members {
				out[m.row]++
			}
		}
	}
	return out
}

func offeredText(taps []schedule.TapOffer) string {
	sorted := slices.Clone(taps)
	slices.SortFunc(sorted, func(a, b schedule.TapOffer) int {
		return cmp.Or(cmp.Compare(a.Volts, b.Volts), cmp.Compare(b.Watts, a.Watts))
	})
	var out []string
	for _, t := range sorted {
		text := figure(float64(t.Watts))
		if t.Volts > 0 {
			text += " at " + volts(float64(t.Volts))
		}
		out = append(out, text)
	}
	return strings.Join(out, ", ") + " W"
}
