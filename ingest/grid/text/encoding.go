package text

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/htmlindex"
	"golang.org/x/text/encoding/ianaindex"
	"golang.org/x/text/encoding/unicode"

	"lineaudit/ingest/grid"
)

// ErrEncoding is wrapped by the error for an encoding name that is unknown.
var ErrEncoding = errors.New("unknown encoding")

// Encoding finds an encoding by a name of the WHATWG Encoding Standard or of
// the IANA registry, in either case, e.g. "windows-1250", "shift_jis", "IBM850".
// Its error wraps ErrEncoding.
func Encoding(name string) (encoding.Encoding, error) {
	if e, err := htmlindex.Get(name); err == nil {
		return e, nil
	}
	if e, err := ianaindex.IANA.Encoding(name); err == nil && e != nil {
		return e, nil
	}
	return nil, fmt.Errorf("%w %q: try utf-8, utf-16le, windows-1252, windows-1250, iso-8859-15, macintosh or ibm850", ErrEncoding, name)
}

var (
	utf8Mark = []byte("\xef\xbb\xbf")
	lowFirst = []byte("\xff\xfe")
	bigFirst = []byte("\xfe\xff")
)

// decode returns the text as UTF-8 without a byte order mark, and what was
// taken for granted. Without a name and without a mark, the zero bytes of
// plain characters give UTF-16 away; what is valid UTF-8 is UTF-8, whatever the
// name; the rest
// is taken for Windows-1252, of which ISO-8859-1 text is a part.
func decode(data []byte, name string) (text string, notes []string, err error) {
	var enc encoding.Encoding
	if name != "" {
		if enc, err = Encoding(name); err != nil {
			return "", nil, err
		}
	}
	switch {
	case bytes.HasPrefix(data, utf8Mark):
		data, enc = data[len(utf8Mark):], nil
		if !utf8.Valid(data) {
			notes = append(notes, "the text is marked as UTF-8 and is not UTF-8 throughout; what could not be read shows as \uFFFD")
			data = bytes.ToValidUTF8(data, []byte("\uFFFD"))
		}
	case bytes.HasPrefix(data, lowFirst):
		data, enc = data[2:], unicode.UTF16(unicode.LittleEndian, unicode.IgnoreBOM)
	case bytes.HasPrefix(data, bigFirst):
		data, enc = data[2:], unicode.UTF16(unicode.BigEndian, unicode.IgnoreBOM)
	case enc != nil && plainlyUTF8(data, name):
		enc, notes = nil, append(notes, "read as UTF-8, which it plainly is, not as "+strings.ToLower(name))
	case enc != nil:
		notes = append(notes, "read as "+strings.ToLower(name)+", as asked")
	default:
		enc, data, notes = guess(data)
	}
	if enc != nil {
		if data, err = enc.NewDecoder().Bytes(data); err != nil {
			return "", nil, &grid.Unreadable{Reason: "the text is not in the encoding it was said to be in", Advice: "name another encoding"}
		}
	}
	data = bytes.TrimSuffix(data, []byte{0x1a}) // the end mark of old systems
	if err := binary(data); err != nil {
		return "", nil, err
	}
	return string(data), notes, nil
}

// plainlyUTF8 reports whether a text is valid UTF-8 and more than ASCII: no text
// in another encoding happens to be, and an archive may hold both. Encodings of
// which that is not known are taken as asked.
func plainlyUTF8(data []byte, asked string) bool {
	if low := strings.ToLower(asked); strings.HasPrefix(low, "utf") || strings.HasPrefix(low, "ucs") {
		return false
	}
	return utf8.Valid(data) && bytes.ContainsFunc(data, func(r rune) bool { return r >= utf8.RuneSelf })
}

// guess finds the encoding of text without a byte order mark; nil is UTF-8.
func guess(data []byte) (encoding.Encoding, []byte, []string) {
	even, odd := 0, 0
	head := data[:min(len(data), 4096)]
	for i, c := range head {
		if c == 0 {
			if i%2 == 0 {
				even++
			} else {
				odd++
			}
		}
	}
	switch n := len(head) / 2; {
	case n > 4 && odd > n*3/5 && even < n/10:
		return unicode.UTF16(unicode.LittleEndian, unicode.IgnoreBOM), data, []string{"read as UTF-16 without a byte order mark, by its zero bytes"}
	case n > 4 && even > n*3/5 && odd < n/10:
		return unicode.UTF16(unicode.BigEndian, unicode.IgnoreBOM), data, []string{"read as UTF-16 without a byte order mark, by its zero bytes"}
	}
	if utf8.Valid(data) {
		return nil, data, nil
	}
	good, bad, end := sequences(data)
	switch {
	case bad == 0 && end:
		return nil, bytes.ToValidUTF8(data, nil), []string{"the text ends in the middle of a character: it may be cut short"}
	case good > 4*bad:
		return nil, bytes.ToValidUTF8(data, []byte("\uFFFD")), []string{"the text is UTF-8 but for some bytes, which show as \uFFFD"}
	}
	return charmap.Windows1252, data, []string{"the encoding is not UTF-8; it was taken for Windows-1252"}
}

// sequences counts the characters of several bytes that are valid UTF-8 and
// the bytes that are not; end is set if a character breaks off at the end.
func sequences(data []byte) (good, bad int, end bool) {
	for i := 0; i < len(data); {
		if data[i] < utf8.RuneSelf {
			i++
			continue
		}
		r, n := utf8.DecodeRune(data[i:])
		switch {
		case r != utf8.RuneError || n > 1:
			good++
		case !utf8.FullRune(data[i:]):
			return good, bad, true
		default:
			bad++
		}
		i += n
	}
	return good, bad, false
}

// binary refuses what is no text: a zero byte, or more than one control
// character in two hundred.
func binary(data []byte) error {
	odd := 0
	for _, c := range data {
		if c < 0x20 && c != '\t' && c != '\n' && c != '\r' && c != '\f' && c != '\v' {
			odd++
			if c == 0 {
				odd += len(data)
				break
			}
		}
	}
	if odd > max(2, len(data)/200) {
		return &grid.Unreadable{
			Reason: "the content is neither a workbook nor text",
			Advice: "find out what program made it and save it there as .xlsx or .csv",
		}
	}
	return nil
}
