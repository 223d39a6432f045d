// Package marked makes marked copies of schedules: the workbook as its author
// knows it, with notes and colour on the cells that findings rest on and a
// sheet of the findings in front. Only the parts of the package that must
// change are changed; everything else is copied as it is stored.
package marked

import (
	"bytes"
	"errors"
	"fmt"
	"io"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/report"
)

// A Source is the file to be marked.
type Source struct {
	Book *grid.Book                            // its cells
	Data []byte                                // its bytes
	Read func(data []byte) (*grid.Book, error) // reads a copy back, to check it
}

// A Sheet is the content of a findings sheet, before it is written.
type finding struct {
	number  int
	grade   audit.Grade
	certain audit.Certainty
	at      schedule.Ref
	cells   []schedule.Ref
	place   string
	rule    string
	message string
	remedy  string
	source  string
	caution string
}

// A mark is one cell that findings rest on.
type mark struct {
	row, col int
	grade    audit.Grade
	findings []int // their numbers on the findings sheet
	text     string
	leads    int // the number of the first finding that has this cell as its first place, or 0
}

// Write writes the marked copy of a file: a patched copy of an .xlsx or .xlsm
// workbook, else a new workbook with the cells of the file. When a workbook
// cannot be patched without a risk to its content, the findings go into a
// workbook of their own, and why is returned.
func Write(w io.Writer, src Source, findings []*audit.Finding) (why string, err error) {
	fs := list(findings)
	marks := marksOf(fs)
	if src.Book.Format != grid.XLSX && src.Book.Format != grid.XLSM {
		return "", fresh(w, src.Book, fs, marks, copyNote(src.Book))
	}
	if src.Book.Converted {
		return "", fresh(w, src.Book, fs, marks, copyNote(src.Book))
	}
	var copied bytes.Buffer
	err = patch(&copied, src.Data, fs, marks)
	if err == nil {
		err = check(copied.Bytes(), src)
	}
	if err != nil {
		why = fmt.Sprintf("The workbook was left as it is, and its findings are in this one: %v.", err)
		return why, alone(w, src.Book, fs, why)
	}
	_, err = w.Write(copied.Bytes())
	return "", err
}

func copyNote(b *grid.Book) string {
	note := fmt.Sprintf("Values of %s, a file of kind %s, copied to a workbook; formats and formulas are in the original.", b.File, b.Format)
	if b.Converted {
		note += " It was read through another spreadsheet program."
	}
	return note
}

// list numbers the findings in the order given.
func list(findings []*audit.Finding) []finding {
	out := make([]finding, 0, len(findings))
	for i, f := range findings {
		x := finding{number: i + 1, grade: f.Grade, certain: f.Certainty, at: f.At, place: f.Place, rule: f.Rule.Name, message: f.Message,
			remedy: report.RemedyText(f), source: f.LimitSource}
		if len(f.Cautions) > 0 {
			x.caution = f.Cautions[0]
		}
		x.cells = append(x.cells, f.At)
		for _, e := range f.Cells {
			x.cells = append(x.cells, e.At)
		}
		out = append(out, x)
	}
	return out
}

// marksOf collects the marked cells of every sheet, in reading order.
func marksOf(fs []finding) map[string][]mark {
	type cell struct {
		sheet    string
		row, col int
	}
	found := map[cell]*mark{}
	var order []cell
	for _, f := range fs {
		for i, at := range f.cells {
			if at.Row == 0 || at.Col == 0 || at.File != f.at.File {
				continue
			}
			c := cell{at.Sheet, at.Row, at.Col}
			m := found[c]
			if m == nil {
				m = &mark{row: at.Row, col: at.Col}
				found[c] = m
				order = append(order, c)
			}
			if len(m.findings) > 0 && m.findings[len(m.findings)-1] == f.number {
				continue
			}
			m.findings = append(m.findings, f.number)
			m.grade = max(m.grade, f.grade)
			if i == 0 && m.leads == 0 {
				m.leads = f.number
			}
			if m.text != "" {
				m.text += "\n"
			}
			m.text += fmt.Sprintf("Finding %d, %s: %s", f.number, gradeWords(f), report.Plain(f.message))
			if f.remedy != "" && i == 0 {
				m.text += "\nRemedy: " + report.Plain(f.remedy)
			}
		}
	}
	out := map[string][]mark{}
	for _, c := range order {
		m := *found[c]
		m.text = report.Shorten(m.text, 2000)
		out[c.sheet] = append(out[c.sheet], m)
	}
	for s := range out {
		sortMarks(out[s])
	}
	return out
}

func gradeWords(f finding) string {
	if f.certain == audit.Possible {
		return "possible " + f.grade.String()
	}
	return f.grade.String()
}

// errPatch wraps what makes a workbook unfit for patching.
var errPatch = errors.New("it cannot be marked in place")

// patch writes the workbook with its findings sheet, fills and notes.
func patch(w io.Writer, data []byte, fs []finding, marks map[string][]mark) error {
	a, err := openArchive(data)
	if err != nil {
		return fmt.Errorf("%w: %w", errPatch, err)
	}
	b, err := readWorkbook(a)
	if err != nil {
		return fmt.Errorf("%w: %w", errPatch, err)
	}
	looks, err := b.addLooks()
	if err != nil {
		return fmt.Errorf("%w: %w", errPatch, err)
	}
	for _, s := range b.sheets {
		if err := b.markSheet(s, marks[s.name], looks.fills); err != nil {
			return fmt.Errorf("%w: sheet %q: %w", errPatch, s.name, err)
		}
	}
	if err := b.addFindings(fs, looks); err != nil {
		return fmt.Errorf("%w: %w", errPatch, err)
	}
	return a.save(w)
}
