package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/source"
	"lineaudit/ingest/house"
	"lineaudit/report"
	"lineaudit/report/book"
	"lineaudit/report/housebook"
	"lineaudit/report/terminal"
)

// form is what a house book looks like.
func form() housebook.Form {
	f := housebook.Form{Sheets: house.Sheets(), Columns: house.Columns, Fields: house.Fields()}
	for _, r := range audit.Rules() {
		f.Rules = append(f.Rules, r.Name)
	}
	for _, u := range []schedule.Use{schedule.AnyUse, schedule.Music, schedule.Paging, schedule.Emergency} {
		f.Uses = append(f.Uses, u.String())
	}
	return f
}

// runHouse writes an empty house book; it never writes over a file.
func runHouse(args []string, s screen) int {
	if len(args) == 1 && (args[0] == "--help" || args[0] == "-h") {
		return print(s, "Usage: lineaudit house FILE.xlsx\n\nWrites an empty house book with explanations and examples. Filled in, hand it to the audit with --house.\n")
	}
	if len(args) != 1 || args[0] == "" || strings.HasPrefix(args[0], "-") {
		return wrong(s, errors.New("house takes the name of one file to write, such as house.xlsx"))
	}
	name := args[0]
	if !strings.EqualFold(filepath.Ext(name), ".xlsx") {
		return wrong(s, fmt.Errorf("%s: a house book is a workbook; name it .xlsx", name))
	}
	f, err := os.OpenFile(name, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o644)
	switch {
	case errors.Is(err, os.ErrExist):
		return wrong(s, fmt.Errorf("%s exists and is left as it is; name another file", name))
	case err != nil:
		return failed(s, err)
	}
	if err := errors.Join(housebook.Empty(f, form()), f.Close()); err != nil {
		os.Remove(name)
		return failed(s, err)
	}
	return print(s, "Wrote "+name+". Fill in what the schedules leave out and hand it to the audit with --house.\n")
}

// readHouse reads a house book, a workbook or a folder of text tables, before anything else is read.
func readHouse(ctx context.Context, name string, opt source.Options) (*schedule.HouseBook, []schedule.HouseError, error) {
	listing, err := source.Find(ctx, []string{name}, source.Options{Encoding: opt.Encoding})
	if err != nil {
		return nil, nil, fmt.Errorf("--house: %w", err)
	}
	var books []*grid.Book
	for _, f := range listing.Files {
		b, err := f.Read(ctx, opt)
		if err != nil {
			return nil, nil, fmt.Errorf("--house %s: %w", f.Name, err)
		}
		books = append(books, b)
	}
	h, problems := house.Read(name, books)
	return h, problems, nil
}

// houseProblems tells every error of a house book in one table, by sheet and
// cell; what reading and audit both object to is told once.
func houseProblems(name string, problems []schedule.HouseError) string {
	problems = slices.Clone(problems)
	slices.SortStableFunc(problems, func(a, b schedule.HouseError) int { return a.At.Compare(b.At) })
	problems = slices.CompactFunc(problems, func(a, b schedule.HouseError) bool { return a.At == b.At })
	return terminal.HouseProblems(name, problems)
}

// readDispositions reads what was decided in an earlier audit.
func readDispositions(ctx context.Context, set *settings) (map[string]report.Disposition, error) {
	if set.dispositions == "" {
		return nil, nil
	}
	listing, err := source.Find(ctx, []string{set.dispositions}, source.Options{})
	if err != nil {
		return nil, fmt.Errorf("--dispositions: %w", err)
	}
	if len(listing.Files) != 1 {
		return nil, fmt.Errorf("--dispositions %s: name one audit.xlsx", set.dispositions)
	}
	b, err := listing.Files[0].Read(ctx, source.Options{})
	if err != nil {
		return nil, fmt.Errorf("--dispositions: %w", err)
	}
	d, err := book.Dispositions(b)
	if err != nil {
		return nil, fmt.Errorf("--dispositions %s: %w", set.dispositions, err)
	}
	return d, nil
}

// mostTodo is how many rows of each kind the house book to fill in holds; what
// settles most comes first.
const mostTodo = 5000

// writeTodo writes what the schedules left open as a house book to fill in:
// the models met without a rating or taps, what schedules disagree on, and the questions.
func writeTodo(w io.Writer, a *report.Audit) error {
	todo := audit.HouseTodo(a.Archive.Results)
	rows := map[string][]housebook.Row{}
	for _, m := range todo.Models[:min(len(todo.Models), mostTodo)] {
		remark := fmt.Sprintf("%s missing; met in %s at %s; would settle %s.", strings.Join(m.Missing, " and "), report.Plural(m.Met, "row"),
			report.Plural(len(m.Sites), "site"), report.Plural(m.Verdicts, "verdict"))
		if len(m.Claims) > 0 {
			remark += " Schedules elsewhere say " + strings.Join(m.Claims, ", ") + "."
		}
		rows[house.Ratings] = append(rows[house.Ratings], housebook.Row{Cells: map[string]string{"model": m.Model, "kind": m.Kind},
			Note: remark + " See " + places(m.Where) + "."})
	}
	disagree := housebook.Extra{Name: "contradictions", Columns: []string{"model", "kind", "what", "one schedule says", "where", "another says", "where"}, Widths: []float64{20, 14, 18, 24, 44, 24, 44}}
	for _, c := range todo.Contradictions[:min(len(todo.Contradictions), mostTodo)] {
		row := []string{c.Model, c.Kind, c.What}
		for _, claim := range c.Claims[:min(len(c.Claims), 2)] {
			row = append(row, claim.Text, places(claim.Where))
		}
		disagree.Rows = append(disagree.Rows, row)
	}
	ask := housebook.Extra{Name: "questions", Columns: []string{"settles verdicts", "job", "where", "field", "question", "settles"}, Widths: []float64{10, 26, 34, 18, 70, 50}}
	for _, q := range todo.Questions[:min(len(todo.Questions), mostTodo)] {
		ask.Rows = append(ask.Rows, []string{fmt.Sprint(q.Verdicts), report.JobName(q.Job), q.Job.File + " " + q.At.String(), q.Field, q.Text, q.Settles})
	}
	return housebook.Filled(w, form(), rows, []housebook.Extra{ask, disagree}, "What the schedules left open, most settling first: fill in the sheet ratings, and the next audit decides more. "+
		"The sheets questions and contradictions are for you; answer them in the schedules, or with whoever wrote these.")
}

func places(at []schedule.Ref) string {
	var out []string
	for _, r := range at[:min(len(at), 4)] {
		text := r.File()
		if s := r.String(); s != r.File() && !strings.HasPrefix(s, r.File()) {
			text += " " + s
		} else {
			text = s
		}
		out = append(out, text)
	}
	if len(at) > 4 {
		out = append(out, fmt.Sprintf("and %d more", len(at)-4))
	}
	return strings.Join(out, "; ")
}

// liesBelow reports whether a file stands in a folder or below it.
func liesBelow(folder, file string) bool {
	if folder == "" {
		return false
	}
	top, err := os.Stat(folder)
	if err != nil {
		return false
	}
	at, err := filepath.Abs(file)
	for err == nil && filepath.Dir(at) != at {
		at = filepath.Dir(at)
		if up, err := os.Stat(at); err == nil && os.SameFile(top, up) {
			return true
		}
	}
	return false
}

// samePlace reports whether two paths lead to one file or folder.
func samePlace(a, b string) bool {
	x, err := os.Stat(a)
	if err != nil {
		return false
	}
	y, err := os.Stat(b)
	return err == nil && os.SameFile(x, y)
}
