package layout

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// accounted checks that every non-empty cell of a book stands in exactly one
// place: a header or record of a table, a fact, or a row outside. Facts and
// outside rows may share a cell, since prose can state a voltage.
func accounted(book *grid.Book, r *Reading) error {
	for i, s := range book.Sheets {
		out := &r.Sheets[i]
		owner := map[[2]int]string{}
		claim := func(row, col int, who string) error {
			if old, ok := owner[[2]int{row, col}]; ok && old != who && !(strings.HasPrefix(old, "fact") && strings.HasPrefix(who, "fact")) {
				return fmt.Errorf("%s is both %s and %s", grid.A1(row, col), old, who)
			}
			owner[[2]int{row, col}] = who
			return nil
		}
		var tables []*Table
		for k, t := range out.Tables {
			if t.Form {
				for _, rec := range t.Records {
					for _, v := range rec.Values {
						if v.Text != "" {
							if err := claim(int(v.At.Row), int(v.At.Col), fmt.Sprint("form ", k)); err != nil {
								return err
							}
						}
					}
				}
				continue
			}
			if n := len(tables); t.Tree && n > 0 && tables[n-1].Tree && tables[n-1].Range == t.Range {
				whole := *tables[n-1] // the lists of one tree together hold its lines
				for _, rec := range t.Records {
					rec.Values = make([]Value, len(whole.Columns))
					whole.Records = append(whole.Records, rec)
				}
				tables[n-1] = &whole
				continue
			}
			tables = append(tables, t)
		}
		// Within a table every line must have a record or be a header row.
		for k, t := range tables {
			lines := map[int]int{}
			for _, h := range t.HeaderRows {
				lines[h]++
			}
			seen := map[int]Class{}
			for _, rec := range t.Records {
				n := rec.Rows.First
				if c, ok := seen[n]; ok && !(t.Matrix && (c == rec.Class && c != Total || c == Device && rec.Class == Total)) {
					return fmt.Errorf("table %d: line %d has two records", k, n)
				}
				if _, ok := seen[n]; !ok {
					lines[n]++
				}
				seen[n] = rec.Class
				if len(rec.Values) != len(t.Columns) {
					return fmt.Errorf("table %d: line %d has %d values for %d columns", k, n, len(rec.Values), len(t.Columns))
				}
				if rec.Class != Device && rec.Reason == "" {
					return fmt.Errorf("table %d: line %d is %s without a reason", k, n, rec.Class)
				}
			}
			for n, c := range lines {
				if c > 1 {
					return fmt.Errorf("table %d: line %d is both header and record", k, n)
				}
			}
			for _, row := range s.Rows {
				for c := range row.Cells() {
					if !holds(c.Cell) || !t.Range.Contains(row.Number, c.Col) {
						continue
					}
					n := row.Number
					if t.Transposed {
						n = c.Col
					}
					if lines[n] == 0 {
						return fmt.Errorf("table %d %v: %s is in no record", k, t.Range, grid.A1(row.Number, c.Col))
					}
					if err := claim(row.Number, c.Col, fmt.Sprint("table ", k)); err != nil {
						return err
					}
				}
			}
		}
		// What is left must be a fact or outside, on its row.
		facts, outside := map[int]bool{}, map[int]bool{}
		for _, f := range out.Facts {
			facts[int(f.At.Row)] = true
		}
		for _, o := range out.Outside {
			if o.Reason == "" {
				return fmt.Errorf("row %d outside without a reason", o.At.Row)
			}
			outside[int(o.At.Row)] = true
		}
		for _, row := range s.Rows {
			for c := range row.Cells() {
				if holds(c.Cell) && owner[[2]int{row.Number, c.Col}] == "" && !facts[row.Number] && !outside[row.Number] && !inForm(out, row.Number) {
					return fmt.Errorf("%s %q is accounted for nowhere", grid.A1(row.Number, c.Col), c.Text)
				}
			}
		}
	}
	return nil
}

func inForm(s *Sheet, row int) bool {
	for _, t := range s.Tables {
		if t.Form && t.Range.Row1 <= row && row <= t.Range.Row2 {
			return true
		}
	}
	return false
}

// scraps are the texts that random sheets are made of.
var scraps = strings.Split(`Tag|Room|Zone|Tap (W)|Qty|Amp|Ch|VC|Length (m)|Cable|From|To|Total|Sub-total|Zone 1 - Palm house|AMP 2 / CH 1|VC-3 35W|Note: see plan|Project:|Line voltage:|100 V|LS-1|LS-2|LS-3..LS-8|6W|10|4|3|0|-|"|ditto|Palm house|Rink|Ceiling 6W|Horn 15W|Summe|Abgriff|Kanal|W|[m]|12.5|A1.2|spare|1/2|16/2|2x1.5|TBC|Amplifier|Loudspeaker|Rating|Watts|Name|Phone|x`, "|")

func randomSheet(r *rand.Rand, name string) *grid.Sheet {
	rows, cols := 1+r.IntN(40), 1+r.IntN(12)
	s := &grid.Sheet{Name: name}
	fill := 0.2 + 0.8*r.Float64()
	for n := 1; n <= rows; n++ {
		if r.IntN(8) == 0 {
			continue
		}
		hidden := grid.Shown
		if r.IntN(30) == 0 {
			hidden = grid.HiddenByHand
		}
		var cells []grid.Placed
		for c := 1; c <= cols; c++ {
			if r.Float64() > fill {
				continue
			}
			cell := grid.Placed{Col: c, Cell: &grid.Cell{Kind: grid.String, Text: scraps[r.IntN(len(scraps))]}}
			if v, ok := plainNumber(cell.Text); ok {
				cell.Kind, cell.Number = grid.Number, v
			}
			switch r.IntN(60) {
			case 0:
				cell.Struck = grid.WholeStruck
			case 1:
				cell.Strike(grid.PartStruck, "5 W")
			case 2:
				cell.Kind, cell.Text = grid.NoValue, ""
			case 3:
				cell.Kind, cell.Text = grid.Date, "2-Jan"
			}
			cells = append(cells, cell)
		}
		if len(cells) > 0 {
			row := grid.NewRow(n, cells...)
			row.Hidden = hidden
			s.Rows = append(s.Rows, row)
		}
	}
	for range r.IntN(4) {
		a, b := 1+r.IntN(rows), 1+r.IntN(cols)
		s.Merges = append(s.Merges, grid.Range{Row1: a, Col1: b, Row2: a + r.IntN(3), Col2: b + r.IntN(3)})
	}
	return s
}

func TestEveryCellIsAccountedFor(t *testing.T) {
	for seed := range uint64(400) {
		r := rand.New(rand.NewPCG(seed, 7))
		book := bookOf(randomSheet(r, "Sheet1"), randomSheet(r, "Zone 3"))
		reading := Read(book, Options{})
		if err := accounted(book, reading); err != nil {
			t.Fatalf("seed %d: %v\n%s", seed, err, show(reading))
		}
	}
}

// tidy is a table in which every column says what it is.
const tidy = `
Tag|Room|Zone|Model|Qty|Tap (W)|Total W|Amp|Ch|VC|VC W|Notes
LS-1|Palm house|Zone 1|CS-6|4|6|24|A1|1|VC-1|35|
LS-2|Orangery|Zone 1|CS-6|2|3|6|A1|1|VC-1|35|high up
LS-3|Rink|Zone 2|H-15|3|15|45|A1|2|||
LS-4|Fernery|Zone 3|H-15|5|10|50|A2|1|VC-2|100|
LS-5|Boat hall|Zone 3|W-10|6|5|30|A2|1|VC-2|100|over the door
`

func TestColumnOrderChangesNothing(t *testing.T) {
	want := map[string]vocabulary.Field{}
	base := draw("Sheet1", tidy)
	for _, c := range only(t, Read(bookOf(base), Options{})).Columns {
		want[c.Header] = c.Field
	}
	r := rand.New(rand.NewPCG(1, 2))
	for range 40 {
		order := r.Perm(12)
		s := draw("Sheet1", tidy)
		for i := range s.Rows {
			moveCells(&s.Rows[i], func(col int) int { return order[col-1] + 1 })
		}
		for _, c := range only(t, Read(bookOf(s), Options{})).Columns {
			if want[c.Header] != c.Field {
				t.Errorf("order %v: %q is %s, was %s", order, c.Header, c.Field, want[c.Header])
			}
		}
	}
}

// moveCells puts the cells of a row into other columns.
func moveCells(row *grid.Row, to func(col int) int) {
	cells := slices.Collect(row.Cells())
	for i := range cells {
		cells[i].Col = to(cells[i].Col)
	}
	slices.SortFunc(cells, func(a, b grid.Placed) int { return a.Col - b.Col })
	moved := grid.NewRow(row.Number, cells...)
	moved.Hidden = row.Hidden
	*row = moved
}

func TestSheetNameChangesNoColumn(t *testing.T) {
	want := fieldsOf(only(t, Read(bookOf(draw("Sheet1", tidy)), Options{})))
	for _, name := range []string{"", "Amplifiers", "Cables", "Zone 3", "Volume controls", "Preise", "Câbles HP"} {
		if got := fieldsOf(only(t, Read(bookOf(draw(name, tidy)), Options{}))); !slices.Equal(got, want) {
			t.Errorf("sheet %q: %v, want %v", name, got, want)
		}
	}
}

func TestBlankRowsAndShiftChangeNothing(t *testing.T) {
	want := fieldsOf(only(t, Read(bookOf(draw("Sheet1", tidy)), Options{})))
	for _, shift := range []struct{ rows, cols int }{{0, 5}, {29, 5}, {1000, 0}, {3, 100}} {
		s := draw("Sheet1", tidy)
		for i := range s.Rows {
			s.Rows[i].Number += shift.rows
			moveCells(&s.Rows[i], func(col int) int { return col + shift.cols })
		}
		if got := fieldsOf(only(t, Read(bookOf(s), Options{}))); !slices.Equal(got, want) {
			t.Errorf("shifted by %+v: %v, want %v", shift, got, want)
		}
	}
}

func TestReadingTwiceIsTheSame(t *testing.T) {
	for seed := range uint64(100) {
		r := rand.New(rand.NewPCG(seed, 9))
		book := bookOf(randomSheet(r, "S"), draw("T", tidy))
		if a, b := show(Read(book, Options{})), show(Read(book, Options{})); a != b {
			t.Fatalf("seed %d reads differently the second time", seed)
		}
	}
}

// Nothing that a sheet can hold may take long: prose in every cell, header
// words in every cell, one row as wide as a sheet can be.
func TestStrangeSheetsAreReadInTime(t *testing.T) {
	cell := func(col int, s string) grid.Placed {
		return grid.Placed{Col: col, Cell: &grid.Cell{Kind: grid.String, Text: s}}
	}
	var maker grid.Maker
	prose := &grid.Sheet{Name: "prose"}
	headers := &grid.Sheet{Name: "headers"}
	for n := 1; n <= 5000; n++ {
		var a, b []grid.Placed
		for c := 1; c <= 8; c++ {
			a = append(a, cell(c, fmt.Sprintf("words and yet more words %c%c%c%c", 'a'+n%26, 'a'+n/26%26, 'a'+n/676%26, 'a'+c)))
			b = append(b, cell(c, scraps[(n*c)%9]))
		}
		prose.Rows = append(prose.Rows, maker.Row(n, a))
		headers.Rows = append(headers.Rows, maker.Row(n, b))
	}
	wide := &grid.Sheet{Name: "wide"}
	for n := 1; n <= 3; n++ {
		var cells []grid.Placed
		for c := 1; c <= 16384; c++ {
			cells = append(cells, cell(c, scraps[(c+n)%len(scraps)]))
		}
		wide.Rows = append(wide.Rows, maker.Row(n, cells))
	}
	merged := draw("merged", tidy)
	for n := 1; n <= 50000; n++ {
		merged.Merges = append(merged.Merges, grid.Range{Row1: n, Col1: 1, Row2: n + 40, Col2: 3})
	}
	many := &grid.Sheet{Name: "many tables"}
	for k := range 2000 {
		for i, row := range draw("", tidy).Rows {
			row.Number = 8*k + i + 1
			many.Rows = append(many.Rows, row)
		}
	}
	for _, s := range []*grid.Sheet{prose, headers, wide, merged, many} {
		start := time.Now()
		book := bookOf(s)
		r := Read(book, Options{})
		if took := time.Since(start); took > slower*8*time.Second {
			t.Errorf("%s took %v", s.Name, took)
		} else {
			t.Logf("%s took %v", s.Name, took)
		}
		_ = r
	}
}

func FuzzRead(f *testing.F) {
	f.Add(tidy, "Sheet1")
	f.Add("Zone 1\nTag|Tap\nLS1|6W\n\nZone 2\nTag|Tap\nLS2|6W", "Zone 1")
	f.Add("Room|Ceiling 6W|Horn 15W\nA hall|4|\nB hall|2|1\nTotal|6|1", "")
	f.Add("Zone|Z1|Z2|Z3\nQty|4|6|8\nTap (W)|6|15|3\nAmp|A1|A1|A2", "x")
	f.Fuzz(func(t *testing.T, drawing, name string) {
		if len(drawing) > 6000 {
			t.Skip()
		}
		book := bookOf(draw(name, drawing))
		if err := accounted(book, Read(book, Options{})); err != nil {
			t.Fatal(err)
		}
	})
}
