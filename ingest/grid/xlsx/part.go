package xlsx

import (
	"archive/zip"
	"bytes"
	"errors"
	"hash/crc32"
	"io"
	"sync"

	"github.com/klauspost/compress/flate"
	"golang.org/x/text/encoding/htmlindex"

	"lineaudit/ingest/grid"
)

const (
	smallRatio = 8 << 20   // parts up to this size may have any ratio
	chunk      = 256 << 10 // bytes asked for at a time of a large part
)

// A partReader unpacks one member and checks, at its end, that size and
// checksum are those of the directory.
type partReader struct {
	name   string
	size   int64 // declared
	left   int64
	want   uint32
	sum    uint32
	packed bytes.Reader
	src    io.Reader
	inf    io.ReadCloser
}

var inflaters = sync.Pool{New: func() any { return flate.NewReader(nil) }}

// open returns a scanner over the named part. Its caller must release it.
func (a *archive) open(name string) (*scanner, error) {
	f, ok := a.parts[partName(name)]
	if !ok {
		return nil, grid.Damaged("the part %q is missing", name)
	}
	if f == nil {
		return nil, grid.Damaged("there are two parts named %q", name)
	}
	r, err := a.reader(f, name)
	if err != nil {
		return nil, err
	}
	s := newScanner(r, name, a.lim)
	if err := s.start(); err != nil {
		s.release()
		return nil, err
	}
	return s, nil
}

// reader checks what the directory says of a member before a byte of it is unpacked.
func (a *archive) reader(f *zip.File, name string) (*partReader, error) {
	size, packed := int64(f.UncompressedSize64), int64(f.CompressedSize64)
	if f.Flags&1 != 0 {
		return nil, &grid.Unreadable{Reason: "the file is protected by a password", Advice: "save a copy without a password"}
	}
	if size < 0 || packed < 0 {
		return nil, grid.Damaged("the size of %q is impossible", name)
	}
	a.inflated += size
	if a.lim.MaxInflated > 0 && (size > a.lim.MaxInflated || a.inflated > a.lim.MaxInflated) {
		return nil, grid.TooLarge("its parts unpack to more than %d MiB", a.lim.MaxInflated>>20)
	}
	if size > smallRatio && a.lim.MaxRatio > 0 && size/a.lim.MaxRatio > packed {
		return nil, grid.TooLarge("%q unpacks to more than %d times its size, as no honest workbook does", name, a.lim.MaxRatio)
	}
	off, err := f.DataOffset()
	if err != nil || off < 0 || off+packed > int64(len(a.data)) {
		return nil, grid.Damaged("%q lies outside the file", name)
	}
	p := &partReader{name: name, size: size, left: size, want: f.CRC32}
	p.packed.Reset(a.data[off : off+packed])
	switch f.Method {
	case zip.Store:
		p.src = &p.packed
	case zip.Deflate:
		p.inf = inflaters.Get().(io.ReadCloser)
		if err := p.inf.(flate.Resetter).Reset(&p.packed, nil); err != nil {
			return nil, err
		}
		p.src = p.inf
	default:
		return nil, &grid.Unreadable{Reason: "the workbook is packed in a way that spreadsheet programs do not use", Advice: "open it and save it as .xlsx"}
	}
	return p, nil
}

// Read fills b; at the end it returns io.EOF only if size and checksum match.
func (p *partReader) Read(b []byte) (int, error) {
	n, err := p.src.Read(b)
	p.sum = crc32.Update(p.sum, crc32.IEEETable, b[:n])
	p.left -= int64(n)
	switch {
	case p.left < 0:
		return 0, grid.Damaged("%q is longer than the directory says", p.name)
	case err == nil:
		return n, nil
	case !errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF):
		return 0, grid.Damaged("%q cannot be unpacked", p.name)
	case p.left > 0:
		return 0, grid.Damaged("%q is shorter than the directory says", p.name)
	case p.sum != p.want:
		return 0, grid.Damaged("the checksum of %q differs", p.name)
	}
	return n, io.EOF
}

func (p *partReader) release() {
	if p.inf != nil {
		p.packed.Reset(nil)
		inflaters.Put(p.inf)
		p.inf, p.src = nil, nil
	}
}

// decoded returns the whole part as UTF-8 when its first bytes say that it is
// in another encoding, nil when it is UTF-8 already.
func (s *scanner) decoded() ([]byte, error) {
	label := ""
	switch head := s.buf[:min(len(s.buf), 200)]; {
	case bytes.HasPrefix(head, []byte("\xff\xfe")), bytes.HasPrefix(head, []byte("<\x00?\x00")):
		label = "utf-16le"
	case bytes.HasPrefix(head, []byte("\xfe\xff")), bytes.HasPrefix(head, []byte("\x00<\x00?")):
		label = "utf-16be"
	default:
		label = declaredEncoding(head)
	}
	switch label {
	case "", "utf-8", "us-ascii", "ascii":
		return nil, nil
	}
	enc, err := htmlindex.Get(label)
	if err != nil {
		return nil, grid.Damaged("%q is in an unknown encoding", s.part)
	}
	for !s.eof {
		if err := s.more(); err != nil {
			return nil, err
		}
	}
	out, err := enc.NewDecoder().Bytes(s.buf)
	if err != nil {
		return nil, grid.Damaged("%q is not in the encoding it names", s.part)
	}
	return bytes.TrimPrefix(out, []byte("\xef\xbb\xbf")), nil
}

// declaredEncoding returns what <?xml encoding="..."?> says, in lower case.
func declaredEncoding(head []byte) string {
	head = bytes.TrimPrefix(head, []byte("\xef\xbb\xbf"))
	if !bytes.HasPrefix(head, []byte("<?xml")) {
		return ""
	}
	if i := bytes.Index(head, []byte("?>")); i >= 0 {
		head = head[:i]
	}
	_, v, ok := bytes.Cut(head, []byte("encoding"))
	v = bytes.TrimLeft(v, " \t\r\n=")
	if !ok || len(v) < 2 || v[0] != '"' && v[0] != '\'' {
		return ""
	}
	name, _, _ := bytes.Cut(v[1:], v[:1])
	return string(bytes.ToLower(name))
}
