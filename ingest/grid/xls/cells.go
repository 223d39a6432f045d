package xls

import (
	"math"
	"unicode/utf16"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/numfmt"
)

// date1904Days is how far the two date systems are apart.
const date1904Days = 1462

// readCell takes in one cell record. All begin with row, column and, but for
// MulRk, the index of an XF record.
func (r *sheetReader) readCell(rec record) error {
	if err := rec.need(6); err != nil {
		return err
	}
	d := rec.data
	row, col, xf := int(u16(d))+1, int(u16(d[2:]))+1, int(u16(d[4:]))
	body := d[6:]
	need := map[uint16]int{recLabelSST: 4, recNumber: 8, recRK: 4, recBoolErr: 2, recFormula: 14}
	if err := rec.need(6 + need[rec.id]); err != nil {
		return err
	}
	switch rec.id {
	case recLabelSST:
		i := int(u32(body))
		if i >= len(r.w.strings) {
			return damaged("%s refers to shared text %d of %d", grid.A1(row, col), i+1, len(r.w.strings))
		}
		return r.addText(row, col, xf, r.w.strings[i], false)
	case recLabel, recRString:
		s, err := r.w.labelText(body, rec.id == recRString)
		if err != nil {
			return err
		}
		return r.addText(row, col, xf, s, false)
	case recNumber:
		return r.add(row, col, r.w.number(xf, float(body)))
	case recRK:
		return r.add(row, col, r.w.number(xf, rk(body)))
	case recMulRk:
		return r.readMulRk(row, col, d[4:])
	case recBoolErr:
		return r.add(row, col, r.w.boolOrError(xf, body[0], body[1] != 0))
	case recFormula:
		return r.readFormula(row, col, xf, body)
	}
	return nil
}

// readMulRk reads the numbers of adjacent cells: an XF index and a number for
// each, then the last column.
func (r *sheetReader) readMulRk(row, col int, d []byte) error {
	for ; len(d) >= 8; d = d[6:] {
		if err := r.add(row, col, r.w.number(int(u16(d)), rk(d[2:]))); err != nil {
			return err
		}
		col++
	}
	return nil
}

// extra is a format as cells hold it.
func extra(f *numfmt.Format) grid.Shared { return grid.Extra{Format: f.Code()}.Share() }

// A pendingText is a formula whose text is still to come.
type pendingText struct{ row, col, xf int }

// readFormula reads the stored result of a formula ([MS-XLS] 2.5.133).
func (r *sheetReader) readFormula(row, col, xf int, body []byte) error {
	v := body[:8]
	if u16(v[6:]) != 0xffff {
		c := r.w.number(xf, float(v))
		if c.Number == 0 && r.w.makesText(body) {
			c = grid.Cell{Kind: grid.NoValue, Extra: c.Extra, Struck: c.Struck}
		}
		c.Formula = true
		return r.add(row, col, c)
	}
	var c grid.Cell
	switch v[0] {
	case 0:
		r.pending = &pendingText{row, col, xf}
		return nil
	case 1, 2:
		c = r.w.boolOrError(xf, v[2], v[0] == 2)
		c.Formula = true
	case 3: // an empty text
		return nil
	default:
		c = grid.Cell{Kind: grid.NoValue, Formula: true, Extra: extra(r.w.format(xf))}
	}
	return r.add(row, col, c)
}

// readString gives the pending formula its text.
func (r *sheetReader) readString(rec record) error {
	pieces, err := r.s.pieces(rec)
	if err != nil {
		return err
	}
	p := r.pending
	if p == nil {
		return nil
	}
	r.pending = nil
	var text string
	if r.w.biff8 {
		if err := rec.need(3); err != nil {
			return err
		}
		in := &pieceReader{pieces: pieces, pos: 3}
		var ok bool
		if text, ok = in.characters(int(u16(rec.data)), rec.data[2]&1 != 0); !ok {
			return damaged("the text of the formula in %s is cut off", grid.A1(p.row, p.col))
		}
	} else if text, err = r.w.text(rec.data, 2); err != nil {
		return err
	}
	return r.addText(p.row, p.col, p.xf, richString{text: text}, true)
}

// flushPending places a formula whose text never came.
func (r *sheetReader) flushPending() error {
	p := r.pending
	if p == nil {
		return nil
	}
	r.pending = nil
	return r.add(p.row, p.col, grid.Cell{Kind: grid.NoValue, Formula: true, Extra: extra(r.w.format(p.xf))})
}

// addText places a text, unless it is empty.
func (r *sheetReader) addText(row, col, xf int, s richString, formula bool) error {
	s.text = clean(s.text)
	if s.text == "" {
		return nil
	}
	f := r.w.format(xf)
	shown, hidden := f.ShowText(s.text)
	c := grid.Cell{Kind: grid.String, Text: shown, Extra: extra(f), Formula: formula}
	if hidden {
		r.remark(row, col, "the number format hides this text; it was read all the same")
	}
	c.Strike(r.w.struck(s, r.w.struckXF(xf)))
	return r.add(row, col, c)
}

// labelText reads the text of a Label or RString record, behind the XF index.
func (w *workbook) labelText(b []byte, rich bool) (richString, error) {
	if w.biff8 {
		text, err := unicode8(b, 2)
		if err != nil || !rich {
			return richString{text: text}, err
		}
		used := 3 + int(u16(b))*(1+int(b[2]&1))
		return richString{text: text, runs: runs8(b[min(used, len(b)):])}, nil
	}
	raw, rest, err := bytes5(b, 2)
	if err != nil {
		return richString{}, err
	}
	s := richString{text: w.decode(raw)}
	if rich && len(rest) > 0 {
		for pairs := rest[1:]; len(pairs) >= 2 && len(s.runs) < int(rest[0]); pairs = pairs[2:] {
			start := min(int(pairs[0]), len(raw))
			units := len(utf16.Encode([]rune(w.decode(raw[:start]))))
			s.runs = append(s.runs, fontRun{uint16(min(units, 1<<16-1)), uint16(pairs[1])})
		}
	}
	return s, nil
}

// runs8 reads the runs behind the text of a BIFF8 RString record.
func runs8(b []byte) []fontRun {
	if len(b) < 2 {
		return nil
	}
	n := int(u16(b))
	var out []fontRun
	for b = b[2:]; len(b) >= 4 && len(out) < n; b = b[4:] {
		out = append(out, fontRun{u16(b), u16(b[2:])})
	}
	return out
}

// number returns a number or, by its format, a date.
func (w *workbook) number(xf int, v float64) grid.Cell {
	f := w.format(xf)
	c := grid.Cell{Kind: grid.Number, Number: v, Extra: extra(f)}
	if w.struckXF(xf) {
		c.Struck = grid.WholeStruck
	}
	if w.date1904 && f.IsCalendar() {
		c.Number += date1904Days
	}
	if math.IsNaN(v) || math.IsInf(v, 0) { // no spreadsheet program stores these
		c.Kind, c.Number, c.Text = grid.Error, 0, "#NUM!"
		return c
	}
	if f.IsDate() {
		c.Kind = grid.Date
	}
	c.Text = f.Text(c.Number)
	return c
}

// boolOrError returns a truth value or an error value.
func (w *workbook) boolOrError(xf int, v byte, isError bool) grid.Cell {
	c := grid.Cell{Kind: grid.Boolean, Text: "FALSE", Extra: extra(w.format(xf))}
	switch {
	case isError:
		c.Kind, c.Text = grid.Error, errorText(v)
	case v != 0:
		c.Number, c.Text = 1, "TRUE"
	}
	if w.struckXF(xf) {
		c.Struck = grid.WholeStruck
	}
	return c
}

// errorText names an error value ([MS-XLS] 2.5.10).
func errorText(v byte) string {
	switch v {
	case 0x00:
		return "#NULL!"
	case 0x07:
		return "#DIV/0!"
	case 0x0f:
		return "#VALUE!"
	case 0x17:
		return "#REF!"
	case 0x1d:
		return "#NAME?"
	case 0x24:
		return "#NUM!"
	case 0x2a:
		return "#N/A"
	}
	return "#ERR!"
}
