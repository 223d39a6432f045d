package marked

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strings"

	"lineaudit/report"
)

// An outline is where the root of an XML part and the children of its root
// stand, as byte offsets, so that a part can be changed without being rewritten.
type outline struct {
	name      xml.Name // the root, its namespace resolved
	prefix    string   // the prefix of the root's name with its colon, or ""
	attrs     []xml.Attr
	openEnd   int  // the byte after the root's start tag
	close     int  // the byte where the root's end tag begins; openEnd for <root/>
	selfEnd   bool // the root is written <root/>
	children  []element
	rootStart int
}

// An element is a child of the root.
type element struct {
	name       string // local name
	start, end int    // bytes, tags included
	inner      int    // the byte after its start tag
	innerEnd   int    // where its end tag begins
	selfEnd    bool
	attrs      []xml.Attr
	elements   []element // its own children, without theirs
}

// attr returns an attribute by its local name.
func (e element) attr(name string) string {
	for _, a := range e.attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// locate reads the outline of a part: its root, children and grandchildren.
func locate(part []byte) (*outline, error) {
	if len(part) > 1 && (part[0] == 0xFE || part[0] == 0xFF) {
		return nil, errors.New("the part is not UTF-8")
	}
	from, to := rowsOf(part)
	at := func(offset int64) int { // in the part, of an offset in what the decoder sees
		if int(offset) > from {
			return int(offset) + to - from
		}
		return int(offset)
	}
	d := xml.NewDecoder(io.MultiReader(bytes.NewReader(part[:from]), bytes.NewReader(part[to:])))
	d.CharsetReader = func(charset string, r io.Reader) (io.Reader, error) {
		if strings.EqualFold(charset, "us-ascii") {
			return r, nil
		}
		return nil, fmt.Errorf("the part is written in %s", charset)
	}
	o := &outline{}
	depth := 0
	var open []*element
	for {
		before := at(d.InputOffset())
		tok, err := d.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			return nil, err
		}
		after := at(d.InputOffset())
		switch t := tok.(type) {
		case xml.Directive:
			if bytes.HasPrefix(t, []byte("DOCTYPE")) {
				return nil, errors.New("the part declares a document type")
			}
		case xml.StartElement:
			self := bytes.HasSuffix(part[before:after], []byte("/>"))
			switch depth {
			case 0:
				o.name, o.attrs, o.openEnd, o.selfEnd, o.rootStart = t.Name, t.Attr, after, self, before
				o.prefix = prefixOf(part[before:after])
			case 1:
				o.children = append(o.children, element{name: t.Name.Local, start: before, inner: after, selfEnd: self, attrs: t.Attr})
				open = append(open[:0], &o.children[len(o.children)-1])
			case 2:
				e := open[0]
				e.elements = append(e.elements, element{name: t.Name.Local, start: before, inner: after, selfEnd: self, attrs: t.Attr})
				open = append(open[:1], &e.elements[len(e.elements)-1])
			}
			depth++
		case xml.EndElement:
			depth--
			switch {
			case depth == 0:
				o.close = before
			case depth <= 2 && len(open) >= depth:
				open[depth-1].end, open[depth-1].innerEnd = after, before
			}
		}
	}
	if o.name.Local == "" {
		return nil, errors.New("the part is empty")
	}
	return o, nil
}

var rowsStart = regexp.MustCompile(`<(?:[\w.-]+:)?sheetData(?:\s[^<>]*)?>`)

// rowsOf returns where the rows of a worksheet part begin and end. They are
// most of it and never looked at or changed. Both are 0 where there are none.
func rowsOf(part []byte) (from, to int) {
	if !bytes.Contains(part, []byte("sheetData")) {
		return 0, 0 // most parts: a pattern looks at each of their tags
	}
	m := rowsStart.FindIndex(part)
	if m == nil || part[m[1]-2] == '/' {
		return 0, 0
	}
	end := bytes.Index(part[m[1]:], append([]byte("</"), append([]byte(prefixOf(part[m[0]:m[1]])), "sheetData"...)...))
	if end < 0 {
		return 0, 0
	}
	return m[1], m[1] + end
}

// prefixOf returns "x:" for "<x:worksheet ...", "" for "<worksheet ...".
func prefixOf(tag []byte) string {
	name := bytes.TrimLeft(tag, "<")
	if i := bytes.IndexAny(name, " \t\r\n/>"); i >= 0 {
		name = name[:i]
	}
	if i := bytes.IndexByte(name, ':'); i >= 0 {
		return string(name[:i+1])
	}
	return ""
}

// idAttr writes the attribute that refers to a relationship, with the prefix
// that the part has bound for it, or one of our own.
func (o *outline) idAttr(strict bool, id string) string {
	for _, a := range o.attrs {
		if a.Name.Space == "xmlns" && a.Value == relationNamespace(strict) {
			return fmt.Sprintf(` %s:id="%s"`, a.Name.Local, id)
		}
	}
	return fmt.Sprintf(` xmlns:audit="%s" audit:id="%s"`, relationNamespace(strict), id)
}

// child returns the first child with a name, or nil.
func (o *outline) child(name string) *element {
	for i := range o.children {
		if o.children[i].name == name {
			return &o.children[i]
		}
	}
	return nil
}

// An edit replaces the bytes from start to end.
type edit struct {
	start, end int
	text       string
}

// apply makes all edits, which must not overlap; edits at the same place keep their order.
func apply(part []byte, edits []edit) []byte {
	sortEdits(edits)
	var out bytes.Buffer
	at := 0
	for _, e := range edits {
		out.Write(part[at:e.start])
		out.WriteString(e.text)
		at = e.end
	}
	out.Write(part[at:])
	return out.Bytes()
}

// inside returns the edit that puts text at the end of the root's content.
func (o *outline) inside(part []byte, text string) edit {
	if !o.selfEnd {
		return edit{o.close, o.close, text}
	}
	tag := string(part[o.rootStart:o.openEnd])
	name := strings.TrimLeft(tag, "<")
	name = name[:strings.IndexAny(name, " \t\r\n/>")]
	return edit{o.openEnd - 2, o.openEnd, ">" + text + "</" + name + ">"}
}

// appendTo returns the edit that puts text at the end of an element's content.
func (e *element) appendTo(part []byte, text string) edit {
	if !e.selfEnd {
		return edit{e.innerEnd, e.innerEnd, text}
	}
	name := strings.TrimLeft(string(part[e.start:e.inner]), "<")
	name = name[:strings.IndexAny(name, " \t\r\n/>")]
	return edit{e.inner - 2, e.inner, ">" + text + "</" + name + ">"}
}

// afterLast returns where a new child must stand when the order of children is
// fixed: behind the last child that may come before it.
func (o *outline) afterLast(order []string, name string) int {
	rank := map[string]int{}
	for i, n := range order {
		rank[n] = i
	}
	at := o.openEnd
	for _, c := range o.children {
		if r, known := rank[c.name]; known && r <= rank[name] {
			at = c.end
		}
	}
	return at
}

// setAttr returns the edit that sets an attribute in the start tag of an
// element; it replaces the value if the attribute is there.
func setAttr(part []byte, start, inner int, name, value string) edit {
	tag := part[start:inner]
	if s, e, ok := findAttr(tag, name); ok {
		return edit{start + s, start + e, value}
	}
	end := len(tag) - 1
	if bytes.HasSuffix(tag, []byte("/>")) {
		end--
	}
	return edit{start + end, start + end, " " + name + `="` + value + `"`}
}

// findAttr returns where the value of an attribute stands in a start tag.
func findAttr(tag []byte, name string) (start, end int, ok bool) {
	for i := 0; i < len(tag); i++ {
		switch c := tag[i]; {
		case c == '"' || c == '\'':
			j := bytes.IndexByte(tag[i+1:], c)
			if j < 0 {
				return 0, 0, false
			}
			i += j + 1
		case (c == ' ' || c == '\t' || c == '\n' || c == '\r') && bytes.HasPrefix(tag[i+1:], []byte(name)):
			rest := i + 1 + len(name)
			for rest < len(tag) && (tag[rest] == ' ' || tag[rest] == '=') {
				rest++
			}
			if rest == i+1+len(name) || rest >= len(tag) || tag[rest] != '"' && tag[rest] != '\'' {
				continue
			}
			j := bytes.IndexByte(tag[rest+1:], tag[rest])
			if j < 0 {
				return 0, 0, false
			}
			return rest + 1, rest + 1 + j, true
		}
	}
	return 0, 0, false
}

// escape makes text safe inside an element or an attribute value.
func escape(s string) string {
	var b bytes.Buffer
	xml.EscapeText(&b, []byte(report.CellText(s)))
	return b.String()
}

var likeEscape = regexp.MustCompile(`_(x[0-9A-Fa-f]{4}_)`)

// cellText makes a text safe as the content of a cell or a note, where
// spreadsheet programs take _x0041_ for a character.
func cellText(s string) string { return escape(likeEscape.ReplaceAllString(s, "_x005F_$1")) }
