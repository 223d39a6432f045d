package layout

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// draw makes a sheet of a text drawing: a line a row, cells parted by "|". A
// line of nothing is a blank row. In a cell: <n merges it with the n cells to its right,
// ^n with the n below, ~text~ is struck through; a number is a number cell. A
// line that begins with "!h " is hidden by hand, "!f " hidden by a filter.
func draw(name, drawing string) *grid.Sheet {
	s := &grid.Sheet{Name: name}
	for i, l := range strings.Split(strings.Trim(drawing, "\n"), "\n") {
		hidden := grid.Shown
		var cells []grid.Placed
		if rest, ok := strings.CutPrefix(l, "!h "); ok {
			hidden, l = grid.HiddenByHand, rest
		}
		if rest, ok := strings.CutPrefix(l, "!f "); ok {
			hidden, l = grid.HiddenByFilter, rest
		}
		for j, t := range strings.Split(l, "|") {
			t = strings.TrimSpace(t)
			c := grid.Placed{Col: j + 1, Cell: &grid.Cell{Kind: grid.String}}
			for {
				k := strings.LastIndexAny(t, "<^")
				n := 0
				if k < 0 {
					break
				}
				var err error
				if n, err = strconv.Atoi(t[k+1:]); err != nil {
					break
				}
				m := grid.Range{Row1: i + 1, Col1: j + 1, Row2: i + 1, Col2: j + 1}
				if t[k] == '<' {
					m.Col2 += n
				} else {
					m.Row2 += n
				}
				s.Merges = append(s.Merges, m)
				t = strings.TrimSpace(t[:k])
			}
			if t == "" {
				continue
			}
			if len(t) > 2 && t[0] == '~' && t[len(t)-1] == '~' {
				t = t[1 : len(t)-1]
				c.Struck = grid.WholeStruck
			}
			c.Text = t
			if v, err := strconv.ParseFloat(t, 64); err == nil && t[0] != '+' {
				c.Kind, c.Number = grid.Number, v
			}
			cells = append(cells, c)
		}
		if len(cells) > 0 {
			row := grid.NewRow(i+1, cells...)
			row.Hidden = hidden
			s.Rows = append(s.Rows, row)
		}
	}
	return s
}

// bookOf makes a book of drawings.
func bookOf(sheets ...*grid.Sheet) *grid.Book {
	return &grid.Book{File: "job.xlsx", Sheets: sheets}
}

// show writes a reading down for people and for comparing.
func show(r *Reading) string {
	var b strings.Builder
	if r.NearestMiss != "" {
		fmt.Fprintf(&b, "miss: %s\n", r.NearestMiss)
	}
	for _, s := range r.Sheets {
		for _, f := range s.Facts {
			fmt.Fprintf(&b, "fact %s %s [%s] %s=%s\n", s.Name, f.At.Cell(), f.Key, f.Field, f.Text)
		}
		for _, t := range s.Tables {
			fmt.Fprintf(&b, "table %s %s %.2f %v header %v", s.Name, t.Kind, t.Confidence, t.Range, t.HeaderRows)
			if t.Transposed {
				b.WriteString(" transposed")
			}
			if t.Matrix {
				b.WriteString(" matrix")
			}
			b.WriteString("\n")
			for _, f := range t.Titles {
				fmt.Fprintf(&b, "  title [%s] %s=%s\n", f.Key, f.Field, f.Text)
			}
			for _, c := range t.Columns {
				fmt.Fprintf(&b, "  col %s %q = %s unit=%s v=%g conf=%.2f run=%s: %s\n", grid.Column(c.Col), c.Header, c.Field, c.Unit, c.Volts, c.Confidence, c.RunnerUp, c.Evidence)
			}
			for _, r := range t.Records {
				fmt.Fprintf(&b, "  %s %s", r.Rows, r.Class)
				if r.Reason != "" {
					fmt.Fprintf(&b, " (%s)", r.Reason)
				}
				for _, v := range r.Values {
					x := v.Text
					if v.Because != "" {
						x += "{" + v.Because + "}"
					}
					b.WriteString(" | " + x)
				}
				for _, f := range r.Sections {
					fmt.Fprintf(&b, " §%s=%s", f.Field, f.Text)
				}
				b.WriteString("\n")
			}
		}
		for _, o := range s.Outside {
			fmt.Fprintf(&b, "outside %s %s (%s) %s\n", o.At.Cell(), o.Class, o.Reason, o.Text)
		}
	}
	return b.String()
}

// only returns the single table of a drawing.
func only(t *testing.T, r *Reading) *Table {
	t.Helper()
	all := r.AllTables()
	if len(all) != 1 {
		t.Fatalf("%d tables, want 1\n%s", len(all), show(r))
	}
	return all[0]
}

// fieldsOf lists the fields of the columns.
func fieldsOf(t *Table) []vocabulary.Field {
	var f []vocabulary.Field
	for _, c := range t.Columns {
		f = append(f, c.Field)
	}
	return f
}
