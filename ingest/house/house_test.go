package house

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
)

// sheet draws a sheet from lines of cells separated by |. A cell that is a
// plain number becomes a number cell.
func sheet(name, text string) *grid.Sheet {
	s := &grid.Sheet{Name: name}
	for i, l := range strings.Split(strings.Trim(text, "\n"), "\n") {
		var cells []grid.Placed
		for k, c := range strings.Split(l, "|") {
			c = strings.TrimSpace(c)
			if c == "" {
				continue
			}
			cell := grid.Placed{Col: k + 1, Cell: &grid.Cell{Kind: grid.String, Text: c}}
			if v, err := parseFigure(c); err == nil && !strings.ContainsAny(c, "wW") {
				cell.Kind, cell.Number = grid.Number, v
			}
			cells = append(cells, cell)
		}
		if len(cells) > 0 {
			s.Rows = append(s.Rows, grid.NewRow(i+1, cells...))
		}
	}
	return s
}

const ratings = `
What the schedules leave out. A blank is unknown.
Model | Other names | Kind | Rated W 70V | Rated W 100 V | Taps W | Taps W 70.7 V | Impedance ohm | Channels | Frame W | Box depth mm | Insertion loss dB | Remarks
WK-35 | WK35; Wall-35 | control | 35 | 50 | | | | | | 65 | 0.4 | four jobs
CL-6 | | loudspeaker | | | 6/3/1,5 | 6 3 1.5 0.75 | | | |
# CX-9 | | loudspeaker | | | 6/3/1,5 |
DX-4 | | amplifier | 250 | | | | | 4 | 800 |
`

func TestRatings(t *testing.T) {
	book := &grid.Book{File: "house.xlsx", Format: grid.XLSX, Sheets: []*grid.Sheet{sheet("read me", "anything"), sheet("Ratings", ratings)}}
	h, errs := Read("house.xlsx", []*grid.Book{book})
	if len(errs) != 0 {
		t.Fatal(errs)
	}
	if len(h.Ratings) != 3 {
		t.Fatalf("%d rows", len(h.Ratings))
	}
	wk := h.Ratings[0]
	if wk.Model.Value != "WK-35" || len(wk.OtherNames) != 2 || len(wk.Rated) != 2 || wk.LossDB.Low != 0.4 || wk.BoxDepth.Low != 65 {
		t.Errorf("control: %+v", wk)
	}
	for _, r := range wk.Rated {
		if r.Volts == 70 && r.Watts.Low != 35 || r.Volts == 100 && r.Watts.Low != 50 {
			t.Errorf("rated %+v", r)
		}
	}
	if at := wk.LossDB.At; at.Cell() != "L3" || at.Sheet() != "Ratings" {
		t.Errorf("the insertion loss stands in %v", at)
	}
	cl := h.Ratings[1]
	if len(cl.Taps) != 7 || cl.Taps[2].Watts != 1.5 || cl.Taps[2].Volts != 0 || cl.Taps[6].Watts != 0.75 || cl.Taps[6].Volts != 70.7 {
		t.Errorf("taps %+v", cl.Taps)
	}
	if n, ok := h.Ratings[2].Channels.Exact(); !ok || n != 4 {
		t.Errorf("channels %+v", h.Ratings[2].Channels)
	}
}

func TestFolderOfTables(t *testing.T) {
	books := []*grid.Book{
		{File: "house/limits.csv", Format: grid.Text, Sheets: []*grid.Sheet{sheet("", "rule|limit|value|unit|use|source\nheadroom-short|caution|75|%|any|own rule")}},
		{File: "house/names.csv", Format: grid.Text, Sheets: []*grid.Sheet{sheet("", "kind|written|means|field|files\nheader|Kreis|zone||\nvalue|std|5 W|tap|*.csv")}},
		{File: "house/notes.txt", Format: grid.Text, Sheets: []*grid.Sheet{sheet("", "nothing")}},
	}
	h, errs := Read("house", books)
	if len(errs) != 0 {
		t.Fatal(errs)
	}
	if len(h.Limits) != 1 || h.Limits[0].Value.Value != "75" || h.Limits[0].Value.At != (schedule.At("house/limits.csv", "", 2, 3)) {
		t.Errorf("limits %+v", h.Limits)
	}
	if len(h.Names) != 2 || h.Names[1].Files.Value != "*.csv" {
		t.Errorf("names %+v", h.Names)
	}
}

// TestErrors checks that all errors of a book come at once, each at its cell.
func TestErrors(t *testing.T) {
	book := &grid.Book{File: "h.xlsx", Format: grid.XLSX, Sheets: []*grid.Sheet{
		sheet("ratings", "model|kind|rated_w|channels|imped_ohm|depth of box|remark|kind\nWK-35|knob|35|2.5|\nwk 35|control|-4||\n||10||"),
		sheet("names", "kind|written|means|field|files\nheader|Kreis|zonne||\nvalue|std||tap|[\nheading|x|zone||\nheader|Amt|quantity||\nheader|AMT|zone||"),
		sheet("waiver", "rule|job"),
		sheet("limits", "rule|caution"),
	}}
	_, errs := Read("h.xlsx", []*grid.Book{book})
	want := []string{
		"limits!row 1: no header",
		"names!C2: “zonne” is no field; did you mean “zone”?",
		"names!C3: “means” is blank",
		"names!E3: “[” is no file pattern",
		"names!A4: “heading” is not one of header, value",
		"names!C6: “AMT” means something else",
		"ratings!B2: “knob” is not one of",
		"ratings!D2: a number of channels is whole",
		"ratings!B4: “kind” is blank",
		"ratings!A3: the model “wk 35” is rated in",
		"ratings!C3: -4 is out of range",
		"ratings!A4: “model” is blank",
		"waiver: the sheet “waiver” is not known; did you mean “waivers”?",
		"ratings!E1: the column “imped_ohm” is not known",
		"ratings!F1: the column “depth of box” is not known; the sheet “ratings” has the columns model, ",
		"ratings!H1: the column “kind” is there twice",
	}
	var got []string
	for _, e := range errs {
		got = append(got, e.At.String()+": "+e.Text)
	}
	for _, w := range want {
		found := false
		for _, g := range got {
			found = found || strings.HasPrefix(g, w)
		}
		if !found {
			t.Errorf("no error %q in\n%s", w, strings.Join(got, "\n"))
		}
	}
	if len(got) != len(want) {
		t.Errorf("%d errors:\n%s", len(got), strings.Join(got, "\n"))
	}
}

func TestNoHouseBook(t *testing.T) {
	book := &grid.Book{File: "x.xlsx", Sheets: []*grid.Sheet{sheet("Sheet1", "a|b")}}
	if _, errs := Read("x.xlsx", []*grid.Book{book}); len(errs) != 1 || !strings.Contains(errs[0].Text, "no sheet of a house book") {
		t.Errorf("errors %v", errs)
	}
}

func FuzzFigure(f *testing.F) {
	for _, s := range []string{"7.5", "7,5 W", "1e3", "NaN", "-0", "0x10", "1_000", "Inf W"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		v, err := parseFigure(s)
		if err == nil && v-v != 0 {
			t.Errorf("parseFigure(%q) = %v", s, v)
		}
	})
}

// Any house book is read into sound rows or into errors that name their place.
func FuzzRead(f *testing.F) {
	f.Add("Ratings", ratings)
	f.Add("Limits", "rule|limit|value|unit|use|source\nline-loss|caution|0,5|dB|any|ours\nline-loss|fault|-1|dB|any|")
	f.Add("Names", "written|means|kind|field|files\nSpkr|loudspeaker|header||*.csv\nA|[|value|zone|[")
	f.Add("Waivers", "rule|file|cell|reason\n*|*|A1|agreed")
	f.Fuzz(func(t *testing.T, name, text string) {
		h, errs := Read("house.xlsx", []*grid.Book{{File: "house.xlsx", Format: grid.XLSX, Sheets: []*grid.Sheet{sheet(name, text)}}})
		if h == nil && len(errs) == 0 {
			t.Fatal("no book and no error")
		}
		for _, e := range errs {
			if e.Text == "" {
				t.Errorf("an error without words at %v", e.At)
			}
		}
		if h == nil {
			return
		}
		for _, r := range h.Ratings {
			for _, w := range r.Rated {
				if !(w.Watts.Low >= 0) || w.Watts.Low-w.Watts.Low != 0 {
					t.Errorf("%q is rated %v W", r.Model.Value, w.Watts.Low)
				}
			}
		}
	})
}
