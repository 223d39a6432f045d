package xls

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/budget"
)

// A sheetReader gathers one sheet.
type sheetReader struct {
	w        *workbook
	s        recordStream
	spent    *budget.Budget
	sheet    *grid.Sheet
	rows     []sheetRow       // as they come
	rowAt    map[int]int      // row number to index in rows
	hidden   map[int]rowState // by row number: whether its Row record hides it
	hideAll  bool             // rows without a Row record are hidden
	arrows   bool             // the sheet has a filter; its name may outlive it
	filtered bool             // some rows are hidden by a filter now
	pending  *pendingText     // a formula whose text follows in a String record
	object   int              // number of the drawing object read last, -1 if none
	notes    sheetNotes       // comments on cells
	remarks  []grid.Note      // ours, for the person who reads the audit
	folded   bool             // something is folded away in an outline group
	unsorted bool             // cells came out of order
}

// A sheetRow is a row that is being gathered.
type sheetRow struct {
	number int
	cells  []grid.Placed
}

// readSheet reads the sheet that an entry of the list points to.
func (w *workbook) readSheet(e sheetEntry, filter grid.Range, spent *budget.Budget) (*grid.Sheet, []grid.Note, error) {
	r := &sheetReader{
		w: w, spent: spent, object: -1,
		s:      recordStream{b: w.stream, pos: e.start},
		sheet:  &grid.Sheet{Name: e.name, Hidden: e.hidden, Filtered: filter},
		rowAt:  map[int]int{},
		hidden: map[int]rowState{},
		notes:  newSheetNotes(),
	}
	if err := r.readAll(); err != nil {
		return nil, nil, err
	}
	if err := r.finish(); err != nil {
		return nil, nil, err
	}
	return r.sheet, r.remarks, nil
}

// readAll reads the records from the sheet's BOF to its EOF.
func (r *sheetReader) readAll() error {
	bof, err := r.s.next()
	if err != nil || bof.id != recBOF {
		return damaged("it does not begin where the list of sheets says")
	}
	for depth := 0; ; {
		rec, err := r.s.next()
		if errors.Is(err, io.EOF) {
			return damaged("the stream ends before the sheet does")
		}
		if err != nil {
			return err
		}
		if err := r.spent.Step(); err != nil {
			return err
		}
		switch {
		case rec.id == recBOF: // a chart within the sheet
			depth++
		case rec.id == recEOF && depth == 0:
			return nil
		case rec.id == recEOF:
			depth--
		case depth == 0:
			if err := r.read(rec); err != nil {
				return err
			}
		}
	}
}

// read takes in one record of the sheet itself.
func (r *sheetReader) read(rec record) error {
	switch rec.id {
	case recInteger2, recNumber2, recLabel2, recBoolErr2:
		return damaged("it holds cells in the way of Excel 2 among others")
	case recFormula3, recFormula4:
		rec.id = recFormula
	}
	switch rec.id {
	case recLabelSST, recLabel, recRString, recNumber, recRK, recMulRk, recBoolErr, recFormula:
		if err := r.flushPending(); err != nil {
			return err
		}
		return r.readCell(rec)
	case recString:
		return r.readString(rec)
	case recRow:
		if err := rec.need(14); err != nil {
			return err
		}
		const level, zeroHeight = 0x07, 0x20
		r.hidden[int(u16(rec.data))+1] = rowState{rec.data[12]&zeroHeight != 0, rec.data[12]&level != 0}
	case recDefaultHeight:
		const zeroHeight = 0x02
		r.hideAll = len(rec.data) >= 4 && rec.data[0]&zeroHeight != 0
	case recColInfo:
		return r.readColumns(rec)
	case recMergeCells:
		return r.readMerges(rec)
	case recFilterMode:
		r.filtered, r.arrows = true, true
	case recFilterInfo:
		r.arrows = true
	case recUncalced:
		r.remark(0, 0, "its formulas were not recalculated before the workbook was saved")
	case recObj:
		r.object = objectNumber(rec.data)
	case recTxO:
		return r.readObjectText(rec)
	case recNote:
		return r.readNote(rec)
	}
	return nil
}

// add places a cell that holds v. row and col count from 1.
func (r *sheetReader) add(row, col int, v grid.Cell) error {
	if err := r.spent.Cell(&v); err != nil {
		return err
	}
	i, ok := r.rowAt[row]
	if !ok {
		if err := r.spent.Row(); err != nil {
			return err
		}
		i = len(r.rows)
		r.rowAt[row] = i
		r.rows = append(r.rows, sheetRow{number: row})
		if i > 0 && r.rows[i-1].number > row {
			r.unsorted = true
		}
	}
	cells := r.rows[i].cells
	if n := len(cells); n > 0 && cells[n-1].Col >= col {
		r.unsorted = true
	}
	r.rows[i].cells = append(cells, grid.Placed{Cell: r.w.maker.Of(v), Col: col})
	return nil
}

// finish puts rows, notes, merges and hiding in order.
func (r *sheetReader) finish() error {
	if err := r.flushPending(); err != nil {
		return err
	}
	if r.unsorted {
		r.sortCells()
	}
	if err := r.attachNotes(); err != nil {
		return err
	}
	if !r.arrows {
		r.sheet.Filtered = grid.Range{}
	}
	r.sheet.Rows = make([]grid.Row, len(r.rows))
	for i, row := range r.rows {
		r.sheet.Rows[i] = r.w.maker.Row(row.number, row.cells)
		r.sheet.Rows[i].Hidden = r.hiding(row.number)
		r.rows[i].cells = nil
	}
	r.sheet.HiddenCols = joinSpans(r.sheet.HiddenCols)
	if r.folded {
		r.remark(0, 0, "rows or columns are folded away in an outline group; they were read as if shown")
	}
	return nil
}

// sortCells orders rows and cells. Of two records for one cell the later
// holds, as it does when a spreadsheet program loads the file.
func (r *sheetReader) sortCells() {
	slices.SortFunc(r.rows, func(a, b sheetRow) int { return a.number - b.number })
	twice, first := 0, place{}
	for i := range r.rows {
		row := &r.rows[i]
		slices.SortStableFunc(row.cells, func(a, b grid.Placed) int { return a.Col - b.Col })
		kept := row.cells[:0]
		for j, c := range row.cells {
			if j+1 < len(row.cells) && row.cells[j+1].Col == c.Col {
				if twice++; twice == 1 {
					first = place{row.number, c.Col}
				}
				continue
			}
			kept = append(kept, c)
		}
		row.cells = kept
		r.rowAt[row.number] = i
	}
	if twice > 0 {
		r.remark(first.row, first.col, fmt.Sprintf("%d cells are stored twice, this one first; the later value was taken", twice))
	}
}

// maxRemarks bounds the remarks on one sheet.
const maxRemarks = 200

// remark tells the person who reads the audit about a place; row and col are
// 0 for the whole sheet.
func (r *sheetReader) remark(row, col int, text string) {
	if len(r.remarks) < maxRemarks {
		r.remarks = append(r.remarks, grid.Note{Sheet: r.sheet.Name, Row: row, Col: col, Text: text})
	}
}

// A rowState is what a Row record says of hiding.
type rowState struct {
	hidden  bool
	outline bool // the row is in an outline group
}

// hiding says how a row is hidden. While a filter is on, rows in its area but
// the first, which is its header, are hidden by it; where the file does not
// say the area, all are.
func (r *sheetReader) hiding(row int) grid.Hiding {
	state, ok := r.hidden[row]
	if !ok {
		state.hidden = r.hideAll
	}
	f := r.sheet.Filtered
	switch {
	case !state.hidden:
		return grid.Shown
	case r.filtered && (f == grid.Range{} || f.Row1 < row && row <= f.Row2):
		return grid.HiddenByFilter
	case state.outline:
		r.folded = true
		return grid.HiddenByOutline
	}
	return grid.HiddenByHand
}

// readColumns notes the columns of a ColInfo record that are hidden or have
// no width. Those of an outline group are only folded away.
func (r *sheetReader) readColumns(rec record) error {
	if err := rec.need(10); err != nil {
		return err
	}
	d := rec.data
	first, last, flags := int(u16(d))+1, int(u16(d[2:]))+1, u16(d[8:])
	const hidden, level = 1, 0x0700
	switch {
	case flags&hidden == 0 && u16(d[4:]) != 0 || first > last:
	case flags&level != 0:
		r.folded = true
	default:
		r.sheet.HiddenCols = append(r.sheet.HiddenCols, grid.Span{First: first, Last: last})
	}
	return nil
}

// joinSpans orders spans and joins those that touch.
func joinSpans(in []grid.Span) []grid.Span {
	slices.SortFunc(in, func(a, b grid.Span) int { return a.First - b.First })
	var out []grid.Span
	for _, s := range in {
		if n := len(out); n > 0 && s.First <= out[n-1].Last+1 {
			out[n-1].Last = max(out[n-1].Last, s.Last)
			continue
		}
		out = append(out, s)
	}
	return out
}

func (r *sheetReader) readMerges(rec record) error {
	if err := rec.need(2); err != nil {
		return err
	}
	n := int(u16(rec.data))
	if err := rec.need(2 + 8*n); err != nil {
		return err
	}
	for d := rec.data[2 : 2+8*n]; len(d) > 0; d = d[8:] {
		m := grid.Range{
			Row1: int(u16(d)) + 1, Row2: int(u16(d[2:])) + 1,
			Col1: int(u16(d[4:])) + 1, Col2: int(u16(d[6:])) + 1,
		}
		if m.Row2 < m.Row1 || m.Col2 < m.Col1 || m.Row1 == m.Row2 && m.Col1 == m.Col2 {
			continue // merges nothing
		}
		if err := r.spent.Merge(); err != nil {
			return err
		}
		r.sheet.Merges = append(r.sheet.Merges, m)
	}
	return nil
}

// clean drops the NUL characters that some exporters end texts with, and makes
// all line ends alike.
func clean(s string) string {
	s = strings.TrimRight(s, "\x00")
	if !strings.Contains(s, "\r") {
		return s
	}
	return strings.ReplaceAll(strings.ReplaceAll(s, "\r\n", "\n"), "\r", "\n")
}
