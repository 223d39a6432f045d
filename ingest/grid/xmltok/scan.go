package xmltok

import (
	"bytes"
	"strconv"
	"unicode/utf8"
)

// Next splits the part by these steps; all of them work on r.data[r.pos:].

// attribute is one attribute of a start tag, as it stands in the part.
type attribute struct {
	name  string // with the prefix of its space
	value []byte // within the quotes
}

// maxAttributes bounds the attributes of one tag, which are all held at once.
const maxAttributes = 10_000

// markup reads what begins with < at the reading position. ok is false for
// what is passed over.
func (r *Reader) markup() (t Token, ok bool, err error) {
	rest := r.data[r.pos:]
	switch {
	case bytes.HasPrefix(rest, []byte("<!--")):
		return t, false, r.pass("<!--", "-->")
	case bytes.HasPrefix(rest, []byte("<![CDATA[")):
		from := r.pos + len("<![CDATA[")
		if err := r.pass("<![CDATA[", "]]>"); err != nil {
			return t, false, err
		}
		b, err := r.newlines(r.data[from : r.pos-len("]]>")])
		return Token{Kind: Text, Text: b}, true, err
	case bytes.HasPrefix(rest, []byte("<?")):
		return t, false, r.pass("<?", "?>")
	case bytes.HasPrefix(rest, []byte("<!")):
		return t, false, docType()
	case bytes.HasPrefix(rest, []byte("</")):
		t, err = r.endTag()
		return t, true, err
	}
	t, err = r.startTag()
	return t, true, err
}

// pass moves behind the next closing mark.
func (r *Reader) pass(opening, closing string) error {
	from := r.pos + len(opening)
	i := bytes.Index(r.data[from:], []byte(closing))
	if i < 0 {
		return r.damaged("a tag is cut off")
	}
	r.pos = from + i + len(closing)
	return nil
}

// endTag reads </name>.
func (r *Reader) endTag() (Token, error) {
	r.pos += len("</")
	name := r.rawName()
	r.space()
	if r.pos >= len(r.data) {
		return Token{}, r.damaged("a tag is cut off")
	}
	if r.data[r.pos] != '>' {
		return Token{}, r.damaged("an end tag holds more than a name")
	}
	r.pos++
	if len(r.open) == 0 || !bytes.Equal(r.open[len(r.open)-1].raw, name) {
		return Token{}, r.damaged("the end of %q is not where it belongs", name)
	}
	return r.close(), nil
}

// close ends the innermost open element.
func (r *Reader) close() Token {
	e := r.open[len(r.open)-1]
	r.open = r.open[:len(r.open)-1]
	r.unbind(e.bound)
	return Token{Kind: End, Name: e.name}
}

// startTag reads <name attributes> or <name attributes/>.
func (r *Reader) startTag() (Token, error) {
	r.pos++
	raw := r.rawName()
	if len(raw) == 0 {
		if r.pos >= len(r.data) {
			return Token{}, r.damaged("a tag is cut off")
		}
		return Token{}, r.damaged("a < stands where no tag begins")
	}
	r.rawAttrs = r.rawAttrs[:0]
	bound := len(r.bindings)
	for {
		spaced := r.space()
		if r.pos >= len(r.data) {
			return Token{}, r.damaged("a tag is cut off")
		}
		switch c := r.data[r.pos]; {
		case c == '>':
			r.pos++
			return r.started(raw, bound, false)
		case c == '/':
			if r.pos+1 >= len(r.data) {
				return Token{}, r.damaged("a tag is cut off")
			}
			if r.data[r.pos+1] != '>' {
				return Token{}, r.damaged("a / stands within a tag")
			}
			r.pos += 2
			return r.started(raw, bound, true)
		case !spaced:
			return Token{}, r.damaged("a tag holds what is no attribute")
		}
		if err := r.attribute(); err != nil {
			return Token{}, err
		}
	}
}

// attribute reads name="value".
func (r *Reader) attribute() error {
	name := r.rawName()
	if len(name) == 0 {
		return r.damaged("a tag holds what is no attribute")
	}
	r.space()
	if r.pos >= len(r.data) || r.data[r.pos] != '=' {
		return r.cutOr("an attribute has no value")
	}
	r.pos++
	r.space()
	if r.pos >= len(r.data) || r.data[r.pos] != '"' && r.data[r.pos] != '\'' {
		return r.cutOr("the value of an attribute is not in quotes")
	}
	quote := r.data[r.pos]
	r.pos++
	n := bytes.IndexByte(r.data[r.pos:], quote)
	if n < 0 {
		return r.damaged("a tag is cut off")
	}
	value := r.data[r.pos : r.pos+n]
	if bytes.IndexByte(value, '<') >= 0 {
		return r.damaged("the value of an attribute holds a <")
	}
	r.pos += n + 1
	if len(r.rawAttrs) >= maxAttributes {
		return tooMany()
	}
	switch {
	case string(name) == "xmlns":
		return r.bind("", value)
	case bytes.HasPrefix(name, []byte("xmlns:")):
		return r.bind(string(name[len("xmlns:"):]), value)
	}
	r.rawAttrs = append(r.rawAttrs, rawAttribute{name, value})
	return nil
}

// started opens an element whose tag was read. Its name spaces are known now.
func (r *Reader) started(raw []byte, bound int, empty bool) (Token, error) {
	if bound != len(r.bindings) {
		clear(r.names)
	}
	if n := len(r.rawAttrs); cap(r.attrs)-len(r.attrs) < n {
		r.attrs = make([]attribute, 0, max(n, 256))
	}
	from := len(r.attrs)
	for _, a := range r.rawAttrs {
		if bytes.IndexByte(a.value, '&') >= 0 {
			if _, err := r.unescape(a.value); err != nil {
				return Token{}, err
			}
		}
		r.attrs = append(r.attrs, attribute{r.short(a.name, true), a.value})
	}
	name := r.short(raw, false)
	r.open = append(r.open, element{raw: raw, name: name, bound: bound})
	r.pendingEnd = empty
	return Token{Kind: Start, Name: name, attr: r.attrs[from:len(r.attrs):len(r.attrs)]}, nil
}

// rawName reads a name with its prefix, empty where none stands. Characters
// beyond ASCII are all taken for letters.
func (r *Reader) rawName() []byte {
	from := r.pos
	for r.pos < len(r.data) {
		c := r.data[r.pos]
		letter := c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_' || c == ':' || c >= 0x80
		if !letter && (r.pos == from || (c < '0' || c > '9') && c != '-' && c != '.') {
			break
		}
		r.pos++
	}
	return r.data[from:r.pos]
}

// space passes over white space and says whether there was any.
func (r *Reader) space() bool {
	from := r.pos
	for r.pos < len(r.data) && isSpace(r.data[r.pos]) {
		r.pos++
	}
	return r.pos > from
}

func isSpace(c byte) bool { return c == ' ' || c == '\t' || c == '\n' || c == '\r' }

// text reads text up to the next tag.
func (r *Reader) text() (Token, error) {
	rest := r.data[r.pos:]
	n := bytes.IndexByte(rest, '<')
	if n < 0 {
		n = len(rest)
	}
	raw := rest[:n]
	if bytes.Contains(raw, []byte("]]>")) {
		return Token{}, r.damaged("]]> stands in a text")
	}
	r.pos += n
	b, err := r.unescape(raw)
	return Token{Kind: Text, Text: b}, err
}

// unescape replaces references and line ends. The result may be part of raw or
// of a buffer that the next call uses again.
func (r *Reader) unescape(raw []byte) ([]byte, error) {
	if bytes.IndexByte(raw, '&') < 0 {
		return r.newlines(raw)
	}
	out := r.buf[:0]
	for len(raw) > 0 {
		i := bytes.IndexByte(raw, '&')
		if i < 0 {
			out = appendNewlines(out, raw)
			break
		}
		out = appendNewlines(out, raw[:i])
		raw = raw[i+1:]
		end := bytes.IndexByte(raw[:min(len(raw), 16)], ';')
		if end < 0 {
			return nil, r.damaged("a text holds a stray &")
		}
		c, ok := reference(string(raw[:end]))
		if !ok {
			return nil, r.damaged("a text holds an entity that is not known, &%s;", raw[:end])
		}
		out = utf8.AppendRune(out, c)
		raw = raw[end+1:]
	}
	r.buf = out
	return out, nil
}

// reference returns the character that a reference stands for, U+FFFD for one
// that XML does not allow.
func reference(name string) (rune, bool) {
	switch name {
	case "lt":
		return '<', true
	case "gt":
		return '>', true
	case "amp":
		return '&', true
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
	n, err := strconv.ParseUint(digits, base, 32)
	if err != nil || n == 0 || n > utf8.MaxRune {
		return 0, false
	}
	if !isChar(rune(n)) { // spreadsheet programs write the control characters of a text so
		return utf8.RuneError, true
	}
	return rune(n), true
}

// isChar reports whether XML allows a character.
func isChar(c rune) bool {
	return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c < 0xd800 || c >= 0xe000 && c < 0xfffe || c >= 0x10000 && c <= utf8.MaxRune
}

// newlines replaces the line ends of other systems by \n.
func (r *Reader) newlines(raw []byte) ([]byte, error) {
	if bytes.IndexByte(raw, '\r') < 0 {
		return raw, nil
	}
	r.buf = appendNewlines(r.buf[:0], raw)
	return r.buf, nil
}

func appendNewlines(out, raw []byte) []byte {
	for {
		i := bytes.IndexByte(raw, '\r')
		if i < 0 {
			return append(out, raw...)
		}
		out = append(append(out, raw[:i]...), '\n')
		raw = raw[i+1:]
		if len(raw) > 0 && raw[0] == '\n' {
			raw = raw[1:]
		}
	}
}

// badCharacter returns the offset of the first character that XML does not
// allow, or -1.
func badCharacter(data []byte) int {
	for i := 0; i < len(data); {
		c := data[i]
		if c >= 0x20 && c < utf8.RuneSelf || c == '\n' || c == '\t' || c == '\r' {
			i++
			continue
		}
		if c < 0x20 {
			return i
		}
		v, size := utf8.DecodeRune(data[i:])
		if v == utf8.RuneError && size == 1 || !isChar(v) {
			return i
		}
		i += size
	}
	return -1
}
