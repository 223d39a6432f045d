package steady

import (
	"archive/zip"
	"bytes"
	"fmt"
	"io"
	"io/fs"

	"github.com/xuri/excelize/v2"
)

// Rows writes the rows of a sheet that follow those it has already. It is
// asked for them when the sheet goes to the file, so that no more than one
// sheet's rows are held at a time.
type Rows func(s *excelize.StreamWriter) error

const (
	rowsEnd   = "</sheetData>"
	rowsBegin = "<sheetData>"
)

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
	if err := writeRows(w, rows); err != nil {
		return err
	}
	_, err = w.Write(text[end:])
	z.part = ""
	z.sheet.Reset()
	return err
}

// writeRows has the library write the rows to a sheet of their own, and takes
// them out of it.
func writeRows(w io.Writer, rows Rows) error {
	f := excelize.NewFile()
	defer f.Close()
	s, err := f.NewStreamWriter("Sheet1")
	if err != nil {
		return err
	}
	if err := rows(s); err != nil {
		return err
	}
	if err := s.Flush(); err != nil {
		return err
	}
	cut := &cutter{to: w}
	f.SetZipWriter(func(io.Writer) excelize.ZipWriter { return rowsOf{cut} })
	if _, err := f.WriteTo(io.Discard); err != nil {
		return err
	}
	return cut.finish()
}

// rowsOf is a zip that keeps the rows of the first sheet alone.
type rowsOf struct{ cut *cutter }

func (r rowsOf) Create(name string) (io.Writer, error) {
	if name == sheetPart(1) {
		return r.cut, nil
	}
	return io.Discard, nil
}

func (rowsOf) AddFS(fs.FS) error { return nil }
func (rowsOf) Close() error      { return nil }

func sheetPart(id int) string { return fmt.Sprintf("xl/worksheets/sheet%d.xml", id) }

// A cutter passes on what stands between the tags around the rows of a sheet.
// What follows the rows is short: it is looked for at the end alone.
type cutter struct {
	to    io.Writer
	begun bool
	held  []byte
}

// tail is more than what the library writes behind the rows.
const tail = 1 << 16

func (c *cutter) Write(p []byte) (int, error) {
	c.held = append(c.held, p...)
	if !c.begun {
		i := bytes.Index(c.held, []byte(rowsBegin))
		if i < 0 {
			return len(p), nil
		}
		c.begun, c.held = true, c.held[i+len(rowsBegin):]
	}
	if n := len(c.held) - tail; n > tail {
		if _, err := c.to.Write(c.held[:n]); err != nil {
			return 0, err
		}
		c.held = append(c.held[:0], c.held[n:]...)
	}
	return len(p), nil
}

func (c *cutter) finish() error {
	end := bytes.LastIndex(c.held, []byte(rowsEnd))
	if !c.begun || end < 0 {
		return fmt.Errorf("rows of a sheet were lost")
	}
	_, err := c.to.Write(c.held[:end])
	return err
}
