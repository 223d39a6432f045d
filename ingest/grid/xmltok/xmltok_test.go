package xmltok_test

import (
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"golang.org/x/text/encoding/unicode"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/xmltok"
)

var spaces = map[string]string{"urn:a": "a", "urn:b": "b"}

// walk reads a part to its end and returns its tokens as words.
func walk(data string, lim grid.Limits) (string, error) {
	r, err := xmltok.New([]byte(data), spaces, lim)
	if err != nil {
		return "", err
	}
	var out []string
	for {
		t, err := r.Next()
		switch {
		case err != nil:
			return "", err
		case t.Kind == xmltok.EOF:
			return strings.Join(out, " "), nil
		case t.Kind == xmltok.Start:
			var s strings.Builder
			s.WriteString("<" + t.Name)
			for _, a := range []string{"a:x", "x"} {
				if v, ok := r.Lookup(t, a); ok {
					s.WriteString("," + a + "=" + v)
				}
			}
			out = append(out, s.String()+">")
		case t.Kind == xmltok.End:
			out = append(out, "</"+t.Name+">")
		case t.Kind == xmltok.Text:
			out = append(out, string(t.Text))
		}
	}
}

func TestNames(t *testing.T) {
	got, err := walk(`<?xml version="1.0"?><!-- < --><p:r xmlns:p="urn:a" xmlns="urn:b" p:x="1" x="2>3"><q>t&lt;<![CDATA[<u>]]></q><o xmlns="urn:c"/><n xmlns=""/></p:r>`, grid.DefaultLimits())
	const want = `<a:r,a:x=1,x=2>3> <b:q> t< <u> </b:q> <?:o> </?:o> <n> </n> </a:r>`
	if err != nil || got != want {
		t.Errorf("%v\n got %s\nwant %s", err, got, want)
	}
}

func TestReferences(t *testing.T) {
	got, err := walk(`<a x="&quot;&#x41;">&lt;&gt;&amp;&apos;&quot;&#65;&#x2126;&#7;&#xd800;</a>`, grid.DefaultLimits())
	if want := "<a,x=\"A> <>&'\"A\u2126\ufffd\ufffd </a>"; err != nil || got != want {
		t.Errorf("%v\n got %s\nwant %s", err, got, want)
	}
}

func TestRefused(t *testing.T) {
	for _, tt := range []struct{ name, reason, data string }{
		{"document type", "document type", `<!DOCTYPE a><a/>`},
		{"document type behind a comment", "document type", `<!-- x --><!DOCTYPE a [<!ENTITY e "x">]><a>&e;</a>`},
		{"entity", "entity that is not known", `<a>&e;</a>`},
		{"wrong end", "not where it belongs", `<a><b></a></b>`},
		{"cut in a tag", "cut off", `<a x="1`},
		{"cut in a comment", "cut off", `<a><!-- x`},
		{"cut in character data", "cut off", `<a><![CDATA[ x`},
		{"cut between tags", "cut short", `<a>text`},
		{"stray &", "stray &", `<a>b & c</a>`},
		{"attribute without quotes", "not in quotes", `<a b=c/>`},
		{"attribute without a value", "no value", `<a b/>`},
		{"attributes not parted", "no attribute", `<a b="1"c="2"/>`},
		{"< in an attribute", "holds a <", `<a b="<"/>`},
		{"unknown entity in an attribute", "not known", `<a b="&e;"/>`},
		{"character of a number", "not known", `<a>&#0;</a>`},
		{"control character", "does not allow", "<a>\x01</a>"},
		{"bad UTF-8", "does not allow", "<a>\xff</a>"},
		{"end without a start", "not where it belongs", `<a/></a>`},
		{"]]> in text", "]]>", `<a>]]></a>`},
		{"line is named", "line 3:", "<a>\n\n</b>"},
		{"deep", "nested more than", strings.Repeat("<a>", 300)},
		{"many attributes", "a tag of more than", "<a " + strings.Repeat(`b=">" `, 1<<14) + "/>"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, err := walk(tt.data, grid.DefaultLimits())
			u, ok := errors.AsType[*grid.Unreadable](err)
			if !ok || !strings.Contains(u.Reason, tt.reason) {
				t.Errorf("error %v, want one with %q", err, tt.reason)
			}
		})
	}
}

func TestStopIsAsked(t *testing.T) {
	stop := errors.New("enough")
	lim := grid.DefaultLimits()
	lim.Stop = func() error { return stop }
	if _, err := walk("<a>"+strings.Repeat("<b/>", 10_000)+"</a>", lim); !errors.Is(err, stop) {
		t.Errorf("error %v, want what Stop returned", err)
	}
}

func TestDecode(t *testing.T) {
	const doc = `<?xml version="1.0" encoding="utf-16"?><a>²</a>`
	le, err := unicode.UTF16(unicode.LittleEndian, unicode.IgnoreBOM).NewEncoder().String(doc)
	if err != nil {
		t.Fatal(err)
	}
	be, err := unicode.UTF16(unicode.BigEndian, unicode.UseBOM).NewEncoder().String(doc)
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct{ name, in, want string }{
		{"UTF-8", "<a>²</a>", "<a>²</a>"},
		{"UTF-8 with a mark", "\ufeff<a>²</a>", "<a>²</a>"},
		{"UTF-16 without a mark", le, doc},
		{"UTF-16 with a mark", be, doc},
		{"Latin-1", `<?xml version='1.0' encoding='ISO-8859-1'?><a>` + "\xb2</a>", `<?xml version='1.0' encoding='ISO-8859-1'?><a>²</a>`},
		{"UTF-16 in name only", doc, doc},
	} {
		got, err := xmltok.Decode([]byte(tt.in))
		if err != nil || string(got) != tt.want {
			t.Errorf("%s: %q %v, want %q", tt.name, got, err, tt.want)
		}
	}
	for name, in := range map[string]string{
		"unknown encoding":    `<?xml version="1.0" encoding="x-house"?><a/>`,
		"half a character":    "\xff\xfe<\x00a",
		"unmapped characters": `<?xml version="1.0" encoding="windows-1253"?><a>` + "\xaa</a>",
	} {
		if got, err := xmltok.Decode([]byte(in)); err == nil {
			t.Errorf("%s: %q, want an error", name, got)
		}
	}
}

// FuzzAgainstEncodingXML compares the tokens with those of the standard
// library. It is stricter in places and knows name spaces by other rules;
// what this package accepts, the library must read the same.
func FuzzAgainstEncodingXML(f *testing.F) {
	f.Add(`<?xml version="1.0"?><!-- < --><p:r xmlns:p="urn:a" xmlns="urn:b" p:x="1" x="2>3"><q>t&lt;&#65;<![CDATA[<u>]]></q></p:r>`)
	f.Add("<a b='&quot;\r\n'>\r\n\rx</a>\n")
	lim := grid.DefaultLimits()
	f.Fuzz(func(t *testing.T, data string) {
		r, err := xmltok.New([]byte(data), map[string]string{}, lim)
		if err != nil {
			return
		}
		var ours strings.Builder
		for {
			tok, err := r.Next()
			if err != nil {
				return
			}
			if tok.Kind == xmltok.EOF {
				break
			}
			switch name := strings.TrimPrefix(tok.Name, "?:"); tok.Kind {
			case xmltok.Start:
				ours.WriteString("<" + name + ">")
			case xmltok.End:
				ours.WriteString("</" + name + ">")
			case xmltok.Text:
				ours.Write(tok.Text)
			}
		}
		theirs, err := standard(data)
		if err == nil && theirs != ours.String() {
			t.Errorf("%q\nis  %q\nlibrary %q", data, ours.String(), theirs)
		}
	})
}

// standard writes the tokens of the standard library in the same way.
func standard(data string) (string, error) {
	var out strings.Builder
	d := xml.NewDecoder(strings.NewReader(data))
	d.CharsetReader = func(_ string, in io.Reader) (io.Reader, error) { return in, nil }
	for {
		tok, err := d.Token()
		if errors.Is(err, io.EOF) {
			return out.String(), nil
		}
		if err != nil {
			return "", err
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			out.WriteString("<" + tok.Name.Local + ">")
		case xml.EndElement:
			out.WriteString("</" + tok.Name.Local + ">")
		case xml.CharData:
			out.Write(tok)
		}
	}
}

func BenchmarkNext(b *testing.B) {
	data := []byte(`<t xmlns="urn:a" xmlns:b="urn:b">` + strings.Repeat(`<row b:n="1"><cell b:type="float" b:value="7.5"><p>7.5 W &amp; more</p></cell></row>`, 10_000) + "</t>")
	b.SetBytes(int64(len(data)))
	for b.Loop() {
		r, err := xmltok.New(data, spaces, grid.DefaultLimits())
		if err != nil {
			b.Fatal(err)
		}
		for {
			t, err := r.Next()
			if err != nil {
				b.Fatal(err)
			}
			if t.Kind == xmltok.EOF {
				break
			}
		}
	}
}
