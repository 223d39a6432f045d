package ingest

import (
	"fmt"
	"math/rand/v2"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// headSpec is a column of a drawn table: `field[unit]@volts: header`.
var headSpec = regexp.MustCompile(`^([a-z ]*?)(?:\[([^\]]*)\])?(?:@([0-9.]+))?(?::\s*(.*))?$`)

// marks in front of a drawn row say what it is.
var rowMarks = map[string]layout.Class{"=": layout.Total, "~": layout.Struck, "!": layout.Hidden, "#": layout.Note, "-": layout.NoDevice, "^": layout.Header}

// draw makes a table of text: columns in the first line, cells separated by |.
// A row may begin with a mark: = total, ~ struck through, ! hidden, # note,
// - no device, ^ the header again. Plain numbers become number cells, `1/2#` a date cell.
// Lines "title field: text" above the columns are facts, "section field: text"
// between rows are section titles.
func draw(kind layout.Kind, sheet, text string) *layout.Table {
	t := &layout.Table{Sheet: sheet, Kind: kind, Confidence: 1}
	at := func(row, col int) schedule.Ref {
		return schedule.At("job.xlsx", sheet, row, col)
	}
	var sections []layout.Fact
	n := 0
	for l := range strings.SplitSeq(strings.Trim(text, "\n"), "\n") {
		l = strings.TrimSpace(l)
		n++
		if rest, ok := strings.CutPrefix(l, "title "); ok {
			field, value, _ := strings.Cut(rest, ":")
			t.Titles = append(t.Titles, layout.Fact{Field: fieldOf(field), Text: strings.TrimSpace(value), At: at(n, 1)})
			continue
		}
		if rest, ok := strings.CutPrefix(l, "section "); ok {
			field, value, _ := strings.Cut(rest, ":")
			sections = []layout.Fact{{Field: fieldOf(field), Text: strings.TrimSpace(value), At: at(n, 1)}}
			continue
		}
		cells := strings.Split(l, "|")
		if t.Columns == nil {
			t.HeaderRows = []int{n}
			for i, c := range cells {
				m := headSpec.FindStringSubmatch(strings.TrimSpace(c))
				if m == nil {
					panic("column " + c)
				}
				v, _ := strconv.ParseFloat(m[3], 64)
				header := m[4]
				if header == "" {
					header = m[1]
				}
				t.Columns = append(t.Columns, layout.Column{Col: i + 1, At: at(n, i+1), Header: header, Field: fieldOf(m[1]),
					Unit: m[2], Volts: v, Confidence: 1})
			}
			continue
		}
		r := layout.Record{Rows: schedule.Span{First: n, Last: n}, At: at(n, 1), Class: layout.Device, Sections: sections, Text: strings.ReplaceAll(l, "|", " ")}
		for mark, class := range rowMarks {
			if rest, ok := strings.CutPrefix(cells[0], mark+" "); ok {
				r.Class, r.Reason, cells[0] = class, string(class), rest
			}
		}
		for i := range t.Columns {
			v := layout.Value{At: at(n, i+1)}
			if i < len(cells) {
				if text := strings.TrimSpace(cells[i]); text != "" {
					v.Cell, v.Text, v.How = drawCell(text), strings.TrimSuffix(text, "#"), schedule.Stated
				}
			}
			r.Values = append(r.Values, v)
		}
		t.Records = append(t.Records, r)
	}
	t.Range = grid.Range{Row1: 1, Col1: 1, Row2: n, Col2: len(t.Columns)}
	return t
}

func drawCell(text string) *grid.Cell {
	c := &grid.Cell{Kind: grid.String, Text: text}
	if v, err := strconv.ParseFloat(text, 64); err == nil {
		c.Kind, c.Number = grid.Number, v
	}
	if d, ok := strings.CutSuffix(text, "#"); ok {
		var a, b int
		if _, err := fmt.Sscanf(d, "%d/%d", &a, &b); err == nil {
			// day b of month a of 2024: serial 45292 is 1 January 2024
			days := []int{0, 31, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335}
			c.Kind, c.Number, c.Text = grid.Date, float64(45292+days[a-1]+b-1), fmt.Sprintf("%02d/%02d/2024", b, a)
			c.SetFormat("dd/mm/yyyy")
		}
	}
	return c
}

// jobOf builds the one job of drawn tables.
func jobOf(t *testing.T, tables ...*layout.Table) *schedule.Job {
	t.Helper()
	jobs := jobsOf(&Options{}, tables...)
	if len(jobs) != 1 {
		t.Fatalf("%d jobs", len(jobs))
	}
	return jobs[0]
}

func jobsOf(opts *Options, tables ...*layout.Table) []*schedule.Job {
	reading := &layout.Reading{}
	for _, tb := range tables {
		i := slices.IndexFunc(reading.Sheets, func(s layout.Sheet) bool { return s.Name == tb.Sheet })
		if i < 0 {
			i = len(reading.Sheets)
			reading.Sheets = append(reading.Sheets, layout.Sheet{Name: tb.Sheet, Hidden: tb.SheetHidden})
		}
		reading.Sheets[i].Tables = append(reading.Sheets[i].Tables, tb)
	}
	var jobs []*schedule.Job
	if err := build("job.xlsx", reading, opts, func(j *schedule.Job) error { jobs = append(jobs, j); return nil }); err != nil {
		panic(err) // only from the function above
	}
	return jobs
}

// describe prints what a job says of its loudspeakers, a line each, in order.
func describe(j *schedule.Job) []string {
	var out []string
	for _, l := range j.Loudspeakers {
		var s strings.Builder
		s.WriteString(fmt.Sprintf("%s %s x %s W", l.Tag.Value, show(l.Count), show(l.Tap)))
		if l.TapVolts.Had() {
			s.WriteString(fmt.Sprintf(" at %v V", l.TapVolts.Low))
		}
		if l.Zone != nil {
			s.WriteString(" zone " + l.Zone.Name)
		}
		if l.Control != nil {
			s.WriteString(" control " + l.Control.Name)
		}
		for _, c := range feeding(l) {
			s.WriteString(" channel " + c.Label())
		}
		if l.Status != schedule.Installed {
			s.WriteString(" " + l.Status.String())
		}
		if l.LowImpedance.Had() {
			s.WriteString(fmt.Sprintf(" direct %v ohm", show(l.LowImpedance)))
		}
		out = append(out, strings.TrimSpace(s.String()))
	}
	return out
}

func show[T ~float64](q schedule.Quantity[T]) string {
	switch {
	case !q.Had():
		return "?"
	case q.Low != q.High:
		return fmt.Sprintf("%v..%v", q.Low, q.High)
	}
	return fmt.Sprint(float64(q.Low))
}

func want(t *testing.T, what string, got, want []string) {
	t.Helper()
	if !slices.Equal(got, want) {
		t.Errorf("%s:\n got %s\nwant %s", what, strings.Join(got, "\n     "), strings.Join(want, "\n     "))
	}
}

// asked lists the questions of a job.
func asked(j *schedule.Job) []string {
	var out []string
	for _, q := range j.Questions {
		out = append(out, q.At.Cell()+" "+q.Field)
	}
	return out
}

// takenAs lists the assumptions of a job.
func takenAs(j *schedule.Job) []string {
	var out []string
	for _, a := range j.Assumptions {
		out = append(out, a.At.Cell()+" "+a.Field+" = "+a.TakenAs)
	}
	return out
}

// shuffled is the table with its device rows in another order.
func shuffled(t *layout.Table, r *rand.Rand) *layout.Table {
	c := *t
	c.Records = slices.Clone(t.Records)
	r.Shuffle(len(c.Records), func(i, j int) { c.Records[i], c.Records[j] = c.Records[j], c.Records[i] })
	return &c
}

// fieldOf is the field with that name, Unknown for none.
func fieldOf(name string) vocabulary.Field {
	f, ok := vocabulary.Named(name)
	if !ok && strings.TrimSpace(name) != "" {
		panic("no field " + name)
	}
	return f
}
