// Package xls reads workbooks of the binary kind: Excel 97-2003 (BIFF8) and
// Excel 5.0/95 (BIFF5), by the record layouts that [MS-XLS] publishes and, for
// BIFF5, the OpenOffice.org documentation of the Excel file format.
package xls

import (
	"errors"
	"fmt"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/budget"
)

// Read reads the bytes of one .xls file. Every value is the one stored in the
// file; nothing is recalculated. The error is a *grid.Unreadable or comes from
// lim.Stop.
// Size and SHA256 of the book are left to the caller.
func Read(file string, data []byte, lim grid.Limits) (*grid.Book, error) {
	if lim.MaxBytes > 0 && int64(len(data)) > lim.MaxBytes {
		return nil, grid.TooLarge("%d bytes, the limit is %d", len(data), lim.MaxBytes)
	}
	stream, err := workbookStream(file, data)
	if err != nil {
		return nil, err
	}
	w, err := readGlobals(stream, lim)
	if err != nil {
		return nil, err
	}
	book := &grid.Book{File: file, Format: grid.XLS, Notes: w.notes}
	spent := budget.New(lim)
	for i, b := range w.sheets {
		if b.kind != worksheet {
			book.Notes = append(book.Notes, grid.Note{Sheet: b.name, Text: b.kind.String() + " left out"})
			continue
		}
		if err := spent.Sheet(); err != nil {
			return nil, err
		}
		s, notes, err := w.readSheet(b, w.filters[i], spent)
		if err != nil {
			return nil, inSheet(b.name, err)
		}
		book.Sheets = append(book.Sheets, s)
		book.Notes = append(book.Notes, notes...)
	}
	return book, nil
}

// inSheet says which sheet an error was met in.
func inSheet(name string, err error) error {
	if d, ok := errors.AsType[*damage](err); ok {
		return grid.Damaged("sheet %q: %s", name, d.what)
	}
	return err
}

// damage is a contradiction within one stream; it becomes a *grid.Unreadable
// where the sheet's name is known.
type damage struct{ what string }

func (d *damage) Error() string { return d.what }

func damaged(format string, args ...any) error {
	return &damage{fmt.Sprintf(format, args...)}
}
