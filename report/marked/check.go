package marked

import (
	"archive/zip"
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"path"
	"strconv"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/report"
)

// check reads a copy back: every part that was there is there, every changed
// part is well-formed with its namespaces bound, every value is in its place.
func check(copied []byte, src Source) error {
	before, err := zip.NewReader(bytes.NewReader(src.Data), int64(len(src.Data)))
	if err != nil {
		return err
	}
	after, err := zip.NewReader(bytes.NewReader(copied), int64(len(copied)))
	if err != nil {
		return fmt.Errorf("the copy cannot be opened: %w", err)
	}
	is := map[string]bool{}
	for _, f := range after.File {
		is[f.Name] = true
	}
	was := map[string]uint32{}
	for _, f := range before.File {
		if !is[slashed(f.Name)] {
			return fmt.Errorf("the copy would lose the part %s", f.Name)
		}
		was[slashed(f.Name)] = f.CRC32
	}
	for _, f := range after.File {
		if sum, ok := was[f.Name]; ok && sum == f.CRC32 {
			continue
		}
		if ext := strings.ToLower(path.Ext(f.Name)); ext != ".xml" && ext != ".rels" {
			continue
		}
		if err := wellFormed(f); err != nil {
			return fmt.Errorf("the copy's part %s would be damaged: %w", f.Name, err)
		}
	}
	book, err := src.Read(copied)
	if err != nil {
		return fmt.Errorf("the copy cannot be read back: %w", err)
	}
	return sameValues(src.Book, book)
}

// checkFresh reads the copy of a file that is no .xlsx back: every number and
// text is in its place.
func checkFresh(copied []byte, src Source, names map[string]string) error {
	book, err := src.Read(copied)
	if err != nil {
		return fmt.Errorf("the copy cannot be read back: %w", err)
	}
	sheets := byName(book)
	seen := map[string]bool{}
	for _, s := range src.Book.Sheets {
		if seen[s.Name] {
			continue
		}
		seen[s.Name] = true
		t := sheets[names[s.Name]]
		if t == nil {
			return fmt.Errorf("the copy would lose the sheet %q", s.Name)
		}
		rows := byNumber(t)
		for i := range s.Rows {
			r := &s.Rows[i]
			for c := range r.Cells() {
				if r.Number > maxSheetRows || c.Col > maxSheetCols || c.Kind == grid.Blank || c.Kind == grid.NoValue {
					continue
				}
				var copied *grid.Cell
				if other := rows[r.Number]; other != nil {
					copied = other.Cell(c.Col)
				}
				if valueOf(c.Cell) != valueOf(copied) {
					return fmt.Errorf("the copy would change %s!%s", s.Name, grid.A1(r.Number, c.Col))
				}
			}
		}
	}
	return nil
}

// valueOf is what a cell says, whatever its kind is called.
func valueOf(c *grid.Cell) string {
	switch {
	case c == nil:
		return ""
	case c.Kind == grid.Number || c.Kind == grid.Date || c.Kind == grid.Boolean:
		return strconv.FormatFloat(c.Number, 'g', -1, 64)
	}
	return report.CellText(c.Text)
}

func byName(b *grid.Book) map[string]*grid.Sheet {
	out := map[string]*grid.Sheet{}
	for _, s := range b.Sheets {
		if out[s.Name] == nil {
			out[s.Name] = s
		}
	}
	return out
}

func byNumber(s *grid.Sheet) map[int]*grid.Row {
	out := make(map[int]*grid.Row, len(s.Rows))
	for i := range s.Rows {
		out[s.Rows[i].Number] = &s.Rows[i]
	}
	return out
}

// wellFormed reads a part to its end and checks that every prefix is bound. The
// rows of a sheet, which no copy changes, are left to the reader of cells.
func wellFormed(f *zip.File) error {
	rc, err := f.Open()
	if err != nil {
		return err
	}
	defer rc.Close()
	part, err := io.ReadAll(io.LimitReader(rc, maxPart+(64<<20)))
	if err != nil {
		return err
	}
	from, to := rowsOf(part)
	d := xml.NewDecoder(io.MultiReader(bytes.NewReader(part[:from]), bytes.NewReader(part[to:])))
	d.CharsetReader = func(_ string, r io.Reader) (io.Reader, error) { return r, nil }
	bound := map[string]int{"xml": 1, "": 1}
	var stack [][]string
	for {
		tok, err := d.RawToken()
		if err == io.EOF {
			if len(stack) > 0 {
				return io.ErrUnexpectedEOF
			}
			return nil
		}
		if err != nil {
			return err
		}
		switch t := tok.(type) {
		case xml.StartElement:
			var here []string
			for _, a := range t.Attr {
				if a.Name.Space == "xmlns" {
					here = append(here, a.Name.Local)
					bound[a.Name.Local]++
				}
			}
			stack = append(stack, here)
			if bound[t.Name.Space] == 0 {
				return fmt.Errorf("the prefix %q is not bound", t.Name.Space)
			}
			for _, a := range t.Attr {
				if a.Name.Space != "xmlns" && bound[a.Name.Space] == 0 {
					return fmt.Errorf("the prefix %q is not bound", a.Name.Space)
				}
			}
		case xml.EndElement:
			if len(stack) == 0 {
				return fmt.Errorf("</%s> without its start", t.Name.Local)
			}
			for _, p := range stack[len(stack)-1] {
				bound[p]--
			}
			stack = stack[:len(stack)-1]
		}
	}
}

// sameValues compares every cell of the original with the copy.
func sameValues(before, after *grid.Book) error {
	sheets := byName(after)
	for _, s := range before.Sheets {
		t := sheets[s.Name]
		if t == nil {
			return fmt.Errorf("the copy would lose the sheet %q", s.Name)
		}
		rows := byNumber(t)
		for i := range s.Rows {
			r := &s.Rows[i]
			other := rows[r.Number]
			for c := range r.Cells() {
				var d *grid.Cell
				if other != nil {
					d = other.Cell(c.Col)
				}
				if c.Kind == grid.Blank {
					continue
				}
				if d == nil || d.Kind != c.Kind || d.Text != c.Text || d.Number != c.Number && c.Number == c.Number || d.Extra != c.Extra && d.Format() != c.Format() || d.Formula != c.Formula || d.Struck != c.Struck {
					return fmt.Errorf("the copy would change %s!%s", s.Name, grid.A1(r.Number, c.Col))
				}
				if !strings.HasPrefix(d.Note(), c.Note()) {
					return fmt.Errorf("the copy would change the note on %s!%s", s.Name, grid.A1(r.Number, c.Col))
				}
			}
			if other == nil && r.Len() > 0 || other != nil && other.Hidden != r.Hidden {
				return fmt.Errorf("the copy would change row %d of %s", r.Number, s.Name)
			}
		}
		if len(s.Merges) != len(t.Merges) {
			return fmt.Errorf("the copy would change merged cells of %s", s.Name)
		}
	}
	return nil
}
