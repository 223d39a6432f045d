package book

import (
	"errors"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/report"
)

// Dispositions reads what was decided in an earlier audit.xlsx, by finding id.
// It finds the columns by their headings, so that the sheet may have been
// sorted, filtered or rearranged.
func Dispositions(b *grid.Book) (map[string]report.Disposition, error) {
	out := map[string]report.Disposition{}
	found := false
	for _, s := range b.Sheets {
		var id, decision, remark int
		for i := range s.Rows {
			row := &s.Rows[i]
			if id == 0 || decision == 0 {
				id, decision, remark = 0, 0, 0
				for c := range row.Cells() {
					switch strings.TrimSpace(c.Text) {
					case "Id":
						id = c.Col
					case "Disposition":
						decision = c.Col
					case "Remark":
						remark = c.Col
					}
				}
				found = found || id != 0 && decision != 0
				continue
			}
			d := report.Disposition{Decision: textAt(row, decision), Remark: textAt(row, remark)}
			if key := textAt(row, id); key != "" && d != (report.Disposition{}) {
				out[key] = d
			}
		}
	}
	if !found {
		return nil, errors.New("no sheet with the columns Id and Disposition; name an audit.xlsx of an earlier audit")
	}
	return out, nil
}

func textAt(r *grid.Row, col int) string {
	if c := r.Cell(col); c != nil {
		return strings.TrimSpace(c.Text)
	}
	return ""
}
