package ingest

import (
	"cmp"
	"fmt"
	"maps"
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
	misreads  map[takenKey]map[schedule.Question]bool // by column: cells that were not understood
	refusals  map[takenKey]map[schedule.Refusal]bool  // by column: values that cannot be
	headers   map[takenKey]*column
}

// fewMisreads is the most cells of a column that are each a question of their
// own; more of them are one question about the column.
const fewMisreads = 4

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
	cells         map[schedule.Ref]bool
}

func newAccount() *account {
	return &account{taken: make(map[takenKey]*taken), questions: make(map[schedule.Question]bool), misreads: make(map[takenKey]map[schedule.Question]bool),
		refusals: make(map[takenKey]map[schedule.Refusal]bool), headers: make(map[takenKey]*column)}
}

// take notes that a value was taken rather than stated.
func (a *account) take(s seen, field, takenAs string, how schedule.How, because string) {
	k := takenKey{sheet: s.source.At.Sheet(), field: field, takenAs: takenAs, how: how, because: because}
	if s.t != nil {
		k.table = s.t.number
	}
	if s.col != nil {
		k.col = s.col.i + 1
	}
	t := a.taken[k]
	if t == nil {
		t = &taken{first: s.source.At, written: s.source.Written, cells: make(map[schedule.Ref]bool)}
		if s.col != nil {
			t.header = s.col.At
		}
		a.taken[k] = t
	} else if s.source.At.Compare(t.first) < 0 {
		t.first, t.written = s.source.At, s.source.Written
	}
	t.cells[s.source.At] = true
}

// doubt notes what a parser took for granted, apart from units, which have
// their own rules.
func (a *account) doubt(s seen, takenAs string, d notation.Doubts) {
	d &^= notation.Bare
	for _, text := range d.Texts() {
		a.take(s, s.field.String(), takenAs, schedule.LikelierReading, text)
	}
}

// unsure reports whether a parser took anything for granted apart from units: what
// is worked out for doubt's sake alone need not be where it did not.
func unsure(d notation.Doubts) bool { return d&^notation.Bare != 0 }

// ask notes a question; the same question is asked once.
func (a *account) ask(at schedule.Ref, field, text, settles string) {
	a.questions[schedule.Question{At: at, Field: field, Text: text, Settles: settles}] = true
}

// askCell notes a question about one cell of a column.
func (a *account) askCell(s seen, text, settles string) {
	q := schedule.Question{At: s.source.At, Field: s.field.String(), Text: text, Settles: settles}
	if s.t == nil || s.col == nil {
		a.questions[q] = true
		return
	}
	k := takenKey{sheet: s.source.At.Sheet(), table: s.t.number, col: s.col.i + 1}
	if a.misreads[k] == nil {
		a.misreads[k] = make(map[schedule.Question]bool)
	}
	a.misreads[k][q] = true
	a.headers[k] = s.col
}

// refuse notes a cell whose value cannot be.
func (a *account) refuse(s seen, why string) {
	k := takenKey{sheet: s.source.At.Sheet()}
	if s.t != nil && s.col != nil {
		k.table, k.col = s.t.number, s.col.i+1
		a.headers[k] = s.col
	}
	if a.refusals[k] == nil {
		a.refusals[k] = make(map[schedule.Refusal]bool)
	}
	a.refusals[k][schedule.Refusal{At: s.source.At, Field: s.field.String(), Written: short(s.source.Written), Why: why}] = true
}

// refused returns the values that cannot be, in the order of cells. Where a
// column is full of them it was taken for a field that it is not, and is asked
// about instead.
func (a *account) refused() []schedule.Refusal {
	var out []schedule.Refusal
	for k, cells := range a.refusals {
		list := slices.SortedFunc(maps.Keys(cells), compareRefusals)
		c := a.headers[k]
		if c == nil || len(list) <= fewMisreads {
			out = append(out, list...)
			continue
		}
		a.ask(c.At, list[0].Field, fmt.Sprintf("%d cells below “%s” are no %s, first %s (%s, %s): what does this column hold?",
			len(list), short(c.Header), list[0].Field, list[0].At.Cell(), list[0].Written, list[0].Why), "the "+list[0].Field+" of these rows")
	}
	slices.SortFunc(out, compareRefusals)
	return out
}

func compareRefusals(x, y schedule.Refusal) int {
	return cmp.Or(x.At.Compare(y.At), cmp.Compare(x.Field, y.Field), cmp.Compare(x.Written, y.Written), cmp.Compare(x.Why, y.Why))
}

// assumptions returns what was taken, in the order of cells.
func (a *account) assumptions() []schedule.Assumption {
	out := make([]schedule.Assumption, 0, len(a.taken))
	for k, t := range a.taken {
		x := schedule.Assumption{At: t.first, Field: k.field, Written: t.written, TakenAs: k.takenAs, How: k.how, Because: k.because}
		if n := len(t.cells); n > 1 {
			x.Written = fmt.Sprintf("%d cells, first %s %q", n, t.first.Cell(), t.written)
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
	for k, cells := range a.misreads {
		if len(cells) <= fewMisreads {
			maps.Copy(a.questions, cells)
			continue
		}
		list := slices.SortedFunc(maps.Keys(cells), compareQuestions)
		c := a.headers[k]
		a.questions[schedule.Question{At: c.At, Field: list[0].Field,
			Text:    fmt.Sprintf("%d cells below “%s” are not understood as %s, first %s: %s", len(list), short(c.Header), list[0].Field, list[0].At.Cell(), list[0].Text),
			Settles: list[0].Settles}] = true
	}
	out := make([]schedule.Question, 0, len(a.questions))
	for q := range a.questions {
		out = append(out, q)
	}
	slices.SortFunc(out, compareQuestions)
	return out
}

// compareQuestions orders questions by cell.
func compareQuestions(x, y schedule.Question) int {
	return cmp.Or(x.At.Compare(y.At), cmp.Compare(x.Field, y.Field), cmp.Compare(x.Text, y.Text), cmp.Compare(x.Settles, y.Settles))
}

// allQuestions are the questions so far, those about cells that were not understood included, in no order.
func (a *account) allQuestions(yield func(schedule.Question) bool) {
	for q := range a.questions {
		if !yield(q) {
			return
		}
	}
	for _, cells := range a.misreads {
		for q := range cells {
			if !yield(q) {
				return
			}
		}
	}
}
