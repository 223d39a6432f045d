package ingest

import (
	"strconv"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
)

// wholeJob reads drawn sheets as the file of one job: a line a row, cells parted
// by "|", a number a number cell, a note on a cell behind " ^ "; a line "## Name" begins a sheet.
func wholeJob(t *testing.T, drawing string) *schedule.Job {
	t.Helper()
	jobs := wholeJobs(drawing)
	if len(jobs) != 1 {
		t.Fatalf("%d jobs", len(jobs))
	}
	return jobs[0]
}

// wholeJobs reads such a file, of any number of jobs.
func wholeJobs(drawing string) []*schedule.Job { return Read(drawnBook(drawing), Options{}).Jobs }

// drawnBook is the book of such a file.
func drawnBook(drawing string) *grid.Book {
	book := &grid.Book{File: "job.xlsx"}
	var s *grid.Sheet
	for l := range strings.SplitSeq(strings.Trim(drawing, "\n"), "\n") {
		if name, ok := strings.CutPrefix(strings.TrimSpace(l), "## "); ok || s == nil {
			s = &grid.Sheet{Name: "Sheet1"}
			book.Sheets = append(book.Sheets, s)
			if ok {
				s.Name = name
				continue
			}
		}
		number := 1
		if n := len(s.Rows); n > 0 {
			number = s.Rows[n-1].Number + 1
		}
		var cells []grid.Placed
		for i, text := range strings.Split(l, "|") {
			if text = strings.TrimSpace(text); text == "" {
				continue
			}
			text, note, _ := strings.Cut(text, " ^ ")
			c := grid.Placed{Col: i + 1, Cell: &grid.Cell{Kind: grid.String, Text: text}}
			c.SetNote(note)
			if v, err := strconv.ParseFloat(text, 64); err == nil {
				c.Kind, c.Number = grid.Number, v
			}
			cells = append(cells, c)
		}
		s.Rows = append(s.Rows, grid.NewRow(number, cells...))
	}
	return book
}

// mergeGroups merges each cell of a row with the blank ones behind it, as headings over several columns are.
func mergeGroups(s *grid.Sheet, row int) {
	for i := range s.Rows {
		r := &s.Rows[i]
		if r.Number != row {
			continue
		}
		for k := range r.Len() - 1 {
			if col, next := r.At(k).Col, r.At(k+1).Col; next > col+1 {
				s.Merges = append(s.Merges, grid.Range{Row1: row, Row2: row, Col1: col, Col2: next - 1})
			}
		}
	}
}

// ratedOutputs lists the outputs of a job with their ratings.
func ratedOutputs(j *schedule.Job) []string {
	var out []string
	for _, c := range j.Channels {
		out = append(out, c.Label()+" "+show(c.Rated)+" W")
	}
	return out
}

// zoned lists the zones of loudspeakers in order.
func zoned(j *schedule.Job) []string {
	var out []string
	for _, l := range j.Loudspeakers {
		name := ""
		if l.Zone != nil {
			name = l.Zone.Name
		}
		out = append(out, name)
	}
	return out
}

func joinAll(list []string) string { return strings.Join(list, ", ") }
