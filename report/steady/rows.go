package steady

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io"
	"io/fs"
)

// Rows writes the rows of a sheet that follow those it has already. It is
// asked for them when the sheet goes to the file, so that none of them is held.
type Rows func(w *RowWriter) error

const rowsEnd = "</sheetData>"

// A splicer is the zip that the library writes to: it puts rows into the parts
// of sheets that were written without them.
type splicer struct {
	*zip.Writer
	later map[string]Rows // by part
	part  string          // the sheet at hand, "" for none
	sheet bytes.Buffer    // what it has already
}

func (z *splicer) Create(name string) (io.Writer, error) {
	if err := z.finish(); err != nil {
		return nil, err
	}
	if z.later[name] == nil {
		return z.Writer.Create(name)
	}
	z.part = name
	return &z.sheet, nil
}

func (z *splicer) AddFS(f fs.FS) error {
	if err := z.finish(); err != nil {
		return err
	}
	return z.Writer.AddFS(f)
}

func (z *splicer) Close() error {
	if err := z.finish(); err != nil {
		z.Writer.Close()
		return err
	}
	return z.Writer.Close()
}

// finish writes the sheet at hand with its rows.
func (z *splicer) finish() error {
	if z.part == "" {
		return nil
	}
	rows := z.later[z.part]
	w, err := z.Writer.Create(z.part)
	if err != nil {
		return err
	}
	text := z.sheet.Bytes()
	end := bytes.LastIndex(text, []byte(rowsEnd))
	if end < 0 {
		return fmt.Errorf("%s has no rows", z.part)
	}
	if _, err := w.Write(text[:end]); err != nil {
		return err
	}
	r := &RowWriter{to: w}
	if err := rows(r); err != nil {
		return err
	}
	r.xml = append(r.xml, text[end:]...)
	err = r.flush()
	z.part = ""
	z.sheet.Reset()
	return err
}

func sheetPart(id int) string { return fmt.Sprintf("xl/worksheets/sheet%d.xml", id) }
