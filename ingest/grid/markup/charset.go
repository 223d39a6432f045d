package markup

import (
	"bytes"
	"strings"
	"unicode/utf8"

	"golang.org/x/net/html"
	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/htmlindex"
	"golang.org/x/text/encoding/unicode"

	"lineaudit/ingest/grid"
)

// prescan is how far into a page its encoding is looked for, in bytes.
const prescan = 16 << 10

// decodeHTML returns a page in UTF-8, and what was taken for granted: its byte
// order mark decides, else the zero bytes of UTF-16, else its meta tag, else
// whether it is valid UTF-8; the rest is taken for Windows-1252.
func decodeHTML(data []byte) (text []byte, remark string, err error) {
	switch {
	case bytes.HasPrefix(data, []byte("\xef\xbb\xbf")):
		return validUTF8(data[3:])
	case bytes.HasPrefix(data, []byte("\xff\xfe")), bytes.HasPrefix(data, []byte("<\x00")):
		return convert(data, unicode.UTF16(unicode.LittleEndian, unicode.UseBOM))
	case bytes.HasPrefix(data, []byte("\xfe\xff")):
		return convert(data, unicode.UTF16(unicode.BigEndian, unicode.UseBOM))
	case bytes.HasPrefix(data, []byte("\x00<")):
		return convert(data, unicode.UTF16(unicode.BigEndian, unicode.IgnoreBOM))
	}
	name := metaCharset(data[:min(len(data), prescan)])
	if name == "" {
		if utf8.Valid(data) {
			return data, "", nil
		}
		text, _, err = convert(data, charmap.Windows1252)
		return text, "the page does not state its encoding; its text was read as Windows-1252", err
	}
	enc, err := htmlindex.Get(name)
	switch {
	case err != nil && utf8.Valid(data):
		return data, "the encoding " + name + " that the page states is not known; its text is valid UTF-8", nil
	case err != nil:
		text, _, err = convert(data, charmap.Windows1252)
		return text, "the encoding " + name + " that the page states is not known; its text was read as Windows-1252", err
	}
	switch canonical, _ := htmlindex.Name(enc); canonical {
	case "utf-8", "utf-16le", "utf-16be": // it is not UTF-16, for its tag could be read
		return validUTF8(data)
	}
	return convert(data, enc)
}

// validUTF8 returns a page that states UTF-8, or reads it as Windows-1252
// where it is none.
func validUTF8(data []byte) ([]byte, string, error) {
	if utf8.Valid(data) {
		return data, "", nil
	}
	text, _, err := convert(data, charmap.Windows1252)
	return text, "the page states UTF-8 and is not; its text was read as Windows-1252", err
}

func convert(data []byte, enc encoding.Encoding) ([]byte, string, error) {
	out, err := enc.NewDecoder().Bytes(data)
	if err != nil {
		return nil, "", grid.Damaged("its text does not fit the encoding that it states")
	}
	return out, "", nil
}

// metaCharset returns the encoding that a meta tag names, or "".
func metaCharset(head []byte) string {
	tok := html.NewTokenizer(bytes.NewReader(head))
	for {
		switch tok.Next() {
		case html.ErrorToken:
			return ""
		case html.StartTagToken, html.SelfClosingTagToken:
			t := tok.Token()
			if t.Data == "body" || t.Data == "table" {
				return ""
			}
			if t.Data != "meta" {
				continue
			}
			for _, a := range t.Attr {
				switch a.Key {
				case "charset":
					return a.Val
				case "content":
					if _, name, ok := strings.Cut(strings.ToLower(a.Val), "charset="); ok {
						name, _, _ = strings.Cut(name, ";")
						return strings.Trim(name, ` "'`)
					}
				}
			}
		}
	}
}
