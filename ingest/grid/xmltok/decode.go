package xmltok

import (
	"bytes"
	"unicode/utf8"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/htmlindex"
	"golang.org/x/text/encoding/unicode"

	"lineaudit/ingest/grid"
)

// Decode returns an XML document in UTF-8: by its byte order mark, else by
// the zero bytes of UTF-16, else by what its declaration says, else as it is.
// The error is a *grid.Unreadable.
func Decode(data []byte) ([]byte, error) {
	switch {
	case bytes.HasPrefix(data, []byte("\xef\xbb\xbf")):
		return data[3:], nil
	case bytes.HasPrefix(data, []byte("\xff\xfe")), bytes.HasPrefix(data, []byte("<\x00")):
		return convert(data, unicode.UTF16(unicode.LittleEndian, unicode.UseBOM))
	case bytes.HasPrefix(data, []byte("\xfe\xff")):
		return convert(data, unicode.UTF16(unicode.BigEndian, unicode.UseBOM))
	case bytes.HasPrefix(data, []byte("\x00<")):
		return convert(data, unicode.UTF16(unicode.BigEndian, unicode.IgnoreBOM))
	}
	name := declared(data)
	if name == "" {
		return data, nil
	}
	enc, err := htmlindex.Get(name)
	if err != nil {
		return nil, &grid.Unreadable{
			Reason: "the file says that its text is in " + name + ", an encoding that is not known",
			Advice: "open it in the program that made it and save it as .xlsx",
		}
	}
	if canonical, _ := htmlindex.Name(enc); canonical == "utf-8" || canonical == "utf-16le" || canonical == "utf-16be" {
		return data, nil // it is not UTF-16, for its declaration could be read
	}
	return convert(data, enc)
}

// declared returns the encoding that an XML declaration names, or "".
func declared(data []byte) string {
	head := data[:min(len(data), 256)]
	if !bytes.HasPrefix(head, []byte("<?xml")) {
		return ""
	}
	end := bytes.Index(head, []byte("?>"))
	at := bytes.Index(head, []byte("encoding"))
	if at < 0 || end < at {
		return ""
	}
	rest := bytes.TrimLeft(head[at+len("encoding"):end], " \t\r\n=")
	if len(rest) < 2 {
		return ""
	}
	stop := bytes.IndexByte(rest[1:], rest[0])
	if stop < 0 || rest[0] != '"' && rest[0] != '\'' {
		return ""
	}
	return string(rest[1 : 1+stop])
}

// convert decodes data; a byte that the encoding has no character for is damage.
func convert(data []byte, enc encoding.Encoding) ([]byte, error) {
	out, err := enc.NewDecoder().Bytes(data)
	if err != nil || bytes.ContainsRune(out, utf8.RuneError) {
		return nil, grid.Damaged("its text does not fit the encoding that it states")
	}
	return out, nil
}
