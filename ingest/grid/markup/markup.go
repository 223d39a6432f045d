// Package markup reads the two kinds of marked-up text that pass for .xls
// workbooks: SpreadsheetML 2003 (XML) and HTML tables.
package markup

import (
	"bytes"
	"path"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/budget"
)

// Read reads the bytes of one file. It is SpreadsheetML when it says so near
// its start, and HTML otherwise. Every value is the one
// stored in the file. The error is a *grid.Unreadable or comes from lim.Stop.
// Size and SHA256 of the book are left to the caller.
func Read(file string, data []byte, lim grid.Limits) (*grid.Book, error) {
	if lim.MaxBytes > 0 && int64(len(data)) > lim.MaxBytes {
		return nil, grid.TooLarge("%d bytes, the limit is %d", len(data), lim.MaxBytes)
	}
	book := &grid.Book{File: file}
	spent := budget.New(lim)
	var err error
	if isSpreadsheetML(data) {
		book.Format = grid.XML2003
		err = readXML(book, data, spent)
	} else {
		book.Format = grid.HTML
		err = readHTML(book, data, spent)
	}
	if err != nil {
		return nil, err
	}
	return book, nil
}

// isSpreadsheetML looks for the name space of SpreadsheetML near the start, in
// one byte or two a character. An HTML page that a spreadsheet program saved
// may name it too.
func isSpreadsheetML(data []byte) bool {
	head := bytes.ToLower(bytes.ReplaceAll(data[:min(len(data), 8192)], []byte{0}, nil))
	has := func(s string) bool { return bytes.Contains(head, []byte(s)) }
	return has("urn:schemas-microsoft-com:office:spreadsheet") && has("workbook") && !has("<html")
}

// noTable is the error for a file that is no table; it is no loss unless the
// file's name says that it is one.
func noTable(file, reason string) error {
	claims := strings.HasPrefix(strings.ToLower(path.Ext(file)), ".xl")
	return &grid.Unreadable{
		Reason:  reason,
		Advice:  "if it holds a schedule, copy it into a workbook",
		Foreign: !claims,
	}
}
