// Package book is a plain picture of a workbook as a person fills it in:
// cells with a value and a look, merged areas, rows hidden by hand or by a
// filter. It is written as xlsx or CSV.
package book

import "github.com/xuri/excelize/v2"

// Style is the look of a cell. The zero value is a bare cell.
type Style struct {
	Bold, Italic, Strike, Center, Wrap, Border bool
	Fill, Color                                string // RGB such as "FFE699"
	Size                                       float64
	Format                                     string // number format code
}

// Run is a piece of a cell's text with its own look.
type Run struct {
	Text   string
	Strike bool
}

// Cell is what one cell holds. Value is a string, an int, a float64 or a
// time.Time; with a Formula it is the result that the program had stored.
type Cell struct {
	Value   any
	Formula string
	Style   Style
	Note    string
	Runs    []Run // instead of Value, where the text has more than one look
}

// Sheet is one sheet. Rows and columns count from 1.
type Sheet struct {
	Name      string
	Hidden    bool
	Rows      [][]Cell
	Merges    [][4]int // first row, first column, last row, last column
	Hide      map[int]bool
	HideCols  []int
	FilterAt  [4]int // the area under a filter, as in Merges; zero for none
	FilterCol int    // the column that the filter looks at
	FilterBy  string // what a row must say to stay, such as `x != "Foyer"`
	Widths    map[int]float64
	FreezeRow int // rows kept in view
	// Extra adds what the picture has no word for (charts, pictures,
	// conditional formats) before the cells are written.
	Extra func(f *excelize.File, sheet string) error
}

// Book is a workbook.
type Book struct {
	Sheets []*Sheet
}

// Add appends an empty sheet and returns it.
func (b *Book) Add(name string) *Sheet {
	s := &Sheet{Name: name, Hide: map[int]bool{}, Widths: map[int]float64{}}
	b.Sheets = append(b.Sheets, s)
	return s
}

// Set puts a cell at row and col.
func (s *Sheet) Set(row, col int, c Cell) {
	for len(s.Rows) < row {
		s.Rows = append(s.Rows, nil)
	}
	r := s.Rows[row-1]
	for len(r) < col {
		r = append(r, Cell{})
	}
	r[col-1] = c
	s.Rows[row-1] = r
}

// Get returns the cell at row and col, empty if nothing was set there.
func (s *Sheet) Get(row, col int) Cell {
	if row < 1 || row > len(s.Rows) || col < 1 || col > len(s.Rows[row-1]) {
		return Cell{}
	}
	return s.Rows[row-1][col-1]
}

// Put writes bare values along a row from col on; a nil leaves a gap.
func (s *Sheet) Put(row, col int, values ...any) {
	for i, v := range values {
		switch v := v.(type) {
		case nil:
		case Cell:
			s.Set(row, col+i, v)
		default:
			s.Set(row, col+i, Cell{Value: v})
		}
	}
}

// Look sets the style of every cell of a row from col to last.
func (s *Sheet) Look(row, col, last int, st Style) {
	for c := col; c <= last; c++ {
		cell := s.Get(row, c)
		cell.Style = st
		s.Set(row, c, cell)
	}
}

// Merge joins an area into one cell.
func (s *Sheet) Merge(row, col, lastRow, lastCol int) {
	if row == lastRow && col == lastCol {
		return
	}
	s.Merges = append(s.Merges, [4]int{row, col, lastRow, lastCol})
}

// Last returns the number of the last row that holds anything.
func (s *Sheet) Last() int { return len(s.Rows) }

// At returns the name of a cell such as "B7".
func At(row, col int) string {
	name, err := excelize.CoordinatesToCellName(col, row)
	if err != nil {
		return ""
	}
	return name
}

// Letter returns the letters of a column.
func Letter(col int) string {
	name, err := excelize.ColumnNumberToName(col)
	if err != nil {
		return ""
	}
	return name
}
