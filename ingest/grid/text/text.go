// Package text reads delimited text - csv, tsv and what calls itself so -
// into plain cells, whatever its encoding, delimiter and line ends.
//
// Every cell is text as written: whether "1,500" is a number, and which, the
// file alone does not say.
package text

import (
	"fmt"
	"path"
	"strings"

	"lineaudit/ingest/grid"
)

// Read reads the text in data as one sheet named like the file. encoding is
// the name of the encoding, "" to find it out; a byte order mark counts more
// than either. Rows are numbered as a spreadsheet would number them when it
// opens the file: empty lines count, a quoted line end does not.
//
// Its error is an *grid.Unreadable, what lim.Stop returned, or one wrapping
// ErrEncoding.
func Read(file string, data []byte, lim grid.Limits, encoding string) (*grid.Book, error) {
	if lim.MaxBytes > 0 && int64(len(data)) > lim.MaxBytes {
		return nil, grid.TooLarge("%d bytes, the limit is %d", len(data), lim.MaxBytes)
	}
	text, notes, err := decode(data, encoding)
	if err != nil {
		return nil, err
	}
	book := &grid.Book{File: file, Format: grid.Text}
	for _, n := range notes {
		book.Notes = append(book.Notes, grid.Note{Text: n})
	}
	text, delimiter := separatorLine(text)
	if delimiter == 0 {
		delimiter = findDelimiter(text)
	}
	sp := splitter{text: text, delimiter: delimiter}
	if sp.dittos = dittos(text, delimiter); sp.dittos {
		book.Notes = append(book.Notes, grid.Note{Text: `a cell that holds a single " was read as a ditto mark, not as the start of quoted text`})
	}
	base := path.Base(file)
	sheet := &grid.Sheet{Name: strings.TrimSuffix(base, path.Ext(base))}
	if err := fill(sheet, &sp, lim); err != nil {
		return nil, err
	}
	if sp.stray > 0 {
		book.Notes = append(book.Notes, grid.Note{
			Sheet: sheet.Name, Row: sp.strayRow, Col: sp.strayCol,
			Text: fmt.Sprintf(`%d cells begin with a " that is not closed as the rules of such files ask (here is the first); they were cut at the next delimiter`, sp.stray),
		})
	}
	book.Sheets = []*grid.Sheet{sheet}
	return book, nil
}

// fill takes the records into the sheet.
func fill(sheet *grid.Sheet, sp *splitter, lim grid.Limits) error {
	var (
		fields []string
		cells  int
		size   int64
		maker  grid.Maker
		inRow  []grid.Placed
	)
	for number := 1; ; number++ {
		var ok bool
		if fields, ok = sp.next(fields[:0]); !ok {
			return nil
		}
		if sp.wide {
			return grid.TooLarge("row %d has more than %d cells", number, maxCol)
		}
		if number&0x3ff == 0 {
			if err := lim.Check(); err != nil {
				return err
			}
		}
		inRow = inRow[:0]
		for i, f := range fields {
			f = unwrapped(f)
			if f == "" {
				continue
			}
			if lim.MaxCellText > 0 && len(f) > lim.MaxCellText {
				return grid.TooLarge("a text of more than %d bytes in row %d", lim.MaxCellText, number)
			}
			size += int64(len(f))
			if cells++; lim.MaxCells > 0 && cells > lim.MaxCells {
				return grid.TooLarge("more than %d cells", lim.MaxCells)
			}
			inRow = append(inRow, grid.Placed{Cell: maker.Of(grid.Cell{Kind: grid.String, Text: f}), Col: i + 1})
		}
		if lim.MaxText > 0 && size > lim.MaxText {
			return grid.TooLarge("more than %d MiB of text", lim.MaxText>>20)
		}
		if len(inRow) > 0 {
			sheet.Rows = append(sheet.Rows, maker.Row(number, inRow))
			if lim.MaxRows > 0 && len(sheet.Rows) > lim.MaxRows {
				return grid.TooLarge("more than %d rows", lim.MaxRows)
			}
		}
	}
}

// unwrapped undoes ="0012", by which exporters keep a spreadsheet from taking
// a text for a number.
func unwrapped(f string) string {
	if len(f) > 3 && strings.HasPrefix(f, `="`) && strings.IndexByte(f[2:], '"') == len(f)-3 {
		return f[2 : len(f)-1]
	}
	return f
}
