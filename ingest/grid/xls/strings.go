package xls

import (
	"encoding/binary"
	"unicode/utf16"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/strike"
)

// A richString is a text with the fonts of its parts.
type richString struct {
	text string
	runs []fontRun // ascending by start; nil where all is in the cell's font
}

// A fontRun sets the font from a character (counted in UTF-16 units) on.
type fontRun struct{ start, font uint16 }

// struck judges a rich text whose cell is in a font that is struck or not.
func (w *workbook) struck(s richString, cell bool) (grid.Strike, string) {
	if len(s.runs) == 0 {
		return strike.Of([]strike.Run{{Text: s.text, Struck: cell}})
	}
	units := utf16.Encode([]rune(s.text))
	runs := make([]strike.Run, 0, len(s.runs)+1)
	from, now := 0, cell
	for _, r := range s.runs {
		to := min(max(int(r.start), from), len(units))
		runs = append(runs, strike.Run{Text: string(utf16.Decode(units[from:to])), Struck: now})
		from, now = to, w.fontStruck(int(r.font))
	}
	runs = append(runs, strike.Run{Text: string(utf16.Decode(units[from:])), Struck: now})
	return strike.Of(runs)
}

// unicode8 reads a BIFF8 string whose length field has size bytes: the length
// in characters, a byte of flags, the characters in one or two bytes each.
// The formatting and phonetic parts that may follow are not read.
func unicode8(b []byte, size int) (string, error) {
	if len(b) < size {
		return "", damaged("a text is cut off")
	}
	n := int(b[0])
	if size == 2 {
		n = int(u16(b))
	}
	if n == 0 { // some exporters leave out the flags of no text
		return "", nil
	}
	if len(b) < size+1 {
		return "", damaged("a text is cut off")
	}
	flags := b[size]
	b = b[size+1:]
	skip := 0
	if flags&8 != 0 {
		skip += 2
	}
	if flags&4 != 0 {
		skip += 4
	}
	width := 1 + int(flags&1)
	if len(b) < skip+n*width {
		return "", damaged("a text is cut off")
	}
	return characters(b[skip:skip+n*width], width == 2), nil
}

// characters decodes characters of two bytes, or of one byte that is the
// lower half of a UTF-16 unit.
func characters(b []byte, wide bool) string {
	return string(utf16.Decode(appendUnits(nil, b, wide)))
}

func appendUnits(units []uint16, b []byte, wide bool) []uint16 {
	if !wide {
		for _, c := range b {
			units = append(units, uint16(c))
		}
		return units
	}
	for ; len(b) >= 2; b = b[2:] {
		units = append(units, binary.LittleEndian.Uint16(b))
	}
	return units
}

// bytes5 returns the bytes of a BIFF5 string whose length field has size
// bytes, and what follows it.
func bytes5(b []byte, size int) (text, rest []byte, err error) {
	if len(b) < size {
		return nil, nil, damaged("a text is cut off")
	}
	n := int(b[0])
	if size == 2 {
		n = int(u16(b))
	}
	b = b[size:]
	if len(b) < n {
		return nil, nil, damaged("a text is cut off")
	}
	return b[:n], b[n:], nil
}

// decode turns bytes in the workbook's code page into text.
func (w *workbook) decode(b []byte) string {
	s, err := w.codePage.NewDecoder().Bytes(b)
	if err != nil { // no decoder of this package fails on bytes; it replaces
		return characters(b, false)
	}
	return string(s)
}

// text reads a string without formatting whose length field has size bytes,
// in either version.
func (w *workbook) text(b []byte, size int) (string, error) {
	if w.biff8 {
		return unicode8(b, size)
	}
	t, _, err := bytes5(b, size)
	return w.decode(t), err
}

// A pieceReader walks a record and its Continue records.
type pieceReader struct {
	pieces [][]byte
	i, pos int
}

// ready moves to the next byte and says whether there is one.
func (p *pieceReader) ready() bool {
	for p.i < len(p.pieces) && p.pos >= len(p.pieces[p.i]) {
		p.i++
		p.pos = 0
	}
	return p.i < len(p.pieces)
}

// take returns the next n bytes, or nil when there are fewer. n is small.
func (p *pieceReader) take(n int) []byte {
	out := make([]byte, 0, n)
	for len(out) < n && p.ready() {
		m := min(n-len(out), len(p.pieces[p.i])-p.pos)
		out = append(out, p.pieces[p.i][p.pos:p.pos+m]...)
		p.pos += m
	}
	if len(out) < n {
		return nil
	}
	return out
}

// skip passes over n bytes and says whether they were there.
func (p *pieceReader) skip(n int) bool {
	for n > 0 && p.ready() {
		m := min(n, len(p.pieces[p.i])-p.pos)
		p.pos += m
		n -= m
	}
	return n == 0
}

// characters reads n characters. A piece that a text goes on in begins with a
// byte that says anew how wide its characters are. It returns false when the
// text is cut off.
func (p *pieceReader) characters(n int, wide bool) (string, bool) {
	var units []uint16
	for n > 0 {
		if p.i >= len(p.pieces) {
			return "", false
		}
		rest := p.pieces[p.i][p.pos:]
		if len(rest) == 0 {
			if p.i++; p.i < len(p.pieces) && len(p.pieces[p.i]) > 0 {
				wide = p.pieces[p.i][0]&1 != 0
				p.pos = 1
			} else {
				p.pos = 0
			}
			continue
		}
		m := min(n, len(rest))
		size := m
		if wide {
			m = min(n, len(rest)/2)
			size = 2 * m
			if m == 0 { // half a character before the break
				return "", false
			}
		}
		units = appendUnits(units, rest[:size], wide)
		p.pos += size
		n -= m
	}
	return string(utf16.Decode(units)), true
}
