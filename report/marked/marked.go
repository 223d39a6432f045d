// Package marked makes marked copies of schedules: the workbook as its author
// knows it, with notes and colour on the cells that findings rest on and a
// sheet of the findings. Only the parts of the package that must change are
// changed; everything else is copied as it is stored.
package marked

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"strings"

	"lineaudit/audit"
	"lineaudit/ingest/grid"
)

// A Source is the file to be marked.
type Source struct {
	Book *grid.Book                            // its cells
	Data []byte                                // its bytes
	Read func(data []byte) (*grid.Book, error) // reads a copy back, to check it
}

// Write writes the marked copy of a file: a patched copy of an .xlsx or .xlsm
// workbook, else a new workbook with the cells of the file. When a workbook
// cannot be patched without a risk to its content, the findings go into a
// workbook of their own, and why is returned. Nothing is written that was not
// read back and found whole.
func Write(w io.Writer, src Source, findings []*audit.Finding) (why string, err error) {
	fs := list(findings, src.Book)
	var copied []byte
	if patchable(src.Book) {
		copied, err = patched(src, fs)
		if err != nil {
			why = fmt.Sprintf("The workbook was left as it is, and its findings are in this one: %v.", err)
			copied, err = alone(src, fs, why)
		}
	} else {
		copied, err = fresh(src, fs)
	}
	if err != nil {
		return "", err
	}
	_, err = w.Write(copied)
	return why, err
}

// patchable reports whether the file itself can be copied and marked.
func patchable(b *grid.Book) bool {
	return (b.Format == grid.XLSX || b.Format == grid.XLSM) && !b.Converted
}

// errPatch wraps what makes a workbook unfit for patching.
var errPatch = errors.New("it cannot be marked in place")

// patched returns a copy of a workbook with its findings, read back and compared.
func patched(src Source, fs []finding) ([]byte, error) {
	var out bytes.Buffer
	if err := patch(&out, src.Data, fs, marksOf(fs, src.Book), nil, ""); err != nil {
		return nil, fmt.Errorf("%w: %w", errPatch, err)
	}
	return out.Bytes(), check(out.Bytes(), src)
}

// fresh returns a new workbook with the cells of a file that is no .xlsx.
func fresh(src Source, fs []finding) ([]byte, error) {
	plain, names := plainBook(src.Book)
	marks := marksOf(fs, src.Book)
	addOwnNotes(marks, src.Book)
	renamed := map[string][]mark{}
	for sheet, ms := range marks {
		renamed[names[sheet]] = ms
	}
	var out bytes.Buffer
	if err := patch(&out, plain, fs, renamed, names, copyNote(src.Book)); err != nil {
		return nil, err
	}
	return out.Bytes(), checkFresh(out.Bytes(), src, names)
}

// alone returns a workbook that holds nothing but the findings of a file.
func alone(src Source, fs []finding, why string) ([]byte, error) {
	plain, _ := plainBook(&grid.Book{File: src.Book.File})
	var out bytes.Buffer
	err := patch(&out, plain, fs, nil, nil, why)
	return out.Bytes(), err
}

func copyNote(b *grid.Book) string {
	var note strings.Builder
	note.WriteString(fmt.Sprintf("This is a copy of the values of %s, a file of kind %s; formats and formulas are in the original.", b.File, b.Format))
	if b.Converted {
		note.WriteString(" It was read through another spreadsheet program.")
	}
	for _, s := range b.Sheets {
		if n := len(s.Rows); n > 0 && s.Rows[n-1].Number > maxSheetRows {
			note.WriteString(fmt.Sprintf(" Rows beyond %d, which no workbook holds, are left out.", maxSheetRows))
		}
	}
	return note.String()
}

// patch writes a workbook with its findings sheet, fills and notes. Names says
// what the sheets that findings refer to are called there, nil if as they are.
func patch(w io.Writer, data []byte, fs []finding, marks map[string][]mark, names map[string]string, note string) error {
	a, err := openArchive(data)
	if err != nil {
		return err
	}
	b, err := readWorkbook(a)
	if err != nil {
		return err
	}
	looks, err := b.addLooks()
	if err != nil {
		return err
	}
	for i, s := range b.sheets {
		if err := b.markSheet(i, s, marks[s.name], looks.fills); err != nil {
			return fmt.Errorf("sheet %q: %w", s.name, err)
		}
	}
	if a.signed() {
		note += " The original carries a digital signature; this copy is no longer signed."
	}
	if err := b.addFindings(fs, looks, names, note); err != nil {
		return err
	}
	return a.save(w)
}
