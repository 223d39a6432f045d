// Package xmltok reads the elements of an XML part that nobody vouches for:
// no document type, no entities of its own, bounded tags and nesting.
package xmltok

import (
	"bytes"
	"fmt"

	"lineaudit/ingest/grid"
)

// A Kind says what a Token is.
type Kind uint8

// End of the part, start and end of an element, and text between them.
const (
	EOF Kind = iota
	Start
	End
	Text
)

// A Token is one piece of a part. Names of elements carry the short prefixes
// given to New, e.g. "table:table-row", whatever prefixes the file uses; a
// name from an unknown space begins with "?:".
type Token struct {
	Kind Kind
	Name string
	Text []byte // valid until the next call of a method
	attr []attribute
}

// A Reader walks one part.
type Reader struct {
	data       []byte
	pos        int
	prefix     map[string]string // short prefix by name space
	lim        grid.Limits
	tokens     int
	open       []element
	pendingEnd bool        // the start tag read last was also an end tag
	attrs      []attribute // of the last tags; tokens point into it
	rawAttrs   []rawAttribute
	bindings   []binding
	names      map[string]string // short form by name as it stands
	key, buf   []byte
}

// checkEvery is the number of tokens between two questions to Limits.Stop.
const checkEvery = 1 << 13

// New returns a reader of a UTF-8 part. The map gives the short prefix of each
// name space. The error is a *grid.Unreadable.
func New(data []byte, prefixes map[string]string, lim grid.Limits) (*Reader, error) {
	r := &Reader{data: data, prefix: prefixes, lim: lim, names: map[string]string{}}
	if i := badCharacter(data); i >= 0 {
		r.pos = i
		return nil, r.damaged("a character that XML does not allow")
	}
	return r, nil
}

// Attr returns the value of an attribute of a start tag, such as
// "office:value", or "". An attribute without a prefix belongs to no space:
// "name".
func (r *Reader) Attr(t Token, name string) string {
	v, _ := r.Lookup(t, name)
	return v
}

// Lookup is Attr that also says whether the attribute is there.
func (r *Reader) Lookup(t Token, name string) (string, bool) {
	for i := range t.attr {
		if a := &t.attr[i]; a.name == name {
			b, err := r.unescape(a.value)
			if err != nil { // the tag was checked when it was read
				return "", false
			}
			return string(b), true
		}
	}
	return "", false
}

// Next returns the next token. Comments and instructions are passed over.
// The error is a *grid.Unreadable or comes from Limits.Stop.
func (r *Reader) Next() (Token, error) {
	if r.pendingEnd {
		r.pendingEnd = false
		return r.close(), nil
	}
	for {
		if r.tokens++; r.tokens%checkEvery == 0 {
			if err := r.lim.Check(); err != nil {
				return Token{}, err
			}
		}
		switch {
		case r.pos >= len(r.data):
			if len(r.open) > 0 {
				return Token{}, r.damaged("the file ends inside an element: it is cut short")
			}
			return Token{}, nil
		case r.data[r.pos] != '<':
			return r.text()
		}
		t, ok, err := r.markup()
		switch {
		case err != nil:
			return Token{}, err
		case t.Kind == Start && r.lim.MaxDepth > 0 && len(r.open) > r.lim.MaxDepth:
			return Token{}, grid.TooLarge("elements nested more than %d deep", r.lim.MaxDepth)
		case ok:
			return t, nil
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

func docType() error {
	return &grid.Unreadable{
		Reason: "the file declares a document type, which no spreadsheet program writes and which can be used to do harm",
		Advice: "open it in a spreadsheet program and save it as .xlsx",
	}
}

func tooMany() error {
	return grid.TooLarge("a tag of more than %d attributes or name spaces", maxAttributes)
}

// damaged returns a *grid.Unreadable that says where in the part.
func (r *Reader) damaged(format string, args ...any) error {
	line := 1 + bytes.Count(r.data[:min(r.pos, len(r.data))], []byte{'\n'})
	return grid.Damaged("line %d: %s", line, fmt.Sprintf(format, args...))
}

// cutOr says that a tag is cut off at the end of the part, else what is wrong.
func (r *Reader) cutOr(what string) error {
	if r.pos >= len(r.data) {
		what = "a tag is cut off"
	}
	return r.damaged("%s", what)
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
