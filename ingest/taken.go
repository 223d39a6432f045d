package ingest

import (
	"cmp"
	"fmt"
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
)

// An account gathers assumptions and questions. What holds alike for many
// cells of one column is one assumption, so that a list of a thousand lengths
// in feet does not drown the one that matters.
type account struct {
	taken     map[takenKey]*taken
	questions map[schedule.Question]bool
}

type takenKey struct {
	sheet   string
	table   int
	col     int // 0 for a title
	field   string
	takenAs string
	how     schedule.How
	because string
}

type taken struct {
	first, header schedule.Ref
	written       string
	n             int
}

func newAccount() *account {
	return &account{taken: make(map[takenKey]*taken), questions: make(map[schedule.Question]bool)}
}

// take notes that a value was taken rather than stated.
func (a *account) take(s seen, field, takenAs string, how schedule.How, because string) {
	k := takenKey{sheet: s.source.At.Sheet, field: field, takenAs: takenAs, how: how, because: because}
	if s.t != nil {
		k.table = s.t.number
	}
	if s.col != nil {
		k.col = s.col.i + 1
	}
	t := a.taken[k]
	if t == nil {
		t = &taken{first: s.source.At, written: s.source.Written}
		if s.col != nil {
			t.header = s.col.At
		}
		a.taken[k] = t
	} else if s.source.At.Compare(t.first) < 0 {
		t.first, t.written = s.source.At, s.source.Written
	}
	t.n++
}

// doubt notes what a parser took for granted, apart from units, which have
// their own rules.
func (a *account) doubt(s seen, takenAs string, d notation.Doubts) {
	d &^= notation.Bare
	for _, text := range d.Texts() {
		a.take(s, string(s.field), takenAs, schedule.LikelierReading, text)
	}
}

// ask notes a question; the same question is asked once.
func (a *account) ask(at schedule.Ref, field, text, settles string) {
	a.questions[schedule.Question{At: at, Field: field, Text: text, Settles: settles}] = true
}

// assumptions returns what was taken, in the order of cells.
func (a *account) assumptions() []schedule.Assumption {
	out := make([]schedule.Assumption, 0, len(a.taken))
	for k, t := range a.taken {
		x := schedule.Assumption{At: t.first, Field: k.field, Written: t.written, TakenAs: k.takenAs, How: k.how, Because: k.because}
		if t.n > 1 {
			x.Written = fmt.Sprintf("%d cells, first %s %q", t.n, t.first.Cell(), t.written)
			if !t.header.IsZero() {
				x.At = t.header
			}
		}
		out = append(out, x)
	}
	slices.SortFunc(out, func(x, y schedule.Assumption) int {
		return cmp.Or(x.At.Compare(y.At), cmp.Compare(x.Field, y.Field), cmp.Compare(x.TakenAs, y.TakenAs),
			cmp.Compare(x.How, y.How), cmp.Compare(x.Because, y.Because), cmp.Compare(x.Written, y.Written))
	})
	return out
}

// asked returns the questions in the order of cells.
func (a *account) asked() []schedule.Question {
	out := make([]schedule.Question, 0, len(a.questions))
	for q := range a.questions {
		out = append(out, q)
	}
	slices.SortFunc(out, func(x, y schedule.Question) int {
		return cmp.Or(x.At.Compare(y.At), cmp.Compare(x.Field, y.Field), cmp.Compare(x.Text, y.Text), cmp.Compare(x.Settles, y.Settles))
	})
	return out
}
