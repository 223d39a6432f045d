package marked

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/report"
)

// A finding is one row of the findings sheet, before it is written.
type finding struct {
	number  int
	grade   audit.Grade
	certain audit.Certainty
	at      schedule.Ref
	cells   []schedule.Ref // at first
	place   string
	rule    string
	message string
	remedy  string
	source  string
	caution []string
}

// A mark is one cell that findings rest on.
type mark struct {
	row, col int
	grade    audit.Grade
	findings []int // their numbers on the findings sheet
	text     string
	leads    int  // the number of the first finding that has this cell as its first place, or 0
	own      bool // a note of the original alone: neither colour nor link
	full     bool // the note takes no more
}

// list numbers the findings in the order given.
func list(findings []*audit.Finding, b *grid.Book) []finding {
	out := make([]finding, 0, len(findings))
	for i, f := range findings {
		x := finding{number: i + 1, grade: f.Grade, certain: f.Certainty, at: onSheet(f.At, b), place: f.Place, rule: f.Rule.Name, message: report.Found(f),
			remedy: remedies(f), source: f.LimitSource, caution: f.Cautions}
		x.cells = append(x.cells, x.at)
		for _, e := range f.Cells {
			x.cells = append(x.cells, onSheet(e.At, b))
		}
		out = append(out, x)
	}
	return out
}

// remedies are the ways out of a finding, the first one first.
func remedies(f *audit.Finding) string {
	if len(f.Remedies) == 0 {
		return f.NoRemedy
	}
	var out []string
	for _, r := range f.Remedies[:min(3, len(f.Remedies))] {
		out = append(out, r.Change)
	}
	return strings.Join(out, "\nor: ")
}

// onSheet names the sheet of a place in a file of one sheet, whose name need not be told.
func onSheet(at schedule.Ref, b *grid.Book) schedule.Ref {
	if at.Sheet() == "" && at.Row > 0 && len(b.Sheets) == 1 && at.File() == b.File {
		return schedule.At(b.File, b.Sheets[0].Name, int(at.Row), int(at.Col))
	}
	return at
}

// longestNote is how many bytes the note of one cell may take.
const longestNote = 2000

// marksOf collects the marked cells of every sheet, in reading order. A whole
// row is marked on its first cell.
func marksOf(fs []finding, b *grid.Book) map[string][]mark {
	found := map[spot]*mark{}
	var order []spot
	held := filled(fs, b)
	for _, f := range fs {
		for i, at := range f.cells {
			if at.Row == 0 || at.File() != f.at.File() {
				continue
			}
			holds := held[spot{at.Sheet(), int(at.Row), int(at.Col)}]
			if at.Col == 0 {
				at.Col = int32(max(1, holds))
			}
			c := spot{at.Sheet(), int(at.Row), int(at.Col)}
			m := found[c]
			if m == nil {
				m = &mark{row: int(at.Row), col: int(at.Col)}
				found[c] = m
				order = append(order, c)
			}
			if i == 0 && m.leads == 0 && holds > 0 { // programs show the link itself in an empty cell
				m.leads = f.number
			}
			if len(m.findings) > 0 && m.findings[len(m.findings)-1] == f.number {
				continue
			}
			m.findings = append(m.findings, f.number)
			m.grade = max(m.grade, f.grade)
			m.add(f, i == 0)
		}
	}
	out := map[string][]mark{}
	for _, c := range order {
		out[c.sheet] = append(out[c.sheet], *found[c])
	}
	for s := range out {
		sortMarks(out[s])
	}
	return out
}

// add puts a finding into the note of a cell, while there is room.
func (m *mark) add(f finding, leads bool) {
	if m.full {
		return
	}
	text := fmt.Sprintf("Finding %d, %s: %s", f.number, gradeWords(f), report.Plain(f.message))
	if f.remedy != "" && leads {
		text += "\nRemedy: " + report.Plain(strings.ReplaceAll(f.remedy, "\n", "; "))
	}
	text = report.Shorten(text, longestNote)
	switch {
	case m.text == "":
		m.text = text
	case len(m.text)+len(text) > longestNote:
		m.text, m.full = m.text+"\nMore findings rest on this cell; they are on the findings sheet.", true
	default:
		m.text += "\n" + text
	}
}

// A spot is a cell of a sheet; column 0 stands for the first cell of the row.
type spot struct {
	sheet    string
	row, col int
}

// filled returns the columns of those spots that findings name and that hold
// something; of a whole row, the first cell.
func filled(fs []finding, b *grid.Book) map[spot]int {
	wanted := map[spot]int{}
	for _, f := range fs {
		for _, at := range f.cells {
			wanted[spot{at.Sheet(), int(at.Row), int(at.Col)}] = 0
		}
	}
	for _, s := range b.Sheets {
		for i := range s.Rows {
			row := &s.Rows[i]
			for k := range row.Len() {
				c := row.At(k)
				if c.Kind == grid.Blank {
					continue
				}
				if _, ok := wanted[spot{s.Name, row.Number, c.Col}]; ok {
					wanted[spot{s.Name, row.Number, c.Col}] = c.Col
				}
				if _, ok := wanted[spot{s.Name, row.Number, 0}]; ok && k == 0 {
					wanted[spot{s.Name, row.Number, 0}] = c.Col
				}
			}
		}
	}
	return wanted
}

// addOwnNotes adds the notes that the cells of a file carry themselves, above ours.
func addOwnNotes(marks map[string][]mark, b *grid.Book) {
	seen := map[string]bool{}
	for _, s := range b.Sheets {
		if seen[s.Name] {
			continue
		}
		seen[s.Name] = true
		at := map[[2]int]int{}
		for i, m := range marks[s.Name] {
			at[[2]int{m.row, m.col}] = i
		}
		ms := marks[s.Name]
		for i := range s.Rows {
			for c := range s.Rows[i].Cells() {
				note := c.Note()
				if note == "" {
					continue
				}
				if k, ok := at[[2]int{s.Rows[i].Number, c.Col}]; ok {
					ms[k].text = note + "\n" + ms[k].text
				} else {
					ms = append(ms, mark{row: s.Rows[i].Number, col: c.Col, text: note, own: true})
				}
			}
		}
		sortMarks(ms)
		marks[s.Name] = ms
	}
}

func sortMarks(ms []mark) {
	slices.SortStableFunc(ms, func(x, y mark) int { return cmp.Or(cmp.Compare(x.row, y.row), cmp.Compare(x.col, y.col)) })
}

func gradeWords(f finding) string {
	if f.certain == audit.Possible {
		return "possible " + f.grade.String()
	}
	return f.grade.String()
}
