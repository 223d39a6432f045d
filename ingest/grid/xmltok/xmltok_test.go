package xmltok_test

import (
	"errors"
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
			s := "<" + t.Name
			for _, a := range []string{"a:x", "x"} {
				if v, ok := r.Lookup(t, a); ok {
					s += "," + a + "=" + v
				}
			}
			out = append(out, s+">")
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

func TestRefused(t *testing.T) {
	for _, tt := range []struct{ name, reason, data string }{
		{"document type", "document type", `<!DOCTYPE a><a/>`},
		{"document type behind a comment", "document type", `<!-- x --><!DOCTYPE a [<!ENTITY e "x">]><a>&e;</a>`},
		{"entity", "invalid character entity", `<a>&e;</a>`},
		{"wrong end", "closed by", `<a><b></a></b>`},
		{"cut in a tag", "cut off", `<a x="1`},
		{"cut in a comment", "cut off", `<a><!-- x`},
		{"cut in character data", "cut off", `<a><![CDATA[ x`},
		{"cut between tags", "unexpected EOF", `<a>text`},
		{"deep", "nested more than", strings.Repeat("<a>", 300)},
		{"many attributes", "a tag of more than", "<a " + strings.Repeat(`b=">" `, 1<<18) + "/>"},
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
