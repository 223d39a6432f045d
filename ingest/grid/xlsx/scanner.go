package xlsx

import (
	"bytes"
	"io"
	"sync"
	"unicode/utf8"

	"lineaudit/ingest/grid"
)

// A scanner cuts an XML part into tags and text without building a tree. It
// insists on well-formed XML, refuses document types (and with them every
// entity beyond the five of XML itself), and reads to the end of the part, so
// that a part which breaks off is an error and never a shorter part.
//
// Names are compared without their prefix: x:row and row are the same. Slices
// handed out stay valid until the next call of next or compact.
type scanner struct {
	part string
	src  *partReader // nil: everything is in buf
	lim  grid.Limits
	buf  []byte
	pos  int
	eof  bool
	good int // bytes of buf known to be valid UTF-8

	open  []byte // names of the open elements, one behind the other
	ends  []int  // end of each in open
	empty bool   // the start tag just handed out closes itself
	begun bool   // the root element was met

	kind  tokenKind
	name  []byte // of a start or end tag, without prefix
	attrs []attr // of a start tag
	raw   []byte // of text: as stored
	cdata bool   // the text stands in a CDATA section: nothing to decode
}

type tokenKind uint8

const (
	endOfPart tokenKind = iota
	startTag
	endTag
	charData
)

// An attr is one attribute. The value is as stored; text decodes it.
type attr struct {
	name   []byte // without prefix
	prefix bool   // the name had one
	value  []byte
}

// text decodes the value; the scanner has checked its entities.
func (a attr) text() string {
	b, _ := appendEntities(nil, a.value)
	return string(b)
}

// Bounds of one piece of XML, whatever the limits of the book.
const (
	maxToken = 32 << 20 // bytes of a tag or a run of text
	maxName  = 1 << 10  // bytes of the name of an element
	maxAttrs = 1 << 10  // attributes of a tag
)

// A buffer is what a scanner needs and hands on to the next.
type buffer struct {
	bytes []byte
	attrs []attr
	open  []byte
	ends  []int
}

var buffers = sync.Pool{New: func() any { return &buffer{bytes: make([]byte, 0, chunk)} }}

func newScanner(src *partReader, part string, lim grid.Limits) *scanner {
	s := &scanner{part: part, src: src, lim: lim}
	b := buffers.Get().(*buffer)
	s.buf, s.attrs, s.open, s.ends = b.bytes[:0], b.attrs[:0], b.open[:0], b.ends[:0]
	if src != nil && src.size < 16*chunk && int64(cap(s.buf)) <= src.size { // room for the whole of a small part
		s.buf = make([]byte, 0, src.size+src.size/4+1)
	}
	return s
}

// progress tells of how many bytes of the part, as the directory says, how many were
// handed out; 0 if that is not known.
func (s *scanner) progress() (all, handedOut int64) {
	if s.src == nil {
		return 0, 0
	}
	return s.src.size, s.src.size - s.src.left - int64(len(s.buf)-s.pos)
}

// release hands buffers back; the scanner is of no use afterwards.
func (s *scanner) release() {
	if s.src != nil {
		s.src.release()
	}
	if cap(s.buf) <= 16*chunk {
		clear(s.attrs[:cap(s.attrs)]) // they hold what they were read from
		buffers.Put(&buffer{s.buf, s.attrs, s.open, s.ends})
	}
	s.buf, s.attrs, s.open, s.ends = nil, nil, nil, nil
}

// start looks at the encoding of the part.
func (s *scanner) start() error {
	for len(s.buf) < 200 && !s.eof {
		if err := s.more(); err != nil {
			return err
		}
	}
	whole, err := s.decoded()
	if err != nil {
		return err
	}
	if whole != nil {
		s.buf, s.eof = whole, true
	}
	if bytes.HasPrefix(s.buf, []byte("\xef\xbb\xbf")) {
		s.pos = 3
	}
	s.good = s.pos
	return s.validate()
}

// more reads on behind the bytes at hand; what was handed out stays valid.
func (s *scanner) more() error {
	if len(s.buf)-s.pos > maxToken {
		return grid.TooLarge("%q holds a single piece of more than %d MiB", s.part, maxToken>>20)
	}
	if cap(s.buf)-len(s.buf) < chunk/4 && (s.src.left > 0 || cap(s.buf) == len(s.buf)) {
		grown := make([]byte, len(s.buf)-s.pos, 2*(len(s.buf)-s.pos)+chunk)
		copy(grown, s.buf[s.pos:])
		s.good -= s.pos
		s.buf, s.pos = grown, 0
	}
	if err := s.lim.Check(); err != nil {
		return err
	}
	n, err := s.src.Read(s.buf[len(s.buf):cap(s.buf)])
	s.buf = s.buf[:len(s.buf)+n]
	if err == io.EOF {
		s.eof, err = true, nil
	}
	return err
}

// refill is more, with a look at the encoding of what came.
func (s *scanner) refill() error {
	if s.eof {
		return s.broken("breaks off")
	}
	if err := s.more(); err != nil {
		return err
	}
	return s.validate()
}

// validate checks that what was read is UTF-8, but for a rune cut at the end.
func (s *scanner) validate() error {
	end := len(s.buf)
	if !s.eof {
		for k := 1; k <= 3 && k <= end-s.good; k++ {
			if c := s.buf[end-k]; c >= 0xc0 {
				end -= k
				break
			} else if c < 0x80 {
				break
			}
		}
	}
	if !utf8.Valid(s.buf[s.good:end]) {
		return s.broken("is not valid UTF-8")
	}
	s.good = end
	return nil
}

// compact makes room by dropping what was read, when it is worth it.
func (s *scanner) compact() error {
	if s.eof || s.pos < cap(s.buf)*3/4 {
		return nil
	}
	n := copy(s.buf, s.buf[s.pos:])
	s.good -= s.pos
	s.buf, s.pos = s.buf[:n], 0
	return s.refill()
}

func (s *scanner) broken(what string) error { return grid.Damaged("%q %s", s.part, what) }

// next advances to the next tag or text and sets kind and what belongs to it.
func (s *scanner) next() error {
	if s.empty {
		s.empty = false
		s.kind = endTag
		s.pop()
		return nil
	}
	for {
		if s.pos == len(s.buf) {
			if s.eof {
				if len(s.ends) > 0 {
					return s.broken("breaks off")
				}
				s.kind = endOfPart
				return nil
			}
			if err := s.refill(); err != nil {
				return err
			}
			continue
		}
		if s.buf[s.pos] != '<' {
			if err := s.textRun(); err != nil {
				return err
			}
			if s.kind == charData {
				return nil
			}
			continue
		}
		for len(s.buf)-s.pos < 2 {
			if err := s.refill(); err != nil {
				return err
			}
		}
		switch s.buf[s.pos+1] {
		case '?':
			if err := s.skipTo("?>"); err != nil {
				return err
			}
		case '!':
			handed, err := s.declaration()
			if err != nil || handed {
				return err
			}
		case '/':
			return s.closing()
		default:
			return s.opening()
		}
	}
}

// textRun hands out the text up to the next tag; outside the root only blanks may stand.
func (s *scanner) textRun() error {
	from := 0
	for {
		if i := bytes.IndexByte(s.buf[s.pos+from:], '<'); i >= 0 {
			s.raw = s.buf[s.pos : s.pos+from+i]
			break
		}
		if s.eof {
			s.raw = s.buf[s.pos:]
			break
		}
		from = len(s.buf) - s.pos
		if err := s.refill(); err != nil {
			return err
		}
	}
	s.pos += len(s.raw)
	s.kind, s.cdata = charData, false
	if len(s.ends) == 0 {
		s.kind = endOfPart
		if len(bytes.Trim(s.raw, " \t\r\n")) > 0 {
			return s.broken("has text outside its elements")
		}
	}
	return nil
}

// declaration skips a comment or hands out a CDATA section.
func (s *scanner) declaration() (handed bool, err error) {
	for len(s.buf)-s.pos < 9 && !s.eof {
		if err := s.refill(); err != nil {
			return false, err
		}
	}
	switch b := s.buf[s.pos:]; {
	case bytes.HasPrefix(b, []byte("<!--")):
		s.pos += 4
		return false, s.skipTo("-->")
	case bytes.HasPrefix(b, []byte("<![CDATA[")) && len(s.ends) > 0:
		s.pos += 9
		start := s.pos
		from := s.pos
		for {
			if i := bytes.Index(s.buf[from:], []byte("]]>")); i >= 0 {
				s.raw = s.buf[start : from+i]
				s.pos = from + i + 3
				s.kind, s.cdata = charData, true
				return true, nil
			}
			size, moved := len(s.buf)-start, s.pos
			if err := s.refill(); err != nil {
				return false, err
			}
			start -= moved - s.pos
			from = start + max(0, size-2)
		}
	case bytes.HasPrefix(bytes.ToUpper(b[:min(len(b), 9)]), []byte("<!DOCTYPE")):
		return false, &grid.Unreadable{
			Reason: "the workbook holds a document type declaration, which no spreadsheet program writes: it may be an attack",
			Advice: "do not open it; ask where it came from",
		}
	}
	return false, s.broken("is not well-formed XML")
}

// skipTo moves behind the next end mark.
func (s *scanner) skipTo(mark string) error {
	for {
		if i := bytes.Index(s.buf[s.pos:], []byte(mark)); i >= 0 {
			s.pos += i + len(mark)
			return nil
		}
		s.pos = max(s.pos, len(s.buf)-len(mark)+1)
		if err := s.refill(); err != nil {
			return err
		}
	}
}

func (s *scanner) pop() {
	n := len(s.ends) - 1
	from := 0
	if n > 0 {
		from = s.ends[n-1]
	}
	s.name = local(s.open[from:s.ends[n]])
	s.open, s.ends = s.open[:from], s.ends[:n]
}

// local drops the prefix of a name.
func local(name []byte) []byte {
	if _, after, ok := bytes.Cut(name, []byte{':'}); ok {
		return after
	}
	return name
}

// depth counts the open elements.
func (s *scanner) depth() int { return len(s.ends) }

// skip moves behind the end of the element whose start tag was just handed out.
func (s *scanner) skip() error {
	for d := s.depth(); s.depth() >= d; {
		if err := s.next(); err != nil {
			return err
		}
	}
	return nil
}

// walk calls start for every start tag to the end of the part.
func (s *scanner) walk(start func() error) error {
	for {
		if err := s.next(); err != nil {
			return err
		}
		switch s.kind {
		case endOfPart:
			return nil
		case startTag:
			if err := start(); err != nil {
				return err
			}
		}
	}
}

// root moves to the first start tag.
func (s *scanner) root() error {
	if err := s.next(); err != nil {
		return err
	}
	if s.kind != startTag {
		return s.broken("is empty")
	}
	return nil
}

// attribute returns the value of the attribute with the given local name.
func (s *scanner) attribute(name string) (string, bool) {
	for _, a := range s.attrs {
		if string(a.name) == name {
			return a.text(), true
		}
	}
	return "", false
}

// flag reports whether an attribute is true as XML Schema writes it.
func (s *scanner) flag(name string) bool {
	for _, a := range s.attrs {
		if string(a.name) == name {
			return string(a.value) == "1" || string(a.value) == "true"
		}
	}
	return false
}
