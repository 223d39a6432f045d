package xlsx

import (
	"bytes"
	"math"
	"strconv"
	"strings"
	"time"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/numfmt"
)

// add appends a cell to the row being read.
func (r *sheetReader) add(col int, holds *grid.Cell) error {
	if r.cells++; r.lim.MaxCells > 0 && r.cells > r.lim.MaxCells {
		return grid.TooLarge("more than %d cells", r.lim.MaxCells)
	}
	r.inRow = append(r.inRow, grid.Placed{Cell: holds, Col: col})
	return nil
}

// addShown appends a cell that holds v and shows the text.
func (r *sheetReader) addShown(col int, v grid.Cell, text []byte) error {
	if err := r.count(len(text)); err != nil {
		return err
	}
	return r.add(col, r.maker.Shown(v, text))
}

// count bounds the text of the book.
func (r *sheetReader) count(n int) error {
	if r.text += int64(n); r.lim.MaxText > 0 && r.text > r.lim.MaxText {
		return grid.TooLarge("more than %d MiB of text in its cells", r.lim.MaxText>>20)
	}
	return nil
}

// style returns the format of a cell; a number that names none is plain.
func (r *sheetReader) style(c *stored) *style {
	if c.style >= 0 && c.style < len(r.styles) {
		return &r.styles[c.style]
	}
	if (c.style != 0 || len(r.styles) > 0) && !r.badStyles {
		r.badStyles = true
		r.note(r.sheet.Name, c.row, c.col, "the cell names a format that the workbook does not hold; its value is shown plain")
	}
	return &plainStyle
}

// keep files a stored cell, unless it is empty.
func (r *sheetReader) keep(c *stored) error {
	if c.typ == typeNumber && c.inline {
		c.typ = typeInline
	}
	switch c.typ {
	case typeInline:
		if c.inline {
			return r.keepInline(c)
		}
		if c.has { // some writers put the text where values go
			return r.keepText(c)
		}
	case typeShared:
		if !blankOnly(c.value) {
			return r.keepShared(c)
		}
	case typeFormula:
		if c.has { // an empty text is a result like any other
			return r.keepText(c)
		}
	default:
		if !blankOnly(c.value) {
			return r.keepValue(c)
		}
	}
	if !c.formula {
		return nil
	}
	return r.add(c.col, r.maker.Of(grid.Cell{Kind: grid.NoValue, Formula: true, Extra: r.style(c).extra}))
}

// xmlSpace is what XML takes for blanks; it may stand around any number.
const xmlSpace = " \t\r\n"

func (r *sheetReader) keepShared(c *stored) error {
	i, ok := digits(bytes.Trim(c.value, xmlSpace))
	if !ok || i >= len(r.strings.ends) {
		return r.s.broken("refers to a text that the workbook does not hold, in cell " + grid.A1(c.row, c.col))
	}
	v := grid.Cell{Text: r.strings.at(i)}
	if v.Text == "" {
		return nil
	}
	if err := r.asText(c, &v, r.strings.rich[i]); err != nil {
		return err
	}
	last := r.strings.last(i)
	if *last == nil || **last != v {
		*last = r.maker.New(v)
	}
	return r.add(c.col, *last)
}

func (r *sheetReader) keepInline(c *stored) error {
	if len(r.scratch) == 0 {
		return nil
	}
	v := grid.Cell{Text: string(r.scratch)}
	if err := r.asText(c, &v, summary(v.Text, r.runs)); err != nil {
		return err
	}
	return r.add(c.col, r.maker.Of(v))
}

func (r *sheetReader) keepText(c *stored) error {
	var ok bool
	if r.shown, ok = appendText(r.shown[:0], c.value, c.cdata); !ok {
		const reason = "holds a character or an entity that XML does not allow"
		if c.typ == typeInline {
			return r.s.broken(reason)
		}
		return r.s.broken(reason + ", in cell " + grid.A1(c.row, c.col))
	}
	if len(r.shown) == 0 {
		return nil
	}
	if r.lim.MaxCellText > 0 && len(r.shown) > r.lim.MaxCellText {
		return grid.TooLarge("a text of more than %d bytes", r.lim.MaxCellText)
	}
	st := r.style(c)
	if st.format.PlainText() {
		return r.addShown(c.col, st.value(c, grid.String), r.shown)
	}
	v := grid.Cell{Text: string(r.shown)}
	if err := r.asText(c, &v, nil); err != nil {
		return err
	}
	return r.add(c.col, r.maker.Of(v))
}

// value is one of the kind in the style, with nothing in it yet.
func (st *style) value(c *stored, kind grid.Kind) grid.Cell {
	v := grid.Cell{Kind: kind, Formula: c.formula, Extra: st.extra}
	if st.strike {
		v.Struck = grid.WholeStruck
	}
	return v
}

// asText makes v, which has its stored text, the value of a text cell.
func (r *sheetReader) asText(c *stored, v *grid.Cell, rich *richText) error {
	text := v.Text
	if err := r.count(len(text)); err != nil {
		return err
	}
	st := r.style(c)
	*v = st.value(c, grid.String)
	v.Text = text
	if !st.format.PlainText() {
		var hidden bool
		if v.Text, hidden = st.format.ShowText(text); hidden {
			r.note(r.sheet.Name, c.row, c.col, "the number format hides this text; it was read all the same")
		}
	}
	if rich != nil {
		font := 0
		if st.strike {
			font = 1
		}
		v.Strike(rich.strike[font], rich.kept[font])
	}
	return nil
}

// keepValue files a number, date, truth value or error.
func (r *sheetReader) keepValue(c *stored) error {
	v := bytes.Trim(c.value, xmlSpace)
	st := r.style(c)
	var number float64
	ok := true
	switch c.typ {
	case typeNumber:
		number, ok = parseNumber(v)
	case typeBool:
		switch string(v) {
		case "1", "true":
			number = 1
		case "0", "false":
		default:
			ok = false
		}
	case typeDate:
		number, ok = parseISO(string(v))
	case typeUnknown:
		ok = false
	}
	if !ok {
		r.note(r.sheet.Name, c.row, c.col, "the stored value is not of the kind that the file says; it was taken as text")
		return r.keepText(c)
	}
	switch c.typ {
	case typeError:
		if r.shown, ok = appendText(r.shown[:0], v, c.cdata); !ok {
			return r.s.broken("holds a character or an entity that XML does not allow, in cell " + grid.A1(c.row, c.col))
		}
		return r.addShown(c.col, st.value(c, grid.Error), r.shown)
	case typeBool:
		cell := st.value(c, grid.Boolean)
		cell.Number, cell.Text = number, "FALSE"
		if number == 1 {
			cell.Text = "TRUE"
		}
		return r.add(c.col, r.maker.Of(cell))
	}
	return r.keepNumber(c, st, number, v)
}

// keepNumber files a number or date, shown by its format.
func (r *sheetReader) keepNumber(c *stored, st *style, number float64, raw []byte) error {
	v := st.value(c, grid.Number)
	v.Number = number
	iso := c.typ == typeDate
	switch {
	case st.date || iso:
		v.Kind = grid.Date
		if r.date904 && !iso && st.format.IsCalendar() {
			v.Number += 1462 // days from 1 January 1900 to 1 January 1904
		}
		if iso && !st.date {
			r.shown = append(r.shown[:0], raw...)
			break
		}
		r.shown = st.format.Append(r.shown[:0], v.Number)
	case st.general && plainDigits(raw):
		return r.addShown(c.col, v, raw)
	default:
		r.shown = st.format.Append(r.shown[:0], number)
	}
	return r.addShown(c.col, v, r.shown)
}

// plainDigits reports whether a stored number reads the same in the general
// format, as most do.
func plainDigits(b []byte) bool {
	if len(b) > 11 || len(b) == 0 {
		return false
	}
	if b[0] == '0' && len(b) > 1 && b[1] != '.' {
		return false
	}
	dot := -1
	for i, c := range b {
		switch {
		case c >= '0' && c <= '9':
		case c == '.' && dot < 0 && i > 0:
			dot = i
		default:
			return false
		}
	}
	return dot < 0 || b[len(b)-1] != '0' && dot != len(b)-1
}

var powers = [...]float64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15}

// parseNumber reads a stored number: a full stop, no thousands marks, and
// finite.
func parseNumber(b []byte) (float64, bool) {
	i, neg := 0, false
	if len(b) > 0 && b[0] == '-' {
		neg, i = true, 1
	}
	mantissa, count, dot := uint64(0), 0, -1
	for ; i < len(b); i++ {
		c := b[i]
		if d := c - '0'; d <= 9 {
			mantissa = mantissa*10 + uint64(d)
			count++
			continue
		}
		if c != '.' || dot >= 0 {
			return parseLong(b)
		}
		dot = i
	}
	if count == 0 || count > 15 { // up to 15 digits and a power of ten are exact
		return parseLong(b)
	}
	f := float64(mantissa)
	if dot >= 0 {
		f /= powers[len(b)-dot-1]
	}
	if neg {
		f = -f
	}
	return f, true
}

func parseLong(b []byte) (float64, bool) {
	for _, c := range b { // no hexadecimal, underscores, Inf or NaN
		if (c < '0' || c > '9') && c != '.' && c != '-' && c != '+' && c != 'e' && c != 'E' {
			return 0, false
		}
	}
	f, err := strconv.ParseFloat(string(b), 64)
	return f, err == nil && !math.IsInf(f, 0)
}

// parseISO reads a date, time or both in ISO 8601 and returns days of the
// 1900 system.
func parseISO(s string) (float64, bool) {
	s = strings.TrimSuffix(s, "Z")
	for _, layout := range []string{"2006-01-02T15:04:05", "2006-01-02", "2006-01-02T15:04", "15:04:05", "15:04", "T15:04:05"} {
		t, err := time.Parse(layout, s)
		if err != nil {
			continue
		}
		part := (float64(t.Hour())*3600 + float64(t.Minute())*60 + float64(t.Second()) + float64(t.Nanosecond())/1e9) / 86400
		if t.Year() == 0 {
			return part, true
		}
		day := numfmt.Serial(t.Year(), int(t.Month()), t.Day())
		if day < 61 { // before 1 March 1900 the system's leap day that never was is not yet counted
			day--
		}
		return float64(day) + part, day >= 0
	}
	return 0, false
}
