package xlsx

import (
	"bytes"

	"lineaudit/ingest/grid"
)

// nameEnd returns the index behind the name at i; a name goes on until a blank or one of / > =.
func nameEnd(b []byte, i int) int {
	for i < len(b) {
		switch c := b[i]; {
		case c <= ' ', c == '/', c == '>', c == '=', c == '<', c == '"', c == '\'', c == '&':
			return i
		}
		i++
	}
	return i
}

// opening reads the start tag at pos.
func (s *scanner) opening() error {
	for {
		done, err := s.tryOpening()
		if done || err != nil {
			return err
		}
		if err := s.refill(); err != nil {
			return err
		}
	}
}

// tryOpening reports false when the tag goes on behind the bytes at hand.
func (s *scanner) tryOpening() (bool, error) {
	b := s.buf
	i := s.pos + 1
	e := nameEnd(b, i)
	if e == len(b) {
		return false, nil
	}
	if e == i || e-i > maxName {
		return false, s.broken("is not well-formed XML")
	}
	name := b[i:e]
	s.attrs = s.attrs[:0]
	for i = e; ; {
		blank := i
		for i < len(b) && (b[i] == ' ' || b[i] == '\n' || b[i] == '\r' || b[i] == '\t') {
			i++
		}
		if i == len(b) {
			return false, nil
		}
		switch b[i] {
		case '>':
			s.pos = i + 1
			return true, s.push(name, false)
		case '/':
			if i+1 == len(b) {
				return false, nil
			}
			if b[i+1] != '>' {
				return false, s.broken("is not well-formed XML")
			}
			s.pos = i + 2
			return true, s.push(name, true)
		}
		if blank == i {
			return false, s.broken("is not well-formed XML")
		}
		next, ok := s.tryAttribute(i)
		if !ok || len(s.attrs) > maxAttrs {
			return false, s.broken("is not well-formed XML")
		}
		if next < 0 {
			return false, nil
		}
		i = next
	}
}

// tryAttribute reads the attribute at i and returns the index behind it, or
// -1 when it goes on behind the bytes at hand.
func (s *scanner) tryAttribute(i int) (next int, ok bool) {
	b := s.buf
	e := nameEnd(b, i)
	if e == i {
		return 0, false
	}
	v := e
	for v < len(b) && b[v] <= ' ' && b[v] != 0 {
		v++
	}
	if v == len(b) {
		return -1, true
	}
	if b[v] != '=' {
		return 0, false
	}
	for v++; v < len(b) && b[v] <= ' ' && b[v] != 0; {
		v++
	}
	if v == len(b) {
		return -1, true
	}
	quote := b[v]
	if quote != '"' && quote != '\'' {
		return 0, false
	}
	n := bytes.IndexByte(b[v+1:], quote)
	if n < 0 {
		return -1, true
	}
	value := b[v+1 : v+1+n]
	if bytes.IndexByte(value, '<') >= 0 {
		return 0, false
	}
	if bytes.IndexByte(value, '&') >= 0 {
		if _, ok := appendEntities(nil, value); !ok {
			return 0, false
		}
	}
	name := local(b[i:e])
	s.attrs = append(s.attrs, attr{name: name, prefix: len(name) < e-i, value: value})
	return v + n + 2, true
}

func (s *scanner) push(name []byte, empty bool) error {
	if len(s.ends) == 0 {
		if s.begun {
			return s.broken("has more than one root element")
		}
		s.begun = true
	}
	if s.lim.MaxDepth > 0 && len(s.ends) >= s.lim.MaxDepth {
		return grid.TooLarge("%q is nested more than %d deep", s.part, s.lim.MaxDepth)
	}
	s.kind, s.name, s.empty = startTag, local(name), empty
	s.open = append(s.open, name...)
	s.ends = append(s.ends, len(s.open))
	return nil
}

// closing reads the end tag at pos and checks that it closes what is open.
func (s *scanner) closing() error {
	for {
		if i := bytes.IndexByte(s.buf[s.pos:], '>'); i >= 0 {
			from := s.pos
			s.pos += i + 1
			name := bytes.TrimRight(s.buf[from+2:s.pos-1], " \t\r\n")
			n := len(s.ends)
			start := 0
			if n > 1 {
				start = s.ends[n-2]
			}
			if n == 0 || !bytes.Equal(name, s.open[start:]) {
				return s.broken("is not well-formed XML: a tag is closed that is not open")
			}
			s.kind = endTag
			s.pop()
			return nil
		}
		if err := s.refill(); err != nil {
			return err
		}
	}
}
