package source

import (
	"archive/zip"
	"bytes"
	"errors"
	"io"
	"regexp"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/zipdir"
)

// headSize is how much of the beginning of a file tells what it is.
const headSize = 8192

// A kind is what the bytes of a file say that it is.
type kind struct {
	format  grid.Format
	what    string // for people, with its article, e.g. "a PDF document"
	convert string // what LibreOffice is to take it for: a file extension, "" if it is no table
}

// identified tells what a file is, with its directory if that was read for it.
type identified struct {
	kind
	zip *zip.Reader
}

// Sniff tells the format of a file by its bytes.
func Sniff(data []byte) grid.Format { return identify(data).format }

// identify looks at the beginning of the file and, for a zip, its directory.
func identify(data []byte) identified {
	k, isZip := identifyHead(data)
	if !isZip {
		return identified{kind: k}
	}
	in := identifyZip(bytes.NewReader(data), int64(len(data)), data[:min(len(data), headSize)])
	if k.what != "" && in.format == grid.Zip { // something else that a zip stands behind
		return identified{kind: k}
	}
	return in
}

// identifyHead looks at the beginning of the file. It may be a zip, or end in
// one: then the kind is what it is otherwise, if it is.
func identifyHead(data []byte) (k kind, isZip bool) {
	head := data[:min(len(data), headSize)]
	for _, s := range signatures {
		if len(head) < s.at || !bytes.HasPrefix(head[s.at:], []byte(s.bytes)) {
			continue
		}
		// Words such as "MZ" may begin a table too; the files meant hold zero bytes.
		isText := strings.Trim(s.bytes, printable) == ""
		if !isText || len(s.bytes) > 4 || bytes.IndexByte(head, 0) >= 0 {
			return s.kind, false
		}
	}
	if k, ok := identifyOldText(head); ok {
		return k, false
	}
	switch {
	case bytes.HasPrefix(head, []byte("PK\x03\x04")), bytes.HasPrefix(head, []byte("PK\x05\x06")):
		return kind{}, true
	case bytes.HasPrefix(head, []byte("\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1")):
		return identifyCompound(data), false
	case len(head) > 8 && head[0] == 9 && head[3] == 0 && head[2] >= 4 && head[2] <= 16:
		switch head[1] {
		case 0, 2, 4:
			return kind{grid.Other, "a workbook of Excel 2, 3 or 4", "xls"}, false
		case 8:
			return kind{grid.XLS, "an Excel 97-2003 workbook", ""}, false
		}
	}
	if len(head) > 14 && string(head[:2]) == "BM" && string(head[6:10]) == "\x00\x00\x00\x00" {
		return kind{grid.Other, "a picture (BMP)", ""}, false
	}
	if k, ok := identifyMarkup(head); ok {
		return k, false
	}
	return kind{grid.Text, "a text file", ""}, endsWithZip(data)
}

// signatures are the first bytes of files that are neither zips, compound
// files nor markup, as their makers publish them.
var signatures = []struct {
	at    int
	bytes string
	kind  kind
}{
	{0, "%PDF-", kind{grid.Other, "a PDF document", ""}},
	{0, "%!PS", kind{grid.Other, "a PostScript document", ""}},
	{0, "\x89PNG\r\n\x1a\n", kind{grid.Other, "a picture (PNG)", ""}},
	{0, "\xff\xd8\xff", kind{grid.Other, "a picture (JPEG)", ""}},
	{0, "GIF8", kind{grid.Other, "a picture (GIF)", ""}},
	{0, "II*\x00", kind{grid.Other, "a picture (TIFF)", ""}},
	{0, "MM\x00*", kind{grid.Other, "a picture (TIFF)", ""}},
	{4, "ftyp", kind{grid.Other, "a picture or film (HEIC, MP4 or the like)", ""}},
	{8, "WEBP", kind{grid.Other, "a picture (WebP)", ""}},
	{0, "AC10", kind{grid.Other, "a CAD drawing (DWG)", ""}},
	{0, "{\\rtf", kind{grid.Other, "a rich text document (RTF)", ""}},
	{0, "7z\xbc\xaf\x27\x1c", kind{grid.Other, "a 7z archive", ""}},
	{0, "Rar!\x1a\x07", kind{grid.Other, "a RAR archive", ""}},
	{0, "\x1f\x8b", kind{grid.Other, "a gzip archive", ""}},
	{0, "BZh", kind{grid.Other, "a bzip2 archive", ""}},
	{0, "\xfd7zXZ\x00", kind{grid.Other, "an xz archive", ""}},
	{0, "SQLite format 3\x00", kind{grid.Other, "a database (SQLite)", ""}},
	{4, "Standard Jet DB", kind{grid.Other, "a database (Access)", ""}},
	{4, "Standard ACE DB", kind{grid.Other, "a database (Access)", ""}},
	{0, "MZ", kind{grid.Other, "a program", ""}},
	{0, "\x7fELF", kind{grid.Other, "a program", ""}},
	{0, "\x00\x05\x16\x07", kind{grid.Other, "a companion file of a Macintosh without the file's content", ""}},
	{0, "\x00\x05\x16\x00", kind{grid.Other, "a companion file of a Macintosh without the file's content", ""}},
	{0, "\x00\x00\x02\x00\x06\x04", kind{grid.Other, "a Lotus 1-2-3 worksheet", "wk1"}},
	{0, "\x00\x00\x02\x00\x04\x04", kind{grid.Other, "a Lotus 1-2-3 worksheet", "wk1"}},
	{0, "\x00\x00\x1a\x00\x00\x10\x04\x00", kind{grid.Other, "a Lotus 1-2-3 worksheet", "wk3"}},
	{0, "\x00\x00\x1a\x00\x02\x10\x04\x00", kind{grid.Other, "a Lotus 1-2-3 worksheet", "wk4"}},
	{0, "\x00\x00\x1a\x00\x03\x10\x04\x00", kind{grid.Other, "a Lotus 1-2-3 worksheet", "123"}},
}

const printable = " !%&*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz"

// sylk is the head of a SYLK table: an ID record and another record. A list
// whose first column is called ID begins much the same.
var sylk = regexp.MustCompile(`^ID;P[^;\r\n]*(;[NE])*(?:\r\n?|\n)([BCFOPEW]|NN|NE|NU)(;|\r|\n|$)`)

// dif is the head of a DIF table.
var dif = regexp.MustCompile(`^TABLE(?:\r\n?|\n)0,1(?:\r\n?|\n)"[^\r\n]*(?:\r\n?|\n)(VECTORS|TUPLES|DATA|LABEL)`)

// identifyOldText tells the tables apart that old programs wrote as text.
func identifyOldText(head []byte) (kind, bool) {
	switch {
	case sylk.Match(head):
		return kind{grid.Other, "a SYLK table", "slk"}, true
	case dif.Match(head):
		return kind{grid.Other, "a DIF table", "dif"}, true
	}
	return kind{}, false
}

// identifyZip looks for the members that only workbooks and documents have.
func identifyZip(r io.ReaderAt, size int64, head []byte) identified {
	z, err := zipdir.Open(r, size, grid.DefaultLimits().MaxMembers)
	if errors.Is(err, zipdir.ErrTooMany) {
		return identified{kind: kind{grid.Zip, "a zip of very many members", ""}}
	}
	if err != nil {
		return identified{kind: cutZip(head)}
	}
	return identified{zipKind(z), z}
}

func zipKind(z *zip.Reader) kind {
	names := make([]string, len(z.File))
	for i, f := range z.File {
		names[i] = strings.ToLower(strings.TrimLeft(strings.ReplaceAll(f.Name, `\`, "/"), "/"))
	}
	has := func(ends ...string) bool {
		for _, name := range names {
			for _, e := range ends {
				if name == e || strings.HasSuffix(e, "/") && strings.HasPrefix(name, e) || strings.HasPrefix(e, "/") && strings.HasSuffix(name, e) {
					return true
				}
			}
		}
		return false
	}
	if mime := mimeMember(z); mime != "" {
		if k, ok := documentKinds[strings.TrimSuffix(mime, "-template")]; ok {
			return k
		}
	}
	switch office := has("[content_types].xml", "_rels/.rels"); {
	case has("xl/workbook.bin"), office && has("/workbook.bin"):
		return kind{grid.XLSB, "a binary workbook (.xlsb)", "xlsb"}
	case has("xl/vbaproject.bin"):
		return kind{grid.XLSM, "an Excel workbook", ""}
	case has("xl/workbook.xml"), office && has("workbook.xml", "/workbook.xml", "xl/"):
		return kind{grid.XLSX, "an Excel workbook", ""}
	case office && has("word/"):
		return kind{grid.Other, "a Word document", ""}
	case office && has("ppt/"):
		return kind{grid.Other, "a PowerPoint presentation", ""}
	case office && has("visio/"):
		return kind{grid.Other, "a Visio drawing", ""}
	case office: // its sheet list may be anywhere
		return kind{grid.XLSX, "an Excel workbook", ""}
	case has("content.xml") && has("meta-inf/manifest.xml", "meta-inf/", "styles.xml"):
		return kind{grid.ODS, "an OpenDocument spreadsheet", ""}
	case has("index/", "index.zip") && has("metadata/", "index/document.iwa", "buildversionhistory.plist"):
		return kind{grid.Other, "a Numbers spreadsheet (or another document of that family)", "numbers"}
	}
	return kind{grid.Zip, "a zip", ""}
}

// mimeMember returns what the member "mimetype" holds; the documents that
// have one store it unpacked.
func mimeMember(z *zip.Reader) string {
	for _, f := range z.File {
		if f.Name != "mimetype" || f.UncompressedSize64 > 200 {
			continue
		}
		r, err := f.Open()
		if err != nil {
			return ""
		}
		b, err := io.ReadAll(io.LimitReader(r, 200))
		r.Close()
		if err != nil {
			return ""
		}
		return strings.TrimSpace(string(b))
	}
	return ""
}

var documentKinds = map[string]kind{
	"application/vnd.oasis.opendocument.spreadsheet":  {grid.ODS, "an OpenDocument spreadsheet", ""},
	"application/vnd.sun.xml.calc":                    {grid.Other, "a StarOffice spreadsheet", "sxc"},
	"application/vnd.oasis.opendocument.text":         {grid.Other, "an OpenDocument text", ""},
	"application/vnd.oasis.opendocument.presentation": {grid.Other, "an OpenDocument presentation", ""},
	"application/vnd.oasis.opendocument.graphics":     {grid.Other, "an OpenDocument drawing", ""},
	"application/epub+zip":                            {grid.Other, "an electronic book", ""},
}

// cutZip guesses what a zip without a directory was, from its first member.
func cutZip(head []byte) kind {
	if len(head) > 30 {
		first := head[30:min(len(head), 130)]
		for _, name := range []string{"[Content_Types].xml", "_rels/", "xl/", "docProps/"} {
			if bytes.HasPrefix(first, []byte(name)) {
				return kind{grid.XLSX, "an Excel workbook", ""}
			}
		}
		if bytes.HasPrefix(first, []byte("mimetypeapplication/vnd.oasis.opendocument.spreadsheet")) {
			return kind{grid.ODS, "an OpenDocument spreadsheet", ""}
		}
	}
	return kind{grid.Zip, "a zip that is cut short", ""}
}

// endsWithZip reports whether a zip's directory stands at the end, behind
// something else.
func endsWithZip(data []byte) bool {
	return bytes.Contains(data[max(0, len(data)-1024):], []byte("PK\x05\x06"))
}

// identifyCompound tells the documents of one container format apart by the
// names of their streams, which stand in it in UTF-16.
func identifyCompound(data []byte) kind {
	holds := func(name string) bool {
		var wide []byte
		for i := range len(name) {
			wide = append(wide, name[i], 0)
		}
		return bytes.Contains(data, append(wide, 0, 0))
	}
	switch {
	case holds("EncryptedPackage"), holds("EncryptionInfo"):
		return kind{grid.Encrypted, "a workbook or document protected by a password", ""}
	case holds("Workbook"), holds("Book"), holds("WORKBOOK"), holds("BOOK"):
		return kind{grid.XLS, "an Excel 97-2003 workbook", ""}
	case holds("WordDocument"):
		return kind{grid.Other, "a Word document", ""}
	case holds("PowerPoint Document"):
		return kind{grid.Other, "a PowerPoint presentation", ""}
	case holds("VisioDocument"):
		return kind{grid.Other, "a Visio drawing", ""}
	case holds("__properties_version1.0"):
		return kind{grid.Other, "an e-mail message of Outlook", ""}
	case holds("Catalog"), holds("CatalogEntry"):
		return kind{grid.Other, "a thumbnail cache", ""}
	}
	return kind{grid.XLS, "a file of the container format that Excel 97-2003 uses", ""}
}

// identifyMarkup tells XML and HTML tables from other text. Zero bytes are
// dropped first, which makes UTF-16 read like plain text.
func identifyMarkup(head []byte) (kind, bool) {
	b := bytes.ToLower(bytes.ReplaceAll(head, []byte{0}, nil))
	for _, mark := range []string{"\xef\xbb\xbf", "\xff\xfe", "\xfe\xff"} {
		b = bytes.TrimPrefix(b, []byte(mark))
	}
	b = bytes.TrimLeft(b, " \t\r\n")
	has := func(s string) bool { return bytes.Contains(b, []byte(s)) }
	if bytes.HasPrefix(b, []byte("mime-version:")) && has("multipart/related") {
		return kind{grid.Other, "a web archive (MHTML)", ""}, true
	}
	if !bytes.HasPrefix(b, []byte("<")) {
		return kind{}, false
	}
	switch {
	case has("urn:schemas-microsoft-com:office:spreadsheet") && has("workbook") && !has("<html"):
		return kind{grid.XML2003, "an XML spreadsheet of 2003", ""}, true
	case has("urn:oasis:names:tc:opendocument") && has("office:document"):
		if has("opendocument.text\"") || has("opendocument.presentation") || has("opendocument.graphics") {
			return kind{grid.Other, "an OpenDocument document", ""}, true
		}
		return kind{grid.FODS, "a flat OpenDocument spreadsheet", ""}, true
	case has("<svg"):
		return kind{grid.Other, "a drawing (SVG)", ""}, true
	case has("<html"), has("<table"), has("<!doctype html"):
		return kind{grid.HTML, "a web page", ""}, true
	}
	return kind{}, false
}
