package grid

import (
	"strconv"
	"testing"
)

// Names of columns at the turns of the alphabet, as every spreadsheet shows them.
func TestA1(t *testing.T) {
	for _, tt := range []struct {
		row, col int
		name     string
	}{{1, 1, "A1"}, {3, 2, "B3"}, {1, 26, "Z1"}, {1, 27, "AA1"}, {9, 52, "AZ9"}, {9, 53, "BA9"}, {1, 702, "ZZ1"}, {1, 703, "AAA1"}, {1048576, 16384, "XFD1048576"}} {
		if got := A1(tt.row, tt.col); got != tt.name {
			t.Errorf("row %d, column %d is %s, want %s", tt.row, tt.col, got, tt.name)
		}
		for _, written := range []string{tt.name, "$" + tt.name, "$" + Column(tt.col) + "$" + tt.name[len(Column(tt.col)):]} {
			if row, col, err := ParseA1(written); err != nil || row != tt.row || col != tt.col {
				t.Errorf("%s reads row %d, column %d, %v", written, row, col, err)
			}
		}
	}
	for _, bad := range []string{"", "A", "1", "A0", "A-1", "A+1", "1A", "XFE1", "A1048577", "AAAAAAAAAAAAAA1", "A1.5", "A 1", "Ä1", "A1:B2", "A99999999999999999999"} {
		if row, col, err := ParseA1(bad); err == nil {
			t.Errorf("%q reads row %d, column %d", bad, row, col)
		}
	}
}

func TestRowCell(t *testing.T) {
	r := NewRow(1, Cell{Text: "2"}.In(2), Cell{Text: "5"}.In(5), Cell{Text: "16384"}.In(16384))
	for col, want := range map[int]bool{1: false, 2: true, 3: false, 5: true, 6: false, 16384: true, 16385: false} {
		c := r.Cell(col)
		if (c != nil) != want || c != nil && c.Text != strconv.Itoa(col) {
			t.Errorf("column %d: %v", col, c)
		}
	}
	if c := (&Row{}).Cell(1); c != nil {
		t.Errorf("an empty row holds %v", c)
	}
}

func TestContains(t *testing.T) {
	r := Range{Row1: 2, Col1: 3, Row2: 4, Col2: 5}
	for _, tt := range []struct {
		row, col int
		want     bool
	}{{2, 3, true}, {4, 5, true}, {3, 4, true}, {1, 3, false}, {5, 3, false}, {2, 2, false}, {2, 6, false}} {
		if got := r.Contains(tt.row, tt.col); got != tt.want {
			t.Errorf("row %d, column %d: %v", tt.row, tt.col, got)
		}
	}
}

func FuzzParseA1(f *testing.F) {
	f.Add("B3")
	f.Add("$XFD$1048576")
	f.Fuzz(func(t *testing.T, s string) {
		row, col, err := ParseA1(s)
		if err != nil {
			return
		}
		if r, c, err := ParseA1(A1(row, col)); err != nil || r != row || c != col {
			t.Errorf("%q reads row %d, column %d, which is written %s and reads %d, %d, %v", s, row, col, A1(row, col), r, c, err)
		}
	})
}
