package xls

import (
	"errors"
	"os"
	"reflect"
	"strings"
	"testing"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/gridtest"
)

// want is what must be read of the schedule when LibreOffice 7.4 has saved it
// as .xls: without having calculated it, so that a formula's text is stored as
// the number 0, and truth values of formulas as numbers with a format.
func want() []gridtest.Cell {
	cells := gridtest.Cells()
	c := gridtest.Find(cells, gridtest.Main, "B9")
	c.Kind, c.Text = grid.NoValue, ""
	gridtest.Find(cells, gridtest.Main, "F9").Kind = grid.Number
	return cells
}

func checkSchedule(t *testing.T, data []byte) {
	t.Helper()
	b, err := Read("jobs/schedule.xls", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	if b.File != "jobs/schedule.xls" || b.Format != grid.XLS || len(b.Notes) > 0 {
		t.Errorf("book: file %q format %q notes %v", b.File, b.Format, b.Notes)
	}
	gridtest.Compare(t, gridtest.Read(b), want())
	if len(b.Sheets) != 3 {
		t.Fatalf("%d sheets, want 3", len(b.Sheets))
	}
	if s := b.Sheets[0]; !reflect.DeepEqual(s.Merges, gridtest.Merges) || !reflect.DeepEqual(s.HiddenCols, gridtest.HiddenCols) {
		t.Errorf("merges %v, hidden columns %v", s.Merges, s.HiddenCols)
	}
	if s := b.Sheets[1]; s.Filtered != gridtest.Filter {
		t.Errorf("filter %v, want %v", s.Filtered, gridtest.Filter)
	}
	if b.Sheets[0].Hidden || !b.Sheets[2].Hidden {
		t.Error("the third sheet alone is hidden")
	}
}

// The fixture is gridtest's schedule.fods, saved by LibreOffice 7.4 as "Excel
// 97-2003".
func TestFixture(t *testing.T) {
	data, err := os.ReadFile("testdata/schedule.xls")
	if err != nil {
		t.Fatal(err)
	}
	checkSchedule(t, data)
}

func TestAgainstLibreOffice(t *testing.T) {
	checkSchedule(t, gridtest.Convert(t, "schedule.fods", gridtest.Schedule, "xls"))
}

// Texts longer than a record are continued in others, where their characters
// may change from one byte to two.
func TestLongTextsAgainstLibreOffice(t *testing.T) {
	lines := []string{
		strings.Repeat("loudspeaker ", 800),
		strings.Repeat("Ωhm ", 2100),
		strings.Repeat("x", 8220) + "Ω" + strings.Repeat("y", 9000),
	}
	for i := range 400 {
		lines = append(lines, strings.Repeat("ab", i)+"½Ω"[:2+i%2*2])
	}
	data := gridtest.Convert(t, "long.fods", gridtest.Flat(lines), "xls")
	b, err := Read("long.xls", data, grid.DefaultLimits())
	if err != nil {
		t.Fatal(err)
	}
	got := gridtest.Read(b)
	if len(got) != len(lines) {
		t.Fatalf("%d cells, want %d", len(got), len(lines))
	}
	for i, c := range got {
		if c.Text != lines[i] {
			t.Errorf("%s: %d bytes, want %d", c.At, len(c.Text), len(lines[i]))
		}
	}
}

func TestUnreadable(t *testing.T) {
	sound := one(nil, cell(recNumber, 0, 0, le64(1)))
	for _, tt := range []struct {
		name, reason string
		data         []byte
	}{
		{"empty", "not an Excel", nil},
		{"text", "not an Excel", []byte("Tag;Tap\nLS-1;5 W\n")},
		{"Excel 2", "older format (Excel 2)", rec(0x0009, le16(2, 0x10))},
		{"Excel 3", "older format (Excel 3)", rec(0x0209, le16(0, 0x10), le16(0))},
		{"Excel 4", "older format (Excel 4)", rec(0x0409, le16(0, 0x10), le16(0))},
		{"password", "protected by a password", one(rec(recFilePass, le16(0, 1, 2)), nil)},
		{"cut in a record", "ends inside a record", sound[:len(sound)-6]},
		{"cut before the end of the sheet", "ends before the sheet does", sound[:len(sound)-4]},
		{"cut in the globals", "before the list of sheets", sound[:20]},
		{"container of nothing", "container", []byte(oleMagic + strings.Repeat("\x00", 600))},
		{"shared text that is not there", `sheet "Sheet1": A1 refers to shared text 8 of 0`, one(nil, cell(recLabelSST, 0, 0, le32(7)))},
		{"short number", "needs 14", one(nil, cell(recNumber, 0, 0, le32(7)))},
		{"text longer than its record", "a text is cut off", one(nil, cell(recLabel, 0, 0, le16(9), []byte{0, 'a'}))},
		{"cells of Excel 2 among others", "in the way of Excel 2", one(nil, cell(recNumber, 0, 0, le64(1)), rec(recNumber2, le16(1, 0), make([]byte, 11)))},
		{"merge count", "needs 18", one(nil, rec(recMergeCells, le16(2), make([]byte, 8)))},
		{"no sheet", "lists no sheet", book{biff8: true}.bytes()},
		{"list beside the sheets", "does not begin where", book{biff8: true, shift: 1, sheets: [][]byte{join(rec(recEOF), rec(recBOF, le16(0x600, 0x10)))}}.bytes()},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := Read("a.xls", tt.data, grid.DefaultLimits())
			u, ok := errors.AsType[*grid.Unreadable](err)
			if !ok || !strings.Contains(u.Reason, tt.reason) {
				t.Errorf("error %v, want one with %q", err, tt.reason)
			}
		})
	}
}

func TestLimits(t *testing.T) {
	data := one(nil,
		cell(recNumber, 0, 0, le64(1)), cell(recLabel, 1, 1, text8("LS-1 by the slip")),
		rec(recMergeCells, le16(2), le16(0, 1, 0, 1), le16(2, 3, 2, 3)))
	for _, tt := range []struct {
		name string
		set  func(*grid.Limits)
	}{
		{"bytes", func(l *grid.Limits) { l.MaxBytes = 10 }},
		{"cells", func(l *grid.Limits) { l.MaxCells = 1 }},
		{"rows", func(l *grid.Limits) { l.MaxRows = 1 }},
		{"merges", func(l *grid.Limits) { l.MaxMerges = 1 }},
		{"text", func(l *grid.Limits) { l.MaxText = 5 }},
		{"cell text", func(l *grid.Limits) { l.MaxCellText = 5 }},
	} {
		t.Run(tt.name, func(t *testing.T) {
			lim := grid.DefaultLimits()
			if _, err := Read("a.xls", data, lim); err != nil {
				t.Fatal(err)
			}
			tt.set(&lim)
			_, err := Read("a.xls", data, lim)
			if u, ok := errors.AsType[*grid.Unreadable](err); !ok || !strings.Contains(u.Reason, "too large") {
				t.Errorf("error %v, want one that says too large", err)
			}
		})
	}
}

func TestStopIsAsked(t *testing.T) {
	var cells [][]byte
	for i := range 5000 {
		cells = append(cells, cell(recNumber, i, 0, le64(1)))
	}
	stop := errors.New("enough")
	lim := grid.DefaultLimits()
	lim.Stop = func() error { return stop }
	if _, err := Read("a.xls", one(nil, cells...), lim); !errors.Is(err, stop) {
		t.Errorf("error %v, want what Stop returned", err)
	}
}

func FuzzRead(f *testing.F) {
	if data, err := os.ReadFile("testdata/schedule.xls"); err == nil {
		f.Add(data)
	}
	f.Add(one(font(true), cell(recNumber, 0, 0, le64(1)), cell(recLabel, 1, 0, text8("5 W"))))
	f.Add(book{sheets: [][]byte{cell(recLabel, 0, 0, le16(3), []byte("5 W"))}}.bytes())
	lim := grid.DefaultLimits()
	lim.MaxCells, lim.MaxText = 100_000, 1<<20
	f.Fuzz(func(t *testing.T, data []byte) {
		b, err := Read("a.xls", data, lim)
		if err != nil {
			if _, ok := errors.AsType[*grid.Unreadable](err); !ok {
				t.Fatalf("error of another kind: %v", err)
			}
			return
		}
		for _, s := range b.Sheets {
			last := 0
			for _, r := range s.Rows {
				if r.Number <= last || r.Len() == 0 {
					t.Fatalf("row %d after row %d with %d cells", r.Number, last, r.Len())
				}
				last = r.Number
				for i := range r.Len() {
					c := r.At(i)
					if c.Col < 1 || i > 0 && c.Col <= r.At(i-1).Col || c.Number != c.Number {
						t.Fatalf("row %d: cell %+v", r.Number, *c.Cell)
					}
				}
			}
		}
	})
}
