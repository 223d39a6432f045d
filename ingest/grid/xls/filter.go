package xls

import "lineaudit/ingest/grid"

// builtinFilter is the built-in name of the area of an automatic filter.
const builtinFilter = 0x0d

// readFilterName takes the area of a sheet's automatic filter from the hidden
// name that holds it ([MS-XLS] 2.4.150). Other names, and areas that are not
// a plain rectangle, are passed over: a filter's area only refines the result.
func (w *workbook) readFilterName(r record) {
	if r.need(15) != nil {
		return
	}
	d := r.data
	const builtin = 0x20
	if u16(d)&builtin == 0 || d[3] != 1 {
		return
	}
	formula := int(u16(d[4:]))
	sheet := int(u16(d[8:])) - 1
	name := d[14:]
	if w.biff8 { // a byte of flags precedes the character
		if len(name) < 2 {
			return
		}
		name = name[1:]
	}
	if name[0] != builtinFilter || len(name) < 1+formula || sheet < 0 {
		return
	}
	if area, ok := w.area(name[1 : 1+formula]); ok {
		w.filters[sheet] = area
	}
}

// area reads a formula that is one rectangle of another sheet (PtgArea3d).
func (w *workbook) area(f []byte) (grid.Range, bool) {
	const area3d = 0x1b
	if len(f) == 0 || f[0]&0x1f != area3d || f[0] < 0x20 {
		return grid.Range{}, false
	}
	var row1, row2, col1, col2 int
	switch {
	case w.biff8 && len(f) == 11:
		row1, row2 = int(u16(f[3:])), int(u16(f[5:]))
		col1, col2 = int(u16(f[7:])&0x3fff), int(u16(f[9:])&0x3fff)
	case !w.biff8 && len(f) == 21:
		row1, row2 = int(u16(f[15:])&0x3fff), int(u16(f[17:])&0x3fff)
		col1, col2 = int(f[19]), int(f[20])
	default:
		return grid.Range{}, false
	}
	if row2 < row1 || col2 < col1 {
		return grid.Range{}, false
	}
	return grid.Range{Row1: row1 + 1, Col1: col1 + 1, Row2: row2 + 1, Col2: col2 + 1}, true
}
