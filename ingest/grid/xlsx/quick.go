package xlsx

import "bytes"

// quickCells takes cells in the one form that nearly all of them have,
//
//	<c r="B3" s="2" t="s"><f>...</f><v>17</v></c>
//	<c r="B3" s="2" t="inlineStr"><is><t>Rink 2</t></is></c>
//
// with each attribute, the formula and the value optional, straight from the
// bytes at hand. It stops in front of anything else; the long way gives the
// same result for every cell, only slower. It returns how many it took.
func (r *sheetReader) quickCells(col, last *int) (int, error) {
	s := r.s
	if s.empty {
		return 0, nil
	}
	count := 0
	for {
		c := stored{row: r.row.Number, col: *col + 1}
		n := quickCell(s.buf[s.pos:], &c)
		if n == 0 || c.row != r.row.Number || c.col > maxCol {
			return count, nil
		}
		r.mixed = r.mixed || c.col <= *last
		*col, *last = c.col, max(*last, c.col)
		s.pos += n
		count++
		if count&0x3fff == 0 {
			if err := r.lim.Check(); err != nil {
				return count, err
			}
			if err := s.compact(); err != nil {
				return count, err
			}
		}
		if !c.has && !c.formula {
			continue
		}
		if err := r.keep(&c); err != nil {
			return count, err
		}
	}
}

// quickCell reads the cell at the head of b and returns its length, 0 if it is
// not in the common form or not whole.
func quickCell(b []byte, c *stored) int {
	if len(b) < 5 || b[0] != '<' || b[1] != 'c' || b[2] != ' ' && b[2] != '>' {
		return 0
	}
	i := 2
	for b[i] == ' ' {
		// name="value": one letter names that matter
		if i+4 >= len(b) || b[i+2] != '=' || b[i+3] != '"' {
			return 0
		}
		v := i + 4
		e := v
		for e < len(b) && b[e] != '"' {
			if e-v > 12 || b[e] == '<' || b[e] == '&' {
				return 0
			}
			e++
		}
		if e+1 >= len(b) {
			return 0
		}
		var ok bool
		switch b[i+1] {
		case 'r':
			c.row, c.col, ok = reference(b[v:e])
		case 's':
			c.style, ok = digits(b[v:e])
		case 't':
			c.typ = typeOf(b[v:e])
			ok = c.typ != typeUnknown && e > v
		}
		if !ok {
			return 0
		}
		i = e + 1
	}
	if b[i] == '/' {
		if i+1 < len(b) && b[i+1] == '>' {
			return i + 2
		}
		return 0
	}
	if b[i] != '>' {
		return 0
	}
	i++
	if c.typ == typeInline {
		n := quickInline(b[i:], c)
		if n == 0 {
			return 0
		}
		return i + n
	}
	if bytes.HasPrefix(b[i:], []byte("<f>")) {
		e := bytes.IndexByte(b[i+3:], '<')
		if e < 0 || !bytes.HasPrefix(b[i+3+e:], []byte("</f>")) {
			return 0
		}
		c.formula = true
		i += 3 + e + 4
	}
	if bytes.HasPrefix(b[i:], []byte("<v>")) {
		e := bytes.IndexByte(b[i+3:], '<')
		if e < 0 || !bytes.HasPrefix(b[i+3+e:], []byte("</v>")) {
			return 0
		}
		c.has = true
		c.value = b[i+3 : i+3+e]
		i += 3 + e + 4
	}
	if !bytes.HasPrefix(b[i:], []byte("</c>")) {
		return 0
	}
	return i + 4
}

// quickInline reads a text that stands in its cell as one piece, and the end
// of the cell; it returns their length, 0 if it is in another form.
func quickInline(b []byte, c *stored) int {
	i := len("<is><t>")
	switch {
	case bytes.HasPrefix(b, []byte("<is><t>")):
	case bytes.HasPrefix(b, []byte(`<is><t xml:space="preserve">`)):
		i = len(`<is><t xml:space="preserve">`)
	default:
		return 0
	}
	e := bytes.IndexByte(b[i:], '<')
	const end = "</t></is></c>"
	if e < 0 || !bytes.HasPrefix(b[i+e:], []byte(end)) {
		return 0
	}
	c.has, c.value = true, b[i:i+e]
	return i + e + len(end)
}
