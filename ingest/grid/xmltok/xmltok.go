// Package xmltok reads the elements of an XML part that nobody vouches for:
// no document type, no entities of its own, bounded tags and nesting.
package xmltok

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"

	"lineaudit/ingest/grid"
)

// maxTag is the longest tag, in bytes. Spreadsheet programs stop formulas at
// 64 KiB; the attributes of a tag are all held at once.
const maxTag = 1 << 20

// A Kind says what a Token is.
type Kind uint8

// End of the part, start and end of an element, and text between them.
const (
	EOF Kind = iota
	Start
	End
	Text
)

// A Token is one piece of a part. Names of elements and attributes carry the
// short prefixes given to New, e.g. "table:table-row", whatever prefixes the
// file uses; a name from an unknown space begins with "?:".
type Token struct {
	Kind Kind
	Name string
	Text []byte // valid until the next token
	attr []xml.Attr
}

// Attr returns the value of an attribute such as "office:value", or "".
// An attribute without a prefix belongs to no space: "name".
func (r *Reader) Attr(t Token, name string) string {
	v, _ := r.Lookup(t, name)
	return v
}

// Lookup is Attr that also says whether the attribute is there.
func (r *Reader) Lookup(t Token, name string) (string, bool) {
	for i := range t.attr {
		if r.short(t.attr[i].Name) == name {
			return t.attr[i].Value, true
		}
	}
	return "", false
}

// A Reader walks one part.
type Reader struct {
	dec    *xml.Decoder
	prefix map[string]string
	names  map[xml.Name]string
	depth  int
	lim    grid.Limits
	tokens int
}

// checkEvery is the number of tokens between two questions to Limits.Stop.
const checkEvery = 1 << 13

// New checks the tags of a UTF-8 part and returns a reader of it. The map
// gives the short prefix of each name space. The error is a *grid.Unreadable.
func New(data []byte, prefixes map[string]string, lim grid.Limits) (*Reader, error) {
	if err := checkTags(data); err != nil {
		return nil, err
	}
	dec := xml.NewDecoder(bytes.NewReader(data))
	// The caller has decoded the part; what its declaration says is history.
	dec.CharsetReader = func(_ string, in io.Reader) (io.Reader, error) { return in, nil }
	return &Reader{dec: dec, prefix: prefixes, names: map[xml.Name]string{}, lim: lim}, nil
}

// Next returns the next token. Comments and instructions are passed over.
// The error is a *grid.Unreadable or comes from Limits.Stop.
func (r *Reader) Next() (Token, error) {
	for {
		if r.tokens++; r.tokens%checkEvery == 0 {
			if err := r.lim.Check(); err != nil {
				return Token{}, err
			}
		}
		t, err := r.dec.Token()
		if errors.Is(err, io.EOF) {
			return Token{}, nil
		}
		if err != nil {
			return Token{}, grid.Damaged("%s", plainWords(err))
		}
		switch t := t.(type) {
		case xml.StartElement:
			if r.depth++; r.lim.MaxDepth > 0 && r.depth > r.lim.MaxDepth {
				return Token{}, grid.TooLarge("elements nested more than %d deep", r.lim.MaxDepth)
			}
			return Token{Kind: Start, Name: r.short(t.Name), attr: t.Attr}, nil
		case xml.EndElement:
			r.depth--
			return Token{Kind: End, Name: r.short(t.Name)}, nil
		case xml.CharData:
			return Token{Kind: Text, Text: t}, nil
		case xml.Directive:
			return Token{}, docType()
		}
	}
}

// Skip passes over the rest of the element whose start was read last.
func (r *Reader) Skip() error {
	for depth := 1; depth > 0; {
		t, err := r.Next()
		switch {
		case err != nil:
			return err
		case t.Kind == EOF:
			return grid.Damaged("the text ends inside an element")
		case t.Kind == Start:
			depth++
		case t.Kind == End:
			depth--
		}
	}
	return nil
}

// short returns a name with the prefix of its space.
func (r *Reader) short(n xml.Name) string {
	if n.Space == "" {
		return n.Local
	}
	if s, ok := r.names[n]; ok {
		return s
	}
	p, ok := r.prefix[n.Space]
	if !ok {
		p = "?"
	}
	s := p + ":" + n.Local
	if len(r.names) < 4096 { // a file may invent names without end
		r.names[n] = s
	}
	return s
}

func docType() error {
	return &grid.Unreadable{
		Reason: "the file declares a document type, which no spreadsheet program writes and which can be used to do harm",
		Advice: "open it in a spreadsheet program and save it as .xlsx",
	}
}

// plainWords drops the library's name from an error.
func plainWords(err error) string {
	var s *xml.SyntaxError
	if errors.As(err, &s) {
		return fmt.Sprintf("line %d: %s", s.Line, s.Msg)
	}
	return err.Error()
}

// checkTags refuses document types and tags longer than maxTag, before a
// decoder gathers all attributes of one.
func checkTags(data []byte) error {
	for {
		i := bytes.IndexByte(data, '<')
		if i < 0 {
			return nil
		}
		data = data[i:]
		var end int // length of the tag, or -1 when it does not end
		switch {
		case bytes.HasPrefix(data, []byte("<!--")):
			end = after(data, "-->")
		case bytes.HasPrefix(data, []byte("<![CDATA[")):
			end = after(data, "]]>")
		case bytes.HasPrefix(data, []byte("<?")):
			end = after(data, "?>")
		case bytes.HasPrefix(data, []byte("<!")):
			return docType()
		default:
			end = tagLength(data)
			if end > maxTag {
				return grid.TooLarge("a tag of more than %d bytes", maxTag)
			}
		}
		if end < 0 {
			return grid.Damaged("a tag is cut off")
		}
		data = data[end:]
	}
}

// after returns the number of bytes up to and including mark, or -1.
func after(data []byte, mark string) int {
	i := bytes.Index(data, []byte(mark))
	if i < 0 {
		return -1
	}
	return i + len(mark)
}

// tagLength returns the length of the tag that data begins with, > included;
// a > inside quotes does not end it. It looks no further than maxTag + 1.
func tagLength(data []byte) int {
	var quote byte
	for i, c := range data[:min(len(data), maxTag+1)] {
		switch {
		case quote != 0:
			if c == quote {
				quote = 0
			}
		case c == '"' || c == '\'':
			quote = c
		case c == '>':
			return i + 1
		}
	}
	if len(data) > maxTag {
		return maxTag + 1
	}
	return -1
}

// Children reads the content of the element whose start was read last, up to
// its end. For each child it calls elem, which must read that child to its
// end (with Children or Skip); text between them goes to text, if not nil.
func (r *Reader) Children(elem func(Token) error, text func([]byte) error) error {
	for {
		t, err := r.Next()
		if err != nil {
			return err
		}
		switch t.Kind {
		case EOF:
			return grid.Damaged("the text ends inside an element")
		case End:
			return nil
		case Start:
			err = elem(t)
		case Text:
			if text != nil {
				err = text(t.Text)
			}
		}
		if err != nil {
			return err
		}
	}
}

// Root reads up to the first element and returns its start.
func (r *Reader) Root() (Token, error) {
	for {
		t, err := r.Next()
		if err != nil {
			return Token{}, err
		}
		switch t.Kind {
		case EOF:
			return Token{}, grid.Damaged("it holds no element")
		case Start:
			return t, nil
		}
	}
}

// Finish checks that nothing but white space follows the root element.
func (r *Reader) Finish() error {
	for {
		t, err := r.Next()
		if err != nil {
			return err
		}
		switch {
		case t.Kind == EOF:
			return nil
		case t.Kind == Start, t.Kind == Text && len(bytes.TrimSpace(t.Text)) > 0:
			return grid.Damaged("something follows the end of the document")
		}
	}
}
