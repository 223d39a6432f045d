package book

import (
	"archive/zip"
	"bytes"
	"cmp"
	"fmt"
	"io"
	"slices"

	"github.com/xuri/excelize/v2"
)

// XLSX writes the book as a workbook. Formulas carry their stored values, so
// that a reader need not calculate. A non-empty password encrypts it.
func (b *Book) XLSX(w io.Writer, password string) error {
	f := excelize.NewFile()
	defer f.Close()
	looks := map[Style]int{}
	for i, s := range b.Sheets {
		if i == 0 {
			if err := f.SetSheetName("Sheet1", s.Name); err != nil {
				return fmt.Errorf("sheet %q: %w", s.Name, err)
			}
		} else if _, err := f.NewSheet(s.Name); err != nil {
			return fmt.Errorf("sheet %q: %w", s.Name, err)
		}
	}
	for _, s := range b.Sheets {
		if err := s.write(f, looks); err != nil {
			return fmt.Errorf("sheet %q: %w", s.Name, err)
		}
		if s.Hidden {
			if err := f.SetSheetVisible(s.Name, false); err != nil {
				return err
			}
		}
	}
	if password != "" {
		return f.Write(w, excelize.Options{Password: password})
	}
	var whole bytes.Buffer
	if err := f.Write(&whole); err != nil {
		return err
	}
	return inOrder(w, whole.Bytes())
}

// inOrder copies a zip with its members sorted, the list of content types
// first. The workbook library leaves several sheets in random order.
func inOrder(w io.Writer, whole []byte) error {
	in, err := zip.NewReader(bytes.NewReader(whole), int64(len(whole)))
	if err != nil {
		return err
	}
	slices.SortFunc(in.File, func(a, b *zip.File) int { return cmp.Compare(a.Name, b.Name) })
	out := zip.NewWriter(w)
	for _, m := range in.File {
		if err := out.Copy(m); err != nil {
			return err
		}
	}
	return out.Close()
}

func (s *Sheet) write(f *excelize.File, looks map[Style]int) error {
	if err := s.prepare(f); err != nil {
		return err
	}
	sw, err := f.NewStreamWriter(s.Name)
	if err != nil {
		return err
	}
	for c := 1; c <= 60; c++ {
		if w, ok := s.Widths[c]; ok {
			if err := sw.SetColWidth(c, c, w); err != nil {
				return err
			}
		}
	}
	for _, c := range s.HideCols {
		if err := sw.SetColVisible(c, c, false); err != nil {
			return err
		}
	}
	if s.FreezeRow > 0 {
		if err := sw.SetPanes(&excelize.Panes{Freeze: true, YSplit: s.FreezeRow,
			TopLeftCell: At(s.FreezeRow+1, 1), ActivePane: "bottomLeft"}); err != nil {
			return err
		}
	}
	for i, row := range s.Rows {
		if err := s.writeRow(sw, f, looks, i+1, row); err != nil {
			return err
		}
	}
	for _, m := range s.Merges {
		if err := sw.MergeCell(At(m[0], m[1]), At(m[2], m[3])); err != nil {
			return err
		}
	}
	return sw.Flush()
}

// prepare adds what must be in the sheet before its cells are streamed.
func (s *Sheet) prepare(f *excelize.File) error {
	if s.Extra != nil {
		if err := s.Extra(f, s.Name); err != nil {
			return err
		}
	}
	if a := s.FilterAt; a[0] > 0 {
		var by []excelize.AutoFilterOptions
		if s.FilterBy != "" {
			by = append(by, excelize.AutoFilterOptions{Column: Letter(s.FilterCol), Expression: s.FilterBy})
		}
		if err := f.AutoFilter(s.Name, At(a[0], a[1])+":"+At(a[2], a[3]), by); err != nil {
			return err
		}
	}
	for r, row := range s.Rows {
		for c, cell := range row {
			if cell.Note == "" {
				continue
			}
			if err := f.AddComment(s.Name, excelize.Comment{Cell: At(r+1, c+1), Author: "office",
				Paragraph: []excelize.RichTextRun{{Text: cell.Note}}}); err != nil {
				return err
			}
		}
	}
	return nil
}

func (s *Sheet) writeRow(sw *excelize.StreamWriter, f *excelize.File, looks map[Style]int, n int, row []Cell) error {
	if len(row) == 0 && !s.Hide[n] {
		return nil
	}
	values := make([]any, len(row))
	for i, c := range row {
		look, err := styleID(f, looks, c.Style)
		if err != nil {
			return err
		}
		if c.Value == nil && c.Formula == "" && len(c.Runs) == 0 {
			if look > 0 {
				values[i] = excelize.Cell{StyleID: look}
			}
			continue
		}
		out := excelize.Cell{StyleID: look, Formula: c.Formula, Value: c.Value}
		if len(c.Runs) > 0 {
			out.Value = richText(c.Runs)
		}
		values[i] = out
	}
	return sw.SetRow(At(n, 1), values, excelize.RowOpts{Hidden: s.Hide[n]})
}

func richText(runs []Run) []excelize.RichTextRun {
	out := make([]excelize.RichTextRun, len(runs))
	for i, r := range runs {
		out[i] = excelize.RichTextRun{Text: r.Text, Font: &excelize.Font{Strike: r.Strike, Family: "Calibri", Size: 11}}
	}
	return out
}

func styleID(f *excelize.File, looks map[Style]int, st Style) (int, error) {
	if st == (Style{}) {
		return 0, nil
	}
	if id, ok := looks[st]; ok {
		return id, nil
	}
	look := &excelize.Style{Font: &excelize.Font{Bold: st.Bold, Italic: st.Italic, Strike: st.Strike,
		Color: st.Color, Size: st.Size, Family: "Calibri"}}
	if st.Size == 0 {
		look.Font.Size = 11
	}
	if st.Fill != "" {
		look.Fill = excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{st.Fill}}
	}
	if st.Center || st.Wrap {
		look.Alignment = &excelize.Alignment{WrapText: st.Wrap}
		if st.Center {
			look.Alignment.Horizontal = "center"
		}
	}
	if st.Border {
		for _, side := range []string{"left", "right", "top", "bottom"} {
			look.Border = append(look.Border, excelize.Border{Type: side, Color: "808080", Style: 1})
		}
	}
	if st.Format != "" {
		format := st.Format
		look.CustomNumFmt = &format
	}
	id, err := f.NewStyle(look)
	if err != nil {
		return 0, err
	}
	looks[st] = id
	return id, nil
}
