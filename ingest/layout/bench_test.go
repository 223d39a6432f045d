package layout

import (
	"fmt"
	"testing"

	"lineaudit/ingest/grid"
)

// bigSheet is a sheet of n rows under one header, as a register of a large
// estate could be.
func bigSheet(n int) *grid.Sheet {
	s := &grid.Sheet{Name: "Register"}
	var maker grid.Maker
	put := func(row int, texts ...any) {
		var cells []grid.Placed
		for i, t := range texts {
			c := grid.Placed{Col: i + 1, Cell: &grid.Cell{Kind: grid.String}}
			switch v := t.(type) {
			case string:
				c.Text = v
			case int:
				c.Kind, c.Number, c.Text = grid.Number, float64(v), fmt.Sprint(v)
			}
			if c.Text != "" {
				cells = append(cells, c)
			}
		}
		s.Rows = append(s.Rows, maker.Row(row, cells))
	}
	put(1, "Tag", "Building", "Room", "Zone", "Model", "Qty", "Tap (W)", "Amp", "Ch", "Notes")
	for i := range n {
		zone := i / 12
		note := ""
		if i%7 == 0 {
			note = fmt.Sprintf("above the door of bay %c", 'A'+i%26)
		}
		put(i+2, fmt.Sprintf("LS-%06d", i), fmt.Sprintf("House %d", zone/40), "Bay "+string(rune('A'+i%20))+" of the long walk", fmt.Sprintf("Zone %d", zone), "CS-6",
			1+i%3, []int{3, 6, 10, 15}[i%4], fmt.Sprintf("A%d", zone/4), zone%4+1, note)
	}
	return s
}

func BenchmarkRead(b *testing.B) {
	for _, n := range []int{2000, 20000, 200000} {
		book := bookOf(bigSheet(n))
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			for b.Loop() {
				r := Read(book, Options{})
				if got := len(r.AllTables()[0].Records); got != n {
					b.Fatalf("%d records, want %d", got, n)
				}
			}
		})
	}
}
