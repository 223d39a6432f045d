package grid

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// Every cell comes back as it was given, whatever came before, from a text as
// from bytes; one that repeats is held once.
func TestMakerOfCells(t *testing.T) {
	var m Maker
	format := Extra{Format: "0.0"}.Share()
	for i := range 20_000 {
		for _, want := range []Cell{
			{}, {Kind: String, Text: "House 1"}, {Kind: Number, Text: "1", Number: 1}, {Kind: Number, Text: "1", Number: 0.9}, {Kind: String, Text: "1"},
			{Kind: Number, Text: "1", Number: 1, Extra: format}, {Kind: Number, Text: "1", Number: 1, Formula: true}, {Kind: String, Text: "1", Struck: WholeStruck},
			{Kind: String, Text: fmt.Sprint("LS-", i)}, {Kind: String, Text: strings.Repeat("x", i%2000)},
		} {
			text, shown := []byte(want.Text), want
			shown.Text = ""
			a, b := m.Of(want), m.Shown(shown, text)
			clear(text)
			if !a.Equal(want) || !b.Equal(want) {
				t.Fatalf("%+v comes back as %+v and %+v", want, *a, *b)
			}
		}
	}
	made := m.table.len()
	if m.Of(Cell{Kind: String, Text: "House 1"}) != m.Shown(Cell{Kind: String}, []byte("House 1")) || m.table.len() > made+1 {
		t.Error("a cell that repeats is held twice")
	}
}

// Rows keep their cells and columns, also those of another's making and those
// whose columns add up to the same; those in the same columns share them.
func TestMakerOfRows(t *testing.T) {
	var m, other Maker
	var rows []Row
	var want [][]Placed
	for i := range 3_000 {
		var cells []Placed
		for k := range 1 + i%7 {
			c := Cell{Kind: String, Text: fmt.Sprint(i, "/", k)}
			switch (i + k) % 3 {
			case 0:
				cells = append(cells, Placed{m.Of(c), 1 + k*(1+i%5)})
			case 1:
				cells = append(cells, Placed{other.Of(c), 1 + k*(1+i%5)})
			default:
				cells = append(cells, c.In(1+k*(1+i%5)))
			}
		}
		rows, want = append(rows, m.Row(i+1, cells)), append(want, cells)
	}
	same := func(a, b Placed) bool { return a.Col == b.Col && a.Equal(*b.Cell) }
	for i := range rows {
		r := &rows[i]
		if got := slices.Collect(r.Cells()); r.Number != i+1 || r.Len() != len(want[i]) || !slices.EqualFunc(got, want[i], same) {
			t.Fatalf("row %d is %v, want %v", i, got, want[i])
		}
		for k, c := range want[i] {
			if got := r.Cell(c.Col); got == nil || got != r.At(k).Cell || !got.Equal(*c.Cell) {
				t.Fatalf("row %d, column %d: %v", i, c.Col, got)
			}
		}
	}
	a, b := m.Row(1, want[6]), m.Row(2, want[6])
	if a.of != b.of {
		t.Error("rows with cells in the same columns do not share them")
	}
	empty := NewRow(5)
	for range empty.Cells() {
		t.Error("a row of nothing has a cell")
	}
}
