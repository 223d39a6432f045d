package ingest

import (
	"fmt"
	"math"
	"runtime"
	"slices"
	"strings"
	"testing"
	"time"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/layout"
)

// Eight times the rows, or the words of a cell, take no more than about eight times as
// long. What asks of every row something of all rows of its table would take 64 times.
func TestLongTablesTakeTheirRows(t *testing.T) {
	if testing.Short() {
		t.Skip("takes seconds")
	}
	rows := func(kind layout.Kind, head string, row func(i int) string) func(n int) *layout.Table {
		return func(n int) *layout.Table {
			var b strings.Builder
			b.WriteString(head)
			for i := range n {
				b.WriteString("\n" + row(i))
			}
			return draw(kind, "L", b.String())
		}
	}
	for _, tt := range []struct {
		name  string
		n     int
		table func(n int) *layout.Table
	}{
		{"counts ahead of descriptions", 500, rows(layout.Loudspeakers, "circuit | description | tap[W]", func(i int) string {
			return fmt.Sprintf("L%d | %d horns | 15", i%40, 2+i%9)
		})},
		{"the tap of a row in a long text", 1500, func(n int) *layout.Table {
			return draw(layout.Loudspeakers, "L", "tag | description | tap[W]\nS1 | "+strings.Repeat("Two on the pier, ", n)+" | 15")
		}},
		{"amplifiers on the mains", 1500, rows(layout.Mixed, "tag | description | tap[W] | amplifier", func(i int) string {
			if i%3 == 0 {
				return fmt.Sprintf("PA-%d | Mixer amplifier 2 x 120 W 100 V | | mains", i%200)
			}
			return fmt.Sprintf("LS-%d | Ceiling speaker | 3 | M%d output %d", i%200, i%20, i%3)
		})},
		{"outputs called as amplifiers are", 4000, func(n int) *layout.Table {
			table := rows(layout.Loudspeakers, "title : HR-1, HR-2: 100W amp channel. HR-3: 200W amp channel.\ntag | room | tap[W] | cable: Homerun", func(i int) string {
				return fmt.Sprintf("S%d | Hall | 5 | HR-%d", i, 1+i%3)
			})
			return table(n)
		}},
	} {
		took := func(n int) time.Duration {
			table, best := tt.table(n), time.Duration(math.MaxInt64)
			for range 3 {
				start := time.Now()
				jobsOf(&Options{}, table)
				best = min(best, time.Since(start))
			}
			return best
		}
		few, many := took(tt.n), took(8*tt.n)
		t.Logf("%s: %v, eight times as long %v", tt.name, few, many)
		if many > 32*few+slower*time.Second {
			t.Errorf("%s: took %v, an eighth of it %v: more than its rows", tt.name, many, few)
		}
	}
}

// What a cell holds beyond 4 KiB is not read, and that is told; the cells of the book stay
// as they are.
func TestLongCellsAreCut(t *testing.T) {
	for _, tt := range []struct{ name, head, long, tail string }{
		{"states", "Room | Type | Tap W | Zone\nHall | ", strings.Repeat("6 W removed 7 W removed ", 4000), " | 6 | 1\nBar | horn | 6 | 1"},
		{"spares", "Room | Tap W | Control\nHall | 6 | ", strings.Repeat("5 W (1 spare); ", 12000), "\nBar | 6 | VC1 30 W"},
	} {
		start := time.Now()
		j := wholeJob(t, tt.head+tt.long+tt.tail)
		if took := time.Since(start); took > slower*10*time.Second {
			t.Errorf("%s: took %v", tt.name, took)
		}
		if len(j.Loudspeakers) != 2 || !slices.ContainsFunc(j.Assumptions, func(a schedule.Assumption) bool { return strings.Contains(a.TakenAs, "longer than 4 KiB") }) {
			t.Errorf("%s: %d loudspeakers, %+v", tt.name, len(j.Loudspeakers), j.Assumptions)
		}
	}
	long := strings.Repeat("ä", longestCell)
	book := &grid.Book{Sheets: []*grid.Sheet{{Rows: []grid.Row{grid.NewRow(1, grid.Cell{Kind: grid.String, Text: "short"}.In(1)), grid.NewRow(2, grid.Cell{Kind: grid.String, Text: long}.In(3))}}}}
	cut := withoutLong(book)
	if got := cut.Sheets[0].Rows[1].At(0).Text; len(got) != longestCell || !strings.HasPrefix(long, got) || len(cut.Notes) != 1 {
		t.Errorf("%d bytes, %v", len(got), cut.Notes)
	}
	if book.Sheets[0].Rows[1].At(0).Text != long || len(book.Notes) > 0 || withoutLong(cut) != cut {
		t.Error("the book has changed")
	}
}

// Forms side by side share the titles above them: four times as many take about four
// times the memory, not sixteen.
func TestFormsSideBySide(t *testing.T) {
	form := []string{"Line test %d | | | Job %d | OC 66-2 %d", "Line %d | 2 | | |", "Amplifier %d | PA-1 %d | Output %d | 2 |", "Rated %d | 120 W %d | Line volts %d | 100 V %d |",
		"Measured at 1 kHz %d | 104 ohm %d | | |", "| | | |", "Room %d | Speaker %d | Qty %d | Tap set %d |", "House 1 %d | horn %d | 2 | 15 W %d |", "House 2 %d | horn %d | 2 | 15 W %d |", "House 3 %d | horn %d | 2 | 15 W %d |"}
	took := func(forms int) float64 {
		var b strings.Builder
		for _, row := range form {
			for i := range forms {
				b.WriteString(strings.ReplaceAll(row, "%d", fmt.Sprint(i+1)) + " | ")
			}
			b.WriteString("\n")
		}
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		wholeJobs(b.String())
		runtime.ReadMemStats(&after)
		return float64(after.TotalAlloc-before.TotalAlloc) / (1 << 20)
	}
	took(10)
	few, many := took(100), took(400)
	t.Logf("%.0f MiB, four times as many forms %.0f MiB", few, many)
	if many > 12*few {
		t.Errorf("%.0f MiB, four times as many forms %.0f MiB: more than their number", few, many)
	}
}

// Many notes of amplifiers beside many rows that name none are not read for every row.
func TestManyNotesBesideManyRows(t *testing.T) {
	if testing.Short() {
		t.Skip("takes seconds")
	}
	took := func(n int) time.Duration {
		var b strings.Builder
		b.WriteString("Nr | Room | Tap W | Control | Line\n")
		for i := range 8 * n {
			fmt.Fprintf(&b, "%d | Hall %d | 6 | - | %d\n", i+1, i%50, i%20)
		}
		b.WriteString("\n")
		for i := range n {
			fmt.Fprintf(&b, "Verstärker im Kammerl: Strang 1 = 60 W, Strang 2 = 60 W, 100 Volt %d\n", i)
		}
		start := time.Now()
		wholeJobs(b.String())
		return time.Since(start)
	}
	took(100)
	few, many := took(100), took(800)
	t.Logf("%v, eight times as long %v", few, many)
	if many > 32*few+slower*time.Second {
		t.Errorf("took %v, an eighth of it %v: more than its rows and notes", many, few)
	}
}
