package xlsx

import (
	"bytes"
	"strconv"
	"unicode/utf16"
	"unicode/utf8"
)

// appendEntities appends raw with the five entities of XML and character
// numbers decoded. It reports false for anything else behind an ampersand.
func appendEntities(dst, raw []byte) ([]byte, bool) {
	for {
		i := bytes.IndexByte(raw, '&')
		if i < 0 {
			return append(dst, raw...), true
		}
		dst = append(dst, raw[:i]...)
		raw = raw[i+1:]
		e := bytes.IndexByte(raw[:min(len(raw), 12)], ';')
		if e < 1 {
			return dst, false
		}
		r, ok := entity(raw[:e])
		if !ok {
			return dst, false
		}
		dst = utf8.AppendRune(dst, r)
		raw = raw[e+1:]
	}
}

func entity(name []byte) (rune, bool) {
	switch string(name) {
	case "amp":
		return '&', true
	case "lt":
		return '<', true
	case "gt":
		return '>', true
	case "quot":
		return '"', true
	case "apos":
		return '\'', true
	}
	if len(name) < 2 || name[0] != '#' {
		return 0, false
	}
	digits, base := name[1:], 10
	if digits[0] == 'x' {
		digits, base = digits[1:], 16
	}
	n, err := strconv.ParseUint(string(digits), base, 32)
	if err != nil || n > utf8.MaxRune || n < 0x20 && n != '\t' && n != '\n' && n != '\r' {
		return 0, false
	}
	return rune(n), true
}

// special marks the bytes that appendText has to look at.
var special = func() (t [256]bool) {
	for c := range 0x20 {
		t[c] = true
	}
	t['&'], t['_'] = true, true
	return t
}()

// appendText appends the text of a cell: entities and character numbers
// decoded, line ends as "\n", the escapes _xHHHH_ of spreadsheets undone. It
// reports false for control characters and entities that XML does not allow.
func appendText(dst, raw []byte, cdata bool) ([]byte, bool) {
	start := len(dst)
	plain := 0 // bytes of raw up to here are to be copied
	for i := 0; i < len(raw); i++ {
		c := raw[i]
		if !special[c] {
			continue
		}
		switch {
		case c == '\t' || c == '\n':
			continue
		case c == '\r':
			dst = append(dst, raw[plain:i]...)
			if i+1 == len(raw) || raw[i+1] != '\n' {
				dst = append(dst, '\n')
			}
		case c == '_':
			if i+6 >= len(raw) || raw[i+1] != 'x' || raw[i+6] != '_' {
				continue
			}
			r, n := escaped(raw[i:])
			if n == 0 {
				continue
			}
			dst = append(dst, raw[plain:i]...)
			dst = appendEscaped(dst, r, raw[i+n:])
			i += n - 1
		case c == '&' && cdata:
			continue
		case c == '&':
			e := bytes.IndexByte(raw[i:min(len(raw), i+13)], ';')
			if e < 2 {
				return dst[:start], false
			}
			r, ok := entity(raw[i+1 : i+e])
			if !ok {
				return dst[:start], false
			}
			dst = append(dst, raw[plain:i]...)
			if r != '\r' || !bytes.HasPrefix(raw[i+e+1:], []byte("\n")) && !bytes.HasPrefix(raw[i+e+1:], []byte("&#10;")) {
				if r == '\r' {
					r = '\n'
				}
				dst = utf8.AppendRune(dst, r)
			}
			i += e
		default:
			return dst[:start], false
		}
		plain = i + 1
	}
	return append(dst, raw[plain:]...), true
}

// escaped reads one _xHHHH_ (or the two of a surrogate pair) at the head of b
// and returns the character and the bytes read, 0 when it is none that a
// spreadsheet program writes: those escape control characters, an underscore
// that would look like an escape, halves of pairs and the two non-characters.
// Anything else, such as a model named a_xAB12_b, is text as it stands.
func escaped(b []byte) (r rune, n int) {
	v, ok := escape(b)
	if !ok {
		return 0, 0
	}
	switch {
	case v < 0x20 || v == 0x5f || v == 0x7f || v >= 0xfffe:
		return v, 7
	case utf16.IsSurrogate(v):
		if low, ok := escape(b[7:]); ok {
			if r := utf16.DecodeRune(v, low); r != utf8.RuneError {
				return r, 14
			}
		}
		return utf8.RuneError, 7
	}
	return 0, 0
}

func escape(b []byte) (rune, bool) {
	if len(b) < 7 || b[0] != '_' || b[1] != 'x' || b[6] != '_' {
		return 0, false
	}
	v, err := strconv.ParseUint(string(b[2:6]), 16, 16)
	return rune(v), err == nil
}

// appendEscaped appends an escaped character: line ends as "\n", no other
// control character but the tab, for nobody sees them.
func appendEscaped(dst []byte, r rune, rest []byte) []byte {
	switch {
	case r == '\r':
		if bytes.HasPrefix(rest, []byte("\n")) || bytes.HasPrefix(rest, []byte("\r\n")) || bytes.HasPrefix(rest, []byte("_x000A_")) {
			return dst
		}
		return append(dst, '\n')
	case r == '\t' || r == '\n':
	case r < 0x20 || r == 0x7f || r >= 0xfffe && r <= 0xffff:
		return dst
	}
	return utf8.AppendRune(dst, r)
}
