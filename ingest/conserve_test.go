package ingest_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/source"
)

// eachSample reads every file of the sample folders.
func eachSample(t *testing.T, do func(book *grid.Book)) {
	for _, c := range []corpus{archiveCorpus, hardCorpus} {
		listing, err := source.Find(context.Background(), []string{c.files}, source.Options{})
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range listing.Files {
			if book, err := f.Read(context.Background(), source.Options{}); err == nil {
				do(book)
			}
		}
	}
}

// Rows read and rows left out with a reason are the rows in the tables found.
func TestNoRowIsLost(t *testing.T) {
	files := 0
	eachSample(t, func(book *grid.Book) {
		f := ingest.Read(book, ingest.Options{})
		if f.Kind != ingest.Schedule {
			return
		}
		files++
		records := 0
		for _, table := range f.Layout.AllTables() {
			records += len(table.Records)
		}
		read, left, tables := 0, 0, 0
		for _, j := range f.Jobs {
			read += j.RowsRead
			for _, d := range j.Tables {
				tables += d.RowsRead + d.RowsLeft
				left += d.RowsLeft
			}
			for _, l := range j.LeftOut {
				if l.Reason == "" || l.Kind == "" {
					t.Errorf("%s: %s was left out without a reason", book.File, l.At)
				}
			}
		}
		if read+left != records || tables != records {
			t.Errorf("%s: %d rows read and %d left out, %d in the tables told of, %d in the tables found", book.File, read, left, tables, records)
		}
	})
	if files < 50 {
		t.Errorf("only %d schedules", files)
	}
}

// The same file gives the same jobs, word for word.
func TestReadingIsDeterministic(t *testing.T) {
	eachSample(t, func(book *grid.Book) {
		first := told(ingest.Read(book, ingest.Options{}))
		for range 3 {
			if again := told(ingest.Read(book, ingest.Options{})); again != first {
				t.Errorf("%s is not read twice alike", book.File)
				return
			}
		}
	})
}

// told is everything that a file says, as text.
func told(f *ingest.File) string {
	var b strings.Builder
	fmt.Fprintln(&b, f.Kind, f.Reason)
	for _, j := range f.Jobs {
		fmt.Fprintln(&b, j.Name, j.Number, j.Site, j.Revision, j.Date, j.LineVolts, j.Emergency.Yes, j.RowsRead)
		for _, a := range j.Amplifiers {
			fmt.Fprintln(&b, a.Key, a.Name, a.Rated, a.Model, len(a.Channels))
		}
		for _, c := range j.Channels {
			fmt.Fprintln(&b, c.Key, c.Label(), c.Rated, c.LineVolts)
		}
		for _, z := range j.Zones {
			fmt.Fprintln(&b, z.Key, z.Name, z.Count, z.Stated, len(z.Channels))
		}
		for _, c := range j.Controls {
			fmt.Fprintln(&b, c.Key, c.Name, c.Rated, c.RatedVolts)
		}
		for _, l := range j.Loudspeakers {
			fmt.Fprintln(&b, l.At, l.Tag, l.Count, l.Tap, l.TapVolts, l.Offered, l.Status, name(l))
		}
		for _, c := range j.Cables {
			fmt.Fprintln(&b, c.Key, c.Name, c.Length, c.Area, c.Reach, c.From.Text, c.To.Text)
		}
		fmt.Fprintln(&b, j.Assumptions, j.Questions, j.Tables)
		for _, l := range j.LeftOut {
			fmt.Fprintln(&b, l.At, l.Kind, l.Reason, l.Text, l.Load, len(l.Would))
		}
		for _, t := range j.Totals {
			fmt.Fprintln(&b, t.At, t.Of, t.Stated, t.Count, len(t.Rows))
		}
	}
	return b.String()
}

func name(l *schedule.Loudspeaker) string {
	s := ""
	if l.Zone != nil {
		s += l.Zone.Key
	}
	if l.Control != nil {
		s += " " + l.Control.Key
	}
	if l.Channel != nil {
		s += " " + l.Channel.Key
	}
	return s
}
