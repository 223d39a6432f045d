package report

import (
	"bytes"
	"slices"
	"sync"

	"lineaudit/audit"
	"lineaudit/ingest/grid"
)

// Title is what the workbook and the page are headed with.
const Title = "Audit of loudspeaker lines"

// FindingsSchema names the form of findings.json, without its version.
const FindingsSchema = "urn:lineaudit:findings:"

// told is every table without its rows: what the results of any audit look like.
var told = sync.OnceValue(func() []Table {
	a := &Audit{Archive: audit.Rank(nil)}
	return append(a.SheetTables(), a.Tables()...)
})

// IsResult reports whether a book is a result of an earlier audit - its workbook
// or one of its data files - that lies among the schedules under any name, in
// any format.
func IsResult(b *grid.Book) bool {
	return slices.ContainsFunc(b.Sheets, func(s *grid.Sheet) bool {
		title, note := firstText(s, 1), firstText(s, 2)
		return title == Title || len(s.Rows) > 0 && isDataFile(&s.Rows[0]) ||
			title != "" && slices.ContainsFunc(told(), func(t Table) bool { return t.Title == title && t.Note == note && note != "" })
	})
}

// IsResultText reports whether bytes are a result of an earlier audit that
// holds no table: its page or its findings.json.
func IsResultText(data []byte) bool {
	head := data[:min(len(data), 4096)]
	return bytes.Contains(head, []byte("<title>"+Title+"</title>")) || bytes.Contains(head, []byte(`"schema": "`+FindingsSchema))
}

// isDataFile reports whether a row is the header of a data file: later versions
// may have more columns behind those that other programs rely on.
func isDataFile(row *grid.Row) bool {
	const relied = 5
	return slices.ContainsFunc(told(), func(t Table) bool {
		if row.Len() < relied || len(t.Columns) < relied {
			return false
		}
		for i, c := range t.Columns[:relied] {
			if cell := row.At(i); cell.Col != i+1 || cell.Text != c.Name {
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
