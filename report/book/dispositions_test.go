package book_test

import (
	"strings"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/text"
	"lineaudit/report/book"
)

// Any table in the place of an earlier audit gives dispositions that stand in
// it, or an error.
func FuzzDispositions(f *testing.F) {
	for _, s := range []string{"Id,Disposition,Remark\nA1,agreed,ok\n", "Id,Disposition\n", "x,Id,y,Disposition,Id\n1,2,3,4,5\nId,Disposition\n", "Disposition,Disposition,Id\na,b,\n,,c\n", "Remark,Id,Disposition\n\"\n\",\",\"\n"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		b, err := text.Read("audit.csv", []byte(s), grid.DefaultLimits(), "")
		if err != nil {
			return
		}
		cells := map[string]bool{"": true}
		for _, r := range b.Sheets[0].Rows {
			for c := range r.Cells() {
				cells[strings.TrimSpace(c.Text)] = true
			}
		}
		d, err := book.Dispositions(b)
		if (err == nil) != (d != nil) {
			t.Fatalf("%v and %v", d, err)
		}
		for id, one := range d {
			if id == "" || one.Decision == "" && one.Remark == "" || !cells[id] || !cells[one.Decision] || !cells[one.Remark] {
				t.Fatalf("%q: %+v", id, one)
			}
		}
	})
}
