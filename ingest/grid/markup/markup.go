// Package markup reads the two kinds of marked-up text that pass for .xls
// workbooks: SpreadsheetML 2003 (XML) and HTML tables.
package markup

import (
	"bytes"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/budget"
)

// Read reads the bytes of one file. It is SpreadsheetML when its first tag is
// an XML declaration or a Workbook, and HTML otherwise. Every value is the one
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

// isSpreadsheetML looks for the name space of SpreadsheetML near the start,
// in one byte or two a character. An HTML page of the same program names it
// too, in a comment or not, but begins otherwise.
func isSpreadsheetML(data []byte) bool {
	head := bytes.ReplaceAll(data[:min(len(data), 8192)], []byte{0}, nil)
	for _, bom := range []string{"\xef\xbb\xbf", "\xff\xfe", "\xfe\xff"} {
		head = bytes.TrimPrefix(head, []byte(bom))
	}
	head = bytes.TrimSpace(head)
	if !bytes.Contains(head, []byte("urn:schemas-microsoft-com:office:spreadsheet")) {
		return false
	}
	lower := bytes.ToLower(head)
	return !bytes.HasPrefix(lower, []byte("<html")) && !bytes.HasPrefix(lower, []byte("<!doctype")) &&
		!bytes.Contains(lower, []byte("<table border")) && bytes.Contains(head, []byte("Workbook"))
}
