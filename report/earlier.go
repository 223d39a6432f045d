package report

import (
	"slices"
	"sync"

	"lineaudit/audit"
	"lineaudit/ingest/grid"
)

// Title is what the workbook and the page are headed with.
const Title = "Audit of loudspeaker lines"

// told is every table without its rows: what the results of any audit look like.
var told = sync.OnceValue(func() []Table {
	a := &Audit{Archive: audit.Rank(nil)}
	return append(a.SheetTables(), a.Tables()...)
})

// IsResult reports whether a book is a result of an earlier audit - its workbook
// or one of its data files - that lies among the schedules under any name.
func IsResult(b *grid.Book) bool {
	if b.Format == grid.Text {
		return len(b.Sheets) == 1 && len(b.Sheets[0].Rows) > 0 && isDataFile(&b.Sheets[0].Rows[0])
	}
	for _, s := range b.Sheets {
		switch title, note := firstText(s, 1), firstText(s, 2); {
		case title == Title:
			return true
		case title != "" && slices.ContainsFunc(told(), func(t Table) bool { return t.Title == title && t.Note == note && note != "" }):
			return true
		}
	}
	return false
}

// isDataFile reports whether a row is the header of a data file: later versions
// may have more columns behind those that other programs rely on.
func isDataFile(row *grid.Row) bool {
	const relied = 5
	return slices.ContainsFunc(told(), func(t Table) bool {
		if len(row.Cells) < relied || len(t.Columns) < relied {
			return false
		}
		for i, c := range t.Columns[:relied] {
			if int(row.Cells[i].Col) != i+1 || row.Cells[i].Text != c.Name {
				return false
			}
		}
		return true
	})
}

// firstText is the text in column A of a row.
func firstText(s *grid.Sheet, number int) string {
	for i := range s.Rows[:min(len(s.Rows), number)] {
		if r := &s.Rows[i]; r.Number == number {
			if c := r.Cell(1); c != nil {
				return c.Text
			}
		}
	}
	return ""
}
