// Package xlsx reads zipped XML workbooks (.xlsx, .xlsm and their templates,
// in both dialects of ECMA-376) into plain cells, straight from the parts.
//
// Values are the stored ones; nothing is calculated. A part that is damaged,
// cut, or not what the directory says is an error, never a shorter sheet.
package xlsx

import (
	"archive/zip"
	"errors"
	"fmt"

	"lineaudit/ingest/grid"
)

// errOdd says that a part is not in a form that this package knows, though
// nothing is wrong with it.
var errOdd = errors.New("a part in an unknown form")

// Read reads the workbook in data; file is the name put into the book. Its
// error is an *grid.Unreadable for anything wrong with the workbook, or what
// lim.Stop returned.
//
// Size and SHA256 of the book are left to the caller.
func Read(file string, data []byte, lim grid.Limits) (*grid.Book, error) {
	return ReadZip(file, data, nil, lim)
}

// ReadZip is Read for data whose directory has been read already; nil for one
// that has not.
func ReadZip(file string, data []byte, directory *zip.Reader, lim grid.Limits) (*grid.Book, error) {
	book, err := read(file, data, directory, lim, true)
	if errors.Is(err, errOdd) {
		return nil, &grid.Unreadable{
			Reason: "the workbook is in a form that no spreadsheet program writes today",
			Advice: "open it in a spreadsheet program and save it as .xlsx",
		}
	}
	return book, err
}

// read reads with the scanner; quick is false only where a test wants every
// cell to go the long way.
func read(file string, data []byte, directory *zip.Reader, lim grid.Limits, quick bool) (*grid.Book, error) {
	a, err := openArchive(data, directory, lim)
	if err != nil {
		return nil, err
	}
	w, err := readWorkbook(a)
	if err != nil {
		return nil, err
	}
	r := &reader{
		archive: a,
		lim:     lim,
		quick:   quick,
		date904: w.date904,
		book:    &grid.Book{File: file, Format: grid.XLSX},
	}
	if a.has("xl/vbaProject.bin") {
		r.book.Format = grid.XLSM
	}
	if err := r.common(w); err != nil {
		return nil, err
	}
	for _, sh := range w.sheets {
		if err := lim.Check(); err != nil {
			return nil, err
		}
		if err := r.sheet(sh); err != nil {
			return nil, inSheet(sh.name, err)
		}
	}
	return r.book, nil
}

// inSheet adds the sheet to an error that does not name it by its part.
func inSheet(name string, err error) error {
	var u *grid.Unreadable
	if errors.As(err, &u) {
		return &grid.Unreadable{Reason: fmt.Sprintf("sheet %q: %s", name, u.Reason), Advice: u.Advice}
	}
	return err
}

// A reader holds what the sheets of one workbook share.
type reader struct {
	archive *archive
	lim     grid.Limits
	quick   bool
	date904 bool // days count from 1 January 1904
	strings *stringTable
	styles  []style
	book    *grid.Book

	rows, cells, merges int
	text                int64
	maker               grid.Maker
}

// common reads the parts that all sheets refer to.
func (r *reader) common(w *workbook) error {
	r.strings = &stringTable{}
	if w.strings != "" {
		s, err := r.archive.open(w.strings)
		if err != nil {
			return err
		}
		defer s.release()
		if r.strings, err = readStrings(s); err != nil {
			return err
		}
	}
	if w.styles != "" {
		s, err := r.archive.open(w.styles)
		if err != nil {
			return err
		}
		defer s.release()
		if r.styles, err = readStyles(s); err != nil {
			return err
		}
	}
	return nil
}

func (r *reader) note(sheet string, row, col int, format string, args ...any) {
	const most = 200 // remarks of one book; a damaged habit repeats itself
	if len(r.book.Notes) < most {
		r.book.Notes = append(r.book.Notes, grid.Note{Sheet: sheet, Row: row, Col: col, Text: fmt.Sprintf(format, args...)})
	}
}
